import citations from "../../data/sources.json" with { type: "json" };
import { builtInPitzer, sourcesUsed } from "../chem/index.ts";
import type { SystemDefinition } from "../chem/index.ts";
import { standardSource } from "./bands/model-uncertainty.ts";
import type { FinishedProgramme } from "./finish-programme.ts";
import type { TradeData } from "./trade-data.ts";
import type { Programme, SourceUsed } from "./types.ts";

const CITATIONS: Readonly<Record<string, { readonly citation: string; readonly kind: string }>> = citations;

/** Citation behind a key; the key itself where none is carried, so that nothing is lost. */
export function sourceOf(key: string): SourceUsed {
  const entry = CITATIONS[key];
  return { key, citation: entry?.citation ?? key, fromMemory: entry?.kind === "from memory" };
}

/**
 * Exactly the sources a plan relied on: of each programme the constants of its systems, assumptions, rules, doses,
 * cautions, and how well what it was drawn from is known.
 */
export function sourcesOfPlan(
  finished: readonly FinishedProgramme[],
  trade: TradeData,
): readonly SourceUsed[] {
  const keys = new Set<string>();
  const systems = new Map<string, readonly string[]>();
  for (const one of finished) {
    const { setting } = one.draft;
    for (const assumption of setting.water.assumptions) keys.add(assumption.source);
    for (const { active, form } of setting.mix) {
      keys.add(active.source);
      if (form !== null) keys.add(form.source);
    }
    for (const { record } of setting.feeds) keys.add(record.source);
    addProgramme(one.programme, keys);
    for (const part of one.programme.parts) {
      const own = setting.job.conditioners?.find((c) => c.own?.record?.id === part.conditioner)?.own;
      const record = own?.record ?? trade.conditioners.find((c) => c.id === part.conditioner);
      if (record !== undefined) keys.add(record.source);
    }
    for (const key of systemSources(one.draft, systems)) keys.add(key);
    for (const key of drawnSources(one)) keys.add(key);
  }
  return [...keys].sort().map(sourceOf);
}

/** Sources of the constants and interaction parameters of a tank and its drop. @param known by components, for others like it */
function systemSources(
  { tank, setting: { chemistry } }: FinishedProgramme["draft"],
  known: Map<string, readonly string[]>,
): readonly string[] {
  const definitions = chemistry.systems(tank);
  const components = definitions.map((definition) => definition.components.map(({ name }) => name).join());
  const at = components.join("|");
  let found = known.get(at);
  if (found === undefined) {
    found = definitions.flatMap((definition) => [
      ...sourcesUsed(chemistry.thermo, definition),
      ...interactionSources(definition),
    ]);
    known.set(at, found);
  }
  return found;
}

/** Sources of the interaction parameters between the ions of a system. */
function interactionSources({ species }: SystemDefinition): readonly string[] {
  const present = new Set(species.map(({ name }) => name));
  const { binaries, mixing } = builtInPitzer();
  return [
    ...binaries.filter(({ cation, anion }) => present.has(cation) && present.has(anion)),
    ...mixing.filter((one) => one.species.every((name) => present.has(name))),
  ].flatMap((one) => [
    one.source,
    ...("temperature" in one && one.temperature !== null ? [one.temperature.source] : []),
  ]);
}

/** Sources of what a programme was drawn from: how well its readings are known, and what the model leaves open. */
function drawnSources({ draws, draft, programme }: FinishedProgramme): readonly string[] {
  const { drawn } = draft.setting;
  if (draws === null || drawn === null) return [];
  const timed = programme.actives.some(({ byClock }) => byClock.halfLife_h !== null);
  return [...drawn.draws.readingSources, ...draws.sources, ...(timed ? [standardSource("rateFactor")] : [])];
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
