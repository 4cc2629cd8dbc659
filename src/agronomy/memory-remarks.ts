import { metalOf } from "../chem/index.ts";
import type { Remark } from "./types.ts";

/** Ions that are no metals, in words; another is said by its formula. */
const ION_WORDS: Readonly<Record<string, string>> = { "NH4+": "ammonium", "H2PO4-": "phosphate" };

/**
 * Says which interactions between ions the answer takes from memory, each once.
 *
 * @param interactions the ions of each, joined by spaces: "Ca+2 NH4+"
 */
export function memoryRemarks(interactions: readonly string[]): readonly Remark[] {
  return [...new Set(interactions)].map((ions) => {
    const [one = "", ...others] = ions
      .split(" ")
      .map((ion) => metalOf({ [ion]: 1 }) ?? ION_WORDS[ion] ?? ion);
    return {
      code: "interaction-from-memory",
      text: `${one} with ${others.join(" and ")}: how they act on each other in strong solution is carried from memory.`,
      evidence: "computed",
      source: null,
    };
  });
}
