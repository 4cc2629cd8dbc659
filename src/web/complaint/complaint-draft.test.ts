import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { builtInTrade, readComplaint } from "../../agronomy/index.ts";
import { blankDraft } from "../job/draft.ts";
import { complaintAbout, complaintOf, isComplaint, recordOf } from "./complaint-draft.ts";
import { complaintReducer, inRecord } from "./use-complaint.ts";

const trade = builtInTrade();
const example = parse(
  readFileSync(new URL("../../../examples/complaints/low-rate-hard-bore.yaml", import.meta.url), "utf8"),
) as Record<string, unknown>;
const whole = {
  ...example,
  partners: ["urea"],
  site: { "volatility rules": false },
  used: [
    { chemistry: "ammonium sulfate", form: "crystals", dose: "0.8 kg/100 L", added: "after the products" },
    { chemistry: "citric acid", dose: "2 g/L" },
  ],
  seen: { pattern: "strips", plants: "all weakened", loads: "one load" },
  checked: { excluded: ["weed and stage"], found: ["product and rate"] },
};

test.each([
  ["the example", example],
  ["a record that says everything", whole],
])("%s is the same record after the form as before", (_, record) => {
  const saved: unknown = JSON.parse(JSON.stringify(recordOf(complaintOf(record))));
  expect(readComplaint(record, { trade })).toMatchObject({ ok: true });
  expect(readComplaint(saved, { trade })).toEqual(readComplaint(record, { trade }));
  expect(recordOf(complaintOf(saved))).toEqual(saved);
});

test("what the form has no box for is kept", () => {
  const odd = {
    ...example,
    "hardstand-complaint": 2,
    photos: ["a.jpg"],
    seen: { pattern: "even", colour: "yellow" },
    used: [{ chemistry: "citric acid", dose: "2 g/L", batch: 7 }],
  };
  expect(recordOf(complaintOf(odd))).toMatchObject({
    "hardstand-complaint": 2,
    photos: ["a.jpg"],
    seen: { pattern: "even", colour: "yellow" },
    used: [{ chemistry: "citric acid", dose: "2 g/L", batch: 7 }],
  });
});

test("a record begins with the water, the spray and the products of the open job, and nothing else", () => {
  const job = { ...blankDraft(), title: "North block", listsConditioners: true };
  const record = recordOf(
    complaintAbout({ ...job, spray: { ...job.spray, volume: { text: "80", unit: "L/ha" } } }),
  );
  expect(record).toMatchObject({ "hardstand-complaint": 1, spray: { volume: "80 L/ha" } });
  for (const key of ["title", "conditioners", "aim", "used", "seen", "checked"])
    expect(record).not.toHaveProperty(key);
});

test("a kept record comes back whole; anything else is not half read", () => {
  const kept: unknown = JSON.parse(JSON.stringify(complaintOf(whole)));
  expect(isComplaint(kept)).toBe(true);
  for (const other of [null, 3, {}, { ...(kept as object), job: {} }, { ...(kept as object), used: [5] }])
    expect(isComplaint(other)).toBe(false);
});

test("what is taken away of the job inside a record is given back by undo", () => {
  const start = { draft: complaintOf(whole), undo: [] };
  const without = complaintReducer(
    start,
    inRecord({ type: "step", what: "products removed", change: (job) => ({ ...job, mix: [] }) }),
  );
  expect(without.draft.job.mix).toEqual([]);
  expect(without.draft.used).toEqual(start.draft.used);
  expect(complaintReducer(without, { type: "undo" }).draft).toEqual(start.draft);
});
