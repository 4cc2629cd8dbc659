import { MOLAR_MASSES } from "../units/index.ts";
import type { Tank } from "./tank.ts";
import type { Job, Remark } from "./types.ts";

/**
 * Calcium that leaves give to the drops on them [mol per L of spray]: what stands on the leaf surface under the drops,
 * over the spray that lies there. All spray is taken to land on one layer of leaves, one hectare of leaf to a hectare
 * of ground.
 */
export function leafCalcium_molPerL(
  { leafCalcium_kgPerHa, coverage }: Job["spray"],
  volume_LPerHa: number,
): number {
  if (leafCalcium_kgPerHa === null || coverage === null) return 0;
  return (leafCalcium_kgPerHa * 1000 * coverage) / MOLAR_MASSES.Ca / volume_LPerHa;
}

/** The liquid of a drop on the leaf: that of the tank, with the leaf's calcium as chloride, so that no pH comes with it. */
export function onLeafTank(tank: Tank): Tank {
  const calcium = tank.leafCalcium_molPerL;
  if (calcium === 0) return tank;
  const { "Ca+2": inSpray = 0, "Cl-": chloride = 0 } = tank.totals_molPerL;
  const totals_molPerL = {
    ...tank.totals_molPerL,
    "Ca+2": inSpray + calcium,
    "Cl-": chloride + 2 * calcium,
  };
  return { ...tank, totals_molPerL };
}

/** What the leaf adds, beside what the spray brings; empty where nothing was said of it. */
export function leafCalciumRemarks({ leafCalcium_molPerL: calcium }: Tank): readonly Remark[] {
  if (calcium === 0) return [];
  const shown = (1000 * calcium).toPrecision(2);
  return [
    {
      code: "leaf-calcium",
      text: `The leaf adds ${shown} mmol of calcium to each litre of spray on it, as a neutral salt.`,
      evidence: "computed",
      source: null,
    },
  ];
}
