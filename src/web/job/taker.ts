import { blank, splitTyped } from "./typed.ts";
import type { Rest, Ticked, Typed } from "./typed.ts";

/** A number with one mark and three digits behind it; as text it has two readings, so a further zero settles it. */
const TWO_READINGS = /^-?[1-9]\d{0,2}\.\d{3}$/;

/** Takes the keys a form has boxes for out of a value of unknown shape. What nobody could take is its rest. */
export class Taker {
  readonly #left: Record<string, unknown>;

  constructor(value: unknown) {
    this.#left = isRecord(value) ? { ...value } : {};
  }

  /** True when the key is there, whatever it holds. */
  has(key: string): boolean {
    return key in this.#left;
  }

  /** A text or a number as text; "" when there is neither. */
  text(key: string): string {
    const value = this.#left[key];
    if (typeof value !== "string" && typeof value !== "number" && value !== null) return "";
    this.#take(key);
    return value === null ? "" : textOf(value);
  }

  quantity(key: string, usualUnit: string): Typed {
    const typed = this.text(key);
    return typed === "" ? blank(usualUnit) : splitTyped({ text: typed, unit: "" });
  }

  /** "yes" for true, "no" for false, "" for neither. */
  yesNo(key: string): string {
    const value = this.#left[key];
    if (typeof value !== "boolean") return "";
    this.#take(key);
    return value ? "yes" : "no";
  }

  list(key: string): readonly unknown[] {
    const value = this.#left[key];
    if (!Array.isArray(value)) return [];
    this.#take(key);
    return value;
  }

  /** A list of objects alone: one that holds anything else is left whole. */
  rows(key: string): readonly Rest[] {
    const value = this.#left[key];
    return Array.isArray(value) && value.every(isRecord) ? (this.list(key) as readonly Rest[]) : [];
  }

  /** A list of words alone; null when there is none. */
  words(key: string): Ticked {
    const value = this.#left[key];
    if (!Array.isArray(value) || !value.every((word) => typeof word === "string")) return null;
    this.#take(key);
    return value as readonly string[];
  }

  /** The object under a key, itself to be taken apart. */
  inner(key: string): Taker {
    const value = this.#left[key];
    if (isRecord(value)) this.#take(key);
    return new Taker(isRecord(value) ? value : {});
  }

  /** What is left; ask last. */
  rest(): Rest {
    return { ...this.#left };
  }

  #take(key: string): void {
    Reflect.deleteProperty(this.#left, key);
  }
}

export function isRecord(value: unknown): value is Rest {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function textOf(value: string | number): string {
  const text = String(value);
  return typeof value === "number" && TWO_READINGS.test(text) ? `${text}0` : text;
}
