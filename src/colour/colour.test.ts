import { describe, expect, it } from "vitest";
import {
  WAVELENGTHS_NM,
  absorptivityCurve,
  colourLook,
  deltaE00,
  hueOf,
  intoGamut,
  labOfLinear,
  labOfXyz,
  linearOfHex,
  linearOfXyz,
  screenColour,
  screenColourOfLab,
  transmittanceOf,
  xyzOfLab,
  xyzOfTransmittance,
} from "./index.ts";

const at = (curve: ArrayLike<number>, nm: number): number => curve[WAVELENGTHS_NM.indexOf(nm)]!;

describe("absorption bands", () => {
  it("has its absorptivity at the maximum and half of it at the half-width", () => {
    const curve = absorptivityCurve([{ peak_nm: 500, absorptivity_LPerMolCm: 1800, width_nm: 100 }]);
    expect(at(curve, 500)).toBe(1800);
    // Equal steps of 1/λ from the maximum, 100 nm apart: 454.95 and 554.95 nm.
    expect(at(curve, 455)).toBeCloseTo(900, -1);
    expect(at(curve, 555)).toBeCloseTo(900, -1);
  });

  it("lets the foot of an ultraviolet band fall by e over its decay length", () => {
    const curve = absorptivityCurve([], [{ at400_LPerMolCm: 100, decay_nm: 30 }]);
    expect(at(curve, 400)).toBe(100);
    expect(at(curve, 430)).toBeCloseTo(100 / Math.E, 9);
  });

  it.each([
    { peak_nm: 0, absorptivity_LPerMolCm: 1, width_nm: 10 },
    { peak_nm: 500, absorptivity_LPerMolCm: -1, width_nm: 10 },
    { peak_nm: 500, absorptivity_LPerMolCm: 1, width_nm: 0 },
    { peak_nm: 500, absorptivity_LPerMolCm: NaN, width_nm: 10 },
  ])("refuses a band without sense: %o", (band) => {
    expect(() => absorptivityCurve([band])).toThrow("band-invalid");
  });

  it("gives the same light for twice the path and half the concentration", () => {
    const curve = absorptivityCurve([{ peak_nm: 500, absorptivity_LPerMolCm: 1800, width_nm: 150 }]);
    const one = transmittanceOf([{ curve_LPerMolCm: curve, concentration_molPerL: 2e-4 }], 3);
    const other = transmittanceOf([{ curve_LPerMolCm: curve, concentration_molPerL: 1e-4 }], 6);
    one.forEach((value, i) => expect(value).toBeCloseTo(other[i]!, 12));
    expect(at(one, 500)).toBeCloseTo(10 ** -(1800 * 2e-4 * 3), 12);
  });

  it("gets darker with more dye and never lighter", () => {
    const curve = absorptivityCurve([{ peak_nm: 620, absorptivity_LPerMolCm: 2000, width_nm: 120 }]);
    let before = 101;
    for (const c of [0, 1e-5, 1e-4, 3e-4, 1e-3]) {
      const { L } = labOfXyz(
        xyzOfTransmittance(transmittanceOf([{ curve_LPerMolCm: curve, concentration_molPerL: c }], 5)),
      );
      expect(L).toBeLessThan(before);
      before = L;
    }
  });

  it("refuses a spectrum of another length", () => {
    expect(() => xyzOfTransmittance([1, 1, 1])).toThrow("spectrum-length");
  });
});

describe("what a screen cannot show", () => {
  it("leaves a colour within reach as it is", () => {
    const rgb = linearOfHex("#7b0246")!;
    expect(intoGamut(rgb)).toEqual(rgb);
    expect(screenColourOfLab(labOfLinear(rgb))).toEqual({ hex: "#7b0246", inGamut: true });
  });

  it.each([
    { L: 40, a: -30, b: -60 },
    { L: 70, a: 90, b: 20 },
    { L: 12, a: 50, b: -70 },
    { L: 90, a: 0, b: 120 },
  ])("shows a paler one of near the same lightness and hue: %o", (lab) => {
    const shown = screenColourOfLab(lab);
    expect(shown.inGamut).toBe(false);
    const back = labOfLinear(linearOfHex(shown.hex)!);
    expect(Math.abs(back.L - lab.L)).toBeLessThan(7);
    const turned = Math.abs(hueOf(back) - hueOf(lab));
    expect(Math.min(turned, 360 - turned)).toBeLessThan(25);
  });

  it("goes there and back through L*a*b*", () => {
    for (const lab of [
      { L: 0, a: 0, b: 0 },
      { L: 5, a: 3, b: -2 },
      { L: 55, a: -40, b: 30 },
    ]) {
      const back = labOfXyz(xyzOfLab(lab));
      expect(deltaE00(back, lab)).toBeLessThan(1e-9);
    }
  });

  it("reads colours as people type them and nothing else", () => {
    expect(linearOfHex("fff")).toEqual([1, 1, 1]);
    expect(linearOfHex(" #FFFFFF ")).toEqual([1, 1, 1]);
    for (const text of ["", "#ff", "red", "#ggg", "#fffffff"]) expect(linearOfHex(text)).toBeNull();
  });

  it("gives black and white at the ends", () => {
    expect(screenColour([0, 0, 0]).hex).toBe("#000000");
    expect(intoGamut(linearOfXyz([200, 200, 300]))).toEqual([1, 1, 1]);
  });
});

describe("what a colour looks like", () => {
  it.each([
    ["#7b0246", "dark", "violet-red"],
    ["#d68ba6", "light", "pink"],
    ["#004596", "dark", "blue"],
    ["#fffff6", "almost clear", "yellow"],
    ["#590022", "dark", "violet-red"],
    ["#c97000", "strong", "orange"],
    ["#5c3a1e", "dark", "brown"],
    ["#7a5230", "plain", "brown"],
  ])("%s is %s %s", (hex, tone, hue) => {
    expect(colourLook(labOfLinear(linearOfHex(hex)!))).toEqual({ kind: "hue", tone, hue });
  });

  it.each([
    ["#ffffff", "no colour"],
    ["#808080", "grey"],
    ["#000000", "black"],
  ])("%s has no hue: %s", (hex, grey) => {
    expect(colourLook(labOfLinear(linearOfHex(hex)!))).toEqual({ kind: "grey", grey });
  });
});
