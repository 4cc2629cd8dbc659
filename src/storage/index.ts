export { browserPapers } from "./browser-papers.ts";
export type { PaperStore } from "./browser-papers.ts";
export { browserStore } from "./browser-store.ts";
export { memoryStore } from "./memory-store.ts";
