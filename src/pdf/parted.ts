import { usualLength } from "./letter-widths.ts";
import type { Line, Piece } from "./lines.ts";

/**
 * Gaps of less than six tenths of a letter come as a blank within one text: the words of a name, but also the cells of a
 * narrow table. Where they part cells, words stand above one another in line after line, whatever their length.
 */

/** Lines in which words have to stand above one another, also as a share of those from the first to the last; how near [letters]. */
const FEWEST_LINES = 3;
const MOST_LINES = 0.7;
const ABOVE = 0.2;
/** How near a word has to stand to such a place to be of that column [letters]: where it stands within a text is reckoned. */
const NEAR = 0.3;
/** How far apart what comes before them has to begin or end [letters]: words behind equal ones stand above one another too. */
const SPREAD = 0.4;
/** Share of a table's lines that may have a word across a gap between columns, and by how much it reaches in [letters]. */
const MOST_ACROSS = 0.1;
const EDGE = 0.1;
/** From which share of the usual letters on a line is a title. */
const TITLE = 1.2;
/** From which gap on [letters] two pieces are drawn apart, and where in it a gap between columns is looked for. */
const DRAWN_APART = 0.05;
const SHARES = [0.25, 0.5, 0.75];
/** Words of a page from which on it is no sheet, and is left as it is: a dense sheet has some hundreds. */
const MOST_WORDS = 4000;
/** A result, with the sign before it. */
const RESULT = /^(?:[<>≤≥~] ?)?\d[\d.,]*$/;
/** Blanks between words; a sign belongs to the number behind it. */
const BLANKS = /(?<!(?:^|\s)[<>≤≥~])\s+/;

/** A word of a piece, where it begins and ends. */
interface Word {
  readonly text: string;
  readonly x: number;
  readonly right: number;
  /** The word before it in the line; null for the first of a line. */
  readonly before: Word | null;
  readonly line: number;
  readonly size: number;
}

/** Lines with pieces that hold several cells parted where the columns of the page are. */
export function parted(lines: readonly Line[]): readonly Line[] {
  const scale = fontScales(lines);
  const words = lines.map((line, i) => {
    let before: Word | null = null;
    return line.pieces.map((piece) => {
      const found = wordsOf(piece, scale(piece), i, before);
      before = found.at(-1) ?? before;
      return found;
    });
  });
  const all = words.flat(2);
  if (all.length > MOST_WORDS) return lines;
  const begins = columnPlaces(all, all, ({ x }) => x);
  const results = all.filter(({ text }) => RESULT.test(text));
  const ends = columnPlaces(results, all, ({ right }) => right);
  const inTable = tableOfWords(all, begins, ends);
  const isColumn: Judge = (word, start) => {
    const { before } = word;
    if (before === null) return false;
    const fewest = start === -Infinity && endsColumn(ends, before) ? 1 : FEWEST_LINES - 1;
    if (!hasNeighbours(inTable, word, start, (before.right + word.x) / 2, fewest)) return false;
    const stands = near(begins, word.x, word.size) || endsColumn(ends, word) || endsColumn(ends, before);
    // "1 234" is one number unless the first of them stands in a column of its own.
    const alone =
      !RESULT.test(word.text) ||
      !RESULT.test(before.text) ||
      near(begins, before.x, before.size) ||
      endsColumn(ends, before);
    return stands && alone && isClear(inTable, (before.right + word.x) / 2);
  };
  const tableLines = new Set(inTable.map(({ line }) => line));
  const isBehindGap: Judge = (word, start) => {
    const { before } = word;
    if (before === null || !tableLines.has(word.line)) return false;
    const gap = word.x - before.right;
    return SHARES.map((share) => before.right + share * gap).some(
      (place) => isClear(inTable, place) && hasNeighbours(inTable, word, start, place, FEWEST_LINES - 1),
    );
  };
  return lines.map((line, i) => ({
    ...line,
    pieces: line.pieces.flatMap((piece, j) => {
      const found = words[i]![j]!;
      return split(markedBehindGap(piece, found, isColumn, isBehindGap), found, isColumn);
    }),
  }));
}

/** Whether a word begins a cell, where what would stand to its left begins at `start`. */
type Judge = (word: Word, start: number) => boolean;

const middle = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 1;

/** By font, how much longer its words are than usual: the middle one of those that stand alone. */
function fontScales(lines: readonly Line[]): (piece: Piece) => number {
  const byFont = new Map<string, number[]>();
  for (const { pieces } of lines)
    for (const { text, font, x, right, size } of pieces) {
      if (/\s/.test(text.trim())) continue;
      const scales = byFont.get(font) ?? [];
      byFont.set(font, scales);
      scales.push((right - x) / (size * usualLength(text.trim())));
    }
  const scales = new Map([...byFont].map(([font, values]) => [font, middle(values)]));
  return ({ font, size }) => size * (scales.get(font) ?? 1);
}

/** The words of a piece with their places: from its left end, what is left over shared among the gaps. */
function wordsOf(piece: Piece, scale: number, line: number, first: Word | null): readonly Word[] {
  const texts = piece.text.trim().split(BLANKS);
  const lengths = texts.map((text) => usualLength(text) * scale);
  const sum = lengths.reduce((total, length) => total + length, 0);
  const gap = texts.length < 2 ? 0 : Math.max(0, (piece.right - piece.x - sum) / (texts.length - 1));
  let x = piece.x;
  let before = first;
  return texts.map((text, i): Word => {
    const right = i === texts.length - 1 ? piece.right : x + lengths[i]!;
    const word: Word = { text, x, right, before, line, size: piece.size };
    before = word;
    x = right + gap;
    return word;
  });
}

/**
 * Places where words of several lines begin or end, though what stands before them begins or ends in different ones; and
 * most lines from the first to the last of these have one there, as the lines of a table do and those of a text do not.
 *
 * @param words those that may stand above one another, @param all every word of the page
 */
function columnPlaces(
  words: readonly Word[],
  all: readonly Word[],
  placeOf: (word: Word) => number,
): readonly number[] {
  const reach = reachOfLines(all);
  const inOrder = words.filter(({ before }) => before !== null).sort((a, b) => placeOf(a) - placeOf(b));
  const places: number[] = [];
  for (let i = 0; i < inOrder.length; i++) {
    const first = inOrder[i]!;
    const group: Word[] = [];
    for (let k = i; k < inOrder.length && placeOf(inOrder[k]!) - placeOf(first) <= ABOVE * first.size; k++) {
      group.push(inOrder[k]!);
    }
    const lines = [...new Set(group.map(({ line }) => line))];
    if (lines.length < FEWEST_LINES) continue;
    const spread = (ofBefore: (before: Word) => number): number => {
      const found = group.map(({ before }) => ofBefore(before!));
      return Math.max(...found) - Math.min(...found);
    };
    if (
      Math.max(
        spread(({ x }) => x),
        spread(({ right }) => right),
      ) <
      SPREAD * first.size
    )
      continue;
    const place = placeOf(first) - EDGE * first.size;
    const between = reach.filter(
      ({ line, x, right }) =>
        line >= Math.min(...lines) && line <= Math.max(...lines) && x < place && place < right,
    );
    if (lines.length >= MOST_LINES * between.length) places.push(...group.map(placeOf));
  }
  return places.sort((a, b) => a - b);
}

/** Where the words of each line begin and end. */
function reachOfLines(all: readonly Word[]): readonly Pick<Word, "line" | "x" | "right">[] {
  const reach = new Map<number, { readonly line: number; readonly x: number; readonly right: number }>();
  for (const { line, x, right } of all) {
    const known = reach.get(line);
    reach.set(line, {
      line,
      x: Math.min(x, known?.x ?? Infinity),
      right: Math.max(right, known?.right ?? -Infinity),
    });
  }
  return [...reach.values()];
}

const near = (places: readonly number[], place: number, size: number): boolean =>
  places.some((one) => Math.abs(one - place) <= NEAR * size);

const endsColumn = (ends: readonly number[], word: Word): boolean =>
  RESULT.test(word.text) && near(ends, word.right, word.size);

/** Words of the lines that have some in columns. */
function tableOfWords(
  words: readonly Word[],
  begins: readonly number[],
  ends: readonly number[],
): readonly Word[] {
  const lines = new Set(
    words.filter((word) => near(begins, word.x, word.size) || endsColumn(ends, word)).map(({ line }) => line),
  );
  return words.filter(({ line }) => lines.has(line));
}

/** Whether hardly a line of a table has a word across a place: a gap between columns runs through all of them. */
function isClear(inTable: readonly Word[], place: number): boolean {
  // A title over a table, in larger letters, is none of its lines.
  const usual = middle(inTable.map(({ size }) => size));
  const across = inTable.filter(
    ({ x, right, size }) => x + EDGE * size < place && place < right - EDGE * size && size <= TITLE * usual,
  );
  const lines = new Set(inTable.map(({ line }) => line));
  return new Set(across.map(({ line }) => line)).size <= MOST_ACROSS * lines.size;
}

/**
 * Whether other lines have a cell above or below what would stand to the left of a place, and one below the word too. A
 * word in the midst of a cell that is set to the middle may stand below a column by chance: then nothing else stands
 * where the words before it do.
 *
 * @param start where the cell to the left begins; -Infinity where the two are drawn apart
 * @param fewest lines that have both
 */
function hasNeighbours(
  inTable: readonly Word[],
  word: Word,
  start: number,
  place: number,
  fewest: number,
): boolean {
  const edge = EDGE * word.size;
  const left = new Set<number>();
  const right = new Set<number>();
  for (const other of inTable) {
    if (other.line === word.line) continue;
    if (other.right < place + edge && other.right > start) left.add(other.line);
    if (other.x > place - edge && other.x < word.right) right.add(other.line);
  }
  return [...left].filter((line) => right.has(line)).length >= fewest;
}

/**
 * A piece marked as the beginning of a cell where it stands near the one before it and a gap between columns runs there
 * all the same, as between a figure and its unit, or between headings that fill their columns.
 */
function markedBehindGap(piece: Piece, words: readonly Word[], isColumn: Judge, isBehindGap: Judge): Piece {
  const [word] = words;
  const before = word?.before;
  if (word === undefined || before === undefined || before === null) return piece;
  if (piece.script !== "none" || isOpen(before.text)) return piece;
  const apart = word.x - before.right > DRAWN_APART * word.size;
  return apart && (isColumn(word, -Infinity) || isBehindGap(word, -Infinity))
    ? { ...piece, beginsCell: true }
    : piece;
}

function split(piece: Piece, words: readonly Word[], isColumn: Judge): readonly Piece[] {
  if (words.length < 2) return [piece];
  const parts: Piece[] = [];
  words.forEach((word) => {
    const last = parts.at(-1);
    if (last === undefined || (isColumn(word, last.x) && !isOpen(last.text))) {
      const beginsCell = last === undefined ? piece.beginsCell : true;
      const script = last === undefined ? piece.script : "none";
      parts.push({ ...piece, text: word.text, x: word.x, right: word.right, beginsCell, script });
    } else parts[parts.length - 1] = { ...last, text: `${last.text} ${word.text}`, right: word.right };
  });
  return parts.length === 1 ? [piece] : parts;
}

/** Whether a text ends within brackets, which no column parts. */
function isOpen(text: string): boolean {
  return text.lastIndexOf("(") > text.lastIndexOf(")") || text.lastIndexOf("[") > text.lastIndexOf("]");
}
