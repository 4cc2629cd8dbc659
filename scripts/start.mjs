/** Installs what is missing, builds what is old, and serves the page on this machine: `npm start [-- --port N]`. */
import { pathToFileURL } from "node:url";
import { bundles, install, inProject, needsInstall, nodeVersionProblem, run } from "./project.mjs";

async function prepare() {
  const problem = nodeVersionProblem();
  if (problem !== null) {
    console.error(problem);
    return false;
  }
  // Only the address goes to standard output.
  const toStderr = { stdio: ["ignore", 2, 2] };
  if (needsInstall() && (await install(toStderr)) !== 0) return false;
  const build = [inProject("scripts", "build.mjs"), "--if-stale", "server", "page"];
  return (await run(process.execPath, build, toStderr)) === 0;
}

if (await prepare()) {
  console.error("The page, with a finished sample job, is at the address below. Ctrl-C ends it.");
  // In this process, so that whatever ends it ends the server too.
  await import(pathToFileURL(inProject(bundles.server.output)).href);
} else {
  process.exitCode = 1;
}
