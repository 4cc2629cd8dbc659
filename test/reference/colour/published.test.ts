import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  WAVELENGTHS_NM,
  WHITE,
  deltaE00,
  encodeChannel,
  hexOfLinear,
  labOfLinear,
  labOfXyz,
  linearOfHex,
  linearOfXyz,
  xyzOfLinear,
  xyzOfTransmittance,
} from "../../../src/colour/index.ts";
import type { Lab, Xyz } from "../../../src/colour/index.ts";
import { isWithin, record } from "../validation-recorder.ts";

type Triple = readonly [number, number, number];
interface Published {
  readonly white: { readonly XYZ: Triple; readonly tolerance: number; readonly source: string };
  readonly sharma: {
    readonly source: string;
    readonly tolerance: number;
    readonly rows: readonly { readonly Lab1: Triple; readonly Lab2: Triple; readonly dE00: number }[];
  };
  readonly xyzToLab: {
    readonly whiteXy: readonly [number, number];
    readonly tolerance: number;
    readonly rows: readonly { readonly XYZ: Triple; readonly Lab: Triple }[];
  };
  readonly srgb: {
    readonly toleranceXyz: number;
    readonly toleranceLab: number;
    readonly rows: readonly { readonly hex: string; readonly XYZ: Triple; readonly Lab: Triple }[];
    readonly curve: { readonly linear: number; readonly encoded: number; readonly tolerance: number };
  };
  readonly liquid: {
    readonly tolerance: number;
    readonly source: string;
    readonly rows: readonly {
      readonly SRM: number;
      readonly path_cm: number;
      readonly expected_hex: string;
    }[];
  };
}
const published = JSON.parse(readFileSync(new URL("published.json", import.meta.url), "utf8")) as Published;
const labOf = ([L, a, b]: Triple): Lab => ({ L, a, b });
const farthest = (one: Triple, other: Triple): number =>
  Math.max(...one.map((value, i) => Math.abs(value - other[i]!)));
const parts = ({ L, a, b }: Lab): Triple => [L, a, b];

/** Judges one published value and puts it into the validation table. */
function judge(
  what: string,
  unit: string,
  expected: number,
  ours: number,
  tolerance: number,
  source: string,
): void {
  const within = isWithin(expected, ours, tolerance);
  record({ group: "colour", what, unit, published: expected, ours, tolerance, within, source });
  expect(within, what).toBe(true);
}

describe("light and observer", () => {
  it("adds up to the published white of D65", () => {
    const { XYZ, tolerance, source } = published.white;
    ["X", "Y", "Z"].forEach((name, i) =>
      judge(`${name} of D65, 2° observer`, "", XYZ[i]!, WHITE[i]!, tolerance, source),
    );
  });

  it("makes water exactly white", () => {
    expect(labOfXyz(WHITE)).toEqual({ L: 100, a: 0, b: 0 });
    expect(hexOfLinear(linearOfXyz(WHITE))).toBe("#ffffff");
  });

  it("draws grey glass grey", () => {
    const grey = xyzOfTransmittance(new Float64Array(WAVELENGTHS_NM.length).fill(0.5));
    expect(hexOfLinear(linearOfXyz(grey))).toBe("#bcbcbc");
  });
});

describe("CIEDE2000", () => {
  const { rows, tolerance, source } = published.sharma;
  it.each(rows.map((row, i) => [i + 1, row] as const))(
    "gives the published difference of pair %i",
    (i, row) => {
      const ours = deltaE00(labOf(row.Lab1), labOf(row.Lab2));
      const pair = `${row.Lab1.join(", ")} and ${row.Lab2.join(", ")}`;
      judge(`ΔE00, pair ${i}: ${pair}`, "", row.dE00, ours, tolerance, source);
    },
  );

  it("is the same both ways", () => {
    for (const { Lab1, Lab2 } of rows) {
      expect(deltaE00(labOf(Lab2), labOf(Lab1))).toBeCloseTo(deltaE00(labOf(Lab1), labOf(Lab2)), 10);
    }
  });
});

describe("L*a*b* and sRGB", () => {
  it("gives worked L*a*b* of tristimulus values", () => {
    const { whiteXy, rows, tolerance } = published.xyzToLab;
    const [x, y] = whiteXy;
    const white: Xyz = [x / y, 1, (1 - x - y) / y];
    for (const { XYZ, Lab } of rows) {
      expect(farthest(parts(labOfXyz(XYZ, white)), Lab)).toBeLessThan(tolerance);
    }
  });

  it("gives worked values of screen colours", () => {
    const { rows, toleranceLab, toleranceXyz } = published.srgb;
    for (const { hex, XYZ, Lab } of rows) {
      const linear = linearOfHex(hex)!;
      expect(farthest(xyzOfLinear(linear), XYZ), hex).toBeLessThan(toleranceXyz);
      expect(farthest(parts(labOfLinear(linear)), Lab), hex).toBeLessThan(toleranceLab);
      expect(hexOfLinear(linearOfXyz(xyzOfLinear(linear)))).toBe(hex);
    }
  });

  it("follows the transfer curve", () => {
    const { linear, encoded, tolerance } = published.srgb.curve;
    expect(Math.abs(encodeChannel(linear) - encoded)).toBeLessThan(tolerance);
  });
});

describe("a liquid with a published spectrum", () => {
  const { rows, tolerance, source } = published.liquid;
  it.each(rows)("$SRM SRM through $path_cm cm", ({ SRM, path_cm, expected_hex }) => {
    const transmittance = WAVELENGTHS_NM.map((w) => {
      const shape = 0.02465 * Math.exp(-(w - 430) / 17.591) + 0.97535 * Math.exp(-(w - 430) / 82.122);
      return 10 ** -((SRM / 12.7) * path_cm * shape);
    });
    const ours = hexOfLinear(linearOfXyz(xyzOfTransmittance(transmittance)));
    for (const [i, name] of ["red", "green", "blue"].entries()) {
      const channel = (hex: string): number => parseInt(hex.slice(1 + 2 * i, 3 + 2 * i), 16);
      const what = `${name} of beer of ${SRM} SRM through ${path_cm} cm, clipped`;
      judge(what, "of 255", channel(expected_hex), channel(ours), tolerance, source);
    }
  });
});
