import type { Phrases } from "../phrases.ts";

/** The screen of a complaint, its answer and the page to print. */
export const COMPLAINT: Phrases = {
  "Add a conditioner used": "Verwendeten Konditionierer hinzufügen",
  "An application failed. How much of the dose could the water have taken?":
    "Eine Behandlung hat versagt. Wie viel der Dosis kann das Wasser genommen haben?",
  "Back to the spray plan": "Zurück zum Spritzplan",
  "Begin from the open job": "Mit dem offenen Auftrag beginnen",
  "Called little below {little} in 100 at most, much from {much} in 100 most likely. These limits are ours. A full rate leaves room, a low one does not.":
    "Wenig heißt: höchstens {little} von 100; viel: am wahrscheinlichsten ab {much} von 100. Diese Grenzen sind unsere. Eine volle Aufwandmenge lässt Spielraum, eine niedrige nicht.",
  Cause: "Ursache",
  "Complaint: {water}": "Reklamation: {water}",
  "Conditioners used": "Verwendete Konditionierer",
  Dose: "Dosis",
  "Exclude these first, in this order.": "Diese zuerst ausschließen, in dieser Reihenfolge.",
  "Hardness {hardness} mg/L as CaCO3, alkalinity {alkalinity} mg/L as CaCO3, pH {pH}; tank pH {tankPH}.":
    "Wasserhärte {hardness} mg/L als CaCO3, Säurekapazität {alkalinity} mg/L als CaCO3, pH {pH}; Tank-pH {tankPH}.",
  "Held by the water, in 100 of the dose": "Vom Wasser gebunden, von 100 der Dosis",
  "Held by the water: not known.": "Vom Wasser gebunden: nicht bekannt.",
  "Held by the water: {share}.": "Vom Wasser gebunden: {share}.",
  "How much this water could have taken is not known: no binding constants for these actives.":
    "Wie viel dieses Wasser genommen haben kann, ist nicht bekannt: keine Bindungskonstanten für diese Wirkstoffe.",
  "How the failure lies over the field": "Wie das Versagen auf der Fläche liegt",
  "How the plants look": "Wie die Pflanzen aussehen",
  "In the order to exclude them": "In der Reihenfolge des Ausschließens",
  "It is no proof.": "Das ist kein Beweis.",
  "It speaks for or against a cause. Leave open what nobody looked at.":
    "Es spricht für oder gegen eine Ursache. Offen lassen, was niemand angesehen hat.",
  "Kept in this browser only. Save the record to keep a copy.":
    "Nur in diesem Browser. Für eine Kopie die Aufzeichnung sichern.",
  "Left free: {low} to {high} g/ha.": "Frei geblieben: {low} bis {high} g/ha.",
  "Lost while it stood: not known.": "Beim Stehen verloren: nicht bekannt.",
  "Lost while it stood: {share}.": "Beim Stehen verloren: {share}.",
  "Open a record": "Aufzeichnung öffnen",
  "Other causes, checked": "Andere Ursachen, geprüft",
  "Range for {active}: {low} to {high}, most likely {central}":
    "Spanne für {active}: {low} bis {high}, am wahrscheinlichsten {central}",
  "Record begun anew from the open job": "Aufzeichnung aus dem offenen Auftrag neu begonnen",
  "Record file": "Datei der Aufzeichnung",
  "Record of a file opened": "Aufzeichnung aus einer Datei geöffnet",
  Remarks: "Anmerkungen",
  "Remove {product}": "{product} entfernen",
  "Save the answer to print": "Antwort zum Drucken sichern",
  "Save the record": "Aufzeichnung sichern",
  "Taken for granted, and to look at": "Angenommen, und zu prüfen",
  "The full tank: pH {pH}.": "Der volle Tank: pH {pH}.",
  "The usual causes": "Die üblichen Ursachen",
  "The usual causes, in the order to exclude them":
    "Die üblichen Ursachen, in der Reihenfolge des Ausschließens",
  "The water could have taken little of the {active}: {share}.":
    "Das Wasser kann wenig {active} genommen haben: {share}.",
  "The water could have taken much of the {active}: {share}.":
    "Das Wasser kann viel {active} genommen haben: {share}.",
  "The water could have taken some of the {active}: {share}.":
    "Das Wasser kann etwas {active} genommen haben: {share}.",
  "This file holds no record of a complaint.": "Diese Datei enthält keine Reklamation.",
  "Title of this record": "Titel dieser Aufzeichnung",
  "Went in": "Kam hinein",
  "What is on record": "Was aufgezeichnet ist",
  "What is published about such a mix": "Was über eine solche Mischung veröffentlicht ist",
  "What the water could have taken": "Was das Wasser genommen haben kann",
  "What to ask": "Was zu fragen ist",
  "What was seen": "Was zu sehen war",
  "What went into the tank for the water. None: leave it empty.":
    "Was fürs Wasser in den Tank kam. Nichts: leer lassen.",
  "Where it stands": "Stand",
  "Which loads failed": "Welche Füllungen versagten",
  "against it: {signs}": "dagegen: {signs}",
  "excluded by the record": "durch die Aufzeichnung ausgeschlossen",
  "for it: {signs}": "dafür: {signs}",
  "found, by the record": "laut Aufzeichnung gefunden",
  "nothing to speak of": "nichts Nennenswertes",
  open: "offen",
  excluded: "ausgeschlossen",
  found: "gefunden",
  "{active}: {dose} g/ha applied.": "{active}: {dose} g/ha ausgebracht.",
  "{date}. Water: {water}.": "{date}. Wasser: {water}.",
  "{low} to {high} in 100, most likely {central}":
    "{low} bis {high} von 100, am wahrscheinlichsten {central}",
  even: "gleichmäßig",
  strips: "Streifen",
  patches: "Nester",
  edges: "Ränder",
  "all weakened": "alle geschwächt",
  "dead beside healthy": "tote neben gesunden",
  "large ones survive": "große überleben",
  "all loads": "alle Füllungen",
  "one load": "eine Füllung",
  "one source": "eine Wasserquelle",
  "before the products": "vor den Mitteln",
  "after the products": "nach den Mitteln",
};
