import type { Phrases } from "../phrases.ts";

/** How actives bind metals, sentence by sentence, or why that is not known. */
export const BINDING_NOTES: Phrases = {
  "An ester does not ionise in the tank: there is nothing for metals to bind.":
    "Ein Ester ionisiert im Tank nicht: Metalle haben nichts zu binden.",
  "A neutral molecule: nothing for metals to bind.": "Ein neutrales Molekül: Metalle haben nichts zu binden.",
  "Neutral at spray pH: nothing for metals to bind.":
    "Beim pH der Spritzbrühe neutral: Metalle haben nichts zu binden.",
  "A permanent cation: it binds no metal ions.": "Ein beständiges Kation: Es bindet keine Metallionen.",
  "What the clay of muddy water takes is told apart.": "Was der Ton trüben Wassers bindet, steht für sich.",
  "A solid that hangs in the water; its weak amine base binds no hardness.":
    "Ein Feststoff, der im Wasser schwebt; seine schwache Aminbase bindet keine Härte.",
  "The formula is that of {name}.": "Die Formel ist die von {name}.",
  "A solid that hangs in the water.": "Ein Feststoff, der im Wasser schwebt.",
  "How much copper acid or chelants set free is not computed here: see the published rules.":
    "Wie viel Kupfer Säure oder Chelatbildner freisetzen, wird hier nicht berechnet: siehe veröffentlichte Regeln.",
  "A polymer that holds its own manganese and zinc.": "Ein Polymer, das eigenes Mangan und Zink bindet.",
  "What acid or chelants take out of it is not computed.":
    "Was Säure oder Chelatbildner herauslösen, wird nicht berechnet.",
  "A very weak acid (pKa 7.3), mostly a solid that hangs in the water.":
    "Eine sehr schwache Säure (pKa 7,3), meist ein Feststoff, der im Wasser schwebt.",
  "A copper complex is known, constants are not.": "Ein Kupferkomplex ist bekannt, Konstanten nicht.",
  "The acid constants of glufosinate are from memory.":
    "Die Säurekonstanten von Glufosinat sind aus dem Gedächtnis.",
  "The metal constants hold for the form with a free amine, which is scarce below pH 8.":
    "Die Metallkonstanten gelten für die Form mit freiem Amin, die unter pH 8 selten ist.",
  "The calcium constant was measured on 2,4-D; magnesium is taken equal to it, as in phenoxyacetate.":
    "Die Calciumkonstante wurde an 2,4-D gemessen; Magnesium gilt als gleich, wie bei Phenoxyacetat.",
  "No solubility product of the calcium salt was found, so its precipitation is not computed.":
    "Ein Löslichkeitsprodukt des Calciumsalzes wurde nicht gefunden, daher wird sein Ausfallen nicht berechnet.",
  "No metal constants were found; calcium and magnesium are borrowed from phenoxyacetate, its parent.":
    "Keine Metallkonstanten gefunden; Calcium und Magnesium sind von der Stammverbindung Phenoxyacetat entlehnt.",
  "The size is small either way.": "Klein ist die Bindung so oder so.",
  "No published metal constants were found for {active}.":
    "Für {active} wurden keine veröffentlichten Metallkonstanten gefunden.",
  "No metal constants were found for {active}.": "Für {active} wurden keine Metallkonstanten gefunden.",
  "No published metal constants were found.": "Keine veröffentlichten Metallkonstanten gefunden.",
  "No metal constants were found.": "Keine Metallkonstanten gefunden.",
  "As a simple carboxylate it should bind calcium and magnesium next to nothing in a dilute spray.":
    "Als einfaches Carboxylat dürfte es Calcium und Magnesium in verdünnter Brühe fast gar nicht binden.",
  "It is a singly charged anion and should bind calcium and magnesium next to nothing in a dilute spray.":
    "Es ist ein einfach geladenes Anion und dürfte Calcium und Magnesium in verdünnter Brühe fast gar nicht binden.",
  "Field antagonism is reported all the same: see the published rules.":
    "Minderungen im Feld werden dennoch berichtet: siehe veröffentlichte Regeln.",
  "Hardness is not its trouble; sodium and bicarbonate are, by a mechanism no equilibrium shows: see the published rules.":
    "Nicht die Wasserhärte schadet ihm, sondern Natrium und Hydrogencarbonat, was kein Gleichgewicht zeigt: siehe veröffentlichte Regeln.",
  "It dissolves as a singly charged anion at milligrams per litre.":
    "Es löst sich als einfach geladenes Anion mit Milligramm je Liter.",
  "No published metal constants were found, and no hardness effect is reported.":
    "Keine veröffentlichten Metallkonstanten gefunden, und kein Einfluss der Wasserhärte berichtet.",
  "Hardness up to 620 mg/L as CaCO3 made no difference in a trial (Roskamp and others 2013).":
    "Wasserhärte bis 620 mg/L als CaCO3 änderte in einem Versuch nichts (Roskamp und andere 2013).",
  "Picolinate, built alike, binds metals well; chlorine on the ring weakens that.":
    "Das ähnlich gebaute Picolinat bindet Metalle gut; Chlor am Ring schwächt das.",
  "How much is left is not known.": "Wie viel davon bleibt, ist nicht bekannt.",
  "Phenoxyacetate, built alike, binds calcium and magnesium next to nothing in a dilute spray.":
    "Das ähnlich gebaute Phenoxyacetat bindet Calcium und Magnesium in verdünnter Brühe fast gar nicht.",
  "No constants with calcium, magnesium or iron were found, so the binding is not known.":
    "Keine Konstanten mit Calcium, Magnesium oder Eisen gefunden; die Bindung ist nicht bekannt.",
  "A pot trial on imazethapyr shows antagonism by hard carbonate water.":
    "Ein Topfversuch mit Imazethapyr zeigt eine Minderung durch hartes carbonathaltiges Wasser.",
  "Triketones chelate copper and iron, and trials show loss in hard water.":
    "Triketone chelatieren Kupfer und Eisen, und Versuche zeigen Verluste in hartem Wasser.",
  "No metal constants of {active} were found.": "Metallkonstanten von {active} wurden nicht gefunden.",
  "It brings its own aluminium and makes the water acid.":
    "Es bringt eigenes Aluminium mit und macht das Wasser sauer.",
  "Alkalinity is what harms it: as the pH rises it gives off ethylene.":
    "Ihm schadet die Alkalinität: Steigt der pH, gibt es Ethylen ab.",
};
