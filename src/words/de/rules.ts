import type { Phrases } from "../phrases.ts";

/** Published rules, what contradicts them, and notes on conditioners. */
export const RULES: Phrases = {
  "No ammonium salt with dicamba: it sets dicamba acid free to evaporate. It blocks unless the job says no volatility rules apply.":
    "Kein Ammoniumsalz zu Dicamba: es setzt Dicambasäure frei, die verdampfen kann. Sperrt, außer laut Auftrag gelten keine Auflagen zur Flüchtigkeit.",
  "Zollinger and others show ammonium sulfate restoring dicamba in hard water where the label allows it.":
    "Zollinger und andere zeigen: In hartem Wasser stellt Ammoniumsulfat die Dicamba-Wirkung wieder her, wo das Etikett es erlaubt.",
  "Ammonium salts raise dicamba vapour loss. Some older labels allow them: read the label in hand.":
    "Ammoniumsalze erhöhen den Dampfverlust von Dicamba. Manche älteren Etiketten erlauben sie: das Etikett in der Hand lesen.",
  "Do not acidify dicamba: below pH 5 vapour loss and off-target movement rise.":
    "Dicamba nicht ansäuern: unter pH 5 nehmen Dampfverlust und Verlagerung auf Nichtzielflächen zu.",
  "The tank is below pH 5, where dicamba vapour loss rises. Some labels ask for an agent that raises the pH.":
    "Der Tank liegt unter pH 5, wo der Dampfverlust von Dicamba steigt. Manche Etiketten verlangen ein Mittel, das den pH hebt.",
  "Glyphosate salts pull a dicamba tank down by 1 to 2 pH units.":
    "Glyphosatsalze senken den pH eines Tanks mit Dicamba um 1 bis 2 Einheiten.",
  "Registrants state 0.2 to 0.3 units, as reported in the same paper.":
    "Zulassungsinhaber nennen 0,2 bis 0,3 Einheiten, laut derselben Arbeit.",
  "Glufosinate raises dicamba vapour loss and is no labelled partner for it in tolerant crops.":
    "Glufosinat erhöht den Dampfverlust von Dicamba und ist in toleranten Kulturen laut Etikett kein Partner dafür.",
  "From about 400 mg/L hardness dicamba with glyphosate lost control of some weeds.":
    "Ab etwa 400 mg/L Wasserhärte verlor Dicamba mit Glyphosat bei manchen Unkräutern an Wirkung.",
  "Roskamp and others (2013): cations did not move dicamba on horseweed.":
    "Roskamp und andere (2013): Kationen änderten die Wirkung von Dicamba auf Kanadisches Berufkraut nicht.",
  "No acidifier with sulfonylureas: they dissolve poorly in acid water and break down on standing.":
    "Sulfonylharnstoffe nicht ansäuern: sie lösen sich in saurem Wasser schlecht und zerfallen beim Stehen.",
  "General advice that pH 4 to 6 suits everything.": "Der allgemeine Rat, pH 4 bis 6 passe zu allem.",
  "This tank is acid for a sulfonylurea: disperse it in plain water first and spray at once. The limit of pH 5.5 is ours.":
    "Für einen Sulfonylharnstoff ist dieser Tank sauer: das Mittel erst in reinem Wasser dispergieren und sofort spritzen. Die Grenze von pH 5,5 ist unsere.",
  "Sulfonylureas break down in acid water: spray the same day.":
    "Sulfonylharnstoffe zerfallen in saurem Wasser: am selben Tag spritzen.",
  "Unlike its relatives rimsulfuron breaks down in alkaline water too: keep the tank near pH 6 to 7.":
    "Anders als seine Verwandten zerfällt Rimsulfuron auch in alkalischem Wasser: Tank nahe pH 6 bis 7 halten.",
  "No acidifier with saflufenacil: it does not dissolve. Control at pH 4 was up to 56 % lower than at pH 7.7.":
    "Saflufenacil nicht ansäuern: es löst sich dann nicht. Die Wirkung war bei pH 4 bis zu 56 % geringer als bei pH 7,7.",
  "This tank is acid for saflufenacil, which dissolves poorly. The limit of pH 5 is ours; the trial saw the loss at pH 4.":
    "Für Saflufenacil ist dieser Tank sauer: es löst sich schlecht. Die Grenze von pH 5 ist unsere; der Versuch sah den Verlust bei pH 4.",
  "Hardness up to 620 mg/L made no difference to saflufenacil: no conditioner needed for it.":
    "Bis 620 mg/L Wasserhärte änderte sich bei Saflufenacil nichts: dafür ist kein Wasserkonditionierer nötig.",
  "No acid with fixed copper: acid sets copper free and burns leaves.":
    "Keine Säure zu schwerlöslichem Kupfer: Säure setzt Kupfer frei und verbrennt Blätter.",
  "Keep fixed copper at pH 6.5 or above: labels usually say so.":
    "Schwerlösliches Kupfer bei pH 6,5 oder darüber halten: das steht meist auf dem Etikett.",
  "Chelants and ammonium dissolve fixed copper: leaf injury, and the conditioner is used up.":
    "Chelatbildner und Ammonium lösen schwerlösliches Kupfer: Blattschäden, und der Wasserkonditionierer wird verbraucht.",
  "Surfactants, silicones above all, carry copper into the leaf: more injury.":
    "Netzmittel, vor allem Silikone, tragen Kupfer ins Blatt: mehr Schaden.",
  "Strong acid throws the herbicide acid out of amine and salt mixes as crystals. Dilute both first, jar test.":
    "Starke Säure fällt aus Amin- und Salzmischungen die Herbizidsäure als Kristalle aus. Beide erst verdünnen, Mischprobe.",
  "Low pH alone did not raise glyphosate activity. About 1 % v/v of product was needed to match ammonium sulfate in 1,000 mg/L water.":
    "Niedriger pH allein hob die Glyphosat-Wirkung nicht. In Wasser mit 1000 mg/L war etwa 1 % v/v Produkt nötig, um Ammoniumsulfat gleichzukommen.",
  "Guides advise lowering water above pH 8.5. Hardness is usually the larger fault: see the computed shares.":
    "Ratgeber empfehlen, bei Wasser über pH 8,5 den pH zu senken. Meist ist die Härte der größere Fehler: siehe die berechneten Anteile.",
  "From 350 mg/L hardness tie-up shows at low rates (about 445 g/ha). The same source calls 890 g/ha a high rate.":
    "Ab 350 mg/L Wasserhärte zeigt sich die Bindung bei niedriger Aufwandmenge (etwa 445 g/ha). Dieselbe Quelle nennt 890 g/ha eine hohe.",
  "150 (Montana), 200 (turf guide), 300 mg/L (canola guide).":
    "150 (Montana), 200 (Rasenratgeber), 300 mg/L (Rapsratgeber).",
  "From 700 mg/L hardness do not spray glyphosate unconditioned, even at high rates.":
    "Ab 700 mg/L Wasserhärte Glyphosat nicht ohne Wasserkonditionierer spritzen, auch nicht mit hoher Aufwandmenge.",
  "Some field trials saw no loss; rate, volume and species decide.":
    "Manche Feldversuche sahen keinen Verlust; Aufwandmenge, Wasseraufwandmenge und Pflanzenart entscheiden.",
  "Above 300 mg/L hardness a canola guide asks for ammonium sulfate before weak-acid herbicides.":
    "Über 300 mg/L Wasserhärte verlangt ein Rapsratgeber Ammoniumsulfat vor schwach sauren Herbiziden.",
  "Other lines for the same water: 150, 200, 350 and 700 mg/L.":
    "Andere Grenzen für dasselbe Wasser: 150, 200, 350 und 700 mg/L.",
  "Montana draws its line at 150 mg/L hardness, more so above pH 7.":
    "Montana zieht die Grenze bei 150 mg/L Wasserhärte, erst recht über pH 7.",
  "Other lines for the same water: 200, 300, 350 and 700 mg/L.":
    "Andere Grenzen für dasselbe Wasser: 200, 300, 350 und 700 mg/L.",
  "North Dakota calls 150 mg/L calcium antagonistic to weak-acid herbicides.":
    "North Dakota nennt 150 mg/L Calcium antagonistisch gegenüber schwach sauren Herbiziden.",
  "From 300 mg/L sodium weak-acid herbicides are antagonised. No equilibrium of the tank shows it.":
    "Ab 300 mg/L Natrium ist die Wirkung schwach saurer Herbizide gemindert. Kein Gleichgewicht des Tanks zeigt das.",
  "Sodium bicarbonate at 600 mg/L (436 mg/L as bicarbonate) weakened glyphosate in pots; ammonium nitrate brought it back.":
    "Natriumhydrogencarbonat mit 600 mg/L (436 mg/L als Hydrogencarbonat) schwächte Glyphosat im Topfversuch; Ammoniumnitrat stellte die Wirkung wieder her.",
  "Sodium bicarbonate at 600 mg/L (436 mg/L as bicarbonate) weakened nicosulfuron in pots; ammonium nitrate brought it back.":
    "Natriumhydrogencarbonat mit 600 mg/L (436 mg/L als Hydrogencarbonat) schwächte Nicosulfuron im Topfversuch; Ammoniumnitrat stellte die Wirkung wieder her.",
  "Dissolved iron holds glyphosate hard: full ammonium sulfate rate, an iron sequestrant, or other water. The limit of 1 mg/L is ours.":
    "Gelöstes Eisen bindet Glyphosat fest: volle Menge Ammoniumsulfat, ein Komplexbildner für Eisen oder anderes Wasser. Die Grenze von 1 mg/L ist unsere.",
  "A provincial specialist says no additive corrects iron.":
    "Ein Fachberater einer Provinz sagt, gegen Eisen helfe kein Zusatz.",
  "Manganese, zinc, copper or iron feeds tie glyphosate up like very hard water: separate passes.":
    "Mangan-, Zink-, Kupfer- oder Eisendünger binden Glyphosat wie sehr hartes Wasser: getrennt ausbringen.",
  "A full EDTA or DTPA chelate is the only metal feed that may go in: after the conditioner, before glyphosate.":
    "Als Metalldünger darf nur ein vollständiges EDTA- oder DTPA-Chelat hinein: nach dem Wasserkonditionierer, vor Glyphosat.",
  "A calcium or magnesium feed adds thousands of mg/L hardness: no conditioner dose carries that. Separate passes.":
    "Calcium- oder Magnesiumdünger bringt Tausende mg/L Wasserhärte: das schafft keine Dosis eines Wasserkonditionierers. Getrennt ausbringen.",
  "Mud holds glyphosate at once and no conditioner helps. A coin on the floor of a bucket must be seen; 20 NTU is our reading of that.":
    "Schlamm bindet Glyphosat sofort, kein Wasserkonditionierer hilft. Eine Münze am Boden eines Eimers muss sichtbar sein; 20 NTU sind unsere Deutung davon.",
  "Clay takes this active out at once and no conditioner helps: clean water only. The limit of 20 NTU is ours.":
    "Ton bindet diesen Wirkstoff sofort, kein Wasserkonditionierer hilft: nur klares Wasser. Die Grenze von 20 NTU ist unsere.",
  "From about 400 mg/L hardness 2,4-D amine lost control; ammonium sulfate at 20 g/L brought it back.":
    "Ab etwa 400 mg/L Wasserhärte verlor 2,4-D-Amin an Wirkung; Ammoniumsulfat mit 20 g/L stellte sie wieder her.",
  "Above 600 mg/L hardness one guide calls 2,4-D amine totally deactivated: ester form or conditioned water.":
    "Über 600 mg/L Wasserhärte nennt ein Ratgeber 2,4-D-Amin völlig inaktiviert: Esterform oder konditioniertes Wasser.",
  "Schortgen and Patton (2020): at 600 mg/L ammonium sulfate gave full control.":
    "Schortgen und Patton (2020): Bei 600 mg/L brachte Ammoniumsulfat die volle Wirkung.",
  "Calcium and magnesium phenoxy salts can fall out of hard water: conditioner first, jar test. Not computed here.":
    "Calcium- und Magnesiumsalze der Phenoxysäuren können in hartem Wasser ausfallen: erst Wasserkonditionierer, Mischprobe. Hier nicht berechnet.",
  "2,4-D ester was not antagonised at 600 mg/L hardness: no conditioner needed for it.":
    "Bei 600 mg/L Wasserhärte war die Wirkung von 2,4-D-Ester nicht gemindert: dafür ist kein Wasserkonditionierer nötig.",
  "Bicarbonate weakens 2,4-D amine and ammonium sulfate helps less here: other water, top rate or ester form.":
    "Hydrogencarbonat schwächt 2,4-D-Amin, und Ammoniumsulfat hilft hier weniger: anderes Wasser, höchste Aufwandmenge oder Esterform.",
  "Sources disagree on MCPA: Saskatchewan states no antagonism by bicarbonate or hardness.":
    "Zu MCPA widersprechen sich die Quellen: laut Saskatchewan keine Minderung durch Hydrogencarbonat oder Härte.",
  "An Ontario guide calls MCPA amine sensitive to bicarbonate.":
    "Ein Ratgeber aus Ontario nennt MCPA-Amin empfindlich gegen Hydrogencarbonat.",
  "Ammonium sulfate does not fully cure manganese antagonism of 2,4-D amine: keep the feed out.":
    "Ammoniumsulfat behebt die Minderung von 2,4-D-Amin durch Mangan nicht ganz: den Dünger weglassen.",
  "Water cleared with alum is not for amine products.": "Mit Alaun geklärtes Wasser ist nicht für Aminsalze.",
  "At pH 9 glufosinate control fell 8 to 17 points against pH 4: slightly acid water.":
    "Bei pH 9 lag die Wirkung von Glufosinat 8 bis 17 Prozentpunkte unter der bei pH 4: leicht saures Wasser.",
  "At 500 and 1,000 mg/L hardness glufosinate was antagonised (about 20 points at 1,000); ammonium sulfate restored it.":
    "Bei 500 und 1000 mg/L Wasserhärte war die Glufosinat-Wirkung gemindert (etwa 20 Prozentpunkte bei 1000); Ammoniumsulfat stellte sie wieder her.",
  "At 500 and 1,000 mg/L hardness this active was antagonised; ammonium sulfate restored it.":
    "Bei 500 und 1000 mg/L Wasserhärte war die Wirkung dieses Wirkstoffs gemindert; Ammoniumsulfat stellte sie wieder her.",
  "Mesotrione lost 18 to 28 points at 1,000 mg/L hardness; the authors advise water below 200 mg/L.":
    "Mesotrione verlor bei 1000 mg/L Wasserhärte 18 bis 28 Prozentpunkte; die Autoren raten zu Wasser unter 200 mg/L.",
  "In one trial mesotrione did best at pH 6.5, worse at 4 and at 9. The limits of 5 and 8.5 are ours.":
    "In einem Versuch wirkte Mesotrione bei pH 6,5 am besten, bei 4 und bei 9 schlechter. Die Grenzen von 5 und 8,5 sind unsere.",
  "Calcium, magnesium and iron carbonates halved imazethapyr in pots; ammonium sulfate did most against it. The limits of 300 mg/L are ours.":
    "Calcium-, Magnesium- und Eisencarbonat halbierten die Wirkung von Imazethapyr im Topfversuch; Ammoniumsulfat half am meisten dagegen. Die Grenzen von 300 mg/L sind unsere.",
  "Bicarbonate cuts the dims: ammonium sulfate at 1 % w/v or 28 % UAN cures it. A sequestrant or softener does not.":
    "Hydrogencarbonat mindert die DIMs: Ammoniumsulfat mit 1 % w/v oder AHL 28 % behebt es. Ein Komplexbildner oder Enthärter nicht.",
  "Ammonium is the published cure for bicarbonate with the dims: ammonium sulfate at 1 % w/v.":
    "Ammonium ist das veröffentlichte Mittel gegen Hydrogencarbonat bei DIMs: Ammoniumsulfat mit 1 % w/v.",
  "A sodium sequestrant leaves bicarbonate and adds sodium: it does not help the dims.":
    "Ein Natrium-Komplexbildner lässt Hydrogencarbonat stehen und bringt Natrium: den DIMs hilft er nicht.",
  "Hardness is not what hurts the dims: calcium sulfate water did not reduce them.":
    "Nicht die Wasserhärte schadet den DIMs: Wasser mit Calciumsulfat minderte sie nicht.",
  "A softener leaves bicarbonate and adds sodium: still bad for the dims.":
    "Ein Enthärter lässt Hydrogencarbonat stehen und bringt Natrium: weiter schlecht für die DIMs.",
  "Bentazon antagonises the dims: ammonium sulfate or UAN reduces it, separate sprays cure it.":
    "Bentazon mindert die Wirkung der DIMs: Ammoniumsulfat oder AHL verringert das, getrennte Spritzungen beheben es.",
  "This active breaks down in alkaline water: bring the tank to pH 5 to 6 before it goes in, spray at once.":
    "Dieser Wirkstoff zerfällt in alkalischem Wasser: den Tank vor der Zugabe auf pH 5 bis 6 bringen, sofort spritzen.",
  "Formulated suspensions lose far less than dissolved active (Atwood and others 1987).":
    "Formulierte Suspensionen verlieren weit weniger als gelöster Wirkstoff (Atwood und andere 1987).",
  "This conditioner makes the tank alkaline and the active would break down: use an acid or part-neutralised one.":
    "Dieser Wasserkonditionierer macht den Tank alkalisch, der Wirkstoff würde zerfallen: einen sauren oder teilneutralisierten nehmen.",
  "Dissolved, it lasts hours at pH 8 and minutes at pH 9. Slightly acid water, mixed just before use.":
    "Gelöst hält er bei pH 8 Stunden und bei pH 9 Minuten. Leicht saures Wasser, kurz vor Gebrauch gemischt.",
  "An extension guide warns of water above pH 8 for organophosphates and carbamates.":
    "Ein Ratgeber der Beratung warnt bei Organophosphaten und Carbamaten vor Wasser über pH 8.",
  "Half-lives of this one are days to weeks at pH 9.":
    "Halbwertszeiten dieses Wirkstoffs sind bei pH 9 Tage bis Wochen.",
  "Oil carries captan into leaf and fruit: not together, and 10 to 12 days apart or more.":
    "Öl trägt Captan in Blatt und Frucht: nicht zusammen, und 10 bis 12 Tage Abstand oder mehr.",
  "Oil raises crop injury from chlorothalonil: keep the interval of the label.":
    "Öl verstärkt Kulturschäden durch Chlorthalonil: den Abstand des Etiketts einhalten.",
  "Not with alkaline copper: it breaks down.": "Nicht mit alkalischem Kupfer: der Wirkstoff zerfällt.",
  "Fosetyl-aluminium makes the spray acid, which sets copper free: not together.":
    "Fosetyl-Aluminium macht die Spritzbrühe sauer, das setzt Kupfer frei: nicht zusammen.",
  "Copper ties up thiophanate-methyl: not together.": "Kupfer bindet Thiophanat-methyl: nicht zusammen.",
  "Not with nitrogen or metal feeds on tender crops: injury.":
    "Auf empfindlichen Kulturen nicht mit Stickstoff- oder Metalldüngern: Schäden.",
  "Strong chelants take the metals out of mancozeb and break it up.":
    "Starke Chelatbildner entziehen Mancozeb die Metalle und zerlegen es.",
  "Mancozeb breaks down in acid water: no acidifier.": "Mancozeb zerfällt in saurem Wasser: nicht ansäuern.",
  "Above pH 4 to 5 ethephon gives off its ethylene in the tank: spray within hours.":
    "Über pH 4 bis 5 gibt Ethephon sein Ethylen im Tank ab: binnen Stunden spritzen.",
  "Water of 300 mg/L alkalinity (366 mg/L as bicarbonate) weakened ethephon on bedding plants, against 50 mg/L.":
    "Wasser mit 300 mg/L Säurekapazität (366 mg/L als Hydrogencarbonat) schwächte Ethephon auf Beetpflanzen, verglichen mit 50 mg/L.",
  "A strong ammonium sulfate premix in this water can drop gypsum: dissolve it in the main tank or in soft water.":
    "Eine starke Vormischung von Ammoniumsulfat kann in diesem Wasser Gips ausfällen: im Haupttank oder in weichem Wasser lösen.",
  "Gypsum forming as the drop dries is how ammonium sulfate takes the calcium. It takes no magnesium.":
    "Ammoniumsulfat nimmt das Calcium weg, indem beim Trocknen des Tropfens Gips entsteht. Magnesium nimmt es nicht.",
  "North Dakota: under 4 lb per 100 US gal (4.8 g/L) ammonium sulfate may not do the job in hard water.":
    "North Dakota: Unter 4 lb je 100 US gal (4,8 g/L) reicht Ammoniumsulfat in hartem Wasser vielleicht nicht.",
  "Phosphate clouds hard water above about pH 6.5: calcium phosphate fines reach the screens.":
    "Phosphat trübt hartes Wasser über etwa pH 6,5: feines Calciumphosphat gelangt an die Siebe.",
  "Magnesium, ammonium and phosphate above pH 7 can drop struvite.":
    "Magnesium, Ammonium und Phosphat können über pH 7 Struvit ausfällen.",
  "Near equal amounts the calcium phosphonate can fall out as floc: jar test.":
    "Bei etwa gleichen Mengen kann das Calciumphosphonat als Flocken ausfallen: Mischprobe.",
  "Below about pH 2.5 EDTA falls out as the free acid. Do not premix chelant with strong acid.":
    "Unter etwa pH 2,5 fällt EDTA als freie Säure aus. Chelatbildner nicht mit starker Säure vormischen.",
  "Ammonium in an alkaline tank gives ammonia gas: choking in a shed, and the nitrogen is lost.":
    "Ammonium gibt im alkalischen Tank Ammoniakgas: es nimmt in der Halle den Atem, und der Stickstoff geht verloren.",
  "Strong potassium solutions can salt out the potassium salt of amine mixes: dilute first, jar test.":
    "Starke Kaliumlösungen können aus Aminmischungen das Kaliumsalz aussalzen: erst verdünnen, Mischprobe.",
  "Dry ammonium salts cool the water as they dissolve: pre-dissolve or use the liquid.":
    "Trockene Ammoniumsalze kühlen beim Lösen das Wasser: vorlösen oder die flüssige Form nehmen.",
  "Enter the nitrogen where a scheme counts it: 2 % ammonium sulfate at 100 L/ha is 0.42 kg N/ha.":
    "Den Stickstoff eintragen, wo eine Regelung ihn zählt: 2 % Ammoniumsulfat bei 100 L/ha sind 0,42 kg N/ha.",
  "Iron and manganese drop out on airing and plug screens: aerate and settle first. The limits of 5 and 2 mg/L are ours.":
    "Eisen und Mangan fallen an der Luft aus und verstopfen Siebe: erst belüften und absetzen lassen. Die Grenzen von 5 und 2 mg/L sind unsere.",
  "The cation formula gives iron a coefficient, so treats it as correctable.":
    "Die Kationenformel gibt Eisen einen Faktor, behandelt es also als behebbar.",
  "Salt breaks emulsions: jar test for an hour. The limit of 3,000 µS/cm is ours; sources say only high.":
    "Salz bricht Emulsionen: Mischprobe über eine Stunde. Die Grenze von 3000 µS/cm ist unsere; Quellen sagen nur „hoch“.",
  "Above 1,000 µS/cm look at the single ions, not at the total.":
    "Über 1000 µS/cm auf die einzelnen Ionen sehen, nicht auf die Summe.",
  "Above 10,000 µS/cm the water is very salty: find out which salts before use.":
    "Über 10 000 µS/cm ist das Wasser sehr salzig: vor Gebrauch klären, welche Salze es sind.",
  "An emulsifiable concentrate in a salt-rich carrier may cream or oil out: compatibility agent and jar test.":
    "Ein Emulsionskonzentrat kann in salzreicher Trägerflüssigkeit aufrahmen oder Öl abscheiden: Mischhilfe und Mischprobe.",
  "Very cold or hot spray water cut control in trials: at 5 and 56 °C, not at 22 and 39 °C. The limits of 10 and 45 °C are ours.":
    "Sehr kaltes oder heißes Spritzwasser kostete in Versuchen Wirkung: bei 5 und 56 °C, nicht bei 22 und 39 °C. Die Grenzen von 10 und 45 °C sind unsere.",
  "Cold water: dry products and bags dissolve and disperse slowly. Wait, stir, check the screens.":
    "Kaltes Wasser: trockene Mittel und Beutel lösen und verteilen sich langsam. Warten, rühren, Siebe prüfen.",
  "Water-soluble bags go into plain water and must be gone before any conditioner: salts stop the film dissolving.":
    "Wasserlösliche Beutel kommen in reines Wasser und müssen vor jedem Wasserkonditionierer verschwunden sein: Salze hindern die Folie am Lösen.",
  "Sources that put the conditioner first.": "Quellen, die den Wasserkonditionierer zuerst zugeben.",
  "Make a slurry of dry products first; let it disperse fully before the next product.":
    "Trockene Mittel zuerst zu einem Brei anrühren; vor dem nächsten Mittel ganz verteilen lassen.",
  "Sources differ on solutions before or after emulsions: label first, then jar test.":
    "Quellen weichen ab, ob Lösungen vor oder nach Emulsionen kommen: erst das Etikett, dann Mischprobe.",
  "Manitoba and Oklahoma: before; North Dakota: after.":
    "Manitoba und Oklahoma: davor; North Dakota: danach.",
  "More than three partners: the jar test is not optional.":
    "Mehr als drei Partner: auf die Mischprobe nicht verzichten.",
  "Do not keep mixed loads overnight unless the label allows it. Restart the agitator well before spraying.":
    "Fertige Füllungen nicht über Nacht aufheben, außer das Etikett erlaubt es. Rührwerk rechtzeitig vor dem Spritzen wieder einschalten.",
  "No loss in 24 to 72 h for several herbicides in trials.":
    "Bei mehreren Herbiziden in Versuchen kein Verlust in 24 bis 72 h.",
  "Use an iprodione mixture on the day it is made.":
    "Eine Mischung mit Iprodion am Tag des Ansetzens verbrauchen.",
  "Carbonate with glyphosate or any acid gives off carbon dioxide. Open the vent, add slowly, wait before closing.":
    "Carbonat gibt mit Glyphosat oder jeder Säure Kohlendioxid ab. Entlüftung öffnen, langsam zugeben, vor dem Schließen warten.",
  "Carbonate makes scale in hard water. It raises the pH; it is no conditioner against hardness.":
    "Carbonat bildet in hartem Wasser Kalkbelag. Es hebt den pH; gegen Härte ist es kein Wasserkonditionierer.",
  "Near equal amounts the calcium polyacrylate can fall out as floc: jar test.":
    "Bei etwa gleichen Mengen kann das Calciumpolyacrylat als Flocken ausfallen: Mischprobe.",
  "Anionic wetters and polymers inactivate paraquat and diquat: non-ionic only.":
    "Anionische Netzmittel und Polymere inaktivieren Paraquat und Deiquat: nur nichtionische.",
  "Softening swaps calcium for sodium: better for glyphosate, but high sodium still weakens salts. Measure again after the softener.":
    "Enthärten tauscht Calcium gegen Natrium: besser für Glyphosat, doch viel Natrium schwächt Salze weiterhin. Nach dem Enthärter neu messen.",
  "Chlorine kills live products: let mains water stand open for a day first.":
    "Chlor tötet lebende Biologika: Leitungswasser erst einen Tag offen stehen lassen.",
  "Live products die at extreme pH: keep the tank between pH 5 and 8. The limits are ours.":
    "Lebende Biologika sterben bei extremem pH: den Tank zwischen pH 5 und 8 halten. Die Grenzen sind unsere.",
  "Copper kills live products: separate passes.": "Kupfer tötet lebende Biologika: getrennt ausbringen.",
  "Soap turns to curd in hard water: soft water, or a sequestrant first. The limit of 100 mg/L is ours.":
    "Seife wird in hartem Wasser zu Kalkseife: weiches Wasser, oder erst ein Komplexbildner. Die Grenze von 100 mg/L ist unsere.",
  "Ammonium thiosulfate lowered control by glyphosate and raised the pH. It is no stand-in for ammonium sulfate.":
    "Ammoniumthiosulfat senkte die Wirkung von Glyphosat und hob den pH. Es ist kein Ersatz für Ammoniumsulfat.",
  "Acid breaks thiosulfate: sulfur plugs screens and sulfur dioxide comes off.":
    "Säure zerlegt Thiosulfat: Schwefel verstopft Siebe, und Schwefeldioxid entweicht.",
  "Acid with bleach gives chlorine gas. Rinse fully between bleach cleaning and any acid.":
    "Säure mit Chlorbleiche gibt Chlorgas. Zwischen Reinigen mit Chlorbleiche und jeder Säure gründlich spülen.",
  "Ammonium or urea with bleach gives chloramine gases. Rinse fully after bleach cleaning.":
    "Ammonium oder Harnstoff mit Chlorbleiche gibt Chloramingase. Nach dem Reinigen mit Chlorbleiche gründlich spülen.",
  "Acid with lime sulfur sets poisonous hydrogen sulfide free.":
    "Säure setzt aus Schwefelkalk giftigen Schwefelwasserstoff frei.",
  "Ammonium with lime, caustic or ash gives ammonia gas: choking in a shed, and the nitrogen is lost.":
    "Ammonium mit Kalk, Lauge oder Asche gibt Ammoniakgas: es nimmt in der Halle den Atem, und der Stickstoff geht verloren.",
  "Captan with lime or borate breaks down within minutes to hours once dissolved.":
    "Gelöst zerfällt Captan mit Kalk oder Borat binnen Minuten bis Stunden.",
  "Formulated captan lost 27 % in 48 h at pH 9.5 (Atwood and others 1987).":
    "Formuliertes Captan verlor bei pH 9,5 in 48 h 27 % (Atwood und andere 1987).",
  "Not with lime: alkaline breakdown.": "Nicht mit Kalk: alkalischer Zerfall.",
  "Dimethoate is not mixed with sulfur or alkaline materials.":
    "Dimethoat wird nicht mit Schwefel oder alkalischen Stoffen gemischt.",
  "Octaborate takes the tank to pH 8 and above: acidify after it and before this active. Boric acid does not.":
    "Octaborat bringt den Tank auf pH 8 und darüber: danach und vor diesem Wirkstoff ansäuern. Borsäure tut das nicht.",
  "Borate with calcium feeds can cloud: jar test.": "Borat mit Calciumdüngern kann sich trüben: Mischprobe.",
  "Boron turns the bag film to rubber: never together, and rinse boron out before using bags.":
    "Bor macht die Beutelfolie zu Gummi: nie zusammen, und vor dem Einsatz von Beuteln das Bor ausspülen.",
  "Mineral oil with sulfur burns leaves: never in one tank, and weeks apart.":
    "Mineralöl mit Schwefel verbrennt Blätter: nie in einem Tank, und Wochen Abstand.",
  "Phosphorous acid products acidify and set copper free: days apart, follow both labels.":
    "Phosphonsäure-Mittel säuern an und setzen Kupfer frei: Tage Abstand, beide Etiketten befolgen.",
  "Calcium feed with a sulfate drops gypsum in the tank: never together, not in a premix either.":
    "Calciumdünger lässt mit einem Sulfat im Tank Gips ausfallen: nie zusammen, auch nicht in einer Vormischung.",
  "Calcium feed with phosphates drops calcium phosphate: never together.":
    "Calciumdünger lässt mit Phosphaten Calciumphosphat ausfallen: nie zusammen.",
  "Iron with phosphate drops iron phosphate.": "Eisen lässt mit Phosphat Eisenphosphat ausfallen.",
  "Magnesium feed with ammonium phosphate can drop struvite, above pH 7 most.":
    "Magnesiumdünger kann mit Ammoniumphosphat Struvit ausfällen, am meisten über pH 7.",
  "A strong premix of ammonium sulfate with potassium salts can crystallise potassium sulfate. Add both to the main tank.":
    "In einer starken Vormischung von Ammoniumsulfat mit Kaliumsalzen kann Kaliumsulfat kristallisieren. Beide in den Haupttank geben.",
  "Metal salts undo the conditioning: last in, if at all. The shares computed here are without them.":
    "Metallsalze machen die Konditionierung zunichte: zuletzt, wenn überhaupt. Die hier berechneten Anteile sind ohne sie.",
  "Glyphosate in galvanised or bare steel gives off hydrogen, which can ignite: plastic, stainless or lined tanks only.":
    "Glyphosat gibt in verzinktem oder blankem Stahl Wasserstoff ab, der sich entzünden kann: nur Kunststoff-, Edelstahl- oder ausgekleidete Tanks.",
  "Ammonium salts attack brass, copper and zinc and rust steel: rinse the whole machine the same day.":
    "Ammoniumsalze greifen Messing, Kupfer und Zink an, Stahl rostet: das ganze Gerät am selben Tag spülen.",
  "Acid strips zinc and gives hydrogen: plastic gear for concentrates, rinse after.":
    "Säure löst Zink ab und gibt Wasserstoff: Konzentrate nur in Kunststoff, danach spülen.",
  "Copper sulfate eats steel and aluminium: plastic tank only.":
    "Kupfersulfat greift Stahl und Aluminium an: nur Kunststofftank.",
  "Ammonium and urea sprays can scorch crop leaves in hot, dry or bright weather. The limit of 28 °C is ours.":
    "Ammonium- und Harnstoffspritzungen können bei heißem, trockenem oder grellem Wetter Kulturblätter verbrennen. Die Grenze von 28 °C ist unsere.",
  "Montana: above 400 mg/L hardness with iron many herbicides lose control. The iron limit of 0.3 mg/L is ours.":
    "Montana: Über 400 mg/L Wasserhärte mit Eisen verlieren viele Herbizide an Wirkung. Die Eisengrenze von 0,3 mg/L ist unsere.",
  "A turf guide treats water from 200 mg/L hardness.":
    "Ein Rasenratgeber behandelt Wasser ab 200 mg/L Wasserhärte.",
  "Other lines for the same water: 150, 300, 350 and 700 mg/L.":
    "Andere Grenzen für dasselbe Wasser: 150, 300, 350 und 700 mg/L.",
  "2,4-D choline at a third of the rate lost control evenly with hardness: 20 points or more at 1,000 mg/L.":
    "2,4-D-Cholin mit einem Drittel der Aufwandmenge verlor gleichmäßig mit der Härte an Wirkung: 20 Prozentpunkte oder mehr bei 1000 mg/L.",
  "A Victorian guide lists MCPA among what mud weakens. The limit of 20 NTU is ours.":
    "Ein Ratgeber aus Victoria zählt MCPA zu dem, was Schlamm schwächt. Die Grenze von 20 NTU ist unsere.",
  "A Victorian guide says triazines break down faster in salty water: spray at once. The limit of 3,000 µS/cm is ours.":
    "Laut einem Ratgeber aus Victoria zerfallen Triazine in salzigem Wasser schneller: sofort spritzen. Die Grenze von 3000 µS/cm ist unsere.",
  "No trial was found for it.": "Dazu wurde kein Versuch gefunden.",
  "Bulletins print half-lives of 12 h at pH 6 and 48 min at pH 9 for dimethoate. Do not rely on them.":
    "Merkblätter drucken für Dimethoat Halbwertszeiten von 12 h bei pH 6 und 48 min bei pH 9. Nicht darauf verlassen.",
  "Registration data: 68 days at pH 7, 4.4 days at pH 9.":
    "Zulassungsdaten: 68 Tage bei pH 7, 4,4 Tage bei pH 9.",
  "In very hard water wetting and emulsifying suffer: jar test. The limit of 700 mg/L is ours.":
    "In sehr hartem Wasser leiden Benetzung und Emulgierung: Mischprobe. Die Grenze von 700 mg/L ist unsere.",
  "Below 500 µS/cm a water is probably good for spraying.":
    "Unter 500 µS/cm ist ein Wasser wahrscheinlich gut zum Spritzen.",
  "As a dilute spray at pH 9.5 phosmet lost 70 % in 48 h; twenty times stronger it lost 10 %.":
    "Als dünne Brühe verlor Phosmet bei pH 9,5 in 48 h 70 %; zwanzigfach stärker verlor es 10 %.",
  "Products dissolve and emulsify best between about 10 and 27 °C.":
    "Mittel lösen und emulgieren sich am besten zwischen etwa 10 und 27 °C.",
  "In the tank it pairs with calcium only weakly; on the leaf gypsum takes the calcium out as the drop dries.":
    "Bindet Calcium im Tank nur schwach; auf dem Blatt nimmt Gips beim Trocknen des Tropfens das Calcium heraus.",
  "It also aids uptake in some weeds. No equilibrium shows that.":
    "Fördert bei manchen Unkräutern auch die Aufnahme. Kein Gleichgewicht zeigt das.",
  "Dissolving cools the water: slow below about 8 °C.":
    "Das Lösen kühlt das Wasser: langsam unter etwa 8 °C.",
  "It does not take calcium out: calcium nitrate stays dissolved.":
    "Nimmt kein Calcium heraus: Calciumnitrat bleibt gelöst.",
  "Urea takes no part in the chemistry of the tank and is left out of it.":
    "Harnstoff nimmt an der Chemie des Tanks nicht teil und bleibt dort außer Betracht.",
  "In one hard water it raised glyphosate potency 1.64 times, ammonium sulfate 2.52 times.":
    "In einem harten Wasser hob es die Wirksamkeit von Glyphosat auf das 1,64-Fache, Ammoniumsulfat auf das 2,52-Fache.",
  "Which hydrate is in the bag makes 9 % difference in strength.":
    "Welches Hydrat im Sack ist, macht 9 % Unterschied in der Stärke.",
  "It lets protons go when it takes calcium: the tank turns more acid.":
    "Gibt Protonen ab, wenn es Calcium bindet: der Tank wird saurer.",
  "Dissolves slowly in cold water. Below about pH 2.5 the free acid falls out.":
    "Löst sich in kaltem Wasser langsam. Unter etwa pH 2,5 fällt die freie Säure aus.",
  "Sold solutions often hold 1 to 2 % free caustic, which is not counted here.":
    "Verkaufte Lösungen enthalten oft 1 bis 2 % freie Lauge, die hier nicht gezählt wird.",
  "The calcium salt may fall out near equal moles in hard water above pH 6: jar test.":
    "In hartem Wasser über pH 6 kann das Calciumsalz bei etwa gleichen Molmengen ausfallen: Mischprobe.",
  "No iron constants are published for it here: its hold on iron is not known.":
    "Dafür sind hier keine Eisenkonstanten veröffentlicht: wie fest es Eisen bindet, ist nicht bekannt.",
  "It turns slowly to simpler phosphates in stored solution, faster in acid.":
    "Wird in gelagerter Lösung langsam zu einfacheren Phosphaten, in Säure schneller.",
  "Under-dosed it clouds hard water. No iron constants: its hold on iron is not known.":
    "Unterdosiert trübt es hartes Wasser. Keine Eisenkonstanten: wie fest es Eisen bindet, ist nicht bekannt.",
  "Above about pH 6 it clouds hard water with calcium phosphate.":
    "Über etwa pH 6 trübt es hartes Wasser mit Calciumphosphat.",
  "Low pH alone did not raise glyphosate activity; about 1 % v/v of product was needed in 1,000 mg/L water.":
    "Niedriger pH allein hob die Glyphosat-Wirkung nicht; in Wasser mit 1000 mg/L war etwa 1 % v/v Produkt nötig.",
  "No spray trial was found.": "Es wurde kein Spritzversuch gefunden.",
  "At spray pH it holds calcium poorly; it helps with iron and in alkaline water.":
    "Beim pH der Spritzbrühe bindet es Calcium schlecht; es hilft bei Eisen und in alkalischem Wasser.",
  "A weak binder of calcium: an acidifier only.": "Bindet Calcium schwach: nur ein Säuerungsmittel.",
  "Clouds hard water above about pH 6.5; with magnesium above pH 7 struvite may fall out.":
    "Trübt hartes Wasser über etwa pH 6,5; mit Magnesium kann über pH 7 Struvit ausfallen.",
  "Salts out in store near −10 °C.": "Salzt im Lager nahe −10 °C aus.",
  "Salts out in store near −2 °C.": "Salzt im Lager nahe −2 °C aus.",
  "It does not take calcium out: calcium chloride stays dissolved and wet on the leaf.":
    "Nimmt kein Calcium heraus: Calciumchlorid bleibt auf dem Blatt gelöst und feucht.",
  "Chloride pits stainless steel: rinse the same day.":
    "Chlorid gibt Lochfraß an Edelstahl: am selben Tag spülen.",
  "It binds calcium as citric acid does, without the acid.":
    "Bindet Calcium wie Citronensäure, ohne die Säure.",
  "It turns bicarbonate into carbon dioxide: the tank foams. Vent it.":
    "Macht Hydrogencarbonat zu Kohlendioxid: der Tank schäumt. Entlüften.",
  "Low pH alone did not raise glyphosate activity.": "Niedriger pH allein hob die Glyphosat-Wirkung nicht.",
  "A weak binder of calcium: an acidifier first of all.":
    "Bindet Calcium schwach: vor allem ein Säuerungsmittel.",
  "Strong solutions hold part of it as chains that split slowly.":
    "Starke Lösungen enthalten einen Teil als Ketten, die sich langsam spalten.",
  "Acid part of several acidifying wetting agents. What the wetting agent does is not computed.":
    "Säureteil mehrerer ansäuernder Netzmittel. Was das Netzmittel tut, wird nicht berechnet.",
  "Calcium tartrate may fall out within hours. It is not computed: jar test.":
    "Calciumtartrat kann binnen Stunden ausfallen. Das wird nicht berechnet: Mischprobe.",
  "Part of it stands as lactones, which open slowly; all is counted as acid.":
    "Ein Teil liegt als Lactone vor, die sich langsam öffnen; alles zählt als Säure.",
  "Clouds hard water above about pH 6.": "Trübt hartes Wasser über etwa pH 6.",
  "Tried in the field beside ammonium sulfate with glyphosate, dicamba and clethodim.":
    "Im Feld neben Ammoniumsulfat mit Glyphosat, Dicamba und Clethodim erprobt.",
  "Clouds hard water; how much calcium stays dissolved is a matter of time.":
    "Trübt hartes Wasser; wie viel Calcium gelöst bleibt, ist eine Frage der Zeit.",
  "Holds dicamba sprays above pH 5. It is no hardness conditioner: it makes scale.":
    "Hält Dicamba-Brühen über pH 5. Kein Wasserkonditionierer gegen Härte: es bildet Kalkbelag.",
  "Lowered dicamba volatility at 0.05 mol/L. It is not sold against hardness.":
    "Senkte bei 0,05 mol/L die Flüchtigkeit von Dicamba. Wird nicht gegen Härte verkauft.",
  "Holds iron(III) up to about pH 9.": "Bindet Eisen(III) bis etwa pH 9.",
  "Weak for calcium and magnesium; useful for iron, copper and zinc.":
    "Schwach für Calcium und Magnesium; nützlich für Eisen, Kupfer und Zink.",
  "Sold solutions hold fumarate, aspartate and malate besides, which are not counted.":
    "Verkaufte Lösungen enthalten außerdem Fumarat, Aspartat und Malat, die nicht gezählt werden.",
  "Sold acid holds a few per cent of other acids from making it, which are not counted.":
    "Verkaufte Säure enthält aus der Herstellung einige Prozent anderer Säuren, die nicht gezählt werden.",
  "A little keeps scale from forming well below equal moles. No equilibrium shows that.":
    "Ein wenig verhindert Kalkbelag schon weit unter gleichen Molmengen. Kein Gleichgewicht zeigt das.",
  "Grades differ in acid and sodium: measure the pH of the tank.":
    "Sorten unterscheiden sich in Säure und Natrium: den pH des Tanks messen.",
  "No constants with iron are carried: its hold on iron is not known here.":
    "Keine Konstanten mit Eisen hinterlegt: wie fest es Eisen bindet, ist hier nicht bekannt.",
  "A scale inhibitor. No metal constants exist: only its acid is computed.":
    "Ein Mittel gegen Kalkbelag. Es gibt keine Metallkonstanten: nur die Säure wird berechnet.",
  "The product is a mixture of chains that bind more strongly. It is counted as a ring: an indication.":
    "Das Produkt ist ein Gemisch von Ketten, die stärker binden. Es ist als Ring gezählt: ein Anhaltspunkt.",
  "Sticks as a lump when tipped into still water.":
    "Klebt als Klumpen, wenn man es in stehendes Wasser kippt.",
  "Counted by units of acrylate, with constants near half neutralisation: an indication.":
    "Gezählt nach Acrylat-Einheiten, mit Konstanten nahe halber Neutralisation: ein Anhaltspunkt.",
  "With about as much calcium as it has charge it gels: jar test.":
    "Mit etwa so viel Calcium, wie es Ladung hat, geliert es: Mischprobe.",
  "North Dakota cation formula: a minimum to cancel the water, found on plants, not an equilibrium.":
    "Kationenformel aus North Dakota: ein Minimum, um die Wirkung des Wassers aufzuheben, an Pflanzen gefunden, kein Gleichgewicht.",
  "It has no bicarbonate term.": "Sie hat kein Glied für Hydrogencarbonat.",
  "Not known here: {ions}; the dose is a least one.":
    "Hier nicht bekannt: {ions}; die Dosis ist eine Mindestdosis.",
  "The formula's own extension authors advise 4 to 6 lb per 100 US gal, whatever the formula says.":
    "Die Beratungsautoren der Formel selbst raten zu 4 bis 6 lb je 100 US gal, was immer die Formel sagt.",
};
