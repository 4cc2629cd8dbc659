import { deltaE00 } from "../../colour/index.ts";
import type { Lab } from "../../colour/index.ts";
import { metalsOf } from "../../chem/index.ts";
import { completeWater, readWaterTest } from "../../water/index.ts";
import type { Water } from "../../water/index.ts";
import { SAME_BELOW } from "./compare.ts";
import { runDemo } from "./run-demo.ts";
import type {
  Addition,
  Cloudiness,
  Demo,
  Flask,
  FlaskContext,
  FlaskColour,
  FlaskShow,
  FlaskStep,
} from "./types.ts";

/** Something that goes wrong at the bench, and the demonstration that it makes of the one meant. */
export interface Slip {
  readonly id: string;
  /** What happened, in words. */
  readonly what: string;
  /** What to do about it. */
  readonly mend: string;
  readonly demo: Demo;
}

/** What a slip does to one flask. */
export interface SlipEffect {
  readonly flask: string;
  readonly colour: FlaskColour;
  readonly cloudiness: Cloudiness;
  /** Difference from the colour meant. */
  readonly deltaE00: number;
}

/** A slip with the flasks that give it away. */
export interface SlipSeen {
  readonly id: string;
  readonly what: string;
  readonly mend: string;
  /** Every flask, in the order of the demonstration. */
  readonly flasks: readonly SlipEffect[];
}

/** A common tap water for the slip "tap water used": moderately hard. Our choice; common practice, no published source. */
const TAP_WATER = {
  source: "tap water",
  method: "laboratory",
  readings: [
    { parameter: "calcium", value: 60, unit: "mg/L" },
    { parameter: "magnesium", value: 12, unit: "mg/L" },
    { parameter: "alkalinity", value: 180, unit: "mg/L as CaCO3" },
    { parameter: "pH", value: 7.5 },
  ],
};

/** Strong acids and alkalis whose amount a slip may change. */
const ACIDS = ["hydrochloric-acid"];

type Change = (addition: Addition) => Addition | null;

function withAdditions(demo: Demo, change: Change): Demo | null {
  let changed = false;
  const flasks = demo.flasks.map((flask): Flask => {
    const steps = flask.steps.flatMap((step): readonly FlaskStep[] => {
      if (step.kind === "adjust") return [step];
      const other = change(step);
      if (other !== step) changed = true;
      return other === null ? [] : [other];
    });
    return { ...flask, steps };
  });
  // A flask that nothing goes into is no flask.
  return changed && flasks.every(({ steps }) => steps.length > 0) ? { ...demo, flasks } : null;
}

/** Changes how much of some substances is in what is added, the volume as it was. */
function scaled(demo: Demo, applies: (addition: Addition) => boolean, factor: number): Demo | null {
  return withAdditions(demo, (step) =>
    applies(step) ? { ...step, amount_mol: step.amount_mol * factor } : step,
  );
}

const isMetal = ({ substance }: Addition): boolean => Object.keys(metalsOf(substance.released)).length > 0;
const isAcid = ({ substance }: Addition): boolean => ACIDS.includes(substance.id);
const isConditioner = ({ substance }: Addition): boolean => substance.kind === "conditioner";

function phMoved(demo: Demo, by: number): Demo | null {
  let changed = false;
  const flasks = demo.flasks.map((flask) => ({
    ...flask,
    steps: flask.steps.map((step) => {
      if (step.kind !== "adjust") return step;
      changed = true;
      return { ...step, pH: step.pH + by };
    }),
  }));
  return changed ? { ...demo, flasks } : null;
}

function withTapWater(demo: Demo, context: FlaskContext): Demo | null {
  const test = readWaterTest(TAP_WATER, "");
  const read = test.ok
    ? completeWater(test.value, { thermo: context.thermo, temperature_C: demo.temperature_C })
    : test;
  if (!read.ok || demo.flasks.every(({ start }) => start.water !== null)) return null;
  const water: Water = read.value;
  return {
    ...demo,
    flasks: demo.flasks.map((flask) =>
      flask.start.water === null ? { ...flask, start: { ...flask.start, water } } : flask,
    ),
  };
}

/** The slips that a demonstration can suffer from. */
export function slipsOf(demo: Demo, context: FlaskContext): readonly Slip[] {
  const indicators = new Set(
    [...context.flasks.indicators, ...demo.ownIndicators].map((one) => one.component.name),
  );
  const isIndicator = ({ substance }: Addition): boolean =>
    Object.keys(substance.released).some((name) => indicators.has(name));
  const slip = (id: string, what: string, mend: string, other: Demo | null): readonly Slip[] =>
    other === null ? [] : [{ id, what, mend, demo: other }];
  return [
    ...slip(
      "tap-water",
      "Tap water instead of deionised",
      "Use deionised water.",
      withTapWater(demo, context),
    ),
    ...slip(
      "no-acid",
      "Acid left out",
      "Add the acid first.",
      withAdditions(demo, (step) => (isAcid(step) ? null : step)),
    ),
    ...slip("acid-half", "Acid half as strong", "Make the acid afresh.", scaled(demo, isAcid, 0.5)),
    ...slip("acid-double", "Acid twice as strong", "Dilute the acid.", scaled(demo, isAcid, 2)),
    ...slip("ph-low", "pH half a unit too low", "Check the meter or take a new strip.", phMoved(demo, -0.5)),
    ...slip("ph-high", "pH half a unit too high", "Check the meter or take a new strip.", phMoved(demo, 0.5)),
    ...slip(
      "metal-half",
      "Metal stock old, half of it rust or lime",
      "Make the stock afresh, in acid.",
      scaled(demo, isMetal, 0.5),
    ),
    ...slip(
      "metal-more",
      "Another hydrate: 1.7 times the metal",
      "Read the hydrate on the bottle.",
      scaled(demo, isMetal, 1.67),
    ),
    ...slip(
      "indicator-half",
      "Indicator half as strong",
      "Make the indicator afresh.",
      scaled(demo, isIndicator, 0.5),
    ),
    ...slip(
      "indicator-double",
      "Indicator twice as strong",
      "Check the weight.",
      scaled(demo, isIndicator, 2),
    ),
    ...slip(
      "no-conditioner",
      "Conditioner left out",
      "Add it, in the order of the script.",
      withAdditions(demo, (step) => (isConditioner(step) ? null : step)),
    ),
    ...slip("narrow", "A narrower glass, two thirds as wide", "Use the glass of the script.", {
      ...demo,
      path_cm: demo.path_cm / 1.5,
    }),
    ...slip("wide", "A wider glass, half as wide again", "Use the glass of the script.", {
      ...demo,
      path_cm: demo.path_cm * 1.5,
    }),
  ];
}

/** What every slip makes of the flasks, by the same model. */
export function slipEffects(demo: Demo, show: FlaskShow, context: FlaskContext): readonly SlipSeen[] {
  return slipsOf(demo, context).flatMap(({ id, what, mend, demo: other }) => {
    const run = runDemo(other, context, { draws: 0 });
    if (!run.ok) return [];
    const flasks = run.value.flasks.flatMap((flask, i): SlipEffect[] => {
      const meant: Lab | undefined = show.flasks[i]?.steps.at(-1)?.colour;
      const last = flask.steps.at(-1);
      if (meant === undefined || last === undefined) return [];
      const { colour, cloudiness } = last;
      return [{ flask: flask.name, colour, cloudiness, deltaE00: deltaE00(meant, colour) }];
    });
    return [{ id, what, mend, flasks }];
  });
}

/** Slips that change at least one flask so that it is seen. */
export function visibleSlips(slips: readonly SlipSeen[]): readonly SlipSeen[] {
  return slips.filter(({ flasks }) =>
    flasks.some((one) => one.deltaE00 >= SAME_BELOW || one.cloudiness.kind !== "clear"),
  );
}
