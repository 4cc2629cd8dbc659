import type { FlaskShow, FlaskShown, FlaskState, ShowCheck } from "../agronomy/index.ts";
import { lookInWords } from "./flask-drawing.ts";
import { estimatesInWords, orderInWords, sharesInWords } from "./flask-words.ts";

/** A demonstration in words: every flask step by step, and how the flasks compare. */
export function flasksText(show: FlaskShow): string {
  const title = show.title ?? "Demonstration";
  const parts = [
    title,
    "=".repeat(title.length),
    ...(show.about === null ? [] : [show.about]),
    `Colours against white through ${show.path_cm} cm of liquid, at ${show.temperature_C} °C.`,
    "",
    ...show.flasks.flatMap(flaskLines),
    "Side by side",
    ...show.pairs.map(
      ({ a, b, deltaE00, low, high, verdict }) =>
        `  ${a} – ${b}: ${verdict} (ΔE00 ${deltaE00.toFixed(0)}, ${low.toFixed(0)} to ${high.toFixed(0)})`,
    ),
    "",
    `From dark to light: ${orderInWords(show)}`,
    ...show.remarks.map(({ text }) => text),
    estimatesInWords(show),
  ];
  return `${parts.join("\n")}\n`;
}

function flaskLines(flask: FlaskShown): readonly string[] {
  const steps = flask.steps.flatMap((state, i) => [
    `  ${i + 1}. ${state.added}`,
    `     ${lookInWords(state)} ${figures(state)}`,
    ...state.remarks.map(({ text }) => `     Note: ${text}`),
  ]);
  const held = flask.steps.at(-1)?.heldBy ?? {};
  return [
    flask.shows === null ? flask.name : `${flask.name} – ${flask.shows}`,
    ...steps,
    ...Object.entries(held).map(([metal, shares]) => `  ${metal}: ${sharesInWords(shares)}`),
    "",
  ];
}

function figures({ colour, pH, volume_mL }: FlaskState): string {
  return `(${colour.hex}, lightness ${colour.L.toFixed(0)}; pH ${pH.toFixed(1)}; ${volume_mL.toFixed(1)} mL)`;
}

/** How a search for amounts ended. */
export interface DesignOutcome {
  readonly deltaE00Low: number;
  readonly reached: boolean;
  readonly tried: number;
}

/** How a search for amounts ended, in words. */
export function designText({ deltaE00Low, reached, tried }: DesignOutcome): string {
  const end = reached ? "as asked for" : "less than asked for";
  return `Amounts found among ${tried}: any two flasks differ by at least ΔE00 ${deltaE00Low.toFixed(0)}, ${end}.\n`;
}

/** What was seen beside what was computed, in words. */
export function checkText(check: ShowCheck): string {
  const lines = [
    "Seen at the show",
    ...check.flasks.map(({ flask, seen, corrected, deltaE00, asComputed }) => {
      const verdict = asComputed ? "as computed" : "not as computed";
      return `  ${flask}: ${seen}, ${corrected.words} after white; ΔE00 ${deltaE00.toFixed(0)}, ${verdict}`;
    }),
    check.verdict,
    ...check.explanations.map(
      ({ what, mend, deltaE00 }) => `  ${what}: would leave ΔE00 ${deltaE00.toFixed(0)} on average. ${mend}`,
    ),
  ];
  return `${lines.join("\n")}\n`;
}
