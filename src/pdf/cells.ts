import type { Line, Piece } from "./lines.ts";

/** A cell of a line or of a row, and where it stands [points]. */
export interface Cell {
  readonly text: string;
  readonly x: number;
  readonly right: number;
  /** Baseline of its first line and of its last one. */
  readonly top: number;
  readonly bottom: number;
  readonly size: number;
}

/** A gap wider than this share of the letters parts two cells; one wider than the second parts two words. */
const CELL_GAP = 0.6;
const WORD_GAP = 0.12;
/** Pieces that the file itself tells apart are two cells from this gap on, unless a blank is written between them. */
const MARKED_GAP = 0.08;
/** A limit sign belongs to the number after it, even where it stands in a narrow column of its own. */
const SIGN_GAP = 6;

const RAISED_SIGNS: Readonly<Record<string, string>> = {
  ...Object.fromEntries([..."⁰¹²³⁴⁵⁶⁷⁸⁹"].map((sign, digit) => [String(digit), sign])),
  "+": "⁺",
  "-": "⁻",
  "−": "⁻",
  "–": "⁻",
};

/** The cells of a line: words with usual gaps make one cell, a wide gap begins the next. */
export function cellsOf({ y, pieces }: Line): readonly Cell[] {
  const cells: Cell[] = [];
  let last: Piece | undefined;
  for (const piece of pieces) {
    const before = cells.at(-1);
    const gap = before === undefined ? Infinity : piece.x - before.right;
    const size = Math.max(piece.size, before?.size ?? 0);
    const parted = last !== undefined && partedFrom(last, piece, gap / size);
    last = piece;
    if (before === undefined || gap > CELL_GAP * size || parted) {
      const text = piece.text.trim();
      cells.push({ text, x: piece.x, right: piece.right, top: y, bottom: y, size: piece.size });
      continue;
    }
    const space = gap > WORD_GAP * size || /\s$/.test(before.text) || /^\s/.test(piece.text);
    const text = hung(before.text, piece, space);
    cells[cells.length - 1] = { ...before, text, right: Math.max(before.right, piece.right), size };
  }
  return withSigns(cells);
}

/** Whether a piece begins a cell although it stands near the one before it; the gap in letters. */
function partedFrom(before: Piece, piece: Piece, gap: number): boolean {
  // A limit behind a figure is a result of its own, however narrow the columns are.
  if (piece.beginsCell || (/\d\s*$/.test(before.text) && /^\s*[<>≤≥]\s*\d/.test(piece.text))) return true;
  const blank = /\s$/.test(before.text) || /^\s/.test(piece.text);
  return piece.mark !== before.mark && gap > MARKED_GAP && !blank && piece.script === "none";
}

/**
 * Text with the next piece put behind it. A raised figure stays one: as a plain figure "92" with footnote 1 would be
 * read as 921. A lowered one behind letters is part of a formula.
 */
function hung(text: string, { text: added, script }: Piece, space: boolean): string {
  const next = added.trim();
  if (script === "raised") {
    const signs = [...next].map((sign) => RAISED_SIGNS[sign]);
    if (signs.every((sign) => sign !== undefined)) return `${text.trimEnd()}${signs.join("")}`;
  }
  const parted = script !== "none" && /\d$/.test(text) && /^[\p{L}\d]/u.test(next);
  return `${text.trimEnd()}${space || parted ? " " : ""}${next}`;
}

/** Cells with "<" and the like put before the number that stands in the next one. */
function withSigns(cells: readonly Cell[]): readonly Cell[] {
  const joined: Cell[] = [];
  for (const cell of cells) {
    const before = joined.at(-1);
    const near = before !== undefined && cell.x - before.right < SIGN_GAP * cell.size;
    if (near && /^[<>≤≥]$/.test(before.text) && /^\d/.test(cell.text)) {
      joined[joined.length - 1] = { ...cell, text: `${before.text} ${cell.text}`, x: before.x };
    } else joined.push(cell);
  }
  return joined;
}
