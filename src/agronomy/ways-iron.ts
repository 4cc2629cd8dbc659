import { HardstandError, MOLAR_MASSES } from "../units/index.ts";
import { alkalinityOf_eqPerL, blendWaters } from "../water/index.ts";
import type { Water } from "../water/index.ts";
import { settledDraws } from "./bands/programme-draws.ts";
import { ferrousHalfLife_h, OXIDATION_SOURCE } from "./iron-air.ts";
import { draftOf } from "./programmes.ts";
import type { Draft, Setting } from "./programmes.ts";
import type { Remark } from "./types.ts";
import type { Computed } from "./verdict.ts";

/** Iron taken to be left after airing and settling, without a filter [mg/L]. Common practice, no published source. */
export const IRON_LEFT_MG_PER_L = 0.3;

/** Half-lives until under a hundredth of the iron(II) is left. */
const HALF_LIVES = 7;

/** Iron of a water [mg/L], both forms. */
function iron_mgPerL(water: Water): number {
  const { "Fe+2": ferrous = 0, "Fe+3": ferric = 0 } = water.totals_molPerL;
  return (ferrous + ferric) * MOLAR_MASSES.Fe * 1000;
}

/** Airing the water and letting its iron settle before it is used; null when there is too little iron to settle. */
export function ironSettled(setting: Setting): Computed<Draft | null> {
  const before = iron_mgPerL(setting.water);
  if (before <= 2 * IRON_LEFT_MG_PER_L) return { ok: true, value: null };
  const left = IRON_LEFT_MG_PER_L / before;
  const water = settled(setting.water, left, setting);
  if (!water.ok) return water;
  const hours = HALF_LIVES * ferrousHalfLife_h(setting.water.pH, setting.temperature_C);
  return {
    ok: true,
    value: draftOf(
      {
        ...setting,
        water: water.value,
        drawn: setting.drawn === null ? null : settledDraws(setting.drawn, ["Fe+2", "Fe+3"], left),
      },
      {
        id: "iron-settled",
        name: "let the iron settle",
        kind: "iron settled",
        remarks: remarksOn(before, hours, setting.water.pH),
        preparation: [
          {
            what: "Spray or stir the water into a holding tank with air. Let it stand overnight or longer.",
            why: "Air turns dissolved iron to rust, and rust sinks. Only settled iron no longer binds.",
            adds: null,
            pause: true,
            evidence: "common practice",
            source: "common-practice",
          },
          {
            what: "Draw the clear water from above the sludge and test its iron before filling.",
            why: "Rust that is sucked up plugs screens, and acid in the tank dissolves it again.",
            adds: null,
            pause: false,
            evidence: "common practice",
            source: "common-practice",
          },
        ],
      },
    ),
  };
}

function remarksOn(before_mgPerL: number, hours: number, pH: number): readonly Remark[] {
  return [
    {
      code: "iron-left",
      text:
        `Iron ${before_mgPerL.toPrecision(2)} mg/L; ${String(IRON_LEFT_MG_PER_L)} mg/L taken to be left. ` +
        "Iron held by peat or a chelant does not settle, nor does manganese.",
      evidence: "common practice",
      source: "common-practice",
    },
    {
      code: "iron-time",
      text: `Iron(II) needs about ${hoursText(hours)} of air at pH ${pH.toFixed(1)}, then time to sink.`,
      evidence: "computed",
      source: OXIDATION_SOURCE,
    },
  ];
}

function hoursText(hours: number): string {
  if (hours < 1) return "an hour or less";
  return hours <= 72
    ? `${hours.toPrecision(2)} h`
    : `${(hours / 24).toPrecision(2)} days, too long to wait for,`;
}

/**
 * The water with a share of its iron left. The charge that leaves with the iron is made up by protons, which is what
 * the rusting sets free: two per iron(II), three per iron(III).
 */
function settled(water: Water, left: number, setting: Setting): Computed<Water> {
  const totals_molPerL = Object.fromEntries(
    Object.entries(water.totals_molPerL).map(([name, total]) => [
      name,
      name === "Fe+2" || name === "Fe+3" ? total * left : total,
    ]),
  );
  const changed = { ...water, totals_molPerL, alkalinity_molPerL: alkalinityOf_eqPerL(totals_molPerL) };
  try {
    // A water blended with itself is that water with its pH solved anew.
    const solved = blendWaters(changed, changed, 1, setting.chemistry.thermo);
    return { ok: true, value: { ...solved, chargeBalance_percent: water.chargeBalance_percent } };
  } catch (error) {
    if (!(error instanceof HardstandError)) throw error;
    return { ok: false, reason: error.code, detail: "water with its iron settled" };
  }
}
