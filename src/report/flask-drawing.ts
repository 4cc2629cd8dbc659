import type { FlaskShow, FlaskShown, FlaskState } from "../agronomy/index.ts";
import { hexOfLinear, linearOfHex } from "../colour/index.ts";
import { ENGLISH, sayIn } from "../words/index.ts";
import type { Language, Say } from "../words/index.ts";
import { liquidText } from "./flask-looks.ts";
import { html, nothing } from "./html.ts";
import type { SafeHtml } from "./html.ts";

/** Room of one flask in a drawing [px]. */
const CELL_WIDTH = 190;
const FLASK_HEIGHT = 190;
/** Way of the light at the edge of a round flask, as a share of that through its middle; for drawing only. */
const EDGE_SHARE = 0.35;
/** Suspended matter that hides what is behind it [mg/L]; for drawing only. */
const OPAQUE_MG_PER_L = 60;

/** Colours of suspended matter; for drawing only, by eye. */
const CLOUD_COLOURS: Readonly<Record<string, string>> = { rust: "#b5671f" };
const WHITE_CLOUD = "#f3f1ea";

/** Outline of a conical flask, 120 wide and 150 high. */
const OUTLINE = "M48 4 L48 52 L8 132 Q2 146 18 146 L102 146 Q118 146 112 132 L72 52 L72 4";
/** The liquid in it, up to a level in the cone. */
const LIQUID = "M33 82 L10 131 Q4 144 19 144 L101 144 Q116 144 110 131 L87 82 Z";

/** Colour of the same liquid through less of it, channel by channel. */
function throughLess(hex: string, share: number): string {
  const rgb = linearOfHex(hex);
  return rgb === null ? hex : hexOfLinear([rgb[0] ** share, rgb[1] ** share, rgb[2] ** share]);
}

/** One flask as a drawing, its top left corner at the origin; 120 wide and 150 high. */
function flaskShape(state: FlaskState, id: string): SafeHtml {
  const { hex } = state.colour;
  const edge = throughLess(hex, EDGE_SHARE);
  return html`<defs>
      <linearGradient id="${id}">
        <stop offset="0" stop-color="${edge}" />
        <stop offset="0.3" stop-color="${hex}" />
        <stop offset="0.7" stop-color="${hex}" />
        <stop offset="1" stop-color="${edge}" />
      </linearGradient>
    </defs>
    <path d="${LIQUID}" fill="url(#${id})" />
    ${cloudShape(state)}
    <path d="M33 82 L87 82" stroke="#6b7280" stroke-width="1" opacity="0.6" />
    <path d="${OUTLINE}" fill="none" stroke="#374151" stroke-width="2.5" stroke-linejoin="round" />
    <path d="M43 4 L77 4" stroke="#374151" stroke-width="4" stroke-linecap="round" />`;
}

function cloudShape(state: FlaskState): SafeHtml {
  const total = state.clouds.reduce((sum, one) => sum + one.mgPerL, 0);
  if (total === 0) return nothing;
  const colour = CLOUD_COLOURS[state.clouds[0]?.solid ?? ""] ?? WHITE_CLOUD;
  const opacity = (0.95 * (1 - Math.exp((-2 * total) / OPAQUE_MG_PER_L))).toFixed(2);
  // Flecks at fixed places, so that the same flask is drawn the same way every time.
  const flecks = Array.from({ length: 26 }, (_, i) => {
    const down = (i * 0.6180339887) % 1;
    const across = (i * 0.7548776662) % 1;
    const half = 24 + 48 * down;
    const x = (60 - half + 6 + across * (2 * half - 12)).toFixed(1);
    const y = (88 + 52 * down).toFixed(1);
    return html`<circle cx="${x}" cy="${y}" r="${i % 3 === 0 ? "2.2" : "1.4"}" fill="#4b3a24" />`;
  });
  return html`<path d="${LIQUID}" fill="${colour}" opacity="${opacity}" /> <g opacity="0.45">${flecks}</g>`;
}

/** Breaks a text into lines of at most `most` signs, at spaces. */
function lines(text: string, most: number): readonly string[] {
  const found: string[] = [];
  for (const word of text.split(" ")) {
    const last = found.at(-1);
    if (last === undefined || last.length + 1 + word.length > most) found.push(word);
    else found[found.length - 1] = `${last} ${word}`;
  }
  return found;
}

/** State of a flask at a step; the last one beyond its end, the start for 0. */
export function stateAt(flask: FlaskShown, step: number): FlaskState {
  if (step <= 0) return flask.start;
  return flask.steps[Math.min(step, flask.steps.length) - 1] ?? flask.start;
}

/** How a show is drawn. */
export interface DrawingOptions {
  /** Number of the step shown; the last one when left out. */
  readonly step?: number;
  /** Start of the ids inside; needed when one page holds several drawings. */
  readonly id?: string;
  /** English when left out. */
  readonly language?: Language;
}

/**
 * The flasks of a show side by side as one SVG picture, each with its name, its colour in words and its figures, so
 * that nobody depends on seeing the colour.
 */
export function flasksSvg(show: FlaskShow, options: DrawingOptions = {}): string {
  return `${flasksDrawing(show, options).html.replaceAll(/\n\s*/g, "\n").trim()}\n`;
}

/** The same picture as safe HTML, to stand in a page. */
export function flasksDrawing(show: FlaskShow, options: DrawingOptions = {}): SafeHtml {
  const width = CELL_WIDTH * show.flasks.length;
  const height = FLASK_HEIGHT + 114;
  const cells = show.flasks.map((flask, i) => cell(flask, i, `${options.id ?? "liquid"}-${i}`, options));
  const { language = ENGLISH } = options;
  const title = language.page(show.title ?? "Flasks side by side");
  const said = show.flasks
    .map(
      (flask) =>
        `${language.page(flask.name)}: ${liquidText(stateAt(flask, options.step ?? Infinity), language)}`,
    )
    .join("; ");
  return html`<svg
    xmlns="http://www.w3.org/2000/svg"
    viewBox="0 0 ${width} ${height}"
    width="${width}"
    height="${height}"
    role="img"
    aria-label="${title}"
    font-family="system-ui, sans-serif"
  >
    <title>${title}</title>
    <desc>${said}</desc>
    <rect width="${width}" height="${height}" fill="#ffffff" />
    ${cells}
  </svg>`;
}

function cell(
  flask: FlaskShown,
  i: number,
  id: string,
  { step = Infinity, language = ENGLISH }: DrawingOptions,
): SafeHtml {
  const say = sayIn(language);
  const state = stateAt(flask, step);
  const middle = CELL_WIDTH / 2;
  const name = lines(language.page(flask.name), 24).slice(0, 2);
  const look = lines(liquidText(state, language), 26).slice(0, 3);
  const text = (line: string, y: number, style: string): SafeHtml =>
    html`<text x="${middle}" y="${y}" text-anchor="middle" fill="#111827" ${{ html: style }}>${line}</text>`;
  const under = FLASK_HEIGHT + 22;
  return html`<g transform="translate(${i * CELL_WIDTH} 0)">
    ${name.map((line, k) => text(line, 18 + 16 * k, 'font-size="14" font-weight="600"'))}
    <g transform="translate(${(CELL_WIDTH - 120) / 2} 38)">${flaskShape(state, id)}</g>
    ${look.map((line, k) => text(line, under + 16 * k, 'font-size="13"'))}
    ${text(say("lightness {value}", { value: lightnessText(state, say) }), under + 54, 'font-size="12"')}
    ${text(`pH ${language.figures.pHText(state.pH)}`, under + 70, 'font-size="12"')}
    ${state.colour.inGamut ? nothing : text(say("stronger than a screen can show"), under + 84, 'font-size="11"')}
  </g>`;
}

/** Lightness of 100, with what nine in ten draws keep within. */
function lightnessText({ colour, band }: FlaskState, say: Say): string {
  const central = Math.round(colour.L);
  if (band === null) return String(central);
  const [low, high] = [Math.round(band.darkest.L), Math.round(band.lightest.L)];
  return low === high ? String(central) : `${central} (${say("{low} to {high}", { low, high })})`;
}
