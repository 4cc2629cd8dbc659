import { describe, expect, it } from "vitest";
import { isPdf, MOST_PAGES, readPdf } from "../../src/pdf/index.ts";
import { readSheetCells } from "../../src/water/index.ts";
import { SHEET_CELLS } from "./sheet.ts";
import { tablePuts, writePdf } from "./write-pdf.ts";

const COLUMNS = [50, 230, 300, 370];
const latin = (text: string): Uint8Array => Uint8Array.from(text, (sign) => sign.charCodeAt(0));
const textOf = (bytes: Uint8Array): string => new TextDecoder("latin1").decode(bytes);

/** Readings of a sheet with what is asked and why, without the lines they came from. */
function readingsIn(cells: readonly (readonly string[])[]) {
  return readSheetCells(cells).samples.map(({ label, sampled, entries }) => ({
    label,
    sampled,
    entries: entries.map(({ parameter, value, unit, status }) => [parameter, value, unit, status]),
  }));
}

describe("readPdf", () => {
  it.each([
    [0, 0],
    [90, 90],
  ])("gives the readings that the same cells give, page turned by %s", async (rotate, angle) => {
    const puts = tablePuts(SHEET_CELLS, COLUMNS).map((put) =>
      angle === 0 ? put : { ...put, angle, x: 800 - put.y, y: put.x },
    );
    const read = await readPdf(writePdf([puts], rotate));
    expect(read).toMatchObject({ ok: true, notes: [] });
    const expected = readingsIn(SHEET_CELLS);
    expect(expected[0]?.entries).toHaveLength(9);
    expect(read.ok && readingsIn(read.cells)).toEqual(expected);
  });

  it("reads a sheet that goes on over a page, its columns kept", async () => {
    const pages = [SHEET_CELLS.slice(0, 7), SHEET_CELLS.slice(7)].map((rows) => tablePuts(rows, COLUMNS));
    const read = await readPdf(writePdf(pages));
    expect(read.ok && readingsIn(read.cells)).toEqual(readingsIn(SHEET_CELLS));
  });

  it("reads lists side by side whose lines do not meet", async () => {
    const left = tablePuts(
      [
        ["Calcium", "92", "mg/L"],
        ["Magnesium", "31", "mg/L"],
      ],
      [50, 150, 190],
    );
    const right = tablePuts(
      [
        ["Sodium", "50", "mg/L"],
        ["pH", "7.4"],
      ],
      [320, 420, 460],
      { top: 774 },
    );
    const read = await readPdf(writePdf([[...left, ...right]]));
    expect(read.ok && readingsIn(read.cells)[0]?.entries).toEqual([
      ["calcium", "92", "mg/L", "understood"],
      ["magnesium", "31", "mg/L", "understood"],
      ["sodium", "50", "mg/L", "understood"],
      ["pH", "7.4", "", "understood"],
    ]);
  });

  it("says which pages were not read and which hold no text", async () => {
    const pages = Array.from({ length: MOST_PAGES + 2 }, (_, i) =>
      i === 1 ? [] : [{ text: `Calcium ${String(i)} mg/L`, x: 50, y: 700 }],
    );
    const read = await readPdf(writePdf(pages));
    expect(read.ok && read.cells).toHaveLength(MOST_PAGES - 1);
    expect(read.ok && read.notes.join(" ")).toContain(
      `the first ${String(MOST_PAGES)} of ${String(MOST_PAGES + 2)} pages`,
    );
    expect(read.ok && read.notes.join(" ")).toContain("Page 2 without text");
  });

  it("reads a file whose table of contents is broken", async () => {
    const bytes = latin(
      textOf(writePdf([tablePuts(SHEET_CELLS, COLUMNS)])).replace(/startxref\n\d+/, "startxref\n7"),
    );
    const read = await readPdf(bytes);
    expect(read.ok && readingsIn(read.cells)).toEqual(readingsIn(SHEET_CELLS));
  });

  it("leaves the bytes it was given as they were", async () => {
    const bytes = writePdf([tablePuts(SHEET_CELLS, COLUMNS)]);
    const before = bytes.slice();
    await readPdf(bytes);
    expect(bytes).toEqual(before);
  });
});

describe("readPdf, files that give nothing", () => {
  /** A file that asks for a password: the entry that says how it is locked, with a check that no password meets. */
  const locked = textOf(writePdf([[{ text: "Calcium 92 mg/L", x: 50, y: 700 }]])).replace(
    "/Root 1 0 R",
    `/Root 1 0 R /ID [<${"00".repeat(16)}> <${"00".repeat(16)}>] /Encrypt << /Filter /Standard /V 1 /R 2 /P -4 ` +
      `/O <${"11".repeat(32)}> /U <${"22".repeat(32)}> >>`,
  );
  it.each([
    ["a page of pictures", writePdf([[]]), "no text"],
    ["a locked file", latin(locked), "locked"],
    ["a file cut short", writePdf([tablePuts(SHEET_CELLS, COLUMNS)]).subarray(0, 200), "broken"],
    ["a head without a body", latin("%PDF-1.7\nnothing follows"), "broken"],
    ["nothing", new Uint8Array(0), "broken"],
  ])("%s", async (_what, bytes, problem) => {
    expect(await readPdf(bytes)).toEqual({ ok: false, problem });
  });

  it("knows a PDF by its head, also behind what a mail program put before it", () => {
    expect(isPdf(latin("\r\n\r\n%PDF-1.4"))).toBe(true);
    expect(isPdf(latin("Calcium 92 mg/L"))).toBe(false);
    expect(isPdf(latin(`${" ".repeat(2000)}%PDF-1.4`))).toBe(false);
  });
});
