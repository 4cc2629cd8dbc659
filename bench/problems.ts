import {
  co2Log10Activity,
  compileSystem,
  davies,
  debyeHuckelA,
  builtInPitzer,
  builtInThermo,
  DROPLET_SOLIDS,
  DRYING_SOLIDS,
  pitzer,
  systemFor,
  TANK_SOLIDS,
} from "../src/chem/index.ts";
import type { CompiledSystem, Conditions } from "../src/chem/index.ts";

/** An equilibrium to be timed. */
export interface Problem {
  readonly name: string;
  readonly system: CompiledSystem;
  readonly conditions: Conditions;
}

const TEMPERATURE_C = 12;

/**
 * Totals [mol/L] of a tank with twelve components beside H+: the hard bore of the examples with some potassium, iron
 * and manganese, glyphosate at 3.6 g/L as its isopropylammonium salt, 5 g/L ammonium sulfate, 1 g/L citric acid.
 */
export const TANK_TOTALS_MOL_PER_L: Readonly<Record<string, number>> = {
  "Ca+2": 2.3e-3,
  "Mg+2": 1.28e-3,
  "Na+": 3.1e-3,
  "Fe+3": 9e-6,
  "Mn+2": 1.5e-5,
  "NH4+": 7.57e-2,
  "IPA+": 2.13e-2,
  "Cl-": 2.56e-3,
  "SO4-2": 3.93e-2,
  "CO3-2": 5.06e-3,
  "Gly-3": 2.13e-2,
  "Cit-3": 5.2e-3,
};

const thermo = builtInThermo();
const components = Object.keys(TANK_TOTALS_MOL_PER_L);
const daviesHere = davies({ A: debyeHuckelA(TEMPERATURE_C), holdAbove_molPerL: 0.5 });

/** The tank with a part of its components, which are left out one after the other. */
const PARTS: readonly (readonly string[])[] = [
  ["Ca+2", "Na+", "Cl-", "CO3-2"],
  ["Ca+2", "Mg+2", "Na+", "Cl-", "SO4-2", "CO3-2"],
  ["Ca+2", "Mg+2", "Na+", "NH4+", "IPA+", "Cl-", "SO4-2", "CO3-2", "Gly-3"],
  components.filter((name) => name !== "Fe+3"),
  components,
];

/** Tanks of growing size, without solids; the last but one has twelve components, H+ counted. */
export function growingTanks(): readonly Problem[] {
  return PARTS.map((part) => {
    const { system, conditions } = tankProblem("without solids", part);
    const totals = Object.fromEntries(part.map((name) => [name, TANK_TOTALS_MOL_PER_L[name]!]));
    return {
      name: `tank of ${String(system.speciesNames.length)} species`,
      system,
      conditions: { ...conditions, totals_molPerL: totals },
    };
  });
}

/** The tank without or with its fast solids, closed to the air, Davies' activity coefficients. */
export function tankProblem(
  solids: "without solids" | "with solids",
  of: readonly string[] = components,
): Problem {
  const definition = systemFor(thermo, {
    components: of,
    temperature_C: TEMPERATURE_C,
    solids: solids === "with solids" ? TANK_SOLIDS : "none",
    carbonate: "closed",
  });
  return {
    name: `tank, Davies, ${solids}`,
    system: compileSystem(definition),
    conditions: { totals_molPerL: TANK_TOTALS_MOL_PER_L, electroneutral: "H+", activity: daviesHere },
  };
}

/** The same liquid with most of its water gone, open to the air, Pitzer's equations, every solid a drop may form. */
export function dropProblem(factor: number): Problem {
  const interactions = builtInPitzer();
  const definition = systemFor(thermo, {
    components,
    temperature_C: TEMPERATURE_C,
    solids: [...DRYING_SOLIDS, ...DROPLET_SOLIDS],
    carbonate: "open",
    interactions,
  });
  const { "CO3-2": _open, ...closed } = TANK_TOTALS_MOL_PER_L;
  return {
    name: `drop, Pitzer, with solids`,
    system: compileSystem(definition),
    conditions: {
      totals_molPerL: scaled(closed, factor),
      fixedLog10Activities: { CO2: co2Log10Activity(thermo, TEMPERATURE_C) },
      electroneutral: "H+",
      activity: pitzer(interactions, { temperature_C: TEMPERATURE_C }),
    },
  };
}

/** Totals times a factor. */
export function scaled(totals: Readonly<Record<string, number>>, factor: number): Record<string, number> {
  return Object.fromEntries(Object.entries(totals).map(([name, total]) => [name, total * factor]));
}

/** The same problem with other totals. */
export function withTotals(problem: Problem, totals_molPerL: Readonly<Record<string, number>>): Problem {
  return { ...problem, conditions: { ...problem.conditions, totals_molPerL } };
}

/**
 * Variants of the tank, each total multiplied by a factor of its own; the same ones every time.
 *
 * @param decades the factors run from 10^−decades to 10^decades, evenly on their logarithm
 */
export function variedTanks(count: number, decades: number): readonly Problem[] {
  const problem = tankProblem("without solids");
  let state = 20260302;
  const next = (): number => {
    // Lehmer's generator with the modulus 2^31 − 1: good enough to scatter totals, and the same everywhere.
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  return Array.from({ length: count }, () =>
    withTotals(
      problem,
      Object.fromEntries(
        Object.entries(TANK_TOTALS_MOL_PER_L).map(([name, total]) => [
          name,
          total * 10 ** (decades * (2 * next() - 1)),
        ]),
      ),
    ),
  );
}
