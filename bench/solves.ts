import { equilibrate } from "../src/chem/index.ts";
import type { Equilibrium } from "../src/chem/index.ts";
import { equationsOf, solveGenerally } from "./general-solver.ts";
import type { Equations, GeneralAnswer, Settings } from "./general-solver.ts";
import { dropProblem, growingTanks, scaled, tankProblem, variedTanks, withTotals } from "./problems.ts";
import type { Problem } from "./problems.ts";
import { processorTime_ms, timeOf_ms } from "./timing.ts";

/** Change of all totals between one solve and the next, which starts from its answer. */
const WARM_CHANGE = 1.05;
/** Tanks with totals of their own, for the share that is solved at all. */
const VARIANTS = 200;
/** Residual below which a general answer counts as found. */
const FOUND = 1e-8;
const DROP_FACTOR = 40;

/** What was measured of one problem. */
export interface SolveTimes {
  readonly name: string;
  readonly components: number;
  readonly species: number;
  readonly solids: number;
  readonly cold_ms: number;
  readonly warm_ms: number;
  readonly iterations: { readonly cold: number; readonly warm: number };
  readonly residual: number;
}

/** What the general solver needed for the tank without solids. */
export interface GeneralTimes {
  readonly cold_ms: number;
  readonly warm_ms: number;
  readonly iterations: { readonly cold: number; readonly warm: number };
  readonly residual: number;
  /** Largest difference of log10 of a concentration from our answer. */
  readonly difference: number;
  /** Our answer put into its equations. */
  readonly ourResidual: number;
}

/** How many tanks with varied totals were solved from a cold start, and the mean time [ms]. */
export interface Shares {
  readonly count: number;
  /** Each total times 10^±this. */
  readonly decades: number;
  readonly ours: Share;
  readonly general: Share;
  readonly generalOwnSettings: Share;
}
export interface Share {
  readonly solved: number;
  readonly mean_ms: number;
}

function solved(problem: Problem, start?: Equilibrium): Equilibrium {
  const result = equilibrate(problem.system, {
    ...problem.conditions,
    ...(start === undefined ? {} : { start }),
  });
  if (!result.ok) throw new Error(`${problem.name}: ${result.reason}: ${result.detail}`);
  return result.value;
}

/** The same problem with all totals a little higher. */
function neighbour(problem: Problem): Problem {
  return withTotals(problem, scaled(problem.conditions.totals_molPerL, WARM_CHANGE));
}

function timesOf(problem: Problem): SolveTimes {
  const { system } = problem;
  const other = neighbour(problem);
  const [here, there] = [solved(problem), solved(other)];
  return {
    name: problem.name,
    components: system.componentNames.length,
    species: system.speciesNames.length,
    solids: system.solidNames.length,
    cold_ms: timeOf_ms(() => solved(problem)),
    warm_ms: timeOf_ms(() => solved(other, here)),
    iterations: { cold: here.iterations, warm: solved(other, here).iterations },
    residual: Math.max(here.residual, there.residual),
  };
}

/** Times of our solver: the tank without and with its solids, and the drying drop. */
export function ourTimes(): readonly SolveTimes[] {
  return [tankProblem("without solids"), tankProblem("with solids"), dropProblem(DROP_FACTOR)].map(timesOf);
}

/** Times of our solver on tanks of growing size. */
export function growthTimes(): readonly SolveTimes[] {
  return growingTanks().map(timesOf);
}

/** Times of the general solver on the tank without solids, each with whichever settings are the faster there. */
export function generalTimes(): GeneralTimes {
  const problem = tankProblem("without solids");
  const ours = solved(problem);
  const equations = equationsOf(problem);
  const warmStart = equations.startFrom(ours);
  const cold = fasterOf(equations, equations.start);
  const warm = fasterOf(equationsOf(neighbour(problem)), warmStart);
  const difference = cold.answer.lnConcentrations.reduce(
    (most, value, i) => Math.max(most, Math.abs(value / Math.LN10 - ours.log10Concentrations[i]!)),
    0,
  );
  const own = equations.evaluate(warmStart).residuals;
  return {
    cold_ms: cold.time_ms,
    warm_ms: warm.time_ms,
    iterations: { cold: cold.answer.iterations, warm: warm.answer.iterations },
    residual: cold.answer.residual,
    difference,
    ourResidual: own.reduce((most, value) => Math.max(most, Math.abs(value)), 0),
  };
}

function fasterOf(
  equations: Equations,
  start: readonly number[],
): { readonly answer: GeneralAnswer; readonly time_ms: number } {
  const runs = (["own", "best found"] as const).map((settings) => {
    const answer = solveGenerally(equations, start, settings);
    if (answer === null || answer.residual > FOUND) throw new Error(`no answer with ${settings} settings`);
    return { answer, time_ms: timeOf_ms(() => void solveGenerally(equations, start, settings)) };
  });
  return runs.reduce((best, run) => (run.time_ms < best.time_ms ? run : best));
}

/** Solves many tanks from a cold start by both. */
export function sharesSolved(decades: number): Shares {
  const tanks = variedTanks(VARIANTS, decades);
  const equations = tanks.map(equationsOf);
  const shareOf = <T>(of: readonly T[], isSolved: (one: T) => boolean): Share => {
    let solvedCount = 0;
    const all_ms = processorTime_ms(() => {
      for (const one of of) if (isSolved(one)) solvedCount++;
    });
    return { solved: solvedCount, mean_ms: all_ms / of.length };
  };
  const generally = (settings: Settings): Share =>
    shareOf(equations, (one) => (solveGenerally(one, one.start, settings)?.residual ?? Infinity) <= FOUND);
  return {
    count: VARIANTS,
    decades,
    ours: shareOf(tanks, (tank) => equilibrate(tank.system, tank.conditions).ok),
    general: generally("best found"),
    generalOwnSettings: generally("own"),
  };
}
