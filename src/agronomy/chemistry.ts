import {
  co2Log10Activity,
  compileSystem,
  davies,
  debyeHuckelA,
  dryDown,
  DRYING_SOLIDS,
  equilibrate,
  systemFor,
  TANK_SOLIDS,
} from "../chem/index.ts";
import type {
  ActivityModel,
  CompiledSystem,
  DryDownResult,
  EquilibriumResult,
  ThermoData,
} from "../chem/index.ts";
import type { Tank } from "./tank.ts";

/**
 * Ionic strength [mol/L] at which the Davies coefficients are held: above it the formula grows without limit.
 * Source: range of use after Davies (1962), Ion Association, p. 41; holding it there is our choice.
 */
export const DAVIES_HELD_AT_MOL_PER_L = 0.5;

/**
 * Concentration factors of the drying path. The last one is a stated end point, not a measured one.
 * Common practice, no published source.
 */
export const DRYING_FACTORS: readonly number[] = [1, 1.5, 2, 3, 5, 7, 10, 14, 20, 28, 40, 50];

/** Coarser path for dose searches: the same end, fewer stops to see whether a solid nucleates on the way. */
export const SEARCH_FACTORS: readonly number[] = [1, 4, 12, 30, 50];

/** Supersaturation at which the calcium salt of an active is taken to nucleate; our assumption, not measured. */
export const NUCLEATION_SI = 1.5;

/** Solids that hold an active and form only past a supersaturation threshold. */
export const NUCLEATING_SOLIDS: readonly string[] = ["calcium hydrogen glyphosate"];

/** Solids a closed tank or an open, drying drop may form. */
export function solidsConsidered(carbonate: "closed" | "open"): readonly string[] {
  return carbonate === "closed" ? TANK_SOLIDS : [...DRYING_SOLIDS, ...NUCLEATING_SOLIDS];
}

/** What the calcium salt of the active may do while the drop dries. */
export type LeafSolid = "never" | "at threshold" | "at equilibrium";

/** Equilibrium answers for tanks; compiled systems are kept, so that a dose search compiles each only once. */
export interface Chemistry {
  readonly thermo: ThermoData;
  /** The full tank, closed to the air. */
  inTank(tank: Tank): EquilibriumResult;
  /** The same liquid as water leaves it, open to the air's carbon dioxide. */
  dry(tank: Tank, solid: LeafSolid, factors: readonly number[]): DryDownResult;
}

/** Builds the equilibrium answers on a data set. */
export function chemistryOn(thermo: ThermoData): Chemistry {
  const systems = new Map<string, CompiledSystem>();
  const models = new Map<number, ActivityModel>();

  const system = (tank: Tank, carbonate: "closed" | "open"): CompiledSystem => {
    const components = componentsOf(tank, carbonate);
    const key = `${carbonate}|${String(tank.temperature_C)}|${components.join(",")}`;
    let found = systems.get(key);
    if (found === undefined) {
      const solids = solidsConsidered(carbonate);
      found = compileSystem(
        systemFor(thermo, {
          components,
          temperature_C: tank.temperature_C,
          solids,
          carbonate,
          alkaliPairs: false,
        }),
      );
      systems.set(key, found);
    }
    return found;
  };

  const activity = (temperature_C: number): ActivityModel => {
    let model = models.get(temperature_C);
    if (model === undefined) {
      model = davies({ A: debyeHuckelA(temperature_C), holdAbove_molPerL: DAVIES_HELD_AT_MOL_PER_L });
      models.set(temperature_C, model);
    }
    return model;
  };

  return {
    thermo,
    inTank: (tank) =>
      equilibrate(system(tank, "closed"), {
        totals_molPerL: tank.totals_molPerL,
        electroneutral: "H+",
        activity: activity(tank.temperature_C),
      }),
    dry: (tank, solid, factors) => {
      const compiled = system(tank, "open");
      const totals: Record<string, number> = {};
      for (const [component, total] of Object.entries(tank.totals_molPerL)) {
        if (component !== "CO3-2") totals[component] = total;
      }
      const nucleating = compiled.solidNames.filter((name) => NUCLEATING_SOLIDS.includes(name));
      const allowed = compiled.solidNames.filter((name) => solid !== "never" || !nucleating.includes(name));
      return dryDown(
        compiled,
        {
          totals_molPerL: totals,
          fixedLog10Activities: { CO2: co2Log10Activity(thermo, tank.temperature_C) },
          electroneutral: "H+",
          activity: activity(tank.temperature_C),
          solids: allowed,
        },
        {
          factors,
          nucleation:
            solid === "at threshold"
              ? nucleating.map((name) => ({ solid: name, thresholdSI: NUCLEATION_SI }))
              : [],
        },
      );
    },
  };
}

/** Components present besides H+, in the data set's own order; carbonate always takes part in an open system. */
function componentsOf(tank: Tank, carbonate: "closed" | "open"): readonly string[] {
  const names = Object.keys(tank.totals_molPerL).filter((name) => (tank.totals_molPerL[name] ?? 0) > 0);
  if (carbonate === "open" && !names.includes("CO3-2")) names.push("CO3-2");
  return names.sort();
}
