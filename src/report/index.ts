export * from "./card.ts";
export * from "./card-html.ts";
export * from "./card-text.ts";
export * from "./figures.ts";
export * from "./plan-html.ts";
export * from "./plan-text.ts";
export * from "./water-text.ts";
export * from "./wording.ts";
