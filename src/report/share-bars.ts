import type { ActiveVerdict } from "../agronomy/index.ts";
import { fill, sayIn } from "../words/index.ts";
import type { Language } from "../words/index.ts";
import { html, nothing } from "./html.ts";
import type { SafeHtml } from "./html.ts";

const WIDTH = 720;
const LEFT = 90;
const RIGHT = 270;
const ROW = 26;
/** Held parts under this are not drawn. */
const LEAST_DRAWN = 0.005;

/** Textures of what holds an active; each can be told from the others without colour. */
const TEXTURES: readonly (readonly [string, string])[] = [
  ["calcium", "M-1 1 L1 -1 M0 6 L6 0 M5 7 L7 5"],
  ["magnesium", "M3 0 V6"],
  ["iron", "M0 0 L6 6 M0 6 L6 0"],
  ["", "M0 3 H6"],
];

/** Free and held shares of one active as bars, in black and white; null answers are left to the words. */
export function shareBars(active: ActiveVerdict, language: Language): SafeHtml {
  const { answers, plan } = language.words;
  const say = sayIn(language);
  const rows = (
    [
      [plan.inTheTank, active.inTank],
      [plan.onTheLeaf, active.onLeaf],
    ] as const
  ).flatMap(([where, { free, heldBy }]) => (free === null ? [] : [{ where, free, heldBy }]));
  if (rows.length === 0) return nothing;
  const id = `bars-${active.active}`;
  const title = rows
    .map(({ where, free, heldBy }) => {
      const share = fill(answers.free, { share: language.figures.inHundred(free) });
      const held = heldWords(heldBy, language);
      return held === ""
        ? say("{where}: {share}.", { where, share })
        : say("{where}: {share}; held: {held}.", { where, share, held });
    })
    .join(" ");
  return html`<svg
    role="img"
    viewBox="0 0 ${WIDTH} ${ROW * rows.length}"
    width="${WIDTH}"
    height="${ROW * rows.length}"
  >
    <title>${title}</title>
    <defs>
      ${TEXTURES.map(
        ([, draw], i) =>
          html`<pattern id="${id}-${i}" width="6" height="6" patternUnits="userSpaceOnUse">
            <path d="${draw}" stroke="#000" stroke-width="1.2" fill="none" />
          </pattern>`,
      )}
    </defs>
    ${rows.map((row, i) => rowHtml(row, ROW * i, id, language))}
  </svg>`;
}

function rowHtml(
  row: { readonly where: string; readonly free: number; readonly heldBy: Readonly<Record<string, number>> },
  y: number,
  id: string,
  language: Language,
): SafeHtml {
  const width = WIDTH - LEFT - RIGHT;
  let from = row.free;
  const parts = heldParts(row.heldBy).map(([holder, share]) => {
    const x = LEFT + width * from;
    from += share;
    const texture = TEXTURES.findIndex(([metal]) => holder.includes(metal));
    return html`<rect
      x="${x.toFixed(1)}"
      y="${y + 4}"
      width="${(width * share).toFixed(1)}"
      height="${ROW - 8}"
      fill="url(#${id}-${texture})"
      stroke="#000"
    />`;
  });
  const held = heldWords(row.heldBy, language);
  const free = fill(language.words.answers.free, { share: language.figures.inHundred(row.free) });
  return html`<text x="0" y="${y + 18}">${row.where}</text>
    <rect x="${LEFT}" y="${y + 4}" width="${width}" height="${ROW - 8}" fill="#fff" stroke="#000" />
    ${parts}
    <text x="${LEFT + 6}" y="${y + 18}">${row.free < 0.15 ? "" : free}</text>
    <text x="${LEFT + width + 8}" y="${y + 18}">${held}</text>`;
}

function heldParts(heldBy: Readonly<Record<string, number>>): readonly (readonly [string, number])[] {
  return Object.entries(heldBy)
    .filter(([, share]) => share >= LEAST_DRAWN)
    .sort(([, a], [, b]) => b - a);
}

function heldWords(heldBy: Readonly<Record<string, number>>, { phrases, figures }: Language): string {
  return heldParts(heldBy)
    .map(([holder, share]) => `${phrases.name(holder)} ${figures.perHundred(share)}`)
    .join(", ");
}
