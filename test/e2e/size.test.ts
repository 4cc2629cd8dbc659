import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";
import { loadLanguage } from "../../src/words/index.ts";

const root = fileURLToPath(new URL("../../dist/web", import.meta.url));

/** Size of a built file as it is sent, packed with gzip [kB of 1000 bytes]. */
function packed_kB(file: string): number {
  return gzipSync(readFileSync(join(root, file)), { level: 9 }).length / 1000;
}

const total = (files: readonly string[]): number => files.reduce((sum, file) => sum + packed_kB(file), 0);

/** Files that must be there before the first field can be typed into: the page and what it names, followed on. */
function firstLoad(): readonly string[] {
  const found = new Set(["index.html"]);
  for (const file of found) {
    const text = readFileSync(join(root, file), "utf8");
    const names =
      file === "index.html"
        ? [...text.matchAll(/(?:src|href)="\.\/(assets\/[^"]+)"/g)].map((match) => match[1] ?? "")
        : [...text.matchAll(/(?:from|import)\s*"\.\/([^"]+\.js)"/g)].map(
            (match) => `assets/${match[1] ?? ""}`,
          );
    for (const name of names) found.add(name);
  }
  return [...found];
}

const all = readdirSync(root, { recursive: true, encoding: "utf8" }).filter((file) => /\.\w+$/.test(file));

test("the first field is there after at most 170 kB, of it 130 kB script", () => {
  const files = firstLoad();
  expect(files.length).toBeGreaterThanOrEqual(3);
  expect(total(files)).toBeLessThanOrEqual(170);
  expect(total(files.filter((file) => file.endsWith(".js")))).toBeLessThanOrEqual(130);
});

/** Texts that are put into other languages stand in the words of these as well: they tell nothing of the data. */
const { phrases } = await loadLanguage("de");

/** Long texts of a data file, such as places in a source: each is found in a built file that holds the data, and in no other. */
function longTexts(value: unknown): readonly string[] {
  if (typeof value === "string")
    return value.length > 40 && !value.includes('"') && !phrases.has(value) ? [value] : [];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(longTexts) : [];
}

test.each(["aqueous", "solids", "actives"])("the constants of %s come once, with the engine", (name) => {
  const data = readFileSync(new URL(`../../data/${name}.json`, import.meta.url), "utf8");
  const scripts = all
    .filter((file) => file.endsWith(".js"))
    .map((file) => ({ file, text: readFileSync(join(root, file), "utf8") }));
  const built = [...new Set(longTexts(JSON.parse(data)))].filter((one) =>
    scripts.some(({ text }) => text.includes(one)),
  );
  expect(built.length).toBeGreaterThan(5);
  const holders = scripts.filter(
    ({ text }) => built.filter((one) => text.includes(one)).length > 0.5 * built.length,
  );
  expect(holders).toHaveLength(1);
  expect(firstLoad()).not.toContain(holders[0]?.file);
});

test("the whole install is at most 1 MB", () => {
  expect(total(all)).toBeLessThanOrEqual(1000);
});

test("the reader of PDFs is kept on the device, and no first load waits for it", () => {
  const [reader, ...more] = all.filter((file) => /pdf\.worker-.*\.js$/.test(file));
  expect(more).toEqual([]);
  expect(reader).toBeDefined();
  expect(readFileSync(join(root, "sw.js"), "utf8")).toContain(reader);
  expect(firstLoad()).not.toContain(reader);
});
