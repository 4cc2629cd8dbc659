import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readingsOfSample, readSheet, readSheetCells } from "../../src/water/index.ts";
import type { DecimalMark } from "../../src/units/index.ts";
import type { SheetRead } from "../../src/water/index.ts";

/** A reading as a laboratory prints it: names as laboratories write them, units that say all. */
interface Printed {
  readonly parameter: string;
  readonly name: string;
  readonly unit: string;
  readonly figure: string;
}

const NAMES: readonly (readonly [parameter: string, unit: string, names: readonly string[]])[] = [
  ["pH", "", ["pH", "pH-Wert", "pH value"]],
  ["calcium", "mg/L", ["Calcium", "Calcium (Ca)", "Kalzium", "Ca"]],
  ["magnesium", "mg/l", ["Magnesium", "Magnésium", "Magnesio", "Mg"]],
  ["hardness", "°dH", ["Gesamthärte", "Hardness", "Dureté totale"]],
  ["sodium", "mg/L", ["Natrium", "Sodium", "Sodio"]],
  ["iron", "µg/L", ["Eisen, gesamt", "Iron, total", "Fer total", "Eisen,gesamt"]],
  ["manganese", "mg/L", ["Mangan, gelöst", "Manganese", "Manganèse (Mn)"]],
  ["chloride", "mg/L", ["Chlorid", "Chloride", "Chlorures"]],
  ["conductivity", "µS/cm", ["Leitfähigkeit", "Conductivity at 25 °C", "Conductivité à 25°C"]],
  ["alkalinity", "mmol/L", ["Säurekapazität bis pH 4,3", "Alkalinity"]],
];

/** Figures that can be read in one way with either mark: never three places behind it after one to three before. */
const figure = fc.oneof(
  fc.integer({ min: 1, max: 999 }).map(String),
  fc
    .tuple(fc.constantFrom("", "<"), fc.integer({ min: 0, max: 899 }), fc.integer({ min: 1, max: 99 }))
    .map(([sign, whole, part]) => `${sign}${String(whole)}.${String(part).padStart(2, "0")}`),
);

const ofEach = <T>(one: fc.Arbitrary<T>): fc.Arbitrary<readonly T[]> =>
  fc.array(one, { minLength: NAMES.length, maxLength: NAMES.length });
const markOf = fc.constantFrom<DecimalMark>(".", ",");

/** A figure of a parameter as printed: a pH cannot be anything. */
function printed(parameter: string, value: string, mark: DecimalMark): string {
  const likely =
    parameter === "pH" ? value.replace(/^<?\d+/, (digits) => String(4 + (digits.length % 5))) : value;
  return likely.replace(".", mark);
}

const sheet = fc
  .tuple(fc.subarray([...NAMES], { minLength: 3 }), ofEach(fc.nat()), ofEach(figure), markOf)
  .map(([rows, picks, figures, mark]) => ({
    mark,
    rows: rows.map(([parameter, unit, names], i): Printed => ({
      parameter,
      unit,
      name: names[picks[i]! % names.length]!,
      figure: printed(parameter, figures[i]!, mark),
    })),
  }));

const cellsOf = ({ name, figure: value, unit }: Printed): readonly string[] => [name, value, unit];
const quoted = (cell: string): string => (/[,"]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

/** Ways a list of readings is set. */
const LAYOUTS: Readonly<Record<string, (rows: readonly (readonly string[])[]) => string>> = {
  tabs: (rows) => rows.map((row) => row.join("\t")).join("\n"),
  semicolons: (rows) => rows.map((row) => row.join(";")).join("\r\n"),
  bars: (rows) => rows.map((row) => row.join(" | ")).join("\n"),
  "commas, quoted where need be": (rows) => rows.map((row) => row.map(quoted).join(",")).join("\n"),
  "columns set by blanks": (rows) =>
    rows
      .map((row) =>
        row
          .map((cell) => cell.padEnd(40))
          .join("")
          .trimEnd(),
      )
      .join("\n"),
};

const HEADINGS: readonly (readonly string[])[] = [
  [],
  ["Parameter", "Ergebnis", "Einheit"],
  ["Parameter", "Result", "Unit"],
];

/** Figure, or what is asked, by parameter. */
function understood(read: SheetRead): Readonly<Record<string, string>> {
  const [sample] = read.samples;
  return sample === undefined
    ? {}
    : Object.fromEntries(readingsOfSample(sample).map(({ parameter, value }) => [parameter, value]));
}

const figuresOf = (rows: readonly Printed[]): Readonly<Record<string, string>> =>
  Object.fromEntries(rows.map((row) => [row.parameter, row.figure]));

describe("a list of readings comes to the same figures however it is set", () => {
  test.each(Object.keys(LAYOUTS))("%s", (layout) => {
    fc.assert(
      fc.property(sheet, fc.constantFrom(...HEADINGS), ({ rows, mark }, heading) => {
        const text = LAYOUTS[layout]!([...(heading.length === 0 ? [] : [heading]), ...rows.map(cellsOf)]);
        const read = readSheet(text, { decimal: mark });
        expect(read.samples).toHaveLength(1);
        expect(understood(read)).toEqual(figuresOf(rows));
      }),
      { numRuns: 300 },
    );
  });

  test("cells of a workbook, with the unit before the figure", () => {
    fc.assert(
      fc.property(sheet, ({ rows, mark }) => {
        const cells = rows.map(({ name, figure: value, unit }) => [name, unit, value]);
        const read = readSheetCells(cells, { decimal: mark });
        expect(understood(read)).toEqual(figuresOf(rows));
      }),
      { numRuns: 300 },
    );
  });
});

/** Nothing is taken for understood but what stands there. */
function expectNothingElse(text: string, rows: readonly Printed[]): void {
  const wanted = figuresOf(rows);
  for (const [parameter, value] of Object.entries(understood(readSheet(text))))
    expect(`${parameter} ${value}`).toBe(`${parameter} ${wanted[parameter] ?? "not on the sheet"}`);
}

describe("no figure but one that stands on the sheet is ever taken", () => {
  test("whatever parts the cells, line by line", () => {
    const parting = fc.constantFrom(" ", "  ", "\t", ";", ",", ", ", " | ", ": ", "   ");
    fc.assert(
      fc.property(sheet, ofEach(parting), ofEach(parting), ({ rows }, before, after) => {
        const lines = rows.map((row, i) => `${row.name}${before[i]!}${row.figure}${after[i]!}${row.unit}`);
        expectNothingElse(lines.join("\n"), rows);
      }),
      { numRuns: 1000 },
    );
  });

  test("where decimal commas stand between commas, with columns in any order", () => {
    const order = fc.constantFrom([0, 1, 2], [0, 2, 1], [2, 0, 1], [1, 0, 2]);
    fc.assert(
      fc.property(
        sheet,
        fc.constantFrom(...HEADINGS),
        order,
        fc.constantFrom(",", ", "),
        (one, heading, at, by) => {
          const cells = [...(heading.length === 0 ? [] : [heading]), ...one.rows.map(cellsOf)];
          expectNothingElse(cells.map((row) => at.map((k) => row[k]).join(by)).join("\n"), one.rows);
        },
      ),
      { numRuns: 1000 },
    );
  });
});

test("two samples side by side under their names are two samples, whatever stands over the names of the readings", () => {
  fc.assert(
    fc.property(
      sheet,
      ofEach(figure),
      fc.constantFrom("tabs", "semicolons", "columns set by blanks"),
      (one, more, layout) => {
        const { mark, rows } = one;
        const other = rows.map((row, i) => ({ ...row, figure: printed(row.parameter, more[i]!, mark) }));
        const named = rows.map(({ name, unit }) => (unit === "" ? name : `${name} ${unit}`));
        const lines = rows.map((row, i) => [named[i]!, row.figure, other[i]!.figure]);
        const read = readSheet(LAYOUTS[layout]!([["", "Top bore", "Rain tank"], ...lines]), {
          decimal: mark,
        });
        expect(read.samples.map(({ label }) => label)).toEqual(["Top bore", "Rain tank"]);
        expect(read.samples.map((sample) => readingsOfSample(sample).map(({ value }) => value))).toEqual(
          [rows, other].map((of) => of.map((row) => row.figure)),
        );
      },
    ),
    { numRuns: 300 },
  );
});

test("a figure left out of a table set by blanks moves no other one", () => {
  const gaps = fc.array(fc.array(fc.boolean(), { minLength: NAMES.length, maxLength: NAMES.length }), {
    minLength: 2,
    maxLength: 4,
  });
  fc.assert(
    fc.property(sheet, gaps, fc.boolean(), ({ rows, mark }, missing, toTheRight) => {
      const heads = ["Sample", ...rows.map(({ name, unit }) => (unit === "" ? name : `${name} (${unit})`))];
      const lines = missing.map((gone, i) => [
        `Bore ${String(i + 1)}`,
        ...rows.map(({ figure: value }, k) => (gone[k] === true ? "" : value)),
      ]);
      const widths = heads.map((_, k) => Math.max(...[heads, ...lines].map((row) => row[k]!.length)));
      const text = [heads, ...lines]
        .map((row) =>
          row
            .map((cell, k) =>
              toTheRight && k > 0 ? `  ${cell.padStart(widths[k]!)}` : `${cell.padEnd(widths[k]!)}  `,
            )
            .join(""),
        )
        .join("\n");
      const read = readSheet(text, { decimal: mark });
      const wanted = missing.map((gone) =>
        Object.fromEntries(rows.flatMap((row, k) => (gone[k] === true ? [] : [[row.parameter, row.figure]]))),
      );
      const found = read.samples.map((sample) =>
        Object.fromEntries(readingsOfSample(sample).map(({ parameter, value }) => [parameter, value])),
      );
      expect(found).toEqual(wanted);
    }),
    { numRuns: 500 },
  );
});
