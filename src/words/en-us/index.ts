import type { LanguagePack } from "../language.ts";

/** English as used in the United States: where it parts from the British one. */
export const AMERICAN: LanguagePack = { words: {}, phrases: null, page: {} };
