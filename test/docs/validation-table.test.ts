import { describe, expect, it } from "vitest";
import { type TableRow, validationTable } from "../../scripts/validation-table.mjs";

const row: TableRow = {
  group: "minerals",
  what: "log K of a|b",
  published: -8.48,
  ours: -8.4701,
  unit: "",
  tolerance: 0.02,
  within: true,
  source: "Author (1999) table 1",
};
const outside: TableRow = {
  ...row,
  what: "log K of c",
  ours: -8.2,
  within: false,
  reason: "another constant",
};
const residual: TableRow = {
  ...row,
  group: "balance",
  what: "residual",
  published: 0,
  ours: 2e-15,
  tolerance: 1e-9,
};

/** The cells of the lines that begin with a text. */
const linesOf = (table: string, start: string) =>
  table.split("\n").filter((line) => line.startsWith(`| ${start}`));

describe("validationTable", () => {
  it("is the same whatever the order the rows come in", () => {
    const rows = [row, outside, residual];
    expect(validationTable([...rows].reverse())).toBe(validationTable(rows));
    expect(validationTable([...rows, row])).toBe(validationTable(rows));
  });

  it("counts what lies outside and shows it twice, with the reason", () => {
    const table = validationTable([row, outside, residual]);
    expect(table).toContain("**3 values: 2 within their tolerance, 1 outside it.**");
    expect(table).toContain("| minerals | 2 | 1 | 1 |");
    const lines = linesOf(table, "log K of c");
    expect(lines).toHaveLength(2);
    for (const line of lines) expect(line).toContain("**outside:** another constant");
  });

  it("keeps two rows that differ only in our value", () => {
    expect(linesOf(validationTable([row, { ...row, ours: -8.4702 }]), "log K of a")).toHaveLength(2);
  });

  it("says the deviation in the unit of the value and does not break the table", () => {
    const table = validationTable([row]);
    expect(table).toContain(
      "| log K of a\\|b | -8.48 | -8.4701 | +0.0099 | 0.02 |  | Author (1999) table 1 |",
    );
  });

  it("gives a bound for what is rounding only", () => {
    expect(validationTable([residual])).toContain("| residual | 0 | below 1e-12 | 0 | 1e-9 |");
    expect(validationTable([{ ...residual, ours: 2e-15 * (1 + 1e-9) }])).toBe(validationTable([residual]));
  });
});
