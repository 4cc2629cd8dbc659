export * from "./difference.ts";
export * from "./lab.ts";
export * from "./screen.ts";
export * from "./spectrum.ts";
export * from "./words.ts";
