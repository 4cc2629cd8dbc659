import { describe, expect, it } from "vitest";
import { MOST_PAGES, readPdf } from "../../src/pdf/index.ts";
import { isPdf, readSheetCells } from "../../src/water/index.ts";
import { SHEET_CELLS } from "./sheet.ts";
import { tablePuts, writePdf } from "./write-pdf.ts";
import type { Put } from "./write-pdf.ts";

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

describe("readPdf, narrow tables without lines", () => {
  /** Lengths of the letters of Helvetica that the tables below are made of, in thousandths. */
  const LENGTHS: Readonly<Record<string, number>> = {
    " ": 278,
    ".": 278,
    ",": 278,
    "/": 278,
    "(": 333,
    ")": 333,
  };
  const HELVETICA =
    "0123456789abdeghnopquLµ:556 ijl:222 ftI:278 r-:333 ckszvxy:500 m:833 ABEKPSVXY:667 CDHNRUw:722 GOQ:778 M:833 FTZ:611 J:500 °:400 <:584 W:944";
  const widthOf = (text: string): number =>
    [...text].reduce((sum, sign) => {
      const listed = HELVETICA.split(" ").find((group) => group.split(":")[0]!.includes(sign));
      return sum + (LENGTHS[sign] ?? Number(listed?.split(":")[1]));
    }, 0) / 1000;
  const SIZE = 10;
  /** A table whose widest cells stand a third of a letter apart; "r" for columns whose cells end above one another. */
  function narrow(rows: readonly (readonly string[])[], align: string, marked = false): readonly Put[] {
    const widths = [...align].map((_, j) => Math.max(...rows.map((row) => SIZE * widthOf(row[j] ?? ""))));
    const starts = widths.map(
      (_, j) => 50 + widths.slice(0, j).reduce((sum, width) => sum + width + SIZE / 3, 0),
    );
    return rows.flatMap((row, i) =>
      row.flatMap((text, j): readonly Put[] => {
        const free = align[j] === "r" ? widths[j]! - SIZE * widthOf(text) : 0;
        return text === "" ? [] : [{ text, x: starts[j]! + free, y: 780 - 14 * i, size: SIZE, marked }];
      }),
    );
  }
  const ROWS = [
    ["Parameter", "Result", "Unit", "Method"],
    ["Calcium", "92", "mg/L", "ICP-OES"],
    ["Magnesium", "31", "mg/L", "ICP-OES"],
    ["Total hardness as CaCO3", "357", "mg/L", "calculated"],
    ["Alkalinity (as CaCO3)", "265", "mg/L", "titration"],
    ["Iron, total", "< 0,05", "mg/L", "ICP-OES"],
    ["Conductivity at 25 °C", "780", "µS/cm", "probe"],
    ["Sodium", "1 234", "mg/L", "ICP-OES"],
    ["pH", "7.6", "", "probe"],
  ];
  const EXPECTED = [
    ["calcium", "92", "mg/L", "understood"],
    ["magnesium", "31", "mg/L", "understood"],
    ["hardness", "357", "mg/L as CaCO3", "understood"],
    ["alkalinity", "265", "mg/L as CaCO3", "understood"],
    ["iron", "< 0,05", "mg/L", "understood"],
    ["conductivity", "780", "µS/cm", "understood"],
    ["sodium", "1 234", "mg/L", "understood"],
    ["pH", "7.6", "", "understood"],
  ];
  const entriesOf = async (...pages: readonly (readonly Put[])[]) => {
    const read = await readPdf(writePdf(pages));
    return read.ok ? readingsIn(read.cells).map(({ label, entries }) => ({ label, entries })) : read;
  };

  it.each([
    ["left", "llll", false],
    ["numbers right", "lrll", false],
    ["left, cells told apart by the file", "llll", true],
    ["numbers right, cells told apart by the file", "lrll", true],
  ])("reads cells a third of a letter apart, %s", async (_how, align, marked) => {
    expect(await entriesOf(narrow(ROWS, align, marked))).toEqual([{ label: null, entries: EXPECTED }]);
  });

  it("reads them on a page that lies on its side", async () => {
    const turned = narrow(ROWS, "lrll").map((put) => ({ ...put, angle: 90, x: 800 - put.y, y: put.x }));
    expect(await entriesOf(turned)).toEqual([{ label: null, entries: EXPECTED }]);
  });

  it("is done with a page full of words in a moment", async () => {
    const dense = Array.from({ length: 250 }, (_, i) => ({
      text: Array.from({ length: 60 }, (__, j) => `w${String((i * j) % 97)}`).join(" "),
      x: 20,
      y: 830 - 3 * i,
      size: 2,
    }));
    const before = process.cpuUsage().user;
    await readPdf(writePdf([dense]));
    expect((process.cpuUsage().user - before) / 1e6).toBeLessThan(5);
  });

  it("reads them with the unit before, the method first, or a limit beside", async () => {
    const methodFirst = ROWS.map(([name, value, unit, method]) => [method!, name!, unit!, value!]);
    expect(await entriesOf(narrow(methodFirst, "lllr"))).toEqual([{ label: null, entries: EXPECTED }]);
    const withLimit = ROWS.map(([name, value, unit, method], i) => [
      name!,
      value!,
      unit!,
      i === 0 ? "LOR" : "0.01",
      method!,
    ]);
    expect(await entriesOf(narrow(withLimit, "lrlrl"))).toEqual([{ label: null, entries: EXPECTED }]);
  });

  it("reads two samples side by side, each with its own", async () => {
    const two = ROWS.map(([name, value, unit], i) => [
      name!,
      unit!,
      i === 0 ? "Bore 1" : value!,
      i === 0 ? "Bore 2" : value!.replace("92", "88").replace("7.6", "7.9"),
    ]);
    const second = EXPECTED.map(([name, value, ...rest]) => [
      name,
      value!.replace("92", "88").replace("7.6", "7.9"),
      ...rest,
    ]);
    const expected = [
      { label: "Bore 1", entries: EXPECTED },
      { label: "Bore 2", entries: second },
    ];
    expect(await entriesOf(narrow(two, "llrr"))).toEqual(expected);
    expect(await entriesOf(narrow(two, "llll"))).toEqual(expected);
  });

  it("reads them under a letterhead, over a foot, and with the headings again on the next page", async () => {
    const head = [
      { text: "Water and Soil Laboratory", x: 50, y: 820, size: 16 },
      { text: "Report 2026-0417, page 1 of 2", x: 400, y: 40, size: 8 },
    ];
    const again = narrow([...ROWS.slice(0, 5), ROWS[0]!, ...ROWS.slice(5)], "lrll");
    const turnAt = 780 - 14 * 4.5;
    const pages = [again.filter(({ y }) => y > turnAt), again.filter(({ y }) => y < turnAt)];
    expect(await entriesOf([...head, ...pages[0]!], pages[1]!)).toEqual([{ label: null, entries: EXPECTED }]);
  });

  it("parts no running text, though some of its words stand above one another", async () => {
    const notes = [
      "Results relate to the sample as received and tested.",
      "Total iron was found in the bore, and total zinc.",
      "Total zinc was found in the bore, and no lead.",
      "Limits of reporting are those of the method given.",
      "The laboratory holds what is left for four weeks.",
    ].map((text, i) => ({ text, x: 50, y: 300 - 14 * i, size: SIZE }));
    const read = await readPdf(writePdf([notes]));
    expect(read.ok && read.cells).toEqual(notes.map(({ text }) => [text]));
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
