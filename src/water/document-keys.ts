import { nearestName } from "../units/index.ts";
import type { DecimalMark, Issue } from "../units/index.ts";
import { waterIssue } from "./ledger.ts";

/** How numbers in the document are written. */
export interface WaterTestOptions {
  /** The decimal mark of the report, when it is known; settles texts such as "1.250". */
  readonly decimal?: DecimalMark;
}

/** Errors for the keys of a block that are not among the known ones. */
export function unknownKeys(
  block: Readonly<Record<string, unknown>>,
  known: readonly string[],
  path: string,
): Issue[] {
  return Object.keys(block)
    .filter((key) => !known.includes(key))
    .map((key) => {
      const near = nearestName(key, known);
      const hint = near === null ? {} : { hint: `Did you mean ${near}?` };
      return waterIssue("key-unknown", "error", `${path}.${key}`, {
        received: key,
        expected: known.join(", "),
        ...hint,
      });
    });
}
