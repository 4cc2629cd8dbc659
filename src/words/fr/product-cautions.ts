import type { Phrases } from "../phrases.ts";

/** Cautions of single actives, conditioners and leaf feeds. */
export const PRODUCT_CAUTIONS: Phrases = {
  "Not in galvanised or unlined steel: hydrogen forms and can ignite.":
    "Pas dans l'acier galvanisé ou nu : il se forme de l'hydrogène inflammable.",
  "Manganese feeds cut control by 10 to 30 % unless the manganese is the EDTA chelate.":
    "Les apports de manganèse réduisent l'efficacité de 10 à 30 %, sauf chélate EDTA.",
  "Conditioner goes in and dissolves before glyphosate.":
    "Le correcteur d'eau est versé et dissous avant le glyphosate.",
  "Ammonium sulfate is the usual additive and raises activity even in soft water.":
    "Le sulfate d'ammonium est l'additif usuel et renforce l'effet même en eau douce.",
  "Calcium and magnesium salts can fall out of hard water; products carry a sequestrant against it.":
    "Les sels de calcium et magnésium peuvent précipiter en eau dure ; les produits contiennent un séquestrant.",
  "Calcium and magnesium salts may fall out of hard water.":
    "Des sels de calcium et de magnésium peuvent précipiter en eau dure.",
  "Not with water cleared with alum when the product is an amine.":
    "Pas avec une eau clarifiée à l'alun si le produit est une amine.",
  "The emulsion is the hard-water question here: check it in the jar.":
    "En eau dure, c'est l'émulsion qui compte ici : vérifier au bocal.",
  "Some labels ask for an agent that keeps the spray above pH 5.":
    "Certaines étiquettes demandent un agent qui garde la bouillie au-dessus de pH 5.",
  "Usual partners are ammonium sulfate or UAN and a crop oil.":
    "Partenaires usuels : sulfate d'ammonium ou solution azotée, et une huile.",
  "Bentazon antagonises it.": "La bentazone l'antagonise.",
  "Sodium salts antagonise it; ammonium sulfate reduces that.":
    "Les sels de sodium l'antagonisent ; le sulfate d'ammonium limite cela.",
  "Do not acidify: it dissolves poorly below about pH 5 and breaks down on standing.":
    "Ne pas acidifier : sous pH 5 environ il se dissout mal et se dégrade au repos.",
  "Do not use acidifying conditioners.": "Ne pas employer de correcteur acidifiant.",
  "Half-lives are those of regulatory studies as remembered.":
    "Demi-vies d'études réglementaires, citées de mémoire.",
  "An extension table prints 8 days at pH 6 and 19 h at pH 8.":
    "Un tableau de conseil donne 8 jours à pH 6 et 19 h à pH 8.",
  "Sources differ: 3 hours to 3 days at pH 9, 9 to 30 days at pH 7.":
    "Les sources divergent : 3 heures à 3 jours à pH 9, 9 à 30 jours à pH 7.",
  "Not with copper or lime.": "Pas avec cuivre ni chaux.",
  "Suspended particles last longer: at pH 9.5 a dilute spray lost 70 % in 48 h, one twenty times stronger lost 10 %.":
    "En suspension il dure plus : à pH 9,5, perte en 48 h de 70 % dilué, 10 % vingt fois plus fort.",
  "Half-lives are for dissolved captan.": "Les demi-vies valent pour le captane dissous.",
  "A formulated spray lost 27 % in 48 h at pH 9.5.": "Une bouillie formulée a perdu 27 % en 48 h à pH 9,5.",
  "An extension table prints 32 h at pH 5, 8 h at pH 7, 10 min at pH 8 and 2 min at pH 9.":
    "Un tableau donne pour pH 5, 7, 8 et 9 : 32 h, 8 h, 10 min, 2 min.",
  "Not with oils, lime or strongly alkaline copper.": "Pas avec huiles, chaux ou cuivre fortement alcalin.",
  "Never with acidifiers or other acid partners: copper set free burns leaves.":
    "Jamais avec acidifiants ou partenaires acides : le cuivre libéré brûle les feuilles.",
  "Surfactants raise the injury.": "Les tensioactifs aggravent les dégâts.",
  "Ammonium sulfate dosed by the cations of the water restored control in trials.":
    "En essai, le sulfate d'ammonium dosé selon les cations de l'eau a rétabli l'efficacité.",
  "Of the partners tried, ammonium sulfate gained most, ahead of citric acid and ammonium nitrate.":
    "Des partenaires essayés, le sulfate d'ammonium a le plus apporté, devant acide citrique et nitrate d'ammonium.",
  "Half-lives at pH 5 disagree: 15 days is used here, 247 days is also published.":
    "Les demi-vies à pH 5 divergent : 15 jours retenus ici, 247 jours aussi publiés.",
  "Unlike most sulfonylureas it breaks down in alkaline water too: keep the tank at pH 6 to 7.":
    "Contrairement à la plupart des sulfonylurées, il se dégrade aussi en eau alcaline : rester à pH 6 à 7.",
  "Clay and anionic surfactants take it out: clean water only, non-ionic wetters only.":
    "L'argile et les mouillants anioniques le neutralisent : eau claire et mouillants non ioniques seulement.",
  "Very poisonous if swallowed: never decant it into another container.":
    "Très toxique par ingestion : ne jamais transvaser.",
  "Alkali breaks it down: no alkaline partners.": "L'alcali le détruit : pas de partenaires alcalins.",
  "Slightly acid water, mixed just before use: hydrolysis is its main loss.":
    "Eau légèrement acide, mélange juste avant usage : l'hydrolyse est la perte principale.",
  "Not with alkaline materials or sulfur products.": "Pas avec des produits alcalins ou soufrés.",
  "The often printed 48 minutes at pH 9 and 12 hours at pH 6 are not borne out by regulatory studies.":
    "Les 48 minutes à pH 9 et 12 heures à pH 6 souvent imprimées ne sont pas confirmées.",
  "Strong chelants break the polymer up: not with EDTA and the like.":
    "Les chélatants forts brisent le polymère : pas d'EDTA ni semblables.",
  "Half-lives are of dissolved mancozeb: use the mixture within the day.":
    "Demi-vies du mancozèbe dissous : employer le mélange dans la journée.",
  "Not with oils: injury.": "Pas avec des huiles : dégâts.",
  "Use the mixture on the day it is made.": "Employer le mélange le jour même.",
  "A formulated product breaks down more slowly than the dissolved active.":
    "Un produit formulé se dégrade plus lentement que la substance dissoute.",
  "Not with copper: a complex forms.": "Pas avec le cuivre : il se forme un complexe.",
  "What it breaks down to, carbendazim, is a fungicide itself.":
    "Son produit de dégradation, le carbendazime, est lui-même un fongicide.",
  "Not with copper: its acid sets copper ions free.":
    "Pas avec le cuivre : son acide libère des ions cuivre.",
  "Not with foliar nitrogen or metal feeds on tender crops.":
    "Pas avec azote foliaire ni oligo-éléments sur cultures sensibles.",
  "Spray within hours; no alkaline partners, no calcium or iron feeds.":
    "Pulvériser dans les heures ; pas d'alcalins, ni calcium, ni fer.",
  "The concentrate is a strong acid: eyes and skin.": "Le concentré est un acide fort : yeux et peau.",
  "Above about 10 % N it scorched wheat leaves within a day.":
    "Au-delà d'environ 10 % N, brûlures du blé en un jour.",
  "Stings eyes and cuts; dust makes you cough.": "Pique les yeux et les plaies ; la poussière fait tousser.",
  "Do not breathe the dust.": "Ne pas respirer la poussière.",
  "Alkaline: serious eye damage.": "Alcalin : lésions oculaires graves.",
  "Goggles.": "Lunettes étanches.",
  "Strong acid: eye damage.": "Acide fort : lésions des yeux.",
  "Gloves and goggles.": "Gants et lunettes étanches.",
  "Strong acid: goggles and gloves.": "Acide fort : lunettes étanches et gants.",
  "Alkaline: glasses.": "Alcalin : lunettes.",
  "Burns skin and eyes: goggles or face shield, acid-proof gloves, water at hand.":
    "Brûle peau et yeux : lunettes ou visière, gants anti-acide, eau à portée.",
  "Extremely caustic to skin and eyes.": "Extrêmement caustique pour peau et yeux.",
  "Never with bleach, sulfide, thiosulfate or alkali.": "Jamais avec javel, sulfure, thiosulfate ou alcali.",
  "Alkaline liquid: glasses and gloves.": "Liquide alcalin : lunettes et gants.",
  "Suspected of causing cancer: no dust.": "Suspecté de causer le cancer : pas de poussière.",
  "May harm the unborn child: not handled by people who are pregnant.":
    "Peut nuire à l'enfant à naître : pas de manipulation par une femme enceinte.",
  "The concentrate burns and its vapour is flammable.": "Le concentré brûle et sa vapeur est inflammable.",
  "Dust irritates eyes and throat.": "La poussière irrite yeux et gorge.",
  "Extremely caustic; water poured into it boils and spits.":
    "Extrêmement caustique ; l'eau qu'on y verse bout et gicle.",
  "Above 15 % its sale to private buyers is restricted in the European Union.":
    "Au-delà de 15 %, vente aux particuliers restreinte dans l'Union européenne.",
  "The concentrate damages eyes.": "Le concentré abîme les yeux.",
  "Burns badly; choking vapour.": "Brûle fortement ; vapeur suffocante.",
  "Store it vented: it slowly gives carbon monoxide.":
    "Stocker avec évent : il dégage lentement du monoxyde de carbone.",
  "Crystals and strong solutions damage eyes: glasses.":
    "Cristaux et solutions fortes abîment les yeux : lunettes.",
  "With acids, glyphosate included, carbon dioxide builds pressure and foams over: vent and wait.":
    "Avec les acides, glyphosate compris, le gaz carbonique monte en pression et mousse : éventer et attendre.",
  "Do not breathe the dust; it damages eyes.": "Ne pas respirer la poussière ; elle abîme les yeux.",
  "Toxic to water life.": "Toxique pour la vie aquatique.",
  "Damages eyes.": "Abîme les yeux.",
  "Keep dry.": "Garder au sec.",
  "Very toxic to water life: no wash-down to drains or ditches.":
    "Très toxique pour la vie aquatique : rien aux égouts ni aux fossés.",
  "Poisonous if swallowed; damages eyes.": "Toxique si avalé ; abîme les yeux.",
  "It eats steel, zinc and aluminium: plastic tanks only.":
    "Attaque acier, zinc et aluminium : cuves plastiques seulement.",
  "Harmful if swallowed; stains everything.": "Nocif si avalé ; tache tout.",
  "Stains.": "Tache.",
  "Feeds fire; damages eyes.": "Nourrit le feu ; abîme les yeux.",
  "It heats when dissolved; stings eyes.": "Chauffe en se dissolvant ; pique les yeux.",
  "May harm fertility and the unborn child: no dust, gloves.":
    "Peut nuire à la fertilité et à l'enfant à naître : pas de poussière, gants.",
  "Feeds fire: away from fuel, oil and sulfur.": "Nourrit le feu : loin de carburant, huile et soufre.",
};
