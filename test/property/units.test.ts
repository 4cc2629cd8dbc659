import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  KNOWN_UNITS,
  PARAMETERS,
  PARAMETER_RULES,
  QUANTITY_UNITS,
  convertReading,
  formatNumber,
  fromInternal,
  readMeasured,
  readNumberText,
  readQuantity,
  readingScale,
} from "../../src/units/index.ts";
import type { Dimension, MeasuredText, Read } from "../../src/units/index.ts";

/** Texts near numbers: digits, marks, signs, spaces and letters that number parsers stumble on. */
const numberLike = fc.string({
  unit: fc.constantFrom(..."0123456789.,+-−–eE '’<>\u00a0\u2009\u202f²½∞xnaNd%/ⅷ１".split("")),
  maxLength: 24,
});
const anyText = fc.oneof(
  numberLike,
  fc.string({ maxLength: 80 }),
  fc.string({ unit: "binary", maxLength: 40 }),
);

function numbers(measured: MeasuredText): readonly number[] {
  return Object.values(measured).filter((value): value is number => typeof value === "number");
}

/** A failed read says why; a good one holds only finite numbers. */
function sound<T>(read: Read<T>, finite: (value: T) => boolean): void {
  if (read.ok) expect(finite(read.value)).toBe(true);
  else expect(read.issues.length).toBeGreaterThan(0);
  for (const issue of read.issues) expect(issue.code).toMatch(/^[a-z]+(?:-[a-z]+)*$/);
}

describe("number text", () => {
  test("never throws, never gives NaN or infinity, whatever is typed", () => {
    fc.assert(
      fc.property(anyText, fc.constantFrom<"." | "," | undefined>(".", ",", undefined), (text, decimal) => {
        const options = decimal === undefined ? {} : { decimal };
        sound(readNumberText(text, "p", options), Number.isFinite);
        sound(readMeasured(text, "p", options), (value) => numbers(value).every(Number.isFinite));
      }),
      { numRuns: 3000 },
    );
  });

  test("reads back what was written, with either mark and with groups", () => {
    const written = fc.record({
      whole: fc.integer({ min: 0, max: 999_999_999 }),
      part: fc.option(fc.integer({ min: 0, max: 99 }), { nil: null }),
      mark: fc.constantFrom<"." | ",">(".", ","),
      gap: fc.constantFrom("", " ", "\u202f", "\u00a0", "'"),
      minus: fc.constantFrom("", "-", "−"),
    });
    fc.assert(
      fc.property(written, ({ whole, part, mark, gap, minus }) => {
        const digits = String(whole).replace(/\B(?=(\d{3})+$)/g, gap);
        const tail = part === null ? "" : `${mark}${String(part).padStart(2, "0")}`;
        const read = readNumberText(`${minus}${digits}${tail}`, "p");
        const expected = (whole + (part ?? 0) / 100) * (minus === "" ? 1 : -1);
        expect(read.ok && read.value).toBeCloseTo(expected, 6);
      }),
    );
  });

  test("three digits after one mark are never guessed, and saying the mark settles them", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 999 }),
        fc.integer({ min: 0, max: 999 }),
        fc.constantFrom<"." | ",">(".", ","),
        (whole, part, mark) => {
          const text = `${whole}${mark}${String(part).padStart(3, "0")}`;
          const read = readNumberText(text, "p");
          expect(read.ok).toBe(false);
          expect(read.issues[0]?.code).toBe("number-ambiguous");
          const settled = readNumberText(text, "p", { decimal: mark });
          expect(settled.ok && settled.value).toBe(Number(`${whole}.${String(part).padStart(3, "0")}`));
          const grouped = readNumberText(text, "p", { decimal: mark === "." ? "," : "." });
          expect(grouped.ok && grouped.value).toBe(whole * 1000 + part);
        },
      ),
    );
  });

  test("a formatted number reads back to its figures", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 1e12, noNaN: true }),
        fc.integer({ min: 1, max: 12 }),
        fc.constantFrom<"." | ",">(".", ","),
        (value, significant, decimal) => {
          const read = readNumberText(formatNumber(value, { significant, decimal }), "p", { decimal });
          expect(read.ok && Math.abs(read.value / value - 1)).toBeLessThanOrEqual(
            0.5000001 * 10 ** (1 - significant),
          );
        },
      ),
    );
  });
});

describe("units of water tests", () => {
  test("every unit that fits a parameter goes there and back unchanged", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...PARAMETERS),
        fc.constantFrom(...KNOWN_UNITS),
        fc.constantFrom(...KNOWN_UNITS),
        fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
        (parameter, from, to, value) => {
          const start = readingScale(parameter, from, "u");
          const other = readingScale(parameter, to, "u");
          if (!start.ok || !other.ok) return;
          const read = convertReading(parameter, { kind: "value", value }, from, "u");
          if (!read.ok || read.value.kind !== "value") throw new Error("not converted");
          const there = fromInternal(parameter, read.value.value, to);
          if (!there.ok) throw new Error("not shown");
          const back = convertReading(parameter, { kind: "value", value: there.value }, to, "u");
          if (!back.ok || back.value.kind !== "value") throw new Error("not read back");
          const end = fromInternal(parameter, back.value.value, from);
          // Temperatures have an offset, so small ones lose relative digits.
          const tolerance = parameter === "temperature" ? 1e-9 * Math.max(1, value) : 1e-12 * value;
          expect(end.ok && Math.abs(end.value - value)).toBeLessThanOrEqual(tolerance);
        },
      ),
      { numRuns: 3000 },
    );
  });

  test("a thousand switches of unit lose nothing", () => {
    const units = PARAMETER_RULES.hardness.units;
    let value = 342;
    let unit = units[0]!;
    for (let i = 1; i <= 1000; i += 1) {
      const next = units[(i * 5) % units.length]!;
      const read = convertReading("hardness", { kind: "value", value }, unit, "u");
      if (!read.ok || read.value.kind !== "value") throw new Error(unit);
      const shown = fromInternal("hardness", read.value.value, next);
      if (!shown.ok) throw new Error(next);
      value = shown.value;
      unit = next;
    }
    const end = convertReading("hardness", { kind: "value", value }, unit, "u");
    const start = convertReading("hardness", { kind: "value", value: 342 }, units[0], "u");
    expect(end.ok && end.value.kind === "value" && end.value.value).toBeCloseTo(
      start.ok && start.value.kind === "value" ? start.value.value : NaN,
      14,
    );
  });

  test("never throws on any unit", () => {
    fc.assert(
      fc.property(fc.constantFrom(...PARAMETERS), anyText, (parameter, unit) => {
        sound(
          readingScale(parameter, unit, "u"),
          ({ factor, offset }) => Number.isFinite(factor) && Number.isFinite(offset),
        );
      }),
      { numRuns: 2000 },
    );
  });
});

describe("quantities of a job", () => {
  const dimensions = [...Object.keys(QUANTITY_UNITS), "price"] as Dimension[];

  test("never throws, and what it reads is finite", () => {
    const anyValue = fc.oneof(anyText, fc.double(), fc.constantFrom(null, undefined, true, [], {}));
    fc.assert(
      fc.property(anyValue, fc.constantFrom(...dimensions), (value, dimension) => {
        sound(readQuantity(value, dimension, "q"), (found) =>
          Object.values(typeof found === "object" ? found : { found })
            .filter((part) => typeof part === "number")
            .every(Number.isFinite),
        );
      }),
      { numRuns: 3000 },
    );
  });

  test("every offered unit is understood, in other spellings too", () => {
    for (const [dimension, units] of Object.entries(QUANTITY_UNITS)) {
      for (const unit of units) {
        for (const spelling of [unit, unit.toUpperCase(), unit.replace(/ /g, "\u00a0"), ` ${unit} `]) {
          const text = dimension === "share" ? `0,5${spelling}` : `12,5 ${spelling}`;
          const read = readQuantity(text, dimension as Dimension, "q");
          expect(read.ok, `${dimension}: ${text}: ${JSON.stringify(read.issues)}`).toBe(true);
        }
      }
    }
  });
});
