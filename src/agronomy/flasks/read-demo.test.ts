import { describe, expect, it } from "vitest";
import { builtInThermo } from "../../chem/index.ts";
import { builtInTrade } from "../trade-data.ts";
import { builtInFlasks } from "./flask-data.ts";
import { readDemo } from "./read-demo.ts";
import type { Addition } from "./types.ts";

const context = { thermo: builtInThermo(), trade: builtInTrade(), flasks: builtInFlasks() };
const start = { water: "deionised", volume: "100 mL" };

function demoWith(steps: readonly unknown[], more: Record<string, unknown> = {}): unknown {
  return { "hardstand-flasks": 1, flasks: [{ name: "one", start, steps }], ...more };
}

function addition(step: Record<string, unknown>): Addition {
  const read = readDemo(demoWith([step]), context);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const first = read.value.flasks[0]!.steps[0]!;
  if (first.kind !== "add") throw new Error("not an addition");
  return first;
}

function problems(document: unknown): readonly string[] {
  const read = readDemo(document, context);
  return read.issues.filter((issue) => issue.severity === "error").map(({ code, path }) => `${code} ${path}`);
}

describe("amounts", () => {
  it.each([
    // 10 g/L of the hexahydrate, 270.285 g/mol, 99 %.
    [{ add: "iron(III) chloride hexahydrate", as: "1 % w/v", amount: "1 mL" }, (0.01 * 0.99) / 270.285],
    // The anhydrous salt in a stock of the same per cent holds 1.67 times the iron.
    [{ add: "iron(III) chloride, anhydrous", as: "1 % w/v", amount: "1 mL" }, (0.01 * 0.99) / 162.195],
    [{ add: "hydrochloric acid", as: "1 mol/L", amount: "2 mL" }, 0.002],
    [{ add: "hydrochloric acid", as: "100 mmol/L", amount: "0.002 L" }, 0.0002],
    [{ add: "disodium EDTA dihydrate", amount: "0.03 g" }, (0.03 * 0.99) / 372.238],
    [{ add: "disodium EDTA dihydrate", amount: "30 mg" }, (0.03 * 0.99) / 372.238],
    [{ add: "sulfosalicylic acid dihydrate", as: "20 g/L", amount: "20 drops" }, (0.02 * 0.99) / 254.209],
    // 37 % w/w, 1.18 g/mL as bought.
    [{ add: "hydrochloric acid", amount: "1 mL" }, (1.18 * 0.37) / 36.458],
    // An active counts as acid equivalent.
    [{ add: "glyphosate", form: "isopropylammonium", as: "360 g/L", amount: "1 mL" }, 0.36 / 169.073],
    [{ add: "glyphosate", form: "isopropylammonium", amount: "1 g" }, 0.7409 / 169.073],
    [{ add: "citric acid", form: "monohydrate", amount: "1 g" }, 0.91 / 192.123],
    [{ add: "citric acid", as: "10 % w/w", amount: "2 g" }, 0.2 / 192.123],
  ])("reads %o", (step, moles) => {
    expect(addition(step).amount_mol).toBeCloseTo(moles, 9);
  });

  it("counts the volume of liquids and of no solid", () => {
    expect(addition({ add: "hydrochloric acid", as: "1 mol/L", amount: "2 mL" }).volume_mL).toBe(2);
    expect(addition({ add: "ammonium sulfate", amount: "1 g" }).volume_mL).toBe(0);
    expect(
      addition({ add: "iron(III) chloride hexahydrate", as: "1 % w/v", amount: "5 drops" }).volume_mL,
    ).toBeCloseTo(0.25, 12);
  });

  it("keeps a stock in acid", () => {
    const step = {
      add: "iron(III) chloride hexahydrate",
      as: "1 % w/v",
      in: "0.1 mol/L hydrochloric acid",
      amount: "1 mL",
    };
    expect(addition(step).medium).toMatchObject({ molPerL: 0.1, substance: { id: "hydrochloric-acid" } });
  });
});

describe("what cannot be read", () => {
  const fe = { add: "iron(III) chloride hexahydrate", as: "1 % w/v", amount: "1 mL" };
  it.each([
    ["an unknown substance", { ...fe, add: "iron(III) bromide" }, "reagent-unknown flasks[0].steps[0].add"],
    ["a form it is not in", { ...fe, form: "gas" }, "reagent-form-unknown flasks[0].steps[0].form"],
    ["a bare per cent", { ...fe, as: "1 %" }, "strength-unreadable flasks[0].steps[0].as"],
    ["a negative strength", { ...fe, as: "-1 mol/L" }, "strength-unreadable flasks[0].steps[0].as"],
    ["a mass of a stock", { ...fe, amount: "1 g" }, "amount-does-not-fit-strength flasks[0].steps[0].amount"],
    [
      "a volume of a solid",
      { add: "ammonium sulfate", amount: "1 mL" },
      "amount-does-not-fit-strength flasks[0].steps[0].amount",
    ],
    ["an amount without a unit", { ...fe, amount: 1 }, "amount-unreadable flasks[0].steps[0].amount"],
    ["an amount without end", { ...fe, amount: "100 L" }, "amount-unreadable flasks[0].steps[0].amount"],
    ["a medium it cannot read", { ...fe, in: "some acid" }, "medium-unreadable flasks[0].steps[0].in"],
    ["a pH that is none", { "set pH": 15 }, "value-out-of-range flasks[0].steps[0].set pH"],
    [
      "a key of another kind of step",
      { "set pH": 2, amount: "1 mL" },
      "key-unknown flasks[0].steps[0].amount",
    ],
    ["no substance", { amount: "1 mL" }, "key-missing flasks[0].steps[0].add"],
    ["a text for a step", "iron", "object-expected flasks[0].steps[0]"],
  ])("%s", (_, step, expected) => {
    expect(problems(demoWith([step]))).toContain(expected);
  });

  it("says everything at once", () => {
    const document = {
      "hardstand-flasks": 2,
      path: "6 furlongs",
      temperature: "90 °C",
      flasks: [
        { name: "x", start: { water: "rain", volume: "100 mL" }, steps: [fe] },
        { name: "y", start: { water: "deionised", volume: "0 mL" }, steps: [] },
      ],
    };
    expect(problems(document)).toEqual([
      "version-unknown hardstand-flasks",
      "length-unreadable path",
      "value-out-of-range temperature",
      "water-unknown flasks[0].start.water",
      "number-not-positive flasks[1].start.volume",
      "list-expected flasks[1].steps",
    ]);
  });

  it("suggests what was probably meant", () => {
    const read = readDemo(demoWith([{ ...fe, add: "sulfosalycilic acid" }]), context);
    expect(read.issues[0]?.hint).toContain("sulfosalicylic acid");
  });

  it.each([null, 7, "x", [], {}])("refuses %o without failing", (document) => {
    expect(readDemo(document, context).ok).toBe(false);
  });

  it("wants each flask with a name of its own", () => {
    const flask = { name: "same", start, steps: [fe] };
    expect(problems({ "hardstand-flasks": 1, flasks: [flask, flask] })).toEqual([
      "name-repeated flasks[1].name",
    ]);
  });

  it("moves the paths of a job inside to where it stands", () => {
    const codes = problems(demoWith([fe], { farm: { hardstand: 1 } }));
    expect(codes).toContain("key-missing farm.water");
  });
});

describe("an indicator typed in by hand", () => {
  const dye = {
    name: "bench dye",
    "molar mass": 218,
    charge: -3,
    protonation: [11.85, 2.48],
    complexes: [{ metal: "iron(III)", "log K": 14.55, band: { peak: 505, absorptivity: 1800, width: 150 } }],
    free: { protons: 1, band: { peak: 420, absorptivity: 100, width: 60 } },
  };

  it("becomes a bottle that can be added", () => {
    const read = readDemo(
      demoWith([{ add: "bench dye", as: "2 % w/v", amount: "1 mL" }], { indicators: [dye] }),
      context,
    );
    expect(read.issues).toEqual([]);
    if (!read.ok) return;
    const [own] = read.value.ownIndicators;
    expect(own?.species.map(({ id, charge, logK }) => [id, charge, logK.value])).toEqual([
      ["H1(Own1-3)", -2, 11.85],
      ["H2(Own1-3)", -1, 14.33],
      ["Fe(Own1-3)1H0", 0, 14.55],
    ]);
    expect(own?.optics.map(({ species }) => species)).toEqual(["Fe(Own1-3)1H0", "H1(Own1-3)"]);
  });

  it.each([
    ["no charge", { ...dye, charge: undefined }, "number-unusable indicators[0].charge"],
    ["a metal that is none", { ...dye, complexes: [{ metal: "gold", "log K": 3 }] }, "metal-unknown"],
    ["a complex twice", { ...dye, complexes: [dye.complexes[0], dye.complexes[0]] }, "name-repeated"],
    ["no complexes", { ...dye, complexes: [] }, "list-expected indicators[0].complexes"],
    ["more protons than it takes", { ...dye, free: { ...dye.free, protons: 3 } }, "number-unusable"],
  ])("refuses %s", (_, indicator, expected) => {
    const found = problems(
      demoWith([{ add: "ammonium sulfate", amount: "1 g" }], { indicators: [indicator] }),
    );
    expect(found.join("; ")).toContain(expected);
  });
});
