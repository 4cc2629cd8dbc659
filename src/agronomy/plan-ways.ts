import type { ThermoData } from "../chem/index.ts";
import type { Issue } from "../units/index.ts";
import { completeWater } from "../water/index.ts";
import { candidatesOf } from "./candidates.ts";
import type { Work } from "./findings.ts";
import type { FinishedProgramme } from "./finish-programme.ts";
import { drawnFor } from "./plan-draws.ts";
import { asPlanned, conditioned, lessWater } from "./programmes.ts";
import type { Candidate, Draft, Setting } from "./programmes.ts";
import type { PlanData } from "./setting.ts";
import type { Steps } from "./steps.ts";
import type { Computed } from "./verdict.ts";
import { alsoConditioned, otherWaysOf } from "./ways-conditioned.ts";
import { moreActive, otherFormsOf } from "./ways-active.ts";
import { ironSettled } from "./ways-iron.ts";
import { twoParts } from "./ways-two-part.ts";
import type { Single } from "./ways-two-part.ts";
import { leastBlend, otherSource } from "./ways-water.ts";
import type { CompletedSource } from "./ways-water.ts";

/** A way out that is worked out when it is asked for. */
export interface Way {
  readonly name: string;
  /** The conditioner it is searched for. */
  readonly candidate: Candidate | null;
  /** Its draft, at the least dose or change that is enough; null where it is none. */
  draft(work: Work): Steps<Computed<Draft | null>>;
}

/** The tank as planned alone. */
export function plannedOnly(setting: Setting): Way {
  return atHand("nothing added", setting, (own) => known(asPlanned(own)));
}

/** The tank as planned, and every way out. @param issues takes what stands in the way of one */
export function waysOf(setting: Setting, data: PlanData, issues: Issue[], count: number): readonly Way[] {
  const { trade, thermo } = data;
  const { job, mix } = setting;
  for (const { own, path } of job.conditioners ?? []) {
    if (own?.record === null)
      issues.push({ code: "label-undisclosed", path, received: own.name, severity: "warning" });
  }
  return [
    plannedOnly(setting),
    way("less water", setting, lessWater),
    ...completedSources(setting, thermo, issues, count).flatMap((source) => {
      const name = source.water.source;
      return [
        atHand(name, setting, (own) => known(otherSource(own, source))),
        way(`blend with ${name}`, setting, (own) => leastBlend(own, source)),
      ];
    }),
    atHand("let the iron settle", setting, ironSettled),
    ...mix.map(({ active }, i) => way(`more ${active.name}`, setting, (own) => moreActive(own, i))),
    ...otherFormsOf(setting, trade).map((form) => atHand("other form", setting, (own) => known(form(own)))),
    ...candidatesOf(job, trade).map((candidate) =>
      way(candidate.record.name, setting, (own) => conditioned(own, candidate), candidate),
    ),
  ];
}

/**
 * Ways that put two things together: two conditioners, or a conditioner in another water.
 *
 * @param singles the conditioners as judged alone; `finished` all programmes so far
 */
export function combinedWays(
  setting: Setting,
  singles: readonly Single[],
  finished: readonly FinishedProgramme[],
): readonly Way[] {
  const drafts = [...twoParts(setting, singles), ...alsoConditioned(otherWaysOf(setting, finished), singles)];
  return drafts.map((draft): Way => ({ name: "two things together", candidate: null, draft }));
}

function way(
  name: string,
  setting: Setting,
  draft: (own: Setting) => Steps<Computed<Draft | null>>,
  candidate: Candidate | null = null,
): Way {
  return { name, candidate, draft: (work) => draft({ ...setting, ...work }) };
}

/** A way whose draft takes no search. */
function atHand(name: string, setting: Setting, draft: (own: Setting) => Computed<Draft | null>): Way {
  return way(name, setting, function* (own) {
    yield;
    return draft(own);
  });
}

function known(draft: Draft): Computed<Draft> {
  return { ok: true, value: draft };
}

/** The job's further sources with their waters completed; one that cannot be is said and left out. */
function completedSources(
  setting: Setting,
  thermo: ThermoData,
  issues: Issue[],
  count: number,
): readonly CompletedSource[] {
  return setting.job.otherWaters.flatMap((other): CompletedSource[] => {
    const completed = completeWater(other.water, { thermo, temperature_C: setting.job.spray.temperature_C });
    // What stands in the way of another source does not stand in the way of the plan.
    for (const issue of completed.issues) {
      const severity = issue.severity === "error" ? "warning" : issue.severity;
      issues.push({ ...issue, path: issue.path.replace(/^water\b/, other.path), severity });
    }
    if (!completed.ok) return [];
    const water = completed.value;
    return [{ other, water, drawn: drawnFor(setting.job, other.water, water, thermo, count) }];
  });
}
