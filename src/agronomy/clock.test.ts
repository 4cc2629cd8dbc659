import { describe, expect, it } from "vitest";
import { byClock } from "./clock.ts";
import { builtInTrade } from "./index.ts";
import type { ActiveRecord, ClockShare } from "./index.ts";

const active = (id: string): ActiveRecord => {
  const found = builtInTrade().actives.find((a) => a.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
};
const clock = (id: string, formulation: string, pH: number, temperature_C = 25): ClockShare =>
  byClock(active(id), formulation, pH, temperature_C, 3);

describe("by the clock", () => {
  it("takes a source at its word where it calls an active stable, beyond the half-lives it gives", () => {
    expect(clock("ethephon", "SL", 3)).toMatchObject({ stable: true, intact: 1, halfLife_h: null });
    expect(clock("ethephon", "SL", 3).why).toMatch(/below pH 3\.5/);
  });

  it("says not known between a stable pH and the first half-life", () => {
    expect(clock("ethephon", "SL", 4)).toMatchObject({ stable: false, intact: null });
    expect(clock("ethephon", "SL", 4).why).toMatch(/pH 4\.0/);
  });

  it("reads between half-lives, straight in the logarithm", () => {
    const halfway = clock("ethephon", "SL", 8).halfLife_h ?? Number.NaN;
    expect(halfway).toBeCloseTo(Math.sqrt(57.6 * 24), 6);
  });

  it("goes to another temperature by the active's own activation energy", () => {
    const warm = clock("flumioxazin", "WG", 7, 25).halfLife_h ?? Number.NaN;
    const cool = clock("flumioxazin", "WG", 7, 15).halfLife_h ?? Number.NaN;
    // exp(58.4 kJ/mol / R · (1/288.15 K − 1/298.15 K))
    expect(cool / warm).toBeCloseTo(2.266, 2);
  });
});
