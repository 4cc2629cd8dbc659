import { readdirSync, readFileSync } from "node:fs";
import Ajv2020 from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { builtInTrade, planJob, readJob } from "../../src/agronomy/index.ts";
import { builtInThermo } from "../../src/chem/index.ts";
import { parseText } from "../../src/cli/document.ts";

const root = new URL("../../", import.meta.url);
const text = (path: string): string => readFileSync(new URL(path, root), "utf8");
const json = (path: string): unknown => JSON.parse(text(path));
const sources = json("data/sources.json") as Record<string, { citation: string; kind: string }>;
const dataFiles = readdirSync(new URL("data/", root)).filter(
  (name) => name.endsWith(".json") && name !== "sources.json",
);

/** Every key of a source below a value: `source`, `…Source`, `sources` and maps of them. */
function keysNamed(value: unknown, found: Set<string>): void {
  if (typeof value !== "object" || value === null) return;
  for (const [key, below] of Object.entries(value)) {
    const names = /^source$|Source$/.test(key);
    if (names && typeof below === "string") found.add(below);
    else if (/[sS]ources$/.test(key) && typeof below === "object" && below !== null)
      for (const item of Object.values(below)) if (typeof item === "string") found.add(item);
    keysNamed(below, found);
  }
}

const inData = new Set<string>();
for (const name of dataFiles) keysNamed(json(`data/${name}`), inData);

/** Program text that may name a source for a figure of its own. */
const program = readdirSync(new URL("src/", root), { recursive: true, encoding: "utf8" })
  .filter((name) => /\.tsx?$/.test(name) && !name.includes(".test."))
  .map((name) => text(`src/${name}`))
  .join("\n");

describe("one list of sources", () => {
  it("follows its schema", () => {
    const validate = new Ajv2020({ allErrors: true }).compile(
      json("data/schemas/sources.schema.json") as object,
    );
    validate(sources);
    expect(validate.errors ?? []).toEqual([]);
  });

  it("holds every source that a record names", () => {
    expect([...inData].filter((key) => !(key in sources)).sort()).toEqual([]);
    expect(inData.size).toBeGreaterThan(100);
  });

  it("holds none that nothing names", () => {
    const orphans = Object.keys(sources).filter((key) => !inData.has(key) && !program.includes(`"${key}"`));
    expect(orphans).toEqual([]);
  });

  it("cites no work twice", () => {
    const citations = Object.values(sources).map(({ citation }) => citation.toLowerCase());
    expect(citations.filter((citation, i) => citations.indexOf(citation) !== i)).toEqual([]);
  });

  it.each(readdirSync(new URL("examples/jobs/", root)))(
    "knows every source that the plan of %s cites",
    (name) => {
      const trade = builtInTrade();
      const read = parseText(text(`examples/jobs/${name}`), name);
      if (!read.ok) throw new Error(JSON.stringify(read.issues));
      const job = readJob(read.value, { trade });
      if (!job.ok) throw new Error(JSON.stringify(job.issues));
      const plan = planJob(job.value, { thermo: builtInThermo(), trade }, { draws: 0 });
      if (!plan.ok) throw new Error(JSON.stringify(plan.issues));
      const named = new Set<string>();
      // The water's own `source` is where it was drawn.
      keysNamed({ ...plan.value, sources: [], water: { ...plan.value.water, source: null } }, named);
      const listed = plan.value.sources.map(({ key }) => key);
      expect(listed.filter((key) => !(key in sources))).toEqual([]);
      expect([...named].filter((key) => !listed.includes(key))).toEqual([]);
    },
  );
});
