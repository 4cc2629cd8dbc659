import { describe, expect, it } from "vitest";
import type { CliIo } from "./io.ts";
import { speciateCommand } from "./speciate-command.ts";

/** Runs `speciate` on a case; gives the exit code, the answer and the talk. */
async function speciate(
  document: unknown,
): Promise<{ code: number; answer: Record<string, unknown>; talk: string }> {
  let out = "";
  let talk = "";
  const io: CliIo = {
    stdout: (text) => void (out += text),
    stderr: (text) => void (talk += text),
    readStdin: () => Promise.reject(new Error("not used")),
    readFile: () =>
      Promise.resolve({ bytes: new TextEncoder().encode(JSON.stringify(document)), more: false }),
    writeFile: () => Promise.reject(new Error("not used")),
    today: () => "2026-01-01",
    findPrinter: () => null,
    serve: () => Promise.reject(new Error("not used")),
  };
  const code = await speciateCommand("case.json", true, io);
  return { code, answer: JSON.parse(out) as Record<string, unknown>, talk };
}

const free = (name: string, charge: number): object => ({
  name,
  charge,
  formation: { [name]: 1 },
  logK: 0,
});
const brine = {
  components: [
    { name: "Na+", charge: 1 },
    { name: "Cl-", charge: -1 },
    { name: "SO4-2", charge: -2 },
    { name: "Q-", charge: -1 },
  ],
  species: [
    free("Na+", 1),
    free("Cl-", -1),
    free("SO4-2", -2),
    free("Q-", -1),
    { name: "NaSO4-", charge: -1, formation: { "Na+": 1, "SO4-2": 1 }, logK: 0.7 },
  ],
  totals: { "Na+": 1, "Cl-": 1, "SO4-2": 0, "Q-": 0 },
};

describe("speciate with interaction", () => {
  it("gives activity coefficients and water activity of sodium chloride as tabulated", async () => {
    const { code, answer } = await speciate({ ...brine, activity: "interaction" });
    expect(code).toBe(0);
    const gamma = answer["activityCoefficients"] as Record<string, number>;
    // Pitzer, Peiper & Busey (1984): γ± = 0.657 at 1 mol/kg; water activity 0.9669 with φ = 0.936.
    expect(Math.sqrt(gamma["Na+"]! * gamma["Cl-"]!)).toBeCloseTo(0.657, 2);
    expect(answer["waterActivity"]).toBeCloseTo(0.9669, 3);
    expect(answer).toMatchObject({ ok: true, extrapolated: false, estimated: [], outsideRange: [] });
  });

  it("names estimates and does not count again what the parameters contain", async () => {
    const totals = { "Na+": 0.7, "Cl-": 0.1, "SO4-2": 0.2, "Q-": 0.2 };
    const { answer, talk } = await speciate({ ...brine, totals, activity: "interaction" });
    expect(answer).toMatchObject({
      estimated: [{ species: "Q-", as: "charge type" }],
      containedInParameters: ["NaSO4-"],
      concentrations: { "NaSO4-": null, "SO4-2": expect.closeTo(0.2, 12) as number },
    });
    expect(talk).toContain("NaSO4-");
  });

  it("says which salt is outside the range of its parameters, and exits so under --strict", async () => {
    const totals = { "Na+": 9, "Cl-": 9, "SO4-2": 0, "Q-": 0 };
    const { code, answer } = await speciate({ ...brine, totals, activity: "interaction" });
    expect(code).toBe(4);
    expect(answer).toMatchObject({
      extrapolated: true,
      outsideRange: [{ what: "Na+ Cl-", why: "above the fitted molality", limit: 6.148 }],
    });
  });

  it("is no part of the answer with Davies, which has a water activity in its range only", async () => {
    const dilute = { "Na+": 0.1, "Cl-": 0.1, "SO4-2": 0, "Q-": 0 };
    const { answer } = await speciate({ ...brine, totals: dilute, activity: "davies" });
    expect(answer["waterActivity"]).toBeCloseTo(0.9966, 4);
    expect(answer).not.toHaveProperty("estimated");
    const strong = await speciate({ ...brine, activity: "davies" });
    expect(strong.answer).not.toHaveProperty("waterActivity");
  });
});

describe("speciate with the specific ion interaction theory", () => {
  // By hand, after Grenthe, Plyasunov & Spahiu (1997), OECD NEA, ch. IX (from memory), with A = 0.5100 at 25 °C and the
  // coefficients of ThermoChimie 12a: Na+ with Cl- 0.03, with SO4-2 -0.12 kg/mol. A = 1.8248e6 √ρ / (ε T)^1.5 with ε = 78.38
  // (Bradley & Pitzer 1979) and ρ = 0.99705 kg/L at 298.15 K.
  const within = (value: unknown, expected: number, relative: number): void =>
    expect(Math.abs((value as number) / expected - 1)).toBeLessThan(relative);

  it("answers for sodium chloride as by hand, and comes near what is tabulated", async () => {
    const { code, answer } = await speciate({ ...brine, activity: "sit" });
    expect(code).toBe(0);
    const gamma = answer["activityCoefficients"] as Record<string, number>;
    // log10 γ = −0.5100 · 1 / (1 + 1.5) + 0.03 · 1 = −0.1740, γ = 0.6699
    for (const ion of ["Na+", "Cl-"]) within(gamma[ion], 0.6699, 0.0002);
    // φ = 1 − 2.3026 · 0.5100 / 1.5³ · (2.5 − 2 ln 2.5 − 1 / 2.5) + 2.3026 · 0.03 · 1 / 2 = 0.94149
    within(answer["osmoticCoefficient"], 0.94149, 0.0001);
    // a_w = exp(−2 · 0.94149 / 55.508) = 0.96665
    within(answer["waterActivity"], 0.96665, 0.00001);
    // Pitzer, Peiper & Busey (1984): 0.657 at 1 mol/kg. A coefficient given to 0.01 kg/mol is 2.3 % of γ there.
    within(gamma["Na+"], 0.657, 0.023);
  });

  it("answers for a mixture as by hand, and says what it has no coefficient for", async () => {
    const totals = { "Na+": 0.7, "Cl-": 0.1, "SO4-2": 0.2, "Q-": 0.2 };
    const { answer } = await speciate({ ...brine, totals, activity: "sit" });
    // I = ½ (0.7 + 0.1 + 4 · 0.2 + 0.2) = 0.9; D = 0.5100 · 0.94868 / (1 + 1.5 · 0.94868) = 0.19968
    const gamma = answer["activityCoefficients"] as Record<string, number>;
    within(gamma["Na+"], 0.6016, 0.0002); // log10: −0.19968 + 0.03 · 0.1 − 0.12 · 0.2 = −0.22068
    within(gamma["Cl-"], 0.6627, 0.0002); // −0.19968 + 0.03 · 0.7 = −0.17868
    within(gamma["SO4-2"], 0.131, 0.0004); // 4 · −0.19968 − 0.12 · 0.7 = −0.88272
    within(gamma["Q-"], 0.6314, 0.0002); // −0.19968
    expect(answer).toMatchObject({
      estimated: [
        { species: "Na+ Cl-", as: "one coefficient, off by up to 0.02 in log10 of the salt alone" },
        { species: "Na+ SO4-2", as: "one coefficient, off by up to 0.05 in log10 of the salt alone" },
        { species: "Na+ Q-", as: "no coefficient, taken as zero" },
      ],
      containedInParameters: ["NaSO4-"],
    });
  });
});

describe("speciate with species that a model contains", () => {
  const chlorides = {
    components: [
      { name: "Mn+2", charge: 2 },
      { name: "Mg+2", charge: 2 },
      { name: "Zn+2", charge: 2 },
      { name: "SO4-2", charge: -2 },
      { name: "Cl-", charge: -1 },
    ],
    species: [
      free("Mn+2", 2),
      free("Mg+2", 2),
      free("Zn+2", 2),
      free("SO4-2", -2),
      free("Cl-", -1),
      { name: "MnCl+", charge: 1, formation: { "Mn+2": 1, "Cl-": 1 }, logK: 0.3 },
      { name: "ZnCl+", charge: 1, formation: { "Zn+2": 1, "Cl-": 1 }, logK: 0.4 },
      { name: "MgSO4", charge: 0, formation: { "Mg+2": 1, "SO4-2": 1 }, logK: 2.25 },
    ],
    totals: { "Mn+2": 0.1, "Mg+2": 0.1, "Zn+2": 0.1, "SO4-2": 0.1, "Cl-": 0.4 },
  };

  it("leaves out what the model that was asked for contains, and that alone", async () => {
    const bySit = await speciate({ ...chlorides, activity: "sit" });
    expect(bySit.answer["containedInParameters"]).toEqual(["MnCl+"]);
    const byPitzer = await speciate({ ...chlorides, activity: "interaction" });
    expect(byPitzer.answer["containedInParameters"]).toEqual(["MnCl+", "ZnCl+", "MgSO4"]);
  });
});

describe("speciate with coefficients that were not published", () => {
  it("names those from memory and those of our own fit, with their ions", async () => {
    const { answer } = await speciate({
      components: [
        { name: "K+", charge: 1 },
        { name: "SO4-2", charge: -2 },
        { name: "H2PO4-", charge: -1 },
      ],
      species: [free("K+", 1), free("SO4-2", -2), free("H2PO4-", -1)],
      totals: { "K+": 1.5, "SO4-2": 0.5, "H2PO4-": 0.5 },
      activity: "sit",
    });
    expect(answer["estimated"]).toEqual([
      { species: "K+ SO4-2", as: "coefficient of our own fit" },
      { species: "K+ H2PO4-", as: "coefficient from memory" },
    ]);
  });
});

describe("keys of a case", () => {
  it("refuses a key that is a slip of a known one, in every place, and names it", async () => {
    const slip = { ...brine, activity: "ideal", total: {}, species: [{ ...free("Na+", 1), logk: 3 }] };
    const { code, talk, answer } = await speciate(slip);
    expect(code).toBe(2);
    expect(answer).toMatchObject({ ok: false });
    expect(talk).toContain("totals");
    expect(talk).toContain("logK");
  });

  it("says and leaves alone a key of another kind, and takes what describes a case in silence", async () => {
    const { code, talk } = await speciate({
      ...brine,
      activity: "ideal",
      laboratoryBook: 7,
      solution: {},
      note: "x",
    });
    expect(code).toBe(0);
    expect(talk).toContain("laboratoryBook");
    expect(talk).not.toContain("solution");
    expect(talk).not.toContain("note");
  });
});
