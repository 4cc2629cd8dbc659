import type { Phrases } from "../phrases.ts";

/** Cautions of single actives, conditioners and leaf feeds. */
export const PRODUCT_CAUTIONS: Phrases = {
  "Not in galvanised or unlined steel: hydrogen forms and can ignite.":
    "Nicht in verzinktem oder blankem Stahl: Wasserstoff entsteht und kann sich entzünden.",
  "Manganese feeds cut control by 10 to 30 % unless the manganese is the EDTA chelate.":
    "Mangandünger mindert die Wirkung um 10 bis 30 %, außer als EDTA-Chelat.",
  "Conditioner goes in and dissolves before glyphosate.":
    "Erst den Wasserkonditionierer zugeben und lösen, dann Glyphosat.",
  "Ammonium sulfate is the usual additive and raises activity even in soft water.":
    "Ammoniumsulfat ist der übliche Zusatz und hebt die Wirkung auch in weichem Wasser.",
  "Calcium and magnesium salts can fall out of hard water; products carry a sequestrant against it.":
    "Calcium- und Magnesiumsalze können in hartem Wasser ausfallen; Produkte enthalten dagegen einen Komplexbildner.",
  "Calcium and magnesium salts may fall out of hard water.":
    "Calcium- und Magnesiumsalze können in hartem Wasser ausfallen.",
  "Not with water cleared with alum when the product is an amine.":
    "Aminsalze nicht mit Wasser, das mit Alaun geklärt wurde.",
  "The emulsion is the hard-water question here: check it in the jar.":
    "Bei hartem Wasser zählt hier die Emulsion: im Glas prüfen.",
  "Some labels ask for an agent that keeps the spray above pH 5.":
    "Manche Etiketten verlangen ein Mittel, das die Spritzbrühe über pH 5 hält.",
  "Usual partners are ammonium sulfate or UAN and a crop oil.":
    "Übliche Partner sind Ammoniumsulfat oder AHL und ein Öl.",
  "Bentazon antagonises it.": "Bentazon mindert die Wirkung.",
  "Sodium salts antagonise it; ammonium sulfate reduces that.":
    "Natriumsalze mindern die Wirkung; Ammoniumsulfat verringert das.",
  "Do not acidify: it dissolves poorly below about pH 5 and breaks down on standing.":
    "Nicht ansäuern: unter etwa pH 5 löst es sich schlecht und zerfällt beim Stehen.",
  "Do not use acidifying conditioners.": "Keine ansäuernden Wasserkonditionierer verwenden.",
  "Half-lives are those of regulatory studies as remembered.":
    "Halbwertszeiten aus Zulassungsstudien, aus dem Gedächtnis.",
  "An extension table prints 8 days at pH 6 and 19 h at pH 8.":
    "Eine Beratungstabelle nennt 8 Tage bei pH 6 und 19 h bei pH 8.",
  "Sources differ: 3 hours to 3 days at pH 9, 9 to 30 days at pH 7.":
    "Die Quellen weichen ab: 3 Stunden bis 3 Tage bei pH 9, 9 bis 30 Tage bei pH 7.",
  "Not with copper or lime.": "Nicht mit Kupfer oder Kalk.",
  "Suspended particles last longer: at pH 9.5 a dilute spray lost 70 % in 48 h, one twenty times stronger lost 10 %.":
    "Schwebende Teilchen halten länger: bei pH 9,5 verlor dünne Brühe 70 % in 48 h, zwanzigfach stärkere 10 %.",
  "Half-lives are for dissolved captan.": "Die Halbwertszeiten gelten für gelöstes Captan.",
  "A formulated spray lost 27 % in 48 h at pH 9.5.": "Eine formulierte Brühe verlor bei pH 9,5 in 48 h 27 %.",
  "An extension table prints 32 h at pH 5, 8 h at pH 7, 10 min at pH 8 and 2 min at pH 9.":
    "Eine Beratungstabelle nennt für pH 5, 7, 8 und 9: 32 h, 8 h, 10 min, 2 min.",
  "Not with oils, lime or strongly alkaline copper.": "Nicht mit Ölen, Kalk oder stark alkalischem Kupfer.",
  "Never with acidifiers or other acid partners: copper set free burns leaves.":
    "Nie mit Säuren oder sauren Partnern: frei werdendes Kupfer verbrennt Blätter.",
  "Surfactants raise the injury.": "Netzmittel verstärken den Schaden.",
  "Ammonium sulfate dosed by the cations of the water restored control in trials.":
    "Nach den Kationen des Wassers dosiertes Ammoniumsulfat stellte in Versuchen die Wirkung wieder her.",
  "Of the partners tried, ammonium sulfate gained most, ahead of citric acid and ammonium nitrate.":
    "Von den geprüften Partnern brachte Ammoniumsulfat am meisten, vor Citronensäure und Ammoniumnitrat.",
  "Half-lives at pH 5 disagree: 15 days is used here, 247 days is also published.":
    "Halbwertszeiten bei pH 5 widersprechen sich: hier gelten 15 Tage, auch 247 Tage sind veröffentlicht.",
  "Unlike most sulfonylureas it breaks down in alkaline water too: keep the tank at pH 6 to 7.":
    "Anders als die meisten Sulfonylharnstoffe zerfällt es auch alkalisch: Tank bei pH 6 bis 7 halten.",
  "Clay and anionic surfactants take it out: clean water only, non-ionic wetters only.":
    "Ton und anionische Netzmittel binden es: nur klares Wasser, nur nichtionische Netzmittel.",
  "Very poisonous if swallowed: never decant it into another container.":
    "Sehr giftig beim Verschlucken: nie in andere Behälter umfüllen.",
  "Alkali breaks it down: no alkaline partners.": "Laugen zersetzen es: keine alkalischen Partner.",
  "Slightly acid water, mixed just before use: hydrolysis is its main loss.":
    "Leicht saures Wasser, kurz vor Gebrauch mischen: Hydrolyse ist der Hauptverlust.",
  "Not with alkaline materials or sulfur products.": "Nicht mit alkalischen Stoffen oder Schwefelmitteln.",
  "The often printed 48 minutes at pH 9 and 12 hours at pH 6 are not borne out by regulatory studies.":
    "Oft gedruckte 48 Minuten bei pH 9 und 12 Stunden bei pH 6 bestätigen die Zulassungsstudien nicht.",
  "Strong chelants break the polymer up: not with EDTA and the like.":
    "Starke Chelatbildner zerlegen das Polymer: nicht mit EDTA und Ähnlichem.",
  "Half-lives are of dissolved mancozeb: use the mixture within the day.":
    "Halbwertszeiten gelten für gelöstes Mancozeb: Mischung am selben Tag verbrauchen.",
  "Not with oils: injury.": "Nicht mit Ölen: Schäden.",
  "Use the mixture on the day it is made.": "Die Mischung am selben Tag verbrauchen.",
  "A formulated product breaks down more slowly than the dissolved active.":
    "Ein formuliertes Mittel zerfällt langsamer als der gelöste Wirkstoff.",
  "Not with copper: a complex forms.": "Nicht mit Kupfer: es bildet sich ein Komplex.",
  "What it breaks down to, carbendazim, is a fungicide itself.":
    "Sein Abbauprodukt Carbendazim ist selbst ein Fungizid.",
  "Not with copper: its acid sets copper ions free.": "Nicht mit Kupfer: die Säure setzt Kupferionen frei.",
  "Not with foliar nitrogen or metal feeds on tender crops.":
    "Auf empfindlichen Kulturen nicht mit Blattdüngern (Stickstoff, Metalle).",
  "Spray within hours; no alkaline partners, no calcium or iron feeds.":
    "Binnen Stunden ausbringen; keine alkalischen Partner, keine Calcium- oder Eisendünger.",
  "The concentrate is a strong acid: eyes and skin.":
    "Das Konzentrat ist stark sauer: Augen und Haut schützen.",
  "Above about 10 % N it scorched wheat leaves within a day.":
    "Über etwa 10 % N verbrannte es Weizenblätter binnen eines Tages.",
  "Stings eyes and cuts; dust makes you cough.": "Brennt in Augen und Wunden; Staub reizt zum Husten.",
  "Do not breathe the dust.": "Staub nicht einatmen.",
  "Alkaline: serious eye damage.": "Alkalisch: schwere Augenschäden.",
  "Goggles.": "Schutzbrille.",
  "Strong acid: eye damage.": "Starke Säure: Augenschäden.",
  "Gloves and goggles.": "Handschuhe und Schutzbrille.",
  "Strong acid: goggles and gloves.": "Starke Säure: Schutzbrille und Handschuhe.",
  "Alkaline: glasses.": "Alkalisch: Schutzbrille.",
  "Burns skin and eyes: goggles or face shield, acid-proof gloves, water at hand.":
    "Verätzt Haut und Augen: Schutzbrille oder Visier, säurefeste Handschuhe, Wasser bereit.",
  "Extremely caustic to skin and eyes.": "Stark ätzend für Haut und Augen.",
  "Never with bleach, sulfide, thiosulfate or alkali.":
    "Nie mit Chlorbleiche, Sulfid, Thiosulfat oder Lauge.",
  "Alkaline liquid: glasses and gloves.": "Alkalische Flüssigkeit: Schutzbrille und Handschuhe.",
  "Suspected of causing cancer: no dust.": "Krebsverdacht: keinen Staub entstehen lassen.",
  "May harm the unborn child: not handled by people who are pregnant.":
    "Kann das Kind im Mutterleib schädigen: nicht von Schwangeren zu handhaben.",
  "The concentrate burns and its vapour is flammable.": "Das Konzentrat ätzt, sein Dampf ist entzündlich.",
  "Dust irritates eyes and throat.": "Staub reizt Augen und Hals.",
  "Extremely caustic; water poured into it boils and spits.":
    "Stark ätzend; hineingegossenes Wasser kocht und spritzt.",
  "Above 15 % its sale to private buyers is restricted in the European Union.":
    "Über 15 % ist der Verkauf an Private in der EU beschränkt.",
  "The concentrate damages eyes.": "Das Konzentrat schädigt die Augen.",
  "Burns badly; choking vapour.": "Ätzt stark; Dampf nimmt den Atem.",
  "Store it vented: it slowly gives carbon monoxide.": "Belüftet lagern: es gibt langsam Kohlenmonoxid ab.",
  "Crystals and strong solutions damage eyes: glasses.":
    "Kristalle und starke Lösungen schädigen die Augen: Schutzbrille.",
  "With acids, glyphosate included, carbon dioxide builds pressure and foams over: vent and wait.":
    "Mit Säuren, auch Glyphosat, schäumt Kohlendioxid und baut Druck auf: entlüften und warten.",
  "Do not breathe the dust; it damages eyes.": "Staub nicht einatmen; er schädigt die Augen.",
  "Toxic to water life.": "Giftig für Wasserlebewesen.",
  "Damages eyes.": "Schädigt die Augen.",
  "Keep dry.": "Trocken halten.",
  "Very toxic to water life: no wash-down to drains or ditches.":
    "Sehr giftig für Wasserlebewesen: nichts in Abläufe oder Gräben spülen.",
  "Poisonous if swallowed; damages eyes.": "Giftig beim Verschlucken; schädigt die Augen.",
  "It eats steel, zinc and aluminium: plastic tanks only.":
    "Greift Stahl, Zink und Aluminium an: nur Kunststofftanks.",
  "Harmful if swallowed; stains everything.": "Gesundheitsschädlich beim Verschlucken; färbt alles.",
  "Stains.": "Färbt.",
  "Feeds fire; damages eyes.": "Nährt Feuer; schädigt die Augen.",
  "It heats when dissolved; stings eyes.": "Erwärmt sich beim Lösen; reizt die Augen.",
  "May harm fertility and the unborn child: no dust, gloves.":
    "Kann Fruchtbarkeit und Kind im Mutterleib schädigen: kein Staub, Handschuhe.",
  "Feeds fire: away from fuel, oil and sulfur.": "Nährt Feuer: fern von Kraftstoff, Öl und Schwefel.",
};
