import { blank, newKey } from "./typed.ts";
import type { Rest, Typed } from "./typed.ts";

/** One half-life of an active entered by hand, as typed. */
export interface HalfLifeRow {
  readonly key: string;
  readonly pH: string;
  readonly halfLife: Typed;
  readonly temperature: Typed;
  readonly rest: Rest;
}

/** An active entered by hand, as typed. */
export interface OwnActiveTyped {
  readonly name: string;
  readonly molarMass: Typed;
  /** Acid constants, one after the other. */
  readonly pKa: string;
  readonly affinityClass: string;
  readonly halfLives: readonly HalfLifeRow[];
  readonly rest: Rest;
}

/** One product of the mix, as typed. */
export interface ProductRow {
  readonly kind: "product";
  readonly key: string;
  readonly active: string;
  /** The active entered by hand; null for one that is named. */
  readonly own: OwnActiveTyped | null;
  readonly form: string;
  readonly strength: Typed;
  readonly rate: Typed;
  readonly formulation: string;
  /** Name of the product, for the card. */
  readonly name: string;
  readonly price: Typed;
  readonly mostRate: Typed;
  readonly rest: Rest;
}

/** One leaf feed of the mix, as typed. */
export interface FeedRow {
  readonly kind: "feed";
  readonly key: string;
  readonly feed: string;
  readonly form: string;
  readonly strength: Typed;
  readonly rate: Typed;
  readonly name: string;
  readonly rest: Rest;
}

export type MixEntry = ProductRow | FeedRow;

/** Name of the active entered by hand; null for one that is named. */
export function ownName({ own }: ProductRow): string | null {
  if (own === null) return null;
  return own.name.trim() === "" ? "an active without a name" : own.name;
}

/** What an entry of the mix is called so far; "" when nothing was said. */
export function entryName(entry: MixEntry): string {
  return entry.kind === "feed" ? entry.feed : (ownName(entry) ?? entry.active);
}

/** An empty product row. */
export function blankProduct(): ProductRow {
  return {
    kind: "product",
    key: newKey(),
    active: "",
    own: null,
    form: "",
    strength: blank("g/L"),
    rate: blank("L/ha"),
    formulation: "",
    name: "",
    price: blank("/L"),
    mostRate: blank("L/ha"),
    rest: {},
  };
}

/** An empty leaf feed row. */
export function blankFeed(): FeedRow {
  return {
    kind: "feed",
    key: newKey(),
    feed: "",
    form: "",
    strength: blank("g/kg"),
    rate: blank("kg/ha"),
    name: "",
    rest: {},
  };
}

/** An empty active entered by hand. */
export function blankOwnActive(): OwnActiveTyped {
  return { name: "", molarMass: blank("g/mol"), pKa: "", affinityClass: "", halfLives: [], rest: {} };
}

/** An empty half-life row. */
export function blankHalfLife(): HalfLifeRow {
  return { key: newKey(), pH: "", halfLife: blank("h"), temperature: blank("°C"), rest: {} };
}
