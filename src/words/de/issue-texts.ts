import type { Phrases } from "../phrases.ts";

/** What is said of slips and gaps that the main flow meets. */
export const ISSUE_TEXTS: Phrases = {
  "A number belongs here.": "Hier gehört eine Zahl hin.",
  "Write a number, or leave the entry out.": "Eine Zahl schreiben oder den Eintrag weglassen.",
  "This is not a number.": "Das ist keine Zahl.",
  "Write a number such as 12.5.": "Eine Zahl wie 12,5 schreiben.",
  "This number can be read two ways, a thousand apart.":
    "Diese Zahl lässt sich auf zwei Arten lesen, tausendfach verschieden.",
  "Write it without the mark.": "Ohne das Zeichen schreiben.",
  "This must be more than zero.": "Das muss mehr als null sein.",
  "Check the sign and the number.": "Vorzeichen und Zahl prüfen.",
  "This cannot be less than zero.": "Das kann nicht unter null liegen.",
  "Take the minus away, or check the report.": "Das Minus wegnehmen oder den Befund prüfen.",
  "The range runs from high to low.": "Die Spanne läuft von oben nach unten.",
  "Write the lower end first.": "Das untere Ende zuerst schreiben.",
  "A quantity is missing.": "Eine Menge fehlt.",
  "Write a number with its unit.": "Eine Zahl mit Einheit schreiben.",
  "The unit is missing.": "Die Einheit fehlt.",
  "Write the unit behind the number.": "Die Einheit hinter die Zahl schreiben.",
  "This unit is not known.": "Diese Einheit ist nicht bekannt.",
  "Use one of the units named.": "Eine der genannten Einheiten nehmen.",
  "This unit measures something else.": "Diese Einheit misst etwas anderes.",
  "The water has no name.": "Das Wasser hat keinen Namen.",
  "Name it, so that the card can say which water it is for.":
    "Benennen, damit die Karte sagt, für welches Wasser sie gilt.",
  "No reading was given.": "Es wurde kein Messwert angegeben.",
  "Add at least the hardness.": "Mindestens die Härte angeben.",
  "No water has this value.": "Kein Wasser hat diesen Wert.",
  "No water has less than nothing of this.": "Kein Wasser hat davon weniger als nichts.",
  "This value is far from what waters have.": "Dieser Wert liegt weit von dem, was Wässer haben.",
  "Check the number and its unit.": "Zahl und Einheit prüfen.",
  "Hardness and the sum of calcium and magnesium do not fit.":
    "Härte und die Summe aus Calcium und Magnesium passen nicht zusammen.",
  "Nothing measured tells the hardness.": "Kein Messwert sagt etwas über die Härte.",
  "Iron was not measured.": "Eisen wurde nicht gemessen.",
  "If the water stains or tastes of metal, have the iron tested.":
    "Wenn das Wasser färbt oder metallisch schmeckt, Eisen untersuchen lassen.",
  "The report does not say what form the iron is in.":
    "Der Befund sagt nicht, in welcher Form das Eisen vorliegt.",
  "Ask the laboratory whether it is total or dissolved, and whether it is iron(II).":
    "Das Labor fragen, ob gesamt oder gelöst, und ob Eisen(II).",
  "Cations and anions differ by more than the published limit.":
    "Kationen und Anionen weichen stärker ab als veröffentlicht zulässig.",
  "The conductivity does not fit the ions.": "Die Leitfähigkeit passt nicht zu den Ionen.",
  "Some readings were not measured and are left out of the composition.":
    "Einige Werte wurden nicht gemessen und fehlen in der Zusammensetzung.",
  "Not measured and left out: they are usually small beside calcium and magnesium.":
    "Nicht gemessen und weggelassen: meist klein neben Calcium und Magnesium.",
  "An ion was added so that the charges balance.":
    "Ein Ion wurde ergänzt, damit die Ladungen ausgeglichen sind.",
  "This key is needed.": "Diese Angabe ist nötig.",
  "This list has no entry.": "Diese Liste ist leer.",
  "Add at least one entry.": "Mindestens einen Eintrag hinzufügen.",
  "No active of this name is in the data.": "Ein Wirkstoff dieses Namens ist nicht in den Daten.",
  "Use the ISO common name.": "Den ISO-Namen verwenden.",
  "Which salt or ester is not said, so its counter-ion is left out.":
    "Salz oder Ester ist nicht genannt, sein Gegenion bleibt daher weg.",
  "Add the form from the label.": "Die Form vom Etikett ergänzen.",
  "The strength does not say what it counts; the usual basis of this active was taken.":
    "Der Gehalt sagt nicht, was er zählt; die übliche Basis dieses Wirkstoffs gilt.",
  "Taken as acid equivalent, as labels of {active} usually count.":
    "Als Säureäquivalent genommen, wie Etiketten von {active} meist zählen.",
  "Rate and strength do not fit: one counts volume, the other mass.":
    "Aufwandmenge und Gehalt passen nicht: eines zählt Volumen, das andere Masse.",
  "Use L/ha with g/L, or kg/ha with g/kg.": "L/ha mit g/L oder kg/ha mit g/kg.",
  "This formulation code is not known.": "Dieser Formulierungscode ist nicht bekannt.",
  "This is unlikely.": "Das ist unwahrscheinlich.",
  "No sprayer or field has this.": "Das hat keine Spritze und kein Feld.",
  "The least dose is above the most.": "Die kleinste Dosis liegt über der größten.",
  "Swap the two, or check the label.": "Beide tauschen oder das Etikett prüfen.",
  "The least water volume is above the planned one.": "Die kleinste Wassermenge liegt über der geplanten.",
  "Swap the two, or leave the least one out.": "Beide tauschen oder die kleinste weglassen.",
  // What is said of a sheet in a PDF.
  "Read: the first {read} of {pages} pages. Open the others as a file of their own.":
    "Gelesen: die ersten {read} von {pages} Seiten. Die anderen als eigene Datei öffnen.",
  "Page {page} broke off and could not be read to the end.":
    "Seite {page} brach ab und war nicht bis zum Ende zu lesen.",
  "Pages {list} broke off and could not be read to the end.":
    "Die Seiten {list} brachen ab und waren nicht bis zum Ende zu lesen.",
  "Page {page} without text: a picture is not read.": "Seite {page} ohne Text: ein Bild wird nicht gelesen.",
  "Pages {list} without text: a picture is not read.":
    "Seiten {list} ohne Text: ein Bild wird nicht gelesen.",
  "Not read: {count} filled-in form fields. Print the file to a PDF and open that.":
    "Nicht gelesen: {count} ausgefüllte Formularfelder. Als PDF drucken und dieses öffnen.",
  "Some of its letters have no known meaning. Compare what was read with the sheet.":
    "Einige Buchstaben sind unbekannt. Das Gelesene mit dem Blatt vergleichen.",
};
