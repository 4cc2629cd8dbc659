export const root: string;
export const version: string;
export const typeChecks: readonly string[];
export function inProject(...parts: readonly string[]): string;
export function nodeVersionProblem(running?: string): string | null;
export function needsInstall(): boolean;
