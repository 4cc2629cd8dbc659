import type { Phrases } from "../phrases.ts";

/** What is said of slips and gaps that the main flow meets. */
export const ISSUE_TEXTS: Phrases = {
  "A number belongs here.": "Il faut un nombre ici.",
  "Write a number, or leave the entry out.": "Écrire un nombre, ou omettre l'entrée.",
  "This is not a number.": "Ce n'est pas un nombre.",
  "Write a number such as 12.5.": "Écrire un nombre comme 12,5.",
  "This number can be read two ways, a thousand apart.":
    "Ce nombre se lit de deux façons, mille fois différentes.",
  "Write it without the mark.": "L'écrire sans le signe.",
  "This must be more than zero.": "Ce doit être plus que zéro.",
  "Check the sign and the number.": "Vérifier le signe et le nombre.",
  "This cannot be less than zero.": "Cela ne peut être sous zéro.",
  "Take the minus away, or check the report.": "Ôter le moins, ou vérifier le bulletin.",
  "The range runs from high to low.": "La plage va du haut vers le bas.",
  "Write the lower end first.": "Écrire d'abord la borne basse.",
  "A quantity is missing.": "Il manque une quantité.",
  "Write a number with its unit.": "Écrire un nombre avec son unité.",
  "The unit is missing.": "L'unité manque.",
  "Write the unit behind the number.": "Écrire l'unité après le nombre.",
  "This unit is not known.": "Cette unité est inconnue.",
  "Use one of the units named.": "Prendre une des unités citées.",
  "This unit measures something else.": "Cette unité mesure autre chose.",
  "The water has no name.": "L'eau n'a pas de nom.",
  "Name it, so that the card can say which water it is for.":
    "La nommer, pour que la fiche dise pour quelle eau elle vaut.",
  "No reading was given.": "Aucune mesure n'est donnée.",
  "Add at least the hardness.": "Ajouter au moins la dureté.",
  "No water has this value.": "Aucune eau n'a cette valeur.",
  "No water has less than nothing of this.": "Aucune eau n'en a moins que rien.",
  "This value is far from what waters have.": "Cette valeur est loin de celles des eaux.",
  "Check the number and its unit.": "Vérifier le nombre et son unité.",
  "Hardness and the sum of calcium and magnesium do not fit.":
    "La dureté ne cadre pas avec calcium plus magnésium.",
  "Nothing measured tells the hardness.": "Aucune mesure ne dit la dureté.",
  "Iron was not measured.": "Le fer n'a pas été mesuré.",
  "If the water stains or tastes of metal, have the iron tested.":
    "Si l'eau tache ou a un goût de métal, faire doser le fer.",
  "The report does not say what form the iron is in.": "Le bulletin ne dit pas sous quelle forme est le fer.",
  "Ask the laboratory whether it is total or dissolved, and whether it is iron(II).":
    "Demander au laboratoire si c'est total ou dissous, et si c'est du fer(II).",
  "Cations and anions differ by more than the published limit.":
    "Cations et anions diffèrent de plus que la limite publiée.",
  "The conductivity does not fit the ions.": "La conductivité ne cadre pas avec les ions.",
  "Some readings were not measured and are left out of the composition.":
    "Certaines mesures manquent et sont hors de la composition.",
  "Not measured and left out: they are usually small beside calcium and magnesium.":
    "Non mesurés et omis : d'habitude faibles près du calcium et du magnésium.",
  "An ion was added so that the charges balance.": "Un ion a été ajouté pour équilibrer les charges.",
  "This key is needed.": "Cette donnée est nécessaire.",
  "This list has no entry.": "Cette liste est vide.",
  "Add at least one entry.": "Ajouter au moins une entrée.",
  "No active of this name is in the data.": "Aucune substance de ce nom dans les données.",
  "Use the ISO common name.": "Employer le nom ISO.",
  "Which salt or ester is not said, so its counter-ion is left out.":
    "Le sel ou l'ester n'est pas dit, son contre-ion est omis.",
  "Add the form from the label.": "Ajouter la forme de l'étiquette.",
  "The strength does not say what it counts; the usual basis of this active was taken.":
    "La teneur ne dit pas sa base ; celle d'usage est prise.",
  "Taken as acid equivalent, as labels of {active} usually count.":
    "Pris en équivalent acide, comme le font les étiquettes de {active}.",
  "Rate and strength do not fit: one counts volume, the other mass.":
    "Dose et teneur ne cadrent pas : l'une en volume, l'autre en masse.",
  "Use L/ha with g/L, or kg/ha with g/kg.": "L/ha avec g/L, ou kg/ha avec g/kg.",
  "This formulation code is not known.": "Ce code de formulation est inconnu.",
  "This is unlikely.": "C'est peu probable.",
  "No sprayer or field has this.": "Aucun pulvérisateur ni champ n'a cela.",
  "The least dose is above the most.": "La dose minimale dépasse la maximale.",
  "Swap the two, or check the label.": "Les échanger, ou vérifier l'étiquette.",
  "The least water volume is above the planned one.": "Le volume minimal dépasse le volume prévu.",
  "Swap the two, or leave the least one out.": "Les échanger, ou omettre le minimum.",
  // What is said of a sheet in a PDF.
  "Read: the first {read} of {pages} pages. Open the others as a file of their own.":
    "Lu : les {read} premières de {pages} pages. Ouvrir les autres dans un fichier à part.",
  "Page {page} broke off and could not be read to the end.":
    "La page {page} s'interrompt et n'a pas pu être lue jusqu'au bout.",
  "Pages {list} broke off and could not be read to the end.":
    "Les pages {list} s'interrompent et n'ont pas pu être lues jusqu'au bout.",
  "Page {page} without text: a picture is not read.": "Page {page} sans texte : une image n'est pas lue.",
  "Pages {list} without text: a picture is not read.": "Pages {list} sans texte : une image n'est pas lue.",
  "Not read: {count} filled-in form fields. Print the file to a PDF and open that.":
    "Non lu : {count} champs de formulaire remplis. Imprimer le fichier en PDF et ouvrir celui-ci.",
  "Some of its letters have no known meaning. Compare what was read with the sheet.":
    "Certaines lettres sont inconnues. Comparer ce qui a été lu avec le bulletin.",
};
