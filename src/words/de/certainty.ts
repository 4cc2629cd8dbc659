import type { Translated } from "../en/index.ts";

export const CERTAINTY: Translated<"certainty"> = {
  draws:
    "Die Spannen enthalten 90 von 100 von {count} Ziehungen aus Messwerten, Konstanten und Annahmen, gleich für alle Wege.",
  solved:
    "Über alle Wege wurden {count} voll gerechnet; der Rest folgt daraus auf etwa {difference} von 100 genau.",
  spread: "Die Streuung {where} ({programme}) kommt vor allem von: {parts}.",
  part: "{input}, {share}",
  toNarrow: "Zum Eingrenzen: {test}. Die Spanne wäre etwa {width} breit statt {now}.",
  reading: "der Messwert für {name}",
  assumed: "{name} (angenommen)",
  constantsOfMetals: "die Bindungskonstanten von {name} mit Metallen",
  constant: "die Konstante von {name}",
  solubility: "die Löslichkeit von {name}",
  activity: "die Aktivität von {name} im trocknenden Tropfen (geschätzt)",
  calciumShareOfHardness: "die Teilung der Härte in Calcium und Magnesium (angenommen)",
  alkalinityPerHardness: "die Säurekapazität (aus der Härte angenommen)",
  hardnessPerConductivity: "die Härte (aus der Leitfähigkeit angenommen)",
  alkalinityPerConductivity: "die Säurekapazität (aus der Leitfähigkeit angenommen)",
  chlorideShare: "die Teilung der übrigen Anionen in Chlorid und Sulfat (angenommen)",
  sodiumPerHardness: "das Natrium (aus der Härte angenommen)",
  potassiumPerSodium: "das Kalium (aus dem Natrium angenommen)",
  pH: "der pH-Wert des Wassers (angenommen)",
  iron_molPerL: "das Eisen (angenommen)",
  ironDissolved: "wie viel Eisen als Eisen(III) gelöst ist (nicht bekannt)",
  temperature_C: "die Temperatur (angenommen)",
  dissolvedCarbonDioxide_molPerL: "das gelöste Kohlendioxid (angenommen)",
  limitShare: "wo unter der Nachweisgrenze ein Messwert liegt",
  topStepFactor: "wie weit das Wasser über der obersten Stufe des Teststreifens liegt",
  nucleationSI: "wann sich das Calciumsalz des Wirkstoffs im Tropfen bildet (nicht bekannt)",
  humidityAssumed: "die Luftfeuchte (angenommen)",
};
