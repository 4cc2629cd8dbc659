import citations from "../../data/sources.json" with { type: "json" };
import { builtInPitzer, sourcesUsed, systemFor } from "../chem/index.ts";
import { readingUncertainty } from "../water/index.ts";
import { MODEL_SOURCES } from "./bands/model-uncertainty.ts";
import { solidsConsidered } from "./chemistry.ts";
import type { Setting } from "./programmes.ts";
import type { TradeData } from "./trade-data.ts";
import type { Plan, Programme, SourceUsed } from "./types.ts";

const CITATIONS: Readonly<Record<string, { readonly citation: string; readonly kind: string }>> = citations;

/** Citation behind a key; the key itself where none is carried, so that nothing is lost. */
export function sourceOf(key: string): SourceUsed {
  const entry = CITATIONS[key];
  return { key, citation: entry?.citation ?? key, fromMemory: entry?.kind === "from memory" };
}

/**
 * Exactly the sources a plan relied on: constants of its systems, assumptions, rules, doses and cautions.
 *
 * @param planned the water and the products as planned
 * @param others what the ways out used in their place
 */
export function sourcesOfPlan(
  plan: Pick<Plan, "programmes">,
  planned: Setting,
  others: readonly Setting[],
  trade: TradeData,
): readonly SourceUsed[] {
  const settings = [planned, ...others];
  const keys = new Set<string>();
  for (const { water } of settings) for (const assumption of water.assumptions) keys.add(assumption.source);
  for (const programme of plan.programmes) addProgramme(programme, keys);
  const { thermo } = planned.chemistry;
  const components = new Set<string>(settings.flatMap(({ water }) => Object.keys(water.totals_molPerL)));
  for (const product of new Set(settings.flatMap(({ mix }) => mix))) {
    keys.add(product.active.source);
    if (product.form !== null) keys.add(product.form.source);
    const ligand = thermo.ligands.find((l) => l.id === product.active.ligand);
    if (ligand !== undefined && product.form?.dissociates !== false) components.add(ligand.component);
    for (const ion of Object.keys(product.form?.counterIons ?? {})) components.add(ion);
  }
  for (const { record } of planned.feeds) {
    keys.add(record.source);
    for (const component of Object.keys(record.released)) components.add(component);
  }
  for (const programme of plan.programmes) {
    for (const part of programme.parts) {
      const own = planned.job.conditioners?.find((c) => c.own?.record?.id === part.conditioner)?.own;
      const record = own?.record ?? trade.conditioners.find((c) => c.id === part.conditioner);
      if (record === undefined) continue;
      keys.add(record.source);
      for (const component of Object.keys(record.released)) components.add(component);
    }
  }
  const definition = systemFor(thermo, {
    components: [...components],
    temperature_C: planned.temperature_C,
    solids: solidsConsidered("open"),
    carbonate: "open",
  });
  for (const key of sourcesUsed(thermo, definition)) keys.add(key);
  for (const key of interactionSources(definition.species.map(({ name }) => name))) keys.add(key);
  if (settings.some(({ drawn }) => drawn !== null)) for (const key of rangeSources(settings)) keys.add(key);
  return [...keys].sort().map(sourceOf);
}

/** Sources of the interaction parameters between the ions of a system. */
function interactionSources(species: readonly string[]): readonly string[] {
  const present = new Set(species);
  const { binaries, mixing } = builtInPitzer();
  return [
    ...binaries.filter(({ cation, anion }) => present.has(cation) && present.has(anion)),
    ...mixing.filter((one) => one.species.every((name) => present.has(name))),
  ].flatMap((one) => [
    one.source,
    ...("temperature" in one && one.temperature !== null ? [one.temperature.source] : []),
  ]);
}

/** Sources of what is drawn: how well each reading is known, and what the model itself leaves open. */
function rangeSources(settings: readonly Setting[]): readonly string[] {
  const tests = settings.flatMap(({ job }) => [job.water, ...job.otherWaters.map(({ water }) => water)]);
  const ofReadings = tests.flatMap(({ readings, method }) =>
    readings
      .filter(({ measured }) => measured.kind === "value")
      .map((reading) => readingUncertainty(reading, method).source),
  );
  return [...ofReadings, ...MODEL_SOURCES];
}

function addProgramme(programme: Programme, keys: Set<string>): void {
  for (const reason of programme.reasons) keys.add(reason.source);
  for (const remark of programme.remarks) if (remark.source !== null) keys.add(remark.source);
  if (programme.publishedRuleDose !== null) keys.add(programme.publishedRuleDose.source);
  for (const caution of programme.filling.cautions) keys.add(caution.source);
  for (const step of programme.filling.order) keys.add(step.source);
  for (const difference of programme.filling.differences) for (const key of difference.sources) keys.add(key);
  for (const fact of programme.filling.sprayer) if (fact.source !== null) keys.add(fact.source);
  for (const active of programme.actives) {
    for (const rule of active.rules) keys.add(rule.source);
    for (const key of active.byClock.sources) keys.add(key);
    for (const key of active.onMud?.sources ?? []) keys.add(key);
  }
}
