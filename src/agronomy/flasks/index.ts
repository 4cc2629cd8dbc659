export * from "./compare.ts";
export * from "./flask-data.ts";
export { substanceNames } from "./find-substance.ts";
export * from "./read-demo.ts";
export * from "./run-demo.ts";
export * from "./types.ts";
