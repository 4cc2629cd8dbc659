import { chromaOf, hueOf } from "./lab.ts";
import type { Lab } from "./lab.ts";

/** A liquid without a hue, from light to dark. */
export type Grey = "no colour" | "light grey" | "grey" | "black";

/** Hues that people have a word for; brown and olive are dark ones, pink and lilac light ones. */
export type Hue =
  | "violet-red"
  | "red"
  | "red-orange"
  | "orange"
  | "yellow"
  | "green-yellow"
  | "green"
  | "blue-green"
  | "sky blue"
  | "blue"
  | "violet"
  | "purple"
  | "pink"
  | "lilac"
  | "brown"
  | "olive";

/** How a hue is seen; "plain" where the hue alone says it. */
export type Tone =
  "almost black" | "dark" | "grey" | "strong" | "plain" | "light" | "pale" | "bright" | "almost clear";

/** What a colour looks like, in the parts that every language puts into words of its own. */
export type ColourLook =
  | { readonly kind: "grey"; readonly grey: Grey }
  | { readonly kind: "hue"; readonly tone: Tone; readonly hue: Hue };

/** Up to which hue angle [°] a hue reaches. Our own division of the circle, after looking at the colours. */
const HUES: readonly (readonly [upTo: number, hue: Hue])[] = [
  [12, "violet-red"],
  [42, "red"],
  [62, "red-orange"],
  [76, "orange"],
  [115, "yellow"],
  [125, "green-yellow"],
  [165, "green"],
  [215, "blue-green"],
  [250, "sky blue"],
  [310, "blue"],
  [328, "violet"],
  [348, "purple"],
  [360, "violet-red"],
];

/** Below this chroma a light liquid is called colourless. */
const COLOURLESS = 4;
/** Below this chroma there is a tint only. */
const TINT = 14;
/** Below this chroma a dark orange is called brown. */
const DULL = 55;
const LIGHT_HUES: Readonly<Partial<Record<Hue, Hue>>> = {
  red: "pink",
  "violet-red": "pink",
  purple: "lilac",
};
const DARK_HUES: Readonly<Partial<Record<Hue, Hue>>> = {
  orange: "brown",
  yellow: "olive",
  "red-orange": "brown",
};

/**
 * What a colour looks like, such as a dark violet-red or no colour at all, so that nobody depends on seeing it.
 *
 * The parts are our own; the figures beside them are what counts.
 */
export function colourLook(lab: Lab): ColourLook {
  const chroma = chromaOf(lab);
  if (chroma < COLOURLESS) return { kind: "grey", grey: greyOf(lab.L) };
  const angle = hueOf(lab);
  const hue = (HUES.find(([upTo]) => angle <= upTo) ?? HUES[0]!)[1];
  const seen = (tone: Tone, as: Hue): ColourLook => ({ kind: "hue", tone, hue: as });
  if (lab.L < 8) return seen("almost black", hue);
  const dull = chroma < DULL ? (DARK_HUES[hue] ?? hue) : hue;
  if (lab.L < 35) return seen("dark", dull);
  if (lab.L < 60) {
    if (chroma < TINT) return seen("grey", hue);
    return seen(dull === hue ? "strong" : "plain", dull);
  }
  const light = chroma < 60 ? (LIGHT_HUES[hue] ?? hue) : hue;
  if (lab.L > 88 && chroma < TINT) return seen("almost clear", light);
  if (lab.L > 80) return seen(chroma < 35 ? "pale" : "bright", light);
  return seen(chroma < 35 ? "light" : "plain", light);
}

function greyOf(L: number): Grey {
  if (L > 92) return "no colour";
  if (L > 60) return "light grey";
  if (L > 25) return "grey";
  return "black";
}
