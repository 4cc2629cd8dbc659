import type { Phrases } from "../phrases.ts";

/** What is said of numbers, units and quantities. */
export const ISSUES_UNITS: Phrases = {
  "The decimal mark differs from the one in use.": "Das Dezimalzeichen ist ein anderes als sonst.",
  "Use the same decimal mark throughout.": "Überall dasselbe Dezimalzeichen verwenden.",
  "The marks between groups of digits do not fit.": "Die Zeichen zwischen den Zifferngruppen passen nicht.",
  "Write the number without marks between groups.": "Die Zahl ohne Gruppenzeichen schreiben.",
  "This number is too large to compute with.": "Mit einer so großen Zahl lässt sich nicht rechnen.",
  "Check the power of ten.": "Die Zehnerpotenz prüfen.",
  "Not detected, but without the detection limit.": "Nicht nachgewiesen, aber ohne Nachweisgrenze.",
  "Write the limit with a < in front.": "Die Grenze mit < davor schreiben.",
  "One number is needed here, not a range.": "Hier ist eine Zahl nötig, keine Spanne.",
  "Write the number to plan with.": "Die Zahl schreiben, mit der geplant wird.",
  "This is not a number followed by a unit.": "Das ist keine Zahl mit Einheit dahinter.",
  "Write the number first, then the unit.": "Erst die Zahl schreiben, dann die Einheit.",
  "Check whether the entry is in the right place.": "Prüfen, ob der Eintrag an der richtigen Stelle steht.",
  "This unit has two meanings.": "Diese Einheit hat zwei Bedeutungen.",
  "Write which of the two is meant.": "Schreiben, welche der beiden gemeint ist.",
  "This unit belongs to another method and cannot be converted.":
    "Diese Einheit gehört zu einem anderen Verfahren und lässt sich nicht umrechnen.",
  "Ask the laboratory for one of the units named.": "Das Labor nach einer der genannten Einheiten fragen.",
  "Milliequivalents need a charge, and that of this reading is not known.":
    "Milliäquivalente brauchen eine Ladung; die dieses Messwerts ist nicht bekannt.",
  "Give the reading in mg/L.": "Den Messwert in mg/L angeben.",
  "The unit does not say what it counts; the usual basis was taken.":
    "Die Einheit sagt nicht, was sie zählt; die übliche Basis gilt.",
  "Write the basis, such as “mg/L as CaCO3”.": "Die Basis nennen, etwa „mg/L as CaCO3“.",
  "This reading cannot be counted on that basis.":
    "Dieser Messwert lässt sich nicht auf dieser Basis zählen.",
  "Check what the report counts it as.": "Prüfen, als was der Befund ihn zählt.",
  "No reading of a water test has this name.": "So heißt kein Messwert einer Wasseranalyse.",
  "Use one of the names known.": "Einen der bekannten Namen nehmen.",
  "A share lies between 0 and 1.": "Ein Anteil liegt zwischen 0 und 1.",
  "Write 0.95 or 95 % for ninety-five in a hundred.": "Für 95 von 100 entweder 0,95 oder 95 % schreiben.",
  "Copy the unit from the report.": "Die Einheit aus dem Befund übernehmen.",
  "Did you mean {near}?": "Ist {near} gemeint?",
  "Did you mean “{near}”?": "Ist „{near}“ gemeint?",
  "Did you mean “{near}” or “{other}”?": "Ist „{near}“ oder „{other}“ gemeint?",
  "Did you mean “{near}” or “{other}” or “{third}”?": "Ist „{near}“, „{other}“ oder „{third}“ gemeint?",
  'Taken as {unit} as {basis}. Write "as {other}" if the report counts it so.':
    "Als {unit} as {basis} genommen. „as {other}“ schreiben, wenn der Befund so zählt.",
  "Its charge depends on pH or on its form, so equivalents cannot be turned into moles.":
    "Seine Ladung hängt von pH oder Form ab; Äquivalente lassen sich nicht in Mol umrechnen.",
  "mg/L or mmol/L": "mg/L oder mmol/L",
  "A pen that shows ppm has turned conductivity into dissolved solids: give it as those.":
    "Ein Messstift mit ppm hat die Leitfähigkeit in gelöste Stoffe umgerechnet: als solche angeben.",
  "That is a unit of conductivity: give the reading as conductivity.":
    "Das ist eine Einheit der Leitfähigkeit: den Messwert als Leitfähigkeit angeben.",
  "That is a unit of conductivity: was the line mistaken?":
    "Das ist eine Einheit der Leitfähigkeit: Zeile verwechselt?",
  "That is a unit of hardness or alkalinity: was the line mistaken?":
    "Das ist eine Einheit für Härte oder Säurekapazität: Zeile verwechselt?",
  "That is a unit of temperature: was the line mistaken?":
    "Das ist eine Temperatureinheit: Zeile verwechselt?",
  "That is a unit of another kind of reading: was the line mistaken?":
    "Das ist eine Einheit für andere Messwerte: Zeile verwechselt?",
  "a number": "eine Zahl",
  "a number, a limit such as <0.05, a range such as 20–30, or nothing":
    "eine Zahl, eine Grenze wie <0,05, eine Spanne wie 20–30, oder nichts",
  "the detection limit, such as <0.05, or nothing if it was not measured":
    "die Nachweisgrenze, etwa <0,05, oder nichts, wenn nicht gemessen wurde",
  "Look for the reporting limit on the report and write it with a < in front.":
    "Die Bestimmungsgrenze im Befund suchen und mit < davor schreiben.",
  "the lower end first": "das untere Ende zuerst",
  "a number such as 12.5": "eine Zahl wie 12,5",
  "groups of three digits, such as 1 250": "Gruppen aus drei Ziffern, etwa 1 250",
  "groups of three digits, such as 1,250.5": "Gruppen aus drei Ziffern, etwa 1.250,5",
  "a smaller number": "eine kleinere Zahl",
  "{one} or {other}": "{one} oder {other}",
  "Write it as {one} or {other}, whichever is meant.":
    "Als {one} oder {other} schreiben, je nachdem, was gemeint ist.",
  "The mark used here is not the decimal mark the report uses.":
    "Das Zeichen hier ist nicht das Dezimalzeichen des Befunds.",
  "a number with {units}": "eine Zahl mit {units}",
  "zero or more": "null oder mehr",
  "more than zero": "mehr als null",
  "at most 1000 g/kg": "höchstens 1000 g/kg",
  "at most 2500 g/L": "höchstens 2500 g/L",
  "More than the product can hold: is the unit right?":
    "Mehr, als das Mittel enthalten kann: Stimmt die Einheit?",
  "a price such as 0.55 /kg, 1.20 /L or 12 /20 kg": "ein Preis wie 0,55 /kg, 1,20 /L oder 12 /20 kg",
  "a share such as 0.95 or 95 %": "ein Anteil wie 0,95 oder 95 %",
  "Did you mean {number} %?": "Sind {number} % gemeint?",
  "FAU measures how much light is lost through the sample, NTU and FNU how much is scattered: there is no factor.":
    "FAU misst das geschwächte Licht, NTU und FNU das gestreute: Einen Faktor gibt es nicht.",
  "JTU is read by eye over a candle: there is no factor to NTU.":
    "JTU wird mit dem Auge über einer Kerze abgelesen: Einen Faktor zu NTU gibt es nicht.",
  "FTU names the standard suspension, not the method: ask whether the meter gives NTU, FNU or FAU.":
    "FTU nennt den Standard, nicht das Verfahren: fragen, ob das Gerät NTU, FNU oder FAU misst.",
  "Write the unit after the number.": "Die Einheit nach der Zahl schreiben.",
  "Give the one number the card is to be written for.":
    "Die eine Zahl angeben, für die die Karte gelten soll.",
  "% w/w (g per 100 g) or % w/v (g per 100 mL)": "% w/w (g je 100 g) oder % w/v (g je 100 mL)",
  "% w/v or % v/v": "% w/v oder % v/v",
  "The label says which.": "Das Etikett sagt, welches.",
  "An ounce is a weight. Did you mean fl oz/ac?": "Eine Unze ist ein Gewicht. Ist fl oz/ac gemeint?",
  "{unit} is a unit of {quantity}.": "{unit} ist eine Einheit für: {quantity}.",
};
