import type { Translated } from "../en/index.ts";

export const CERTAINTY: Translated<"certainty"> = {
  draws:
    "Los márgenes contienen 90 de cada 100 de {count} sorteos de medidas, constantes y supuestos, iguales para todos.",
  solved:
    "En todas las salidas, {count} se resolvieron por completo; el resto se deduce con error de {difference} de cada 100.",
  spread: "La mayor parte de la dispersión {where} ({programme}) viene de: {parts}.",
  part: "{input}, {share}",
  toNarrow: "Para reducirla: {test}. El margen sería de unos {width} en vez de {now}.",
  reading: "la medida de {name}",
  assumed: "{name} (supuesto)",
  constantsOfMetals: "las constantes de unión de {name} con metales",
  constant: "la constante de {name}",
  solubility: "la solubilidad de {name}",
  activity: "la actividad de {name} en la gota que se seca (estimada)",
  calciumShareOfHardness: "el reparto de la dureza entre calcio y magnesio (supuesto)",
  alkalinityPerHardness: "la alcalinidad (supuesta por la dureza)",
  hardnessPerConductivity: "la dureza (supuesta por la conductividad)",
  alkalinityPerConductivity: "la alcalinidad (supuesta por la conductividad)",
  chlorideShare: "el reparto de los otros aniones entre cloruro y sulfato (supuesto)",
  sodiumPerHardness: "el sodio (supuesto por la dureza)",
  potassiumPerSodium: "el potasio (supuesto por el sodio)",
  pH: "el pH del agua (supuesto)",
  iron_molPerL: "el hierro (supuesto)",
  ironDissolved: "cuánto hierro está disuelto como hierro(III) (no se sabe)",
  temperature_C: "la temperatura (supuesta)",
  dissolvedCarbonDioxide_molPerL: "el dióxido de carbono disuelto (supuesto)",
  limitShare: "dónde queda una medida bajo su límite",
  topStepFactor: "cuánto supera el agua el último escalón de la tira",
  nucleationSI: "cuándo se forma la sal de calcio en la gota que se seca (no se sabe)",
  humidityAssumed: "la humedad del aire (supuesta)",
};
