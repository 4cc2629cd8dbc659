import { describe, expect, it } from "vitest";
import { convertQuantity } from "./convert-quantity.ts";

describe("convertQuantity", () => {
  it.each([
    // One US gallon is 3.785411784 L and one acre 0.40468564224 ha, both exact.
    [10, "volume per area", "US gal/ac", "L/ha", 93.5396],
    [200, "volume per area", "L/ha", "US gal/ac", 200 / 9.353957],
    [54, "temperature", "°F", "°C", 12.2222],
    [12, "temperature", "°C", "°F", 53.6],
    [3, "time", "h", "min", 180],
    [2, "rate", "L/ha", "fl oz/ac", (2 * 0.40468564) / 0.02957353],
  ] as const)("%d as %s: %s is %s", (value, dimension, from, to, expected) => {
    expect(convertQuantity(value, dimension, from, to)).toBeCloseTo(expected, 3);
  });

  it("has no answer between litres and kilograms or for a unit of another kind", () => {
    expect(convertQuantity(2, "rate", "L/ha", "kg/ha")).toBeNull();
    expect(convertQuantity(2, "volume", "L", "ha")).toBeNull();
  });
});
