import type { Issue } from "../units/index.ts";
import type { Effort } from "./bands/calibrate.ts";
import type { Chemistry } from "./chemistry.ts";
import { beginWork } from "./findings.ts";
import type { Finding, Work } from "./findings.ts";
import type { FinishedProgramme } from "./finish-programme.ts";
import { AS_PLANNED, finishSurely } from "./plan-draws.ts";
import type { Way } from "./plan-ways.ts";
import type { Draft } from "./programmes.ts";
import { rankProgrammes } from "./ranking.ts";
import type { Steps } from "./steps.ts";
import type { TradeData } from "./trade-data.ts";
import type { Programme } from "./types.ts";
import type { Failed } from "./verdict.ts";

/** A piece of a plan that stands by itself: it comes to the same whenever, and wherever, it is done, in steps. */
export interface Task {
  /** Tells it from the others of its plan. */
  readonly key: string;
  /** Does it. @param known what it found when it was done elsewhere @returns what it finds */
  run(known?: readonly Finding[]): Steps<readonly Finding[]>;
}

/** What can be done next of a plan: one task at least is wanted, and the plan goes on when none is any more. */
export interface OpenTasks {
  readonly wanted: readonly Task[];
  /** What will be wanted later, or may turn out not to be: for who would wait otherwise. */
  readonly spare: readonly Task[];
}

/** What a task came to: nothing, where the way is none. */
export interface Outcome {
  readonly finished: FinishedProgramme | null;
  /** What kept it from being computed. */
  readonly issue: Issue | null;
}

/** A task with what it came to. */
export interface Attempt extends Task {
  /** null until it is done. */
  readonly outcome: Outcome | null;
}

function attempt(key: string, chemistry: Chemistry, work: (work: Work) => Steps<Outcome>): Attempt {
  let outcome: Outcome | null = null;
  return {
    key,
    get outcome() {
      return outcome;
    },
    *run(known) {
      const begun = beginWork(chemistry, known);
      outcome = yield* work(begun);
      return begun.findings.all;
    },
  };
}

/** The tasks of one plan. */
export interface Tasks {
  /** Searching a way's draft, and judging it with a few draws solved. */
  ofWay(key: string, way: Way): Attempt;
  /** Judging a programme again, with the draws solved that decide; none without draws. Always the same task. */
  inFull(one: FinishedProgramme | null | undefined): readonly Attempt[];
}

export function tasksOf(chemistry: Chemistry, trade: TradeData): Tasks {
  const full = new Map<string, Attempt>();
  const judged = function* (draft: Draft, effort: Effort, work: Work): Steps<Outcome> {
    const done = yield* finishSurely(draft, trade, effort, work);
    return done.ok
      ? { finished: done.value, issue: null }
      : { finished: null, issue: unsolved(draft.name, done) };
  };
  return {
    ofWay: (key, way) =>
      attempt(key, chemistry, function* (work) {
        const draft = yield* way.draft(work);
        if (!draft.ok) return { finished: null, issue: unsolved(way.name, draft) };
        return draft.value === null
          ? { finished: null, issue: null }
          : yield* judged(draft.value, "few", work);
      }),
    inFull: (one) => {
      if (!one?.draws) return [];
      const { draft } = one;
      const found =
        full.get(draft.id) ??
        attempt(`in full ${draft.id}`, chemistry, (work) => judged(draft, "many", work));
      full.set(draft.id, found);
      return [found];
    },
  };
}

/** Programmes best first. */
export interface Ranked {
  readonly ranked: readonly Programme[];
  /** The first that meets the aim and is not blocked. */
  readonly best: Programme | null;
  /** Nothing added. */
  readonly planned: Programme;
}

/** Programmes best first, and the one to choose. */
export function rankedWithBest(finished: ReadonlyMap<string, FinishedProgramme>): Omit<Ranked, "planned"> {
  const ranked = rankProgrammes([...finished.values()].map(({ programme }) => programme));
  return { ranked, best: ranked.find((p) => p.meetsAim === true && !p.blocked) ?? null };
}

/**
 * Ranks the programmes, and has the ranges of the two that decide worked out in full: nothing added, and the best. Where
 * the best then falls short of the confidence asked for, the next is looked at.
 *
 * @param finished the programmes by their id, among them the one as planned; those worked out in full replace theirs
 * @param issues takes what stood in the way of one
 */
export function* rankSurely(
  finished: Map<string, FinishedProgramme>,
  issues: Issue[],
  tasks: Tasks,
): Generator<OpenTasks, Ranked> {
  const full = new Set<string>();
  for (;;) {
    const { ranked, best } = rankedWithBest(finished);
    const [next, ...later] = [AS_PLANNED, best?.id].filter((id) => id !== undefined && !full.has(id));
    if (next === undefined) return { ranked, best, planned: finished.get(AS_PLANNED)!.programme };
    full.add(next);
    const wanted = tasks.inFull(finished.get(next));
    yield* untilDone(wanted, () => later.flatMap((id) => tasks.inFull(finished.get(id!))));
    for (const { outcome } of wanted) {
      if (outcome?.issue) issues.push(outcome.issue);
      if (outcome?.finished) finished.set(next, outcome.finished);
    }
  }
}

/** Offers tasks until all are done. @param spare offered beside them, as long as they are not done */
export function* untilDone(
  tasks: readonly Attempt[],
  spare: () => readonly Attempt[],
): Generator<OpenTasks, void> {
  const isOpen = ({ outcome }: Attempt): boolean => outcome === null;
  for (;;) {
    const wanted = tasks.filter(isOpen);
    if (wanted.length === 0) return;
    yield { wanted, spare: spare().filter((one) => isOpen(one) && !wanted.includes(one)) };
  }
}

/** A programme that could not be computed is said, never dropped in silence. */
function unsolved(name: string, { reason, detail }: Failed): Issue {
  return {
    code: "programme-not-computed",
    path: `programmes.${name}`,
    received: `${reason}: ${detail}`,
    severity: "warning",
  };
}
