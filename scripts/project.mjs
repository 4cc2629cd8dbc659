/**
 * What the scripts share: where things are, whether packages or bundles are missing or old, and how to run a child.
 * Plain Node without packages, since it runs before anything is installed.
 */
import { spawn } from "node:child_process";
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/** Folder of the project, without a trailing separator. */
export const root = fileURLToPath(new URL("..", import.meta.url)).replace(/[\\/]$/, "");

/** Path of something inside the project. */
export const inProject = (...parts) => join(root, ...parts);

/** The version of the project, as in package.json. */
export const version = JSON.parse(readFileSync(inProject("package.json"), "utf8")).version;

/** Parts that are type-checked apart, each as `tsconfig.<part>.json`: what a part may use is what its types say. */
export const typeChecks = ["kernel", "node", "web", "e2e"];

/** Why this Node cannot run the project, or null when it can: 20.19 or later of 20, else 22.12 or later. */
export function nodeVersionProblem(running = process.versions.node) {
  const [major = 0, minor = 0] = running.split(".").map(Number);
  const fits = (major === 20 && minor >= 19) || (major === 22 && minor >= 12) || major > 22;
  return fits ? null : `Node ${running} is too old: version 20.19 or later, or 22.12 or later, is needed.`;
}

/**
 * Runs a program and waits for it.
 *
 * @param options `stdio` as for spawn (default: all three inherited); `env` is added to the environment;
 * `timeout_s` ends a program that hangs.
 * @returns its exit code; 1 when it was ended by a signal or could not be started, with a line on stderr.
 */
export function run(command, args, options = {}) {
  const { env = {}, stdio = "inherit", timeout_s = 600, shell = false } = options;
  return new Promise((resolve) => {
    const child = spawn(command, args, { cwd: root, stdio, shell, env: { ...process.env, ...env } });
    const timer = setTimeout(() => {
      console.error(`${command} did not end within ${timeout_s} s and was stopped`);
      child.kill("SIGKILL");
    }, timeout_s * 1000);
    child.on("error", (error) => {
      clearTimeout(timer);
      console.error(`${command} could not be started: ${error.message}`);
      resolve(1);
    });
    child.on("close", (code) => {
      clearTimeout(timer);
      resolve(code ?? 1);
    });
  });
}

/** Runs a script of an installed package with this same Node, e.g. `runBin("eslint/bin/eslint.js", ["."])`. */
export function runBin(script, args, options) {
  return run(process.execPath, [inProject("node_modules", ...script.split("/")), ...args], options);
}

/** Runs npm: the one that started us when there is one, else the one on the path. */
export function runNpm(args, options) {
  const npm = process.env.npm_execpath;
  if (npm?.endsWith(".js")) return run(process.execPath, [npm, ...args], options);
  return run("npm", args, { ...options, shell: process.platform === "win32" });
}

function lockedPackages(path) {
  const { packages = {} } = JSON.parse(readFileSync(path, "utf8"));
  return Object.entries(packages).filter(([name]) => name !== "");
}

/**
 * Whether packages must be installed: npm's own record of what it installed is missing or differs from the lock
 * file. Versions are compared rather than file times, because a fresh checkout or a copy makes times meaningless.
 * Optional packages for other systems are not installed and may be absent.
 */
export function needsInstall() {
  const record = inProject("node_modules", ".package-lock.json");
  if (!existsSync(record)) return true;
  const installed = new Map(lockedPackages(record));
  for (const [name, { version: wanted, optional = false }] of lockedPackages(
    inProject("package-lock.json"),
  )) {
    const found = installed.get(name);
    if (found === undefined ? !optional : found.version !== wanted) return true;
    installed.delete(name);
  }
  return installed.size > 0;
}

/** Installs exactly what the lock file says. @returns the exit code of npm. */
export function install(options) {
  return runNpm(["ci"], options);
}

/** Newest modification time in ms of a file, or of a folder and all within it; 0 when it does not exist. */
function newestChange(path, ignored) {
  const stat = statSync(path, { throwIfNoEntry: false });
  if (stat === undefined) return 0;
  if (!stat.isDirectory()) return stat.mtimeMs;
  // The folder's own time counts too: it changes when a file is removed.
  return readdirSync(path, { withFileTypes: true })
    .filter((entry) => !ignored(entry.name))
    .map((entry) => newestChange(join(path, entry.name), ignored))
    .reduce((newest, time) => Math.max(newest, time), stat.mtimeMs);
}

/** Parts that are built, each with what it is made of (beside the settings) and the file that shows it is there. */
export const bundles = {
  cli: { output: "dist/cli/main.js", notMadeOf: ["web"] },
  server: { output: "dist/server/main.js", notMadeOf: ["web", "cli"] },
  page: { output: "dist/web/index.html", notMadeOf: ["cli", "server"] },
};

/** Whether a bundle is missing or older than what it is made of. */
export function isStale(name) {
  const { output, notMadeOf } = bundles[name];
  const built = statSync(inProject(output), { throwIfNoEntry: false });
  if (built === undefined) return true;
  const isTest = (entry) => /\.test\.tsx?$/.test(entry);
  const settings = ["package-lock.json", "package.json", "vite.config.ts", "vite.node.config.ts"];
  const layers = readdirSync(inProject("src")).filter((layer) => !notMadeOf.includes(layer));
  const paths = [
    ...settings,
    "data",
    "schemas",
    "examples",
    "scripts/build.mjs",
    "scripts/installed-browser.mjs",
    ...layers.map((l) => `src/${l}`),
  ];
  return paths.some((path) => newestChange(inProject(path), isTest) > built.mtimeMs);
}
