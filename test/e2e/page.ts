import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import type { Browser, Page } from "playwright-core";
import { servePage } from "../../src/server/index.ts";

/** The built page served on this machine, with a browser to look at it. */
export interface Stage {
  readonly browser: Browser;
  readonly address: string;
  open(width: number, height: number): Promise<Page>;
  close(): Promise<void>;
}

export async function setStage(): Promise<Stage> {
  const executablePath = process.env["HARDSTAND_BROWSER"] ?? "/usr/bin/chromium";
  const root = fileURLToPath(new URL("../../dist/web", import.meta.url));
  readFileSync(`${root}/index.html`);
  const server = await servePage({ root, port: 0, furtherPorts: 0 });
  const browser = await chromium.launch({
    executablePath,
    args: [
      // Chromium refuses its sandbox to root, as in a container; everyone else keeps it.
      ...(process.getuid?.() === 0 ? ["--no-sandbox"] : []),
      "--disable-gpu",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-sync",
    ],
  });
  return {
    browser,
    address: server.address,
    open: async (width, height) => {
      const page = await (await browser.newContext({ viewport: { width, height } })).newPage();
      await page.goto(server.address);
      await page.waitForSelector('[data-state="done"]');
      return page;
    },
    close: async () => {
      await browser.close();
      await server.close();
    },
  };
}
