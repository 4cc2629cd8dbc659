import type { DrawSetting } from "./bands/programme-draws.ts";
import type { Chemistry } from "./chemistry.ts";
import type { Tank } from "./tank.ts";
import type { FerrousIron, Remark } from "./types.ts";

/**
 * Rate of iron(II) with air: −d[Fe(II)]/dt = (k·[OH−]²·p(O2)·w + k0)·[Fe(II)], with k = 1.33e12 L²/(mol²·atm·s) and
 * k0 = 2.91e-9 /s, the slow path of acid water: Parkhurst and Appelo (1999), example 9, after Singer and Stumm (1970).
 * From memory: that k holds at 20.5 °C, and w, a factor of ten for 15 °C at constant pH, both of Stumm and Lee (1961),
 * who give k ± 31 %.
 */
const OXIDATION = {
  k_L2PerMol2AtmMin: 1.33e12 * 60,
  temperature_C: 20.5,
  tenfoldOver_C: 15,
  pKw: 14.15,
  k0_perMin: 2.91e-9 * 60,
} as const;
/** Key of the work behind the rate of iron(II) with air. */
export const OXIDATION_SOURCE = "parkhurst-appelo-1999";
/** What is to be said beside a half-life by that rate. */
export const WARMTH_FROM_MEMORY = "How warmth speeds it is from memory.";
/** Partial pressure of oxygen in air [atm]. */
const OXYGEN_ATM = 0.21;

/** Half-life of iron(II) in water full of air [h]; chelants make it shorter, humus longer. */
export function ferrousHalfLife_h(pH: number, temperature_C: number): number {
  const { k_L2PerMol2AtmMin, temperature_C: at_C, tenfoldOver_C, pKw, k0_perMin } = OXIDATION;
  const hydroxide_molPerL = 10 ** (pH - pKw);
  const warmth = 10 ** ((temperature_C - at_C) / tenfoldOver_C);
  const rate_perMin = k_L2PerMol2AtmMin * OXYGEN_ATM * hydroxide_molPerL ** 2 * warmth + k0_perMin;
  return Math.LN2 / rate_perMin / 60;
}

/**
 * A tank whose iron(II) has stood in air for a time, at the pH it has to begin with: what is oxidised is iron(III) from
 * then on, and may come out as rust. The same tank where it holds no iron(II).
 *
 * @param hours from mixed to last sprayed; null: the share is not known, and the iron stays as it is
 */
export function aired(tank: Tank, chemistry: Chemistry, hours: number | null): Tank {
  const ferrous = tank.totals_molPerL["Fe+2"] ?? 0;
  if (ferrous <= 0 || hours === null || hours <= 0) return tank;
  const solved = chemistry.inTank(tank);
  if (!solved.ok || solved.value.pH === null) return tank;
  const oxidised = 1 - 2 ** (-hours / ferrousHalfLife_h(solved.value.pH, tank.temperature_C));
  return { ...tank, oxidised, totals_molPerL: withOxidised(tank.totals_molPerL, oxidised) };
}

function withOxidised(
  totals: Readonly<Record<string, number>>,
  oxidised: number,
): Readonly<Record<string, number>> {
  const ferrous = totals["Fe+2"] ?? 0;
  return { ...totals, "Fe+2": (1 - oxidised) * ferrous, "Fe+3": (totals["Fe+3"] ?? 0) + oxidised * ferrous };
}

/** Draws of a water whose iron(II) is oxidised in the tank as far as that of the tank itself. */
export function airedDraws(setting: DrawSetting, { oxidised }: Tank): DrawSetting {
  const { draws } = setting;
  const ferrous = draws.waterTotals.get("Fe+2");
  if (oxidised === 0 || ferrous === undefined) return setting;
  const ferric = draws.waterTotals.get("Fe+3");
  const waterTotals = new Map(draws.waterTotals);
  waterTotals.set(
    "Fe+2",
    ferrous.map((total) => (1 - oxidised) * total),
  );
  waterTotals.set(
    "Fe+3",
    ferrous.map((total, i) => (ferric?.[i] ?? 0) + oxidised * total),
  );
  const centralTotals = withOxidised(draws.centralTotals, oxidised);
  return { ...setting, draws: { ...draws, waterTotals, centralTotals } };
}

/** What air does to the iron(II) of a tank; null where it holds none. */
export function airedIron(tank: Tank, pH: number): FerrousIron | null {
  const before = (tank.totals_molPerL["Fe+2"] ?? 0) > 0 || tank.oxidised > 0;
  return before ? { halfLife_h: ferrousHalfLife_h(pH, tank.temperature_C), oxidised: tank.oxidised } : null;
}

/** Iron(II) that needs saying: half-lives of days and more are as good as none. */
export function airRemarks(iron: FerrousIron | null, pH: number, aerated: boolean | null): readonly Remark[] {
  if (iron === null) return [];
  const half = `Iron(II) in air at the tank's pH ${pH.toFixed(1)}: half is iron(III) after ${timeText(iron.halfLife_h)}`;
  const turned = `; ${percent(iron.oxidised)} in 100 when the last is sprayed.`;
  const text = aerated === true ? half + turned : `${half}. Taken to stay as tested.`;
  return [
    {
      code: "iron-in-air",
      text: `${text} ${WARMTH_FROM_MEMORY}`,
      evidence: "computed",
      source: OXIDATION_SOURCE,
    },
  ];
}

function percent(share: number): string {
  return share > 0 && share < 0.005 ? "under 1" : String(Math.round(100 * share));
}

function timeText(hours: number): string {
  if (hours < 1) return `${(60 * hours).toPrecision(2)} min`;
  if (hours <= 72) return `${hours.toPrecision(2)} h`;
  if (hours <= 8766) return `${(hours / 24).toPrecision(2)} days`;
  return hours <= 10 * 8766 ? `${(hours / 8766).toPrecision(2)} years` : "more than ten years";
}
