/**
 * Finds a Chromium-like browser for the browser tests, or gets one: `findBrowser()` looks, `needBrowser()` installs.
 */
import { existsSync } from "node:fs";
import { browserTold, canRun, installedBrowser, isProgram } from "./installed-browser.mjs";
import { inProject, run, runBin } from "./project.mjs";

/** The browser that the test library has put into its own store, or null. */
async function ownBrowser() {
  if (!existsSync(inProject("node_modules", "playwright-core"))) return null;
  const { chromium } = await import("playwright-core");
  const path = chromium.executablePath();
  return path !== "" && canRun(path) ? path : null;
}

/** Path of an installed browser, or null. When `HARDSTAND_BROWSER` is set, it is that one or none. */
export async function findBrowser() {
  return installedBrowser() ?? (browserTold() === "" ? await ownBrowser() : null);
}

/** Path of a browser, installing one when there is none: from the system's packages as root, else by the test library. */
export async function needBrowser() {
  const found = await findBrowser();
  if (found !== null) return found;
  const told = browserTold();
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
