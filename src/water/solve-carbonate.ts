import { compileSystem, davies, debyeHuckelA, equilibrate, systemFor } from "../chem/index.ts";
import type { ActivityModel, CompiledSystem, Equilibrium, ThermoData } from "../chem/index.ts";
import { CARBONATE } from "./charge.ts";

/** Ionic strength [mol/L] above which Davies' coefficients are held, as in the tank. */
const DAVIES_HELD_AT_MOL_PER_L = 0.5;

/** Activity model of a water at a temperature. */
export function waterActivity(temperature_C: number): ActivityModel {
  return davies({ A: debyeHuckelA(temperature_C), holdAbove_molPerL: DAVIES_HELD_AT_MOL_PER_L });
}

/** A water's composition compiled for the solver. */
export interface WaterSystem {
  readonly system: CompiledSystem;
  readonly activity: ActivityModel;
  /** The last answer at a fixed pH, from which the next water of the same components starts; null at first. */
  last: Equilibrium | null;
}

/** Compiles the system of a composition; carbonate always takes part. */
export function waterSystem(
  totals_molPerL: Readonly<Record<string, number>>,
  thermo: ThermoData,
  temperature_C: number,
): WaterSystem {
  const components = [...new Set([...Object.keys(totals_molPerL), CARBONATE, "Na+", "Cl-"])];
  const definition = systemFor(thermo, { components, temperature_C, solids: "none", carbonate: "closed" });
  return { system: compileSystem(definition), activity: waterActivity(temperature_C), last: null };
}

/** Every component of a system with its total, zero where there is none. */
function allTotals(system: CompiledSystem, totals: Readonly<Record<string, number>>): Record<string, number> {
  return Object.fromEntries(
    system.componentNames.filter((name) => name !== "H+").map((name) => [name, totals[name] ?? 0]),
  );
}

/** Equilibrium of a composition at a given pH, whatever charge is left over; null when there is none. */
export function atPH(
  { system, activity }: WaterSystem,
  totals_molPerL: Readonly<Record<string, number>>,
  pH: number,
  start: Equilibrium | null = null,
): Equilibrium | null {
  const result = equilibrate(system, {
    totals_molPerL: allTotals(system, totals_molPerL),
    fixedLog10Activities: { "H+": -pH },
    activity,
    ...(start === null ? {} : { start }),
  });
  return result.ok ? result.value : null;
}

/** Equilibrium of a composition at its own pH, the one at which charges balance; null when there is none. */
export function atOwnPH(
  { system, activity }: WaterSystem,
  totals_molPerL: Readonly<Record<string, number>>,
): Equilibrium | null {
  const result = equilibrate(system, {
    totals_molPerL: allTotals(system, totals_molPerL),
    electroneutral: "H+",
    activity,
  });
  return result.ok ? result.value : null;
}

/** Charge left over in a solution [eq/L]: Σ z·c over its species. */
export function chargeOf_eqPerL({ system, concentrations }: Equilibrium): number {
  let charge = 0;
  concentrations.forEach((c, i) => {
    charge += (system.speciesCharges[i] ?? 0) * c;
  });
  return charge;
}

/** Concentration of a species [mol/L]; 0 when the system has none of that name. */
export function speciesConcentration(equilibrium: Equilibrium, name: string): number {
  const index = equilibrium.system.speciesIndex.get(name);
  return index === undefined ? 0 : (equilibrium.concentrations[index] ?? 0);
}

/** How the inorganic carbon was found. */
export type CarbonateResult =
  | { readonly kind: "solved"; readonly carbon_molPerL: number; readonly equilibrium: Equilibrium }
  /** Without any carbon the solution is already too negative: the pH is too high for the alkalinity. */
  | { readonly kind: "pH too high"; readonly surplus_eqPerL: number }
  | { readonly kind: "no equilibrium" };

/** Most steps of the search for the inorganic carbon; five are usual. */
const MOST_STEPS = 60;
/** Charge [eq/L, and relative to the strong ions] that counts as none. */
const NO_CHARGE_EQ_PER_L = 1e-13;

/** First and second pK of carbonic acid in fresh water, to start the search from only. */
const ROUGH_PK = [6.35, 10.33] as const;

/** Negative charges of a mole of carbonic acid at a pH, without activity and ion pairs: where the search starts. */
function chargePerCarbon(pH: number): number {
  const first = 10 ** (pH - ROUGH_PK[0]);
  const second = first * 10 ** (pH - ROUGH_PK[1]);
  return Math.max(1e-3, (first + 2 * second) / (1 + first + second));
}

/**
 * Total inorganic carbon [mol/L] at which a composition of strong ions is electrically neutral at the measured pH.
 *
 * At fixed pH every mole of carbon adds between no charge and two negative ones, so the charge falls with the carbon
 * almost in a straight line: a secant with bisection finds the one root.
 */
export function solveCarbonate(
  water: WaterSystem,
  totals_molPerL: Readonly<Record<string, number>>,
  pH: number,
): CarbonateResult {
  const charge = (carbon: number): number | null => {
    const found = atPH(water, { ...totals_molPerL, [CARBONATE]: carbon }, pH, water.last);
    if (found === null) return null;
    if (carbon > 0) water.last = found;
    return chargeOf_eqPerL(found);
  };
  const sizes = Object.values(totals_molPerL).reduce((sum, total) => sum + Math.abs(total), 0);
  const small = NO_CHARGE_EQ_PER_L + 1e-11 * sizes;
  const none = charge(0);
  if (none === null) return { kind: "no equilibrium" };
  if (none <= small) return { kind: "pH too high", surplus_eqPerL: none };
  let low = 0;
  let atLow = none;
  let high = none / chargePerCarbon(pH);
  let atHigh = charge(high);
  for (let grow = 1.3; atHigh !== null && atHigh > 0 && high < 100; grow *= 2) {
    low = high;
    atLow = atHigh;
    high *= grow;
    atHigh = charge(high);
  }
  if (atHigh === null || atHigh > 0) return { kind: "no equilibrium" };
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const secant = low + ((high - low) * atLow) / (atLow - atHigh);
    // A secant that crawls from one side is helped by a bisection every third step.
    const middle = step % 3 === 2 ? (low + high) / 2 : secant;
    const atMiddle = charge(middle);
    if (atMiddle === null) return { kind: "no equilibrium" };
    if (Math.abs(atMiddle) <= small || high - low <= 1e-15 * high) {
      return { kind: "solved", carbon_molPerL: middle, equilibrium: water.last! };
    }
    if (atMiddle > 0) {
      low = middle;
      atLow = atMiddle;
    } else {
      high = middle;
      atHigh = atMiddle;
    }
  }
  return { kind: "no equilibrium" };
}
