export function findBrowser(): Promise<string | null>;
export function needBrowser(): Promise<string | null>;
