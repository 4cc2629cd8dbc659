import { formatNumber } from "../units/index.ts";
import type { Parameter } from "../units/index.ts";
import type { Alkalinity } from "./complete-alkalinity.ts";
import { conductingIons } from "./complete-major.ts";
import { alkalinityOf_eqPerL } from "./charge.ts";
import { WATER_CHECKS } from "./check-data.ts";
import { conductivityFromIons_uSPerCm, conductivitiesAgree, dissolvedSolidsRatio } from "./conductivity.ts";
import { chargeBalanceError_percent, judgeBalance } from "./ion-balance.ts";
import type { IonSums } from "./ion-balance.ts";
import { asTyped } from "./known.ts";
import type { KnownReadings } from "./known.ts";
import { say } from "./ledger.ts";
import type { Ledger } from "./ledger.ts";
import { slipsOf } from "./slips.ts";

const CRITERIA = WATER_CHECKS.criteria;

/** Major ions that must be measured before a balance means anything. */
const MAJOR: readonly Parameter[] = ["sodium", "chloride", "sulfate"];

/**
 * Checks the readings against one another as a whole, before anything is completed: charge balance, conductivity
 * against ions, dissolved solids against conductivity.
 *
 * @param metals_molPerL calcium, magnesium and the minor components
 * @returns (cations − anions)/(cations + anions) · 100; null when too little was measured
 */
export function checkComposition(
  known: KnownReadings,
  metals_molPerL: Readonly<Record<string, number>>,
  alkalinity: Alkalinity,
  pH: number,
  path: string,
  ledger: Ledger,
): number | null {
  checkDissolvedSolids(known, ledger);
  const complete =
    alkalinity.measured &&
    MAJOR.every((parameter) => known.has(parameter)) &&
    (known.has("calcium") || known.has("calcium hardness") || known.has("hardness")) &&
    (known.has("magnesium") || known.has("magnesium hardness") || known.has("hardness"));
  if (!complete) {
    checkLeastConductivity(known, metals_molPerL, ledger);
    return null;
  }
  const totals = measuredTotals(known, metals_molPerL);
  const sums = sumsOf(totals, alkalinity.value, pH);
  const balance = chargeBalanceError_percent(sums);
  const verdict = judgeBalance(sums);
  if (balance !== null && !verdict.accepted) {
    say(ledger, "charge-balance-off", "warning", path, {
      received: `cations ${formatNumber(sums.cations_meqPerL)} meq/L, anions ${formatNumber(sums.anions_meqPerL)} meq/L, ${formatNumber(balance, { significant: 2 })} %`,
      expected: `within ${verdict.limit} ${verdict.limitUnit} at this strength`,
      hint: balanceSlip(known, totals, alkalinity.value, pH) ?? balanceHint(balance, known),
    });
  }
  checkConductivity(known, totals, alkalinity.value, pH, path, ledger);
  return balance;
}

function measuredTotals(
  known: KnownReadings,
  metals_molPerL: Readonly<Record<string, number>>,
): Readonly<Record<string, number>> {
  return {
    ...metals_molPerL,
    "Na+": known.get("sodium")?.value ?? 0,
    "K+": known.get("potassium")?.value ?? 0,
    "Cl-": known.get("chloride")?.value ?? 0,
    "SO4-2": known.get("sulfate")?.value ?? 0,
  };
}

/** Sums of cations and anions, the hydrogen ion and what carries the alkalinity among them. */
function sumsOf(totals: Readonly<Record<string, number>>, alkalinity_eqPerL: number, pH: number): IonSums {
  let cations = 0;
  let anions = 0;
  for (const [name, total] of Object.entries(totals)) {
    const charge = alkalinityOf_eqPerL({ [name]: total });
    if (charge > 0) cations += charge;
    else anions -= charge;
  }
  // Alkalinity is hydrogen carbonate and its like less the hydrogen ion, so the anions are the two together.
  const hydrogen = 10 ** -pH;
  return {
    cations_meqPerL: (cations + hydrogen) * 1000,
    anions_meqPerL: (anions + Math.max(0, alkalinity_eqPerL + hydrogen)) * 1000,
  };
}

const COMPONENT_OF: Readonly<Partial<Record<Parameter, string>>> = {
  calcium: "Ca+2",
  magnesium: "Mg+2",
  sodium: "Na+",
  potassium: "K+",
  chloride: "Cl-",
  sulfate: "SO4-2",
  nitrate: "NO3-",
};

/** Most slips named for one balance; more would be guessing. */
const MOST_SLIPS = 2;

/** The slips of unit that would bring the balance within the limits, best fit first; null when none would. */
function balanceSlip(
  known: KnownReadings,
  totals: Readonly<Record<string, number>>,
  alkalinity_eqPerL: number,
  pH: number,
): string | null {
  const fits: { readonly hint: string; readonly left: number }[] = [];
  const consider = (hint: string, sums: IonSums): void => {
    const left = Math.abs(chargeBalanceError_percent(sums) ?? 100);
    if (judgeBalance(sums).accepted && !fits.some((fit) => fit.hint === hint)) fits.push({ hint, left });
  };
  for (const [parameter, component] of Object.entries(COMPONENT_OF) as [Parameter, string][]) {
    const entry = known.get(parameter);
    if (entry === undefined || entry.value === 0) continue;
    for (const { factor, hint } of slipsOf(parameter)) {
      const mended = { ...totals, [component]: entry.value / factor };
      consider(`${parameter}: ${hint}`, sumsOf(mended, alkalinity_eqPerL, pH));
    }
  }
  const alkalinityName = known.has("alkalinity") ? "alkalinity" : "bicarbonate";
  for (const { factor, hint } of slipsOf(alkalinityName)) {
    consider(`${alkalinityName}: ${hint}`, sumsOf(totals, alkalinity_eqPerL / factor, pH));
  }
  if (fits.length === 0) return null;
  return fits
    .sort((one, other) => one.left - other.left)
    .slice(0, MOST_SLIPS)
    .map(({ hint }) => hint)
    .join(" Or ");
}

function balanceHint(balance_percent: number, known: KnownReadings): string {
  const gross = Math.abs(balance_percent) > CRITERIA.ionBalanceGross.value;
  const short = balance_percent > 0 ? "anion" : "cation";
  const missing = (balance_percent > 0 ? (["nitrate"] as const) : (["potassium"] as const)).filter(
    (parameter) => !known.has(parameter),
  );
  if (gross) return `Is one ${short} in another unit, or was a main one not measured?`;
  const others = missing.length === 0 ? "" : ` Not measured: ${missing.join(" and ")}.`;
  return `The ${short}s are short.${others}`;
}

/** Calculated over measured conductivity above which an incomplete analysis contradicts its conductivity. */
const IMPOSSIBLE_RATIO = 1.5;
/** The same, beyond which only a slip of unit is left. */
const SLIP_RATIO = 5;

/** Hardness, sodium and alkalinity alone conduct more than was measured: no analysis can be so incomplete. */
function checkLeastConductivity(
  known: KnownReadings,
  metals_molPerL: Readonly<Record<string, number>>,
  ledger: Ledger,
): void {
  const measured = known.get("conductivity");
  const hardness = known.get("hardness") ?? known.get("calcium") ?? known.get("magnesium");
  if (measured === undefined || measured.value <= 0 || hardness === undefined) return;
  const cations = measuredTotals(known, metals_molPerL);
  const charge = 2 * (cations["Ca+2"] ?? 0) + 2 * (cations["Mg+2"] ?? 0) + (cations["Na+"] ?? 0);
  // Hydrogen carbonate conducts least of the anions, so this is the least the cations can come to.
  const least = conductivityFromIons_uSPerCm({
    "Ca+2": cations["Ca+2"] ?? 0,
    "Mg+2": cations["Mg+2"] ?? 0,
    "Na+": cations["Na+"] ?? 0,
    "HCO3-": charge,
  });
  const ratio = least / measured.value;
  if (ratio <= IMPOSSIBLE_RATIO) return;
  say(
    ledger,
    "conductivity-against-ions",
    ratio > SLIP_RATIO ? "error" : "warning",
    `${measured.reading.path}.value`,
    {
      received: `${asTyped(measured)}, calcium, magnesium and sodium alone come to ${formatNumber(least, { unit: "µS/cm" })}`,
      expected: "no less than the ions conduct",
      hint: ratio > 100 ? "mS/cm typed as µS/cm?" : "Check the units of conductivity and hardness.",
    },
  );
}

function checkConductivity(
  known: KnownReadings,
  totals: Readonly<Record<string, number>>,
  alkalinity_eqPerL: number,
  pH: number,
  path: string,
  ledger: Ledger,
): void {
  const measured = known.get("conductivity");
  if (measured === undefined || measured.value <= 0) return;
  const calculated = conductivityFromIons_uSPerCm(conductingIons(totals, alkalinity_eqPerL, pH));
  if (conductivitiesAgree(calculated, measured.value)) return;
  const { low, high } = CRITERIA.conductivityRatio;
  const ratio = calculated / measured.value;
  const size = ratio > 100 ? "mS/cm typed as µS/cm?" : ratio < 0.01 ? "µS/cm typed as mS/cm?" : null;
  say(ledger, "conductivity-against-ions", "warning", measured.reading.path || path, {
    received: `${asTyped(measured)}, from the ions ${formatNumber(calculated, { unit: "µS/cm" })}`,
    expected: `calculated over measured from ${low} to ${high}`,
    hint:
      size ??
      (ratio < 1
        ? "Is an ion missing or too small?"
        : "Is an ion too large, or was the reading not at 25 °C?"),
  });
}

function checkDissolvedSolids(known: KnownReadings, ledger: Ledger): void {
  const solids = known.get("dissolved solids");
  const conductivity = known.get("conductivity");
  if (solids === undefined || conductivity === undefined || conductivity.value <= 0) return;
  const { ratio, band } = dissolvedSolidsRatio(solids.value, conductivity.value);
  if (band === "usual") return;
  const { low, high } = CRITERIA.dissolvedSolidsPerConductivity;
  // Gypsum-rich waters run a little above the band; only a plain misfit is a warning.
  const severity = ratio > 1.2 * high || ratio < 0.8 * low ? "warning" : "note";
  // Against next to nothing the ratio is beyond any number.
  const told = Number.isFinite(ratio) ? `ratio ${formatNumber(ratio)}` : "beyond any ratio";
  say(ledger, "dissolved-solids-against-conductivity", severity, `${solids.reading.path}.value`, {
    received: `${asTyped(solids)} at ${asTyped(conductivity)}, ${told}`,
    expected: `a ratio from ${low} to ${high}`,
    hint: ratio > high ? "Water rich in sulfate or bicarbonate runs high." : "Acid or salty water runs low.",
  });
}
