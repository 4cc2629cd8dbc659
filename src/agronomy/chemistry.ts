import {
  atFactor,
  co2Log10Activity,
  compileSystem,
  davies,
  debyeHuckelA,
  DROPLET_SOLIDS,
  DRYING_SOLIDS,
  dryToWaterActivity,
  equilibrate,
  builtInPitzer,
  pitzer,
  systemFor,
  TANK_SOLIDS,
} from "../chem/index.ts";
import type {
  ActivityModel,
  CompiledSystem,
  Conditions,
  DryToResult,
  Equilibrium,
  EquilibriumResult,
  InteractionModel,
  ThermoData,
  SystemDefinition,
} from "../chem/index.ts";
import { onLeafTank } from "./leaf-calcium.ts";
import { recent } from "./recent.ts";
import type { Tank } from "./tank.ts";

/**
 * Ionic strength [mol/L] up to which the full tank is solved with Davies' formula; above it with Pitzer's equations.
 * Source: range of use after Davies (1962), Ion Association, p. 41 (from memory).
 */
export const DAVIES_TO_MOL_PER_L = 0.5;

/** Relative humidity at which a drop on a leaf stops drying when the job does not say; our assumption. */
export const USUAL_HUMIDITY = 0.8;

/**
 * Factors of the drying path shown: kg of water at first per kg of liquid water left. The tenfold one is always among
 * them, for comparison. Common practice, no published source.
 */
export const DRYING_STOPS: readonly number[] = [1, 2, 4, 7, 10, 16, 25, 40];

/** Coarser path for dose searches: the same end, fewer stops to see whether a solid nucleates on the way. */
export const SEARCH_STOPS: readonly number[] = [1, 4, 12, 36];

/** Mismatch [ln] at which a stop of a path is solved: shares are told to three figures, derivatives are taken from 1e-8. */
export const PATH_TOLERANCE = 1e-10;

/** Factor beyond which a drop is not followed; a few hundred micrometres across have become a few tens by then. */
const MOST_FACTOR = 3000;

/** Supersaturation at which the calcium salt of an active is taken to nucleate; our assumption, not measured. */
export const NUCLEATION_SI = 1.5;

/** Solids that hold an active and form only past a supersaturation threshold. */
export const NUCLEATING_SOLIDS: readonly string[] = ["calcium hydrogen glyphosate"];

/** Solids a closed tank or an open, drying drop may form. */
function solidsConsidered(carbonate: "closed" | "open"): readonly string[] {
  return carbonate === "closed" ? TANK_SOLIDS : [...DRYING_SOLIDS, ...DROPLET_SOLIDS, ...NUCLEATING_SOLIDS];
}

/** What the calcium salt of the active may do while the drop dries. */
export type LeafSolid = "never" | "at threshold" | "at equilibrium";

/** Equilibrium answers for tanks; compiled systems are kept, so that a dose search compiles each only once. */
export interface Chemistry {
  readonly thermo: ThermoData;
  /** Relative humidity of the air [1] at which a drop stops drying. */
  readonly humidity: number;
  /**
   * The same without a memory: answers start from the last ones, and so depend on them in their last digits. What begins
   * afresh comes to the same whatever was asked before it.
   */
  afresh(): Chemistry;
  /** The full tank, closed to the air. */
  inTank(tank: Tank): EquilibriumResult;
  /** What `inTank` solved to get an answer. */
  conditionsInTank(tank: Tank, answer: Equilibrium): Conditions;
  /** What `dry` solves, before any water has gone; the solid is or is not allowed, without a threshold. */
  conditionsOnLeaf(tank: Tank, solid: LeafSolid): Conditions;
  /** The same liquid as water leaves it, open to the air's carbon dioxide, until it is in balance with the air's water. */
  dry(tank: Tank, solid: LeafSolid, stops: readonly number[]): DryToResult;
  /** The systems that answers for a tank rest on: the full tank, and the drop on the leaf. */
  systems(tank: Tank): readonly SystemDefinition[];
  /**
   * The drop at a factor by its complexes alone: Davies' coefficients held, nothing borrowed from other salts. Soluble
   * salts cannot form in it, since their constants belong to the interaction parameters.
   *
   * @param withSalt whether the calcium salt of an active may form
   */
  byComplexesAlone(tank: Tank, factor: number, withSalt: boolean): EquilibriumResult;
}

/** Answers kept for a data set, so that the next plan of the same page finds its systems compiled. */
const kept = new WeakMap<ThermoData, Map<number, Chemistry>>();
/** Humidities and compiled systems kept at most; a person trying values must not fill the memory. */
const MOST_HUMIDITIES = 4;
const MOST_SYSTEMS = 200;

/**
 * The equilibrium answers on a data set; the same ones for the same humidity.
 *
 * @param humidity relative humidity of the air [1] at which a drop stops drying
 */
export function chemistryOn(thermo: ThermoData, humidity: number = USUAL_HUMIDITY): Chemistry {
  const ofThermo = kept.get(thermo) ?? new Map<number, Chemistry>();
  kept.set(thermo, ofThermo);
  let chemistry = ofThermo.get(humidity);
  if (chemistry === undefined) {
    if (ofThermo.size >= MOST_HUMIDITIES) ofThermo.clear();
    chemistry = buildChemistry(groundOf(thermo, humidity));
    ofThermo.set(humidity, chemistry);
  }
  return chemistry;
}

/** What all answers on a data set share: systems compiled, models laid out, conditions. */
interface Ground {
  readonly thermo: ThermoData;
  readonly humidity: number;
  system(tank: Tank, carbonate: "closed" | "open", withPitzer: boolean): CompiledSystem;
  /** Whether a system was compiled for Pitzer's equations. */
  isByPitzer(compiled: CompiledSystem): boolean;
  activity(temperature_C: number): { readonly davies: ActivityModel; readonly pitzer: InteractionModel };
  onLeaf(
    filled: Tank,
    solid: LeafSolid,
  ): { readonly compiled: CompiledSystem; readonly conditions: Conditions };
}

function groundOf(thermo: ThermoData, humidity: number): Ground {
  const interactions = builtInPitzer();
  const systems = new Map<string, CompiledSystem>();
  const strong = new WeakSet<CompiledSystem>();
  const models = new Map<number, { readonly davies: ActivityModel; readonly pitzer: InteractionModel }>();

  const system = (tank: Tank, carbonate: "closed" | "open", withPitzer: boolean): CompiledSystem => {
    const components = componentsOf(tank, carbonate);
    const key = `${carbonate}|${String(withPitzer)}|${String(tank.temperature_C)}|${components.join(",")}`;
    return recent(systems, key, MOST_SYSTEMS, () => {
      const compiled = compileSystem(
        systemFor(thermo, {
          components,
          temperature_C: tank.temperature_C,
          solids: solidsConsidered(carbonate),
          carbonate,
          alkaliPairs: false,
          ...(withPitzer ? { interactions } : {}),
        }),
      );
      if (withPitzer) strong.add(compiled);
      return compiled;
    });
  };

  const activity = (
    temperature_C: number,
  ): { readonly davies: ActivityModel; readonly pitzer: InteractionModel } => {
    let found = models.get(temperature_C);
    if (found === undefined) {
      found = {
        davies: davies({ A: debyeHuckelA(temperature_C), holdAbove_molPerL: DAVIES_TO_MOL_PER_L }),
        pitzer: pitzer(interactions, { temperature_C }),
      };
      models.set(temperature_C, found);
    }
    return found;
  };

  const onLeaf = (filled: Tank, solid: LeafSolid): { compiled: CompiledSystem; conditions: Conditions } => {
    const tank = onLeafTank(filled);
    const compiled = system(tank, "open", true);
    const totals: Record<string, number> = {};
    for (const [component, total] of Object.entries(tank.totals_molPerL)) {
      if (component !== "CO3-2") totals[component] = total;
    }
    const solids = compiled.solidNames.filter(
      (name) => solid !== "never" || !NUCLEATING_SOLIDS.includes(name),
    );
    const conditions: Conditions = {
      totals_molPerL: totals,
      fixedLog10Activities: { CO2: co2Log10Activity(thermo, tank.temperature_C) },
      electroneutral: "H+",
      activity: activity(tank.temperature_C).pitzer,
      solids,
    };
    return { compiled, conditions };
  };

  return { thermo, humidity, system, isByPitzer: (compiled) => strong.has(compiled), activity, onLeaf };
}

function inTank(tank: Tank, activity: Conditions["activity"]): Conditions {
  return { totals_molPerL: tank.totals_molPerL, electroneutral: "H+", activity };
}

function buildChemistry(ground: Ground): Chemistry {
  const { thermo, humidity, system, isByPitzer, activity, onLeaf } = ground;
  // The last answers for the tank and for the first step of a path: the next ones are near, and start from them.
  const lastAnswers = new WeakMap<CompiledSystem, Equilibrium>();
  const lastPaths = new WeakMap<CompiledSystem, Map<LeafSolid, DryToResult["steps"]>>();
  const startOf = (compiled: CompiledSystem): { readonly start?: Equilibrium } => {
    const start = lastAnswers.get(compiled);
    return start === undefined ? {} : { start };
  };
  return {
    thermo,
    humidity,
    afresh: () => buildChemistry(ground),
    inTank: (tank) => {
      const { davies: dilute, pitzer: strong } = activity(tank.temperature_C);
      const compiled = system(tank, "closed", false);
      const solved = equilibrate(compiled, { ...inTank(tank, dilute), ...startOf(compiled) });
      if (solved.ok) lastAnswers.set(compiled, solved.value);
      if (!solved.ok || solved.value.ionicStrength_molPerL <= DAVIES_TO_MOL_PER_L) return solved;
      return equilibrate(system(tank, "closed", true), inTank(tank, strong));
    },
    conditionsInTank: (tank, answer) => {
      const { davies: dilute, pitzer: strong } = activity(tank.temperature_C);
      return inTank(tank, isByPitzer(answer.system) ? strong : dilute);
    },
    conditionsOnLeaf: (tank, solid) => onLeaf(tank, solid).conditions,
    dry: (tank, solid, stops) => {
      const { compiled, conditions } = onLeaf(tank, solid);
      const nucleation =
        solid === "at threshold"
          ? compiled.solidNames
              .filter((name) => NUCLEATING_SOLIDS.includes(name))
              .map((name) => ({ solid: name, thresholdSI: NUCLEATION_SI }))
          : [];
      const ofSystem = lastPaths.get(compiled) ?? new Map<LeafSolid, DryToResult["steps"]>();
      lastPaths.set(compiled, ofSystem);
      const similar = ofSystem.get(solid) ?? [];
      const result = dryToWaterActivity(
        compiled,
        { ...conditions, tolerance: PATH_TOLERANCE },
        { waterActivity: humidity, stops, mostFactor: MOST_FACTOR, nucleation, similar },
      );
      ofSystem.set(solid, result.steps);
      return result;
    },
    systems: (tank) => [
      system(tank, "closed", false).definition,
      system(onLeafTank(tank), "open", true).definition,
    ],
    byComplexesAlone: (tank, factor, withSalt) => {
      const compiled = system(onLeafTank(tank), "open", false);
      const { conditions } = onLeaf(tank, withSalt ? "at equilibrium" : "never");
      const solids = (conditions.solids ?? []).filter((name) => !DROPLET_SOLIDS.includes(name));
      const { davies: dilute } = activity(tank.temperature_C);
      return equilibrate(compiled, atFactor({ ...conditions, solids, activity: dilute }, factor));
    },
  };
}

/** Components present besides H+, in the data set's own order; carbonate always takes part in an open system. */
function componentsOf(tank: Tank, carbonate: "closed" | "open"): readonly string[] {
  const names = Object.keys(tank.totals_molPerL).filter((name) => (tank.totals_molPerL[name] ?? 0) > 0);
  if (carbonate === "open" && !names.includes("CO3-2")) names.push("CO3-2");
  return names.sort();
}
