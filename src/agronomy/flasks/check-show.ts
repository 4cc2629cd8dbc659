import { colourLook, deltaE00, labOfLinear, linearOfHex } from "../../colour/index.ts";
import type { ColourLook, Lab, LinearRgb } from "../../colour/index.ts";
import { describe, openFields } from "../job-fields.ts";
import type { Fields, IssueList } from "../job-fields.ts";
import { slipEffects } from "./slips.ts";
import type { SlipSeen } from "./slips.ts";
import type { Demo, FlaskContext, FlaskShow } from "./types.ts";

/** Colours as seen: typed, or picked from a photograph. */
export interface SeenColours {
  /** A white patch in the same light, "#rrggbb". */
  readonly white: string;
  readonly flasks: readonly { readonly flask: string; readonly hex: string }[];
}

/** One flask as seen beside what was computed. */
export interface FlaskSeen {
  readonly flask: string;
  readonly seen: string;
  /** After correction for the white patch. */
  readonly corrected: Lab & { readonly look: ColourLook };
  readonly deltaE00: number;
  /** True within what constants, glass and camera leave open. */
  readonly asComputed: boolean;
}

/** A slip that would explain what is seen. */
export interface Explanation {
  readonly id: string;
  readonly what: string;
  readonly mend: string;
  /** Mean colour difference over the flasks seen, if this had happened. */
  readonly deltaE00: number;
}

/** What was seen beside what was computed. */
export interface ShowCheck {
  readonly flasks: readonly FlaskSeen[];
  /** Mean colour difference over the flasks seen, as the demonstration was meant. */
  readonly deltaE00: number;
  /** Likeliest first; empty when all is as computed or no slip of the list explains it. */
  readonly explanations: readonly Explanation[];
  readonly verdict: string;
}

/** Colour difference that glass, light and camera alone may bring; our judgement. */
const CAMERA_DELTA = 10;
/** A slip explains what is seen when it brings the mean difference down to this share of what it was. */
const EXPLAINS_SHARE = 0.7;
/** Slips within this of the best one are named as well. */
const NEAR_BEST = 2;
const MOST_EXPLANATIONS = 3;
/** A white patch darker than this, linear [1], says nothing about the light. */
const LEAST_WHITE = 0.05;

/** Reads the colours seen in a document; null when they cannot be used (then with issues). */
export function readSeen(
  value: unknown,
  path: string,
  names: readonly string[],
  issues: IssueList,
): SeenColours | null {
  const fields = openFields(value, path, ["white", "flasks"], issues);
  if (fields === null) return null;
  const white = fields.get("white") === undefined ? "#ffffff" : readColour(fields, "white", issues);
  const list = openFields(fields.get("flasks"), fields.at("flasks"), names, issues);
  if (white === null || list === null) return null;
  if (Math.min(...linearOfHex(white)!) < LEAST_WHITE) {
    issues.add("colour-unreadable", fields.at("white"), {
      received: white,
      expected: "a white or light grey patch",
    });
    return null;
  }
  const flasks = names.flatMap((flask) => {
    if (list.get(flask) === undefined) return [];
    const hex = readColour(list, flask, issues);
    return hex === null ? [] : [{ flask, hex }];
  });
  return flasks.length === 0 ? null : { white, flasks };
}

function readColour(fields: Fields, key: string, issues: IssueList): string | null {
  const value = fields.get(key);
  if (typeof value === "string" && linearOfHex(value) !== null) return value.trim();
  issues.add("colour-unreadable", fields.at(key), {
    received: describe(value),
    expected: "a colour such as #7b0246",
  });
  return null;
}

/** A colour as it would be in the light in which the patch is white: channel by channel, in linear light. */
export function whiteCorrected(hex: string, white: string): LinearRgb | null {
  const colour = linearOfHex(hex);
  const patch = linearOfHex(white);
  if (colour === null || patch === null || Math.min(...patch) < LEAST_WHITE) return null;
  const [r, g, b] = colour.map((value, i) => Math.min(1, value / patch[i]!));
  return [r!, g!, b!];
}

/** What a screen or camera would show of a computed colour, as L*a*b*. */
function shownLab(hex: string): Lab {
  return labOfLinear(linearOfHex(hex)!);
}

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** Compares what was seen with what was computed, and looks for a slip that would explain the difference. */
export function checkShow(demo: Demo, show: FlaskShow, seen: SeenColours, context: FlaskContext): ShowCheck {
  const flasks = seen.flasks.flatMap(({ flask, hex }): FlaskSeen[] => {
    const state = show.flasks.find((one) => one.name === flask)?.steps.at(-1);
    const rgb = whiteCorrected(hex, seen.white);
    if (state === undefined || rgb === null) return [];
    const lab = labOfLinear(rgb);
    const apart = deltaE00(lab, shownLab(state.colour.hex));
    return [
      {
        flask,
        seen: hex,
        corrected: { ...lab, look: colourLook(lab) },
        deltaE00: apart,
        asComputed: apart <= Math.max(CAMERA_DELTA, state.band?.deltaE00 ?? 0),
      },
    ];
  });
  const meant = meanOf(flasks.map((one) => one.deltaE00));
  if (flasks.every((one) => one.asComputed)) {
    const verdict = "As computed, within what constants, glass and camera leave open.";
    return { flasks, deltaE00: meant, explanations: [], verdict };
  }
  const explanations = explain(flasks, meant, slipEffects(demo, show, context));
  const verdict =
    explanations.length === 0
      ? "Not as computed, and no single slip of the list explains it. Look for a second one, or for old stocks."
      : `Not as computed. Likeliest: ${explanations.map(({ what }) => what.toLowerCase()).join("; or ")}.`;
  return { flasks, deltaE00: meant, explanations, verdict };
}

function explain(
  flasks: readonly FlaskSeen[],
  meant: number,
  slips: readonly SlipSeen[],
): readonly Explanation[] {
  const scored = slips
    .map(({ id, what, mend, flasks: effects }): Explanation => {
      const apart = flasks.map(({ flask, corrected }) => {
        const effect = effects.find((one) => one.flask === flask);
        return effect === undefined ? meant : deltaE00(corrected, shownLab(effect.colour.hex));
      });
      return { id, what, mend, deltaE00: meanOf(apart) };
    })
    .filter((one) => one.deltaE00 <= EXPLAINS_SHARE * meant)
    .sort((one, other) => one.deltaE00 - other.deltaE00);
  const best = scored[0]?.deltaE00 ?? 0;
  return scored.filter((one) => one.deltaE00 <= best + NEAR_BEST).slice(0, MOST_EXPLANATIONS);
}
