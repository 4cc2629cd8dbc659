import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { servePage } from "../../src/server/index.ts";

/** The built page served on this machine, with a browser to look at it. */
export interface Stage {
  readonly browser: Browser;
  /** Address of the page. */
  readonly address: string;
  /**
   * Somebody new. Nothing is put on their device for later, which takes as long as a first answer: who looks at that
   * asks the browser for a context.
   */
  newContext(options?: BrowserContextOptions): Promise<BrowserContext>;
  /** The page of somebody new, with the first answer computed. */
  open(width: number, height: number): Promise<Page>;
  /** The same as soon as its form can be typed into. */
  visit(width: number, height: number): Promise<Page>;
  close(): Promise<void>;
}

/** Unfolds the tools at the head of the page, which a phone folds away. */
export async function unfoldTools(page: Page): Promise<void> {
  const summary = page.locator(".tools-fold > summary");
  const open = await page.locator(".tools-fold[open]").count();
  if (open === 0 && (await summary.isVisible())) await summary.click();
}

/** How long a poll of the page goes on: long enough for a machine that has other things to do. */
export const SOON = { timeout: 30_000 } as const;

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
      // The words the tests look for are those of British English.
      "--lang=en-GB",
      "--accept-lang=en-GB",
    ],
  });
  const newContext = (options: BrowserContextOptions = {}): Promise<BrowserContext> =>
    browser.newContext({ serviceWorkers: "block", ...options });
  const visit = async (width: number, height: number): Promise<Page> => {
    const page = await (await newContext({ viewport: { width, height } })).newPage();
    await page.goto(server.address);
    await page.waitForSelector("#field-title");
    return page;
  };
  return {
    browser,
    address: server.address,
    newContext,
    visit,
    open: async (width, height) => {
      const page = await visit(width, height);
      await page.waitForSelector('[data-state="done"]', { timeout: 90_000 });
      return page;
    },
    close: async () => {
      await browser.close();
      await server.close();
    },
  };
}
