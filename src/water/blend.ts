import type { ThermoData } from "../chem/index.ts";
import { HardstandError } from "../units/index.ts";
import type { Issue } from "../units/index.ts";
import { alkalinityOf_eqPerL } from "./charge.ts";
import { waterIssue } from "./ledger.ts";
import { atOwnPH, waterSystem } from "./solve-carbonate.ts";
import type { Assumption, Water } from "./types.ts";

/**
 * Blends two waters: totals, hardness, alkalinity and temperature by share, pH from the blend's own equilibrium, closed
 * to the air. Solids that the blend might drop are left in solution, and this is said.
 *
 * Conductivity and turbidity are blended by share, which is right to a few percent; they are unknown where one is.
 *
 * @param shareOfA volume share of the first water, 0–1
 * @throws HardstandError "share-invalid" outside 0–1; "water-not-solved" when the blend has no equilibrium
 */
export function blendWaters(a: Water, b: Water, shareOfA: number, thermo: ThermoData): Water {
  if (!(shareOfA >= 0 && shareOfA <= 1))
    throw new HardstandError("share-invalid", "blendWaters", { shareOfA });
  const mixed = (x: number, y: number): number => (x === y ? x : shareOfA * x + (1 - shareOfA) * y);
  const mixedOrUnknown = (x: number | null, y: number | null): number | null =>
    x === null || y === null ? null : mixed(x, y);
  const names = [...new Set([...Object.keys(a.totals_molPerL), ...Object.keys(b.totals_molPerL)])];
  const totals: Record<string, number> = {};
  for (const name of names) {
    const total = mixed(a.totals_molPerL[name] ?? 0, b.totals_molPerL[name] ?? 0);
    if (total > 0) totals[name] = total;
  }
  const temperature_C = mixed(a.temperature_C, b.temperature_C);
  const pH = atOwnPH(waterSystem(totals, thermo, temperature_C), totals)?.pH ?? null;
  if (pH === null) throw new HardstandError("water-not-solved", "blendWaters", { a: a.source, b: b.source });
  return {
    source: a.source === b.source ? a.source : `${a.source} and ${b.source}`,
    temperature_C,
    pH,
    totals_molPerL: totals,
    alkalinity_molPerL: alkalinityOf_eqPerL(totals),
    hardness_molPerL: (totals["Ca+2"] ?? 0) + (totals["Mg+2"] ?? 0),
    conductivity_uSPerCm: mixedOrUnknown(a.conductivity_uSPerCm, b.conductivity_uSPerCm),
    turbidity_NTU: mixedOrUnknown(a.turbidity_NTU, b.turbidity_NTU),
    suspendedSolids_mgPerL: mixedOrUnknown(a.suspendedSolids_mgPerL, b.suspendedSolids_mgPerL),
    chargeBalance_percent: null,
    assumptions: united<Assumption>(a.assumptions, b.assumptions),
    issues: [...united<Issue>(a.issues, b.issues), ...blendNote(a, b)],
  };
}

function blendNote(a: Water, b: Water): readonly Issue[] {
  return a === b ? [] : [waterIssue("blend-of-waters", "note", "water", {})];
}

/** Both lists, each entry once. */
function united<T>(first: readonly T[], second: readonly T[]): readonly T[] {
  const seen = new Set(first.map((entry) => JSON.stringify(entry)));
  return [...first, ...second.filter((entry) => !seen.has(JSON.stringify(entry)))];
}
