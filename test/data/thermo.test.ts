import { readFileSync } from "node:fs";
import Ajv2020 from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { builtInThermo, DRYING_SOLIDS, TANK_SOLIDS } from "../../src/chem/index.ts";

const data = new URL("../../data/", import.meta.url);
const read = (name: string): unknown => JSON.parse(readFileSync(new URL(name, data), "utf8"));
const FILES = [
  "components",
  "aqueous",
  "solids",
  "pitzer",
  "sit",
  "gases",
  "ligands",
  "counter-ions",
] as const;
const contents = Object.fromEntries(FILES.map((name) => [name, read(`${name}.json`)]));
const thermo = builtInThermo();

/** Every object below `value` that names a source. */
function recordsWithSource(value: unknown): Record<string, unknown>[] {
  if (typeof value !== "object" || value === null) return [];
  const below = Object.values(value).flatMap(recordsWithSource);
  return "source" in value ? [value as Record<string, unknown>, ...below] : below;
}

/** A formation as text, water left out, independent of the order of its components. */
function withoutWater(formation: Readonly<Record<string, number>>): string {
  const parts = Object.entries(formation).filter(([name]) => name !== "H2O");
  return parts
    .map(([name, n]) => `${name}:${String(n)}`)
    .sort((a, b) => a.localeCompare(b))
    .join(" ");
}

describe("thermodynamic data files", () => {
  const ajv = new Ajv2020({ allErrors: true, allowUnionTypes: true });
  ajv.addSchema(read("schemas/thermo-definitions.schema.json") as object);

  it.each(FILES)("%s.json follows its schema", (name) => {
    const validate = ajv.compile(read(`schemas/${name}.schema.json`) as object);
    validate(contents[name]);
    expect(validate.errors ?? []).toEqual([]);
  });

  it("a record without source or conditions does not pass", () => {
    const validate =
      ajv.getSchema("aqueous.schema.json") ?? ajv.compile(read("schemas/aqueous.schema.json") as object);
    const file = structuredClone(contents.aqueous) as { species: Record<string, unknown>[] };
    delete file.species[0]!.source;
    delete (file.species[1]!.logK as Record<string, unknown>).conditions;
    expect(validate(file)).toBe(false);
    expect(validate.errors?.map((e) => e.instancePath)).toEqual(["/species/0", "/species/1/logK"]);
  });

  it("says nothing of where copies of the works are kept", () => {
    const text = JSON.stringify(contents);
    expect(text.match(/.{20}(https?:|github|\.com\/|www\.|\bline \d|\/work|\/tmp).{20}/gi) ?? []).toEqual([]);
  });

  it("a figure of unknown origin is marked as from memory", () => {
    const unmarked = FILES.flatMap((name) => recordsWithSource(contents[name])).filter(
      (r) => r.source === "from-memory" && r.fromMemory !== true,
    );
    expect(unmarked).toEqual([]);
  });

  it("all files carry one version", () => {
    const versions = FILES.map((name) => (contents[name] as { version: string }).version);
    expect(new Set(versions).size).toBe(1);
  });
});

describe("thermodynamic records", () => {
  it("carries the whole set", () => {
    expect(Object.keys(thermo.components).length).toBe(26 + 64 + 11);
    expect(thermo.species.length).toBe(173 + 703 + 11);
    expect(thermo.solids.length).toBe(54 + 9 + 14 + 10);
    expect(thermo.gases.map((gas) => gas.id)).toEqual(["CO2(g)", "NH3(g)"]);
  });

  it("no name occurs twice among components, species and solids", () => {
    const names = [
      ...Object.keys(thermo.components),
      ...thermo.species.map((s) => s.id),
      ...thermo.solids.map((s) => s.id),
    ];
    expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
  });

  it("no two species have the same formation", () => {
    const keys = thermo.species.map((s) => withoutWater(s.formation));
    expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
  });

  it("every component of a formation exists", () => {
    const unknown = [...thermo.species, ...thermo.solids, ...thermo.gases].flatMap((record) =>
      Object.keys(record.formation).filter((name) => !Object.hasOwn(thermo.components, name)),
    );
    expect(unknown).toEqual([]);
  });

  it("every formation balances charge", () => {
    const charge = (formation: Readonly<Record<string, number>>): number =>
      Object.entries(formation).reduce((sum, [name, n]) => sum + n * thermo.components[name]!.charge, 0);
    expect(thermo.species.filter((s) => charge(s.formation) !== s.charge).map((s) => s.id)).toEqual([]);
    expect(
      [...thermo.solids, ...thermo.gases].filter((s) => charge(s.formation) !== 0).map((s) => s.id),
    ).toEqual([]);
  });

  it("the charge written in a name is the charge of the record", () => {
    const written = (name: string): number => {
      const match = /([+-])(\d*)$/.exec(name);
      return match === null ? 0 : (match[1] === "+" ? 1 : -1) * Number(match[2] === "" ? 1 : match[2]);
    };
    const all = [...thermo.species.map((s) => [s.id, s.charge] as const)];
    for (const component of Object.values(thermo.components)) all.push([component.name, component.charge]);
    // Urea, phenolic names and the like carry no sign and are neutral.
    expect(all.filter(([name, charge]) => written(name) !== charge)).toEqual([]);
  });

  it("the oxidation state of iron is in the name of every iron complex of a ligand", () => {
    const ligands = new Set(thermo.ligands.map((ligand) => ligand.id));
    const iron = thermo.species.filter(
      (s) => ligands.has(s.group) && ("Fe+2" in s.formation || "Fe+3" in s.formation),
    );
    expect(iron.length).toBeGreaterThan(60);
    for (const s of iron) expect(s.name).toContain("Fe+3" in s.formation ? "Fe(III)" : "Fe(II)");
  });

  it("an expression in temperature agrees with the value at 25 °C within its uncertainty or 0.05", () => {
    const T = 298.15;
    const off = [...thermo.species, ...thermo.solids, ...thermo.gases].filter((record) => {
      if (record.analytic === null) return false;
      const [a, b, c, d, e] = record.analytic as [number, number, number, number, number];
      const at25 = a + b * T + c / T + d * Math.log10(T) + e / T ** 2;
      const published = "logKsp" in record ? record.logKsp : record.logK;
      return Math.abs(at25 - published.value) > Math.max(0.05, published.uncertainty.value);
    });
    expect(off.map((record) => record.id)).toEqual([]);
  });

  it("the steps of a chain add up to the constant and to its charge change", () => {
    const chains = thermo.species.filter((s) => s.chain !== null);
    expect(chains.length).toBeGreaterThan(10);
    for (const s of chains) {
      const sum = s.chain!.reduce((total, step) => total + step.times * step.logK, 0);
      const charges = s.chain!.reduce((total, step) => total + step.times * step.deltaZ2, 0);
      expect(Math.abs(sum - s.logK.value), s.id).toBeLessThan(0.006);
      expect(charges, s.id).toBe(s.deltaZ2);
    }
  });

  it("sodium and potassium complexes of ligands are all marked as alkali pairs", () => {
    const ligands = new Set(thermo.ligands.map((ligand) => ligand.id));
    const alkali = thermo.species.filter(
      (s) => ligands.has(s.group) && ("Na+" in s.formation || "K+" in s.formation),
    );
    expect(alkali.length).toBeGreaterThan(20);
    expect(alkali.filter((s) => !s.alkaliPair).map((s) => s.id)).toEqual([]);
    expect(thermo.species.filter((s) => s.alkaliPair && !alkali.includes(s)).map((s) => s.id)).toEqual([]);
  });

  it("analogies name a ligand that exists, and are wide", () => {
    const analogies = thermo.species.filter((s) => s.analogyOf !== null);
    expect(analogies.map((s) => s.id).sort()).toEqual(["CaMcpa+", "CaMecp+", "MgD24+", "MgMcpa+", "MgMecp+"]);
    for (const s of analogies) {
      expect(thermo.ligands.some((ligand) => ligand.id === s.analogyOf)).toBe(true);
      expect(s.logK.uncertainty.value).toBeGreaterThanOrEqual(0.3);
    }
  });

  it("what is listed as missing is really missing, and no active without metal constants is passed over", () => {
    const has = (ligand: string, metal: string): boolean =>
      thermo.species.some((s) => ligand in s.formation && metal in s.formation);
    for (const { ligand, metals } of thermo.missing) {
      expect(Object.hasOwn(thermo.components, ligand), ligand).toBe(true);
      expect(
        metals.filter((metal) => has(ligand, metal)),
        ligand,
      ).toEqual([]);
    }
    const anionicActives = thermo.ligands.filter(
      (l) => l.role === "active" && thermo.components[l.component]!.charge < 0,
    );
    const silent = anionicActives.filter(
      (l) => !has(l.component, "Ca+2") && !thermo.missing.some((m) => m.ligand === l.component),
    );
    expect(silent.map((l) => l.id)).toEqual([]);
    expect(thermo.missing.some((m) => m.ligand === "P3O10-5" && m.metals.includes("Fe+3"))).toBe(true);
    expect(thermo.missing.some((m) => m.ligand === "P2O7-4" && m.metals.includes("Fe+2"))).toBe(true);
  });
});

describe("solid lists", () => {
  it("hold solids of the data; only fast ones in the tank; none that needs a threshold", () => {
    const byId = new Map(thermo.solids.map((solid) => [solid.id, solid]));
    for (const id of [...TANK_SOLIDS, ...DRYING_SOLIDS]) expect(byId.has(id), id).toBe(true);
    expect(TANK_SOLIDS.filter((id) => byId.get(id)?.kinetics !== "fast")).toEqual([]);
    expect(
      DRYING_SOLIDS.filter((id) => ["never", "nucleation"].includes(byId.get(id)?.kinetics ?? "")),
    ).toEqual([]);
    expect(DRYING_SOLIDS).toContain("gypsum");
    expect(DRYING_SOLIDS).not.toContain("calcium hydrogen glyphosate");
  });

  it("no list has two phases of one formation", () => {
    for (const list of [TANK_SOLIDS, DRYING_SOLIDS]) {
      const formations = thermo.solids
        .filter((solid) => list.includes(solid.id))
        .map((solid) => withoutWater(solid.formation));
      expect(formations.filter((f, i) => formations.indexOf(f) !== i)).toEqual([]);
    }
  });

  it("every fast solid is in the tank list", () => {
    expect(
      thermo.solids
        .filter((s) => s.kinetics === "fast" && s.group !== "soluble salts" && !TANK_SOLIDS.includes(s.id))
        .map((s) => s.id),
    ).toEqual([]);
  });
});
