import { restsOnMemory } from "../chem/index.ts";
import type { DryDownStep, DryToResult, Equilibrium } from "../chem/index.ts";
import { NUCLEATING_SOLIDS, NUCLEATION_SI } from "./chemistry.ts";
import type { Chemistry, LeafSolid } from "./chemistry.ts";
import type { Steps } from "./steps.ts";
import type { Tank } from "./tank.ts";
import type { DryingEnd } from "./types.ts";
import type { Computed } from "./verdict.ts";

/** A drying path that came to an end. */
export type LeafPath = Extract<DryToResult, { ok: true }>;

/** The drying paths by what the calcium salt of the active does. */
export type LeafPaths = Readonly<Record<LeafSolid, LeafPath>>;

/**
 * Dries a tank three times: without the calcium salt of the active, with it from a supersaturation threshold on, and
 * with it at equilibrium. Where the salt never becomes supersaturated enough, the paths are one and are solved once.
 *
 * @param stops factors passed on the way, ascending from 1
 * @param ends true where only the two ends matter: the middle one is then that without the salt
 */
export function* leafPaths(
  tank: Tank,
  chemistry: Chemistry,
  stops: readonly number[],
  ends = false,
): Steps<Computed<LeafPaths>> {
  const never = dried(tank, chemistry, "never", stops);
  yield;
  if (!never.ok) return never;
  const most = Math.max(-Infinity, ...never.value.steps.map(supersaturation));
  const threshold = !ends && most > NUCLEATION_SI ? dried(tank, chemistry, "at threshold", stops) : never;
  yield;
  if (!threshold.ok) return threshold;
  const equilibrium = most > 0 ? dried(tank, chemistry, "at equilibrium", stops) : never;
  yield;
  if (!equilibrium.ok) return equilibrium;
  return {
    ok: true,
    value: { never: never.value, "at threshold": threshold.value, "at equilibrium": equilibrium.value },
  };
}

function dried(
  tank: Tank,
  chemistry: Chemistry,
  solid: LeafSolid,
  stops: readonly number[],
): Computed<LeafPath> {
  const result = chemistry.dry(tank, solid, stops);
  if (result.ok) return { ok: true, value: result };
  return { ok: false, reason: result.reason, detail: `on the leaf (solid ${solid}): ${result.detail}` };
}

/** Highest saturation index of the solids that need a push before they form. */
function supersaturation({ equilibrium }: DryDownStep): number {
  const indices = NUCLEATING_SOLIDS.flatMap((name) => equilibrium.system.solidIndex.get(name) ?? []);
  return Math.max(-Infinity, ...indices.map((index) => equilibrium.saturationIndices[index] ?? -Infinity));
}

/** Where a path ended, and which of its numbers rest on more than measured parameters. */
export function dryingEnd(path: LeafPath, humidity: number): DryingEnd {
  const last = path.steps.at(-1);
  const notes = last?.equilibrium.rangeNotes ?? [];
  return {
    humidity,
    factor: last?.factor ?? 1,
    waterActivity: last?.equilibrium.waterActivity ?? null,
    ended: path.ended,
    outsideRange: [...new Set(notes.map((note) => `${note.what}: ${note.why}`))],
    estimated: (last?.equilibrium.estimates ?? [])
      .filter((note) => !restsOnMemory(note))
      .map((note) => `${note.species} as ${note.as}`),
    fromMemory: last === undefined ? [] : interactionsFromMemory(last.equilibrium),
  };
}

/** Ions whose interaction an answer takes from memory, joined by spaces: "Ca+2 NH4+". */
export function interactionsFromMemory({ estimates }: Equilibrium): readonly string[] {
  return estimates.filter(restsOnMemory).map(({ species }) => species);
}
