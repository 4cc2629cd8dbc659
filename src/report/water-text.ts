import { componentInfo } from "../chem/index.ts";
import type { ThermoData } from "../chem/index.ts";
import { GRAIN_MG, IMPERIAL_GALLON_L, MOLAR_MASSES, US_GALLON_L } from "../units/index.ts";
import {
  HARDNESS_SCALES,
  alkalinity_mgPerL_asCaCO3,
  hardnessClass,
  hardness_mgPerL_asCaCO3,
} from "../water/index.ts";
import type { Water } from "../water/index.ts";
import { wrap } from "./card-text.ts";
import { figure, pHText } from "./figures.ts";
import { evidenceMark } from "./sentences.ts";
import { wordIssue } from "./wording.ts";

/** One hardness in one unit. */
export interface HardnessIn {
  readonly value: number;
  readonly unit: string;
}

/**
 * A hardness in the units that reports and growers use.
 *
 * @param hardness_molPerL calcium plus magnesium
 * @source definitions of the degrees: 10 mg CaO per L (German), 10 mg CaCO3 per L (French), one grain of CaCO3 per
 * imperial gallon (Clark) or per US gallon
 */
export function hardnessInUnits(hardness_molPerL: number): readonly HardnessIn[] {
  const asCaCO3_mgPerL = hardness_molPerL * MOLAR_MASSES.CaCO3 * 1000;
  return [
    { value: asCaCO3_mgPerL, unit: "mg/L as CaCO3" },
    { value: hardness_molPerL * 1000, unit: "mmol/L" },
    { value: (hardness_molPerL * MOLAR_MASSES.CaO * 1000) / 10, unit: "°dH" },
    { value: asCaCO3_mgPerL / 10, unit: "°fH" },
    { value: (asCaCO3_mgPerL * IMPERIAL_GALLON_L) / GRAIN_MG, unit: "°Clark" },
    { value: (asCaCO3_mgPerL * US_GALLON_L) / GRAIN_MG, unit: "grains per US gallon" },
  ];
}

/** Totals below this are not worth a line [mol/L]. */
const LEAST_SHOWN_MOL_PER_L = 1e-9;

/** A completed water as plain text: numbers first, then checks, assumptions and issues. At most 78 signs wide. */
export function waterText(water: Water, thermo: ThermoData): string {
  const hardness = hardnessInUnits(water.hardness_molPerL).map(
    ({ value, unit }) => `${figure(value)} ${unit}`,
  );
  const classes = HARDNESS_SCALES.map((scale) => hardnessClass(hardness_mgPerL_asCaCO3(water), scale.id));
  const parts: string[][] = [
    [
      `${water.source}, ${figure(water.temperature_C)} °C, pH ${pHText(water.pH)}`,
      ...wrap(`Hardness: ${hardness.join(", ")}`, "  "),
      ...classes.flatMap((one) => wrap(`  “${one.class}” on the scale ${one.scale}`, "    ")),
      `Alkalinity: ${figure(alkalinity_mgPerL_asCaCO3(water))} mg/L as CaCO3, ${figure(water.alkalinity_molPerL * 1000)} meq/L`,
    ],
    compositionLines(water, thermo),
    checkLines(water),
    water.assumptions.length === 0
      ? []
      : [
          "NOT MEASURED, so assumed",
          ...water.assumptions.flatMap((one) =>
            wrap(
              `  ${one.about}: ${figure(one.value)} ${one.unit} (${figure(one.low)} to ${figure(one.high)}). ${one.why} ${evidenceMark(one.evidence)}`,
              "    ",
            ),
          ),
        ],
    water.issues.length === 0
      ? []
      : ["TO LOOK AT", ...water.issues.flatMap((issue) => wrap(`  ${wordIssue(issue)}`, "    "))],
  ];
  return `${parts
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}

function compositionLines(water: Water, thermo: ThermoData): string[] {
  const lines = [
    "COMPOSITION, after completion",
    `  ${"component".padEnd(12)}${"mmol/L".padStart(10)}${"mg/L".padStart(10)}`,
  ];
  const totals = Object.entries(water.totals_molPerL).filter(([, total]) => total >= LEAST_SHOWN_MOL_PER_L);
  for (const [name, total] of totals.sort(([, a], [, b]) => b - a)) {
    const mass = total * 1000 * componentInfo(thermo, name).molarMass_gPerMol;
    lines.push(`  ${name.padEnd(12)}${figure(total * 1000).padStart(10)}${figure(mass).padStart(10)}`);
  }
  lines.push("  Each total counts all its forms; CO3-2 is all dissolved inorganic carbon, as CO3.");
  return lines;
}

function checkLines(water: Water): string[] {
  const lines = ["CHECKS"];
  const balance = water.chargeBalance_percent;
  lines.push(
    balance === null
      ? "  Charge balance: too little was measured."
      : `  Charge balance of the readings: ${figure(balance, 2)} %.`,
  );
  const { conductivity_uSPerCm, turbidity_NTU, suspendedSolids_mgPerL } = water;
  if (conductivity_uSPerCm !== null)
    lines.push(`  Conductivity: ${figure(conductivity_uSPerCm)} µS/cm at 25 °C.`);
  if (turbidity_NTU !== null) lines.push(`  Turbidity: ${figure(turbidity_NTU)} NTU.`);
  if (suspendedSolids_mgPerL !== null)
    lines.push(`  Suspended solids: ${figure(suspendedSolids_mgPerL)} mg/L.`);
  return lines;
}
