import { ASSUMED, WATER_CHECKS } from "./check-data.ts";
import { checkAlkalinity } from "./check-readings.ts";
import { alkalinityOf_eqPerL } from "./charge.ts";
import { asTyped } from "./known.ts";
import type { Known, KnownReadings } from "./known.ts";
import { assumed } from "./drawn.ts";
import { assume, say } from "./ledger.ts";
import type { Ledger } from "./ledger.ts";

/** Alkalinity of a water [eq/L]. */
export interface Alkalinity {
  readonly value: number;
  readonly measured: boolean;
}

const CRITERIA = WATER_CHECKS.criteria;
/** Share of the cations by which an alkalinity from the ion balance may be wrong: twice the widest published limit. */
const BALANCE_ERROR = 0.1;

/**
 * Alkalinity [eq/L]: the titration counts before hydrogen carbonate and carbonate, which are checked against it; where
 * neither was measured it follows from the ion balance if all major ions are known, else from the hardness as in real
 * waters.
 *
 * @param totals_molPerL components known so far, calcium and magnesium among them
 */
export function completeAlkalinity(
  known: KnownReadings,
  totals_molPerL: Readonly<Record<string, number>>,
  hardnessMeasured: boolean,
  ledger: Ledger,
): Alkalinity {
  checkForms(known, ledger);
  const alkalinity = known.get("alkalinity");
  const forms = fromForms(known);
  if (alkalinity !== undefined) {
    if (forms !== null) checkAlkalinity(alkalinity, forms.value, `${forms.reading.path}.value`, ledger);
    return { value: alkalinity.value, measured: true };
  }
  if (forms !== null) return { value: forms.value, measured: true };
  const pH = known.get("pH");
  if (pH !== undefined && pH.value < CRITERIA.alkalinityEndPoint.value) return { value: 0, measured: false };
  const complete = (["sodium", "chloride", "sulfate"] as const).every((name) => known.has(name));
  const byBalance = complete && hardnessMeasured ? fromBalance(totals_molPerL, ledger) : null;
  return byBalance ?? fromHardness(known, totals_molPerL, ledger);
}

/** Alkalinity carried by hydrogen carbonate and carbonate [eq/L]; null when the first was not measured. */
function fromForms(known: KnownReadings): Known | null {
  const hydrogenCarbonate = known.get("bicarbonate");
  if (hydrogenCarbonate === undefined) return null;
  const carbonate = known.get("carbonate");
  return { ...hydrogenCarbonate, value: hydrogenCarbonate.value + 2 * (carbonate?.value ?? 0) };
}

function checkForms(known: KnownReadings, ledger: Ledger): void {
  const total = known.get("alkalinity");
  const phenolphthalein = known.get("phenolphthalein alkalinity");
  if (total !== undefined && phenolphthalein !== undefined && phenolphthalein.low > total.high) {
    say(ledger, "alkalinity-forms-impossible", "error", `${phenolphthalein.reading.path}.value`, {
      received: `${asTyped(phenolphthalein)} of ${asTyped(total)}`,
      expected: "no more than the total alkalinity",
      hint: "Were the two lines swapped?",
    });
  }
  const pH = known.get("pH");
  const hydrogenCarbonate = known.get("bicarbonate");
  if (pH === undefined) return;
  const { warning, error } = CRITERIA.hydroxideBesideHydrogenCarbonate;
  const noticeable = CRITERIA.alkalinityNegligible.value;
  if (hydrogenCarbonate !== undefined && hydrogenCarbonate.value > noticeable && pH.value > warning) {
    say(
      ledger,
      "ph-against-hydrogen-carbonate",
      pH.value > error ? "error" : "warning",
      `${pH.reading.path}.value`,
      {
        received: `pH ${pH.reading.typed.value} with ${asTyped(hydrogenCarbonate)} hydrogen carbonate`,
        expected: `a pH below ${error} beside hydrogen carbonate`,
        hint: "Is the pH mistyped, or is the alkalinity carbonate and hydroxide?",
      },
    );
  }
  const alkalinity = total ?? hydrogenCarbonate;
  if (
    alkalinity !== undefined &&
    alkalinity.low > noticeable &&
    pH.value < CRITERIA.alkalinityEndPoint.value
  ) {
    say(ledger, "ph-below-alkalinity", "error", `${pH.reading.path}.value`, {
      received: `pH ${pH.reading.typed.value} with an alkalinity of ${asTyped(alkalinity)}`,
      expected: `a pH above ${CRITERIA.alkalinityEndPoint.value}, or no alkalinity`,
      hint: "Below this pH the titration is already over. Is the pH that of the spray, not of the water?",
    });
  }
}

function fromBalance(totals_molPerL: Readonly<Record<string, number>>, ledger: Ledger): Alkalinity | null {
  const value = alkalinityOf_eqPerL(totals_molPerL);
  if (value <= 0) return null;
  const cations = Object.entries(totals_molPerL).reduce(
    (sum, [name, total]) => sum + Math.max(0, alkalinityOf_eqPerL({ [name]: total })),
    0,
  );
  assume(ledger, {
    code: "alkalinity-from-balance",
    about: "alkalinity",
    value,
    low: Math.max(0, value - BALANCE_ERROR * cations),
    high: value + BALANCE_ERROR * cations,
    unit: "eq/L",
    why: "Alkalinity was not measured: it is what is left of the cations when chloride, sulfate and nitrate are taken off.",
    evidence: "computed",
    source: "standard-methods-1030e",
  });
  return { value, measured: false };
}

function fromHardness(
  known: KnownReadings,
  totals_molPerL: Readonly<Record<string, number>>,
  ledger: Ledger,
): Alkalinity {
  const hardness_eqPerL = 2 * ((totals_molPerL["Ca+2"] ?? 0) + (totals_molPerL["Mg+2"] ?? 0));
  const figure = assumed(ledger.draw, "alkalinityPerHardness");
  const conductivity = known.get("conductivity");
  // The conductivity caps what the ions can carry.
  const cap =
    conductivity === undefined
      ? Infinity
      : (ASSUMED.alkalinityPerConductivity.high * conductivity.value) / 1000;
  const capped = (share: number): number => Math.min(cap, share * hardness_eqPerL);
  const value = capped(figure.central);
  assume(ledger, {
    code: "alkalinity-from-hardness",
    about: "alkalinity",
    value,
    low: capped(figure.low),
    high: capped(figure.high),
    unit: "eq/L",
    why: "Alkalinity was not measured: it stands to the hardness as in the waters of the data, which differ widely.",
    evidence: "computed",
    source: figure.source,
  });
  return { value, measured: false };
}
