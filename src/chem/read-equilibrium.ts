import type { CompiledSystem } from "./compile.ts";
import type { Conditions, Equilibrium } from "./conditions.ts";
import { isInteraction } from "./interaction-model.ts";
import type { Preparation } from "./prepare.ts";
import type { SolveTask } from "./solve.ts";
import { WATER_MOLAR_MASS_KG_PER_MOL } from "./water-properties.ts";

/**
 * Copies a converged state out of the workspace into arrays of the caller's own; needs `recoverActivities` first, and
 * the concentrations of the last evaluation.
 */
export function readEquilibrium(
  system: CompiledSystem,
  preparation: Preparation,
  conditions: Conditions,
  task: SolveTask,
): Equilibrium {
  const w = system.workspace;
  const species = system.speciesNames.length;
  const concentrations = new Float64Array(species);
  const log10Concentrations = new Float64Array(species).fill(-Infinity);
  const lnGamma = new Float64Array(species);
  let ionicStrength_molPerL = 0;
  for (let i = 0; i < w.n; i++) {
    const s = w.speciesOf[i]!;
    concentrations[s] = w.c[i]!;
    log10Concentrations[s] = w.lnC[i]! / Math.LN10;
    lnGamma[s] = w.lnGamma[i]!;
    ionicStrength_molPerL += w.halfZ2[i]! * concentrations[s];
  }
  const log10Activities = new Float64Array(system.componentNames.length).fill(-Infinity);
  for (let j = 0; j < log10Activities.length; j++) {
    const fixed = preparation.lnFixed[j]!;
    const label = w.labelOf[j]!;
    if (fixed === fixed) log10Activities[j] = fixed / Math.LN10;
    else if (label >= 0) log10Activities[j] = w.lnActivity[label]! / Math.LN10;
  }
  const solids = new Float64Array(system.solidNames.length);
  const present = new Uint8Array(solids.length);
  for (let k = 0; k < w.m; k++) {
    const member = w.member[k]!;
    if (member >= 0) continue;
    solids[w.solidOf[-1 - member]!] = Math.max(0, -w.residual[k]!);
    present[w.solidOf[-1 - member]!] = 1;
  }
  const saturationIndices = new Float64Array(solids.length);
  for (let s = 0; s < solids.length; s++) {
    saturationIndices[s] = present[s] === 1 ? 0 : saturationIndex(system, preparation, log10Activities, s);
    const water = system.definition.solids[s]!.water ?? 0;
    if (present[s] === 0 && water !== 0) saturationIndices[s]! += (water * w.lnWater) / Math.LN10;
  }
  const proton = system.componentIndex.get("H+");
  const logH = proton === undefined ? -Infinity : log10Activities[proton]!;
  return {
    system,
    concentrations,
    log10Concentrations,
    log10Activities,
    lnGamma,
    ionicStrength_molPerL,
    solids,
    saturationIndices,
    pH: logH === -Infinity ? null : -logH,
    iterations: w.iterations,
    residual: w.lastResidual,
    ...rangeOf(conditions, concentrations, ionicStrength_molPerL, task),
  };
}

/** Water activity, and what of the answer lies outside the range of the model or rests on estimates. */
function rangeOf(
  { activity }: Conditions,
  concentrations: Float64Array,
  ionicStrength: number,
  { interactions }: SolveTask,
): Pick<Equilibrium, "waterActivity" | "osmoticCoefficient" | "extrapolated" | "rangeNotes" | "estimates"> {
  if (!isInteraction(activity) || interactions === null) {
    const sum = concentrations.reduce((total, c) => total + c, 0);
    const phi = isInteraction(activity) ? null : activity.osmoticCoefficient(ionicStrength, sum);
    return {
      waterActivity: phi === null ? null : Math.exp(-WATER_MOLAR_MASS_KG_PER_MOL * sum * phi),
      osmoticCoefficient: phi,
      extrapolated: !activity.ideal && !isInteraction(activity) && ionicStrength > activity.fittedTo,
      rangeNotes: [],
      estimates: [],
    };
  }
  const { terms, molality } = interactions.state;
  const rangeNotes = terms.rangeNotes(molality);
  return {
    waterActivity: Math.exp(terms.lnWaterActivity),
    osmoticCoefficient: terms.osmoticCoefficient,
    extrapolated: rangeNotes.length > 0,
    rangeNotes,
    estimates: terms.estimateNotes(molality),
  };
}

function saturationIndex(
  system: CompiledSystem,
  preparation: Preparation,
  log10Activities: Float64Array,
  solid: number,
): number {
  const rows = system.solidRows;
  let index = -preparation.logKsp[solid]!;
  for (let e = rows.start[solid]!; e < rows.start[solid + 1]!; e++) {
    const activity = log10Activities[rows.index[e]!]!;
    if (activity === -Infinity) return -Infinity;
    index += rows.value[e]! * activity;
  }
  return index;
}
