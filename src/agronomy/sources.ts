import citations from "../../data/sources.json" with { type: "json" };
import { builtInPitzer, figuresUsed } from "../chem/index.ts";
import type { SystemDefinition, ThermoProvenance } from "../chem/index.ts";
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

/** A figure's source, as records carry it. */
type Cited = Pick<ThermoProvenance, "source" | "fromMemory">;

/** Works an answer relied on, and which of them for a figure that was not seen in a public document. */
class Works {
  private readonly remembered = new Map<string, boolean>();

  add(key: string, fromMemory = false): void {
    this.remembered.set(key, fromMemory || (this.remembered.get(key) ?? false));
  }

  of({ source, fromMemory }: Cited): void {
    this.add(source, fromMemory);
  }

  all(): readonly SourceUsed[] {
    return [...this.remembered]
      .sort(([one], [other]) => (one < other ? -1 : 1))
      .map(([key, fromMemory]) => {
        const known = sourceOf(key);
        return { ...known, fromMemory: known.fromMemory || fromMemory };
      });
  }
}

/**
 * Exactly the sources a plan relied on: of each programme the constants of its systems, assumptions, rules, doses,
 * cautions, and how well what it was drawn from is known. A work that a figure of the plan is cited after from memory
 * is said to be so.
 */
export function sourcesOfPlan(
  finished: readonly FinishedProgramme[],
  trade: TradeData,
): readonly SourceUsed[] {
  const works = new Works();
  const systems = new Map<string, readonly Cited[]>();
  for (const one of finished) {
    const { setting } = one.draft;
    for (const assumption of setting.water.assumptions) works.add(assumption.source);
    for (const { active, form } of setting.mix) {
      works.of(active);
      if (form !== null) works.of(form);
    }
    for (const { record } of setting.feeds) works.of(record);
    addProgramme(one.programme, works);
    for (const part of one.programme.parts) {
      const own = setting.job.conditioners?.find((c) => c.own?.record?.id === part.conditioner)?.own;
      const record = own?.record ?? trade.conditioners.find((c) => c.id === part.conditioner);
      if (record !== undefined) works.of(record);
    }
    for (const cited of systemFigures(one.draft, systems)) works.of(cited);
    for (const key of drawnSources(one)) works.add(key);
  }
  return works.all();
}

/** Where the constants and interaction parameters of a tank and its drop come from. @param known by components, for others like it */
function systemFigures(
  { tank, setting: { chemistry } }: FinishedProgramme["draft"],
  known: Map<string, readonly Cited[]>,
): readonly Cited[] {
  const definitions = chemistry.systems(tank);
  const components = definitions.map((definition) => definition.components.map(({ name }) => name).join());
  const at = components.join("|");
  let found = known.get(at);
  if (found === undefined) {
    found = definitions.flatMap((definition) => [
      ...figuresUsed(chemistry.thermo, definition),
      ...interactionFigures(definition),
    ]);
    known.set(at, found);
  }
  return found;
}

/** Where the interaction parameters between the ions of a system come from, and the constants that belong to them. */
function interactionFigures({ species, solids }: SystemDefinition): readonly Cited[] {
  const present = new Set([...species, ...solids].map(({ name }) => name));
  const { binaries, mixing, solidConstants } = builtInPitzer();
  const published = (source: string): Cited => ({ source, fromMemory: false });
  return [
    ...binaries
      .filter(({ cation, anion }) => present.has(cation) && present.has(anion))
      .flatMap((one) => [one, ...(one.temperature === null ? [] : [published(one.temperature.source)])]),
    ...mixing.filter((one) => one.species.every((name) => present.has(name))),
    ...solidConstants
      .filter(({ solid }) => present.has(solid))
      .flatMap((one) => [one, published(one.analytic.source)]),
  ];
}

/** Sources of what a programme was drawn from: how well its readings are known, and what the model leaves open. */
function drawnSources({ draws, draft, programme }: FinishedProgramme): readonly string[] {
  const { drawn } = draft.setting;
  if (draws === null || drawn === null) return [];
  const timed = programme.actives.some(({ byClock }) => byClock.halfLife_h !== null);
  return [...drawn.draws.readingSources, ...draws.sources, ...(timed ? [standardSource("rateFactor")] : [])];
}

function addProgramme(programme: Programme, keys: Works): void {
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
