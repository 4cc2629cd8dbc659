import { deltaE00 } from "../../colour/index.ts";
import type { Lab } from "../../colour/index.ts";
import { quantileOf } from "../../numerics/index.ts";
import type { DrawnState } from "./spread.ts";
import type { DarknessOrder, FlaskPair } from "./types.ts";

/** Colour difference below which two flasks are said to look the same; our judgement, a few times the least seen. */
export const SAME_BELOW = 3;
/** Colour difference from which two flasks are plainly different from the back of a room; our judgement. */
export const PLAIN_FROM = 10;

/** A flask after its last step, as it is compared. */
export interface Compared {
  readonly name: string;
  readonly lab: Lab;
  /** The same under every draw; empty where no spread was asked for. */
  readonly drawn: readonly DrawnState[];
}

/** Every two flasks side by side. */
export function pairsOf(flasks: readonly Compared[]): readonly FlaskPair[] {
  return flasks.flatMap((a, i) => flasks.slice(i + 1).map((b) => pairOf(a, b)));
}

function pairOf(a: Compared, b: Compared): FlaskPair {
  const central = deltaE00(a.lab, b.lab);
  const apart = a.drawn.map(({ lab }, i) => deltaE00(lab, b.drawn[i]!.lab)).sort((x, y) => x - y);
  const low = apart.length === 0 ? central : quantileOf(apart, 0.05);
  const high = apart.length === 0 ? central : quantileOf(apart, 0.95);
  const darker = a.drawn.filter(({ lab }, i) => lab.L < b.drawn[i]!.lab.L).length;
  return {
    a: a.name,
    b: b.name,
    deltaE00: central,
    low,
    high,
    aDarker: a.drawn.length === 0 ? (a.lab.L < b.lab.L ? 1 : 0) : darker / a.drawn.length,
    verdict: verdictOf(central, low, high),
  };
}

function verdictOf(central: number, low: number, high: number): string {
  if (high < SAME_BELOW) return "look the same";
  if (low >= PLAIN_FROM) return "plainly different";
  if (central < SAME_BELOW) return "about the same; the constants leave it open";
  if (central >= PLAIN_FROM) return "different, but not for every published constant";
  return "told apart only side by side";
}

/** The flasks from dark to light in groups that look alike, and the share of draws that agree. */
export function darknessOf(flasks: readonly Compared[]): DarknessOrder {
  const byLightness = flasks.toSorted((one, other) => one.lab.L - other.lab.L);
  const groups: Compared[][] = [];
  for (const flask of byLightness) {
    const group = groups.at(-1);
    const like = group?.every((other) => deltaE00(other.lab, flask.lab) < SAME_BELOW);
    if (group !== undefined && like === true) group.push(flask);
    else groups.push([flask]);
  }
  const count = flasks[0]?.drawn.length ?? 0;
  let same = 0;
  for (let i = 0; i < count; i += 1) {
    const inOrder = groups.every((group, g) => {
      const next = groups[g + 1];
      if (next === undefined) return true;
      const darkEnd = Math.max(...group.map(({ drawn }) => drawn[i]!.lab.L));
      return darkEnd < Math.min(...next.map(({ drawn }) => drawn[i]!.lab.L));
    });
    if (inOrder) same += 1;
  }
  return {
    groups: groups.map((group) => group.map(({ name }) => name)),
    sure: count === 0 ? 1 : same / count,
  };
}
