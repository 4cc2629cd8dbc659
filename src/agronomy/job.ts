import { readQuantity } from "../units/index.ts";
import type { Read } from "../units/index.ts";
import { readWaterTest } from "../water/index.ts";
import type { WaterTest } from "../water/index.ts";
import { readConditioners } from "./job-conditioners.ts";
import { readFeeds } from "./job-feeds.ts";
import { IssueList, describe, isMissing, openFields, textOf } from "./job-fields.ts";
import type { Fields } from "./job-fields.ts";
import { readMix } from "./job-mix.ts";
import { readPartners, readSite } from "./job-site.ts";
import { readSpray } from "./job-spray.ts";
import { readOtherWaters } from "./job-waters.ts";
import type { TradeData } from "./trade-data.ts";
import type { Job, Place } from "./types.ts";

/** A job with the title its document gives it. */
export interface TitledJob extends Job {
  readonly title: string | null;
}

/** Version of the job format that is read. */
export const JOB_VERSION = 1;

/** Free share aimed at when the job does not say. Common practice, no published source. */
export const USUAL_FREE_SHARE = 0.95;
/** Confidence aimed at when the job does not say. Common practice, no published source. */
export const USUAL_CONFIDENCE = 0.9;

const KEYS = [
  "hardstand",
  "title",
  "water",
  "other waters",
  "spray",
  "mix",
  "conditioners",
  "partners",
  "aim",
  "site",
];
const PLACES: readonly Place[] = ["in the tank", "on the leaf"];

/**
 * Reads a job from a document, such as parsed JSON or YAML.
 *
 * @param document plain data of unknown shape
 * @param context the trade data in which actives, conditioners and formulations are looked up
 * @returns the job in internal units with its warnings, or every problem at once, each with its path
 */
export function readJob(document: unknown, context: { readonly trade: TradeData }): Read<TitledJob> {
  const issues = new IssueList();
  const top = openFields(document, "", KEYS, issues);
  if (top === null) return { ok: false, issues: issues.all };
  readVersion(top, issues);
  const title = textOf(top, "title", issues);
  const water = isMissing(top, "water", "a water test", issues)
    ? undefined
    : issues.take(readWaterTest(top.get("water"), "water"));
  const otherWaters = readOtherWaters(top, water?.source ?? null, issues);
  const spray = readSpray(top, issues);
  const mix = readMix(top, context.trade, issues);
  const feeds = readFeeds(top.get("mix"), context.trade, issues);
  const conditioners = readConditioners(top, context.trade, issues);
  const aim = readAim(top, issues);
  const partners = readPartners(top, issues);
  const site = readSite(top, issues);
  if (issues.blocks || water === undefined || spray === null || mix === null)
    return { ok: false, issues: issues.all };
  return {
    ok: true,
    value: { title, water, otherWaters, spray, mix, feeds, conditioners, partners, aim, site },
    issues: issues.all,
  };
}

const KEYS_OF_WATER_ALONE = ["hardstand", "title", "water"];

/** Whether a document holds a water test and no word of a spray or a mix. */
export function isWaterAlone(document: unknown): boolean {
  if (document === null || typeof document !== "object" || !("water" in document)) return false;
  return Object.keys(document).every((key) => KEYS_OF_WATER_ALONE.includes(key));
}

/**
 * Reads a document that holds a water test alone, as a job does without its spray and mix.
 *
 * @returns the water test, or every problem at once, each with its path
 */
export function readWaterAlone(document: unknown): Read<WaterTest> {
  const issues = new IssueList();
  const top = openFields(document, "", KEYS_OF_WATER_ALONE, issues);
  if (top === null) return { ok: false, issues: issues.all };
  readVersion(top, issues);
  textOf(top, "title", issues);
  const water = issues.take(readWaterTest(top.get("water"), "water"));
  if (issues.blocks || water === undefined) return { ok: false, issues: issues.all };
  return { ok: true, value: water, issues: issues.all };
}

function readVersion(top: Fields, issues: IssueList): void {
  if (isMissing(top, "hardstand", `hardstand: ${JOB_VERSION}`, issues)) return;
  const version = top.get("hardstand");
  if (version === JOB_VERSION) return;
  const hint = version === String(JOB_VERSION) ? "Take the quotes away." : undefined;
  issues.add("version-unknown", top.at("hardstand"), {
    received: describe(version),
    expected: String(JOB_VERSION),
    ...(hint === undefined ? {} : { hint }),
  });
}

function readAim(top: Fields, issues: IssueList): Job["aim"] {
  const aim = {
    freeShare: USUAL_FREE_SHARE,
    confidence: USUAL_CONFIDENCE,
    where: PLACES[1] ?? "on the leaf",
  };
  if (top.get("aim") === undefined) return aim;
  const fields = openFields(top.get("aim"), "aim", ["free share", "confidence", "where"], issues);
  if (fields === null) return aim;
  const share = (key: string, usual: number): number =>
    fields.get(key) === undefined
      ? usual
      : (issues.take(readQuantity(fields.get(key), "share", fields.at(key))) ?? usual);
  return {
    freeShare: share("free share", aim.freeShare),
    confidence: share("confidence", aim.confidence),
    where: readPlace(fields, issues) ?? aim.where,
  };
}

function readPlace(aim: Fields, issues: IssueList): Place | null {
  const text = textOf(aim, "where", issues);
  if (text === null) return null;
  const place = PLACES.find((one) => one === text.toLowerCase());
  if (place === undefined)
    issues.add("choice-unknown", aim.at("where"), { received: text, expected: PLACES.join(" or ") });
  return place ?? null;
}
