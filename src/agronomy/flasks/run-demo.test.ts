import { describe, expect, it } from "vitest";
import { builtInThermo } from "../../chem/index.ts";
import { WAVELENGTHS_NM, WHITE, labOfXyz, xyzOfTransmittance } from "../../colour/index.ts";
import { builtInTrade } from "../trade-data.ts";
import { builtInFlasks } from "./flask-data.ts";
import { readDemo } from "./read-demo.ts";
import { runDemo } from "./run-demo.ts";
import type { FlaskShow, FlaskState } from "./types.ts";

const context = { thermo: builtInThermo(), trade: builtInTrade(), flasks: builtInFlasks() };
const start = { water: "deionised", volume: "100 mL" };
const acid = { add: "hydrochloric acid", as: "1 mol/L", amount: "2 mL" };
const iron = { add: "iron(III) chloride hexahydrate", as: "1 % w/v", amount: "0.8 mL" };
const dye = { add: "sulfosalicylic acid dihydrate", as: "2 % w/v", amount: "0.8 mL" };
const sulfate = { add: "ammonium sulfate", amount: "1 g" };
const edta = { add: "disodium EDTA dihydrate", as: "3.7 % w/v", amount: "0.6 mL" };

function show(flasks: Record<string, readonly unknown[]>, draws = 0, more: object = {}): FlaskShow {
  const read = readDemo(
    {
      "hardstand-flasks": 1,
      flasks: Object.entries(flasks).map(([name, steps]) => ({ name, start, steps })),
      ...more,
    },
    context,
  );
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const run = runDemo(read.value, context, { draws });
  if (!run.ok) throw new Error(JSON.stringify(run.issues));
  return run.value;
}

function last(of: FlaskShow, name: string): FlaskState {
  return of.flasks.find((flask) => flask.name === name)!.steps.at(-1)!;
}

describe("a flask step by step", () => {
  const done = show({ one: [acid, iron, edta, dye] });
  const [flask] = done.flasks;

  it("adds volumes", () => {
    expect(flask!.start.volume_mL).toBe(100);
    expect(flask!.steps.map(({ volume_mL }) => volume_mL)).toEqual(
      [102, 102.8, 103.4, 104.2].map((v) => expect.closeTo(v, 9)),
    );
  });

  it("starts as clear, neutral water", () => {
    expect(flask!.start.colour).toMatchObject({
      hex: "#ffffff",
      L: 100,
      look: { kind: "grey", grey: "no colour" },
    });
    expect(flask!.start.pH).toBeCloseTo(7, 1);
  });

  it("has the pH of diluted strong acid after the acid", () => {
    // 2 mmol in 102 mL, activity coefficient of Davies at I = 0.0196: 0.873.
    expect(flask!.steps[0]!.pH).toBeCloseTo(-Math.log10((0.002 / 0.102) * 0.873), 2);
  });

  it("keeps all the iron that was put in", () => {
    const { species_molPerL, volume_mL } = flask!.steps[1]!;
    const perSpecies: Record<string, number> = { "Fe2(OH)2+4": 2, "Fe3(OH)4+5": 3 };
    const total = Object.entries(species_molPerL)
      .filter(([name]) => name.startsWith("Fe"))
      .reduce((sum, [name, c]) => sum + c * (perSpecies[name] ?? 1), 0);
    const put = (0.008 * 0.99) / 270.285 / (volume_mL / 1000);
    expect(total / put).toBeCloseTo(1, 6);
  });
});

describe("the colour follows from the species", () => {
  it("as worked by hand from the absorbance of the violet complex", () => {
    const state = last(show({ one: [acid, iron, dye] }, 0, { path: "2 cm" }), "one");
    const violet = state.species_molPerL["FeSsa"]!;
    const tails: Record<string, number> = {
      "FeOH+2": 30,
      "FeCl+2": 250,
      "Fe2(OH)2+4": 600,
    };
    const half = (Math.hypot(1, 150 / 505) - 1) / 150;
    const light = WAVELENGTHS_NM.map((w) => {
      let absorbance = 1800 * violet * Math.exp(-Math.LN2 * ((1 / w - 1 / 505) / half) ** 2);
      for (const [name, at400] of Object.entries(tails))
        absorbance += at400 * (state.species_molPerL[name] ?? 0) * Math.exp(-(w - 400) / 28);
      return 10 ** (-2 * absorbance);
    });
    const byHand = labOfXyz(xyzOfTransmittance(light), WHITE);
    expect(state.colour.L).toBeCloseTo(byHand.L, 1);
    expect(state.colour.a).toBeCloseTo(byHand.a, 1);
    expect(state.colour.b).toBeCloseTo(byHand.b, 1);
  });
});

describe("what the demonstration claims", () => {
  const glyphosate = { add: "glyphosate", form: "isopropylammonium", as: "7.2 g/L", amount: "10 mL" };
  const done = show(
    {
      a: [acid, iron, dye],
      b: [acid, iron, edta, dye],
      c: [acid, iron, sulfate, dye],
      d: [acid, iron, sulfate, dye, glyphosate],
      e: [acid, iron, dye, sulfate],
    },
    40,
  );
  const share = (name: string, holder: string): number => last(done, name).heldBy["iron"]?.[holder] ?? 0;

  it("metal, then stand-in: held and dark", () => {
    expect(share("a", "5-sulfosalicylic acid")).toBeGreaterThan(0.5);
    expect(last(done, "a").colour.L).toBeLessThan(40);
  });

  it("sequestrant first: free and clear", () => {
    expect(share("b", "EDTA")).toBeGreaterThan(0.99);
    expect(last(done, "b").colour.L).toBeGreaterThan(97);
  });

  it("competitor first: between the two, for every draw", () => {
    expect(share("c", "sulfate")).toBeGreaterThan(share("c", "5-sulfosalicylic acid"));
    expect(done.pairs.find(({ a, b }) => a === "a" && b === "c")!.low).toBeGreaterThan(10);
    expect(done.pairs.find(({ a, b }) => a === "b" && b === "c")!.low).toBeGreaterThan(10);
  });

  it("the herbicide takes the metal: clear is not free", () => {
    expect(share("d", "glyphosate")).toBeGreaterThan(0.5);
    expect(last(done, "d").colour.L).toBeGreaterThan(last(done, "c").colour.L);
  });

  it("the order reversed: the same colour, and the show says so", () => {
    const pair = done.pairs.find(({ a, b }) => a === "c" && b === "e")!;
    expect(pair.high).toBeLessThan(1e-6);
    expect(pair.verdict).toBe("look the same");
    expect(done.sameContents).toEqual([{ a: "c", b: "e" }]);
  });

  it("orders the flasks and says how sure that is", () => {
    expect(done.order.groups).toEqual([["a"], ["c", "e"], ["d"], ["b"]]);
    expect(done.order.sure).toBeGreaterThan(0.9);
  });

  it("gives the same draws every time", () => {
    const again = show({ a: [acid, iron, dye], b: [acid, iron, edta, dye] }, 10);
    expect(show({ a: [acid, iron, dye], b: [acid, iron, edta, dye] }, 10)).toEqual(again);
  });
});

describe("at the pH of a tank", () => {
  const done = show({
    "sulfate, pH 2": [iron, sulfate, dye, { "set pH": 2 }],
    "plain, pH 4": [iron, dye, { "set pH": 4 }],
    "sulfate, pH 4": [iron, sulfate, dye, { "set pH": 4 }],
  });

  it("sets the pH it was asked for", () => {
    expect(last(done, "sulfate, pH 2").pH).toBeCloseTo(2, 3);
    expect(last(done, "sulfate, pH 4").pH).toBeCloseTo(4, 3);
    expect(last(done, "sulfate, pH 2").added).toMatchObject({ substance: "hydrochloric acid", molPerL: 1 });
    expect(last(done, "sulfate, pH 4").added).toMatchObject({ substance: "sodium hydroxide", molPerL: 1 });
  });

  it("ammonium sulfate gives no half-tone, and the show says so", () => {
    const plain = last(done, "plain, pH 4").colour.L;
    const withSulfate = last(done, "sulfate, pH 4");
    expect(withSulfate.colour.L - plain).toBeLessThan(8);
    expect(last(done, "sulfate, pH 2").colour.L - plain).toBeGreaterThan(40);
    expect(withSulfate.remarks.map(({ text }) => text).join()).toMatch(/half-tone here has another cause/);
  });
});

describe("what is not a clear colour", () => {
  it("rust is said and shown as cloudiness", () => {
    const state = last(show({ one: [iron, { "set pH": 8 }] }), "one");
    expect(state.cloudy).toBe(true);
    expect(state.cloudiness).toMatchObject({ solids: ["rust"] });
    expect(state.heldBy["iron"]?.["rust"]).toBeGreaterThan(0.99);
  });

  it("a limit of the model is said", () => {
    const state = last(show({ one: [acid, { add: "disodium EDTA dihydrate", amount: "0.1 g" }] }), "one");
    expect(state.remarks.map(({ text }) => text).join()).toContain("Edetic acid may fall out");
  });

  it("a pH that no acid reaches is an issue, not a number", () => {
    const read = readDemo(
      { "hardstand-flasks": 1, flasks: [{ name: "x", start, steps: [dye, { "set pH": 0.01 }] }] },
      context,
    );
    if (!read.ok) throw new Error("not read");
    const run = runDemo(read.value, context, { draws: 0 });
    expect(run.ok).toBe(false);
    expect(run.issues.map(({ code }) => code)).toEqual(["flask-not-computed"]);
  });
});

describe("the hardness dye", () => {
  const buffer = [
    { add: "ammonium chloride", as: "5.35 % w/v", amount: "1 mL" },
    { add: "ammonia", as: "1 mol/L", amount: "5 mL" },
  ];
  const calcium = { add: "calcium chloride dihydrate", as: "1.47 % w/v", amount: "1 mL" };
  const black = { add: "Eriochrome black T", as: "0.1 % w/v", amount: "1 mL" };
  const done = show({
    held: [...buffer, calcium, black],
    free: [...buffer, calcium, { ...edta, amount: "1.2 mL" }, black],
  });

  it("stands at pH 10 in the buffer", () => {
    expect(last(done, "held").pH).toBeCloseTo(10, 0.5);
  });

  it("turns from the red side to blue when the calcium is taken", () => {
    expect(last(done, "held").colour.a).toBeGreaterThan(20);
    expect(last(done, "free").colour.b).toBeLessThan(-30);
    expect(last(done, "free").colour.a).toBeLessThan(0);
  });

  it("says that its absorptivities are estimates", () => {
    expect(
      done.optics.filter(({ species, estimate }) => species === "CaEbt-" && estimate).length,
    ).toBeGreaterThan(1);
  });
});
