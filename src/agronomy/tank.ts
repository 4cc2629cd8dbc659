import type { ThermoData } from "../chem/index.ts";
import type { Water } from "../water/index.ts";
import type { ActiveForm, ActiveRecord, ConditionerRecord } from "./data-types.ts";
import { feedConcentration_molPerL } from "./feed.ts";
import type { MixFeed } from "./feed.ts";
import { suspendedSolids_mgPerL } from "./mud.ts";
import type { Ends, MixItem } from "./types.ts";

/** A conditioner at a dose. */
export interface DosedConditioner {
  readonly record: ConditionerRecord;
  /** Form sold. */
  readonly formId: string;
  /** Form sold [g per L of spray]. */
  readonly dose_gPerL: number;
}

/** A product of the mix with its records found. */
export interface MixProduct {
  readonly item: MixItem;
  readonly active: ActiveRecord;
  readonly form: ActiveForm | null;
}

/** One active in the tank. */
export interface TankActive {
  readonly product: MixProduct;
  /** Active [mol per L of spray]. */
  readonly concentration_molPerL: number;
  /** Its component in the chemical system; null when it does not take part (an ester, a neutral molecule). */
  readonly component: string | null;
}

/** What is in the tank, as totals; pH and speciation follow by equilibrium. */
export interface Tank {
  /** Total of every component but H+ [mol per L of spray]. */
  readonly totals_molPerL: Readonly<Record<string, number>>;
  readonly actives: readonly TankActive[];
  readonly temperature_C: number;
  readonly volume_LPerHa: number;
  /** Water from the source [L per L of spray]; products and conditioners take the rest. */
  readonly waterShare: number;
  /** Mud that the water brings, per litre of spray; null where it was not tested. */
  readonly suspendedSolids_mgPerL: Ends | null;
  /** Calcium that the leaf gives to a litre of spray on it [mol/L]; not in the totals. */
  readonly leafCalcium_molPerL: number;
  /** Share of the iron(II) that air has turned to iron(III) in the tank [1]. */
  readonly oxidised: number;
}

/** A component that is a smaller part than this of the least active holds no share of any that could be told. */
export const TRACE_OF_LEAST = 1e-4;

/** A tank without its traces: the same answer to 0.01 %, for a search that solves it many times. */
export function withoutTraces(tank: Tank): Tank {
  const least = TRACE_OF_LEAST * Math.min(...tank.actives.map((active) => active.concentration_molPerL));
  const own = new Set(tank.actives.map(({ component }) => component));
  const kept = Object.entries(tank.totals_molPerL).filter(([name, total]) => total >= least || own.has(name));
  return { ...tank, totals_molPerL: Object.fromEntries(kept) };
}

/** Active per litre of spray [mol/L] from the product's strength and rate. */
export function activeConcentration_molPerL(product: MixProduct, volume_LPerHa: number): number {
  const { item, active, form } = product;
  const grams_perHa = item.rate.value * item.strength.value;
  const acidShare = item.strength.basis === "salt" && form !== null ? form.acidEquivalent : 1;
  return (grams_perHa * acidShare) / volume_LPerHa / active.molarMass_gPerMol;
}

/** Substance [mol per L of spray] that a dose of a conditioner brings. */
export function conditionerConcentration_molPerL(conditioner: DosedConditioner): number {
  const form =
    conditioner.record.forms.find((f) => f.id === conditioner.formId) ?? conditioner.record.forms[0];
  const assay = (form?.assay_percent ?? 100) / 100;
  return (conditioner.dose_gPerL * assay) / conditioner.record.molarMass_gPerMol;
}

/**
 * Fills a tank: water, products, leaf feeds and conditioners, per litre of finished spray. Liquid products and liquid
 * conditioners take the place of water, so the water's ions are diluted by their volume; dry ones are taken not to.
 */
export function fillTank(
  water: Water,
  mix: readonly MixProduct[],
  conditioners: readonly DosedConditioner[],
  feeds: readonly MixFeed[],
  spray: { readonly volume_LPerHa: number; readonly temperature_C: number },
  thermo: ThermoData,
): Tank {
  const totals: Record<string, number> = {};
  const add = (component: string, amount_molPerL: number): void => {
    if (amount_molPerL > 0) totals[component] = (totals[component] ?? 0) + amount_molPerL;
  };

  const liquidShare =
    mix.reduce((sum, p) => sum + (p.item.rate.per === "L" ? p.item.rate.value : 0), 0) / spray.volume_LPerHa +
    feeds.reduce((sum, f) => sum + (f.item.rate.per === "L" ? f.item.rate.value : 0), 0) /
      spray.volume_LPerHa +
    conditioners.reduce((sum, c) => sum + liquidVolume_LPerL(c), 0);
  const waterShare = Math.max(0, 1 - liquidShare);
  for (const [component, total] of Object.entries(water.totals_molPerL)) add(component, total * waterShare);

  const mud = suspendedSolids_mgPerL(water);
  const actives = mix.map((product): TankActive => {
    const concentration_molPerL = activeConcentration_molPerL(product, spray.volume_LPerHa);
    const component = activeComponent(product, thermo);
    if (component !== null) add(component, concentration_molPerL);
    if (product.form?.dissociates === true) {
      for (const [ion, count] of Object.entries(product.form.counterIons))
        add(ion, count * concentration_molPerL);
    }
    return { product, concentration_molPerL, component };
  });

  for (const feed of feeds) {
    const amount = feedConcentration_molPerL(feed, spray.volume_LPerHa);
    for (const [component, count] of Object.entries(feed.record.released)) add(component, count * amount);
  }
  for (const conditioner of conditioners) {
    const amount = conditionerConcentration_molPerL(conditioner);
    for (const [component, count] of Object.entries(conditioner.record.released))
      add(component, count * amount);
  }
  return {
    totals_molPerL: totals,
    actives,
    temperature_C: spray.temperature_C,
    volume_LPerHa: spray.volume_LPerHa,
    waterShare,
    suspendedSolids_mgPerL: mud === null ? null : { low: waterShare * mud.low, high: waterShare * mud.high },
    leafCalcium_molPerL: 0,
    oxidised: 0,
  };
}

function liquidVolume_LPerL(conditioner: DosedConditioner): number {
  const form =
    conditioner.record.forms.find((f) => f.id === conditioner.formId) ?? conditioner.record.forms[0];
  const density = form?.density_gPerMl ?? null;
  return density === null ? 0 : conditioner.dose_gPerL / density / 1000;
}

/** Component of an active in the thermodynamic data, or null when it does not ionise or has no constants at all. */
function activeComponent(product: MixProduct, thermo: ThermoData): string | null {
  if (product.active.ligand === null || product.form?.dissociates === false) return null;
  return thermo.ligands.find((l) => l.id === product.active.ligand)?.component ?? null;
}
