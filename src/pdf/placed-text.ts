/** A piece of text on a page as it is read, turned so that its lines run from left to right [points]. */
export interface PlacedText {
  readonly text: string;
  /** Left end. */
  readonly x: number;
  /** Right end. */
  readonly right: number;
  /** Baseline, counted downwards. */
  readonly y: number;
  /** Size of the letters. */
  readonly size: number;
  /** Name of the font in the file. */
  readonly font: string;
  /** The piece of content it belongs to where the file says so, as those of a browser do for each cell; else "". */
  readonly mark: string;
  /** True where it is known to begin a cell, however near it stands to the one before. */
  readonly beginsCell: boolean;
}

/** A piece of text as a PDF holds it: where it starts, which way it runs, and how long it is [points]. */
export interface DrawnText {
  readonly text: string;
  /** Start of the baseline, y counted upwards. */
  readonly x: number;
  readonly y: number;
  /** Direction of the baseline, anticlockwise from the right [rad]. */
  readonly angle_rad: number;
  /** Length along the baseline. */
  readonly width: number;
  readonly size: number;
  readonly font: string;
  readonly mark: string;
}

/** The text of a page, turned upright, and what stands across it, such as a stamp on the slant. */
export interface UprightPage {
  readonly placed: readonly PlacedText[];
  readonly aslant: readonly string[];
}

/** Text that deviates by less than this from the direction of the page is part of its lines [rad]. */
const SLANT_rad = (10 * Math.PI) / 180;

/** The micro sign instead of the Greek letter it is drawn with, no-break and thin spaces as plain ones, soft hyphens only where they end a piece, control signs gone. */
function plainText(text: string): string {
  return (
    text
      .replace(/\u03BC/g, "\u00B5")
      .replace(/[\u00A0\u2000-\u200A\u202F\u205F\u3000]/g, " ")
      // eslint-disable-next-line no-control-regex -- left behind by fonts that map nothing to them
      .replace(/[\u0000-\u001F\u007F\u200B-\u200F\u2060\uFEFF]|\u00AD(?!\s*$)/g, "")
      .replace(/\u00AD\s*$/, "-")
  );
}

/**
 * Turns a page so that most of its letters stand upright. The direction is taken from the letters themselves, since a
 * table may lie across a page that is not marked as turned, and a scanned page may be a degree askew.
 */
export function uprightPage(drawn: readonly DrawnText[]): UprightPage {
  const pieces = drawn
    .map((piece) => ({ ...piece, text: plainText(piece.text) }))
    .filter((piece) => piece.text.trim() !== "" && Number.isFinite(piece.x + piece.y + piece.width));
  const turn = directionOf(pieces);
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const placed: PlacedText[] = [];
  const aslant: string[] = [];
  for (const { text, x, y, angle_rad, width, size, font, mark } of pieces) {
    if (Math.abs(between(angle_rad, turn)) > SLANT_rad) {
      aslant.push(text.trim());
      continue;
    }
    const left = x * cos + y * sin;
    const place = { x: left, right: left + width, y: x * sin - y * cos };
    placed.push({ text, ...place, size, font, mark, beginsCell: false });
  }
  return { placed: withoutDoubles(placed), aslant };
}

/** The angle from b to a, between -π and π. */
function between(a: number, b: number): number {
  return Math.atan2(Math.sin(a - b), Math.cos(a - b));
}

/** The direction that most letters run in: the middle one of the quarter that holds most letters. */
function directionOf(pieces: readonly DrawnText[]): number {
  const letters = [0, 0, 0, 0];
  const quarter = (angle: number): number => ((Math.round(angle / (Math.PI / 2)) % 4) + 4) % 4;
  for (const { angle_rad, text } of pieces) letters[quarter(angle_rad)]! += text.trim().length;
  const most = letters.indexOf(Math.max(...letters));
  const base = (most * Math.PI) / 2;
  const off = pieces
    .filter(({ angle_rad }) => quarter(angle_rad) === most)
    .map(({ angle_rad, text }) => ({ off: between(angle_rad, base), letters: text.trim().length }))
    .sort((a, b) => a.off - b.off);
  let left = letters[most]! / 2;
  for (const one of off) {
    left -= one.letters;
    if (left <= 0) return base + one.off;
  }
  return base;
}

/** Bold letters are at times the same text drawn twice, a hair apart. */
function withoutDoubles(placed: readonly PlacedText[]): readonly PlacedText[] {
  const seen = new Map<string, PlacedText[]>();
  return placed.filter((piece) => {
    const alike = seen.get(piece.text) ?? [];
    const hair = 0.15 * piece.size;
    if (alike.some(({ x, y }) => Math.abs(x - piece.x) < hair && Math.abs(y - piece.y) < hair)) return false;
    seen.set(piece.text, [...alike, piece]);
    return true;
  });
}
