import type { ChemistryRow, ConditionerEntry, OwnProductRow } from "../job/draft-conditioners.ts";
import type { Draft } from "../job/draft.ts";

/** The draft with one chemistry changed. */
export function withChemistry(draft: Draft, key: string, change: (row: ChemistryRow) => ChemistryRow): Draft {
  return withRow(draft, key, (row) => (row.kind === "chemistry" ? change(row) : row));
}

/** The draft with one product by its label changed. */
export function withOwnProduct(
  draft: Draft,
  key: string,
  change: (row: OwnProductRow) => OwnProductRow,
): Draft {
  return withRow(draft, key, (row) => (row.kind === "own product" ? change(row) : row));
}

/** The draft without one conditioner. */
export function withoutConditioner(draft: Draft, key: string): Draft {
  return { ...draft, conditioners: draft.conditioners.filter((row) => row.key !== key) };
}

function withRow(draft: Draft, key: string, change: (row: ConditionerEntry) => ConditionerEntry): Draft {
  return { ...draft, conditioners: draft.conditioners.map((row) => (row.key === key ? change(row) : row)) };
}
