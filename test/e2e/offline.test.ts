import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { servePage } from "../../src/server/index.ts";
import { setStage } from "./page.ts";
import type { Stage } from "./page.ts";
import { newProfile } from "./profile.ts";

const BUILT = fileURLToPath(new URL("../../dist/web", import.meta.url));

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

const ready = (page: Page): Promise<unknown> =>
  page.waitForSelector('[data-offline="ready"]', { timeout: 60_000 });
const done = (page: Page): Promise<unknown> =>
  page.waitForSelector('[data-state="done"]', { timeout: 60_000 });

test("starts cold without a network: server gone, browser started anew", async () => {
  const server = await servePage({ root: BUILT, port: 0, furtherPorts: 0 });
  const profile = newProfile();
  try {
    const first = await profile.visit(server.address);
    await ready(first.page);
    await first.page.fill("#field-title", "Far paddock");
    await first.page.waitForSelector('[data-keeping="kept"]');
    await first.kill();
    await server.close();
    const { page, kill } = await profile.visit(server.address);
    await done(page);
    expect(await page.inputValue("#field-title")).toBe("Far paddock");
    // The whole flow: a new answer, a file of another form (its reader is loaded on demand), a card.
    const figure = page.locator("#section-water-facts .figure").first();
    const before = await figure.textContent();
    await page.fill("#field-water-readings-0-value", "184");
    await expect.poll(() => figure.textContent(), { timeout: 60_000 }).not.toBe(before);
    // The engine for first answers and the helper of plans come from what was put by as well.
    await expect.poll(() => page.workers().length, { timeout: 60_000 }).toBe(3);
    const yaml = readFileSync(new URL("../../examples/jobs/iron-bore.yaml", import.meta.url));
    await page
      .getByLabel("Job file")
      .setInputFiles({ name: "iron-bore.yaml", mimeType: "application/yaml", buffer: yaml });
    await expect.poll(() => page.inputValue("#field-title"), { timeout: 60_000 }).not.toBe("Far paddock");
    await done(page);
    expect(await page.locator(".card-sheet").count()).toBe(1);
    await kill();
  } finally {
    await profile.remove();
    await server.close();
  }
});

test("is put by whatever is opened first, and then starts without a network", async () => {
  const server = await servePage({ root: BUILT, port: 0, furtherPorts: 0 });
  const context = await stage.browser.newContext();
  try {
    const page = await context.newPage();
    await page.goto(`${server.address}#flasks`);
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await server.close();
    await page.goto(`${server.address}#complaint`);
    await page.reload();
    await page.waitForSelector('[data-complaint="done"]', { timeout: 60_000 });
  } finally {
    await context.close();
    await server.close();
  }
});

test("a newer version waits until it is asked for, then takes over with every word in place", async () => {
  const folder = mkdtempSync(join(tmpdir(), "hardstand-web-"));
  cpSync(BUILT, folder, { recursive: true });
  const server = await servePage({ root: folder, port: 0, furtherPorts: 0 });
  const context = await stage.browser.newContext();
  try {
    const page = await context.newPage();
    await page.goto(server.address);
    await ready(page);
    await page.reload();
    await done(page);
    await page.fill("#field-title", "Kept over");
    const change = (name: string, from: string | RegExp, to: string): void => {
      const text = readFileSync(join(folder, name), "utf8");
      expect(text).toMatch(from);
      writeFileSync(join(folder, name), text.replace(from, to));
    };
    change("index.html", "<title>Hardstand</title>", "<title>Hardstand, newer</title>");
    change("sw.js", /(url:"index\.html",revision:")[0-9a-f]+/, "$1newer");
    await page.reload();
    await page.getByRole("button", { name: "Start the newer one now" }).waitFor({ timeout: 60_000 });
    expect(await page.title()).toBe("Hardstand");
    await page.getByRole("button", { name: "Start the newer one now" }).click();
    await expect.poll(() => page.title(), { timeout: 60_000 }).toBe("Hardstand, newer");
    await done(page);
    expect(await page.inputValue("#field-title")).toBe("Kept over");
  } finally {
    await context.close();
    await server.close();
    rmSync(folder, { recursive: true });
  }
});

test("a page whose files cannot be had says so and clears its way out", async () => {
  const context = await stage.browser.newContext();
  const page = await context.newPage();
  await page.goto(stage.address);
  await ready(page);
  await page.fill("#field-title", "Still here");
  await page.waitForSelector('[data-keeping="kept"]');
  // What was put by is spoilt, as a full disk or a half update may leave it.
  await page.evaluate(async () => {
    for (const name of await caches.keys()) {
      const cache = await caches.open(name);
      for (const request of await cache.keys())
        if (/assets\/index-.*\.js/.test(request.url))
          await cache.put(
            request,
            new Response("nonsense(", { headers: { "Content-Type": "text/javascript" } }),
          );
    }
  });
  await page.reload();
  await page.getByRole("button", { name: "Fetch the page afresh" }).click({ timeout: 60_000 });
  await done(page);
  expect(await page.inputValue("#field-title")).toBe("Still here");
  await context.close();
});

test("can be installed: a manifest with a name, a start and icons of the sizes they say", async () => {
  const fetched = async (path: string): Promise<Response> => {
    const response = await fetch(new URL(path, stage.address));
    expect(response.status, path).toBe(200);
    return response;
  };
  const manifest = (await (await fetched("manifest.webmanifest")).json()) as {
    name: string;
    start_url: string;
    display: string;
    icons: { src: string; sizes: string; type: string }[];
  };
  expect(manifest).toMatchObject({ name: "Hardstand", start_url: "./", display: "standalone" });
  for (const { src, sizes, type } of manifest.icons) {
    const response = await fetched(src);
    expect(response.headers.get("content-type")).toContain(type);
    if (type !== "image/png") continue;
    const bytes = Buffer.from(await response.arrayBuffer());
    expect(`${String(bytes.readUInt32BE(16))}x${String(bytes.readUInt32BE(20))}`).toBe(sizes);
  }
  const page = await stage.open(1280, 900);
  const devtools = await page.context().newCDPSession(page);
  expect((await devtools.send("Page.getAppManifest")).errors).toEqual([]);
});

test("everything the page may ask for is put by at the first visit", async () => {
  const context = await stage.browser.newContext();
  const page = await context.newPage();
  const asked = new Set<string>();
  page.on("request", (request) => asked.add(new URL(request.url()).pathname));
  await page.goto(stage.address);
  await ready(page);
  await done(page);
  const kept = await page.evaluate(async () => {
    const caught = await Promise.all(
      (await caches.keys()).map(async (name) =>
        (await (await caches.open(name)).keys()).map(({ url }) => url),
      ),
    );
    return caught.flat().map((url) => new URL(url).pathname);
  });
  const own = [...asked].filter((path) => path !== "/" && path !== "/sw.js");
  expect(own.length).toBeGreaterThan(2);
  expect(own.filter((path) => !kept.includes(path))).toEqual([]);
  await context.close();
});
