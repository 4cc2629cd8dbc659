import type { Phrases } from "../phrases.ts";

/** The usual causes of a failure, what to ask, and what the signs say. */
export const COMPLAINT_CAUSES: Phrases = {
  "wrong weed, or too big": "falsches Unkraut, oder zu groß",
  "Was it the weed on the label, at the stage on the label, on the day?":
    "War es am Tag das Unkraut des Etiketts, im Stadium des Etiketts?",
  "Large plants living where small ones died is what a late spray leaves.":
    "Große Pflanzen leben, kleine sind tot: So sieht eine späte Spritzung aus.",
  "product, rate or adjuvant": "Mittel, Aufwandmenge oder Zusatzstoff",
  "Is the product in the shed the one in the record, with its rate and its adjuvant?":
    "Ist das Mittel im Lager das der Aufzeichnung, mit Aufwandmenge und Zusatzstoff?",
  "tank arithmetic or mixing order": "Rechnung zum Tank oder Mischreihenfolge",
  "Do product used, water used and area sprayed agree? Did all of it go in, in order?":
    "Passen Mittel, Wasser und Fläche zusammen? Kam alles hinein, in der Reihenfolge?",
  "A fault in one load only speaks for what was put in, or left out, there.":
    "Ein Fehler in nur einer Füllung spricht für das, was dort hineinkam oder fehlte.",
  "water volume, calibration or nozzles": "Wasseraufwand, Einstellung oder Düsen",
  "Was the sprayer calibrated, and are nozzles, screens and boom height right?":
    "War die Spritze ausgelitert, und stimmen Düsen, Siebe und Gestängehöhe?",
  "Strips along the run are what a nozzle, a screen or the boom leaves.":
    "Streifen in Fahrtrichtung hinterlässt eine Düse, ein Sieb oder das Gestänge.",
  "An even picture speaks against single nozzles.": "Ein gleichmäßiges Bild spricht gegen einzelne Düsen.",
  "weather, drought or cold": "Wetter, Trockenheit oder Kälte",
  "Were the weeds growing? Drought, cold, heat and rain soon after take more than most waters do.":
    "Wuchs das Unkraut? Trockenheit, Kälte, Hitze und baldiger Regen nehmen mehr als die meisten Wässer.",
  "Patches that follow soil or shade speak for stress.":
    "Nester, die Boden oder Schatten folgen, sprechen für Stress.",
  "dust on the leaves": "Staub auf den Blättern",
  "Were leaves dusty, or was dust raised by the wheels? Clay holds some actives at once.":
    "Waren die Blätter staubig, oder wirbelten die Räder Staub auf? Ton bindet manche Wirkstoffe sofort.",
  "Wheel tracks and track sides left alive are what dust leaves.":
    "Lebende Pflanzen in und neben den Fahrspuren hinterlässt Staub.",
  resistance: "Resistenz",
  "Do survivors stand beside dead plants of the same kind? Has this group failed here before?":
    "Stehen Überlebende neben toten Pflanzen derselben Art? Hat diese Gruppe hier schon versagt?",
  "Dead and healthy plants of one kind side by side are what resistance leaves.":
    "Tote und gesunde Pflanzen einer Art nebeneinander hinterlässt Resistenz.",
  "Plants all weakened alike speak against resistance.":
    "Alle gleich geschwächt: das spricht gegen Resistenz.",
  "a bad or old batch": "eine schlechte oder alte Charge",
  "Keep the container and its lot number. Has the lot failed elsewhere, frozen or grown old?":
    "Gebinde und Chargennummer aufheben. Hat die Charge anderswo versagt, war sie gefroren oder alt?",
  "the water": "das Wasser",
  "Test the water that went in, and spray a strip in soft or conditioned water beside one in this.":
    "Das verwendete Wasser prüfen, und einen Streifen mit weichem oder behandeltem Wasser daneben spritzen.",
  "A fault of the water is even over all that was sprayed with it.":
    "Ein Fehler des Wassers ist gleichmäßig auf allem, was damit gespritzt wurde.",
  "The water was the same everywhere: strips, patches and edges speak against it.":
    "Das Wasser war überall dasselbe: Streifen, Nester und Ränder sprechen dagegen.",
  "Partial kill with regrowth, all plants alike, is what a dose cut by the water leaves.":
    "Teilwirkung mit Neuaustrieb, alle Pflanzen gleich: So wirkt eine vom Wasser gekürzte Dosis.",
  "Dead beside healthy plants of one kind speak against the water.":
    "Tote neben gesunden Pflanzen einer Art sprechen gegen das Wasser als Ursache.",
  "Only loads from one source failing speaks for its water.":
    "Versagen nur Füllungen einer Quelle, spricht das für deren Wasser.",
  "All loads of the same water failing alike is as a fault of the water would be.":
    "Alle Füllungen desselben Wassers versagen gleich: So wäre ein Fehler des Wassers.",
  "This is no proof. It says what this water could have taken from the dose, not what happened in the field. Exclude the other causes first.":
    "Das ist kein Beweis. Es sagt, was dieses Wasser der Dosis genommen haben kann, nicht, was auf dem Feld geschah. Zuerst die anderen Ursachen ausschließen.",
};
