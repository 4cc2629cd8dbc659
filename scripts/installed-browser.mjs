/**
 * Finds a Chromium-like browser that is installed, for the tests of the page and for making PDFs. Plain Node without
 * packages: the command line carries it in its bundle.
 */
import { spawnSync } from "node:child_process";
import { accessSync, constants, statSync } from "node:fs";
import { delimiter, join } from "node:path";

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

/** Whether a path is a file that may be run. */
export function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

/** Whether a program is there and starts. Some systems keep a stand-in that only says how to install the real one. */
export function canRun(path) {
  if (!isProgram(path)) return false;
  if (process.platform !== "linux") return true;
  return spawnSync(path, ["--version"], { stdio: "ignore", timeout: 30_000 }).status === 0;
}

/** The browser that `HARDSTAND_BROWSER` names; "" when it names none. */
export function browserTold() {
  return process.env.HARDSTAND_BROWSER ?? "";
}

/** Path of an installed browser, or null. When `HARDSTAND_BROWSER` is set, it is that one or none. */
export function installedBrowser() {
  const told = browserTold();
  if (told !== "") return canRun(told) ? told : null;
  const onPath = (process.env.PATH ?? "")
    .split(delimiter)
    .filter((folder) => folder !== "")
    .flatMap((folder) => names.map((name) => join(folder, name)));
  return [...new Set([...usualPlaces(), ...onPath])].find(canRun) ?? null;
}
