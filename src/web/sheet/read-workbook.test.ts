import { describe, expect, it } from "vitest";
import { workbook } from "../../../test/e2e/workbook.ts";
import { readSheetCells } from "../../water/index.ts";
import { readWorkbook, unmistakable } from "./read-workbook.ts";

describe("a spreadsheet file", () => {
  it("gives its cells, with numbers in one reading only", async () => {
    const read = await readWorkbook(
      workbook({
        Results: [
          ["Parameter", "Result", "Unit"],
          ["Calcium", 92.5, "mg/L"],
          ["Manganese", 1.125, "mg/L"],
          ["Iron", "<0.05", "mg/L"],
        ],
        Remarks: [["Bottle was warm"]],
      }),
    );
    expect(read?.others).toEqual(["Remarks"]);
    const entries = readSheetCells(read?.cells ?? []).samples[0]?.entries ?? [];
    expect(entries.map(({ status, parameter, value }) => [status, parameter, value])).toEqual([
      ["understood", "calcium", "92.5"],
      ["understood", "manganese", "1.1250"],
      ["understood", "iron", "<0.05"],
    ]);
  });

  it("refuses what is no spreadsheet", async () => {
    await expect(readWorkbook(new Uint8Array([80, 75, 3, 4, 0, 0]).buffer)).rejects.toThrow();
  });

  it.each([
    ["1.125", "1.1250"],
    ["-12.500", "-12.5000"],
    ["0.125", "0.125"],
    ["1250", "1250"],
    ["92.5", "92.5"],
  ])("%s is written %s", (text, written) => {
    expect(unmistakable(text)).toBe(written);
  });
});
