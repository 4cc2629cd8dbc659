import { describe, it } from "vitest";
import {
  builtInThermo,
  davies,
  debyeHuckelA,
  debyeHuckelB_perAngstrom,
  extendedDebyeHuckel,
  log10Kw,
  logKAt,
} from "../../../src/chem/index.ts";
import type { ActivityModel } from "../../../src/chem/index.ts";
import { checkCase, compare, list } from "./compare.ts";

const GROUP = "activity coefficients and water";
const A = debyeHuckelA(25);
const B = debyeHuckelB_perAngstrom(25);
const model = davies({ A, b: 0.3 });
const thermo = builtInThermo();

/** Ionic strength of a completely dissociated salt of charges without a common divisor, in the unit of its molality. */
function strengthOf([zPlus, zMinus]: readonly [number, number], m: number): number {
  return 0.5 * (Math.abs(zMinus) * zPlus ** 2 + zPlus * zMinus ** 2) * m;
}

/** Mean activity coefficient of a completely dissociated salt, molality taken as mol/L. */
function meanGamma(activity: ActivityModel, zPlus: number, zMinus: number, m: number): number {
  const nPlus = Math.abs(zMinus);
  const nMinus = zPlus;
  const I = strengthOf([zPlus, zMinus], m);
  const sum = nPlus * activity.lnGamma(zPlus, "cation", I) + nMinus * activity.lnGamma(zMinus, "anion", I);
  return Math.exp(sum / (nPlus + nMinus));
}

const ION_SPECIFIC =
  "Davies' formula has no ion-specific term; 0.5 mol/L is the end of its range, from where a tank is solved with Pitzer's equations";
const BEYOND =
  "the ionic strength is 0.6, beyond the 0.5 the formula is used to: from there a tank is solved with Pitzer's equations, and an answer by the formula is marked";

describe("mean activity coefficients by Davies' formula", () => {
  const salts: readonly {
    readonly id: string;
    readonly charges: readonly [number, number];
    readonly relative: (m: number, tolerance: Record<string, number>) => number;
    /** Ours, where it is known to lie outside the tolerance, by molality. */
    readonly outside: Readonly<Record<string, number>>;
  }[] = [
    {
      id: "gamma-CaCl2",
      charges: [2, -1],
      relative: (m, t) => (m >= 0.1 ? t["relative_at_0.1_and_0.2"]! : t.relative!),
      outside: { "0.2": 0.5475 },
    },
    { id: "gamma-MgCl2", charges: [2, -1], relative: (_m, t) => t.relative!, outside: { "0.2": 0.5475 } },
    { id: "gamma-HCl", charges: [1, -1], relative: (_m, t) => t.relative!, outside: {} },
    {
      id: "gamma-NaCl",
      charges: [1, -1],
      relative: (m, t) => (m > 0.1 ? t.relative_above! : t["relative_at_0.1"]!),
      outside: { "0.5": 0.7332 },
    },
    { id: "gamma-NaCl-dilute", charges: [1, -1], relative: (_m, t) => t.relative!, outside: {} },
  ];

  for (const { id, charges, relative, outside } of salts) {
    const check = checkCase(id);
    const molalities = list(check.input, "molality");
    it.each(molalities.map((m, i) => [m, i] as const))(`${id} at %d mol/kg`, (m, i) => {
      const theirs = list(check.expected, "gamma_pm")[i]!;
      const known = outside[String(m)];
      compare({
        check,
        group: GROUP,
        what: `mean activity coefficient of ${String(check.input.salt)}, ${String(m)} mol/kg, 25 °C, Davies`,
        published: theirs,
        ours: meanGamma(model, charges[0], charges[1], m),
        tolerance: theirs * relative(m, check.tolerance),
        ...(known === undefined
          ? {}
          : {
              outside: {
                ours: known,
                reason: model.fittedTo < strengthOf(charges, m) ? BEYOND : ION_SPECIFIC,
              },
            }),
      });
    });
  }
});

describe("single-ion coefficients with Kielland's sizes", () => {
  const check = checkCase("kielland-gamma");
  const strengths = list(check.input, "I");
  for (const key of Object.keys(check.expected)) {
    const [, size, charge] = /^size_([\d.]+)_z(\d)/.exec(key)!;
    const activity = extendedDebyeHuckel({
      A,
      B,
      sizes: { ion: { a_angstrom: Number(size), b: 0 } },
      fallback: model,
    });
    it.each(strengths.map((I, i) => [I, i] as const))(`${key} at I = %d`, (I, i) => {
      compare({
        check,
        group: GROUP,
        what: `activity coefficient, charge ${charge!}, ion size ${size!} Å, I = ${String(I)} mol/kg, 25 °C`,
        published: list(check.expected, key)[i]!,
        ours: Math.exp(activity.lnGamma(Number(charge), "ion", I)),
        tolerance: check.tolerance.absolute!,
      });
    });
  }
});

describe("Debye–Hückel parameters and the ion product of water", () => {
  const dh = checkCase("debye-hueckel-AB");
  it.each(list(dh.input, "T_C").map((T, i) => [T, i] as const))("A and B at %d °C", (T, i) => {
    const common = { check: dh, group: GROUP };
    compare({
      ...common,
      what: `Debye–Hückel A at ${String(T)} °C`,
      published: list(dh.expected, "A")[i]!,
      ours: debyeHuckelA(T),
      unit: "(kg/mol)^½",
      tolerance: dh.tolerance.A!,
    });
    compare({
      ...common,
      what: `Debye–Hückel B at ${String(T)} °C`,
      published: list(dh.expected, "B_per_angstrom")[i]!,
      ours: debyeHuckelB_perAngstrom(T),
      unit: "(kg/mol)^½/Å",
      tolerance: dh.tolerance.B_per_angstrom!,
    });
  });

  const kw = checkCase("kw-temperature");
  it.each(list(kw.input, "T_C").map((T, i) => [T, i] as const))("log Kw at %d °C", (T, i) => {
    const hydroxide = thermo.species.find((s) => s.id === "OH-")!;
    for (const [name, ours] of [
      ["formula of Marshall & Franck", log10Kw(T)],
      ["OH- of the data set", logKAt(hydroxide, T)],
    ] as const) {
      compare({
        check: kw,
        group: GROUP,
        what: `log Kw at ${String(T)} °C, ${name}`,
        published: list(kw.expected, "log_Kw")[i]!,
        ours,
        tolerance: kw.tolerance.log_Kw!,
      });
    }
  });
});
