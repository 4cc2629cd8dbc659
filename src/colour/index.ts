export * from "./difference.ts";
export * from "./lab.ts";
export * from "./look.ts";
export * from "./screen.ts";
export * from "./spectrum.ts";
