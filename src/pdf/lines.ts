import type { PlacedText } from "./placed-text.ts";

/** A piece on its line, with the small letters that hang on it. */
export interface Piece extends PlacedText {
  /** How it hangs on the piece before it, in smaller letters than that one; "none" for all others. */
  readonly script: "none" | "raised" | "lowered" | "level";
}

/** Pieces with one baseline, from left to right. */
export interface Line {
  readonly y: number;
  readonly size: number;
  readonly pieces: readonly Piece[];
}

/** Baselines that differ by less than this share of the smaller letters are one line. */
const ONE_LINE = 0.35;
/** A raised or lowered piece has letters of at most this share of those it hangs on, and begins where they end. */
const SMALL = 0.9;
const TOUCHING = 0.3;
/** How far a small piece is raised or lowered at most, as a share of the letters it hangs on. */
const RAISED = 0.75;
const LOWERED = 0.5;
/** A small piece moved by less than this stands on the line. */
const MOVED = 0.1;

/** Pieces of a page as lines from top to bottom, raised and lowered letters put back to what they hang on. */
export function linesOf(placed: readonly PlacedText[]): readonly Line[] {
  const bases = basesOf(placed);
  const lines: { y: number; size: number; pieces: Piece[] }[] = [];
  const lineOf = new Map<PlacedText, (typeof lines)[number]>();
  const standing = placed.filter((piece) => !bases.has(piece)).sort((a, b) => a.y - b.y);
  for (const piece of standing) {
    let line = lines.findLast(
      ({ y, size }) => Math.abs(piece.y - y) <= ONE_LINE * Math.min(piece.size, size),
    );
    if (line === undefined) {
      line = { y: piece.y, size: piece.size, pieces: [] };
      lines.push(line);
    }
    line.pieces.push({ ...piece, script: "none" });
    line.size = Math.max(line.size, piece.size);
    lineOf.set(piece, line);
  }
  for (const [piece, base] of bases) {
    const up = base.y - piece.y;
    const script = up > MOVED * base.size ? "raised" : up < -MOVED * base.size ? "lowered" : "level";
    lineOf.get(base)?.pieces.push({ ...piece, script });
  }
  for (const { pieces } of lines) pieces.sort((a, b) => a.x - b.x);
  return lines.sort((a, b) => a.y - b.y);
}

/** Small pieces that hang on another one, each with the full-sized piece it hangs on. */
function basesOf(placed: readonly PlacedText[]): ReadonlyMap<PlacedText, PlacedText> {
  const bases = new Map<PlacedText, PlacedText>();
  const fromLeft = [...placed].sort((a, b) => a.x - b.x);
  for (const piece of fromLeft) {
    for (const before of fromLeft) {
      if (before === piece) continue;
      const base = bases.get(before) ?? before;
      if (piece.size > SMALL * base.size) continue;
      const gap = piece.x - before.right;
      const up = base.y - piece.y;
      if (Math.abs(gap) > TOUCHING * base.size || up > RAISED * base.size || -up > LOWERED * base.size)
        continue;
      bases.set(piece, base);
      break;
    }
  }
  return bases;
}
