/**
 * Finds a Chromium-like browser for the browser tests, or gets one: `findBrowser()` looks, `needBrowser()` installs.
 */
import { spawnSync } from "node:child_process";
import { accessSync, constants, existsSync, statSync } from "node:fs";
import { delimiter, join } from "node:path";
import { inProject, run, runBin } from "./project.mjs";

const suffix = process.platform === "win32" ? ".exe" : "";

const names = [
  "chromium",
  "chromium-browser",
  "google-chrome",
  "google-chrome-stable",
  "microsoft-edge",
  "chrome",
  "msedge",
].map((name) => name + suffix);

/** Where browsers usually are, by system. */
function usualPlaces() {
  if (process.platform === "darwin") {
    return ["Google Chrome", "Chromium", "Microsoft Edge"].map(
      (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
    );
  }
  if (process.platform === "win32") {
    return ["PROGRAMFILES", "PROGRAMFILES(X86)", "LOCALAPPDATA"]
      .flatMap((variable) => process.env[variable] ?? [])
      .flatMap((folder) => [
        join(folder, "Google/Chrome/Application/chrome.exe"),
        join(folder, "Microsoft/Edge/Application/msedge.exe"),
      ]);
  }
  return ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome", "/snap/bin/chromium"];
}

function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

/** Whether a program is there and starts. Some systems keep a stand-in that only says how to install the real one. */
function canRun(path) {
  if (!isProgram(path)) return false;
  if (process.platform !== "linux") return true;
  return spawnSync(path, ["--version"], { stdio: "ignore", timeout: 30_000 }).status === 0;
}

/** The browser that the test library has put into its own store, or null. */
async function ownBrowser() {
  if (!existsSync(inProject("node_modules", "playwright-core"))) return null;
  const { chromium } = await import("playwright-core");
  const path = chromium.executablePath();
  return path !== "" && canRun(path) ? path : null;
}

/** Path of an installed browser, or null. When `HARDSTAND_BROWSER` is set, it is that one or none. */
export async function findBrowser() {
  const told = process.env.HARDSTAND_BROWSER ?? "";
  if (told !== "") return canRun(told) ? told : null;
  const onPath = (process.env.PATH ?? "")
    .split(delimiter)
    .filter((folder) => folder !== "")
    .flatMap((folder) => names.map((name) => join(folder, name)));
  const candidates = [...new Set([...usualPlaces(), ...onPath])];
  return candidates.find(canRun) ?? (await ownBrowser());
}

/** Path of a browser, installing one when there is none: from the system's packages as root, else by the test library. */
export async function needBrowser() {
  const found = await findBrowser();
  if (found !== null) return found;
  const told = process.env.HARDSTAND_BROWSER ?? "";
  if (told !== "") {
    console.error(`HARDSTAND_BROWSER is set to ${told}, which cannot be run`);
    return null;
  }
  if (process.getuid?.() === 0 && isProgram("/usr/bin/apt-get")) {
    console.error("no browser found: installing chromium from the system's packages");
    const quiet = { env: { DEBIAN_FRONTEND: "noninteractive" }, stdio: ["ignore", "ignore", "inherit"] };
    await run("apt-get", ["update", "-q"], quiet);
    // Without a font, text has no size and a test of the layout means nothing.
    const packages = ["chromium", "fonts-liberation"];
    await run("apt-get", ["install", "-y", "-q", "--no-install-recommends", ...packages], quiet);
    const installed = await findBrowser();
    if (installed !== null) return installed;
  }
  console.error("no browser found: asking the test library to install one");
  await runBin("playwright-core/cli.js", ["install", "chromium"]);
  return findBrowser();
}
