import type { Phrases } from "../phrases.ts";

/** What is said of a water test. */
export const ISSUES_WATER: Phrases = {
  "Keys with values belong here.": "Hier gehören Angaben mit Werten hin.",
  "See the example jobs for the form.": "Die Beispiele zeigen die Form.",
  "How the water was tested is not said.": "Es fehlt, wie das Wasser untersucht wurde.",
  "A laboratory was taken; say strip if it was one.":
    "Ein Labor wird angenommen; bei einem Teststreifen „strip“ schreiben.",
  "This way of testing is not in the list.": "Dieses Verfahren steht nicht in der Liste.",
  "Use one of the words named.": "Eines der genannten Wörter nehmen.",
  "This form of iron is not in the list.": "Diese Form von Eisen steht nicht in der Liste.",
  "Write ferrous or ferric, or leave it out.": "„ferrous“ oder „ferric“ schreiben, oder weglassen.",
  "This is not a day that can be read.": "Dieser Tag ist nicht lesbar.",
  "Write it as year-month-day.": "Als Jahr-Monat-Tag schreiben.",
  "This reading has no name.": "Dieser Messwert hat keinen Namen.",
  "Write what was measured, such as calcium.": "Schreiben, was gemessen wurde, etwa Calcium.",
  "The value has one unit, the unit entry another.": "Am Wert steht eine Einheit, im Feld eine andere.",
  "Keep the one on the report.": "Die des Befunds behalten.",
  "Write <0.05 for below the limit.": "Unter der Grenze <0,05 schreiben.",
  "Check the number and the unit against the report.": "Zahl und Einheit mit dem Befund vergleichen.",
  "Check the unit against the report.": "Die Einheit mit dem Befund vergleichen.",
  "The same thing was reported twice, and the two differ.":
    "Dasselbe steht zweimal da, mit verschiedenen Werten.",
  "Keep the better one.": "Das Bessere behalten.",
  "Check whether calcium is in mg/L as Ca or as CaCO3.":
    "Prüfen, ob Calcium in mg/L als Ca oder als CaCO3 steht.",
  "The hardness is less than the calcium or magnesium in it.":
    "Die Wasserhärte ist kleiner als Calcium oder Magnesium allein.",
  "Check the units of both; one of them is wrong.": "Beide Einheiten prüfen; eine stimmt nicht.",
  "Measure hardness with a strip or a drop test.": "Die Härte mit Teststreifen oder Tropfentest messen.",
  "Alkalinity and bicarbonate plus carbonate do not fit.":
    "Säurekapazität und Hydrogencarbonat plus Carbonat passen nicht zusammen.",
  "Check whether the report counts as CaCO3 or as bicarbonate.":
    "Prüfen, ob der Befund als CaCO3 oder als Hydrogencarbonat zählt.",
  "The phenolphthalein alkalinity is above the total.":
    "Die Säurekapazität bis pH 8,2 liegt über der gesamten.",
  "Check whether the two were swapped.": "Prüfen, ob beide vertauscht sind.",
  "Bicarbonate cannot exist at so high a pH.": "Bei so hohem pH-Wert gibt es kein Hydrogencarbonat.",
  "Check the pH and the bicarbonate.": "pH-Wert und Hydrogencarbonat prüfen.",
  "The pH is too low for the alkalinity.": "Der pH-Wert ist zu niedrig für die Säurekapazität.",
  "Measure the pH again at the tap.": "Den pH-Wert am Hahn noch einmal messen.",
  "The pH is too high for the alkalinity.": "Der pH-Wert ist zu hoch für die Säurekapazität.",
  "Ferrous or ferric iron is more than the iron in all.":
    "Eisen(II) oder Eisen(III) ist mehr als das Eisen insgesamt.",
  "Check the three readings of iron.": "Die drei Eisenwerte prüfen.",
  "An iron strip would tell whether it matters.": "Ein Eisen-Teststreifen würde zeigen, ob es zählt.",
  "Ask the laboratory whether it is total or dissolved.": "Das Labor fragen, ob gesamt oder gelöst.",
  "An ion is missing or a unit is wrong.": "Ein Ion fehlt, oder eine Einheit stimmt nicht.",
  "An ion is missing, or the conductivity is in another unit.":
    "Ein Ion fehlt, oder die Leitfähigkeit hat eine andere Einheit.",
  "The dissolved solids do not fit the conductivity.": "Die gelösten Stoffe passen nicht zur Leitfähigkeit.",
  "Check the units of both.": "Beide Einheiten prüfen.",
  "They seldom matter for a spray.": "Für die Spritzbrühe zählen sie selten.",
  "Nitrite is counted as nitrate.": "Nitrit wird als Nitrat gezählt.",
  "It makes no difference for a spray.": "Für die Spritzbrühe macht das keinen Unterschied.",
  "Measure sodium, chloride and sulfate for a surer figure.":
    "Für mehr Sicherheit Natrium, Chlorid und Sulfat messen.",
  "The constants do not reach this temperature.": "Die Konstanten reichen nicht bis zu dieser Temperatur.",
  "The nearest temperature they reach was used.": "Es gilt die nächste Temperatur, bis zu der sie reichen.",
  "No composition fits these readings.": "Zu diesen Messwerten passt keine Zusammensetzung.",
  "Check the pH and the alkalinity first.": "Zuerst pH-Wert und Säurekapazität prüfen.",
  "The composition is a calculated blend; what might settle was left in solution.":
    "Die Zusammensetzung ist gerechnet gemischt; was ausfallen könnte, blieb gelöst.",
  "Test the blend itself.": "Die Mischung selbst untersuchen.",
  "within {limit} {unit} at this strength": "innerhalb {limit} {unit} bei dieser Stärke",
  "Is one {ion} in another unit, or was a main one not measured?":
    "Hat ein {ion} eine andere Einheit, oder wurde ein wichtiges nicht gemessen?",
  "The cations are short.": "Es fehlen Kationen.",
  "The anions are short.": "Es fehlen Anionen.",
  "Not measured: {what}.": "Nicht gemessen: {what}.",
  "no less than the ions conduct": "nicht weniger, als die Ionen leiten",
  "Check the units of conductivity and hardness.": "Die Einheiten von Leitfähigkeit und Härte prüfen.",
  "calculated over measured from {low} to {high}": "gerechnet durch gemessen von {low} bis {high}",
  "Is an ion missing or too small?": "Fehlt ein Ion, oder ist eines zu klein?",
  "Is an ion too large, or was the reading not at 25 °C?":
    "Ist ein Ion zu groß, oder galt der Messwert nicht bei 25 °C?",
  "a ratio from {low} to {high}": "ein Verhältnis von {low} bis {high}",
  "Water rich in sulfate or bicarbonate runs high.":
    "Wasser mit viel Sulfat oder Hydrogencarbonat liegt hoch.",
  "Acid or salty water runs low.": "Saures oder salziges Wasser liegt niedrig.",
  "a pH from {low} to {high}": "ein pH-Wert von {low} bis {high}",
  "Was the meter calibrated, and is this the untreated water?":
    "War das Messgerät kalibriert, und ist es das unbehandelte Wasser?",
  "up to {most}": "bis {most}",
  "Fahrenheit typed as Celsius?": "Fahrenheit als Celsius eingegeben?",
  "within {percent} % of one another": "höchstens {percent} % auseinander",
  "Check the units of the three lines.": "Die Einheiten der drei Zeilen prüfen.",
  "Check the units of the two lines.": "Die Einheiten der zwei Zeilen prüfen.",
  "no more than the total alkalinity": "nicht mehr als die gesamte Säurekapazität",
  "Were the two lines swapped?": "Sind die zwei Zeilen vertauscht?",
  "a pH below {pH} beside hydrogen carbonate": "ein pH-Wert unter {pH} neben Hydrogencarbonat",
  "Is the pH mistyped, or is the alkalinity carbonate and hydroxide?":
    "Ist der pH-Wert vertippt, oder besteht die Säurekapazität aus Carbonat und Hydroxid?",
  "a pH above {pH}, or no alkalinity": "ein pH-Wert über {pH}, oder keine Säurekapazität",
  "Below this pH the titration is already over. Is the pH that of the spray, not of the water?":
    "Unter diesem pH-Wert ist die Titration schon zu Ende. Ist es der pH-Wert der Spritzbrühe?",
  "a pH at which the sample would not fizz": "ein pH-Wert, bei dem die Probe nicht sprudelt",
  "Is the pH that of the spray, not of the water? Or is the alkalinity in another unit?":
    "Ist es der pH-Wert der Spritzbrühe? Oder hat die Säurekapazität eine andere Einheit?",
  "Check pH, alkalinity and their units.": "pH-Wert, Säurekapazität und Einheiten prüfen.",
  "an alkalinity that can hold the pH": "eine Säurekapazität, die den pH-Wert trägt",
  "Hydroxide alone needs more alkalinity than was measured. Check the pH meter and the unit of the alkalinity.":
    "Schon das Hydroxid braucht mehr Säurekapazität als gemessen. Das pH-Messgerät und die Einheit der Säurekapazität prüfen.",
  "within {range} %": "höchstens {range} % auseinander",
  "within {range}": "innerhalb {range}",
  "The first is used.": "Der erste Wert gilt.",
  "{name} no more than the hardness": "{name} nicht mehr als die Wasserhärte",
  "hardness, or calcium and magnesium": "Wasserhärte, oder Calcium und Magnesium",
  "A hardness strip is the cheapest test that would tell.":
    "Ein Härte-Teststreifen ist der billigste Test dafür.",
  "the forms no more than the iron in all": "die Formen nicht mehr als das Eisen insgesamt",
  "The constants are used at the nearest temperature they reach.":
    "Die Konstanten gelten für die nächste erreichbare Temperatur.",
  "The first, {value}, is used.": "Der erste, {value}, gilt.",
  "a block with parameter, value and unit": "ein Block mit parameter, value und unit",
  "the name of a reading, such as calcium": "der Name eines Messwerts, etwa calcium",
  "Leave the reading out if it is not in the list.":
    "Den Messwert weglassen, wenn er nicht in der Liste steht.",
  "a unit": "eine Einheit",
  "the unit once: {one} or {other}": "die Einheit nur einmal: {one} oder {other}",
  "Write <0.05 for a value below the detection limit.": "Unter der Nachweisgrenze <0,05 schreiben.",
  "a block with source and readings": "ein Block mit source und readings",
  "a name such as Top bore": "ein Name wie „Oberer Brunnen“",
  "a date written as 2026-03-02": "ein Datum wie 2026-03-02",
  "at least a hardness": "mindestens eine Wasserhärte",
  "Calcium given as CaCO3 but read as mg/L of calcium?":
    "Calcium als CaCO3 angegeben, aber als mg/L Calcium gelesen?",
  "Calcium in mg/L but read as CaCO3?": "Calcium in mg/L, aber als CaCO3 gelesen?",
  "Magnesium given as CaCO3 but read as mg/L of magnesium?":
    "Magnesium als CaCO3 angegeben, aber als mg/L Magnesium gelesen?",
  "Magnesium in mg/L but read as CaCO3?": "Magnesium in mg/L, aber als CaCO3 gelesen?",
  "Hardness as CaCO3 read as CaO?": "Härte als CaCO3, aber als CaO gelesen?",
  "German degrees read as mmol/L, or the other way round?":
    "Deutsche Grad als mmol/L gelesen, oder umgekehrt?",
  "German degrees read as French ones?": "Deutsche Grad als französische gelesen?",
  "French degrees read as German ones?": "Französische Grad als deutsche gelesen?",
  "Hydrogen carbonate (HCO3) read as alkalinity as CaCO3?":
    "Hydrogencarbonat (HCO3) als Säurekapazität in CaCO3 gelesen?",
  "Alkalinity as CaCO3 read as hydrogen carbonate (HCO3)?":
    "Säurekapazität in CaCO3 als Hydrogencarbonat (HCO3) gelesen?",
  "Alkalinity as CaCO3 given as hydrogen carbonate (HCO3)?":
    "Säurekapazität in CaCO3 als Hydrogencarbonat (HCO3) angegeben?",
  "Hydrogen carbonate (HCO3) given as CaCO3?": "Hydrogencarbonat (HCO3) als CaCO3 angegeben?",
  "Nitrate (NO3) read as nitrogen (N)?": "Nitrat (NO3) als Stickstoff (N) gelesen?",
  "Nitrogen (N) read as nitrate (NO3)?": "Stickstoff (N) als Nitrat (NO3) gelesen?",
  "Sulfate (SO4) read as sulfur (S)?": "Sulfat (SO4) als Schwefel (S) gelesen?",
  "Sulfur (S) read as sulfate (SO4)?": "Schwefel (S) als Sulfat (SO4) gelesen?",
  "Phosphate (PO4) read as phosphorus (P)?": "Phosphat (PO4) als Phosphor (P) gelesen?",
  "Phosphorus (P) read as phosphate (PO4)?": "Phosphor (P) als Phosphat (PO4) gelesen?",
  "Silica (SiO2) read as silicon (Si)?": "Kieselsäure (SiO2) als Silicium (Si) gelesen?",
  "Silicon (Si) read as silica (SiO2)?": "Silicium (Si) als Kieselsäure (SiO2) gelesen?",
  "mmol/L of CaCO3 and meq/L mistaken for one another?": "mmol/L CaCO3 und meq/L verwechselt?",
  "{unit} read as {other}?": "{unit} als {other} gelesen?",
  "{unit} typed as {other}?": "{unit} als {other} eingegeben?",
  "µg/L read as mg/L, or mS/cm as µS/cm?": "µg/L als mg/L gelesen, oder mS/cm als µS/cm?",
  "mg/L read as µg/L, or mS/cm typed as µS/cm?": "mg/L als µg/L gelesen, oder mS/cm als µS/cm eingegeben?",
  "µg/L typed as mg/L, or a decimal mark lost?":
    "µg/L als mg/L eingegeben, oder ein Dezimalzeichen verloren?",
  "A decimal mark out of place?": "Dezimalzeichen an falscher Stelle?",
  cation: "Kation",
  anion: "Anion",
};
