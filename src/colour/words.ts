import { chromaOf, hueOf } from "./lab.ts";
import type { Lab } from "./lab.ts";

/** Up to which hue angle [°] a word is used. Our own division of the circle, after looking at the colours. */
const HUES: readonly (readonly [upTo: number, word: string])[] = [
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
const LIGHT_NAMES: Readonly<Record<string, string>> = { red: "pink", "violet-red": "pink", purple: "lilac" };
const DARK_NAMES: Readonly<Record<string, string>> = {
  orange: "brown",
  yellow: "olive",
  "red-orange": "brown",
};

/**
 * A colour in plain words, such as "dark violet-red" or "clear, no colour", so that nobody depends on seeing it.
 *
 * The words are our own; the figures beside them are what counts.
 */
export function colourInWords(lab: Lab): string {
  const chroma = chromaOf(lab);
  if (chroma < COLOURLESS) return greyInWords(lab.L);
  const hue = hueOf(lab);
  const word = (HUES.find(([upTo]) => hue <= upTo) ?? HUES[0]!)[1];
  if (lab.L < 8) return `almost black, ${word}`;
  const dull = chroma < DULL ? (DARK_NAMES[word] ?? word) : word;
  if (lab.L < 35) return `dark ${dull}`;
  if (lab.L < 60) {
    if (chroma < TINT) return `grey ${word}`;
    return dull === word ? `strong ${word}` : dull;
  }
  const light = chroma < 60 ? (LIGHT_NAMES[word] ?? word) : word;
  if (lab.L > 88 && chroma < TINT) return `almost clear, a touch of ${light}`;
  if (lab.L > 80) return chroma < 35 ? `pale ${light}` : `bright ${light}`;
  return chroma < 35 ? `light ${light}` : light;
}

function greyInWords(L: number): string {
  if (L > 92) return "clear, no colour";
  if (L > 60) return "light grey";
  if (L > 25) return "grey";
  return "black";
}
