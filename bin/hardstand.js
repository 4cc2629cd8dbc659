#!/usr/bin/env node
/** Runs the command line from a checkout; installs and builds first where that is needed, quietly to stderr. */
import { pathToFileURL } from "node:url";
import { install, inProject, isStale, needsInstall, nodeVersionProblem, run } from "../scripts/project.mjs";

const problem = nodeVersionProblem();
if (problem !== null) {
  console.error(problem);
  process.exit(1);
}
const serves = process.argv.slice(2).includes("serve");
const toErr = { stdio: ["ignore", 2, 2] };
if (isStale("cli") || (serves && isStale("page"))) {
  if (needsInstall() && (await install(toErr)) !== 0) process.exit(1);
  const parts = serves ? ["cli", "page"] : ["cli"];
  const built = await run(
    process.execPath,
    [inProject("scripts", "build.mjs"), "--if-stale", ...parts],
    toErr,
  );
  if (built !== 0) process.exit(1);
}
await import(pathToFileURL(inProject("dist", "cli", "main.js")).href);
