import type { PlanUncertainty } from "../agronomy/index.ts";
import { figure, inHundred, perHundred } from "./figures.ts";

/** What is assumed, by the name of its figure. */
const ASSUMED_WORDS: Readonly<Record<string, string>> = {
  calciumShareOfHardness: "how the hardness splits into calcium and magnesium (assumed)",
  alkalinityPerHardness: "the alkalinity (assumed from the hardness)",
  hardnessPerConductivity: "the hardness (assumed from the conductivity)",
  alkalinityPerConductivity: "the alkalinity (assumed from the conductivity)",
  chlorideShare: "how the other anions split into chloride and sulfate (assumed)",
  sodiumPerHardness: "the sodium (assumed from the hardness)",
  potassiumPerSodium: "the potassium (assumed from the sodium)",
  pH: "the pH of the water (assumed)",
  iron_molPerL: "the iron (assumed)",
  ironDissolved: "how much of the iron is dissolved iron(III) (not known)",
  temperature_C: "the temperature (assumed)",
  dissolvedCarbonDioxide_molPerL: "the dissolved carbon dioxide (assumed)",
  limitShare: "where below its limit a reading lies",
  topStepFactor: "how far above the top step of the strip the water is",
  nucleationSI: "when the calcium salt of the active forms in the drying drop (not known)",
  humidityAssumed: "the humidity of the air (assumed)",
};

/** An uncertain input in words, by its key. */
export function inputWords(key: string): string {
  const at = key.indexOf(":");
  const name = key.slice(at + 1);
  switch (key.slice(0, at)) {
    case "reading":
      return `the reading of ${name}`;
    case "assumed":
      return ASSUMED_WORDS[name] ?? `${name} (assumed)`;
    case "constant":
      return name.startsWith("metals of ")
        ? `the binding constants of ${name.slice("metals of ".length)} with metals`
        : `the constant of ${name}`;
    case "solubility":
      return `the solubility of ${name}`;
    case "activity":
      return `the activity of ${name} in the drying drop (estimated)`;
    default:
      return key;
  }
}

/** What the ranges are, as sentences: how they were found, what they rest on, what would narrow them. */
export function uncertaintySentences(uncertainty: PlanUncertainty, programmeName: string): readonly string[] {
  const { draws, control, spread, measureNext, about } = uncertainty;
  const said = [
    `Ranges hold 90 of 100 of ${String(draws)} draws of readings, constants and what is assumed, the same for all ways out.`,
    `${String(control.solved)} were solved in full; the rest follow from these to within about ${figure(100 * control.difference, 1)} in 100.`,
  ];
  if (spread.length > 0) {
    const parts = spread.slice(0, 3).map(({ input, part }) => `${inputWords(input)}, ${inHundred(part)}`);
    said.push(`Most of the spread ${about.where} (${programmeName}) comes from: ${parts.join("; ")}.`);
  }
  for (const next of measureNext.slice(0, 2)) {
    said.push(
      `To narrow it: ${next.words}. The range would be about ${perHundred(next.width)} wide instead of ${perHundred(about.width)}.`,
    );
  }
  return said;
}
