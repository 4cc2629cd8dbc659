import type { FlaskShow, FlaskShown, FlaskState, ShowCheck } from "../agronomy/index.ts";
import { ENGLISH, sayIn } from "../words/index.ts";
import type { Language } from "../words/index.ts";
import { addedText, colourText, liquidText, sameContentsText } from "./flask-looks.ts";
import { estimatesInWords, orderInWords, sharesInWords } from "./flask-words.ts";

/** A demonstration in words: every flask step by step, and how the flasks compare. */
export function flasksText(show: FlaskShow, language: Language = ENGLISH): string {
  const say = sayIn(language);
  const { page, phrases, figures } = language;
  const title = page(show.title ?? "Demonstration in flasks");
  const parts = [
    title,
    "=".repeat(title.length),
    ...(show.about === null ? [] : [phrases.say(show.about).text]),
    say(
      "Colours against white through {path} cm, at {temperature} °C; in brackets what the published constants allow.",
      { path: figures.figure(show.path_cm), temperature: figures.figure(show.temperature_C) },
    ),
    "",
    ...show.flasks.flatMap((flask) => flaskLines(flask, language)),
    say("Side by side, after the last step"),
    ...show.pairs.map(({ a, b, deltaE00, low, high, verdict }) => {
      const range = say("{low} to {high}", { low: low.toFixed(0), high: high.toFixed(0) });
      return `  ${page(a)} – ${page(b)}: ${page(verdict)} (ΔE00 ${deltaE00.toFixed(0)}, ${range})`;
    }),
    "",
    say("From dark to light: {order}", { order: orderInWords(show, language) }),
    ...show.sameContents.map((same) => sameContentsText(same, language)),
    estimatesInWords(show, language),
  ];
  return `${parts.join("\n")}\n`;
}

function flaskLines(flask: FlaskShown, language: Language): readonly string[] {
  const { page, phrases } = language;
  const note = sayIn(language)("Note");
  const steps = flask.steps.flatMap((state, i) => [
    `  ${i + 1}. ${addedText(state.added, language)}`,
    `     ${liquidText(state, language)} ${measured(state, language)}`,
    ...state.remarks.map(({ text }) => `     ${note}: ${phrases.say(text).text}`),
  ]);
  const held = flask.steps.at(-1)?.heldBy ?? {};
  return [
    flask.shows === null ? page(flask.name) : `${page(flask.name)} – ${page(flask.shows)}`,
    ...steps,
    ...Object.entries(held).map(
      ([metal, shares]) => `  ${phrases.name(metal)}: ${sharesInWords(shares, language)}`,
    ),
    "",
  ];
}

function measured({ colour, pH, volume_mL }: FlaskState, language: Language): string {
  const { figures } = language;
  const lightness = sayIn(language)("lightness {value}", { value: colour.L.toFixed(0) });
  return `(${colour.hex}, ${lightness}; pH ${figures.pHText(pH)}; ${figures.fixed(volume_mL, 1)} mL)`;
}

/** How a search for amounts ended. */
export interface DesignOutcome {
  readonly deltaE00Low: number;
  readonly reached: boolean;
  readonly tried: number;
}

/** How a search for amounts ended, in words. */
export function designText(
  { deltaE00Low, reached, tried }: DesignOutcome,
  language: Language = ENGLISH,
): string {
  const say = sayIn(language);
  const found = { tried, difference: deltaE00Low.toFixed(0) };
  return `${
    reached
      ? say(
          "Amounts found among {tried}: any two flasks differ by at least ΔE00 {difference}, as asked for.",
          found,
        )
      : say(
          "Amounts found among {tried}: any two flasks differ by at least ΔE00 {difference}, less than asked for.",
          found,
        )
  }\n`;
}

/** What was seen beside what was computed, in words. */
export function checkText(check: ShowCheck, language: Language = ENGLISH): string {
  const say = sayIn(language);
  const { page, phrases } = language;
  const lines = [
    say("Seen at the show"),
    ...check.flasks.map(({ flask, seen, corrected, deltaE00, asComputed }) => {
      const told = say("{flask}: {colour} after the white patch, ΔE00 {difference}, {verdict}", {
        flask: `${page(flask)} (${seen})`,
        colour: colourText(corrected.look, language),
        difference: deltaE00.toFixed(0),
        verdict: asComputed ? say("as computed") : say("not as computed"),
      });
      return `  ${told}`;
    }),
    phrases.say(check.verdict).text,
    ...check.explanations.map(({ what, mend, deltaE00 }) => {
      const left = say("would leave ΔE00 {difference} on average.", { difference: deltaE00.toFixed(0) });
      return `  ${phrases.say(what).text}: ${left} ${phrases.say(mend).text}`;
    }),
  ];
  return `${lines.join("\n")}\n`;
}
