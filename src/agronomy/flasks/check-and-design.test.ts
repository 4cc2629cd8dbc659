import { describe, expect, it } from "vitest";
import { builtInThermo } from "../../chem/index.ts";
import { hexOfLinear, linearOfHex } from "../../colour/index.ts";
import { builtInTrade } from "../trade-data.ts";
import { checkShow, whiteCorrected } from "./check-show.ts";
import type { SeenColours, ShowCheck } from "./check-show.ts";
import { designDemo } from "./design.ts";
import { builtInFlasks } from "./flask-data.ts";
import { readDemo } from "./read-demo.ts";
import { runDemo } from "./run-demo.ts";
import { slipEffects } from "./slips.ts";
import type { Demo, FlaskShow } from "./types.ts";

const context = { thermo: builtInThermo(), trade: builtInTrade(), flasks: builtInFlasks() };
const start = { water: "deionised", volume: "100 mL" };
const acid = { add: "hydrochloric acid", as: "1 mol/L", amount: "2 mL" };
const iron = { add: "iron(III) chloride hexahydrate", as: "1 % w/v", amount: "0.8 mL" };
const dye = { add: "sulfosalicylic acid dihydrate", as: "2 % w/v", amount: "0.8 mL" };
const sulfate = { add: "ammonium sulfate", amount: "1 g" };
const edta = { add: "disodium EDTA dihydrate", as: "3.7 % w/v", amount: "0.6 mL" };
const document = {
  "hardstand-flasks": 1,
  flasks: [
    { name: "dark", start, steps: [acid, iron, dye] },
    { name: "half", start, steps: [acid, iron, sulfate, dye] },
    { name: "clear", start, steps: [acid, iron, edta, dye] },
  ],
};

function ran(): { demo: Demo; show: FlaskShow } {
  const read = readDemo(document, context);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const run = runDemo(read.value, context, { draws: 0 });
  if (!run.ok) throw new Error(JSON.stringify(run.issues));
  return { demo: read.value, show: run.value };
}

/** The same colours under a light or camera that takes a share of each channel. */
function under(hex: string, light: readonly [number, number, number]): string {
  const [r, g, b] = linearOfHex(hex)!;
  return hexOfLinear([r * light[0], g * light[1], b * light[2]]);
}

describe("colours seen at the show", () => {
  const { demo, show } = ran();
  const meant = show.flasks.map(({ name, steps }) => ({ flask: name, hex: steps.at(-1)!.colour.hex }));
  const check = (seen: SeenColours): ShowCheck => checkShow(demo, show, seen, context);

  it("as computed is found as computed", () => {
    const found = check({ white: "#ffffff", flasks: meant });
    expect(found.deltaE00).toBeLessThan(0.5);
    expect(found.flasks.every(({ asComputed }) => asComputed)).toBe(true);
    expect(found.explanations).toEqual([]);
  });

  it("in a warm light are put right by the white patch, and not without it", () => {
    const light = [1, 0.8, 0.5] as const;
    const flasks = meant.map(({ flask, hex }) => ({ flask, hex: under(hex, light) }));
    const corrected = check({ white: under("#ffffff", light), flasks });
    expect(corrected.deltaE00).toBeLessThan(1.5);
    expect(check({ white: "#ffffff", flasks }).deltaE00).toBeGreaterThan(5);
  });

  it("each slip that is seen is named when its own colours are shown", () => {
    for (const { id, flasks } of slipEffects(demo, show, context)) {
      const found = check({
        white: "#ffffff",
        flasks: flasks.map((one) => ({ flask: one.flask, hex: one.colour.hex })),
      });
      if (found.flasks.every(({ asComputed }) => asComputed)) continue;
      expect(
        found.explanations.map((one) => one.id),
        id,
      ).toContain(id);
    }
  });

  it("that nothing explains are not explained", () => {
    const found = check({ white: "#ffffff", flasks: [{ flask: "dark", hex: "#00ff40" }] });
    expect(found.explanations).toEqual([]);
    expect(found.verdict).toMatch(/no single slip/);
  });

  it("a patch too dark to be white is refused", () => {
    expect(whiteCorrected("#808080", "#101010")).toBeNull();
    const read = readDemo({ ...document, seen: { white: "#101010", flasks: { dark: "#800000" } } }, context);
    expect(read.issues.map(({ code, path }) => [code, path])).toEqual([["colour-unreadable", "seen.white"]]);
  });

  it("a flask that is not there and a colour that is none are said", () => {
    const read = readDemo({ ...document, seen: { flasks: { light: "#fff", dark: "reddish" } } }, context);
    expect(read.issues.map(({ code, path }) => [code, path])).toEqual([
      ["key-unknown", "seen.flasks.light"],
      ["colour-unreadable", "seen.flasks.dark"],
    ]);
  });
});

describe("amounts for the bottles at hand", () => {
  const bottles = {
    metal: { add: "iron(III) chloride hexahydrate", as: "1 % w/v", in: "0.1 mol/L hydrochloric acid" },
    indicator: { add: "sulfosalicylic acid dihydrate", as: "2 % w/v" },
    sequestrant: { add: "disodium EDTA dihydrate", as: "3.7 % w/v" },
    competitor: { add: "ammonium sulfate" },
    acid: { add: "hydrochloric acid", as: "1 mol/L" },
  };
  const asked = { "hardstand-flasks": 1, design: { "least difference": 20, bottles } };

  it("differ by what was asked for over the spread, and can be measured", () => {
    const found = designDemo(asked, context);
    if (!found.ok) throw new Error(JSON.stringify(found.issues));
    const { demo, deltaE00Low, reached } = found.value;
    expect(reached).toBe(true);
    expect(deltaE00Low).toBeGreaterThanOrEqual(20);
    const run = runDemo(demo, context, { draws: 40 });
    if (!run.ok) throw new Error(JSON.stringify(run.issues));
    expect(run.value.order.groups).toEqual([["dark"], ["half"], ["clear"]]);
    for (const pair of run.value.pairs) expect(pair.low).toBeGreaterThanOrEqual(20);
    for (const { steps } of demo.flasks) {
      for (const step of steps) {
        if (step.kind !== "add") continue;
        expect(step.amount.value).toBeGreaterThanOrEqual(0.2);
        expect((step.amount.value * 10) % 1).toBeCloseTo(0, 9);
        expect(step.amountText).toBe(`${step.amount.value} ${step.amount.unit}`);
      }
    }
    expect(run.value.flasks.every(({ steps }) => steps.every(({ cloudy }) => !cloudy))).toBe(true);
  });

  it("that cannot keep the difference are given with the word that they do not", () => {
    const found = designDemo({ ...asked, design: { "least difference": 60, bottles } }, context);
    expect(found.ok && found.value.reached).toBe(false);
    expect(found.ok && found.value.deltaE00Low).toBeGreaterThan(10);
  });

  it("are none where the indicator does not show the metal", () => {
    const blind = { ...bottles, indicator: { add: "citric acid", as: "2 % w/v" } };
    const found = designDemo({ ...asked, design: { bottles: blind } }, context);
    expect(found.issues.map(({ code }) => code)).toEqual(["design-without-answer"]);
  });

  it.each([
    ["no metal", { ...bottles, metal: undefined }, "key-missing design.bottles.metal"],
    [
      "an unknown bottle",
      { ...bottles, acid: { add: "aqua regia" } },
      "reagent-unknown design.bottles.acid.add",
    ],
    ["a strange key", { ...bottles, water: {} }, "key-unknown design.bottles.water"],
  ])("ask back for %s", (_, other, expected) => {
    const found = designDemo({ ...asked, design: { bottles: other } }, context);
    expect(found.issues.map(({ code, path }) => `${code} ${path}`)).toContain(expected);
  });
});
