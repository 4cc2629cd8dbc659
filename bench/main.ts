import { readFileSync, writeFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import { isMainThread } from "node:worker_threads";
import { format, resolveConfig } from "prettier";
import { builtInTrade } from "../src/agronomy/index.ts";
import { builtInThermo } from "../src/chem/index.ts";
import { helpFromHere } from "./plan-thread.ts";
import { ACIDS, EVERY, planTimes, planTwice } from "./plans.ts";
import { generalTimes, growthTimes, ourTimes, sharesSolved } from "./solves.ts";
import { tables } from "./table.ts";

const JOBS = [
  "examples/jobs/top-bore.yaml",
  `examples/jobs/top-bore.yaml${EVERY}`,
  "examples/jobs/two-sources.yaml",
  `examples/jobs/two-sources.yaml${ACIDS}`,
];
const PAGE = "docs/benchmark.md";
/** What `--write` replaces on the page. */
const FIGURES = /(<!-- figures -->\n)[\s\S]*(<!-- end of figures -->)/;

async function main(args: readonly string[]): Promise<void> {
  const [option, job, draws] = args;
  if (option === "--plan" && job !== undefined) {
    console.log(JSON.stringify(await planTwice(new URL(import.meta.url), job, Number(draws))));
    return;
  }
  const script = process.argv[1] ?? "";
  const measured = tables({
    solves: ourTimes(),
    growth: growthTimes(),
    general: generalTimes(),
    shares: [1, 3].map(sharesSolved),
    plans: JOBS.flatMap((one) => [0, 500].map((count) => planTimes(script, one, count))),
    machine: `Node ${process.versions.node}, ${process.arch}, ${availableParallelism()} cores`,
  });
  console.log(measured);
  if (option !== "--write") return;
  const page = readFileSync(PAGE, "utf8").replace(FIGURES, `$1\n${measured}\n$2`);
  writeFileSync(PAGE, await format(page, { ...(await resolveConfig(PAGE)), filepath: PAGE }));
}

if (isMainThread) await main(process.argv.slice(2));
else helpFromHere({ thermo: builtInThermo(), trade: builtInTrade() });
