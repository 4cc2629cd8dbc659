/**
 * Finds a Chromium-like browser for the browser tests, or gets one: `findBrowser()` looks, `needBrowser()` installs.
 * Plain Node without packages where it can.
 */
import { accessSync, constants, existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { inProject, run } from "./project.mjs";

const names = [
  "chromium",
  "chromium-browser",
  "google-chrome",
  "google-chrome-stable",
  "microsoft-edge",
  "chrome",
];

const usualPlaces = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/snap/bin/chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  ...["PROGRAMFILES", "PROGRAMFILES(X86)", "LOCALAPPDATA"].flatMap((folder) =>
    process.env[folder] === undefined
      ? []
      : [
          join(process.env[folder], "Google/Chrome/Application/chrome.exe"),
          join(process.env[folder], "Microsoft/Edge/Application/msedge.exe"),
        ],
  ),
];

function canRun(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** The browser that the test library has put into its own store, if any. */
async function ownBrowser() {
  if (!existsSync(inProject("node_modules", "playwright-core"))) return null;
  const { chromium } = await import("playwright-core");
  const path = chromium.executablePath();
  return path !== "" && canRun(path) ? path : null;
}

/** Path of an installed browser, or null. `HARDSTAND_BROWSER` wins when it is set. */
export async function findBrowser() {
  const told = process.env.HARDSTAND_BROWSER;
  if (told !== undefined && told !== "") return canRun(told) ? told : null;
  const onPath = (process.env.PATH ?? "")
    .split(delimiter)
    .flatMap((folder) => names.map((name) => join(folder, name)));
  return [...usualPlaces, ...onPath].find(canRun) ?? (await ownBrowser());
}

/** Path of a browser, installing one when there is none: from Debian's packages as root, else by the test library. */
export async function needBrowser() {
  const found = await findBrowser();
  if (found !== null) return found;
  if (process.getuid?.() === 0 && canRun("/usr/bin/apt-get")) {
    console.error("no browser found: installing chromium from the system's packages");
    const quiet = { env: { DEBIAN_FRONTEND: "noninteractive" }, stdio: ["ignore", "ignore", "inherit"] };
    await run("apt-get", ["update", "-q"], quiet);
    await run("apt-get", ["install", "-y", "-q", "--no-install-recommends", "chromium"], quiet);
    const installed = await findBrowser();
    if (installed !== null) return installed;
  }
  console.error("no browser found: asking the test library to install one");
  await run(process.execPath, [
    inProject("node_modules", "playwright-core", "cli.js"),
    "install",
    "chromium",
  ]);
  return findBrowser();
}
