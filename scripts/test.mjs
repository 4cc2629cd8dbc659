/**
 * Everything that must hold, in one command: packages, format, lint, types, build, tests, the table of published
 * values. Later steps run even when an earlier one fails, so that all faults show. The last line is
 * `N passed, N failed`: the tests, and one for each other step.
 */
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import { install, inProject, needsInstall, nodeVersionProblem, run, runBin } from "./project.mjs";

let passed = 0;
let failed = 0;

function finish() {
  console.log(`${passed} passed, ${failed} failed`);
  process.exit(failed > 0 || passed === 0 ? 1 : 0);
}

async function step(name, work) {
  const started = Date.now();
  console.log(`\n== ${name}`);
  const code = await work();
  if (code === 0) passed++;
  else failed++;
  console.log(
    `== ${name}: ${code === 0 ? "done" : `FAILED (${code})`} in ${((Date.now() - started) / 1000).toFixed(1)} s`,
  );
  return code === 0;
}

/** Runs the tests of one or more projects and adds their counts. */
async function tests(name, projects, env = {}) {
  const started = Date.now();
  const report = inProject("test-output", `${name}.json`);
  rmSync(report, { force: true });
  console.log(`\n== ${name} tests`);
  const code = await runBin(
    "vitest/vitest.mjs",
    [
      "run",
      ...projects.flatMap((p) => ["--project", p]),
      "--reporter=default",
      "--reporter=json",
      `--outputFile.json=${report}`,
    ],
    { env: { ...env, NO_COLOR: "1" }, timeout_s: 900 },
  );
  let counts = { numPassedTests: 0, numFailedTests: 0, numTotalTests: 0 };
  try {
    counts = JSON.parse(readFileSync(report, "utf8"));
  } catch {
    console.log(`== ${name} tests: no report was written`);
  }
  passed += counts.numPassedTests;
  failed += counts.numFailedTests;
  const notRun = counts.numTotalTests - counts.numPassedTests - counts.numFailedTests;
  if (notRun > 0) {
    console.log(`== ${name} tests: ${notRun} did not run, which counts as failed`);
    failed += notRun;
  }
  // A file that could not even be read has no failing test of its own.
  if (code !== 0 && counts.numFailedTests === 0 && notRun === 0) failed++;
  if (code === 0 && counts.numTotalTests === 0) failed++;
  console.log(
    `== ${name} tests: ${counts.numPassedTests} passed, ${counts.numFailedTests} failed in ${((Date.now() - started) / 1000).toFixed(1)} s`,
  );
}

const problem = nodeVersionProblem();
if (problem !== null) {
  console.log(problem);
  failed++;
  finish();
}
if (needsInstall() && !(await step("packages", () => install({})))) finish();

mkdirSync(inProject("test-output"), { recursive: true });
rmSync(inProject("test-output", "validation"), { recursive: true, force: true });

await step("format", () => runBin("prettier/bin/prettier.cjs", ["--check", "--log-level", "warn", "."]));
await step("lint", () => runBin("eslint/bin/eslint.js", ["--quiet", "."]));
for (const part of ["kernel", "node", "web", "e2e"]) {
  await step(`types: ${part}`, () => runBin("typescript/bin/tsc", ["-p", `tsconfig.${part}.json`]));
}
await step("build", () => run(process.execPath, [inProject("scripts", "build.mjs")]));
await tests("unit", ["unit"]);
await tests("checks", ["checks"]);
const { needBrowser } = await import("./find-browser.mjs");
const browser = await needBrowser();
if (browser === null) {
  console.log(
    "\n== browser tests: FAILED, no browser was found and none could be installed. Set HARDSTAND_BROWSER.",
  );
  failed++;
} else {
  await tests("browser", ["browser"], { HARDSTAND_BROWSER: browser });
}
await step("table of published values", () =>
  run(process.execPath, [inProject("scripts", "validation-table.mjs")]),
);
finish();
