/** A quantity as typed: the text in the box and the unit chosen beside it ("" when the text carries its own). */
export interface Typed {
  readonly text: string;
  readonly unit: string;
  /**
   * What was typed, while the box shows the same amount in another unit. It is what is computed with, so that changing
   * the unit to and fro loses nothing; typing anew drops it.
   */
  readonly asTyped?: { readonly text: string; readonly unit: string };
}

/** What a document holds that the form has no box for, under its own keys: kept and written back as it is. */
export type Rest = Readonly<Record<string, unknown>>;

/** Words ticked of a list; empty: none of them; null: not said. */
export type Ticked = readonly string[] | null;

let lastKey = 0;

/** A key no other row on this page has. */
export function newKey(): string {
  lastKey += 1;
  return `row-${String(Date.now())}-${String(lastKey)}`;
}

/** An empty quantity with a unit ready beside it. */
export function blank(unit: string): Typed {
  return { text: "", unit };
}

/** A number, limit or range followed by something that is not a number: a unit typed into the box. */
const NUMBER_THEN_UNIT =
  /^\s*([<>≤≥~]?\s*[-−]?\d[\d.,\s]*(?:[eE][-+]?\d+)?(?:\s*[-–]\s*\d[\d.,]*)?)\s*(?![eE][-+]?\d)([^\d\s.,<>–-].*?)\s*$/;

/** Splits a unit typed into the number's box from its number; the unit chosen beside it holds otherwise. */
export function splitTyped(typed: Typed): Typed {
  const match = NUMBER_THEN_UNIT.exec(typed.text);
  if (match === null) return typed;
  return { text: (match[1] ?? "").trimEnd(), unit: match[2] ?? "" };
}

/** What a quantity is computed from: what was typed, whatever unit the box shows it in. */
export function typedFirst({ text, unit, asTyped }: Typed): Typed {
  return asTyped ?? { text, unit };
}

/** The quantity as one text, e.g. "200 L/ha"; null when nothing is typed. */
export function quantityText(typed: Typed): string | null {
  if (typed.text.trim() === "") return null;
  const { text, unit } = splitTyped(typedFirst(typed));
  return unit === "" ? text : `${text} ${unit}`;
}
