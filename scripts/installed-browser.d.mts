export function isProgram(path: string): boolean;
export function canRun(path: string): boolean;
export function browserTold(): string;
export function installedBrowser(): string | null;
