import { inverseNormal, latinColumn } from "../../numerics/index.ts";
import type { Equilibrium } from "../../chem/index.ts";
import { deltaE00, labOfXyz } from "../../colour/index.ts";
import type { Lab, Xyz } from "../../colour/index.ts";
import { quantileOf } from "../../numerics/index.ts";
import type { Contents } from "./contents.ts";
import type { DrawnConstants, FlaskChemistry } from "./flask-chemistry.ts";
import type { OpticsRecord } from "./flask-data.ts";
import { flaskColour, opticalKeys, paletteOf, xyzOf } from "./optics.ts";
import type { Palette } from "./optics.ts";
import type { ColourBand } from "./types.ts";

/** Furthest a constant is drawn [standard uncertainties]: the tails of published spreads are not known. */
const FURTHEST = 2.5;

/** One set of constants and optical figures. */
export interface FlaskDraw {
  readonly constants: DrawnConstants;
  readonly palette: Palette;
}

/**
 * Draws of all constants and optical figures of a demonstration, the same for every flask, so that flasks are compared
 * fairly. Constants published against another one move with it.
 */
export function flaskDraws(
  chemistry: FlaskChemistry,
  records: readonly OpticsRecord[],
  count: number,
): readonly FlaskDraw[] {
  const columns = new Map<string, Float64Array>();
  const place = (key: string, i: number): number => {
    let column = columns.get(key);
    if (column === undefined) {
      column = latinColumn(count, `flasks:${key}`);
      columns.set(key, column);
    }
    return Math.max(-FURTHEST, Math.min(FURTHEST, inverseNormal(column[i]!)));
  };
  const shift = shiftOf(chemistry);
  const optical = new Set(opticalKeys(records));
  return Array.from({ length: count }, (_, i) => {
    const logK: Record<string, number> = {};
    for (const { name, logK: central } of chemistry.definition.species) {
      const by = shift(name, (key) => place(`logK:${key}`, i));
      if (by !== 0) logK[name] = central + by;
    }
    const logKsp: Record<string, number> = {};
    for (const { name, logKsp: central } of chemistry.definition.solids) {
      const size = chemistry.uncertainties.logKsp[name] ?? 0;
      if (size > 0) logKsp[name] = central + size * place(`logKsp:${name}`, i);
    }
    const palette = paletteOf(chemistry, records, (key) =>
      optical.has(key) ? place(`optics:${key}`, i) : 0,
    );
    return { constants: { logK, logKsp }, palette };
  });
}

/** By how much a constant is off its central value, given the place of each constant in its own distribution. */
function shiftOf(chemistry: FlaskChemistry): (species: string, place: (key: string) => number) => number {
  const ties = new Map(
    chemistry.indicators.flatMap((one) => one.tied).map((tie) => [tie.species, tie] as const),
  );
  const shift = (species: string, place: (key: string) => number): number => {
    const size = chemistry.uncertainties.logK[species] ?? 0;
    const own = size > 0 ? size * place(species) : 0;
    const tie = ties.get(species);
    return tie === undefined ? own : own + tie.times * shift(tie.to, place);
  };
  return shift;
}

/** What a draw makes of one state of a flask. */
export interface DrawnState {
  readonly lab: Lab;
  readonly xyz: Xyz;
  readonly cloudy: boolean;
}

/** The state of a flask under every draw. */
export function drawnStates(
  chemistry: FlaskChemistry,
  contents: Contents,
  central: Equilibrium,
  draws: readonly FlaskDraw[],
  path_cm: number,
  isCloudy: (equilibrium: Equilibrium) => boolean,
): readonly DrawnState[] {
  let last = central;
  return draws.map(({ constants, palette }) => {
    const solved = chemistry.solve(contents, constants, last) ?? central;
    last = solved;
    const xyz = xyzOf(solved, palette, path_cm);
    return { xyz, lab: labOfXyz(xyz), cloudy: isCloudy(solved) };
  });
}

/** How the colour of a state may differ. */
export function bandOf(central: Lab, states: readonly DrawnState[]): ColourBand {
  const byLightness = states.toSorted((one, other) => one.lab.L - other.lab.L);
  const at = (p: number): DrawnState => byLightness[Math.round(p * (byLightness.length - 1))]!;
  const apart = states.map(({ lab }) => deltaE00(central, lab)).sort((a, b) => a - b);
  return {
    darkest: flaskColour(at(0.05).xyz),
    lightest: flaskColour(at(0.95).xyz),
    deltaE00: quantileOf(apart, 0.9),
    cloudy: states.filter((state) => state.cloudy).length / states.length,
  };
}
