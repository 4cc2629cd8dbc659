import { HardstandError } from "../units/index.ts";
import type { Measures } from "../units/index.ts";
import type { Load, LoadAmount, Loads } from "./types.ts";

/** Something that goes into every load, by area or by litre of spray. */
export interface MixAmount {
  readonly product: string;
  readonly label: string;
  /** Product per hectare; left out for what is dosed per litre. */
  readonly perHa?: { readonly value: number; readonly unit: "L" | "kg" };
  /** Product per litre of spray; a liquid has a density and is measured by volume. */
  readonly perL?: { readonly value_g: number; readonly density_gPerMl: number | null };
}

/** The sprayer and the job. */
export interface SprayJob {
  readonly volume_LPerHa: number;
  readonly tank_L: number;
  readonly area_ha: number;
  /** Those the tank is said in; metric if left out. */
  readonly measures?: Measures;
}

/** Number of loads closer than this to a whole number is that number: no part load of a rounding error. */
const WHOLE_LOADS_TOLERANCE = 1e-9;

/**
 * Splits a job into full loads and a last part load, each with its own amounts. What is dosed per litre follows the
 * volume of its load, so the last load never gets a full load's conditioner.
 *
 * @returns `full`: a full load, or the only load when the job needs less than a tank; `last`: the part load after the
 * full ones, null when the area comes out even or one load does it all
 * @throws HardstandError "load-invalid" when volume, tank or area is not above zero
 */
export function loads(job: SprayJob, amounts: readonly MixAmount[]): Loads {
  const { volume_LPerHa, tank_L, area_ha, measures = "metric" } = job;
  if (![volume_LPerHa, tank_L, area_ha].every((v) => v > 0 && Number.isFinite(v))) {
    throw new HardstandError("load-invalid", "loads", { ...job });
  }
  const spray_L = volume_LPerHa * area_ha;
  const inLoads = spray_L / tank_L;
  const whole = Math.round(inLoads);
  if (whole >= 1 && Math.abs(inLoads - whole) <= WHOLE_LOADS_TOLERANCE * whole) {
    return { measures, count: whole, full: loadOf(tank_L, area_ha / whole, amounts), last: null };
  }
  const fullLoads = Math.floor(inLoads);
  if (fullLoads === 0) return { measures, count: 1, full: loadOf(spray_L, area_ha, amounts), last: null };
  const area_haPerFull = tank_L / volume_LPerHa;
  const rest_L = spray_L - fullLoads * tank_L;
  return {
    measures,
    count: fullLoads + 1,
    full: loadOf(tank_L, area_haPerFull, amounts),
    last: loadOf(rest_L, area_ha - fullLoads * area_haPerFull, amounts),
  };
}

function loadOf(volume_L: number, area_ha: number, amounts: readonly MixAmount[]): Load {
  return { volume_L, area_ha, amounts: amounts.map((amount) => amountIn(amount, volume_L, area_ha)) };
}

function amountIn(amount: MixAmount, volume_L: number, area_ha: number): LoadAmount {
  const { product, label, perHa, perL } = amount;
  if (perHa !== undefined) return { product, label, amount: perHa.value * area_ha, unit: perHa.unit };
  if (perL === undefined) throw new HardstandError("amount-without-dose", "loads", { product });
  const mass_kg = (perL.value_g * volume_L) / 1000;
  if (perL.density_gPerMl === null) return { product, label, amount: mass_kg, unit: "kg" };
  return { product, label, amount: mass_kg / perL.density_gPerMl, unit: "L" };
}

/**
 * Share of the spray left in a tank after rinsing: one more dilution for each part of the water.
 *
 * @param residue_L liquid that stays in the machine each time
 * @param water_L clean water in all
 * @param parts number of equal rinses it is used in
 */
export function shareLeftAfterRinsing(residue_L: number, water_L: number, parts: number): number {
  return (residue_L / (residue_L + water_L / parts)) ** parts;
}
