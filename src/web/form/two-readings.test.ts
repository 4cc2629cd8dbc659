import { expect, it } from "vitest";
import { settled, settledBy } from "./two-readings.ts";

it("an ambiguous number is replaced by the reading chosen, and nothing else", () => {
  expect(settled("<1,250", "1250")).toBe("<1250");
  expect(settled("1.250 L/ha", "1.25")).toBe("1.25 L/ha");
});

it("the decimal mark of a sheet settles every number of a text, and leaves the clear ones as they are", () => {
  expect(settledBy("1,250", ".")).toBe("1250");
  expect(settledBy("1,250", ",")).toBe("1.25");
  expect(settledBy("<1,125", ",")).toBe("<1.1250");
  expect(settledBy("1.250–2.500", ",")).toBe("1250–2500");
  expect(settledBy("0,215", ",")).toBe("0,215");
  expect(settledBy("98,4", ",")).toBe("98,4");
  // Three groups have one reading, and so have more than three digits before the mark.
  expect(settledBy("1,250,500", ".")).toBe("1,250,500");
  expect(settledBy("1250,125", ",")).toBe("1250,125");
});
