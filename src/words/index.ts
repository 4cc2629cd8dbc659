export { ENGLISH_TEXTS } from "./en/index.ts";
export type { Words } from "./en/index.ts";
export * from "./figures.ts";
export { ENGLISH } from "./language.ts";
export type { Language } from "./language.ts";
export * from "./load.ts";
export * from "./message.ts";
export type { PhraseBook, Said } from "./phrases.ts";
export * from "./tags.ts";
