import { GROWER } from "./en/grower.ts";
import type { GrowerWords } from "./en/index.ts";
import type { Language } from "./language.ts";

/** The messages of the report's first page, with the English one wherever a language has none. */
export function growerWords({ grower }: Language): GrowerWords {
  return { ...GROWER, ...grower };
}
