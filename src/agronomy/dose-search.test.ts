import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { leastDose as leastDoseIn, raisedDose as raisedDoseIn, roundDoseUp } from "./dose-search.ts";
import type { DoseFound } from "./dose-search.ts";
import { atOnce } from "./steps.ts";
import type { Steps } from "./steps.ts";
import type { Computed } from "./verdict.ts";

type Found = Computed<DoseFound>;
type Free = Computed<number | null>;
const leastDose = (freeAt: (dose: number) => Free, aim: number, least: number, most: number): Found =>
  atOnce(leastDoseIn(inSteps(freeAt), aim, least, most));
const raisedDose = (freeAt: (dose: number) => Free, aim: number, from: number, most: number): Found =>
  atOnce(raisedDoseIn(inSteps(freeAt), aim, from, most));

function inSteps(freeAt: (dose: number) => Free): (dose: number) => Steps<Free> {
  return function* (dose) {
    yield;
    return freeAt(dose);
  };
}

const at = (f: (dose: number) => number | null) => (dose: number) => ({ ok: true as const, value: f(dose) });

describe("leastDose", () => {
  it("finds the crossing of a rising share to within two per cent, from above", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 40, noNaN: true }), (crossing) => {
        const found = leastDose(
          at((d) => (d >= crossing ? 0.96 : 0.5)),
          0.95,
          0,
          50,
        );
        if (!found.ok || found.value.kind !== "met") return false;
        return found.value.dose >= crossing && found.value.dose <= crossing * 1.03;
      }),
    );
  });

  it("reports the best dose when none meets the aim", () => {
    const found = leastDose(
      at((d) => d / 100),
      0.95,
      0,
      50,
    );
    expect(found).toEqual({
      ok: true,
      value: {
        kind: "not met",
        dose: expect.closeTo(50, 9) as number,
        free: expect.closeTo(0.5, 9) as number,
      },
    });
  });

  it("does not step over a window in which only some doses work", () => {
    const found = leastDose(
      at((d) => (d > 2 && d < 20 ? 0.97 : 0.2)),
      0.95,
      0,
      50,
    );
    expect(found.ok && found.value.kind === "met" && found.value.dose).toBeCloseTo(2, 1);
  });

  it("starts at the label's least dose and never goes below it", () => {
    const found = leastDose(
      at(() => 1),
      0.95,
      5,
      50,
    );
    expect(found).toEqual({ ok: true, value: { kind: "met", dose: 5, free: 1 } });
  });

  it("passes on a failure and an unknown", () => {
    expect(leastDose(() => ({ ok: false, reason: "not-converged", detail: "" }), 0.95, 0, 1).ok).toBe(false);
    expect(
      leastDose(
        at(() => null),
        0.95,
        0,
        1,
      ),
    ).toEqual({ ok: true, value: { kind: "not known" } });
  });
});

describe("raisedDose", () => {
  const rising = at((dose) => dose / (dose + 1));

  it("finds the crossing above a dose, from above", () => {
    const found = raisedDose(rising, 0.9, 2, 100);
    if (!found.ok || found.value.kind !== "met") throw new Error("not met");
    expect(found.value.dose).toBeGreaterThanOrEqual(9);
    expect(found.value.dose).toBeLessThan(9 * 1.03);
  });

  it("keeps a dose that is enough already, and says the best one where none is", () => {
    expect(raisedDose(rising, 0.6, 2, 100)).toMatchObject({ ok: true, value: { kind: "met", dose: 2 } });
    expect(raisedDose(rising, 0.999, 2, 100)).toMatchObject({
      ok: true,
      value: { kind: "not met", dose: 100 },
    });
    expect(
      raisedDose(
        at(() => null),
        0.9,
        2,
        100,
      ),
    ).toEqual({ ok: true, value: { kind: "not known" } });
  });
});

describe("roundDoseUp", () => {
  it("never rounds down and never adds more than a tenth", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 1e4, noNaN: true }), (dose) => {
        const rounded = roundDoseUp(dose);
        return rounded >= dose * (1 - 1e-9) && rounded <= dose * 1.1 + 1e-12;
      }),
    );
  });

  it("never passes the most that may be used", () => {
    expect(roundDoseUp(1.33, 1.335)).toBe(1.33);
    expect(roundDoseUp(1.31, 1.4)).toBe(1.4);
    fc.assert(
      fc.property(
        fc.double({ min: 1e-4, max: 1e4, noNaN: true }),
        fc.double({ min: 1, max: 2, noNaN: true }),
        (dose, room) => roundDoseUp(dose, dose * room) <= dose * room * (1 + 1e-9),
      ),
    );
  });
});
