import type { Phrases } from "../phrases.ts";

/** What is said of numbers, units and quantities. */
export const ISSUES_UNITS: Phrases = {
  "The decimal mark differs from the one in use.": "Le signe décimal n'est pas celui en usage.",
  "Use the same decimal mark throughout.": "Employer partout le même signe décimal.",
  "The marks between groups of digits do not fit.": "Les signes entre groupes de chiffres ne cadrent pas.",
  "Write the number without marks between groups.": "Écrire le nombre sans signes entre groupes.",
  "This number is too large to compute with.": "Ce nombre est trop grand pour le calcul.",
  "Check the power of ten.": "Vérifier la puissance de dix.",
  "Not detected, but without the detection limit.": "Non détecté, mais sans limite de détection.",
  "Write the limit with a < in front.": "Écrire la limite précédée de <.",
  "One number is needed here, not a range.": "Il faut un nombre ici, pas une plage.",
  "Write the number to plan with.": "Écrire le nombre à prendre pour le plan.",
  "This is not a number followed by a unit.": "Ce n'est pas un nombre suivi d'une unité.",
  "Write the number first, then the unit.": "Écrire d'abord le nombre, puis l'unité.",
  "Check whether the entry is in the right place.": "Vérifier que l'entrée est à sa place.",
  "This unit has two meanings.": "Cette unité a deux sens.",
  "Write which of the two is meant.": "Écrire lequel des deux est voulu.",
  "This unit belongs to another method and cannot be converted.":
    "Cette unité relève d'une autre méthode et ne se convertit pas.",
  "Ask the laboratory for one of the units named.": "Demander au laboratoire une des unités citées.",
  "Milliequivalents need a charge, and that of this reading is not known.":
    "Les milliéquivalents veulent une charge ; celle de cette mesure est inconnue.",
  "Give the reading in mg/L.": "Donner la mesure en mg/L.",
  "The unit does not say what it counts; the usual basis was taken.":
    "L'unité ne dit pas sa base ; celle d'usage est prise.",
  "Write the basis, such as “mg/L as CaCO3”.": "Écrire la base, comme « mg/L as CaCO3 ».",
  "This reading cannot be counted on that basis.": "Cette mesure ne se compte pas sur cette base.",
  "Check what the report counts it as.": "Vérifier comment le bulletin la compte.",
  "No reading of a water test has this name.": "Aucune mesure d'analyse d'eau n'a ce nom.",
  "Use one of the names known.": "Prendre un des noms connus.",
  "A share lies between 0 and 1.": "Une part est entre 0 et 1.",
  "Write 0.95 or 95 % for ninety-five in a hundred.": "Pour 95 sur 100, écrire 0,95 ou 95 %.",
  "Copy the unit from the report.": "Copier l'unité du bulletin.",
  "Did you mean {near}?": "Est-ce {near} ?",
  "Did you mean “{near}”?": "Est-ce « {near} » ?",
  "Did you mean “{near}” or “{other}”?": "Est-ce « {near} » ou « {other} » ?",
  "Did you mean “{near}” or “{other}” or “{third}”?": "Est-ce « {near} », « {other} » ou « {third} » ?",
  'Taken as {unit} as {basis}. Write "as {other}" if the report counts it so.':
    "Pris comme {unit} as {basis}. Écrire « as {other} » si le bulletin compte ainsi.",
  "Its charge depends on pH or on its form, so equivalents cannot be turned into moles.":
    "Sa charge dépend du pH ou de sa forme ; les équivalents ne se convertissent pas en moles.",
  "mg/L or mmol/L": "mg/L ou mmol/L",
  "A pen that shows ppm has turned conductivity into dissolved solids: give it as those.":
    "Un stylo affichant des ppm a converti la conductivité en solides dissous : la donner ainsi.",
  "That is a unit of conductivity: give the reading as conductivity.":
    "C'est une unité de conductivité : donner la mesure comme conductivité.",
  "That is a unit of conductivity: was the line mistaken?":
    "C'est une unité de conductivité : mauvaise ligne ?",
  "That is a unit of hardness or alkalinity: was the line mistaken?":
    "C'est une unité de dureté ou d'alcalinité : mauvaise ligne ?",
  "That is a unit of temperature: was the line mistaken?":
    "C'est une unité de température : mauvaise ligne ?",
  "That is a unit of another kind of reading: was the line mistaken?":
    "C'est une unité d'un autre type de mesure : mauvaise ligne ?",
  "a number": "un nombre",
  "a number, a limit such as <0.05, a range such as 20–30, or nothing":
    "un nombre, une limite comme <0,05, une plage comme 20–30, ou rien",
  "the detection limit, such as <0.05, or nothing if it was not measured":
    "la limite de détection, comme <0,05, ou rien si non mesuré",
  "Look for the reporting limit on the report and write it with a < in front.":
    "Chercher la limite sur le bulletin et l'écrire précédée de <.",
  "the lower end first": "la borne basse d'abord",
  "a number such as 12.5": "un nombre comme 12,5",
  "groups of three digits, such as 1 250": "des groupes de trois chiffres, comme 1 250",
  "groups of three digits, such as 1,250.5": "des groupes de trois chiffres, comme 1 250,5",
  "a smaller number": "un nombre plus petit",
  "{one} or {other}": "{one} ou {other}",
  "Write it as {one} or {other}, whichever is meant.": "Écrire {one} ou {other}, selon ce qui est voulu.",
  "The mark used here is not the decimal mark the report uses.":
    "Ce signe n'est pas le signe décimal du bulletin.",
  "a number with {units}": "un nombre avec {units}",
  "zero or more": "zéro ou plus",
  "more than zero": "plus que zéro",
  "at most 1000 g/kg": "au plus 1000 g/kg",
  "at most 2500 g/L": "au plus 2500 g/L",
  "More than the product can hold: is the unit right?":
    "Plus que le produit ne peut contenir : l'unité est-elle juste ?",
  "a price such as 0.55 /kg, 1.20 /L or 12 /20 kg": "un prix comme 0,55 /kg, 1,20 /L ou 12 /20 kg",
  "a share such as 0.95 or 95 %": "une part comme 0,95 ou 95 %",
  "Did you mean {number} %?": "Est-ce {number} % ?",
  "FAU measures how much light is lost through the sample, NTU and FNU how much is scattered: there is no factor.":
    "FAU mesure la lumière perdue, NTU et FNU la lumière diffusée : il n'y a pas de facteur.",
  "JTU is read by eye over a candle: there is no factor to NTU.":
    "JTU se lit à l'œil sur une bougie : pas de facteur vers NTU.",
  "FTU names the standard suspension, not the method: ask whether the meter gives NTU, FNU or FAU.":
    "FTU désigne l'étalon, non la méthode : demander si l'appareil donne NTU, FNU ou FAU.",
  "Write the unit after the number.": "Écrire l'unité après le nombre.",
  "Give the one number the card is to be written for.": "Donner le seul nombre pour lequel écrire la fiche.",
  "% w/w (g per 100 g) or % w/v (g per 100 mL)": "% w/w (g pour 100 g) ou % w/v (g pour 100 mL)",
  "% w/v or % v/v": "% w/v ou % v/v",
  "The label says which.": "L'étiquette dit lequel.",
  "An ounce is a weight. Did you mean fl oz/ac?": "L'once est un poids. Est-ce fl oz/ac ?",
  "{unit} is a unit of {quantity}.": "{unit} est une unité de : {quantity}.",
};
