import { describe, expect, test } from "vitest";
import { builtInThermo } from "../chem/index.ts";
import { checkComplaint, NO_PROOF } from "./complaint.ts";
import type { ComplaintAnswer } from "./complaint-types.ts";
import { readComplaint } from "./read-complaint.ts";
import { builtInTrade } from "./trade-data.ts";

const thermo = builtInThermo();
const trade = builtInTrade();

type Block = Record<string, unknown>;

const HARD = [
  { parameter: "calcium", value: 142, unit: "mg/L" },
  { parameter: "magnesium", value: 71, unit: "mg/L" },
  { parameter: "alkalinity", value: 330, unit: "mg/L as CaCO3" },
  { parameter: "pH", value: 7.7 },
];
const GLYPHOSATE = {
  active: "glyphosate",
  form: "isopropylammonium",
  strength: "360 g/L ae",
  rate: "0.8 L/ha",
  formulation: "SL",
};
const SULFATE = { chemistry: "ammonium sulfate", dose: "1 kg/100 L", added: "before the products" };

function record(changes: Block = {}): Block {
  return {
    "hardstand-complaint": 1,
    water: { source: "Windmill bore", readings: HARD },
    spray: { volume: "160 L/ha", tank: "2000 L", area: "24 ha", temperature: "14 °C", "holding time": "2 h" },
    mix: [GLYPHOSATE],
    ...changes,
  };
}

function answer(changes: Block = {}, draws = 0): ComplaintAnswer {
  const read = readComplaint(record(changes), { trade });
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const checked = checkComplaint(read.value, { thermo, trade }, { draws });
  if (!checked.ok) throw new Error(JSON.stringify(checked.issues));
  return checked.value;
}

const errors = (changes: Block): string[] =>
  readComplaint(record(changes), { trade })
    .issues.filter(({ severity }) => severity === "error")
    .map(({ code, path }) => `${code} ${path}`);

describe("what the water could have taken", () => {
  test("is a range around the leaf answer, and what is left of the dose follows from it", () => {
    const { actives, weight, noProof } = answer();
    const one = actives[0];
    const taken = one?.takenByWater;
    if (one === undefined || taken === null || taken === undefined) throw new Error("no range");
    expect(one.dose_gPerHa).toBeCloseTo(0.8 * 360, 9);
    expect(taken.low).toBeLessThanOrEqual(taken.central);
    expect(taken.central).toBeLessThanOrEqual(taken.high);
    expect(taken.central).toBeCloseTo(1 - (one.verdict.onLeaf.free ?? 0), 9);
    expect(one.left_gPerHa?.low).toBeCloseTo(288 * (1 - taken.high), 9);
    expect(one.left_gPerHa?.high).toBeCloseTo(288 * (1 - taken.low), 9);
    expect(weight).toBe("much");
    expect(noProof).toBe(NO_PROOF);
  });

  test("draws widen it, never narrow it", () => {
    const central = answer().actives[0]?.takenByWater;
    const drawn = answer({}, 40).actives[0]?.takenByWater;
    expect(drawn?.low).toBeLessThanOrEqual(central?.low ?? 0);
    expect(drawn?.high).toBeGreaterThanOrEqual((central?.high ?? 1) - 1e-9);
  });

  test("is little in soft water at a full rate", () => {
    const soft = [
      { parameter: "hardness", value: 15, unit: "mg/L as CaCO3" },
      { parameter: "alkalinity", value: 15, unit: "mg/L as CaCO3" },
      { parameter: "pH", value: 6.8 },
    ];
    const found = answer({
      water: { source: "Rain tank", readings: soft },
      mix: [{ ...GLYPHOSATE, rate: "3 L/ha" }],
    });
    expect(found.weight).toBe("little");
    expect(found.actives[0]?.takenByWater?.high).toBeLessThan(found.limits.little);
  });

  test("a conditioner added first takes away from it; added last, the range runs up to none at all", () => {
    const [none, early, late] = [
      answer(),
      answer({ used: [SULFATE] }),
      answer({ used: [{ ...SULFATE, added: "after the products" }] }),
    ].map((one) => one.actives[0]?.takenByWater);
    expect(early?.central).toBeLessThan(none?.central ?? 0);
    expect(late?.central).toBeCloseTo(early?.central ?? -1, 9);
    expect(late?.high).toBeCloseTo(none?.high ?? -1, 9);
    expect(early?.high).toBeLessThan(late?.high ?? 0);
    const said = answer({ used: [{ ...SULFATE, added: "after the products" }] }).remarks.map(
      ({ code }) => code,
    );
    expect(said[0]).toBe("conditioner-added-late");
  });

  test("is not known for an active whose binding is not known", () => {
    const clethodim = { active: "clethodim", strength: "240 g/L", rate: "0.5 L/ha", formulation: "EC" };
    const found = answer({ mix: [clethodim] });
    expect(found.weight).toBe("not known");
    expect(found.actives[0]).toMatchObject({ takenByWater: null, left_gPerHa: null });
    expect(found.actives[0]?.why).not.toBeNull();
  });

  test("every source cited is listed once", () => {
    const found = answer({ used: [SULFATE] });
    const listed = found.sources.map(({ key }) => key);
    expect(new Set(listed).size).toBe(listed.length);
    const cited = [...found.causes, ...found.rules].map(({ source }) => source);
    for (const key of cited) expect(listed).toContain(key);
  });
});

describe("the other causes", () => {
  const standing = (found: ComplaintAnswer, id: string) => found.causes.find((cause) => cause.id === id);

  test("come in the order of exclusion with the water last, open unless the record says more", () => {
    const found = answer({ checked: { excluded: ["dust"], found: ["volume and nozzles"] } });
    expect(found.causes.at(-1)?.id).toBe("water");
    expect(standing(found, "dust")?.standing).toBe("excluded");
    expect(standing(found, "volume and nozzles")?.standing).toBe("found");
    expect(standing(found, "resistance")?.standing).toBe("open");
  });

  test("what was seen speaks for one and against another", () => {
    const even = answer({ seen: { pattern: "even", plants: "all weakened" } });
    expect(standing(even, "water")?.speaksFor.length).toBe(2);
    expect(standing(even, "resistance")?.speaksAgainst.length).toBe(1);
    const strips = answer({ seen: { pattern: "strips", plants: "dead beside healthy" } });
    expect(standing(strips, "water")?.speaksAgainst.length).toBe(2);
    expect(standing(strips, "volume and nozzles")?.speaksFor.length).toBe(1);
    expect(standing(strips, "resistance")?.speaksFor.length).toBe(1);
    const unsaid = answer();
    for (const cause of unsaid.causes) expect([...cause.speaksFor, ...cause.speaksAgainst]).toEqual([]);
  });
});

describe("a record that cannot be read", () => {
  test.each([
    ["no version", { "hardstand-complaint": undefined }, "key-missing hardstand-complaint"],
    ["another version", { "hardstand-complaint": 2 }, "version-unknown hardstand-complaint"],
    ["no water", { water: undefined }, "key-missing water"],
    ["a strange key", { farm: "home" }, "key-unknown farm"],
    ["no dose", { used: [{ chemistry: "ammonium sulfate" }] }, "key-missing used[0].dose"],
    ["a bare dose", { used: [{ ...SULFATE, dose: 1 }] }, "unit-missing used[0].dose"],
    [
      "an unknown conditioner",
      { used: [{ ...SULFATE, chemistry: "luck" }] },
      "conditioner-unknown used[0].chemistry",
    ],
    ["a strange time", { used: [{ ...SULFATE, added: "later" }] }, "choice-unknown used[0].added"],
    ["a strange pattern", { seen: { pattern: "odd" } }, "choice-unknown seen.pattern"],
    ["a strange cause", { checked: { excluded: ["luck"] } }, "choice-unknown checked.excluded[0]"],
  ] as const)("%s is said at its place", (_, changes, expected) => {
    expect(errors(changes)).toEqual([expected]);
  });
});
