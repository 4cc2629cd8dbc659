import { expect, test } from "vitest";
import { countOutOf } from "./count-out-of.ts";

test.each([
  [0.884, 17],
  [0.9, 18],
  [0.949, 18],
  [0.999, 19],
  [1, 20],
  [0.01, 1],
  [0, 0],
])("%f is %i of 20: never more than it is, and neither end by rounding", (share, count) => {
  expect(countOutOf(share, 20)).toBe(count);
});
