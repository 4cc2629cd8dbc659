import { blank, newKey } from "./typed.ts";
import type { Rest, Typed } from "./typed.ts";

/** One chemistry the adviser is willing to use, as typed. */
export interface ChemistryRow {
  readonly kind: "chemistry";
  readonly key: string;
  readonly chemistry: string;
  readonly form: string;
  readonly price: Typed;
  readonly leastDose: Typed;
  readonly mostDose: Typed;
  readonly rest: Rest;
}

/** One chemistry of a label, as typed. */
export interface IngredientRow {
  readonly key: string;
  readonly chemistry: string;
  readonly amount: Typed;
  readonly rest: Rest;
}

/** A conditioner as its label describes it, as typed. */
export interface OwnProductRow {
  readonly kind: "own product";
  readonly key: string;
  readonly product: string;
  readonly composition: readonly IngredientRow[];
  readonly density: Typed;
  readonly leastDose: Typed;
  readonly mostDose: Typed;
  readonly price: Typed;
  /** What the label gives no amount for, in words. */
  readonly undisclosed: string;
  /** True: something is left open, not said what. */
  readonly leavesOpen: boolean;
  readonly rest: Rest;
}

export type ConditionerEntry = ChemistryRow | OwnProductRow;

/** What a conditioner is called so far; "" when nothing was said. */
export function conditionerName(entry: ConditionerEntry): string {
  return entry.kind === "chemistry" ? entry.chemistry : entry.product;
}

/** An empty row for a chemistry. */
export function blankConditioner(): ChemistryRow {
  return {
    kind: "chemistry",
    key: newKey(),
    chemistry: "",
    form: "",
    price: blank("/kg"),
    leastDose: blank("kg/100 L"),
    mostDose: blank("kg/100 L"),
    rest: {},
  };
}

/** An empty row for a product described by its label. */
export function blankOwnProduct(): OwnProductRow {
  return {
    kind: "own product",
    key: newKey(),
    product: "",
    composition: [blankIngredient()],
    density: blank("kg/L"),
    leastDose: blank("L/100 L"),
    mostDose: blank("L/100 L"),
    price: blank("/L"),
    undisclosed: "",
    leavesOpen: false,
    rest: {},
  };
}

/** An empty ingredient row. */
export function blankIngredient(): IngredientRow {
  return { key: newKey(), chemistry: "", amount: blank("% w/w"), rest: {} };
}
