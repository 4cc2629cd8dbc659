/**
 * Everything that must hold, in one command: packages, format, lint, types, build, tests, the table of published
 * values. Later steps run even when an earlier one fails, so that all faults show. The last line is
 * `N passed, N failed`: the tests, and one for each other step.
 */
import { closeSync, mkdirSync, openSync, readFileSync, rmSync } from "node:fs";
import { install, inProject, needsInstall, nodeVersionProblem, run, runBin, typeChecks } from "./project.mjs";

let passed = 0;
let failed = 0;
const faults = [];

function heading(text) {
  console.log(`\n== ${text}`);
}

const secondsSince = (started) => `${((Date.now() - started) / 1000).toFixed(1)} s`;

function fail(count, what) {
  failed += count;
  faults.push(what);
}

function finish() {
  if (failed === 0 && passed === 0) fail(1, "nothing was run");
  if (faults.length > 0) {
    heading("failed");
    for (const fault of faults) console.log(fault);
  }
  console.log(`${passed} passed, ${failed} failed`);
  // Set rather than exited with, so that all output is written first.
  process.exitCode = failed > 0 ? 1 : 0;
}

/** Counts a step that passed or failed as a whole. @returns whether it passed. */
function count(name, code, started) {
  if (code === 0) passed++;
  else fail(1, name);
  console.log(`-- ${name}: ${code === 0 ? "passed" : "FAILED"} in ${secondsSince(started)}`);
  return code === 0;
}

/** Runs a step that passes or fails as a whole. @returns whether it passed. */
async function step(name, work) {
  const started = Date.now();
  heading(name);
  return count(name, await work(), started);
}

/** Runs steps one after the other. What each says is shown once it is done: another lane runs beside it. */
async function lane(steps) {
  for (const [name, work] of steps) {
    const started = Date.now();
    const path = inProject("test-output", `${name.replaceAll(/\W+/g, "-")}.txt`);
    const file = openSync(path, "w");
    const code = await work({ stdio: ["ignore", file, file] });
    closeSync(file);
    heading(name);
    process.stdout.write(readFileSync(path, "utf8"));
    count(name, code, started);
  }
}

/** The report of a test run as counts, or null when there is none to read. */
function readReport(path) {
  let report;
  try {
    report = JSON.parse(readFileSync(path, "utf8"));
  } catch {
    return null;
  }
  const files = report.testResults;
  const statuses = files.flatMap((file) => file.assertionResults.map((test) => test.status));
  const having = (wanted) => statuses.filter((status) => status === wanted).length;
  // A file that could not be read, or whose set-up failed, has no failing test of its own.
  const brokenFiles = files.filter(
    (file) => file.status === "failed" && !file.assertionResults.some((test) => test.status === "failed"),
  ).length;
  const counts = { passed: having("passed"), failed: having("failed"), brokenFiles };
  return { ...counts, notRun: statuses.length - counts.passed - counts.failed };
}

/** Runs the tests of some projects and adds their counts. A test that does not run counts as failed. */
async function tests(name, projects, env = {}) {
  const started = Date.now();
  const path = inProject("test-output", `${name.replaceAll(" ", "-")}.json`);
  rmSync(path, { force: true });
  heading(`${name} tests`);
  const code = await runBin(
    "vitest/vitest.mjs",
    [
      "run",
      "--allowOnly=false",
      ...projects.flatMap((project) => ["--project", project]),
      "--reporter=default",
      "--reporter=json",
      `--outputFile.json=${path}`,
    ],
    { env, timeout_s: 2400 },
  );
  const report = readReport(path);
  if (report === null) {
    fail(1, `${name} tests: no report was written`);
    return;
  }
  passed += report.passed;
  const before = failed;
  if (report.failed > 0) fail(report.failed, `${name} tests: ${report.failed} failed`);
  if (report.notRun > 0) fail(report.notRun, `${name} tests: ${report.notRun} did not run`);
  if (report.brokenFiles > 0)
    fail(report.brokenFiles, `${name} tests: ${report.brokenFiles} files could not run`);
  if (report.passed + report.failed === 0) fail(1, `${name} tests: there are none`);
  else if (code !== 0 && failed === before) fail(1, `${name} tests: the run ended with an error`);
  console.log(
    `-- ${name} tests: ${report.passed} passed, ${failed - before} failed in ${secondsSince(started)}`,
  );
}

/** Runs the tests that drive the built page. They are never left out: without a browser they fail. */
async function browserTests() {
  const { needBrowser } = await import("./find-browser.mjs");
  const browser = await needBrowser();
  if (browser === null) {
    heading("browser tests");
    console.log("no browser was found and none could be installed; HARDSTAND_BROWSER may name one");
    fail(1, "browser tests: no browser");
    return;
  }
  await tests("browser", ["browser"], { HARDSTAND_BROWSER: browser });
  // By themselves: what else is at work would be in their times.
  await tests("speed", ["speed"], { HARDSTAND_BROWSER: browser });
}

async function main() {
  const problem = nodeVersionProblem();
  if (problem !== null) {
    console.log(problem);
    fail(1, "version of Node");
    return;
  }
  if (needsInstall() && !(await step("packages", () => install()))) return;
  // Rows of an earlier run must not pass for rows of this one.
  rmSync(inProject("test-output"), { recursive: true, force: true });
  mkdirSync(inProject("test-output"));

  const types = typeChecks.map((part) => [
    `types: ${part}`,
    (options) => runBin("typescript/bin/tsc", ["-p", `tsconfig.${part}.json`], options),
  ]);
  await Promise.all([
    lane([["lint", (options) => runBin("eslint/bin/eslint.js", ["."], options)]]),
    lane([
      ["format", (options) => runBin("prettier/bin/prettier.cjs", ["--check", "."], options)],
      ...types,
      ["build", (options) => run(process.execPath, [inProject("scripts", "build.mjs")], options)],
    ]),
  ]);
  await tests("unit and reference", ["unit", "checks"]);
  await browserTests();
  await step("table of published values", () =>
    run(process.execPath, [inProject("scripts", "validation-table.mjs")]),
  );
}

try {
  await main();
} catch (error) {
  fail(1, `the test script itself: ${error.stack}`);
}
finish();
