import type { PlanTimes } from "./plans.ts";
import type { Times } from "./timing.ts";
import type { GeneralTimes, Shares, SolveTimes } from "./solves.ts";

/** Everything that was measured. */
export interface Measured {
  readonly solves: readonly SolveTimes[];
  /** The same tank with more and more of its components. */
  readonly growth: readonly SolveTimes[];
  readonly general: GeneralTimes;
  readonly shares: readonly Shares[];
  readonly plans: readonly PlanTimes[];
  readonly machine: string;
}

const two = (value: number): string => Number(value.toPrecision(2)).toString();
const both = ({ processor_ms, clock_ms }: Times): string => `${two(processor_ms)} / ${two(clock_ms)}`;
const small = (value: number): string => value.toExponential(0);
const row = (...cells: readonly (string | number)[]): string => `| ${cells.join(" | ")} |`;

function table(head: readonly string[], rows: readonly string[]): readonly string[] {
  return [row(...head), row(...head.map((_, k) => (k === 0 ? "---" : "---:"))), ...rows];
}

/** Draws carried through programmes per second of what the ranges take beyond the plan without them. */
function drawsASecond(one: PlanTimes, plans: readonly PlanTimes[]): number {
  const without = plans.find(({ job, draws }) => job === one.job && draws === 0)!;
  return (1000 * one.draws * one.programmes) / (one.second.processor_ms - without.second.processor_ms);
}

/** The figures as Markdown. */
export function tables({ solves, growth, general, shares, plans, machine }: Measured): string {
  const ours = solves[0]!;
  return [
    `Measured on ${machine}.`,
    "",
    "### One equilibrium, this solver",
    "",
    ...table(
      [
        "problem",
        "components",
        "species",
        "solids",
        "cold, ms",
        "warm, ms",
        "steps cold/warm",
        "cold/warm",
        "residual",
      ],
      solves.map((one) =>
        row(
          one.name,
          one.components,
          one.species,
          one.solids,
          two(one.cold_ms),
          two(one.warm_ms),
          `${one.iterations.cold}/${one.iterations.warm}`,
          two(one.cold_ms / one.warm_ms),
          small(one.residual),
        ),
      ),
    ),
    "",
    "### Growth with the number of species",
    "",
    ...table(
      [
        "tank, Davies, without solids",
        "components",
        "cold, ms",
        "warm, ms",
        "cold, µs a species",
        "cold solves a second",
      ],
      growth.map((one) =>
        row(
          one.name,
          one.components,
          two(one.cold_ms),
          two(one.warm_ms),
          two((1000 * one.cold_ms) / one.species),
          two(1000 / one.cold_ms),
        ),
      ),
    ),
    "",
    "### The same equations, a general solver",
    "",
    ...table(
      ["tank, Davies, without solids", "this solver", "general", "general/this"],
      [
        row("cold, ms", two(ours.cold_ms), two(general.cold_ms), two(general.cold_ms / ours.cold_ms)),
        row("warm, ms", two(ours.warm_ms), two(general.warm_ms), two(general.warm_ms / ours.warm_ms)),
        row("steps cold", ours.iterations.cold, general.iterations.cold, ""),
        row("steps warm", ours.iterations.warm, general.iterations.warm, ""),
        row("residual in the general form", small(general.ourResidual), small(general.residual), ""),
        row("largest difference of log10 c", "", small(general.difference), ""),
      ],
    ),
    "",
    ...table(
      ["cold starts on varied tanks", "solved", "mean, ms"],
      shares.flatMap(({ count, decades, ours: own, general: best, generalOwnSettings: plain }) => {
        const said = `each total × ${10 ** -decades} to ${10 ** decades}`;
        return [
          row(`${said}: this solver`, `${own.solved} of ${count}`, two(own.mean_ms)),
          row(`${said}: general`, `${best.solved} of ${count}`, two(best.mean_ms)),
          row(`${said}: general, settings as it comes`, `${plain.solved} of ${count}`, two(plain.mean_ms)),
        ];
      }),
    ),
    "",
    "### A whole plan",
    "",
    ...table(
      [
        "job",
        "draws",
        "programmes",
        "first, ms",
        "second, ms",
        "two threads, ms",
        "first/second",
        "draws of a programme a second",
      ],
      plans.map((one) =>
        row(
          one.job,
          one.draws,
          one.programmes,
          both(one.first),
          both(one.second),
          one.together === null ? "" : both(one.together),
          two(one.first.processor_ms / one.second.processor_ms),
          one.draws === 0 ? "" : two(drawsASecond(one, plans)),
        ),
      ),
    ),
    "",
    "Milliseconds of the processors / by the clock.",
    "",
  ].join("\n");
}
