import { describe, expect, test } from "vitest";
import { builtInThermo } from "../chem/index.ts";
import type { Issue } from "../units/index.ts";
import { readJob } from "./job.ts";
import { standInSteps, withOwnLigands } from "./own-ligands.ts";
import { planJob } from "./plan.ts";
import { builtInTrade } from "./trade-data.ts";
import type { ActiveVerdict, Plan } from "./types.ts";

const trade = builtInTrade();
const thermo = builtInThermo();

type Block = Record<string, unknown>;

const OWN: Block = { name: "testamine", "molar mass": "300 g/mol" };

function job(active: unknown, changes: Block = {}): Block {
  return {
    hardstand: 1,
    water: {
      source: "Bore",
      method: "laboratory",
      readings: [
        { parameter: "calcium", value: 92, unit: "mg/L" },
        { parameter: "magnesium", value: 31, unit: "mg/L" },
        { parameter: "sodium", value: 40, unit: "mg/L" },
        { parameter: "alkalinity", value: 240, unit: "mg/L as CaCO3" },
        { parameter: "pH", value: 7.6 },
      ],
    },
    spray: { volume: "200 L/ha", tank: "3000 L", area: "20 ha", temperature: "15 °C", "holding time": "3 h" },
    mix: [{ active, strength: "360 g/L", rate: "2 L/ha", formulation: "SL", ...changes }],
    conditioners: [],
  };
}

function planned(active: unknown, changes: Block = {}, draws = 0): Plan {
  const read = readJob(job(active, changes), { trade });
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const plan = planJob(read.value, { thermo, trade }, { draws });
  if (!plan.ok) throw new Error(JSON.stringify(plan.issues));
  return plan.value;
}

function verdictOn(active: unknown, changes: Block = {}, draws = 0): ActiveVerdict {
  const verdict = planned(active, changes, draws).actives[0];
  if (verdict === undefined) throw new Error("no verdict");
  return verdict;
}

const issuesOf = (active: unknown): readonly Issue[] => readJob(job(active), { trade }).issues;
const errorsOf = (active: unknown): string[] =>
  issuesOf(active)
    .filter((issue) => issue.severity === "error")
    .map((issue) => `${issue.code} ${issue.path}`);

describe("an active entered by hand is read", () => {
  test("with all that can be said of it", () => {
    const read = readJob(
      job({
        name: "Test-amine X",
        "molar mass": "0.3 kg/mol",
        pKa: [10.2, 2.3, 5.7],
        "affinity class": "Aminophosphonate",
        "half-lives": [
          { pH: 5, "half-life": "12 d" },
          { pH: 9, "half-life": "30 min", temperature: "68 °F" },
        ],
      }),
      { trade },
    );
    expect(read.ok && read.value.mix[0]?.active).toBe("own-test-amine-x");
    expect(read.ok && read.value.mix[0]?.own).toEqual({
      id: "own-test-amine-x",
      name: "Test-amine X",
      molarMass_gPerMol: 300,
      pKa: [2.3, 5.7, 10.2],
      affinityClass: "aminophosphonate",
      halfLives: [
        { pH: 5, temperature_C: 25, halfLife_h: 288 },
        { pH: 9, temperature_C: expect.closeTo(20, 9) as number, halfLife_h: 0.5 },
      ],
    });
  });

  test("with a name and a molar mass alone; what stays open is said", () => {
    expect(errorsOf(OWN)).toEqual([]);
    const limits = issuesOf(OWN).find((issue) => issue.code === "own-active-limits");
    expect(limits).toMatchObject({ severity: "note", path: "mix[0].active" });
    expect(limits?.hint).toMatch(/what holds it.*pH.*how long it lasts.*restrictions/);
  });

  test.each(["169.073 g/mol", "169,073 g/mol", "169.1 g/mol"])(
    "a molar mass of %s is no thousands",
    (text) => {
      const read = readJob(job({ ...OWN, "molar mass": text }), { trade });
      expect(read.ok && read.value.mix[0]?.own?.molarMass_gPerMol).toBeCloseTo(169.1, 1);
    },
  );

  test("one acid constant needs no list, and the number of a salt is its own", () => {
    expect(errorsOf({ ...OWN, pKa: 3.1 })).toEqual([]);
    const salt = planned({ ...OWN, pKa: 3.1 }, { form: "sodium", strength: "360 g/L salt" });
    const acid = planned({ ...OWN, pKa: 3.1 }, { form: "sodium", strength: "360 g/L ae" });
    // Sodium stands where a proton stood: 300 of 321.98 g/mol.
    const ratio =
      (salt.actives[0]?.concentration_molPerL ?? 0) / (acid.actives[0]?.concentration_molPerL ?? 1);
    expect(ratio).toBeCloseTo(300 / (300 + 22.98976928 - 1.008), 4);
  });

  test("a salt of what has no acid constants is asked back with the way out", () => {
    const read = readJob(job(OWN, { form: "sodium" }), { trade });
    expect(read.issues.find((issue) => issue.code === "active-form-unknown")?.hint).toMatch(/add pKa/);
  });

  test("a name that the data know is warned of", () => {
    const issue = issuesOf({ ...OWN, name: "Glyphosate" }).find((one) => one.code === "active-in-data");
    expect(issue).toMatchObject({ severity: "warning", expected: "active: glyphosate" });
  });

  test.each([
    ["no name", { "molar mass": "300 g/mol" }, ["key-missing mix[0].active.name"]],
    ["no molar mass", { name: "x" }, ["key-missing mix[0].active.molar mass"]],
    ["a bare molar mass", { ...OWN, "molar mass": 300 }, ["unit-missing mix[0].active.molar mass"]],
    ["no molecule", { ...OWN, "molar mass": "2 g/mol" }, ["value-out-of-range mix[0].active.molar mass"]],
    ["a strange key", { ...OWN, pka: 3 }, ["key-unknown mix[0].active.pka"]],
    ["a word for a pKa", { ...OWN, pKa: ["low"] }, ["acid-constant-unusable mix[0].active.pKa"]],
    ["a pKa beyond water", { ...OWN, pKa: [3, 19] }, ["acid-constant-unusable mix[0].active.pKa"]],
    [
      "too many for the class",
      { ...OWN, pKa: [2, 5], "affinity class": "phenoxy acid" },
      ["acid-constants-do-not-fit mix[0].active.pKa"],
    ],
    [
      "too few for the class",
      { ...OWN, pKa: [5], "affinity class": "aminophosphonate" },
      ["acid-constants-do-not-fit mix[0].active.pKa"],
    ],
    [
      "no such class",
      { ...OWN, "affinity class": "phenoxi acid" },
      ["affinity-class-unknown mix[0].active.affinity class"],
    ],
    [
      "half-lives without a list",
      { ...OWN, "half-lives": "3 h" },
      ["list-expected mix[0].active.half-lives"],
    ],
    [
      "half-lives that lack their pH",
      { ...OWN, "half-lives": [{ "half-life": "3 h" }] },
      ["key-missing mix[0].active.half-lives[0].pH"],
    ],
    [
      "two half-lives at one pH",
      {
        ...OWN,
        "half-lives": [
          { pH: 7, "half-life": "3 h" },
          { pH: 7, "half-life": "5 h" },
        ],
      },
      ["half-lives-repeat-ph mix[0].active.half-lives"],
    ],
    ["a list", ["glyphosate"], ["object-expected mix[0].active"]],
  ])("%s is asked back", (_name, active, expected) => {
    expect(errorsOf(active)).toEqual(expected);
  });

  test("a slip in the class gets the likely one", () => {
    const issue = issuesOf({ ...OWN, "affinity class": "phenoxi acid" }).find(
      (one) => one.severity === "error",
    );
    expect(issue?.hint).toMatch(/phenoxy acid/);
  });

  test("one name with two sets of figures is asked back", () => {
    const document = job({ ...OWN, pKa: 3 });
    (document["mix"] as Block[]).push({ ...(document["mix"] as Block[])[0], active: { ...OWN, pKa: 4 } });
    const codes = readJob(document, { trade }).issues.map((issue) => `${issue.code} ${issue.path}`);
    expect(codes).toContain("own-active-differs mix[1].active");
  });
});

describe("an active entered by hand is planned", () => {
  test("as its stand-in when it is the stand-in", () => {
    const twin = { name: "twin", "molar mass": "169.073 g/mol", "affinity class": "aminophosphonate" };
    const form = { form: "isopropylammonium" };
    const ours = verdictOn(twin, form);
    const known = verdictOn("glyphosate", form);
    expect(ours.inTank.free).toBeCloseTo(known.inTank.free ?? Number.NaN, 6);
    for (const [holder, share] of Object.entries(known.inTank.heldBy))
      expect(ours.inTank.heldBy[holder], holder).toBeCloseTo(share, 6);
    // On the leaf the activity of the two ions is estimated in different ways, and the calcium salt is not carried over.
    expect(Math.abs((ours.onLeaf.free ?? 0) - (known.onLeaf.withoutSolid?.free ?? 1))).toBeLessThan(0.03);
    expect(ours.onLeaf.solidForms).toBe(false);
  });

  test.each(trade.affinityClasses.filter((c) => c.ligand !== null).map((c) => [c.name]))(
    "%s: as an estimate with a wide range",
    (name) => {
      const verdict = verdictOn({ ...OWN, "affinity class": name }, { form: "potassium" }, 100);
      for (const share of [verdict.inTank, verdict.onLeaf]) {
        expect(share.low).toBeLessThanOrEqual(share.free ?? -1);
        expect(share.high).toBeGreaterThanOrEqual(share.free ?? 2);
        expect(share.why).toMatch(/^Estimate: .* stands in for testamine/);
      }
      // A half-width of one in log K puts the 5th and 95th percentile a factor of several from the centre.
      const held = 1 - (verdict.inTank.free ?? 1);
      expect(1 - (verdict.inTank.low ?? 1)).toBeGreaterThan(1.2 * held);
      expect(1 - (verdict.inTank.high ?? 1)).toBeLessThan(held / 1.5);
    },
  );

  test("its own acid constants set the pH, not those of the stand-in", () => {
    const pHOf = (pKa: number): number =>
      planned({ ...OWN, pKa, "affinity class": "carboxylic acid" }, { form: "acid" }).tank.pH;
    // 12 mmol/L of acid against 4.8 mmol/L of alkalinity: the free acid's own constant decides.
    expect(pHOf(3)).toBeLessThan(pHOf(5) - 1);
  });

  test("without a class: not known, while its acid counts for the pH", () => {
    const plan = planned({ ...OWN, pKa: 3.5 }, { form: "acid" });
    expect(plan.actives[0]?.inTank).toMatchObject({ free: null, low: null, high: null });
    expect(plan.actives[0]?.inTank.why).toMatch(/not known/);
    expect(plan.tank.pH).toBeLessThan(5);
  });

  test("with nothing but a molar mass: nothing is claimed", () => {
    const verdict = verdictOn(OWN);
    expect(verdict.inTank).toMatchObject({ free: null });
    expect(verdict.inTank.why).toMatch(/No acid constants and no affinity were given/);
    expect(verdict.byClock).toMatchObject({ intact: null, halfLife_h: null });
    expect(verdict.rules).toEqual([]);
  });

  test("by the clock from the half-lives given", () => {
    const active = {
      ...OWN,
      "affinity class": "none",
      "half-lives": [{ pH: 7.6, "half-life": "3 h", temperature: "15 °C" }],
    };
    const { byClock } = verdictOn(active);
    expect(byClock.halfLife_h).toBeCloseTo(3, 6);
    expect(byClock.intact).toBeCloseTo(0.5, 6);
    expect(byClock.sources).toEqual(["entered-by-hand"]);
  });

  test("with a caution that its label's restrictions are not known, and its source named", () => {
    const plan = planned(OWN);
    expect(plan.cautions.map((c) => c.text)).toContain(
      "testamine is entered by hand: the restrictions of its label are not known here.",
    );
    expect(plan.sources.find((s) => s.key === "entered-by-hand")?.citation).toMatch(/by hand/);
  });

  test("beside one of the data, which keeps its own answer", () => {
    const document = job({ ...OWN, pKa: 3, "affinity class": "phenoxy acid" }, { form: "potassium" });
    const other = { active: "2,4-D", form: "dimethylammonium", strength: "600 g/L ae", rate: "1 L/ha" };
    (document["mix"] as Block[]).push({ ...other, formulation: "SL" });
    const read = readJob(document, { trade });
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    const plan = planJob(read.value, { thermo, trade }, { draws: 0 });
    const [own, known] = plan.ok ? plan.value.actives : [];
    expect(own?.inTank.why).toMatch(/^Estimate/);
    expect(known).toMatchObject({ active: "2-4-d" });
    expect(known?.inTank.why).toBeNull();
    expect(known?.inTank.free).toBeGreaterThan(0.9);
  });
});

describe("affinity classes", () => {
  test.each(trade.affinityClasses.filter((c) => c.acids !== null).map((c) => [c.name, c] as const))(
    "%s takes as many acid constants as its stand-in has",
    (_name, affinity) => {
      const steps = standInSteps(thermo, affinity);
      expect(affinity.acids?.most).toBe(steps.length);
      expect([...steps].sort((a, b) => b - a)).toEqual(steps);
    },
  );

  test("every form of an active entered by hand has a name of its own", () => {
    for (const affinity of trade.affinityClasses) {
      const own = { id: "own-x", name: "x", molarMass_gPerMol: 200, pKa: [], halfLives: [] };
      const names = withOwnLigands(thermo, [{ ...own, affinityClass: affinity.id }], trade).species.map(
        (s) => s.id,
      );
      expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
    }
  });

  test("each with a stand-in has calcium and magnesium constants, which hardness is made of", () => {
    for (const affinity of trade.affinityClasses.filter((c) => c.ligand !== null)) {
      const component = thermo.ligands.find((l) => l.id === affinity.ligand)?.component ?? "";
      for (const metal of ["Ca+2", "Mg+2"])
        expect(
          thermo.species.some((s) => component in s.formation && metal in s.formation),
          `${affinity.name} ${metal}`,
        ).toBe(true);
    }
  });
});

describe("a strength as salt", () => {
  test("counts the salt of a permanent cation", () => {
    const of = (strength: string): number =>
      planned("paraquat", { strength }).actives[0]?.concentration_molPerL ?? Number.NaN;
    // 276 g/L of the dichloride is 200 g/L of the cation.
    expect(of("276.1 g/L salt")).toBeCloseTo(of("200 g/L"), 5);
  });
});
