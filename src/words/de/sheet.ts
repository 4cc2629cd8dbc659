import type { Phrases } from "../phrases.ts";

/** The panel for a laboratory's sheet. */
export const SHEET: Phrases = {
  "{name} is {size} MB; a sheet is at most 5 MB.": "{name} hat {size} MB; ein Blatt hat höchstens 5 MB.",
  "{name} is locked with a password. Open it, print it to a PDF without one, and take that.":
    "{name} ist mit einem Kennwort gesperrt. Öffnen, ohne Kennwort als PDF drucken und dieses nehmen.",
  "{name} is a broken PDF. Fetch it anew, or open it, copy its text and take that.":
    "{name} ist ein beschädigtes PDF. Neu holen, oder öffnen, den Text kopieren und nehmen.",
  "{name} holds pictures without text. Ask the laboratory for a file, or type the readings in.":
    "{name} enthält Bilder ohne Text. Das Labor um eine Datei bitten, oder die Messwerte eintippen.",
  "{name} could not be read here. Open it, copy its text and paste it here.":
    "{name} war hier nicht zu lesen. Öffnen, den Text kopieren und hier einfügen.",
  "{name} is not text. Save it as CSV, or copy its cells and paste them.":
    "{name} ist kein Text. Als CSV sichern, oder die Zellen kopieren und einfügen.",
  "{name} holds no filled cell.": "{name} enthält keine gefüllte Zelle.",
  "Read: table “{table}”. Not read: {others}.": "Gelesen: Tabelle „{table}“. Nicht gelesen: {others}.",
  "{name} is no spreadsheet of the kind .xlsx. Save it as .xlsx or CSV.":
    "{name} ist keine Tabelle vom Typ .xlsx. Als .xlsx oder CSV sichern.",
  "Water test taken from the sheet": "Wasseranalyse vom Blatt übernommen",
  "Take over 1 reading": "1 Messwert übernehmen",
  "Take over {count} readings": "{count} Messwerte übernehmen",
  "They take the place of the water test on the form; undo brings it back.":
    "Sie ersetzen die Wasseranalyse im Formular; Rückgängig holt sie zurück.",
  "1 still open: it is left out.": "1 noch offen: bleibt weg.",
  "{count} still open: they are left out.": "{count} noch offen: bleiben weg.",
  "On the sheet,": "Auf dem Blatt,",
  "Line {number}:": "Zeile {number}:",
  "What line {number} means": "Was Zeile {number} bedeutet",
  "As it stands, to mend on the form": "Wie es steht, im Formular zu berichtigen",
  "To ask": "Zu klären",
  Understood: "Verstanden",
  "Given twice, the other one is taken": "Doppelt, das andere gilt",
  "No value, so not measured": "Kein Wert, also nicht gemessen",
  "Not used, takes no part in the answer": "Nicht gebraucht, geht nicht in die Antwort ein",
  "Text or table of the sheet": "Text oder Tabelle des Blatts",
  "Paste lines or cells, or drop a file here. Nothing on it is left out unsaid.":
    "Zeilen oder Zellen einfügen, oder eine Datei hierher ziehen. Nichts bleibt ungesagt weg.",
  "Open a sheet file": "Blattdatei öffnen",
  "Sheet file": "Blattdatei",
  "No reading found. Expected lines such as “Calcium 92 mg/L”.":
    "Kein Messwert gefunden. Erwartet: Zeilen wie „Calcium 92 mg/L“.",
  "Decimal mark of the sheet": "Dezimalzeichen des Blatts",
  "How does this sheet write one and a half?": "Wie schreibt dieses Blatt eineinhalb?",
  "Unit of concentrations that stand without one": "Einheit der Konzentrationen ohne Einheit",
  "Sample, one of {count}": "Probe, eine von {count}",
  "Sample {number}": "Probe {number}",
  "1 line without a reading": "1 Zeile ohne Messwert",
  "{count} lines without a reading": "{count} Zeilen ohne Messwert",
  "Carbonate hardness is the alkalinity counted in hardness units on most sheets, part of the hardness on some.":
    "Karbonathärte ist meist die Säurekapazität in Härtegraden, auf manchen Blättern ein Teil der Härte.",
  "Nitrate and nitrite are reported together; nitrite is usually a small part.":
    "Nitrat und Nitrit stehen zusammen; Nitrit ist meist wenig.",
  "This conductivity is not at 25 °C. At 20 °C it reads about a tenth lower.":
    "Diese Leitfähigkeit gilt nicht für 25 °C. Bei 20 °C ist sie um ein Zehntel niedriger.",
};
