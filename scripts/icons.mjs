/** Draws the page's icons as PNG from the one drawing, `src/web/public/icon.svg`: `node scripts/icons.mjs`. */
import { readFileSync } from "node:fs";
import { chromium } from "playwright-core";
import { needBrowser } from "./find-browser.mjs";
import { inProject } from "./project.mjs";

/** Edge of each picture [px]: the two that installing asks for, and the one of a telephone's home screen. */
const edges = { "icon-192.png": 192, "icon-512.png": 512, "icon-180.png": 180 };

const drawing = readFileSync(inProject("src", "web", "public", "icon.svg"), "utf8");
const executablePath = await needBrowser();
if (executablePath === null) throw new Error("no browser to draw with");
const browser = await chromium.launch({
  executablePath,
  args: process.getuid?.() === 0 ? ["--no-sandbox"] : [],
});
for (const [name, edge] of Object.entries(edges)) {
  const page = await browser.newPage({ viewport: { width: edge, height: edge } });
  await page.setContent(`<style>body{margin:0}svg{display:block;width:100vw}</style>${drawing}`);
  await page.screenshot({ path: inProject("src", "web", "public", name) });
  await page.close();
}
await browser.close();
