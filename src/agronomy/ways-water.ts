import { HardstandError } from "../units/index.ts";
import { alkalinity_mgPerL_asCaCO3, blendWaters, hardness_mgPerL_asCaCO3 } from "../water/index.ts";
import type { Water } from "../water/index.ts";
import type { PricedAmount } from "./cost.ts";
import { blendedDraws } from "./bands/programme-draws.ts";
import type { DrawSetting } from "./bands/programme-draws.ts";
import { draftOf, freeIn } from "./programmes.ts";
import type { Draft, Preparation, Setting } from "./programmes.ts";
import type { Steps } from "./steps.ts";
import type { OtherWater, Remark } from "./types.ts";
import type { Computed } from "./verdict.ts";

/** A further source, its water completed. */
export interface CompletedSource {
  readonly other: OtherWater;
  readonly water: Water;
  /** Draws of this water; null for central answers only. */
  readonly drawn: DrawSetting | null;
}

/** Blends are proposed in steps of this many hundredths: what a water meter and a tank's marks can hold to. */
const BLEND_STEP_PERCENT = 5;

/** Another source in place of the planned water. */
export function otherSource(setting: Setting, source: CompletedSource): Draft {
  const { other, water } = source;
  return draftOf(
    { ...setting, water, drawn: source.drawn },
    {
      id: `source ${water.source}`,
      name: `other source: ${water.source}`,
      kind: "other source",
      added: [waterAmount(other, 1, setting.job.spray.volume_LPerHa)],
      remarks: [waterRemark(water)],
      preparation: [
        fetchStep(`Fill with water from ${water.source} alone, in place of ${setting.water.source}.`),
      ],
    },
  );
}

/**
 * The least share of another source, in steps of five hundredths, that meets the aim when blended with the planned
 * water. null when the planned water meets it alone, the other does not meet it at all, or only all of it would.
 */
export function* leastBlend(setting: Setting, source: CompletedSource): Steps<Computed<Draft | null>> {
  const { job } = setting;
  const { water } = source;
  const meets = (percent: number): Steps<Computed<boolean>> =>
    setting.findings.of(function* (): Steps<Computed<boolean>> {
      const blend = blended(setting, water, percent);
      if (!blend.ok) return blend;
      const free = yield* freeIn(inBlend(setting, source, blend.value, percent), job.spray.volume_LPerHa, []);
      return free.ok ? { ok: true, value: free.value !== null && free.value >= job.aim.freeShare } : free;
    });
  const [planned, alone] = [yield* meets(0), yield* meets(100)];
  if (!planned.ok) return planned;
  if (!alone.ok) return alone;
  if (planned.value || !alone.value) return { ok: true, value: null };
  let [low, high] = [0, 100 / BLEND_STEP_PERCENT];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    const met = yield* meets(middle * BLEND_STEP_PERCENT);
    if (!met.ok) return met;
    if (met.value) high = middle;
    else low = middle;
  }
  const percent = high * BLEND_STEP_PERCENT;
  return percent === 100 ? { ok: true, value: null } : blendOf(setting, source, percent);
}

/** A blend with so many hundredths of the other source, whether it meets the aim or not. */
export function blendOf(setting: Setting, source: CompletedSource, percent: number): Computed<Draft> {
  const { job } = setting;
  const { other, water } = source;
  const blend = blended(setting, water, percent);
  if (!blend.ok) return blend;
  const rest = 100 - percent;
  const remarks: readonly Remark[] = [
    waterRemark(blend.value),
    {
      code: "blend-by-meter",
      text: "Blend by meter or by marks, and test the blend: hardness shows whether the shares are right.",
      evidence: "common practice",
      source: "common-practice",
    },
  ];
  return {
    ok: true,
    value: draftOf(inBlend(setting, source, blend.value, percent), {
      id: `blend ${water.source}`,
      name: `blend: ${String(percent)} % ${water.source}, ${String(rest)} % ${setting.water.source}`,
      kind: "blend",
      waters: [
        { water: water.source, share: percent / 100 },
        { water: setting.water.source, share: rest / 100 },
      ],
      added: [waterAmount(other, percent / 100, job.spray.volume_LPerHa)],
      remarks,
      preparation: [
        fetchStep(
          `Of every 100 L of water take ${String(percent)} L from ${water.source} and ${String(rest)} L from ` +
            `${setting.water.source}. Start with ${water.source}.`,
        ),
      ],
    }),
  };
}

/** The setting in a blend of the other source and the planned water, draws blended alike. */
function inBlend(setting: Setting, source: CompletedSource, water: Water, percent: number): Setting {
  const both = setting.drawn !== null && source.drawn !== null;
  const drawn = both ? blendedDraws(source.drawn, setting.drawn, percent / 100) : null;
  return { ...setting, water, drawn };
}

function blended(setting: Setting, other: Water, percent: number): Computed<Water> {
  if (percent === 0) return { ok: true, value: setting.water };
  if (percent === 100) return { ok: true, value: other };
  try {
    const { thermo } = setting.chemistry;
    return { ok: true, value: blendWaters(other, setting.water, percent / 100, thermo) };
  } catch (error) {
    if (!(error instanceof HardstandError)) throw error;
    return { ok: false, reason: error.code, detail: `blend of ${other.source} and ${setting.water.source}` };
  }
}

/** The water that is bought or carted, as an amount with its price. */
function waterAmount(other: OtherWater, share: number, volume_LPerHa: number): PricedAmount {
  return {
    product: `water ${other.water.source}`,
    label: other.water.source,
    perHa: { value: share * volume_LPerHa, unit: "L" },
    price: other.price_perL === null ? null : { value: other.price_perL, per: "L" },
  };
}

/** What a water is, in the words of a test. */
function waterRemark(water: Water): Remark {
  const hardness = Math.round(hardness_mgPerL_asCaCO3(water));
  const alkalinity = Math.round(alkalinity_mgPerL_asCaCO3(water));
  return {
    code: "water-of-this-way",
    text: `Hardness ${String(hardness)} and alkalinity ${String(alkalinity)} mg/L as CaCO3, pH ${water.pH.toFixed(1)}.`,
    evidence: "computed",
    source: null,
  };
}

function fetchStep(what: string): Preparation {
  return {
    what,
    why: "The softer water goes in first, so that no product meets the hard water alone.",
    adds: null,
    pause: false,
    evidence: "common practice",
    source: "common-practice",
  };
}
