import { inverseNormal } from "../numerics/index.ts";
import { ASSUMED } from "./check-data.ts";
import type { AssumedFigure } from "./check-data.ts";
import type { Known } from "./known.ts";
import { readingUncertainty } from "./reading-uncertainty.ts";

/**
 * Place 0…1 of an uncertain input in its distribution, by the input's key; null for its central value.
 *
 * Keys are "reading:" with the parameter and "digits:" with the parameter, or "assumed:" with the figure's name.
 */
export type Draw = (key: string) => number | null;

/** An assumption whose form is a share is drawn on the logit scale, one with a plain unit as it is, others by factors. */
const SHARES = new Set<string>(["calciumShareOfHardness", "chlorideShare"]);
const PLAIN = new Set<string>(["pH", "temperature_C", "limitShare", "topStepFactor"]);
/** z of the 95th percentile, which is what `low` and `high` of an assumption are. */
const Z95 = inverseNormal(0.95);
/** Beyond twice its z no assumption is drawn: the tails of a few hundred waters are not known. */
const FURTHEST = 2;

/** What is assumed under a name, with its central value drawn where draws are made. */
export function assumed(draw: Draw, name: keyof typeof ASSUMED): AssumedFigure {
  const figure = ASSUMED[name];
  const u = draw(`assumed:${name}`);
  return u === null ? figure : { ...figure, central: drawnFigure(name, figure, u) };
}

/** The figure at a place in its distribution: median `central`, 5th and 95th percentile `low` and `high`. */
function drawnFigure(name: string, { central, low, high }: AssumedFigure, u: number): number {
  const steps = Math.max(-FURTHEST, Math.min(FURTHEST, inverseNormal(u) / Z95));
  const end = steps < 0 ? low : high;
  const part = Math.abs(steps);
  if (SHARES.has(name)) {
    const logit = (share: number): number => Math.log(share / (1 - share));
    return 1 / (1 + Math.exp(-(logit(central) + part * (logit(end) - logit(central)))));
  }
  if (PLAIN.has(name)) return central + part * (end - central);
  return end > 0 ? central * (end / central) ** part : central * Math.max(0, 1 - part);
}

/** Share of an iron of unknown form that is dissolved iron(III): anything from none to all; all in the central answer. */
export function ironDissolvedShare(draw: Draw): number {
  return draw("assumed:ironDissolved") ?? 1;
}

/**
 * A reading at a place in its distribution, in the internal unit: method and rounding for a plain value, evenly
 * anywhere within a range or below a limit, falling off above a top step.
 */
export function drawnReading(known: Known, draw: Draw): Known {
  const { parameter } = known.reading;
  const u = draw(`reading:${parameter}`);
  if (known.kind !== "value") {
    if (u === null) return known;
    const part = known.kind === "above" ? 1 - Math.sqrt(1 - u) : u;
    return { ...known, value: known.low + part * (known.high - known.low) };
  }
  const digits = draw(`digits:${parameter}`);
  if (u === null || digits === null) return known;
  const { relative, absolute, halfDigit } = readingUncertainty(known.reading, known.method);
  const z = inverseNormal(u);
  const size = Math.hypot(relative, known.value === 0 ? 0 : absolute / Math.abs(known.value));
  const byMethod = parameter === "pH" ? known.value + absolute * z : known.value * Math.exp(size * z);
  const value = byMethod + halfDigit * (2 * digits - 1);
  return { ...known, value: parameter === "pH" || known.value < 0 ? value : Math.max(0, value) };
}
