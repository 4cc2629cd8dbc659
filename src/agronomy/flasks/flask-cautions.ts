import type { Caution } from "../types.ts";
import type { Demo, FlaskContext } from "./types.ts";

/** What any herbicide in a demonstration is called in the cautions. */
const HERBICIDE = "herbicide";

/**
 * Cautions of a demonstration, in the order to read them: the label and the law, what is on the table, the bench.
 * Those about spray tanks are left out.
 */
export function flaskCautions(demo: Demo, { trade, flasks }: FlaskContext): readonly Caution[] {
  const used = new Map<string, string>();
  for (const { steps } of demo.flasks) {
    for (const step of steps) {
      if (step.kind !== "add") continue;
      used.set(step.substance.id, step.substance.kind === "active" ? HERBICIDE : step.substance.name);
      if (step.medium !== null) used.set(step.medium.substance.id, step.medium.substance.name);
    }
  }
  const names = new Set([...used.values()].map((name) => name.toLowerCase()));
  const found: Caution[] = [];
  const add = (id: string, text: string, source: string, about: readonly string[]): void => {
    if (!found.some((one) => one.text === text)) found.push({ id, text, source, about });
  };
  const ofTrade = (scope: string): void => {
    for (const record of trade.cautions) {
      if (record.scope !== scope) continue;
      const about = record.reagents.filter((name) => names.has(name.toLowerCase()));
      if (scope === "reagent" && about.length === 0) continue;
      add(record.id, record.text, record.source, about);
    }
  };
  for (const record of trade.cautions) {
    if (record.id === "label-first") add(record.id, record.text, record.source, []);
  }
  ofTrade("reagent");
  for (const record of flasks.reagents) {
    if (!used.has(record.id)) continue;
    for (const [i, one] of record.cautions.entries())
      add(`${record.id}-${i + 1}`, one.text, one.source, [record.name]);
  }
  for (const record of trade.conditioners) {
    if (!used.has(record.id)) continue;
    for (const [i, one] of record.cautions.entries())
      add(`${record.id}-${i + 1}`, one.text, one.source, [record.name]);
  }
  ofTrade("demonstration");
  return found;
}
