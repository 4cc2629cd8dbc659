import type { Phrases } from "../phrases.ts";

/** What the flasks and their bench list say: cautions, slips, things to have, what is seen. */
export const FLASK_PHRASES: Phrases = {
  "Gloves and eye protection for whoever pours and for the front row. No food vessels, no drinking.":
    "Handschuhe und Augenschutz für alle, die gießen, und die erste Reihe. Keine Lebensmittelgefäße, nichts trinken.",
  "Mark every flask with what is in it. Nothing is poured back.":
    "Jedes Glas mit seinem Inhalt beschriften. Nichts wird zurückgegossen.",
  "Plastic or thick glass, none chipped, a tray under the flasks, water for hands, out of reach of children.":
    "Kunststoff oder dickes Glas ohne Sprung, eine Wanne darunter, Wasser für die Hände, außer Reichweite von Kindern.",
  "Collect all flasks in one labelled can. Anything with a herbicide goes to a labelled use, never down the sink.":
    "Alle Gläser in einen beschrifteten Kanister. Was ein Herbizid enthält, wird laut Etikett verwendet, nie in den Ausguss.",
  "Iron and indicator rests: a little bicarbonate in an open vessel, let the rust settle, dispose by local rules.":
    "Reste von Eisen und Indikator: etwas Natron im offenen Gefäß, den Rost absetzen lassen, nach örtlichen Regeln entsorgen.",
  "Spill: sand or cat litter, sweep up, bag, label. Iron stains come off with citric acid, not with bleach.":
    "Verschüttet: Sand oder Katzenstreu, aufkehren, in den Beutel, beschriften. Eisenflecken gehen mit Citronensäure weg, nicht mit Chlorbleiche.",
  "Iron(III) chloride: harmful if swallowed, damages eyes, stains. Bring only a dilute, labelled, stoppered bottle; no dry salt.":
    "Eisen(III)-chlorid: gesundheitsschädlich bei Verschlucken, schädigt die Augen, färbt. Nur verdünnt mitbringen, beschriftet, verschlossen; kein trockenes Salz.",
  "Herbicide: a ready dilution, only as the label allows. A thimble of concentrate is still concentrate.":
    "Herbizid: fertig verdünnt, nur wie das Etikett erlaubt. Ein Fingerhut Konzentrat bleibt Konzentrat.",
  "Thiocyanate: harmful; with strong acid it gives very toxic gas. Dilute, cold and weakly acid only.":
    "Thiocyanat: gesundheitsschädlich; mit starker Säure entsteht sehr giftiges Gas. Nur verdünnt, kalt und schwach sauer.",
  "Ferrocyanide: never near concentrated acid, bleach or heat.":
    "Hexacyanoferrat: nie in die Nähe von konzentrierter Säure, Chlorbleiche oder Hitze.",
  "Dilute the acid at home: acid into water, slowly. Bring only the dilute one.":
    "Die Säure zu Hause verdünnen: Säure ins Wasser, langsam. Nur die verdünnte mitbringen.",
  "Acid burns: goggles and gloves, acid into water, slowly.":
    "Säure ätzt: Schutzbrille und Handschuhe, Säure ins Wasser, langsam.",
  "Caustic burns, most of all the eyes; it gets hot as it dissolves. Goggles and gloves.":
    "Lauge ätzt, vor allem die Augen; beim Lösen wird sie heiß. Schutzbrille und Handschuhe.",
  "Its fumes bite eyes and lungs: open it outdoors, bring only the ready buffer.":
    "Die Dämpfe beißen Augen und Lunge: im Freien öffnen, nur den fertigen Puffer mitbringen.",
  "Stains skin, cloth and concrete; eats metal. The dry salt heats and fumes with water: make the stock at home.":
    "Färbt Haut, Stoff und Beton; greift Metall an. Das trockene Salz wird mit Wasser heiß und raucht: Stammlösung zu Hause ansetzen.",
  "Irritates skin and eyes, stains.": "Reizt Haut und Augen, färbt.",
  "Irritates the eyes.": "Reizt die Augen.",
  "Irritates the eyes; it gets hot as it dissolves.": "Reizt die Augen; wird beim Lösen heiß.",
  "Irritates skin, eyes and airways: no dust, goggles, gloves.":
    "Reizt Haut, Augen und Atemwege: kein Staub, Schutzbrille, Handschuhe.",
  "Salicylic acid: harmful if swallowed, damages eyes.":
    "Salicylsäure: gesundheitsschädlich bei Verschlucken, schädigt die Augen.",
  "Harmful if swallowed, irritates the eyes.": "Gesundheitsschädlich bei Verschlucken, reizt die Augen.",
  "Irritates the eyes, harms water life: no rest down the drain.":
    "Reizt die Augen, schadet Wasserlebewesen: keine Reste in den Ausguss.",
  "Edetic acid may fall out as a white powder: less EDTA or less acid.":
    "EDTA-Säure kann als weißes Pulver ausfallen: weniger EDTA oder weniger Säure.",
  "Salicylic acid may fall out as white needles.": "Salicylsäure kann als weiße Nadeln ausfallen.",
  "Thiocyanate in strong acid gives very toxic gas: keep the pH above 1.":
    "Thiocyanat in starker Säure gibt sehr giftiges Gas: den pH über 1 halten.",
  "{amount} is too little for a pipette: make the stock weaker.":
    "{amount} ist zu wenig für eine Pipette: Stammlösung schwächer ansetzen.",
  "{amount} needs {what}, or a stock.": "{amount} braucht {what}, oder eine Stammlösung.",
  "{amount} for {volume} needs {what}.": "{amount} für {volume} braucht {what}.",
  "a balance with steps of 0.01 g": "eine Waage mit Schritten von 0,01 g",
  "a balance with steps of 0.001 g": "eine Waage mit Schritten von 0,001 g",
  "As computed, within what constants, glass and camera leave open.":
    "Wie berechnet, soweit Konstanten, Glas und Kamera es offen lassen.",
  "Not as computed, and no single slip of the list explains it. Look for a second one, or for old stocks.":
    "Nicht wie berechnet, und kein einzelner Fehler der Liste erklärt es. Nach einem zweiten suchen, oder nach alten Stammlösungen.",
  "Not as computed. Likeliest: {slips}.": "Nicht wie berechnet. Am wahrscheinlichsten: {slips}.",
  "The flasks show iron in acid. A tank holds calcium and magnesium near pH 5: another metal, another strength.":
    "Die Gläser zeigen Eisen in Säure. Ein Tank enthält Calcium und Magnesium nahe pH 5: ein anderes Metall, eine andere Stärke.",
  "The flasks stand at pH 10. A spray tank stands near pH 5, where an active holds calcium far less.":
    "Die Gläser stehen bei pH 10. Ein Spritztank steht nahe pH 5, wo ein Wirkstoff Calcium viel weniger bindet.",
  "A flask shows the liquid as mixed. On the leaf the drop dries, and solids may form that no flask shows.":
    "Ein Glas zeigt die Flüssigkeit wie gemischt. Auf dem Blatt trocknet der Tropfen, und es kann sich Festes bilden, das kein Glas zeigt.",
  "A coloured stand-in shows that a metal is held, not what that does to a weed.":
    "Ein farbiger Ersatzstoff zeigt, dass ein Metall gebunden ist, nicht, was das beim Unkraut bewirkt.",
  "{indicator} is known from pH {low} to {high}: at pH {pH} its colour is a guess.":
    "{indicator} ist von pH {low} bis {high} bekannt: bei pH {pH} ist seine Farbe geraten.",
  "At pH {pH} sulfate holds {share} of the iron. A half-tone here has another cause.":
    "Bei pH {pH} bindet Sulfat {share} des Eisens. Ein Halbton hier hat eine andere Ursache.",
  "Rust may form within hours: show it fresh, or add a little acid.":
    "Rost kann sich in Stunden bilden: frisch zeigen, oder etwas Säure zugeben.",
  "More salt than the activity model was fitted to: the shade is less sure.":
    "Mehr Salz, als das Aktivitätsmodell kennt: Der Farbton ist weniger sicher.",
  "“{one}” and “{other}” end with the same things in them, so in the same colour.":
    "„{one}“ und „{other}“ enthalten am Ende dasselbe, haben also dieselbe Farbe.",
  "Equilibrium has no memory; if they differ on the bench, time or a solid is the cause.":
    "Ein Gleichgewicht hat kein Gedächtnis; unterscheiden sie sich, ist die Zeit oder ein Feststoff schuld.",
  "Tap water instead of deionised": "Leitungswasser statt deionisiertes",
  "Use deionised water.": "Deionisiertes Wasser verwenden.",
  "Acid left out": "Säure vergessen",
  "Add the acid first.": "Zuerst die Säure zugeben.",
  "Acid half as strong": "Säure halb so stark",
  "Make the acid afresh.": "Säure neu ansetzen.",
  "Acid twice as strong": "Säure doppelt so stark",
  "Dilute the acid.": "Säure verdünnen.",
  "pH half a unit too low": "pH eine halbe Einheit zu niedrig",
  "pH half a unit too high": "pH eine halbe Einheit zu hoch",
  "Check the meter or take a new strip.": "Messgerät prüfen oder neuen Streifen nehmen.",
  "Metal stock old, half of it rust or lime": "Metall-Stammlösung alt, halb Rost oder Kalk",
  "Make the stock afresh, in acid.": "Stammlösung neu ansetzen, in Säure.",
  "Another hydrate: 1.7 times the metal": "Anderes Hydrat: 1,7-mal das Metall",
  "Read the hydrate on the bottle.": "Das Hydrat auf der Flasche lesen.",
  "Indicator half as strong": "Indikator halb so stark",
  "Make the indicator afresh.": "Indikator neu ansetzen.",
  "Indicator twice as strong": "Indikator doppelt so stark",
  "Check the weight.": "Einwaage prüfen.",
  "Conditioner left out": "Konditionierer vergessen",
  "Add it, in the order of the script.": "Zugeben, in der Reihenfolge des Drehbuchs.",
  "A narrower glass, two thirds as wide": "Ein engeres Glas, zwei Drittel so weit",
  "A wider glass, half as wide again": "Ein weiteres Glas, anderthalbmal so weit",
  "Use the glass of the script.": "Das Glas des Drehbuchs verwenden.",
  "look the same": "sehen gleich aus",
  "plainly different": "deutlich verschieden",
  "about the same; the constants leave it open": "etwa gleich; die Konstanten lassen es offen",
  "different, but not for every published constant":
    "verschieden, aber nicht bei jeder veröffentlichten Konstante",
  "told apart only side by side": "nur nebeneinander zu unterscheiden",
  "a ready dilution of {strength}, not the concentrate":
    "eine fertige Verdünnung von {strength}, nicht das Konzentrat",
  "tap water spoils the colours": "Leitungswasser verdirbt die Farben",
  "flasks, clear and alike": "Gläser, klar und gleich",
  "about {width} cm wide at the liquid": "etwa {width} cm weit in Höhe der Flüssigkeit",
  "pipettes or syringes, 1 mL and 10 mL": "Pipetten oder Spritzen, 1 mL und 10 mL",
  "one for each stock": "eine je Stammlösung",
  "pH meter or narrow strips, with acid and alkali of 1 mol/L":
    "pH-Messgerät oder feine Streifen, mit Säure und Lauge von 1 mol/L",
  "goggles, gloves, tray, labels, white card behind the flasks, eye-wash bottle":
    "Schutzbrille, Handschuhe, Wanne, Etiketten, weiße Pappe hinter den Gläsern, Augenspülflasche",
  "sodium hydrogen carbonate and a labelled can for the rests":
    "Natriumhydrogencarbonat und ein beschrifteter Kanister für die Reste",
  "deionised water": "deionisiertes Wasser",
  "hydrochloric acid": "Salzsäure",
  "sodium hydroxide": "Natronlauge",
  "sodium hydrogen carbonate": "Natriumhydrogencarbonat",
  ammonia: "Ammoniak",
  "iron(III) chloride hexahydrate": "Eisen(III)-chlorid-Hexahydrat",
  "iron(III) chloride, anhydrous": "Eisen(III)-chlorid, wasserfrei",
  "ammonium iron(III) sulfate dodecahydrate": "Ammoniumeisen(III)-sulfat-Dodecahydrat",
  "calcium chloride dihydrate": "Calciumchlorid-Dihydrat",
  "calcium chloride, anhydrous": "Calciumchlorid, wasserfrei",
  "magnesium sulfate heptahydrate": "Magnesiumsulfat-Heptahydrat",
  "magnesium chloride hexahydrate": "Magnesiumchlorid-Hexahydrat",
  "sulfosalicylic acid dihydrate": "Sulfosalicylsäure-Dihydrat",
  "5-sulfosalicylic acid": "5-Sulfosalicylsäure",
  "salicylic acid": "Salicylsäure",
  "sodium salicylate": "Natriumsalicylat",
  tiron: "Tiron",
  "tiron monohydrate": "Tiron-Monohydrat",
  thiocyanate: "Thiocyanat",
  "potassium thiocyanate": "Kaliumthiocyanat",
  "ammonium thiocyanate": "Ammoniumthiocyanat",
  "Eriochrome black T": "Eriochromschwarz T",
  rust: "Rost",
  "a white or light grey patch": "ein weißes oder hellgraues Feld",
  "a colour such as #7b0246": "eine Farbe wie #7b0246",
  "No reasonable amount of strong acid or alkali brings this pH.":
    "Keine vernünftige Menge starker Säure oder Lauge bringt diesen pH.",
  "No equilibrium was found.": "Es wurde kein Gleichgewicht gefunden.",
};
