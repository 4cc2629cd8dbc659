import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { PARAMETERS, PARAMETER_RULES, readMeasured } from "../../units/index.ts";
import { draftOf } from "../job/from-document.ts";
import { documentOf } from "../job/to-document.ts";
import { quantityText, splitTyped } from "../job/typed.ts";
import type { Typed } from "../job/typed.ts";
import { inUnit } from "./measure.ts";
import { settled } from "./two-readings.ts";
import type { Measure } from "./measure.ts";
import { UNITS } from "./units.ts";

/** Every measure of the form with the units its field offers, two at least. */
const MEASURES: readonly { readonly measure: Measure; readonly units: readonly string[] }[] = [
  ...PARAMETERS.map((reading) => ({ measure: { reading }, units: [...PARAMETER_RULES[reading].units] })),
  ...(["volume", "area", "temperature", "time"] as const).map((dimension) => ({
    measure: { dimension },
    units: [...UNITS[dimension]],
  })),
].filter(({ units }) => units.length > 1);

/** Digits with either decimal sign or none, never three after it: that has two readings. */
const number = fc
  .tuple(
    fc.integer({ min: 1, max: 9999 }),
    fc.constantFrom("", "0", "5", "25", "05", "1234"),
    fc.constantFrom(".", ","),
  )
  .map(([whole, part, sign]) => (part === "" ? String(whole) : `${String(whole)}${sign}${part}`));
/** What people type into a box: a number, a limit, a range, stray spaces; a number may carry its unit. */
const typedText = fc.oneof(
  number,
  number.map((one) => `<${one}`),
  number.map((one) => ` ${one} `),
  fc
    .tuple(fc.integer({ min: 1, max: 99 }), fc.integer({ min: 100, max: 999 }))
    .map(([low, high]) => `${String(low)}–${String(high)}`),
);

const otherSign = (text: string): string => text.replace(/[.,]/g, (sign) => (sign === "." ? "," : "."));

describe("whatever is typed, in whichever unit", () => {
  test("a thousand changes of unit lose neither the text nor what is computed with", () => {
    const start = fc.constantFrom(...MEASURES).chain(({ measure, units }) =>
      fc.record({
        measure: fc.constant(measure),
        text: typedText,
        unit: fc.constantFrom(...units),
        isInBox: fc.boolean(),
        path: fc.array(fc.constantFrom(...units), { minLength: 1000, maxLength: 1000 }),
      }),
    );
    fc.assert(
      fc.property(start, ({ measure, text, unit, isInBox, path }) => {
        const first: Typed =
          isInBox && unit !== "" ? { text: `${text.trim()} ${unit}`, unit } : { text, unit };
        const end = path.reduce<Typed>((at, to) => inUnit(measure, at, to) ?? at, first);
        expect(quantityText(end)).toBe(quantityText(first));
        const back = inUnit(measure, end, splitTyped(first).unit);
        expect(back?.text).toBe(splitTyped(first).text);
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });

  test("both decimal signs say the same amount in every unit", () => {
    const pair = fc.constantFrom(...MEASURES).chain(({ measure, units }) =>
      fc.record({
        measure: fc.constant(measure),
        text: typedText,
        from: fc.constantFrom(...units),
        to: fc.constantFrom(...units),
      }),
    );
    fc.assert(
      fc.property(pair, ({ measure, text, from, to }) => {
        fc.pre(from !== to);
        const one = inUnit(measure, { text, unit: from }, to);
        expect(one).not.toBeNull();
        expect(inUnit(measure, { text: otherSign(text), unit: from }, to)?.text).toBe(one?.text);
      }),
      { numRuns: 500 },
    );
  });

  test("a job that is saved and opened again holds each text as it was typed", () => {
    fc.assert(
      fc.property(typedText, (text) => {
        const document = {
          hardstand: 1,
          water: { readings: [{ parameter: "calcium", value: text, unit: "mg/L" }] },
        };
        expect(documentOf(draftOf(document, "file"))["water"]).toEqual(document.water);
      }),
    );
  });
});

describe("a number with two readings", () => {
  /** Where it may stand in what is typed: the text around it, and how many of its kind there are. */
  const PLACES: readonly (readonly [string, (number: string) => string])[] = [
    ["alone", (one) => one],
    ["behind a sign", (one) => `-${one}`],
    ["as a limit below", (one) => `<${one}`],
    ["as a limit above", (one) => `> ${one}`],
    ["as the low end", (one) => `${one}–9999999`],
    ["as the high end", (one) => `0.5–${one}`],
    ["as both ends", (one) => `${one}–${one}`],
    ["between spaces", (one) => ` ${one} `],
  ];
  const ambiguous = fc
    .tuple(fc.integer({ min: 1, max: 999 }), fc.integer({ min: 0, max: 999 }), fc.constantFrom(".", ","))
    .map(([whole, part, sign]) => ({
      whole,
      part,
      text: `${String(whole)}${sign}${String(part).padStart(3, "0")}`,
    }));
  /** The readings between which a person is asked, the one with groups first; none where nothing is asked. */
  const asked = (text: string): readonly string[] =>
    readMeasured(text, "value")
      .issues.filter(({ code }) => code === "number-ambiguous")
      .flatMap(({ expected }) => expected?.split(" or ") ?? []);

  test.each(PLACES)("%s is asked, and either answer settles it", (_where, put) => {
    fc.assert(
      fc.property(ambiguous, fc.boolean(), ({ whole, part, text }, isGrouped) => {
        expect(asked(put(text))).toHaveLength(2);
        // As the form does: one question for each such number, two at most.
        const answer = (said: string): string => settled(said, asked(said)[isGrouped ? 0 : 1] ?? "");
        const once = answer(put(text));
        const answered = asked(once).length === 0 ? once : answer(once);
        expect(asked(answered)).toEqual([]);
        const read = readMeasured(answered, "value");
        const numbers = read.ok ? Object.values(read.value).filter((one) => typeof one === "number") : [];
        const meant = isGrouped ? whole * 1000 + part : whole + part / 1000;
        expect(numbers.some((one) => Math.abs(Math.abs(one) - meant) < 1e-9)).toBe(true);
      }),
    );
  });
});
