import type { Phrases } from "../phrases.ts";

/** What was taken for granted about a water, and why an entry of a sheet was not taken. */
export const ASSUMPTIONS: Phrases = {
  "Below the detection limit: half the limit is taken, with nothing to the whole limit as range.":
    "Unter der Nachweisgrenze: Die halbe Grenze gilt, mit null bis zur Grenze als Spanne.",
  "The top step of the test: at least this much is there, perhaps twice as much.":
    "Oberste Stufe des Tests: mindestens so viel, vielleicht doppelt so viel.",
  "The test gives a step: its middle is taken, with the step as range.":
    "Der Test gibt eine Stufe: Ihre Mitte gilt, mit der Stufe als Spanne.",
  "Only the hardness was measured: calcium and magnesium share it as in the waters of the data.":
    "Nur die Härte wurde gemessen: Calcium und Magnesium teilen sie wie in den Wässern der Daten.",
  "Magnesium was not measured: it stands to calcium as in the waters of the data.":
    "Magnesium wurde nicht gemessen: Verhältnis zu Calcium wie in den Wässern der Daten.",
  "Calcium was not measured: it stands to magnesium as in the waters of the data.":
    "Calcium wurde nicht gemessen: Verhältnis zu Magnesium wie in den Wässern der Daten.",
  "No hardness was measured: calcium and magnesium share an estimate of it.":
    "Keine Härte gemessen: Calcium und Magnesium teilen eine Schätzung.",
  "No hardness was measured: it is estimated from the conductivity, very roughly. A strip would tell.":
    "Keine Härte gemessen: sehr grob aus der Leitfähigkeit geschätzt. Ein Teststreifen gäbe Auskunft.",
  "No hardness was measured: it is estimated from the alkalinity, very roughly. A strip would tell.":
    "Keine Härte gemessen: sehr grob aus der Säurekapazität geschätzt. Ein Teststreifen gäbe Auskunft.",
  "Alkalinity was not measured: it is what is left of the cations when chloride, sulfate and nitrate are taken off.":
    "Säurekapazität nicht gemessen: Rest der Kationen ohne Chlorid, Sulfat und Nitrat.",
  "Alkalinity was not measured: it stands to the hardness as in the waters of the data, which differ widely.":
    "Säurekapazität nicht gemessen: Verhältnis zur Härte wie in den Wässern der Daten, die stark streuen.",
  "The water has no alkalinity to tell its carbon dioxide: a usual amount is taken.":
    "Ohne Säurekapazität ist das Kohlendioxid offen: Eine übliche Menge gilt.",
  "Potassium was not measured: it stands to sodium as in the waters of the data.":
    "Kalium nicht gemessen: Verhältnis zu Natrium wie in den Wässern der Daten.",
  "Sodium was not measured: it is what the anions need beyond the other cations, potassium counted with it.":
    "Natrium nicht gemessen: was die Anionen über die anderen Kationen hinaus brauchen, Kalium mitgezählt.",
  "Sodium was not measured: it is taken so that the ions conduct as much as was measured.":
    "Natrium nicht gemessen: so gewählt, dass die Ionen leiten wie gemessen.",
  "Sodium was not measured: it stands to the hardness as in the waters of the data, potassium counted with it.":
    "Natrium nicht gemessen: Verhältnis zur Härte wie in den Wässern der Daten, Kalium mitgezählt.",
  "Not measured: it is what the cations need beyond the alkalinity and the anions that were measured.":
    "Nicht gemessen: was die Kationen neben Säurekapazität und gemessenen Anionen brauchen.",
  "Cations exceed anions: this much chloride was added so that the charges balance.":
    "Mehr Kationen als Anionen: So viel Chlorid wurde zum Ausgleich ergänzt.",
  "Anions exceed cations: this much sodium was added so that the charges balance.":
    "Mehr Anionen als Kationen: So viel Natrium wurde zum Ausgleich ergänzt.",
  "The report does not say what form the iron is in: all of it is taken as dissolved iron(III), which binds most.":
    "Die Form des Eisens ist offen: Alles gilt als gelöstes Eisen(III), das am stärksten bindet.",
  "Iron was not measured: the trace usual in clear water is taken. A bore with iron can hold far more.":
    "Eisen nicht gemessen: Die in klarem Wasser übliche Spur gilt. Ein eisenhaltiger Brunnen kann weit mehr haben.",
  "Conductivity was not measured: it follows from the dissolved solids by the usual factor.":
    "Leitfähigkeit nicht gemessen: mit dem üblichen Faktor aus den gelösten Stoffen.",
  "No temperature was given: that of a mild spraying day is taken.":
    "Keine Temperatur angegeben: Die eines milden Spritztags gilt.",
  "pH was not measured: that of the waters of the data is taken.":
    "pH-Wert nicht gemessen: Der der Wässer der Daten gilt.",
  "The sheet gives no value.": "Das Blatt gibt keinen Wert.",
  "Several figures stand side by side and nothing says which is the reading.":
    "Mehrere Zahlen stehen nebeneinander; nichts sagt, welche der Messwert ist.",
  "The sheet gives no unit for this.": "Das Blatt gibt hierfür keine Einheit.",
  "No reading of this name takes part in the answer.":
    "Ein Messwert dieses Namens geht nicht in die Antwort ein.",
  "The sheet gives this twice; the other one was taken.": "Das Blatt gibt dies zweimal; das andere gilt.",
};
