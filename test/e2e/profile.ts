import { spawn } from "node:child_process";
import type { ChildProcess } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright-core";
import type { Page } from "playwright-core";

/** A browser of our own making, with a profile on the disk that outlives it. */
export interface Visit {
  readonly page: Page;
  /** Ends the browser as a dead battery would: without a word to the page. */
  kill(): Promise<void>;
}

/** A browser that was started, for a tool of its own to look at. */
export interface Started {
  /** Where its debugging protocol is spoken on this machine. */
  readonly port: number;
  kill(): Promise<void>;
}

/** The profile of one person's browser. */
export interface Profile {
  start(): Promise<Started>;
  visit(address: string): Promise<Visit>;
  /** Ends what still runs and removes the profile. */
  remove(): Promise<void>;
}

const ARGUMENTS = [
  "--headless=new",
  "--remote-debugging-port=0",
  ...(process.getuid?.() === 0 ? ["--no-sandbox"] : []),
  "--disable-gpu",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-sync",
];

export function newProfile(): Profile {
  const folder = mkdtempSync(join(tmpdir(), "hardstand-profile-"));
  const running = new Set<ChildProcess>();
  const kill = async (child: ChildProcess): Promise<void> => {
    if (!running.delete(child)) return;
    const gone = new Promise((resolve) => child.once("exit", resolve));
    child.kill("SIGKILL");
    await gone;
  };
  const start = async (): Promise<Started> => {
    const portFile = join(folder, "DevToolsActivePort");
    rmSync(portFile, { force: true });
    // A browser that was killed leaves its lock behind.
    for (const name of ["SingletonLock", "SingletonCookie", "SingletonSocket"])
      rmSync(join(folder, name), { force: true });
    const program = process.env["HARDSTAND_BROWSER"] ?? "/usr/bin/chromium";
    const child = spawn(program, [...ARGUMENTS, `--user-data-dir=${folder}`, "about:blank"], {
      stdio: "ignore",
    });
    running.add(child);
    return { port: await listening(portFile), kill: () => kill(child) };
  };
  return {
    start,
    visit: async (address) => {
      const { port, kill } = await start();
      const browser = await chromium.connectOverCDP(`http://127.0.0.1:${String(port)}`);
      const context = browser.contexts()[0];
      if (context === undefined) throw new Error("the browser has no window");
      const page = await context.newPage();
      await page.goto(address);
      return { page, kill };
    },
    remove: async () => {
      await Promise.all([...running].map(kill));
      // Parts of a killed browser may write for a moment longer.
      await rm(folder, { recursive: true, force: true, maxRetries: 40, retryDelay: 250 });
    },
  };
}

async function listening(portFile: string): Promise<number> {
  for (let waited_ms = 0; waited_ms < 30_000; waited_ms += 100) {
    await new Promise((resolve) => setTimeout(resolve, 100));
    const port = readPort(portFile);
    if (port !== null) return port;
  }
  throw new Error("the browser did not start");
}

function readPort(portFile: string): number | null {
  try {
    const port = Number(readFileSync(portFile, "utf8").split("\n")[0]);
    return Number.isInteger(port) && port > 0 ? port : null;
  } catch {
    return null;
  }
}
