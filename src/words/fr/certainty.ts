import type { Translated } from "../en/index.ts";

export const CERTAINTY: Translated<"certainty"> = {
  draws:
    "Les fourchettes couvrent 90 sur 100 de {count} tirages des mesures, constantes et hypothèses, les mêmes partout.",
  solved:
    "Sur toutes les solutions, {count} ont été résolus en entier ; le reste en découle à {difference} sur 100 près.",
  spread: "L'essentiel de la dispersion {where} ({programme}) vient de : {parts}.",
  part: "{input}, {share}",
  toNarrow: "Pour la réduire : {test}. La fourchette serait large d'environ {width} au lieu de {now}.",
  reading: "la mesure de {name}",
  assumed: "{name} (supposé)",
  constantsOfMetals: "les constantes de liaison de {name} avec les métaux",
  constant: "la constante de {name}",
  solubility: "la solubilité de {name}",
  activity: "l'activité de {name} dans la goutte qui sèche (estimée)",
  calciumShareOfHardness: "le partage de la dureté entre calcium et magnésium (supposé)",
  alkalinityPerHardness: "l'alcalinité (supposée d'après la dureté)",
  hardnessPerConductivity: "la dureté (supposée d'après la conductivité)",
  alkalinityPerConductivity: "l'alcalinité (supposée d'après la conductivité)",
  chlorideShare: "le partage des autres anions entre chlorure et sulfate (supposé)",
  sodiumPerHardness: "le sodium (supposé d'après la dureté)",
  potassiumPerSodium: "le potassium (supposé d'après le sodium)",
  pH: "le pH de l'eau (supposé)",
  iron_molPerL: "le fer (supposé)",
  ironDissolved: "la part de fer dissoute en fer(III) (inconnue)",
  temperature_C: "la température (supposée)",
  dissolvedCarbonDioxide_molPerL: "le gaz carbonique dissous (supposé)",
  limitShare: "où se situe une mesure sous sa limite",
  topStepFactor: "de combien l'eau dépasse le dernier échelon de la bandelette",
  nucleationSI: "quand le sel de calcium se forme dans la goutte qui sèche (inconnu)",
  humidityAssumed: "l'humidité de l'air (supposée)",
};
