/** Type checks all parts, each with the types it may use: `npm run types`. */
import { runBin, typeChecks } from "./project.mjs";

let failed = false;
for (const part of typeChecks) {
  if ((await runBin("typescript/bin/tsc", ["-p", `tsconfig.${part}.json`])) !== 0) failed = true;
}
process.exitCode = failed ? 1 : 0;
