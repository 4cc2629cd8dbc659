import type { Equilibrium } from "../../chem/index.ts";
import { sourcesUsed } from "../../chem/index.ts";
import type { Issue, Read } from "../../units/index.ts";
import { sourceOf } from "../sources.ts";
import { HARDSTAND_VERSION } from "../version.ts";
import { stepAdded, waterAdded } from "./added.ts";
import { darknessOf, pairsOf } from "./compare.ts";
import type { Compared } from "./compare.ts";
import { contentsOf } from "./contents.ts";
import type { Contents } from "./contents.ts";
import { flaskChemistry } from "./flask-chemistry.ts";
import type { FlaskChemistry } from "./flask-chemistry.ts";
import type { OpticsRecord } from "./flask-data.ts";
import { remarksOn } from "./flask-remarks.ts";
import { cloudinessOf, cloudsOf, heldBy } from "./holders.ts";
import { flaskColour, opticsOf, opticsUsed, paletteOf, xyzOf } from "./optics.ts";
import type { Palette } from "./optics.ts";
import { bandOf, drawnStates, flaskDraws } from "./spread.ts";
import type { DrawnState, FlaskDraw } from "./spread.ts";
import type {
  Added,
  Demo,
  Flask,
  FlaskContext,
  FlaskShow,
  FlaskShown,
  FlaskState,
  SameContents,
} from "./types.ts";

/** Draws of the constants for the bands of colours; enough for a 5th percentile to stand still within a shade. */
export const FLASK_DRAWS = 200;

/** Concentration [mol/L] below which a species is not listed. */
const LISTED_MOL_PER_L = 1e-12;

/** How much is computed. */
export interface RunOptions {
  /** Draws for the bands; 0 for the central colours alone. */
  readonly draws?: number;
}

interface Setting {
  readonly demo: Demo;
  readonly chemistry: FlaskChemistry;
  readonly records: readonly OpticsRecord[];
  readonly palette: Palette;
  readonly draws: readonly FlaskDraw[];
  readonly context: FlaskContext;
  /** States already computed: flasks often begin alike. */
  readonly known: Map<string, Solved | null>;
}

interface Solved {
  readonly equilibrium: Equilibrium;
  readonly drawn: readonly DrawnState[];
}

/**
 * Computes a demonstration: the colour of every flask after every step, how sure it is, and how the flasks compare.
 *
 * @returns the show, or issues when a step cannot be done, such as a pH that no acid reaches
 * @validity up to 0.5 mol/L of salt, 0–45 °C; equilibrium, so what is slow on the bench is not in it
 */
export function runDemo(demo: Demo, context: FlaskContext, options: RunOptions = {}): Read<FlaskShow> {
  const chemistry = flaskChemistry(demo, context);
  const records = opticsOf(chemistry, context.flasks);
  const count = options.draws ?? FLASK_DRAWS;
  const setting: Setting = {
    demo,
    chemistry,
    records,
    palette: paletteOf(chemistry, records),
    draws: flaskDraws(chemistry, records, count),
    context,
    known: new Map(),
  };
  const issues: Issue[] = [];
  const done = demo.flasks.flatMap((flask) => {
    const shown = showFlask(flask, setting, issues);
    return shown === null ? [] : [shown];
  });
  if (issues.length > 0) return { ok: false, issues };
  const compared = done.map(({ compared: one }) => one);
  const flasks = done.map(({ shown }) => shown);
  return {
    ok: true,
    issues: [],
    value: {
      "hardstand-flasks": 1,
      title: demo.title,
      about: demo.about,
      path_cm: demo.path_cm,
      temperature_C: demo.temperature_C,
      flasks,
      pairs: pairsOf(compared),
      order: darknessOf(compared),
      optics: opticsUsed(records),
      draws: count,
      sameContents: sameContents(done),
      sources: sourcesOf(setting, flasks),
      versions: { hardstand: HARDSTAND_VERSION, data: `${context.thermo.version}+${context.trade.version}` },
    },
  };
}

interface Done {
  readonly shown: FlaskShown;
  readonly compared: Compared;
  readonly last: Contents;
}

function showFlask(flask: Flask, setting: Setting, issues: Issue[]): Done | null {
  const { chemistry } = setting;
  const unsolved = (path: string, hint: string): null => {
    issues.push({ code: "flask-not-computed", path, severity: "error", hint });
    return null;
  };
  const filled = contentsOf(flask, (contents) => chemistry.solve(contents));
  if (!filled.ok) {
    return unsolved(filled.step.path, "No reasonable amount of strong acid or alkali brings this pH.");
  }
  const states: FlaskState[] = [];
  let drawn: readonly DrawnState[] = [];
  for (const [i, contents] of filled.contents.entries()) {
    const step = i === 0 ? null : flask.steps[i - 1]!;
    const solved = solveOnce(contents, setting);
    if (solved === null) return unsolved(step?.path ?? flask.path, "No equilibrium was found.");
    drawn = solved.drawn;
    const added = step === null ? waterAdded(flask.start) : stepAdded(step, filled.acids_mol[i] ?? null);
    states.push(stateOf(added, step?.say ?? null, contents, solved, setting));
  }
  const [start, ...steps] = states;
  const last = steps.at(-1);
  if (start === undefined || last === undefined) return null;
  const { L, a, b } = last.colour;
  return {
    shown: { name: flask.name, shows: flask.shows, start, steps },
    compared: { name: flask.name, lab: { L, a, b }, drawn },
    last: filled.contents.at(-1)!,
  };
}

function solveOnce(contents: Contents, { known, chemistry, draws, demo }: Setting): Solved | null {
  const key = JSON.stringify(contents);
  let solved = known.get(key);
  if (solved === undefined) {
    const equilibrium = chemistry.solve(contents);
    const isCloudy = (one: Equilibrium): boolean => cloudsOf(one, chemistry).length > 0;
    solved =
      equilibrium === null
        ? null
        : {
            equilibrium,
            drawn: drawnStates(chemistry, contents, equilibrium, draws, demo.path_cm, isCloudy),
          };
    known.set(key, solved);
  }
  return solved;
}

function stateOf(
  added: Added,
  say: string | null,
  contents: Contents,
  { equilibrium, drawn }: Solved,
  { chemistry, palette, demo, context }: Setting,
): FlaskState {
  const colour = flaskColour(xyzOf(equilibrium, palette, demo.path_cm));
  const clouds = cloudsOf(equilibrium, chemistry);
  const held = heldBy(equilibrium, chemistry);
  const litres = contents.volume_mL / 1000;
  const totals = Object.fromEntries(
    Object.entries(contents.amounts_mol).map(([name, moles]) => [name, moles / litres]),
  );
  const species = chemistry.compiled.speciesNames
    .map((name, i): [string, number] => [name, equilibrium.concentrations[i]!])
    .filter(([, concentration]) => concentration > LISTED_MOL_PER_L)
    .sort(([, one], [, other]) => other - one);
  return {
    added,
    say,
    volume_mL: contents.volume_mL,
    pH: equilibrium.pH ?? 7,
    ionicStrength_molPerL: equilibrium.ionicStrength_molPerL,
    colour,
    band: drawn.length === 0 ? null : bandOf(colour, drawn),
    cloudy: clouds.length > 0,
    clouds,
    cloudiness: cloudinessOf(clouds),
    species_molPerL: Object.fromEntries(species),
    heldBy: held,
    remarks: remarksOn(equilibrium, totals, held, clouds, chemistry, context.flasks),
    extrapolated: equilibrium.extrapolated,
  };
}

/** Flasks that end with the same things in them: equilibrium has no memory of the order. */
function sameContents(done: readonly Done[]): readonly SameContents[] {
  const alike = (one: Contents, other: Contents): boolean => {
    const names = new Set([...Object.keys(one.amounts_mol), ...Object.keys(other.amounts_mol)]);
    return [...names].every((name) => {
      const x = one.amounts_mol[name] ?? 0;
      const y = other.amounts_mol[name] ?? 0;
      return Math.abs(x - y) <= 1e-6 * Math.max(x, y);
    });
  };
  return done.flatMap(({ shown, last }, i) =>
    done
      .slice(i + 1)
      .filter((other) => alike(last, other.last))
      .map((other): SameContents => ({ a: shown.name, b: other.shown.name })),
  );
}

function sourcesOf({ chemistry, records }: Setting, flasks: readonly FlaskShown[]): FlaskShow["sources"] {
  const keys = new Set<string>(["cie-018-2019", "cie-15-2004"]);
  for (const key of sourcesUsed(chemistry.thermo, chemistry.definition)) keys.add(key);
  for (const { source } of opticsUsed(records)) keys.add(source);
  for (const { start, steps } of flasks) {
    for (const { remarks } of [start, ...steps]) {
      for (const { source } of remarks) if (source !== null) keys.add(source);
    }
  }
  return [...keys].sort().map(sourceOf);
}
