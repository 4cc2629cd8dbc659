import { describe, expect, it } from "vitest";
import type { DrawnText } from "./placed-text.ts";
import { tableOf } from "./table.ts";

/** Half as wide as high: near enough to the letters of a text font. */
const drawn = (text: string, x: number, y: number, size = 10): DrawnText => ({
  text,
  x,
  y,
  angle_rad: 0,
  width: 0.5 * size * text.length,
  size,
  font: "F",
  mark: "",
});
/** A page turned anticlockwise about its corner. */
const turned = (page: readonly DrawnText[], degrees: number): readonly DrawnText[] => {
  const angle_rad = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle_rad), Math.sin(angle_rad)];
  return page.map((piece) => ({
    ...piece,
    x: piece.x * cos - piece.y * sin,
    y: piece.x * sin + piece.y * cos,
    angle_rad,
  }));
};

const PAGE = [
  drawn("Calcium", 50, 700),
  drawn("92", 208, 700),
  drawn("mg/L", 240, 700),
  drawn("Total", 50, 684),
  drawn("hardness", 78, 684),
  drawn("357", 203, 684),
  drawn("mg/L", 240, 684),
  drawn("pH", 50, 668),
  drawn("7.6", 203, 668),
  drawn("probe", 300, 668),
];
const CELLS = [
  ["Calcium", "92", "mg/L"],
  ["Total hardness", "357", "mg/L"],
  ["pH", "7.6", "", "probe"],
];

describe("tableOf, rows and columns", () => {
  it("makes rows of baselines, words of small gaps and cells of wide ones, in whatever order they were drawn", () => {
    expect(tableOf([PAGE])).toEqual(CELLS);
    expect(tableOf([[...PAGE].reverse()])).toEqual(CELLS);
  });

  it.each([90, 180, 270, 1.5])("reads a page turned by %s degrees the same", (degrees) => {
    expect(tableOf([turned(PAGE, degrees)])).toEqual(CELLS);
  });

  it("keeps the columns and the order from page to page", () => {
    const next = [drawn("Iron", 50, 700), drawn("filtered", 300, 700)];
    expect(tableOf([PAGE, next])).toEqual([...CELLS, ["Iron", "", "", "filtered"]]);
  });

  it("keeps what stands across the page, behind its rows", () => {
    const stamp = { ...drawn("COPY", 100, 300, 60), angle_rad: Math.PI / 4 };
    expect(tableOf([[stamp, ...PAGE]])).toEqual([...CELLS, ["COPY"]]);
  });

  it("takes text drawn twice, as for bold letters, once", () => {
    expect(tableOf([[...PAGE, drawn("Calcium", 50.4, 700)]])).toEqual(CELLS);
  });

  it("keeps every cell of a row that does not fit the columns", () => {
    const wide = [drawn("Results of the laboratory for the year", 60, 720), drawn("page 1 of 1", 300, 720)];
    const cells = tableOf([[...wide, ...PAGE]]);
    expect(cells[0]).toEqual(
      expect.arrayContaining(["Results of the laboratory for the year", "page 1 of 1"]),
    );
    expect(cells.slice(1).map((row) => row.filter((cell) => cell !== ""))).toEqual(
      CELLS.map((row) => row.filter((cell) => cell !== "")),
    );
  });

  it("gives nothing for nothing", () => {
    expect(tableOf([])).toEqual([]);
    expect(tableOf([[drawn("  ", 1, 1)], []])).toEqual([]);
  });
});

describe("tableOf, small letters and signs", () => {
  it("puts lowered and raised letters back into their formula", () => {
    const page = [
      drawn("Nitrate (NO", 50, 700),
      drawn("3", 105, 697.5, 7),
      drawn("-", 108.5, 704, 7),
      drawn(")", 112, 700),
      drawn("12", 200, 700),
    ];
    expect(tableOf([page])).toEqual([["Nitrate (NO3⁻)", "12"]]);
  });

  it.each([
    ["raised", 704, "92¹"],
    ["level", 700, "92 1"],
    ["lowered", 697.5, "92 1"],
  ])("never makes 921 of 92 and a %s footnote", (_how, y, text) => {
    const page = [
      drawn("Calcium", 50, 700),
      drawn("92", 200, 700),
      drawn("1", 210, y, 6),
      drawn("mg/L", 240, 700),
    ];
    expect(tableOf([page])).toEqual([["Calcium", text, "mg/L"]]);
  });

  it("puts a limit sign before its number, also from a column of its own", () => {
    const page = [
      drawn("Iron", 50, 700),
      drawn("<", 180, 700),
      drawn("0.05", 205, 700),
      drawn("mg/L", 240, 700),
    ];
    expect(tableOf([page])).toEqual([["Iron", "< 0.05", "mg/L"]]);
  });

  it("takes no-break spaces as spaces", () => {
    expect(tableOf([[drawn("at 25\u00A0°C", 50, 700)]])).toEqual([["at 25 °C"]]);
  });
});

describe("tableOf, cells of several lines", () => {
  const ROWS = [
    drawn("Calcium", 50, 700),
    drawn("92", 205, 700),
    drawn("Iron", 50, 680),
    drawn("0.1", 205, 680),
  ];

  it("joins a broken name whose value stands beside its middle", () => {
    const page = [
      ...ROWS,
      drawn("Alkalinity, total", 50, 660),
      drawn("240", 205, 654),
      drawn("(as CaCO3)", 50, 648),
    ];
    expect(tableOf([page]).at(-1)).toEqual(["Alkalinity, total (as CaCO3)", "240"]);
  });

  it("joins a word parted by a hyphen", () => {
    const page = [...ROWS, drawn("Conduc-", 50, 660), drawn("780", 205, 660), drawn("tivity", 50, 648)];
    expect(tableOf([page]).at(-1)).toEqual(["Conductivity", "780"]);
  });

  it("joins a heading of two lines over one column", () => {
    const page = [drawn("Detection", 300, 732), drawn("Parameter", 50, 720), drawn("Result", 200, 720)];
    const cells = tableOf([[...page, drawn("limit", 300, 720), ...ROWS]]);
    expect(cells[0]).toEqual(["Parameter", "Result", "Detection limit"]);
  });

  it("joins no row to the one above because it has no value", () => {
    const page = [...ROWS, drawn("pH", 50, 660), drawn("Sodium", 50, 640), drawn("12", 205, 640)];
    expect(tableOf([page])).toEqual([["Calcium", "92"], ["Iron", "0.1"], ["pH"], ["Sodium", "12"]]);
  });

  it("keeps the rows of lists side by side apart where their lines do not meet", () => {
    const left = ["Calcium", "Sodium", "Iron"].map((text, i) => drawn(text, 50, 700 - 12 * i));
    const right = ["Chloride", "Sulfate", "pH"].map((text, i) => drawn(text, 300, 694 - 12 * i));
    expect(tableOf([[...left, ...right]])).toEqual([
      ["Calcium", "Chloride"],
      ["Sodium", "Sulfate"],
      ["Iron", "pH"],
    ]);
  });
});

describe("tableOf, tables as spreadsheets and browsers print them", () => {
  /** A line of cells, each [text, x], on one baseline. */
  const line = (y: number, ...cells: readonly (readonly [string, number])[]): readonly DrawnText[] =>
    cells.map(([text, x]) => drawn(text, x, y));
  /** Where a figure begins that ends at a place. */
  const endAt = (text: string, right: number): readonly [string, number] => [text, right - 5 * text.length];

  it("parts a figure from the unit that begins where the column of figures ends", () => {
    const cells = [
      ["Parameter", "Result", "Unit"],
      ["Calcium", "92.4", "mg/l"],
      ["Conductivity", "780", "µS/cm"],
      ["Iron", "0.05", "mg/l"],
      ["Hardness", "18", "°dH"],
    ];
    const page = cells.flatMap(([name, value, unit], i) =>
      line(700 - 15 * i, [name!, 50], i === 0 ? [value!, 150] : endAt(value!, 198), [unit!, 200]),
    );
    expect(tableOf([page])).toEqual(cells);
  });

  it("puts figures at the right of a column under the heading at its left, and each limit under its own", () => {
    const cells = [
      ["Parameter", "Limit", "Result", "Unit"],
      ["Sodium", "200", "48", "mg/L"],
      ["Chloride", "250", "61", "mg/L"],
      ["Calcium", "", "92", "mg/L"],
      ["Iron", "10", "<10", "µg/L"],
    ];
    const page = cells.flatMap(([name, limit, result, unit], i) => [
      ...line(700 - 15 * i, [name!, 50], [unit!, 300]),
      ...(limit === "" ? [] : line(700 - 15 * i, i === 0 ? [limit!, 130] : endAt(limit!, 198))),
      // A limit sign makes a text of a figure, which begins at the left.
      ...line(700 - 15 * i, /^\d/.test(result!) ? endAt(result!, 298) : [result!, 200]),
    ]);
    expect(tableOf([page])).toEqual(cells);
  });

  it("keeps words together that stand in the middle of a column above figures by chance", () => {
    const cells = [
      ["Test", "Value", "Unit"],
      ["Iron", "0.42", "ppm"],
      ["Copper", "1.25", "ppm"],
      ["Manganese", "Not Detected", "ppm"],
      ["Sodium", "21.5", "ppm"],
      ["Chloride", "38.5", "ppm"],
      ["Sulfate", "29.1", "ppm"],
    ];
    const page = cells.flatMap(([name, value, unit], i) =>
      line(700 - 15 * i, [name!, 50], [value!, 210 - 2.5 * value!.length], [unit!, 300]),
    );
    expect(tableOf([page])).toEqual(cells);
  });
});
