import { checkHardness, shown } from "./check-readings.ts";
import type { Known, KnownReadings } from "./known.ts";
import { assumed } from "./drawn.ts";
import { assume, assumeFigure, say } from "./ledger.ts";
import type { Ledger } from "./ledger.ts";
import { slipBetween } from "./slips.ts";

/** Calcium and magnesium [mol/L]. */
export interface Hardness {
  readonly calcium: number;
  readonly magnesium: number;
  /** Both, or one and the hardness, were measured. */
  readonly measured: boolean;
}

const WHY_SPLIT =
  "Only the hardness was measured: calcium and magnesium share it as in the waters of the data.";

/**
 * Calcium and magnesium [mol/L] from whatever was measured: both; one and the hardness; the hardness alone, shared as
 * in real waters; failing that, an estimate from conductivity or alkalinity. Null, with an error, when nothing tells.
 */
export function completeHardness(known: KnownReadings, path: string, ledger: Ledger): Hardness | null {
  const calcium = metal(known, "calcium", "calcium hardness", ledger);
  const magnesium = metal(known, "magnesium", "magnesium hardness", ledger);
  const hardness = known.get("hardness");
  if (calcium !== undefined && magnesium !== undefined) {
    if (hardness !== undefined) checkHardness(hardness, calcium, magnesium, ledger);
    return { calcium: calcium.value, magnesium: magnesium.value, measured: true };
  }
  if (hardness !== undefined) {
    if (calcium !== undefined) {
      return {
        calcium: calcium.value,
        magnesium: byDifference(hardness, calcium, "calcium", ledger),
        measured: true,
      };
    }
    if (magnesium !== undefined) {
      return {
        calcium: byDifference(hardness, magnesium, "magnesium", ledger),
        magnesium: magnesium.value,
        measured: true,
      };
    }
    return share(hardness.value, hardness.low, hardness.high, WHY_SPLIT, ledger);
  }
  if (calcium !== undefined) return fromCalcium(calcium, ledger);
  if (magnesium !== undefined) return fromMagnesium(magnesium, ledger);
  return estimated(known, path, ledger);
}

/** A metal measured as itself or as its own hardness; the first counts when both were. */
function metal(
  known: KnownReadings,
  name: "calcium" | "magnesium",
  asHardness: "calcium hardness" | "magnesium hardness",
  ledger: Ledger,
): Known | undefined {
  const own = known.get(name);
  const other = known.get(asHardness);
  if (own === undefined || other === undefined) return own ?? other;
  const apart = Math.abs(own.value - other.value) / Math.max(own.value, other.value, Number.MIN_VALUE);
  if (apart > 0.05 && !(own.low <= other.high && other.low <= own.high)) {
    say(ledger, "readings-disagree", "warning", `${other.reading.path}.value`, {
      received: `${shown(name, own.value, "mg/L")} and ${shown(name, other.value, "mg/L")}`,
      expected: "within 5 %",
      hint: slipBetween(name, own.value, other.value) ?? "The first is used.",
    });
  }
  return own;
}

function byDifference(
  hardness: Known,
  metalKnown: Known,
  name: "calcium" | "magnesium",
  ledger: Ledger,
): number {
  const left = hardness.value - metalKnown.value;
  if (left >= 0) return left;
  // Two readings that differ by less than the agreement of the tests leave nothing for the other metal.
  const slack = 0.1 * hardness.value;
  if (left >= -slack || hardness.high >= metalKnown.low) return 0;
  const unit = "mg/L as CaCO3";
  say(ledger, "hardness-below-metal", "error", `${metalKnown.reading.path}.value`, {
    received: `hardness ${shown("hardness", hardness.value, unit)}, ${name} ${shown("hardness", metalKnown.value, unit)}`,
    expected: `${name} no more than the hardness`,
    hint: slipBetween(name, metalKnown.value, hardness.value) ?? "Check the units of the two lines.",
  });
  return 0;
}

/** Shares a hardness [mol/L] between calcium and magnesium as real waters do. */
function share(total: number, totalLow: number, totalHigh: number, why: string, ledger: Ledger): Hardness {
  const figure = assumed(ledger.draw, "calciumShareOfHardness");
  const calcium = total * figure.central;
  const magnesium = total - calcium;
  const common = { unit: "mol/L", evidence: "computed", source: figure.source, why } as const;
  assume(ledger, {
    code: "hardness-shared",
    about: "Ca+2",
    value: calcium,
    low: totalLow * figure.low,
    high: totalHigh * figure.high,
    ...common,
  });
  assume(ledger, {
    code: "hardness-shared",
    about: "Mg+2",
    value: magnesium,
    low: totalLow * (1 - figure.high),
    high: totalHigh * (1 - figure.low),
    ...common,
  });
  return { calcium, magnesium, measured: false };
}

function fromCalcium(calcium: Known, ledger: Ledger): Hardness {
  const { central, low, high, source } = assumed(ledger.draw, "calciumShareOfHardness");
  const other = (shareOfCalcium: number): number => (calcium.value * (1 - shareOfCalcium)) / shareOfCalcium;
  const magnesium = other(central);
  assume(ledger, {
    code: "magnesium-from-calcium",
    about: "Mg+2",
    value: magnesium,
    low: other(high),
    high: other(low),
    unit: "mol/L",
    why: "Magnesium was not measured: it stands to calcium as in the waters of the data.",
    evidence: "computed",
    source,
  });
  return { calcium: calcium.value, magnesium, measured: false };
}

function fromMagnesium(magnesium: Known, ledger: Ledger): Hardness {
  const { central, low, high, source } = assumed(ledger.draw, "calciumShareOfHardness");
  const other = (shareOfCalcium: number): number => (magnesium.value * shareOfCalcium) / (1 - shareOfCalcium);
  const calcium = other(central);
  assume(ledger, {
    code: "calcium-from-magnesium",
    about: "Ca+2",
    value: calcium,
    low: other(low),
    high: other(high),
    unit: "mol/L",
    why: "Calcium was not measured: it stands to magnesium as in the waters of the data.",
    evidence: "computed",
    source,
  });
  return { calcium, magnesium: magnesium.value, measured: false };
}

function estimated(known: KnownReadings, path: string, ledger: Ledger): Hardness | null {
  const conductivity = known.get("conductivity");
  const why = "No hardness was measured: calcium and magnesium share an estimate of it.";
  if (conductivity !== undefined) {
    const figure = assumed(ledger.draw, "hardnessPerConductivity");
    const total = assumeFigure(
      ledger,
      {
        code: "hardness-from-conductivity",
        about: "hardness",
        unit: "mol/L",
        why: "No hardness was measured: it is estimated from the conductivity, very roughly. A strip would tell.",
      },
      figure,
      conductivity.value / 1000,
    );
    const scale = conductivity.value / 1000;
    return share(total, figure.low * scale, figure.high * scale, why, ledger);
  }
  const alkalinity = known.get("alkalinity") ?? known.get("bicarbonate");
  if (alkalinity !== undefined && alkalinity.value > 0) {
    const { central, low, high, source } = assumed(ledger.draw, "alkalinityPerHardness");
    const total = alkalinity.value / central / 2;
    const ends = { low: alkalinity.value / high / 2, high: alkalinity.value / low / 2 };
    assume(ledger, {
      code: "hardness-from-alkalinity",
      about: "hardness",
      value: total,
      ...ends,
      unit: "mol/L",
      why: "No hardness was measured: it is estimated from the alkalinity, very roughly. A strip would tell.",
      evidence: "computed",
      source,
    });
    return share(total, ends.low, ends.high, why, ledger);
  }
  say(ledger, "hardness-unknown", "error", path, {
    expected: "hardness, or calcium and magnesium",
    hint: "A hardness strip is the cheapest test that would tell.",
  });
  return null;
}
