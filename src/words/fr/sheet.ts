import type { Phrases } from "../phrases.ts";

/** The panel for a laboratory's sheet. */
export const SHEET: Phrases = {
  "{name} is {size} MB; a sheet is at most 5 MB.": "{name} fait {size} Mo ; un bulletin fait au plus 5 Mo.",
  "{name} is locked with a password. Open it, print it to a PDF without one, and take that.":
    "{name} est protégé par un mot de passe. L'ouvrir, l'imprimer en PDF sans mot de passe, et prendre celui-ci.",
  "{name} is a broken PDF. Fetch it anew, or open it, copy its text and take that.":
    "{name} est un PDF abîmé. Le redemander, ou l'ouvrir, copier son texte et le prendre.",
  "{name} holds pictures without text. Ask the laboratory for a file, or type the readings in.":
    "{name} contient des images sans texte. Demander un fichier au laboratoire, ou saisir les mesures.",
  "{name} could not be read here. Open it, copy its text and paste it here.":
    "{name} n'a pas pu être lu ici. L'ouvrir, copier son texte et le coller ici.",
  "{name} is not text. Save it as CSV, or copy its cells and paste them.":
    "{name} n'est pas du texte. L'enregistrer en CSV, ou copier ses cellules et les coller.",
  "{name} holds no filled cell.": "{name} n'a aucune cellule remplie.",
  "Read: table “{table}”. Not read: {others}.": "Lu : tableau « {table} ». Non lu : {others}.",
  "{name} is no spreadsheet of the kind .xlsx. Save it as .xlsx or CSV.":
    "{name} n'est pas un tableur .xlsx. L'enregistrer en .xlsx ou CSV.",
  "Water test taken from the sheet": "Analyse d'eau reprise du bulletin",
  "Take over 1 reading": "Reprendre 1 mesure",
  "Take over {count} readings": "Reprendre {count} mesures",
  "They take the place of the water test on the form; undo brings it back.":
    "Elles remplacent l'analyse du formulaire ; annuler la ramène.",
  "1 still open: it is left out.": "1 encore ouverte : omise.",
  "{count} still open: they are left out.": "{count} encore ouvertes : omises.",
  "On the sheet,": "Sur le bulletin,",
  "Line {number}:": "Ligne {number} :",
  "What line {number} means": "Sens de la ligne {number}",
  "As it stands, to mend on the form": "Tel quel, à corriger au formulaire",
  "To ask": "À demander",
  Understood: "Compris",
  "Given twice, the other one is taken": "Donné deux fois, l'autre est pris",
  "No value, so not measured": "Sans valeur, donc non mesuré",
  "Not used, takes no part in the answer": "Non utilisé, n'entre pas dans la réponse",
  "Text or table of the sheet": "Texte ou tableau du bulletin",
  "Paste lines or cells, or drop a file here. Nothing on it is left out unsaid.":
    "Coller des lignes ou cellules, ou déposer un fichier. Rien n'est omis sans le dire.",
  "Open a sheet file": "Ouvrir un bulletin",
  "Sheet file": "Fichier du bulletin",
  "No reading found. Expected lines such as “Calcium 92 mg/L”.":
    "Aucune mesure trouvée. Attendu : des lignes comme « Calcium 92 mg/L ».",
  "Decimal mark of the sheet": "Signe décimal du bulletin",
  "How does this sheet write one and a half?": "Comment ce bulletin écrit-il un et demi ?",
  "Unit of concentrations that stand without one": "Unité des concentrations sans unité",
  "Sample, one of {count}": "Échantillon, un sur {count}",
  "Sample {number}": "Échantillon {number}",
  "1 line without a reading": "1 ligne sans mesure",
  "{count} lines without a reading": "{count} lignes sans mesure",
  "Carbonate hardness is the alkalinity counted in hardness units on most sheets, part of the hardness on some.":
    "La dureté carbonatée est l'alcalinité en degrés de dureté, ou parfois une part de la dureté.",
  "Nitrate and nitrite are reported together; nitrite is usually a small part.":
    "Nitrate et nitrite sont donnés ensemble ; le nitrite est en général faible.",
  "This conductivity is not at 25 °C. At 20 °C it reads about a tenth lower.":
    "Cette conductivité n’est pas à 25 °C. À 20 °C, elle est plus basse d’environ un dixième.",
};
