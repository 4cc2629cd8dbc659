import { describe, expect, it } from "vitest";
import { readWaterTest } from "../../water/index.ts";
import { measureNext } from "./spread.ts";

const read = readWaterTest(
  {
    source: "bore",
    method: "strip",
    readings: [
      { parameter: "hardness", value: 250, unit: "mg/L as CaCO3" },
      { parameter: "pH", value: 7.6 },
    ],
  },
  "water",
);
if (!read.ok) throw new Error(JSON.stringify(read.issues));
const test = read.value;

/** Free shares spread evenly so that 5th and 95th percentile lie this far apart. */
const spreadOver = (width: number): Float64Array =>
  Float64Array.from({ length: 501 }, (_, i) => 0.5 + (width / 0.9) * (i / 500 - 0.5));
/** A test that takes three quarters of the spread halves the range. */
const ofDrying = [{ input: "assumed:nucleationSI", part: 0.75, of: null }];

describe("tests that would narrow a range", () => {
  it("are advised where they narrow it by one in 100 or more", () => {
    const [next] = measureNext(spreadOver(0.1), ofDrying, test);
    expect(next!.test).toBe("drying-glass");
    expect(next!.width).toBeCloseTo(0.05, 6);
    expect(measureNext(spreadOver(0.021), ofDrying, test)).toHaveLength(1);
  });

  it("are not advised where nobody would see it, nor where they take less than a twentieth", () => {
    expect(measureNext(spreadOver(0.019), ofDrying, test)).toEqual([]);
    expect(measureNext(spreadOver(0.9), [{ ...ofDrying[0]!, part: 0.04 }], test)).toEqual([]);
  });
});
