import { ASSUMED } from "./check-data.ts";
import { alkalinityOf_eqPerL } from "./charge.ts";
import { conductivityFromIons_uSPerCm } from "./conductivity.ts";
import type { KnownReadings } from "./known.ts";
import { assumed } from "./drawn.ts";
import { assume, assumeFigure } from "./ledger.ts";
import type { Ledger } from "./ledger.ts";

type Totals = Record<string, number>;

/**
 * Sodium, potassium, chloride and sulfate [mol/L]: as measured, the missing ones so that the composition carries the
 * alkalinity given and, where a conductivity was measured, conducts as much.
 *
 * @param others_molPerL every other component but carbonate
 * @param alkalinity_eqPerL what the strong ions have to carry
 */
export function completeMajor(
  known: KnownReadings,
  others_molPerL: Readonly<Record<string, number>>,
  alkalinity_eqPerL: number,
  ledger: Ledger,
): Readonly<Record<string, number>> {
  const totals: Totals = { ...others_molPerL };
  for (const [parameter, component] of MEASURED) {
    const entry = known.get(parameter);
    if (entry !== undefined) totals[component] = entry.value;
  }
  if (known.has("sodium") && !known.has("potassium")) addPotassium(totals, ledger);
  if (!known.has("sodium")) addSodium(known, totals, alkalinity_eqPerL, ledger);
  fillAnions(known, totals, alkalinity_eqPerL, ledger);
  return totals;
}

const MEASURED = [
  ["sodium", "Na+"],
  ["potassium", "K+"],
  ["chloride", "Cl-"],
  ["sulfate", "SO4-2"],
] as const;

function addPotassium(totals: Totals, ledger: Ledger): void {
  totals["K+"] = assumeFigure(
    ledger,
    {
      code: "potassium-from-sodium",
      about: "K+",
      unit: "mol/L",
      why: "Potassium was not measured: it stands to sodium as in the waters of the data.",
    },
    assumed(ledger.draw, "potassiumPerSodium"),
    totals["Na+"] ?? 0,
  );
}

/** Cations beyond what the anions and the alkalinity need [eq/L]; negative when cations are short. */
function surplus(totals: Readonly<Record<string, number>>, alkalinity_eqPerL: number): number {
  return alkalinityOf_eqPerL(totals) - alkalinity_eqPerL;
}

/** Sodium, which here stands for potassium too when neither was measured. */
function addSodium(known: KnownReadings, totals: Totals, alkalinity_eqPerL: number, ledger: Ledger): void {
  const least = Math.max(0, -surplus(totals, alkalinity_eqPerL));
  if (known.has("chloride") && known.has("sulfate")) {
    totals["Na+"] = least;
    assume(ledger, {
      code: "sodium-from-balance",
      about: "Na+",
      value: least,
      low: least * 0.5,
      high: least * 1.5 + 0.05 * Math.max(0, alkalinity_eqPerL),
      unit: "mol/L",
      why: "Sodium was not measured: it is what the anions need beyond the other cations, potassium counted with it.",
      evidence: "computed",
    });
    return;
  }
  const conductivity = known.get("conductivity");
  if (conductivity !== undefined) {
    const value = sodiumForConductivity(totals, alkalinity_eqPerL, least, conductivity.value);
    totals["Na+"] = value;
    assume(ledger, {
      code: "sodium-from-conductivity",
      about: "Na+",
      value,
      low: least,
      high: Math.max(2 * value, least + (conductivity.value * 0.1) / 126 / 1000),
      unit: "mol/L",
      why: "Sodium was not measured: it is taken so that the ions conduct as much as was measured.",
      evidence: "computed",
      source: "standard-methods-2510",
    });
    return;
  }
  const hardness_eqPerL = 2 * ((totals["Ca+2"] ?? 0) + (totals["Mg+2"] ?? 0));
  const figure = assumed(ledger.draw, "sodiumPerHardness");
  const value = Math.max(least, figure.central * hardness_eqPerL);
  totals["Na+"] = value;
  assume(ledger, {
    code: "sodium-from-hardness",
    about: "Na+",
    value,
    low: Math.max(least, figure.low * hardness_eqPerL),
    high: Math.max(value, figure.high * hardness_eqPerL),
    unit: "mol/L",
    why: "Sodium was not measured: it stands to the hardness as in the waters of the data, potassium counted with it.",
    evidence: "computed",
    source: figure.source,
  });
}

/** Ions as the conductivity formula wants them, the alkalinity counted as hydrogen carbonate [mol/L]. */
export function conductingIons(
  totals: Readonly<Record<string, number>>,
  alkalinity_eqPerL: number,
  pH: number | null = null,
): Record<string, number> {
  const ions: Record<string, number> = {};
  for (const [name, total] of Object.entries(totals)) {
    // Iron(III), aluminium and phosphate hardly exist as free ions in a natural water.
    if (name !== "CO3-2" && name !== "Fe+3" && name !== "Al+3" && name !== "PO4-3") ions[name] = total;
  }
  const hydroxide = pH === null ? 0 : 10 ** (pH - 14);
  ions["HCO3-"] = Math.max(0, alkalinity_eqPerL - hydroxide);
  if (pH !== null) {
    ions["H+"] = 10 ** -pH;
    ions["OH-"] = hydroxide;
  }
  return ions;
}

/** Sodium [mol/L] at which the calculated conductivity is the measured one; `least` when it is exceeded already. */
function sodiumForConductivity(
  totals: Readonly<Record<string, number>>,
  alkalinity_eqPerL: number,
  least: number,
  measured_uSPerCm: number,
): number {
  const share = ASSUMED.chlorideShare.central;
  const calculated = (sodium: number): number => {
    const filled: Totals = { ...totals, "Na+": sodium };
    const missing = Math.max(0, surplus(filled, alkalinity_eqPerL));
    filled["Cl-"] = (filled["Cl-"] ?? 0) + missing * share;
    filled["SO4-2"] = (filled["SO4-2"] ?? 0) + (missing * (1 - share)) / 2;
    return conductivityFromIons_uSPerCm(conductingIons(filled, alkalinity_eqPerL));
  };
  if (calculated(least) >= measured_uSPerCm) return least;
  let low = least;
  let high = Math.max(1e-6, least * 2);
  // Every doubling adds conductance, so this ends; 5 mol/L is beyond any water.
  while (calculated(high) < measured_uSPerCm && high < 5) high *= 2;
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (calculated(middle) < measured_uSPerCm) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Gives the anions that were not measured what the cations need. */
function fillAnions(known: KnownReadings, totals: Totals, alkalinity_eqPerL: number, ledger: Ledger): void {
  const chloride = known.has("chloride");
  const sulfate = known.has("sulfate");
  if (chloride && sulfate) return;
  const missing = Math.max(0, surplus(totals, alkalinity_eqPerL));
  const { central, low, high, source } = assumed(ledger.draw, "chlorideShare");
  const put = (about: "Cl-" | "SO4-2", share: number, shareLow: number, shareHigh: number): void => {
    const perEquivalent = about === "SO4-2" ? 0.5 : 1;
    const value = missing * share * perEquivalent;
    totals[about] = value;
    assume(ledger, {
      code: "anion-from-balance",
      about,
      value,
      low: missing * shareLow * perEquivalent,
      high: missing * shareHigh * perEquivalent,
      unit: "mol/L",
      why: "Not measured: it is what the cations need beyond the alkalinity and the anions that were measured.",
      evidence: "computed",
      source,
    });
  };
  if (chloride) put("SO4-2", 1, 0, 1.5);
  else if (sulfate) put("Cl-", 1, 0, 1.5);
  else {
    put("Cl-", central, low, high);
    put("SO4-2", 1 - central, 1 - high, 1 - low);
  }
}

/**
 * Closes what is left of the charge balance by adding chloride or sodium, in place, and says how much.
 *
 * @returns what was added
 */
export function closeBalance(totals: Totals, alkalinity_eqPerL: number, ledger: Ledger): void {
  addCharge(totals, surplus(totals, alkalinity_eqPerL), ledger);
}

/** Adds chloride against a surplus of cations [eq/L], or sodium against a shortage, in place. */
export function addCharge(totals: Totals, surplus_eqPerL: number, ledger: Ledger): void {
  const amount = Math.abs(surplus_eqPerL);
  const about = surplus_eqPerL > 0 ? "Cl-" : "Na+";
  const all = Object.values(totals).reduce((sum, total) => sum + total, 0);
  totals[about] = (totals[about] ?? 0) + amount;
  // Rounding alone needs no word.
  if (amount <= 1e-9 * Math.max(all, 1e-3)) return;
  assume(ledger, {
    code: "balance-closed",
    about,
    value: amount,
    low: 0,
    high: 2 * amount,
    unit: "mol/L",
    why:
      about === "Cl-"
        ? "Cations exceed anions: this much chloride was added so that the charges balance."
        : "Anions exceed cations: this much sodium was added so that the charges balance.",
    evidence: "computed",
  });
}
