import type { DecimalMark } from "../../units/index.ts";
import { cellsByBlanks } from "./align.ts";
import type { Span } from "./align.ts";

/** A line of a sheet, split into cells. */
export interface SheetRow {
  /** Line of the text, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
  /** True where commas part the cells, so that a decimal comma may have parted a number. */
  readonly byCommas?: true;
  /** Where each cell stands, in a line set by blanks. */
  readonly spans?: readonly Span[];
}

const SEPARATORS = ["\t", ";", "|", ","] as const;
type Separator = (typeof SEPARATORS)[number];

/**
 * Splits the text of a sheet into rows of cells.
 *
 * Line ends may be CRLF, LF or bare CR, mixed. The separator (tab, semicolon, bar, comma) is the one that parts the
 * most lines alike; without one, cells are parted by two spaces or more. Quoted cells may hold separators and line
 * ends.
 */
export function rowsOf(text: string): readonly SheetRow[] {
  const clean = text.replace(/^\uFEFF/, "").replace(/\r\n?/g, "\n");
  const separator = separatorOf(clean);
  if (separator !== null) return separatedRows(clean, separator);
  return clean.split("\n").flatMap((line, index): readonly SheetRow[] => {
    const set = cellsByBlanks(line);
    return set.cells.length > 0 ? [{ line: index + 1, ...set }] : [];
  });
}

/** The separator that parts the sheet, or null when none does. */
function separatorOf(text: string): Separator | null {
  const lines = text
    .replace(/"[^"]*"/g, '""')
    .split("\n")
    .filter((line) => line.trim() !== "");
  // Columns set by blanks are no cells between commas: the commas there are of decimals and of names.
  const aligned = lines.filter((line) => /[^\s,]\s{2,}[^\s,]/.test(line)).length * 2 >= lines.length;
  let best: Separator | null = null;
  let most = 0;
  for (const separator of SEPARATORS) {
    if (separator === "," && aligned) continue;
    const counts = new Map<number, number>();
    for (const line of lines) {
      const n = separatorsIn(line, separator);
      if (n > 0) counts.set(n, (counts.get(n) ?? 0) + 1);
    }
    // Lines that agree on the number of cells; a wide table may have only two of them.
    const agreeing = Math.max(0, ...[...counts].map(([n, times]) => times * Math.min(n, 3)));
    if (agreeing > most) {
      most = agreeing;
      best = separator;
    }
  }
  const found = best;
  if (found === null) return null;
  const parted = lines.filter((line) => separatorsIn(line, found) > 0).length;
  return parted * 2 >= lines.length ? found : null;
}

/**
 * How often a line is parted by a separator. A comma between digits is as likely a decimal mark, and one before a blank
 * and a letter part of a name ("Iron, total"): they count only beside a comma that can be neither.
 */
function separatorsIn(line: string, separator: Separator): number {
  if (separator === "," && !/(?:^|\D),(?!\s*$)(?!\s+\p{L})|,(?=[^\d\s])/u.test(line)) return 0;
  return line.split(separator).length - 1;
}

/** Rows of text with a separator, quotes doubled inside quotes. @source RFC 4180 (2005), sections 2.5–2.7 */
function separatedRows(text: string, separator: Separator): readonly SheetRow[] {
  const rows: SheetRow[] = [];
  const byCommas = separator === "," ? { byCommas: true as const } : {};
  let cells: string[] = [];
  let cell = "";
  let quoted = false;
  let line = 1;
  let startLine = 1;
  const endCell = (): void => {
    cells.push(cell.trim());
    cell = "";
  };
  const endRow = (): void => {
    endCell();
    if (cells.some((c) => c !== "")) rows.push({ line: startLine, cells, ...byCommas });
    cells = [];
    startLine = line;
  };
  for (let i = 0; i < text.length; i++) {
    const char = text[i]!;
    if (char === "\n") line++;
    if (quoted) {
      if (char !== '"') cell += char;
      else if (text[i + 1] === '"') {
        cell += '"';
        i++;
      } else quoted = false;
    } else if (char === '"' && cell.trim() === "") {
      quoted = true;
      cell = "";
    } else if (char === separator) endCell();
    else if (char === "\n") endRow();
    else cell += char;
  }
  if (cell !== "" || cells.length > 0) endRow();
  return rows;
}

/**
 * The decimal mark of a sheet: the mark of any number that can be read in one way only. Null when no number tells, or
 * when numbers contradict one another.
 */
export function decimalMarkOf(rows: readonly SheetRow[]): DecimalMark | null {
  let point = false;
  let comma = false;
  for (const { cells } of rows) {
    for (const cell of cells) {
      for (const [, number = ""] of cell.matchAll(
        /(?:^|[\s<>≤≥=:])(\d+(?:[.,]\d+)+)(?=$|[\s%]|[a-zµ°])/giu,
      )) {
        const mark = soleMark(number);
        if (mark === ".") point = true;
        if (mark === ",") comma = true;
      }
    }
  }
  return point === comma ? null : point ? "." : ",";
}

/** The decimal mark that a number shows, or null when it could also be a group mark. */
function soleMark(number: string): DecimalMark | null {
  const marks = number.replace(/\d/g, "");
  const last = marks.at(-1) as DecimalMark;
  if (marks.length > 1) return marks[0] !== last ? last : last === "." ? "," : ".";
  const [whole = "", part = ""] = number.split(last);
  return part.length === 3 && whole.length <= 3 && !whole.startsWith("0") ? null : last;
}
