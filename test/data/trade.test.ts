import { readFileSync } from "node:fs";
import Ajv2020 from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { builtInTrade, findActive, findConditioner } from "../../src/agronomy/index.ts";
import { hydrolysisRate_perH } from "../../src/chem/index.ts";
import { ATOMIC_WEIGHTS } from "../../src/units/index.ts";
import { atomsIn, massOf, minus, plus } from "./formula.ts";
import type { Atoms } from "./formula.ts";

const data = new URL("../../data/", import.meta.url);
const read = (name: string): unknown => JSON.parse(readFileSync(new URL(name, data), "utf8"));
const FILES = [
  "actives",
  "conditioners",
  "rules",
  "formulations",
  "cautions",
  "dose-rules",
  "other-forms",
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

/** Atoms of the components that salts and conditioners release. */
const COMPONENTS: Readonly<Record<string, string>> = {
  "IPA+": "C3H10N",
  "K+": "K",
  "NH4+": "NH4",
  "Na+": "Na",
  "DMA+": "C2H8N",
  "MEA+": "C2H8NO",
  "DEA+": "C4H12NO2",
  "DGA+": "C4H12NO2",
  "Chol+": "C5H14NO",
  "SO4-2": "SO4",
  "NO3-": "NO3",
  "PO4-3": "PO4",
  "Cit-3": "C6H5O7",
  "Edta-4": "C10H12N2O8",
  "Hedp-4": "C2H4O7P2",
  "P3O10-5": "P3O10",
  "P2O7-4": "P2O7",
  "Glda-4": "C9H9NO8",
  "Mgda-3": "C7H8NO6",
  "Nta-3": "C6H6NO6",
  "Dtpa-5": "C14H18N3O10",
  "Gluc-": "C6H11O7",
  "Acet-": "C2H3O2",
};
const chargeOf = (component: string): number => {
  const [, sign, size] = /([+-])(\d*)$/.exec(component) ?? [];
  return (sign === "-" ? -1 : 1) * Number(size === "" || size === undefined ? 1 : size);
};
const released = (counts: Readonly<Record<string, number>>): Atoms =>
  Object.entries(counts).reduce<Atoms>((sum, [component, n]) => {
    const formula = COMPONENTS[component];
    if (formula === undefined) throw new Error(`no atoms for ${component}`);
    return plus(sum, atomsIn(formula), n);
  }, {});
const onlyHydrogen = (atoms: Atoms): number => {
  const { H = 0, ...rest } = atoms;
  expect(Object.values(rest).filter((n) => n !== 0)).toEqual([]);
  return H;
};

describe("actives", () => {
  it.each(trade.actives.map((a) => [a.id, a] as const))(
    "%s: molar masses follow from the formulas",
    (_id, active) => {
      expect(active.molarMass_gPerMol).toBeCloseTo(massOf(active.formula), 2);
      for (const form of active.forms) {
        expect(form.molarMass_gPerMol, form.id).toBeCloseTo(massOf(form.formula), 2);
        expect(form.acidEquivalent, form.id).toBeCloseTo(
          active.molarMass_gPerMol / form.molarMass_gPerMol,
          3,
        );
      }
    },
  );

  it.each(trade.actives.map((a) => [a.id, a] as const))(
    "%s: counter-ions make up the salt",
    (_id, active) => {
      for (const form of active.forms) {
        if (!form.dissociates) {
          expect(form.counterIons, form.id).toEqual({});
          continue;
        }
        const cations = Object.values(form.counterIons).reduce((a, b) => a + b, 0);
        const rest = minus(minus(atomsIn(form.formula), atomsIn(active.formula)), released(form.counterIons));
        // Each cation stands where a proton of the acid stood.
        expect(onlyHydrogen(rest) + cations, form.id).toBe(0);
      }
    },
  );

  it("ids of ligands and counter-ions exist in the chemical data", () => {
    const ligands = (read("ligands.json") as { ligands: { id: string }[] }).ligands.map((l) => l.id);
    const bases = (read("counter-ions.json") as { counterIons: { component: { name: string } }[] })
      .counterIons;
    const simple = (read("components.json") as { components: { name: string }[] }).components;
    const components = [...bases.map((c) => c.component.name), ...simple.map((c) => c.name)];
    for (const active of trade.actives) {
      if (active.ligand !== null) expect(ligands, active.id).toContain(active.ligand);
      if (active.binding !== "none") expect(active.ligand, active.id).not.toBeNull();
      for (const form of active.forms) {
        for (const ion of Object.keys(form.counterIons)) expect(components, form.id).toContain(ion);
      }
    }
  });

  it("their formulation codes exist and mix with water", () => {
    for (const active of trade.actives) {
      for (const code of active.formulations) {
        const type = trade.formulations.types.find((t) => t.code === code);
        expect(type, `${active.id} ${code}`).toBeDefined();
        expect(type?.mixingGroup, `${active.id} ${code}`).not.toBe("not-for-water");
      }
    }
  });

  it("half-lives are at one pH each, so that reading between them is unambiguous", () => {
    for (const active of trade.actives) {
      const pHs = active.halfLives.map((h) => h.pH);
      expect(new Set(pHs).size, active.id).toBe(pHs.length);
    }
  });

  it.each(trade.actives.filter((a) => a.rateLaw !== null).map((a) => [a.id, a] as const))(
    "%s: the rate law is true to the half-lives it was fitted to",
    (_id, active) => {
      const law = active.rateLaw;
      if (law === null) throw new Error("no law");
      for (const point of active.halfLives.filter((h) => h.halfLife_h !== null)) {
        const k = hydrolysisRate_perH(
          {
            kA: law.kA_LPerMolH,
            kN: law.kN_perH,
            kB: law.kB_LPerMolH,
            pKaCap: law.pKaCap,
            temperature_C: law.temperature_C,
          },
          point.pH,
          point.temperature_C,
          active.activationEnergy_kJPerMol.value,
        );
        const ratio = Math.LN2 / k / (point.halfLife_h ?? Number.NaN);
        // The worst fit, 1.26 times, is said in the law's locator.
        expect(Math.abs(Math.log(ratio)), `pH ${point.pH}`).toBeLessThan(Math.log(1.27));
      }
    },
  );
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
    for (const a of trade.actives) for (const n of [a.name, a.id, ...a.synonyms]) note(n, a.id);
    expect(clash).toEqual([]);
  });
});
