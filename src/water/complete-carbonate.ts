import { henryLogKAt } from "../chem/index.ts";
import type { ThermoData } from "../chem/index.ts";
import { MOLAR_MASSES, formatNumber } from "../units/index.ts";
import { ASSUMED, WATER_CHECKS } from "./check-data.ts";
import { CARBONATE } from "./charge.ts";
import { addCharge } from "./complete-major.ts";
import { assumed } from "./drawn.ts";
import { assumeFigure, say } from "./ledger.ts";
import type { Ledger } from "./ledger.ts";
import {
  atPH,
  chargeOf_eqPerL,
  solveCarbonate,
  speciesConcentration,
  waterSystem,
} from "./solve-carbonate.ts";
import type { WaterSystem } from "./solve-carbonate.ts";

/** What is known when the inorganic carbon is sought. */
export interface CarbonateInput {
  /** Strong ions and the other components, carrying the alkalinity [mol/L]. */
  readonly totals_molPerL: Readonly<Record<string, number>>;
  readonly alkalinity_eqPerL: number;
  readonly pH: number;
  /** Whether both were measured: only then can they contradict one another; else the strong ions give way. */
  readonly bothMeasured: boolean;
  readonly temperature_C: number;
  /** Where an issue about the pH belongs. */
  readonly path: string;
}

/** pH below which the alkalinity says nothing about the carbon. */
const ACID_PH = 5.5;

/**
 * Totals of the completed water, inorganic carbon included [mol/L], neutral at the measured pH; null, with an error,
 * when pH and alkalinity contradict one another.
 *
 * Waters without alkalinity to speak of get an assumed dissolved carbon dioxide instead, and the strong ion that the
 * measured pH asks for.
 */
export function completeCarbonate(
  input: CarbonateInput,
  thermo: ThermoData,
  ledger: Ledger,
  systems: Map<string, WaterSystem> = new Map(),
): Readonly<Record<string, number>> | null {
  const totals: Record<string, number> = { ...input.totals_molPerL };
  const key = Object.keys(totals).join();
  const water = systems.get(key) ?? waterSystem(totals, thermo, input.temperature_C);
  systems.set(key, water);
  const result = solveCarbonate(water, totals, input.pH);
  if (result.kind === "no equilibrium") return notSolved(input, ledger);
  if (result.kind === "pH too high") return pHTooHigh(water, totals, input, result.surplus_eqPerL, ledger);
  const dissolved = speciesConcentration(result.equilibrium, "CO2");
  const pressure_atm = dissolved / 10 ** henryLogKAt(thermo, "CO2", input.temperature_C);
  const acid =
    input.pH < ACID_PH && input.alkalinity_eqPerL <= WATER_CHECKS.criteria.alkalinityNegligible.value;
  if (acid && dissolved > ASSUMED.dissolvedCarbonDioxide_molPerL.high) {
    return withAssumedCarbon(water, totals, input, ledger);
  }
  const { warning, error } = WATER_CHECKS.criteria.carbonDioxidePressure;
  if (pressure_atm > warning) {
    const severity = pressure_atm > error && input.bothMeasured ? "error" : "warning";
    say(ledger, "ph-below-alkalinity", severity, input.path, {
      received: `pH ${formatNumber(input.pH)} with ${alkalinityText(input.alkalinity_eqPerL)}`,
      expected: "a pH at which the sample would not fizz",
      hint: "Is the pH that of the spray, not of the water? Or is the alkalinity in another unit?",
    });
    if (severity === "error") return null;
  }
  totals[CARBONATE] = result.carbon_molPerL;
  return totals;
}

const CACO3_MG_PER_EQ = MOLAR_MASSES.CaCO3 * 500;

function alkalinityText(alkalinity_eqPerL: number): string {
  return `an alkalinity of ${formatNumber(alkalinity_eqPerL * CACO3_MG_PER_EQ, { unit: "mg/L as CaCO3" })}`;
}

function notSolved(input: CarbonateInput, ledger: Ledger): null {
  say(ledger, "water-not-solved", "error", input.path, {
    received: `pH ${formatNumber(input.pH)} with ${alkalinityText(input.alkalinity_eqPerL)}`,
    hint: "Check pH, alkalinity and their units.",
  });
  return null;
}

/** Acid waters: the carbon is assumed and the strong ions follow from the pH. */
function withAssumedCarbon(
  water: WaterSystem,
  totals: Record<string, number>,
  input: CarbonateInput,
  ledger: Ledger,
): Readonly<Record<string, number>> | null {
  totals[CARBONATE] = assumeFigure(
    ledger,
    {
      code: "carbon-dioxide-assumed",
      about: CARBONATE,
      unit: "mol/L",
      why: "The water has no alkalinity to tell its carbon dioxide: a usual amount is taken.",
    },
    assumed(ledger.draw, "dissolvedCarbonDioxide_molPerL"),
  );
  return closedAtPH(water, totals, input, ledger);
}

/** Adds the strong ion that makes the composition neutral at the measured pH. */
function closedAtPH(
  water: WaterSystem,
  totals: Record<string, number>,
  input: CarbonateInput,
  ledger: Ledger,
): Readonly<Record<string, number>> | null {
  const added: Record<string, number> = { ...totals };
  let open = 0;
  // Each round mends the change of activity coefficients by the ion added before; the series shrinks fast.
  for (let round = 0; round < 20; round += 1) {
    const equilibrium = atPH(water, added, input.pH);
    if (equilibrium === null) return notSolved(input, ledger);
    const charge = chargeOf_eqPerL(equilibrium);
    if (Math.abs(charge) <= 1e-13 + 1e-10 * equilibrium.ionicStrength_molPerL) break;
    open += charge;
    if (open > 0) Object.assign(added, { "Cl-": (totals["Cl-"] ?? 0) + open, "Na+": totals["Na+"] ?? 0 });
    else Object.assign(added, { "Na+": (totals["Na+"] ?? 0) - open, "Cl-": totals["Cl-"] ?? 0 });
  }
  addCharge(totals, open, ledger);
  return totals;
}

/** The alkalinity cannot hold so high a pH: a small mismatch is mended with sodium, a large one refused. */
function pHTooHigh(
  water: WaterSystem,
  totals: Record<string, number>,
  input: CarbonateInput,
  surplus_eqPerL: number,
  ledger: Ledger,
): Readonly<Record<string, number>> | null {
  const { alkalinityNegligible, carbonateFromTest } = WATER_CHECKS.criteria;
  const size = Math.max(input.alkalinity_eqPerL, alkalinityNegligible.value);
  const mended = -surplus_eqPerL <= (size * carbonateFromTest.value) / 100;
  const severity = mended || !input.bothMeasured ? "warning" : "error";
  say(ledger, "ph-above-alkalinity", severity, input.path, {
    received: `pH ${formatNumber(input.pH)} with ${alkalinityText(input.alkalinity_eqPerL)}`,
    expected: "an alkalinity that can hold the pH",
    hint: "Hydroxide alone needs more alkalinity than was measured. Check the pH meter and the unit of the alkalinity.",
  });
  if (severity === "error") return null;
  totals[CARBONATE] = 0;
  return closedAtPH(water, totals, input, ledger);
}
