import type { Phrases } from "../phrases.ts";

/** What was taken for granted about a water, and why an entry of a sheet was not taken. */
export const ASSUMPTIONS: Phrases = {
  "Below the detection limit: half the limit is taken, with nothing to the whole limit as range.":
    "Sous la limite de détection : la moitié est prise, de zéro à la limite comme plage.",
  "The top step of the test: at least this much is there, perhaps twice as much.":
    "Échelon maximal du test : au moins cela, peut-être le double.",
  "The test gives a step: its middle is taken, with the step as range.":
    "Le test donne un échelon : son milieu est pris, l'échelon comme plage.",
  "Only the hardness was measured: calcium and magnesium share it as in the waters of the data.":
    "Seule la dureté est mesurée : calcium et magnésium se la partagent comme dans les eaux des données.",
  "Magnesium was not measured: it stands to calcium as in the waters of the data.":
    "Magnésium non mesuré : rapport au calcium comme dans les eaux des données.",
  "Calcium was not measured: it stands to magnesium as in the waters of the data.":
    "Calcium non mesuré : rapport au magnésium comme dans les eaux des données.",
  "No hardness was measured: calcium and magnesium share an estimate of it.":
    "Dureté non mesurée : calcium et magnésium en partagent une estimation.",
  "No hardness was measured: it is estimated from the conductivity, very roughly. A strip would tell.":
    "Dureté non mesurée : estimée très grossièrement par la conductivité. Une bandelette le dirait.",
  "No hardness was measured: it is estimated from the alkalinity, very roughly. A strip would tell.":
    "Dureté non mesurée : estimée très grossièrement par l'alcalinité. Une bandelette le dirait.",
  "Alkalinity was not measured: it is what is left of the cations when chloride, sulfate and nitrate are taken off.":
    "Alcalinité non mesurée : reste des cations une fois ôtés chlorure, sulfate et nitrate.",
  "Alkalinity was not measured: it stands to the hardness as in the waters of the data, which differ widely.":
    "Alcalinité non mesurée : rapport à la dureté comme dans les eaux des données, très diverses.",
  "The water has no alkalinity to tell its carbon dioxide: a usual amount is taken.":
    "Sans alcalinité, le dioxyde de carbone est inconnu : une quantité usuelle est prise.",
  "Potassium was not measured: it stands to sodium as in the waters of the data.":
    "Potassium non mesuré : rapport au sodium comme dans les eaux des données.",
  "Sodium was not measured: it is what the anions need beyond the other cations, potassium counted with it.":
    "Sodium non mesuré : ce qu'il faut aux anions en plus des autres cations, potassium compris.",
  "Sodium was not measured: it is taken so that the ions conduct as much as was measured.":
    "Sodium non mesuré : choisi pour que les ions conduisent autant que mesuré.",
  "Sodium was not measured: it stands to the hardness as in the waters of the data, potassium counted with it.":
    "Sodium non mesuré : rapport à la dureté comme dans les eaux des données, potassium compris.",
  "Not measured: it is what the cations need beyond the alkalinity and the anions that were measured.":
    "Non mesuré : ce qu'il faut aux cations en plus de l'alcalinité et des anions mesurés.",
  "Cations exceed anions: this much chloride was added so that the charges balance.":
    "Plus de cations que d'anions : ce chlorure a été ajouté pour équilibrer.",
  "Anions exceed cations: this much sodium was added so that the charges balance.":
    "Plus d'anions que de cations : ce sodium a été ajouté pour équilibrer.",
  "The report does not say what form the iron is in: all of it is taken as dissolved iron(III), which binds most.":
    "Forme du fer non dite : tout est pris comme fer(III) dissous, qui lie le plus.",
  "Iron was not measured: the trace usual in clear water is taken. A bore with iron can hold far more.":
    "Fer non mesuré : la trace usuelle d'une eau claire est prise. Un forage ferreux peut en avoir bien plus.",
  "Conductivity was not measured: it follows from the dissolved solids by the usual factor.":
    "Conductivité non mesurée : déduite des solides dissous par le facteur usuel.",
  "No temperature was given: that of a mild spraying day is taken.":
    "Température non donnée : celle d'un jour doux est prise.",
  "pH was not measured: that of the waters of the data is taken.":
    "pH non mesuré : celui des eaux des données est pris.",
  "The sheet gives no value.": "Le bulletin ne donne pas de valeur.",
  "Several figures stand side by side and nothing says which is the reading.":
    "Plusieurs chiffres se suivent et rien ne dit lequel est la mesure.",
  "The sheet gives no unit for this.": "Le bulletin ne donne pas d'unité.",
  "No reading of this name takes part in the answer.": "Aucune mesure de ce nom n'entre dans la réponse.",
  "The sheet gives this twice; the other one was taken.":
    "Le bulletin le donne deux fois ; l'autre est pris.",
};
