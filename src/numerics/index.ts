export * from "./cholesky.ts";
export * from "./compensated.ts";
export * from "./dense-solve.ts";
export * from "./integer-basis.ts";
export * from "./roots.ts";
export * from "./inverse-normal.ts";
export * from "./latin-hypercube.ts";
export * from "./statistics.ts";
