import type { ThermoData } from "../chem/index.ts";
import type { Water, WaterTest } from "../water/index.ts";
import { drawInputs } from "./bands/draws.ts";
import { drawSetting } from "./bands/programme-draws.ts";
import type { Effort } from "./bands/calibrate.ts";
import type { DrawSetting } from "./bands/programme-draws.ts";
import { measureNext, rangeWidth, spreadOf } from "./bands/spread.ts";
import { USUAL_HUMIDITY } from "./chemistry.ts";
import { finishProgramme } from "./finish-programme.ts";
import type { FinishedProgramme } from "./finish-programme.ts";
import type { Work } from "./findings.ts";
import type { Draft, Setting } from "./programmes.ts";
import type { Steps } from "./steps.ts";
import type { TradeData } from "./trade-data.ts";
import type { Job, PlanUncertainty } from "./types.ts";
import { shortName } from "./uncomputed.ts";
import { leastOfDraws } from "./verdict.ts";
import type { Computed } from "./verdict.ts";

/** Confidence [1] that may be missing for a surer draft to be tried, and how often one is. */
const NEARLY_SURE = 0.1;
const SURER_TRIES = 3;

/** Finishes a draft; one that falls a little short of the confidence asked for is replaced by a surer one. */
export function* finishSurely(
  draft: Draft,
  trade: TradeData,
  effort: Effort,
  work: Work = draft.setting,
): Steps<Computed<FinishedProgramme>> {
  const { confidence } = draft.setting.job.aim;
  let tried = draft;
  let finished = yield* finishProgramme(tried, trade, effort, work);
  for (let k = 0; k < SURER_TRIES && finished.ok && tried.surer !== null; k++) {
    const found = finished.value.programme.confidence;
    if (found === null || found >= confidence || found < confidence - NEARLY_SURE) break;
    tried = tried.surer();
    const surer = yield* finishProgramme(tried, trade, effort, work);
    if (!surer.ok || (surer.value.programme.confidence ?? 0) <= found) break;
    finished = surer;
  }
  return finished;
}

/** Draws of a water and of the air while its drops dry; null when none are asked for. */
export function drawnFor(
  job: Job,
  test: WaterTest,
  water: Water,
  thermo: ThermoData,
  count: number,
): DrawSetting | null {
  if (count <= 0) return null;
  const { temperature_C, humidity } = job.spray;
  const apart = test === job.water ? {} : { source: test.source };
  const draws = drawInputs(test, water, { thermo, temperature_C, ...apart }, count);
  return drawSetting(draws, humidity ?? USUAL_HUMIDITY, humidity !== null);
}

/** Id of the tank as planned, nothing added. */
export const AS_PLANNED = "none";

/**
 * The ligand that the key of an uncertain constant or activity coefficient is about, as people call it: of
 * "activity:CaMcpa+" and of "constant:metals of mcpa" it is MCPA. null for anything else.
 */
function substanceOf(thermo: ThermoData, input: string): string | null {
  const [kind = "", name = ""] = input.split(/:(.*)/s);
  if (kind !== "activity" && kind !== "constant") return null;
  const shared = name.startsWith("metals of ") ? name.slice("metals of ".length) : null;
  const found = thermo.ligands.find(({ id, component }) =>
    shared === null ? name.includes(component.replace(/[+-]\d*$/, "")) : id === shared,
  );
  return found === undefined ? null : shortName(found.name);
}

/** What the ranges rest on, for the programme that is chosen or, when none is, for nothing added. */
export function uncertaintyOf(
  id: string,
  finished: ReadonlyMap<string, FinishedProgramme>,
  { job, drawn }: Setting,
): PlanUncertainty | null {
  const found = finished.get(id);
  if (drawn === null || found === undefined || found.draws === null) return null;
  const { draft, draws: ofProgramme } = found;
  const { draws } = drawn;
  const { where } = job.aim;
  const least = leastOfDraws(ofProgramme, where, draft.tank, draft.rateFactors);
  const { thermo } = draft.setting.chemistry;
  const spread = spreadOf(least, draws, ofProgramme.keys, (key) => substanceOf(thermo, key));
  const controls = [...finished.values()].flatMap((one) => one.draws?.control ?? []);
  return {
    draws: draws.count,
    seed: draws.seed,
    replaced: draws.replaced,
    control: {
      solved: controls.reduce((sum, one) => sum + one.solved, 0),
      difference: ofProgramme.control.difference,
    },
    about: { programme: id, where, width: rangeWidth(least) },
    spread,
    measureNext: measureNext(least, spread, job.water),
  };
}
