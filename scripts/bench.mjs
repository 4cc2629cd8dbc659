/**
 * Times the solver and whole plans: `npm run bench`; with `-- --write` the figures go into docs/benchmark.md. Not part
 * of the tests: a time is not a fact of the program.
 */
import { build } from "vite";
import { inProject, run } from "./project.mjs";

const outDir = inProject("dist", "bench");
await build({
  root: inProject(),
  configFile: false,
  publicDir: false,
  logLevel: "warn",
  ssr: { target: "node" },
  build: {
    ssr: "bench/main.ts",
    outDir,
    emptyOutDir: true,
    target: "node20",
    minify: false,
    rolldownOptions: { output: { entryFileNames: "main.js", codeSplitting: false } },
  },
});
const args = process.argv.slice(2);
process.exitCode = await run(process.execPath, [inProject("dist", "bench", "main.js"), ...args]);
