/** Installs what is missing, builds what is old, and serves the page on this machine: `npm start [-- --port N]`. */
import { install, inProject, needsInstall, nodeVersionProblem, run } from "./project.mjs";

const problem = nodeVersionProblem();
if (problem !== null) {
  console.error(problem);
  process.exit(1);
}
if (needsInstall() && (await install({})) !== 0) process.exit(1);
if ((await run(process.execPath, [inProject("scripts", "build.mjs"), "--if-stale", "server", "page"])) !== 0)
  process.exit(1);
console.error("The page, with a finished sample job, is at the address below. Ctrl-C ends it.");
process.exit(
  await run(process.execPath, [inProject("dist", "server", "main.js"), ...process.argv.slice(2)], {
    timeout_s: 2_000_000,
  }),
);
