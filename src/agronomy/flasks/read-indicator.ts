import type { ComponentRecord } from "../../chem/index.ts";
import { describe, isMissing, openFields, textOf } from "../job-fields.ts";
import type { Fields, IssueList } from "../job-fields.ts";
import type { IndicatorRecord, OpticalFigure, OpticsRecord, ReagentRecord } from "./flask-data.ts";
import { IndicatorBuilder, METALS, TYPED } from "./indicator-builder.ts";

const KEYS = ["name", "molar mass", "charge", "brings", "protonation", "ionic strength", "complexes", "free"];
const COMPLEX_KEYS = ["metal", "ligands", "protons", "log K", "uncertainty", "band"];
const BAND_KEYS = ["peak", "absorptivity", "width"];
const FREE_KEYS = ["protons", "band"];

/** One standard uncertainty of a typed log K when none is given; our judgement. */
const USUAL_LOGK_UNCERTAINTY = 0.3;
/** Relative uncertainty of typed optical figures; our judgement. */
const OPTICAL_SHARE = 0.1;

/** An indicator typed in by hand, and the bottle it comes in. */
export interface OwnIndicator {
  readonly indicator: IndicatorRecord;
  readonly reagent: ReagentRecord;
}

interface Range {
  readonly low: number;
  readonly high: number;
}

function numberOf(
  fields: Fields,
  key: string,
  { low, high }: Range,
  issues: IssueList,
  usual?: number,
): number | null {
  const value = fields.get(key);
  if (value === undefined && usual !== undefined) return usual;
  if (typeof value === "number" && value >= low && value <= high) return value;
  issues.add("number-unusable", fields.at(key), {
    received: describe(value),
    expected: `a number from ${low} to ${high}`,
  });
  return null;
}

/** Reads an indicator typed in by hand; null when it cannot be used (then with issues). */
export function readIndicator(
  entry: unknown,
  path: string,
  number: number,
  issues: IssueList,
): OwnIndicator | null {
  const fields = openFields(entry, path, KEYS, issues);
  if (fields === null || isMissing(fields, "name", "the name of the indicator", issues)) return null;
  const name = textOf(fields, "name", issues);
  const mass = numberOf(fields, "molar mass", { low: 10, high: 5000 }, issues);
  const charge = numberOf(fields, "charge", { low: -10, high: 0 }, issues);
  const strength = numberOf(fields, "ionic strength", { low: 0, high: 3 }, issues, 0.1);
  if (name === null || mass === null || charge === null || strength === null) return null;
  const component = `Own${number}${charge === 0 ? "" : charge === -1 ? "-" : String(charge)}`;
  const builder = new IndicatorBuilder(component, charge, strength);
  readProtonation(fields, builder, issues);
  readComplexes(fields, builder, issues);
  readFree(fields, builder, issues);
  const brings = readBrings(fields, issues);
  const id = `own-${number}`;
  const record: ComponentRecord = {
    name: component,
    kind: "ligand",
    charge,
    molarMass_gPerMol: mass,
    ionSize: null,
    note: null,
    ...TYPED,
  };
  return {
    indicator: {
      id,
      name,
      metals: builder.metals,
      component: record,
      species: builder.species.map((one) => ({ ...one, group: id })),
      pH: { low: 0, high: 14, ...TYPED },
      tied: [],
      optics: builder.optics,
      use: "",
      notes: [],
    },
    reagent: {
      id,
      name,
      synonyms: [],
      formula: name,
      molarMass_gPerMol: mass,
      released: { [component]: 1, ...brings },
      indicator: id,
      forms: [{ id: `${id}-solid`, name: "solid", assay_percent: 100, density_gPerMl: null, ...TYPED }],
      cautions: [],
      note: null,
      ...TYPED,
    },
  };
}

function readProtonation(fields: Fields, builder: IndicatorBuilder, issues: IssueList): void {
  const list = fields.get("protonation");
  if (list === undefined) return;
  const range = {
    received: describe(list),
    expected: "a list of log K, the first proton first, each −2 to 20",
  };
  if (!Array.isArray(list) || list.length > 8) {
    issues.add("list-expected", fields.at("protonation"), range);
    return;
  }
  for (const [index, value] of (list as readonly unknown[]).entries()) {
    if (typeof value === "number" && value >= -2 && value <= 20) builder.addProton(value);
    else
      issues.add("number-unusable", `${fields.at("protonation")}[${index}]`, {
        received: describe(value),
        expected: "a log K from −2 to 20",
      });
  }
}

function readComplexes(fields: Fields, builder: IndicatorBuilder, issues: IssueList): void {
  if (isMissing(fields, "complexes", "a list with at least one complex", issues)) return;
  const list = fields.get("complexes");
  if (!Array.isArray(list) || list.length === 0) {
    issues.add("list-expected", fields.at("complexes"), {
      received: describe(list),
      expected: "a list with at least one complex",
    });
    return;
  }
  const seen = new Set<string>();
  for (const [index, entry] of (list as readonly unknown[]).entries()) {
    const path = `${fields.at("complexes")}[${index}]`;
    const one = openFields(entry, path, COMPLEX_KEYS, issues);
    if (one === null) continue;
    const metal = textOf(one, "metal", issues);
    const ligands = numberOf(one, "ligands", { low: 1, high: 3 }, issues, 1);
    const protons = numberOf(one, "protons", { low: -3, high: 6 }, issues, 0);
    const logK = numberOf(one, "log K", { low: -20, high: 60 }, issues);
    const uncertainty = numberOf(one, "uncertainty", { low: 0, high: 3 }, issues, USUAL_LOGK_UNCERTAINTY);
    const band = readBand(one, issues);
    if (metal === null || !Object.hasOwn(METALS, metal)) {
      const parts = { received: describe(one.get("metal")), expected: Object.keys(METALS).join(", ") };
      issues.add("metal-unknown", one.at("metal"), parts);
      continue;
    }
    if (ligands === null || protons === null || logK === null || uncertainty === null) continue;
    const key = `${metal} ${ligands} ${protons}`;
    if (seen.has(key)) issues.add("name-repeated", path, { received: key, expected: "each complex once" });
    else builder.addComplex(metal, { ligands, protons }, logK, uncertainty, band);
    seen.add(key);
  }
}

function readFree(fields: Fields, builder: IndicatorBuilder, issues: IssueList): void {
  if (fields.get("free") === undefined) return;
  const free = openFields(fields.get("free"), fields.at("free"), FREE_KEYS, issues);
  if (free === null) return;
  const protons = numberOf(free, "protons", { low: 0, high: 8 }, issues, 0);
  const band = readBand(free, issues);
  if (protons === null || band === null || builder.colourFree(protons, band)) return;
  issues.add("number-unusable", free.at("protons"), {
    received: String(protons),
    expected: "at most as many protons as the list of protonation has",
  });
}

function readBand(fields: Fields, issues: IssueList): OpticsRecord["bands"] | null {
  if (fields.get("band") === undefined) return null;
  const band = openFields(fields.get("band"), fields.at("band"), BAND_KEYS, issues);
  if (band === null) return null;
  const peak = numberOf(band, "peak", { low: 200, high: 1000 }, issues);
  const absorptivity = numberOf(band, "absorptivity", { low: 0, high: 300_000 }, issues);
  const width = numberOf(band, "width", { low: 5, high: 400 }, issues);
  if (peak === null || absorptivity === null || width === null) return null;
  const typed = (value: number, uncertainty: number): OpticalFigure => ({
    value,
    uncertainty,
    estimate: false,
    ...TYPED,
  });
  return [
    {
      peak_nm: typed(peak, 5),
      absorptivity_LPerMolCm: typed(absorptivity, OPTICAL_SHARE * absorptivity),
      width_nm: typed(width, OPTICAL_SHARE * width),
    },
  ];
}

const BROUGHT = ["Na+", "K+", "NH4+", "Cl-"];

function readBrings(fields: Fields, issues: IssueList): Readonly<Record<string, number>> {
  if (fields.get("brings") === undefined) return {};
  const brings = openFields(fields.get("brings"), fields.at("brings"), BROUGHT, issues);
  if (brings === null) return {};
  const found: Record<string, number> = {};
  for (const ion of BROUGHT) {
    if (brings.get(ion) === undefined) continue;
    const count = numberOf(brings, ion, { low: 0, high: 10 }, issues);
    if (count !== null) found[ion] = count;
  }
  return found;
}
