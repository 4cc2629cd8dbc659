import { readFileSync } from "node:fs";
import Ajv2020 from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { builtInTrade, findActive, findConditioner } from "../../src/agronomy/index.ts";
import { ATOMIC_WEIGHTS } from "../../src/units/index.ts";
import { atomsIn, massOf, minus, plus } from "./formula.ts";
import type { Atoms } from "./formula.ts";
import { chargeOf, onlyHydrogen, released } from "./released.ts";

const data = new URL("../../data/", import.meta.url);
const read = (name: string): unknown => JSON.parse(readFileSync(new URL(name, data), "utf8"));
const FILES = [
  "actives",
  "affinity-classes",
  "conditioners",
  "feeds",
  "rules",
  "formulations",
  "cautions",
  "dose-rules",
  "other-forms",
  "complaint-causes",
] as const;
const contents = Object.fromEntries(FILES.map((name) => [name, read(`${name}.json`)]));
const trade = builtInTrade();

interface Sourced {
  readonly source: string;
  readonly locator: unknown;
  readonly fromMemory: unknown;
}

/** Every object below `value` that names a source. */
function sourced(value: unknown): readonly Sourced[] {
  if (typeof value !== "object" || value === null) return [];
  const below = Object.values(value).flatMap(sourced);
  return "source" in value ? [value as unknown as Sourced, ...below] : below;
}

describe("trade data files", () => {
  const ajv = new Ajv2020({ allErrors: true, allowUnionTypes: true });
  ajv.addSchema(read("schemas/trade-definitions.schema.json") as object);
  const validators = new Map(
    FILES.map((name) => [name, ajv.compile(read(`schemas/${name}.schema.json`) as object)] as const),
  );

  it.each(FILES)("%s.json follows its schema", (name) => {
    const validate = validators.get(name);
    validate?.(contents[name]);
    expect(validate?.errors ?? []).toEqual([]);
  });

  it.each([
    ["actives", "/actives/0", (f: { actives: Record<string, unknown>[] }) => delete f.actives[0]?.source],
    [
      "conditioners",
      "/conditioners/0",
      (f: { conditioners: Record<string, unknown>[] }) => delete f.conditioners[0]?.searchLimit,
    ],
    ["rules", "/rules/0", (f: { rules: Record<string, unknown>[] }) => delete f.rules[0]?.evidence],
  ] as const)("a record of %s with a part missing does not pass", (name, path, spoil) => {
    const file = structuredClone(contents[name]);
    spoil(file as never);
    const validate = validators.get(name);
    expect(validate?.(file)).toBe(false);
    expect(validate?.errors?.map((e) => e.instancePath)).toContain(path);
  });

  it("what is cited as from memory is flagged so", () => {
    const kinds = read("sources.json") as Record<string, { kind: string }>;
    const wrong = FILES.flatMap((name) => sourced(contents[name])).filter(
      (r) => kinds[r.source]?.kind === "from memory" && r.fromMemory !== true,
    );
    expect(wrong).toEqual([]);
  });

  it("says nothing of where copies of the works are kept", () => {
    const text = JSON.stringify(contents);
    expect(text.match(/.{20}(https?:|github|\.com\b|www\.|\/work|\/tmp|companion).{20}/gi) ?? []).toEqual([]);
  });

  it.each([
    ["actives", trade.actives.map((a) => a.id)],
    ["conditioners", trade.conditioners.map((c) => c.id)],
    ["conditioner forms", trade.conditioners.flatMap((c) => c.forms.map((f) => f.id))],
    ["feeds", trade.feeds.map((f) => f.id)],
    ["feed forms", trade.feeds.flatMap((f) => f.forms.map((form) => form.id))],
    ["rules", trade.rules.map((r) => r.id)],
    ["rule texts", trade.rules.map((r) => r.text)],
    ["formulation codes", trade.formulations.types.flatMap((t) => [t.code, ...t.also])],
    ["mixing groups in the order", trade.formulations.order.map((o) => o.group)],
    ["cautions", trade.cautions.map((c) => c.id)],
  ] as const)("%s are there once each", (_name, ids) => {
    expect(ids.length).toBeGreaterThan(0);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
  });

  it("the file versions are that of the data set", () => {
    for (const name of FILES) {
      expect((contents[name] as { version: string }).version, name).toBe(trade.version);
    }
  });
});

describe("conditioners", () => {
  it.each(trade.conditioners.map((c) => [c.id, c] as const))(
    "%s: mass, atoms and charge follow from the formula",
    (_id, record) => {
      expect(record.molarMass_gPerMol).toBeCloseTo(massOf(record.formula), 2);
      // Water of crystallisation and urea take no part and are left out of what is released.
      const inert = record.formula.split("·").filter((part) => /^\d*(H2O|CH4N2O)$/.test(part));
      const inertAtoms = inert.reduce<Atoms>((sum, part) => plus(sum, atomsIn(part)), {});
      const rest = minus(minus(atomsIn(record.formula), inertAtoms), released(record.released));
      const protons = onlyHydrogen(rest);
      const charge = Object.entries(record.released).reduce((sum, [c, n]) => sum + n * chargeOf(c), 0);
      expect(protons).toBeGreaterThanOrEqual(0);
      expect(charge + protons).toBe(0);
    },
  );

  it("what they release and the ligands they bring exist in the chemical data", () => {
    const ligandFile = read("ligands.json") as { ligands: { id: string; component: { name: string } }[] };
    const simple = (read("components.json") as { components: { name: string }[] }).components.map(
      (c) => c.name,
    );
    for (const record of trade.conditioners) {
      const own = ligandFile.ligands.filter((l) => record.ligands.includes(l.id));
      expect(own.length, record.id).toBe(record.ligands.length);
      const known = [...simple, ...own.map((l) => l.component.name)];
      for (const component of Object.keys(record.released)) expect(known, record.id).toContain(component);
    }
  });

  it("the search goes no further than the substance dissolves, and covers the usual dose", () => {
    for (const record of trade.conditioners) {
      const most = record.searchLimit.value_gPerL;
      for (const limit of Object.values(record.solubility?.gPer100gWater ?? {})) {
        expect(most, record.id).toBeLessThan(limit * 10);
      }
      expect(record.usualDose?.high_gPerL ?? 0, record.id).toBeLessThanOrEqual(most);
    }
  });

  it("hydrates are counted in the same substance as the record", () => {
    const citric = trade.conditioners.find((c) => c.id === "citric-acid");
    const edta = trade.conditioners.find((c) => c.id === "edta-tetrasodium");
    const water = 2 * ATOMIC_WEIGHTS.H + ATOMIC_WEIGHTS.O;
    const share = (anhydrous: number, waters: number): number =>
      (99.5 * anhydrous) / (anhydrous + waters * water);
    expect(citric?.forms.find((f) => f.id === "citric-acid-monohydrate")?.assay_percent).toBeCloseTo(
      share(192.123, 1),
      1,
    );
    expect(edta?.forms.find((f) => f.id === "edta-tetrasodium-tetrahydrate")?.assay_percent).toBeCloseTo(
      (share(380.172, 4) * 99) / 99.5,
      1,
    );
  });
});

describe("leaf feeds", () => {
  it.each(trade.feeds.map((f) => [f.id, f] as const))(
    "%s: mass, atoms and charge follow from the formula",
    (_id, record) => {
      expect(record.molarMass_gPerMol).toBeCloseTo(massOf(record.formula), 2);
      const { H: _protons, O: _oxygen, ...rest } = minus(atomsIn(record.formula), released(record.released));
      expect(Object.values(rest).filter((n) => n !== 0)).toEqual([]);
      // What is left over is protons and water: 2 H + O, so that H − 2 O is the number of protons.
      const { H = 0, O = 0 } = minus(atomsIn(record.formula), released(record.released));
      const charge = Object.entries(record.released).reduce((sum, [c, n]) => sum + n * chargeOf(c), 0);
      expect(charge + H - 2 * O).toBe(0);
    },
  );

  it("hold as much of the element as the name of the form says", () => {
    let compared = 0;
    for (const record of trade.feeds) {
      const { symbol, component } = record.nutrient;
      for (const form of record.forms) {
        const said = new RegExp(`([\\d.]+) % ${symbol}\\b`).exec(form.name)?.[1];
        if (said === undefined) continue;
        const perMol = ATOMIC_WEIGHTS[symbol] * (record.released[component] ?? 0);
        expect((form.assay_percent * perMol) / record.molarMass_gPerMol, form.id).toBeCloseTo(
          Number(said),
          -0.3,
        );
        compared++;
      }
    }
    expect(compared).toBeGreaterThanOrEqual(14);
  });

  it("are named to the rules, which name none that no feed has", () => {
    const said = new Set(trade.feeds.flatMap((f) => f.facts));
    const asked =
      JSON.stringify(trade.rules).match(/"fact":"mix.feeds","op":"in","value":\[([^\]]*)\]/g) ?? [];
    const names = asked.flatMap((leaf) => JSON.parse(leaf.slice(leaf.indexOf("["))) as string[]);
    expect(names.length).toBeGreaterThan(5);
    expect(names.filter((name) => !said.has(name))).toEqual([]);
  });
});

describe("names used in jobs are found", () => {
  it.each([
    ["ammonium sulfate", "ammonium-sulfate"],
    ["Ammonium Sulphate", "ammonium-sulfate"],
    ["AMS", "ammonium-sulfate"],
    ["citric acid", "citric-acid"],
    ["disodium EDTA", "edta-disodium"],
    ["disodium EDTA dihydrate", "edta-disodium"],
    ["tetrasodium EDTA", "edta-tetrasodium"],
    ["HEDP", "hedp"],
    ["sodium tripolyphosphate", "sodium-tripolyphosphate"],
    ["phosphoric acid", "phosphoric-acid"],
    ["GLDA", "glda-tetrasodium"],
    ["UAN", "uan-28"],
  ])("%s", (text, id) => {
    const found = findConditioner(trade, text);
    expect(found.ok && found.value.record.id).toBe(id);
  });

  it.each([
    ["glyphosate", "glyphosate"],
    ["2,4-D", "2-4-d"],
    ["2,4-D ester", "2-4-d-ester"],
    ["glufosinate", "glufosinate-ammonium"],
    ["MCPA", "mcpa"],
    ["Mecoprop-P", "mecoprop-p"],
    ["tribenuron-methyl", "tribenuron-methyl"],
    ["1071-83-6", "glyphosate"],
    ["1910-42-5", "paraquat"],
    ["fluroxypyr-meptyl", "fluroxypyr"],
    ["triclopyr BEE", "triclopyr-butotyl"],
    ["chlormequat", "chlormequat-chloride"],
    ["maldison", "malathion"],
  ])("%s", (text, id) => {
    const found = findActive(trade, text);
    expect(found.ok && found.value.id).toBe(id);
  });

  it("no name stands for two records", () => {
    const seen = new Map<string, string>();
    const clash: string[] = [];
    const note = (name: string, id: string): void => {
      const key = name.toLowerCase().replace(/[^a-z0-9]/g, "");
      if ((seen.get(key) ?? id) !== id) clash.push(`${name}: ${seen.get(key) ?? ""} and ${id}`);
      seen.set(key, id);
    };
    for (const c of trade.conditioners) for (const n of [c.name, c.id, ...c.synonyms]) note(n, c.id);
    for (const f of trade.feeds) for (const n of [f.name, f.id, ...f.synonyms]) note(n, f.id);
    for (const a of trade.actives) for (const n of [a.name, a.id, ...a.synonyms]) note(n, a.id);
    expect(clash).toEqual([]);
  });
});
