import { nearestName } from "../units/index.ts";
import type { Issue, Read } from "../units/index.ts";

/** Codes of the issues a job can give beside those of its quantities and its water test. */
export const ISSUE_CODES_JOB = {
  "object-expected": "something other than an object where keys belong",
  "list-expected": "something other than a list where a list belongs",
  "list-empty": "a list without an entry where at least one is needed",
  "text-expected": "something other than a text where a text belongs",
  "text-empty": "a text without a sign in it",
  "yes-or-no-expected": "something other than true or false",
  "key-unknown": "a key that has no place here",
  "key-missing": "a key that is needed was left out",
  "choice-unknown": "a word that is not one of the choices",
  "version-unknown": "a job of a version that is not known",
  "active-unknown": "an active that is not in the data",
  "active-form-unknown": "a salt or ester this active does not have in the data",
  "active-form-not-said": "an active with several salts or esters, and which one was not said",
  "active-in-data": "an active entered by hand that is in the data",
  "own-active-limits": "what is not known of an active entered by hand",
  "own-active-differs": "the same name entered by hand twice with other figures",
  "affinity-class-unknown": "a class of affinity that is not one of the list",
  "acid-constant-unusable": "an acid constant that is no number an acid in water can have",
  "acid-constants-do-not-fit": "too few or too many acid constants for the class of affinity",
  "half-lives-repeat-ph": "two half-lives at one pH",
  "conditioner-unknown": "a conditioner that is not in the data",
  "conditioner-form-unknown": "a form this conditioner is not sold in",
  "strength-basis-assumed": "a strength without the basis it counts on",
  "strength-needs-form": "a strength as salt without the name of the salt",
  "strength-basis-differs": "a strength counted as something the active is not sold as",
  "rate-does-not-fit-strength": "a rate by volume with a strength by mass, or the other way round",
  "price-does-not-fit-product": "a price by volume of something sold by mass, or the other way round",
  "formulation-unknown": "a formulation code that is not in the data",
  "formulation-not-for-water": "a formulation that is not mixed with water",
  "dose-does-not-fit-form": "a dose by volume of something sold as a solid",
  "most-rate-below-rate": "a highest rate below the planned one",
  "water-price-by-mass": "a price by mass for a water",
  "water-name-repeated": "two waters of one name, or one without",
  "conditioner-repeated": "the same conditioner twice",
  "feed-unknown": "a leaf feed that is not in the data",
  "feed-not-dissolved": "more of a leaf feed than the spray can dissolve",
  "ingredient-unknown": "a chemistry on a label that is not in the data",
  "amount-needs-density": "an amount per litre of a product without its density",
  "composition-above-whole": "chemistries that add up to more than the product",
  "density-unlikely": "a density no product has",
  "label-undisclosed": "a product whose label does not disclose enough to compute",
  "value-out-of-range": "a quantity no sprayer or field can have",
  "value-unlikely": "a quantity that is rarely right",
  "least-above-most": "a least dose above the most",
  "least-volume-above-volume": "a least water volume above the planned one",
  "reagent-unknown": "something added to a flask that is not in the data",
  "reagent-form-unknown": "a form or salt in which a reagent is not in the data",
  "strength-unreadable": "the strength of a stock that cannot be read",
  "amount-unreadable": "an amount that cannot be read or measured",
  "amount-does-not-fit-strength": "a volume with a strength by mass, or the other way round",
  "medium-unreadable": "what a stock is kept in, not understood",
  "length-unreadable": "a length that cannot be read",
  "number-unusable": "something that is not a number in the range allowed",
  "metal-unknown": "a metal that is not in the data",
  "name-repeated": "the same name twice",
  "colour-unreadable": "something that is no colour",
  "design-without-answer": "bottles from which no flasks can be made that differ",
  "flask-not-computed": "a step of a flask that has no answer",
  "water-unknown": "a water by a name that is not known",
} as const;
/** Code of an issue of a job. */
export type JobIssueCode = keyof typeof ISSUE_CODES_JOB;

/** Where issues are gathered while a document is read, so that all of them can be said at once. */
export class IssueList {
  readonly #issues: Issue[] = [];

  /** Adds an issue; an error unless another severity is given. */
  add(code: JobIssueCode, path: string, parts: Partial<Omit<Issue, "code" | "path">> = {}): void {
    this.#issues.push({ code, path, severity: "error", ...parts });
  }

  /** Takes over the issues of a reading and gives its value; undefined when it failed. */
  take<T>(read: Read<T>): T | undefined {
    this.#issues.push(...read.issues);
    return read.ok ? read.value : undefined;
  }

  get all(): readonly Issue[] {
    return this.#issues;
  }

  /** True when something stands in the way of an answer. */
  get blocks(): boolean {
    return this.#issues.some((issue) => issue.severity === "error");
  }
}

/** One object of a document, its keys checked. */
export interface Fields {
  readonly path: string;
  /** The value of a key; undefined when it is left out or null. */
  get(key: string): unknown;
  /** Path of a key in the document. */
  at(key: string): string;
}

/** Path of a key inside an object. */
export function pathOf(parent: string, key: string): string {
  return parent === "" ? key : `${parent}.${key}`;
}

/** What a value is, in words, for "received". */
export function describe(value: unknown): string {
  if (value === undefined || value === null) return "nothing";
  if (Array.isArray(value)) return value.length === 0 ? "an empty list" : `a list of ${value.length}`;
  if (typeof value === "object") {
    const keys = Object.keys(value);
    return keys.length === 0 ? "an empty object" : `an object with ${keys.slice(0, 4).join(", ")}`;
  }
  // eslint-disable-next-line @typescript-eslint/no-base-to-string -- the value is what a person wrote, shown as it is
  const text = String(value);
  return text.length > 60 ? `${text.slice(0, 59)}…` : text;
}

/**
 * Opens an object of a document and reports every key it should not have.
 *
 * @param known keys allowed here
 * @returns null when the value is no object
 */
export function openFields(
  value: unknown,
  path: string,
  known: readonly string[],
  issues: IssueList,
): Fields | null {
  if (value === null || typeof value !== "object" || Array.isArray(value)) {
    issues.add("object-expected", path, { received: describe(value), expected: `keys: ${known.join(", ")}` });
    return null;
  }
  const entries = new Map(Object.entries(value));
  for (const key of entries.keys()) {
    if (known.includes(key)) continue;
    const near = nearestName(key, known);
    issues.add("key-unknown", pathOf(path, key), {
      received: key,
      expected: `one of: ${known.join(", ")}`,
      ...(near === null ? {} : { hint: `Did you mean “${near}”?` }),
    });
  }
  // eslint-disable-next-line @typescript-eslint/no-unsafe-return -- the value is what a person wrote, shown as it is
  return { path, get: (key) => entries.get(key) ?? undefined, at: (key) => pathOf(path, key) };
}

/** Text of a key; null when left out or not usable (then with an issue). */
export function textOf(fields: Fields, key: string, issues: IssueList): string | null {
  const value = fields.get(key);
  if (value === undefined) return null;
  if (typeof value !== "string") {
    issues.add("text-expected", fields.at(key), { received: describe(value), expected: "a text" });
    return null;
  }
  if (value.trim() === "") {
    issues.add("text-empty", fields.at(key), {
      received: "an empty text",
      expected: "a text, or leave the key out",
    });
    return null;
  }
  return value.trim();
}

/** Reports a key that is needed and not there. @returns true when it is missing */
export function isMissing(fields: Fields, key: string, expected: string, issues: IssueList): boolean {
  if (fields.get(key) !== undefined) return false;
  issues.add("key-missing", fields.at(key), { received: "nothing", expected });
  return true;
}
