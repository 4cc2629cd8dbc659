import fc from "fast-check";
import { expect, test } from "vitest";
import { holdsJob, jobLink, readJobLink } from "./job-link.ts";

const ADDRESS = "https://example.org/hardstand/";

test("a job goes into a link and comes out whole", async () => {
  await fc.assert(
    fc.asyncProperty(fc.dictionary(fc.string({ unit: "grapheme" }), fc.jsonValue()), async (document) => {
      const plain = JSON.parse(JSON.stringify(document)) as typeof document;
      const link = await jobLink(plain, `${ADDRESS}#what-follows`);
      // Letters that no messenger breaks a link at.
      expect(link).toMatch(/^https:\/\/example\.org\/hardstand\/#job1=[A-Za-z0-9_-]+$/);
      expect(await readJobLink(link)).toEqual({ ok: true, document: plain });
    }),
    { numRuns: 50 },
  );
});

test("a link is found in the text of a message", async () => {
  const link = await jobLink({ hardstand: 1 }, ADDRESS);
  const message = `Have a look:\n${link}\nSee you Monday.`;
  expect(holdsJob(message)).toBe(true);
  expect(await readJobLink(message)).toEqual({ ok: true, document: { hardstand: 1 } });
});

test("an ordinary job makes a link that a message takes", async () => {
  const readings = ["calcium", "magnesium", "sodium", "alkalinity", "pH"].map((parameter, i) => ({
    parameter,
    unit: "mg/L",
    value: String(92 + i),
  }));
  const mix = [{ active: "glyphosate", form: "potassium salt", strength: "500 g/L", rate: "1.5 L/ha" }];
  const document = { hardstand: 1, title: "North block", water: { source: "bore", readings }, mix };
  expect((await jobLink(document, ADDRESS)).length).toBeLessThan(500);
});

test.each([
  ["", "no job"],
  ["https://example.org/#what-follows", "no job"],
  ["#job1=", "cut short"],
  ["#job1=AAAA", "cut short"],
  ["#job2=AAAA", "newer"],
])("“%s” is refused in words", async (text, words) => {
  const read = await readJobLink(text);
  expect(read).toMatchObject({ ok: false });
  expect(!read.ok && read.problem).toContain(words);
});

test("every shortened link is refused, none half read", async () => {
  const link = await jobLink({ hardstand: 1, title: "North block", water: { source: "bore" } }, ADDRESS);
  const start = link.indexOf("=") + 1;
  for (let length = start; length < link.length; length++)
    expect(await readJobLink(link.slice(0, length))).toMatchObject({ ok: false });
});

test("a link that swells beyond any job, or that holds a list, is refused", async () => {
  const bomb = await jobLink({ title: " ".repeat(3_000_000) }, ADDRESS);
  expect(bomb.length).toBeLessThan(10_000);
  expect(await readJobLink(bomb)).toMatchObject({ ok: false });
  const list = await jobLink([1] as unknown as Record<string, unknown>, ADDRESS);
  expect(await readJobLink(list)).toMatchObject({ ok: false });
});
