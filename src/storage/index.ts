export { browserStore } from "./browser-store.ts";
export { memoryStore } from "./memory-store.ts";
