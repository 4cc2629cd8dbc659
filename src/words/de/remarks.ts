import type { Phrases } from "../phrases.ts";

/** What the engine remarks on ways out, on the clock, on filling and on the sprayer. */
export const REMARKS: Phrases = {
  "The {form} does not ionise in the tank: nothing for metals to bind.":
    "Im Tank entstehen keine Ionen ({form}): Metalle haben nichts zu binden.",
  "No published binding constants: not known.": "Keine veröffentlichten Bindungskonstanten: nicht bekannt.",
  "{active}: {share} in 100 free on the leaf rest on borrowed activity; by complexes alone {other}. Try it first.":
    "{active}: {share} von 100 frei auf dem Blatt beruhen auf geliehener Aktivität; nach Komplexen allein {other}. Erst ausprobieren.",
  "{one} with {other}: how they act on each other in strong solution is carried from memory.":
    "{one} mit {other}: Wie sie in starker Lösung aufeinander wirken, ist aus dem Gedächtnis angesetzt.",
  "Sources say: {what}.": "Quellen: {what}.",
  "No hydrolysis data near pH {pH}.": "Keine Hydrolysedaten nahe pH {pH}.",
  "For dissolved active; suspended or emulsified active breaks down more slowly.":
    "Für gelösten Wirkstoff; suspendiert oder emulgiert zerfällt er langsamer.",
  "No holding time given.": "Keine Standzeit angegeben.",
  "Not known here: {what}; the dose is a least one.":
    "Hier nicht bekannt: {what}; die Dosis ist eine Mindestdosis.",
  "Iron(II) in air at the tank's pH {pH}: half is iron(III) after {time}.":
    "Eisen(II) an Luft beim Tank-pH {pH}: nach {time} ist die Hälfte Eisen(III).",
  "Iron(II) in air at the tank's pH {pH}: half is iron(III) after {time}; {share} in 100 when the last is sprayed.":
    "Eisen(II) an Luft beim Tank-pH {pH}: nach {time} ist die Hälfte Eisen(III); {share} von 100, wenn der Rest gespritzt wird.",
  "How warmth speeds it is from memory.": "Wie Wärme es beschleunigt, ist aus dem Gedächtnis angesetzt.",
  "Taken to stay as tested.": "Angenommen: bleibt wie untersucht.",
  "under 1": "unter 1",
  "{count} days": "{count} Tage",
  "{count} years": "{count} Jahre",
  "{count} days, too long to wait for,": "{count} Tage (zu lang zum Warten)",
  "more than ten years": "mehr als zehn Jahre",
  "an hour or less": "höchstens eine Stunde",
  "Common practice.": "Übliche Praxis.",
  "With spoons: {what}.": "Mit Löffeln: {what}.",
  "{count} teaspoon": "{count} Teelöffel",
  "{count} teaspoons": "{count} Teelöffel",
  "10 g on a kitchen scale": "10 g auf der Küchenwaage",
  "With spoons: make {what} up to {volume} mL with water, shake, use {part} of it.":
    "Mit Löffeln: {what} mit Wasser auf {volume} mL auffüllen, schütteln, davon {part} nehmen.",
  "Leave {volume} mL of water out of the jar.": "Im Glas {volume} mL Wasser weglassen.",
  "Too small for spoons, even diluted: use a syringe and a balance, or a bigger jar.":
    "Zu wenig für Löffel, auch verdünnt: Spritze und Waage nehmen, oder ein größeres Glas.",
  "Below {amount} {unit} and too small even for a dilution: use a bigger jar.":
    "Unter {amount} {unit} und selbst für eine Verdünnung zu wenig: ein größeres Glas nehmen.",
  "Take the same volume of water out of the jar's share.":
    "Dieselbe Menge Wasser vom Anteil des Glases abziehen.",
  "The leaf adds {amount} mmol of calcium to each litre of spray on it, as a neutral salt.":
    "Das Blatt gibt jedem Liter Spritzbrühe {amount} mmol Calcium, als neutrales Salz.",
  "Fill to {share} with clean water and start the agitator.":
    "Tank zu {share} mit sauberem Wasser füllen und das Rührwerk einschalten.",
  "Stop here.": "Hier anhalten.",
  "Water and movement before any product.": "Wasser und Bewegung vor jedem Mittel.",
  "Its formulation is used dry, undiluted or in oil.":
    "Diese Formulierung wird trocken, unverdünnt oder in Öl verwendet.",
  "Its formulation has no place in the default order. Ask the label, then jar test.":
    "Diese Formulierung hat keinen Platz in der üblichen Reihenfolge. Etikett lesen, dann Mischprobe.",
  "Salt on a bag that is not dissolved leaves a gel that plugs screens.":
    "Salz auf einem ungelösten Beutel gibt ein Gel, das Siebe verstopft.",
  "Added late or half dissolved it has to win back what is already held.":
    "Spät oder halb gelöst muss es zurückholen, was schon gebunden ist.",
  "Suspensions settle. Spray the same day.": "Suspensionen setzen sich ab. Am selben Tag spritzen.",
  "How strongly mud holds it was not found.": "Wie stark Schlamm ihn bindet, wurde nicht gefunden.",
  "What clay takes at most was not found: the high end is too high.":
    "Wie viel Ton höchstens aufnimmt, wurde nicht gefunden: Das obere Ende ist zu hoch.",
  "Published orders differ: {other} before {name} in {who}; the other way round here.":
    "Veröffentlichte Reihenfolgen weichen ab: {other} vor {name} bei {who}; hier umgekehrt.",
  "Published orders differ: {other} before {name} in {who}; {same} first in {those}, as here.":
    "Veröffentlichte Reihenfolgen weichen ab: {other} vor {name} bei {who}; {same} zuerst bei {those}, wie hier.",
  "Estimate: {other} stands in for {active} (class “{affinity}”).":
    "Schätzung: {other} steht für {active} (Klasse „{affinity}“).",
  "The borrowed metal constants may be ten times weaker or stronger.":
    "Die geliehenen Metallkonstanten können zehnfach schwächer oder stärker sein.",
  "Its acid constants are borrowed too.": "Auch seine Säurekonstanten sind geliehen.",
  "{active} was entered as binding no metals.": "{active} ist als nicht bindend eingegeben.",
  "No acid constants and no affinity were given for {active}: not known.":
    "Für {active} fehlen Säurekonstanten und Affinität: nicht bekannt.",
  "No affinity was given for {active}: what holds it is not known. Its acid counts for the tank's pH.":
    "Für {active} fehlt die Affinität: Was ihn bindet, ist nicht bekannt. Seine Säure zählt für den Tank-pH.",
  "Dose range of the label.": "Dosisspanne des Etiketts.",
  "Most dose of the label.": "Höchste Dosis des Etiketts.",
  "The label gives no most dose: here {name} reaches its own limit.":
    "Das Etikett nennt keine höchste Dosis: Hier erreicht {name} die eigene Grenze.",
  "Nothing disclosed.": "Nichts angegeben.",
  "The label leaves open: {what}. Only what it gives an amount for is counted.":
    "Das Etikett lässt offen: {what}. Nur was es mit Menge nennt, zählt.",
  "Least volume not given: searched down to half the planned volume. Label and coverage decide.":
    "Kleinste Menge nicht angegeben: bis zur Hälfte der geplanten gesucht. Etikett und Benetzung entscheiden.",
  "Shown at the usual dose.": "Gezeigt bei der üblichen Dosis.",
  "Shown at the label's least dose.": "Gezeigt bei der kleinsten Dosis des Etiketts.",
  "No usual dose is known: shown at the highest dose searched.":
    "Keine übliche Dosis bekannt: gezeigt bei der höchsten gesuchten Dosis.",
  "The aim is met with nothing added.": "Das Ziel wird ohne Zusatz erreicht.",
  "What metals hold of the actives here is not known, so no dose was computed.":
    "Was Metalle hier binden, ist nicht bekannt; daher wurde keine Dosis gerechnet.",
  "No dose up to {dose} g/L meets the aim; this is the best one tried.":
    "Keine Dosis bis {dose} g/L erreicht das Ziel; dies ist die beste geprüfte.",
  "No dose up to {dose} g/L meets the aim in {count} of 100 draws; this is the best one tried.":
    "Keine Dosis bis {dose} g/L erreicht das Ziel in {count} von 100 Ziehungen; dies ist die beste geprüfte.",
  "{volume} L at {rate} L/min are sprayed in {time} h.":
    "{volume} L sind bei {rate} L/min in {time} h ausgebracht.",
  "It is taken as the holding time; add filling, turning and travel.":
    "Das gilt als Standzeit; Füllen, Wenden und Fahren kommen dazu.",
  "The holding time of the job is {time} h.": "Die Standzeit des Auftrags ist {time} h.",
  "{volume} L stay in the machine: they do not reach {area} ha of the last load.":
    "{volume} L bleiben in der Maschine: Sie fehlen auf {area} ha der letzten Füllung.",
  "Spray them out diluted, on the same crop, as the label allows.":
    "Verdünnt auf derselben Kultur ausbringen, wie es das Etikett erlaubt.",
  "Rinsed with {volume} L in three parts, one part in {count} of the spray is left.":
    "Mit {volume} L in drei Teilen gespült, bleibt ein Teil von {count} der Brühe.",
  "{label}: {amount} {unit} go through a hopper of {hopper} L in {count} portions.":
    "{label}: {amount} {unit} gehen durch eine Einspülschleuse von {hopper} L in {count} Teilen.",
  "Rinse each in before the next.": "Jeden Teil einspülen, bevor der nächste kommt.",
  "The aim is met in free active per hectare, against the planned rate; a share of it is still held.":
    "Das Ziel wird im freien Wirkstoff je Hektar erreicht, gemessen an der geplanten Menge; ein Teil bleibt gebunden.",
  "Even the label's {rate} {unit} leaves less free than the aim asks of the planned rate.":
    "Selbst {rate} {unit} laut Etikett lassen weniger frei, als das Ziel von der geplanten Menge verlangt.",
  "The highest rate is the label's for this crop, stage and season: check all three.":
    "Die höchste Menge gilt laut Etikett für Kultur, Stadium und Saison: alle drei prüfen.",
  "Counted at the same acid equivalent, {rate} g/ha.": "Gezählt beim selben Säureäquivalent, {rate} g/ha.",
  "Rate, crop and stage are those of its own label.": "Menge, Kultur und Stadium nach dem eigenen Etikett.",
  "Esters can move as vapour in warm weather and injure crops that stand the amine.":
    "Ester können bei Wärme verdampfen und Kulturen schaden, die das Amin vertragen.",
  "Air turns dissolved iron to rust, and rust sinks. Only settled iron no longer binds.":
    "Luft macht gelöstes Eisen zu Rost, und Rost sinkt. Nur abgesetztes Eisen bindet nicht mehr.",
  "Rust that is sucked up plugs screens, and acid in the tank dissolves it again.":
    "Angesaugter Rost verstopft Siebe, und Säure im Tank löst ihn wieder.",
  "Iron {before} mg/L; {after} mg/L taken to be left.": "Eisen {before} mg/L; {after} mg/L gelten als Rest.",
  "Iron held by peat or a chelant does not settle, nor does manganese.":
    "Eisen an Torfstoffen oder Komplexbildnern setzt sich nicht ab, Mangan auch nicht.",
  "Iron(II) needs about {time} of air at pH {pH}, then time to sink.":
    "Eisen(II) braucht an Luft etwa {time} bei pH {pH}, dann Zeit zum Absetzen.",
  "Two conditioners: add one, let it dissolve, then the other. Jar test first, and not on one label alone.":
    "Zwei Wasserkonditionierer: einen zugeben, lösen lassen, dann den anderen. Erst Mischprobe, und beide Etiketten lesen.",
  "Blend by meter or by marks, and test the blend: hardness shows whether the shares are right.":
    "Nach Zähler oder Marken mischen und die Mischung prüfen: Die Härte zeigt, ob die Anteile stimmen.",
  "Hardness {hardness} and alkalinity {alkalinity} mg/L as CaCO3, pH {pH}.":
    "Wasserhärte {hardness} und Säurekapazität {alkalinity} mg/L als CaCO3, pH {pH}.",
  "The softer water goes in first, so that no product meets the hard water alone.":
    "Das weichere Wasser kommt zuerst, damit kein Mittel dem harten allein begegnet.",
  "The film needs plain water: salts, boron and oil stop it dissolving.":
    "Die Folie braucht reines Wasser: Salze, Bor und Öl hindern sie am Lösen.",
  "It has to take the hardness before the active meets it.":
    "Er muss die Härte binden, bevor der Wirkstoff auf sie trifft.",
  "It only helps before the products.": "Es hilft nur vor den Mitteln.",
  "Dry products need the most water and time.": "Trockene Mittel brauchen am meisten Wasser und Zeit.",
  "It must wet out before oils or surfactants are in.":
    "Es muss benetzt sein, bevor Öle oder Netzmittel drin sind.",
  "Particles hung in water go in before oils.": "Teilchen in Wasser kommen vor Ölen.",
  "Capsules go in with the suspensions, before oils.": "Kapseln kommen mit den Suspensionen, vor Ölen.",
  "Already water-based: after the suspensions, before the oils.":
    "Schon wässrig: nach den Suspensionen, vor den Ölen.",
  "Oil coats dry particles if it goes in before them.":
    "Öl umhüllt trockene Teilchen, wenn es vorher drin ist.",
  "A salt solution can break an emulsion that is not yet diluted.":
    "Salzlösung kann eine noch unverdünnte Emulsion brechen.",
  "Last, against foam and coating.": "Zuletzt, gegen Schaum und Umhüllen.",
  "Metal salts here undo the conditioning: count them in the tank first.":
    "Metallsalze machen die Konditionierung zunichte: erst mitrechnen.",
  "Last, if its label does not say otherwise.": "Zuletzt, wenn das Etikett nichts anderes sagt.",
  "How {active} binds {metal} is not computed.": "Wie {active} {metal} bindet, wird nicht gerechnet.",
  "This is no proof. It says what this water could have taken from the dose, not what happened in the field.":
    "Das ist kein Beweis. Es sagt, was dieses Wasser der Dosis nehmen konnte, nicht, was im Feld geschah.",
  "Exclude the other causes first.": "Zuerst die anderen Ursachen ausschließen.",
  "A conditioner went in after the products. The range runs from its full work to none at all.":
    "Ein Wasserkonditionierer kam nach den Mitteln. Die Spanne reicht von voller Wirkung bis zu keiner.",
  "Sources differ: a third (South Dakota), a quarter to three quarters (Manitoba), half to three quarters (Oklahoma).":
    "Quellen weichen ab: ein Drittel (South Dakota), ein bis drei Viertel (Manitoba), die Hälfte bis drei Viertel (Oklahoma).",
  "The label decides.": "Das Etikett entscheidet.",
  "a turf guide": "ein Rasenratgeber",
  "water-soluble bags": "wasserlösliche Beutel",
  conditioners: "Wasserkonditionierer",
  "compatibility agents": "Mischhilfen",
  defoamers: "Entschäumer",
  "dry products that dissolve": "trockene Mittel, die sich lösen",
  "dry products that disperse": "trockene Mittel, die dispergieren",
  suspensions: "Suspensionen",
  capsules: "Kapseln",
  "emulsions in water": "Emulsionen in Wasser",
  "oil dispersions": "Öldispersionen",
  "emulsifiable concentrates": "Emulsionskonzentrate",
  solutions: "Lösungen",
  surfactants: "Netzmittel",
  oils: "Öle",
  "liquid fertilisers": "Flüssigdünger",
  micronutrients: "Mikronährstoffe",
  "drift agents": "Abdriftmittel",
  "Adds a little nitrogen.": "Bringt etwas Stickstoff.",
  "Adds a little nitrogen and chloride.": "Bringt etwas Stickstoff und Chlorid.",
  "Ammonium harms fish, most of all in alkaline water.":
    "Ammonium schadet Fischen, vor allem in alkalischem Wasser.",
  "Readily biodegradable.": "Leicht biologisch abbaubar.",
  "Readily biodegradable by producers' statements.": "Laut Herstellern leicht biologisch abbaubar.",
  "Readily biodegradable as the S,S form.": "Als S,S-Form leicht biologisch abbaubar.",
  "Hardly biodegradable, least of all with iron or copper.":
    "Kaum biologisch abbaubar, am wenigsten mit Eisen oder Kupfer.",
  "Carries metals along while it lasts.": "Nimmt Metalle mit, solange es besteht.",
  "Phosphonates break down slowly, bind to sediment and end as phosphate.":
    "Phosphonate zerfallen langsam, binden an Sediment und enden als Phosphat.",
  "Adds phosphorus: feeds algae where wash-down reaches water.":
    "Bringt Phosphor: nährt Algen, wo Spülwasser in Gewässer gelangt.",
  "Sulfate and urea last little.": "Sulfat und Harnstoff bleiben nicht lange.",
  "A spill of the concentrate harms fish by its acid.":
    "Verschüttetes Konzentrat schadet Fischen durch Säure.",
  "Biodegradable once microbes are used to it.": "Biologisch abbaubar, sobald Mikroben sich angepasst haben.",
  "Poorly biodegradable and a strong carrier of metals.":
    "Schlecht biologisch abbaubar und nimmt Metalle stark mit.",
  "Leaves sulfate.": "Hinterlässt Sulfat.",
  "Harmless salts.": "Harmlose Salze.",
  "Not readily biodegradable.": "Nicht leicht biologisch abbaubar.",
  "Not readily biodegradable; little phosphorus.": "Nicht leicht biologisch abbaubar; wenig Phosphor.",
  "Not biodegradable; binds to sludge and sediment.":
    "Nicht biologisch abbaubar; bindet an Schlamm und Sediment.",
};
