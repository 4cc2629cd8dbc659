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
  /** Of the last water: positive charge of all that is not carbonate over the carbon that made it neutral [eq/mol]; null at first. */
  lastChargePerCarbon: number | null;
}

/** Compiles the system of a composition; carbonate always takes part. */
export function waterSystem(
  totals_molPerL: Readonly<Record<string, number>>,
  thermo: ThermoData,
  temperature_C: number,
): WaterSystem {
  const components = [...new Set([...Object.keys(totals_molPerL), CARBONATE, "Na+", "Cl-"])];
  const definition = systemFor(thermo, { components, temperature_C, solids: "none", carbonate: "closed" });
  return {
    system: compileSystem(definition),
    activity: waterActivity(temperature_C),
    last: null,
    lastChargePerCarbon: null,
  };
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
/** Charge [eq/L] that counts as none, beside what is relative to the sum of all ions. */
const NO_CHARGE_EQ_PER_L = 1e-13;
/** Charge that counts as none, relative to the sum of all ions. A drawn water is solved as far: a secant that is near needs one step for it. */
const PRECISION = 1e-11;

/** First and second pK of carbonic acid in fresh water, to start the search from only. */
const ROUGH_PK = [6.35, 10.33] as const;

/** Negative charges of a mole of carbonic acid at a pH, without activity and ion pairs: where the search starts. */
function chargePerCarbon(pH: number): number {
  const first = 10 ** (pH - ROUGH_PK[0]);
  const second = first * 10 ** (pH - ROUGH_PK[1]);
  return Math.max(1e-3, (first + 2 * second) / (1 + first + second));
}

/** Charge of the strong ions and of what else is neither carbonate nor proton [eq/L]. */
function chargeWithoutCarbon(system: CompiledSystem, totals: Readonly<Record<string, number>>): number {
  let charge = 0;
  for (const { name, charge: z } of system.definition.components) {
    if (name !== "H+" && name !== CARBONATE) charge += z * (totals[name] ?? 0);
  }
  return charge;
}

/** Most steps from the last water's carbon; two or three are usual. */
const MOST_NEAR_STEPS = 6;

/**
 * The carbon of a water that is much like the last one, by a secant that starts from it; null when that leads nowhere,
 * which says nothing about the water.
 */
function nearLast(
  { system, lastChargePerCarbon }: WaterSystem,
  totals_molPerL: Readonly<Record<string, number>>,
  charge: (carbon: number) => number | null,
  small: number,
): number | null {
  if (lastChargePerCarbon === null) return null;
  let carbon = chargeWithoutCarbon(system, totals_molPerL) / lastChargePerCarbon;
  let slope = -lastChargePerCarbon;
  let before: { readonly carbon: number; readonly charge: number } | null = null;
  for (let step = 0; step < MOST_NEAR_STEPS; step += 1) {
    if (!(carbon > 0)) return null;
    const left = charge(carbon);
    if (left === null) return null;
    if (Math.abs(left) <= small) return carbon;
    if (before !== null) slope = (left - before.charge) / (carbon - before.carbon);
    if (!(slope < 0)) return null;
    before = { carbon, charge: left };
    carbon -= left / slope;
  }
  return null;
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
  const small = NO_CHARGE_EQ_PER_L + PRECISION * sizes;
  const solved = (carbon: number): CarbonateResult => {
    const perCarbon = chargeWithoutCarbon(water.system, totals_molPerL) / carbon;
    water.lastChargePerCarbon = perCarbon > 0 ? perCarbon : null;
    return { kind: "solved", carbon_molPerL: carbon, equilibrium: water.last! };
  };
  const near = nearLast(water, totals_molPerL, charge, small);
  if (near !== null) return solved(near);
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
      return solved(middle);
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
