import type { Phrases } from "../phrases.ts";

/** What the flasks and their bench list say: cautions, slips, things to have, what is seen. */
export const FLASK_PHRASES: Phrases = {
  "Gloves and eye protection for whoever pours and for the front row. No food vessels, no drinking.":
    "Gants et lunettes pour qui verse et pour le premier rang. Pas de récipients alimentaires, ne rien boire.",
  "Mark every flask with what is in it. Nothing is poured back.":
    "Marquer chaque flacon de son contenu. Rien n'est reversé.",
  "Plastic or thick glass, none chipped, a tray under the flasks, water for hands, out of reach of children.":
    "Plastique ou verre épais sans éclat, un bac dessous, de l'eau pour les mains, hors de portée des enfants.",
  "Collect all flasks in one labelled can. Anything with a herbicide goes to a labelled use, never down the sink.":
    "Vider tous les flacons dans un bidon étiqueté. Ce qui contient un herbicide va à un usage autorisé, jamais à l'évier.",
  "Iron and indicator rests: a little bicarbonate in an open vessel, let the rust settle, dispose by local rules.":
    "Restes de fer et d'indicateur : un peu de bicarbonate, récipient ouvert, laisser déposer la rouille, éliminer selon les règles locales.",
  "Spill: sand or cat litter, sweep up, bag, label. Iron stains come off with citric acid, not with bleach.":
    "Renversé : sable ou litière, balayer, ensacher, étiqueter. Les taches de fer partent à l'acide citrique, pas à la javel.",
  "Iron(III) chloride: harmful if swallowed, damages eyes, stains. Bring only a dilute, labelled, stoppered bottle; no dry salt.":
    "Chlorure de fer(III) : nocif si avalé, lésions des yeux, tache. N'apporter que dilué, étiqueté, bouché ; pas de sel sec.",
  "Herbicide: a ready dilution, only as the label allows. A thimble of concentrate is still concentrate.":
    "Herbicide : une dilution prête, seulement selon l'étiquette. Un dé de concentré reste du concentré.",
  "Thiocyanate: harmful; with strong acid it gives very toxic gas. Dilute, cold and weakly acid only.":
    "Thiocyanate : nocif ; avec un acide fort il donne un gaz très toxique. Seulement dilué, froid, peu acide.",
  "Ferrocyanide: never near concentrated acid, bleach or heat.":
    "Ferrocyanure : jamais près d'acide concentré, de javel ou de chaleur.",
  "Dilute the acid at home: acid into water, slowly. Bring only the dilute one.":
    "Diluer l'acide chez soi : l'acide dans l'eau, lentement. N'apporter que le dilué.",
  "Acid burns: goggles and gloves, acid into water, slowly.":
    "L'acide brûle : lunettes et gants, l'acide dans l'eau, lentement.",
  "Caustic burns, most of all the eyes; it gets hot as it dissolves. Goggles and gloves.":
    "La soude brûle, surtout les yeux ; elle chauffe en se dissolvant. Lunettes et gants.",
  "Its fumes bite eyes and lungs: open it outdoors, bring only the ready buffer.":
    "Ses vapeurs piquent yeux et poumons : ouvrir dehors, n'apporter que le tampon prêt.",
  "Stains skin, cloth and concrete; eats metal. The dry salt heats and fumes with water: make the stock at home.":
    "Tache peau, tissu et béton ; attaque le métal. Le sel sec chauffe et fume avec l'eau : préparer la solution chez soi.",
  "Irritates skin and eyes, stains.": "Irrite peau et yeux, tache.",
  "Irritates the eyes.": "Irrite les yeux.",
  "Irritates the eyes; it gets hot as it dissolves.": "Irrite les yeux ; chauffe en se dissolvant.",
  "Irritates skin, eyes and airways: no dust, goggles, gloves.":
    "Irrite peau, yeux et voies respiratoires : pas de poussière, lunettes, gants.",
  "Salicylic acid: harmful if swallowed, damages eyes.":
    "Acide salicylique : nocif si avalé, lésions des yeux.",
  "Harmful if swallowed, irritates the eyes.": "Nocif si avalé, irrite les yeux.",
  "Irritates the eyes, harms water life: no rest down the drain.":
    "Irrite les yeux, nuit à la vie aquatique : aucun reste à l'évier.",
  "Edetic acid may fall out as a white powder: less EDTA or less acid.":
    "L'acide édétique peut précipiter en poudre blanche : moins d'EDTA ou moins d'acide.",
  "Salicylic acid may fall out as white needles.":
    "L'acide salicylique peut précipiter en aiguilles blanches.",
  "Thiocyanate in strong acid gives very toxic gas: keep the pH above 1.":
    "Le thiocyanate en acide fort donne un gaz très toxique : garder le pH au-dessus de 1.",
  "{amount} is too little for a pipette: make the stock weaker.":
    "{amount} est trop peu pour une pipette : faire la solution plus faible.",
  "{amount} needs {what}, or a stock.": "{amount} demande {what}, ou une solution mère.",
  "{amount} for {volume} needs {what}.": "{amount} pour {volume} demande {what}.",
  "a balance with steps of 0.01 g": "une balance au pas de 0,01 g",
  "a balance with steps of 0.001 g": "une balance au pas de 0,001 g",
  "As computed, within what constants, glass and camera leave open.":
    "Comme calculé, dans ce que constantes, verre et appareil laissent ouvert.",
  "Not as computed, and no single slip of the list explains it. Look for a second one, or for old stocks.":
    "Pas comme calculé, et aucune erreur seule de la liste ne l'explique. En chercher une seconde, ou de vieilles solutions.",
  "Not as computed. Likeliest: {slips}.": "Pas comme calculé. Le plus probable : {slips}.",
  "The flasks show iron in acid. A tank holds calcium and magnesium near pH 5: another metal, another strength.":
    "Les flacons montrent du fer en acide. Une cuve contient calcium et magnésium vers pH 5 : un autre métal, une autre force.",
  "The flasks stand at pH 10. A spray tank stands near pH 5, where an active holds calcium far less.":
    "Les flacons sont à pH 10. Une cuve est vers pH 5, où une substance retient bien moins le calcium.",
  "A flask shows the liquid as mixed. On the leaf the drop dries, and solids may form that no flask shows.":
    "Un flacon montre le liquide tel que mélangé. Sur la feuille la goutte sèche, et des solides peuvent se former qu'aucun flacon ne montre.",
  "A coloured stand-in shows that a metal is held, not what that does to a weed.":
    "Un substitut coloré montre qu'un métal est retenu, pas ce que cela fait à l'adventice.",
  "{indicator} is known from pH {low} to {high}: at pH {pH} its colour is a guess.":
    "{indicator} est connu de pH {low} à {high} : à pH {pH} sa couleur est supposée.",
  "At pH {pH} sulfate holds {share} of the iron. A half-tone here has another cause.":
    "À pH {pH} le sulfate retient {share} du fer. Une demi-teinte a ici une autre cause.",
  "Rust may form within hours: show it fresh, or add a little acid.":
    "La rouille peut se former en quelques heures : montrer frais, ou ajouter un peu d'acide.",
  "More salt than the activity model was fitted to: the shade is less sure.":
    "Plus de sel que n'en couvre le modèle d'activité : la teinte est moins sûre.",
  "“{one}” and “{other}” end with the same things in them, so in the same colour.":
    "« {one} » et « {other} » finissent avec le même contenu, donc la même couleur.",
  "Equilibrium has no memory; if they differ on the bench, time or a solid is the cause.":
    "L'équilibre n'a pas de mémoire ; s'ils diffèrent, le temps ou un solide en est cause.",
  "Tap water instead of deionised": "Eau du robinet au lieu de déminéralisée",
  "Use deionised water.": "Utiliser de l'eau déminéralisée.",
  "Acid left out": "Acide oublié",
  "Add the acid first.": "Ajouter d'abord l'acide.",
  "Acid half as strong": "Acide deux fois plus faible",
  "Make the acid afresh.": "Refaire l'acide.",
  "Acid twice as strong": "Acide deux fois plus fort",
  "Dilute the acid.": "Diluer l'acide.",
  "pH half a unit too low": "pH trop bas d'une demi-unité",
  "pH half a unit too high": "pH trop haut d'une demi-unité",
  "Check the meter or take a new strip.": "Vérifier l'appareil ou prendre une bandelette neuve.",
  "Metal stock old, half of it rust or lime": "Solution de métal vieille, à moitié rouille ou calcaire",
  "Make the stock afresh, in acid.": "Refaire la solution, en acide.",
  "Another hydrate: 1.7 times the metal": "Autre hydrate : 1,7 fois le métal",
  "Read the hydrate on the bottle.": "Lire l'hydrate sur le flacon.",
  "Indicator half as strong": "Indicateur deux fois plus faible",
  "Make the indicator afresh.": "Refaire l'indicateur.",
  "Indicator twice as strong": "Indicateur deux fois plus fort",
  "Check the weight.": "Vérifier la pesée.",
  "Conditioner left out": "Correcteur oublié",
  "Add it, in the order of the script.": "L'ajouter, dans l'ordre du script.",
  "A narrower glass, two thirds as wide": "Un verre plus étroit, aux deux tiers",
  "A wider glass, half as wide again": "Un verre plus large, une fois et demie",
  "Use the glass of the script.": "Prendre le verre du script.",
  "look the same": "semblent pareils",
  "plainly different": "nettement différents",
  "about the same; the constants leave it open": "à peu près pareils ; les constantes le laissent ouvert",
  "different, but not for every published constant": "différents, mais pas pour toute constante publiée",
  "told apart only side by side": "distincts seulement côte à côte",
  "a ready dilution of {strength}, not the concentrate": "une dilution prête de {strength}, pas le concentré",
  "tap water spoils the colours": "l'eau du robinet gâte les couleurs",
  "flasks, clear and alike": "flacons, clairs et pareils",
  "about {width} cm wide at the liquid": "environ {width} cm de large au liquide",
  "pipettes or syringes, 1 mL and 10 mL": "pipettes ou seringues, 1 mL et 10 mL",
  "one for each stock": "une par solution",
  "pH meter or narrow strips, with acid and alkali of 1 mol/L":
    "pH-mètre ou bandelettes fines, avec acide et base à 1 mol/L",
  "goggles, gloves, tray, labels, white card behind the flasks, eye-wash bottle":
    "lunettes, gants, bac, étiquettes, carton blanc derrière les flacons, flacon lave-œil",
  "sodium hydrogen carbonate and a labelled can for the rests":
    "hydrogénocarbonate de sodium et un bidon étiqueté pour les restes",
  "deionised water": "eau déminéralisée",
  "hydrochloric acid": "acide chlorhydrique",
  "sodium hydroxide": "hydroxyde de sodium",
  "sodium hydrogen carbonate": "hydrogénocarbonate de sodium",
  ammonia: "ammoniac",
  "iron(III) chloride hexahydrate": "chlorure de fer(III) hexahydraté",
  "iron(III) chloride, anhydrous": "chlorure de fer(III) anhydre",
  "ammonium iron(III) sulfate dodecahydrate": "sulfate d'ammonium et de fer(III) dodécahydraté",
  "calcium chloride dihydrate": "chlorure de calcium dihydraté",
  "calcium chloride, anhydrous": "chlorure de calcium anhydre",
  "magnesium sulfate heptahydrate": "sulfate de magnésium heptahydraté",
  "magnesium chloride hexahydrate": "chlorure de magnésium hexahydraté",
  "sulfosalicylic acid dihydrate": "acide sulfosalicylique dihydraté",
  "5-sulfosalicylic acid": "acide 5-sulfosalicylique",
  "salicylic acid": "acide salicylique",
  "sodium salicylate": "salicylate de sodium",
  tiron: "tiron",
  "tiron monohydrate": "tiron monohydraté",
  thiocyanate: "thiocyanate",
  "potassium thiocyanate": "thiocyanate de potassium",
  "ammonium thiocyanate": "thiocyanate d'ammonium",
  "Eriochrome black T": "noir ériochrome T",
  rust: "rouille",
  "a white or light grey patch": "une plage blanche ou gris clair",
  "a colour such as #7b0246": "une couleur telle que #7b0246",
  "No reasonable amount of strong acid or alkali brings this pH.":
    "Aucune quantité raisonnable d'acide ou de base forte ne donne ce pH.",
  "No equilibrium was found.": "Aucun équilibre n'a été trouvé.",
};
