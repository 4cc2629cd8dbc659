/**
 * Builds the page and the bundles for Node into `dist/`: `node scripts/build.mjs [--if-stale] [page] [cli] [server]`.
 * Without names, all of them. Everything it says goes to stderr.
 *
 * Each part is built beside its place and then moved there file by file, its entry last, so that a running program
 * never meets a missing or half-written one, and two builds at once do no harm.
 */
import { mkdirSync, readdirSync, renameSync, rmSync, utimesSync } from "node:fs";
import { basename, dirname, join, relative } from "node:path";
import { build } from "vite";
import { bundles, inProject, isStale } from "./project.mjs";

const configFiles = { page: "vite.config.ts", cli: "vite.node.config.ts", server: "vite.node.config.ts" };

/** Paths of all files in a folder, relative to it. */
function filesIn(folder) {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)));
}

/** The list of all files that a browser keeps by: it may only be found once they are all there. */
const serviceWorker = "sw.js";

/** Moves a built folder over an older one: the other files first, the entry next, then what is no longer made goes. */
function moveOver(from, to, entry) {
  const made = filesIn(from);
  const last = [entry, ...made.filter((file) => file === serviceWorker)];
  for (const file of [...made.filter((file) => !last.includes(file)), ...last]) {
    mkdirSync(dirname(join(to, file)), { recursive: true });
    renameSync(join(from, file), join(to, file));
  }
  for (const file of filesIn(to).filter((file) => !made.includes(file)))
    rmSync(join(to, file), { force: true });
}

async function buildPart(name) {
  const started = new Date();
  const place = inProject(dirname(bundles[name].output));
  const temporary = inProject("dist", `.${name}-${process.pid}`);
  rmSync(temporary, { recursive: true, force: true });
  mkdirSync(place, { recursive: true });
  try {
    await build({
      configFile: inProject(configFiles[name]),
      mode: name === "page" ? "production" : name,
      logLevel: "warn",
      build: { outDir: temporary, emptyOutDir: true },
    });
    const entry = basename(bundles[name].output);
    // A source changed while the build ran must count as newer.
    utimesSync(join(temporary, entry), started, started);
    moveOver(temporary, place, entry);
  } finally {
    rmSync(temporary, { recursive: true, force: true });
  }
  console.error(`built ${bundles[name].output} in ${((Date.now() - started.getTime()) / 1000).toFixed(1)} s`);
}

const args = process.argv.slice(2);
const ifStale = args.includes("--if-stale");
const named = args.filter((arg) => !arg.startsWith("--"));
const unknown = [
  ...args.filter((arg) => arg.startsWith("--") && arg !== "--if-stale"),
  ...named.filter((name) => !(name in bundles)),
];
if (unknown.length > 0) {
  console.error(`build: unknown: ${unknown.join(", ")}; parts are ${Object.keys(bundles).join(", ")}`);
  process.exit(2);
}
for (const name of named.length > 0 ? named : Object.keys(bundles)) {
  if (!ifStale || isStale(name)) await buildPart(name);
}
