import { nearestName } from "../../units/index.ts";
import type { ActiveForm, ActiveRecord } from "../data-types.ts";
import { findActive, findActiveForm, findConditioner } from "../find.ts";
import type { ReagentForm, ReagentRecord } from "./flask-data.ts";
import type { FlaskContext, Substance } from "./types.ts";

/** A substance found by what a person wrote, or the likeliest meant. */
export type FoundSubstance =
  | { readonly ok: true; readonly value: Substance }
  | { readonly ok: false; readonly unknown: "substance" | "form"; readonly suggestions: readonly string[] };

/** Lower case letters and digits only; "sulph" and "sulf" are one, and so are "·" and nothing. */
function folded(text: string): string {
  return text
    .toLowerCase()
    .replace(/ph(?=at|ur|id|it|on|os)/g, "f")
    .replace(/[^a-z0-9]/g, "");
}

/**
 * Finds what is to be added: a bench reagent, a conditioner or an active, in this order.
 *
 * @param form its salt or the form sold, as written; null for the first one of the data
 */
export function findSubstance(context: FlaskContext, text: string, form: string | null): FoundSubstance {
  const wanted = folded(text);
  const reagent = context.flasks.reagents.find((one) =>
    [one.name, one.id, one.formula, ...one.synonyms].some((name) => folded(name) === wanted),
  );
  if (reagent !== undefined) return ofReagent(reagent, form);
  const conditioner = findConditioner(context.trade, form === null ? text : `${text} ${form}`);
  if (conditioner.ok) {
    const { record, formId } = conditioner.value;
    const sold = record.forms.find((one) => one.id === formId);
    return {
      ok: true,
      value: {
        id: record.id,
        name: record.name,
        kind: "conditioner",
        released: record.released,
        molarMass_gPerMol: record.molarMass_gPerMol,
        assay: (sold?.assay_percent ?? 100) / 100,
        density_gPerMl: sold?.density_gPerMl ?? null,
        countedAs: sold === undefined || record.forms.length < 2 ? null : sold.name,
      },
    };
  }
  const active = findActive(context.trade, text);
  if (active.ok) return ofActive(context, active.value, form);
  const reagentNames = context.flasks.reagents.flatMap((one) => [one.name, ...one.synonyms]);
  const near = nearestName(text, reagentNames);
  const suggestions = [...(near === null ? [] : [near]), ...conditioner.suggestions, ...active.suggestions];
  return { ok: false, unknown: "substance", suggestions: [...new Set(suggestions)].slice(0, 3) };
}

function ofReagent(record: ReagentRecord, form: string | null): FoundSubstance {
  const sold = form === null ? record.forms[0] : reagentForm(record, form);
  if (sold === undefined) {
    return { ok: false, unknown: "form", suggestions: record.forms.map((one) => one.name) };
  }
  return {
    ok: true,
    value: {
      id: record.id,
      name: record.name,
      kind: "reagent",
      released: record.released,
      molarMass_gPerMol: record.molarMass_gPerMol,
      assay: sold.assay_percent / 100,
      density_gPerMl: sold.density_gPerMl,
      countedAs: record.forms.length > 1 ? sold.name : null,
    },
  };
}

function reagentForm(record: ReagentRecord, text: string): ReagentForm | undefined {
  const wanted = folded(text);
  return record.forms.find((one) => folded(one.name) === wanted || folded(one.id) === wanted);
}

/** An active is counted as acid equivalent in a strength, and as the salt when it is weighed as it is. */
function ofActive(context: FlaskContext, record: ActiveRecord, form: string | null): FoundSubstance {
  const found = form === null ? null : findActiveForm(record, form);
  if (found !== null && !found.ok) return { ok: false, unknown: "form", suggestions: found.suggestions };
  const salt: ActiveForm | null = found?.value ?? null;
  const ligand =
    record.ligand === null || salt?.dissociates === false
      ? undefined
      : context.thermo.ligands.find((one) => one.id === record.ligand);
  return {
    ok: true,
    value: {
      id: record.id,
      name: salt === null ? record.name : `${record.name}, ${salt.name}`,
      kind: "active",
      released: {
        ...(ligand === undefined ? {} : { [ligand.component]: 1 }),
        ...(salt?.dissociates === true ? salt.counterIons : {}),
      },
      molarMass_gPerMol: record.molarMass_gPerMol,
      assay: salt === null ? 1 : salt.acidEquivalent,
      density_gPerMl: null,
      countedAs: record.basis,
    },
  };
}

/** Names of everything that can be added, for suggestions and lists. */
export function substanceNames(context: FlaskContext): readonly string[] {
  return [
    ...context.flasks.reagents.map((one) => one.name),
    ...context.trade.conditioners.map((one) => one.name),
    ...context.trade.actives.map((one) => one.name),
  ];
}
