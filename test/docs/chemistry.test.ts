import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { inProject } from "../../scripts/project.mjs";
import actives from "../../data/actives.json" with { type: "json" };
import gases from "../../data/gases.json" with { type: "json" };
import checks from "../../data/water-checks.json" with { type: "json" };
import sources from "../../data/sources.json" with { type: "json" };

const page = readFileSync(inProject("docs", "chemistry.md"), "utf8");

const rows = [...page.matchAll(/^\| ([^|]+) \| ([^|]+) \| `(\w+)` in \[`([^`]+)`\]/gm)].map(
  ([, what = "", value = "", name = "", file = ""]) => ({
    what: what.trim(),
    value: Number(value),
    name,
    file,
  }),
);

test("the table of our own figures is read", () => {
  expect(rows.length).toBeGreaterThanOrEqual(23);
});

test.each(rows)("$name is $value as the page says", ({ value, name, file }) => {
  const text = readFileSync(inProject(file), "utf8");
  const found = new RegExp(`^(?:export )?const ${name}(?:: \\w+)? = ([\\d.e_-]+);`, "m").exec(text);
  expect(Number(found?.[1]?.replaceAll("_", ""))).toBe(value);
});

test("every source named is in the data", () => {
  const keys = [...page.matchAll(/\[`([a-z0-9-]+)`\](?!\()/g)].map(([, key = ""]) => key);
  expect(keys.length).toBeGreaterThan(15);
  expect(keys.filter((key) => !Object.hasOwn(sources, key))).toEqual([]);
});

test("what the page says of the data is so", () => {
  expect(page).toContain(`${gases.air.CO2_atm.value * 1e6} µatm`);
  expect(page).toContain(`${checks.assumptions.temperature_C.central} °C, common practice`);
  expect(page).toContain(`below pH ${checks.criteria.alkalinityEndPoint.value} `);
  const energies = actives.actives.map((active) => active.activationEnergy_kJPerMol);
  const usual = new Set(energies.filter((energy) => energy.fromMemory).map((energy) => energy.value));
  expect([...usual].map((energy) => page.includes(`is ${energy} kJ/mol, from memory`))).toEqual([true]);
  const laws = actives.actives.filter((active) => active.rateLaw !== null);
  const remembered = laws.filter((active) => active.rateLaw?.fromMemory === true);
  expect(remembered.length).toBeGreaterThan(laws.length / 2);
});

test("every name in code type that looks like one of the code is in the code or the data", () => {
  const names = [...page.matchAll(/`([a-z]+[A-Z]\w+|[A-Z_]{4,})`/g)].map(([, name = ""]) => name);
  expect(names.length).toBeGreaterThan(25);
  const text = [
    "src/chem/system.ts",
    "src/chem/conditions.ts",
    "src/chem/dry-down.ts",
    "src/chem/thermo-constants.ts",
    "src/chem/thermo-system.ts",
    "src/chem/water-properties.ts",
    "src/chem/newton.ts",
    "src/chem/pitzer.ts",
    "src/chem/sensitivities.ts",
    "src/chem/pitzer-notes.ts",
    "src/chem/pitzer-parameters.ts",
    "src/water/complete-water.ts",
    "src/water/solve-carbonate.ts",
    "src/agronomy/bands/draws.ts",
    "src/agronomy/borrowed-activity.ts",
    "src/agronomy/chemistry.ts",
    "src/agronomy/clock.ts",
    "src/agronomy/dose-search.ts",
    "src/agronomy/finish-programme.ts",
    "src/agronomy/iron-air.ts",
    "src/agronomy/flasks/compare.ts",
    "src/agronomy/flasks/contents.ts",
    "src/agronomy/flasks/run-demo.ts",
    "src/agronomy/leaf.ts",
    "src/agronomy/programmes.ts",
    "src/agronomy/shares.ts",
    "src/agronomy/tank.ts",
    "src/agronomy/verdict.ts",
    "data/solids.json",
    "data/conditioners.json",
  ]
    .map((file) => readFileSync(inProject(file), "utf8"))
    .join("\n");
  expect([...new Set(names)].filter((name) => !new RegExp(`\\b${name}\\b`).test(text))).toEqual([]);
});
