import type { ConditionerForm, ConditionerRecord, Provenance } from "./data-types.ts";

/** A conditioner described by its label; `record` is null when the label does not disclose enough to compute. */
export interface OwnProduct {
  readonly name: string;
  readonly record: ConditionerRecord | null;
}

/** One chemistry a label names with its amount. */
export interface Ingredient {
  readonly record: ConditionerRecord;
  /** Pure substance [g per kg of product]. */
  readonly content_gPerKg: number;
}

/** What a label says of a conditioner that is not in the data. */
export interface ProductLabel {
  readonly name: string;
  readonly ingredients: readonly Ingredient[];
  /** g/mL of a liquid; null for a product that is weighed. */
  readonly density_gPerMl: number | null;
  /** Label limits of the dose [g of product per L of spray]; null where the label has none. */
  readonly leastDose_gPerL: number | null;
  readonly mostDose_gPerL: number | null;
  /** What the label leaves open, in words; null when it discloses all that matters. */
  readonly undisclosed: string | null;
}

/** Source of what stands on the label of a product. */
export const LABEL_SOURCE = "product-label";

const LABEL: Provenance = { source: LABEL_SOURCE, locator: null, fromMemory: false };
const G_PER_KG = 1000;

/** Id of an own product in a plan; no chemistry of the data starts like it. */
export function ownProductId(name: string): string {
  const slug = name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "");
  return `product-${slug}`;
}

/**
 * The record by which a product of known composition takes part like any chemistry of the data.
 *
 * Its "substance" is the product itself and its "mole" one kilogram of it, so that what is released per mole is mol per
 * kg of product. What its chemistries do, their cautions and notes come with them; where the label gives no most dose,
 * the search stops where the first of them reaches its own limit.
 *
 * @param label with at least one ingredient
 */
export function recordOfProduct(label: ProductLabel): ConditionerRecord {
  const { name, ingredients } = label;
  const records = ingredients.map(({ record }) => record);
  const form: ConditionerForm = {
    id: ownProductId(name),
    name,
    synonyms: [],
    assay_percent: 100,
    density_gPerMl: label.density_gPerMl,
    ...LABEL,
  };
  return {
    id: form.id,
    name,
    synonyms: [],
    cas: null,
    formula: "",
    molarMass_gPerMol: G_PER_KG,
    forms: [form],
    madeOf: ingredients.map(({ record, content_gPerKg }) => ({
      chemistry: record.id,
      massShare: content_gPerKg / G_PER_KG,
    })),
    released: releasedPerKg(ingredients),
    modes: distinct(records.flatMap((record) => record.modes)),
    ligands: distinct(records.flatMap((record) => record.ligands)),
    usualDose: usualDose(label),
    searchLimit: searchLimit(label),
    solubility: null,
    offered: "when listed",
    environment: null,
    mixingGroup: "conditioner",
    cautions: distinctTexts(records.flatMap((record) => record.cautions)),
    notes: notesOf(label),
    ...LABEL,
  };
}

/** Components a kilogram of product releases [mol/kg]. */
function releasedPerKg(ingredients: readonly Ingredient[]): Readonly<Record<string, number>> {
  const released: Record<string, number> = {};
  for (const { record, content_gPerKg } of ingredients) {
    for (const [component, count] of Object.entries(record.released))
      released[component] = (released[component] ?? 0) + (count * content_gPerKg) / record.molarMass_gPerMol;
  }
  return released;
}

function usualDose({ leastDose_gPerL, mostDose_gPerL }: ProductLabel): ConditionerRecord["usualDose"] {
  if (leastDose_gPerL === null && mostDose_gPerL === null) return null;
  return {
    low_gPerL: leastDose_gPerL,
    high_gPerL: mostDose_gPerL,
    note: "Dose range of the label.",
    ...LABEL,
  };
}

function searchLimit({ mostDose_gPerL, ingredients }: ProductLabel): ConditionerRecord["searchLimit"] {
  if (mostDose_gPerL !== null)
    return { value_gPerL: mostDose_gPerL, why: "Most dose of the label.", ...LABEL };
  let least: ConditionerRecord["searchLimit"] | null = null;
  for (const { record, content_gPerKg } of ingredients) {
    const value_gPerL = (record.searchLimit.value_gPerL * G_PER_KG) / content_gPerKg;
    if (least === null || value_gPerL < least.value_gPerL) {
      const why = `The label gives no most dose: here ${record.name} reaches its own limit.`;
      least = { ...record.searchLimit, value_gPerL, why };
    }
  }
  return least ?? { value_gPerL: 0, why: "Nothing disclosed.", ...LABEL };
}

/** What is known of each chemistry, under its name, and what the label leaves open. */
function notesOf({ ingredients, undisclosed }: ProductLabel): ConditionerRecord["notes"] {
  const open: ConditionerRecord["notes"] =
    undisclosed === null
      ? []
      : [
          {
            text: `The label leaves open: ${undisclosed}. Only what it gives an amount for is counted.`,
            evidence: "computed",
            ...LABEL,
          },
        ];
  const known = ingredients.flatMap(({ record }) => {
    const left = record.environment;
    const environment = left === null ? [] : [{ ...left, evidence: "common practice" as const }];
    return [...record.notes, ...environment].map((note) => ({
      ...note,
      text: `${record.name}: ${note.text}`,
    }));
  });
  return [...open, ...known];
}

function distinct(values: readonly string[]): readonly string[] {
  return [...new Set(values)];
}

function distinctTexts<T extends { readonly text: string }>(items: readonly T[]): readonly T[] {
  return [...new Map(items.map((item) => [item.text, item])).values()];
}
