import type { Phrases } from "../phrases.ts";

/** Cautions that hold at every filling or with a kind of conditioner. */
export const CAUTIONS: Phrases = {
  "The label in hand and local law win over anything here.":
    "L'étiquette en main et la loi locale passent avant tout ce qui est dit ici.",
  "A mix may be forbidden or need permission where you are.":
    "Un mélange peut être interdit ou soumis à autorisation chez vous.",
  "Handling concentrates is the riskiest minute: label gear, and never less than goggles, chemical-proof gloves, apron and boots.":
    "La minute la plus risquée est celle du concentré : au moins lunettes étanches, gants chimiques, tablier et bottes, selon l'étiquette.",
  "Water in first.": "L'eau d'abord.",
  "Keep the hose end at least 15 cm above the rim, 30 m from the well.":
    "Tenir le bout du tuyau à 15 cm au moins au-dessus du bord, à 30 m du puits.",
  "Never leave a filling tank.": "Ne jamais quitter une cuve en remplissage.",
  "Fill on level, lit, aired ground away from drains and animals, spill kit and first aid at hand.":
    "Remplir sur un sol plat, éclairé, aéré, loin des égouts et des bêtes, absorbant et trousse de secours à portée.",
  "Acid into water, slowly, stirring; never water into acid.":
    "L'acide dans l'eau, lentement, en remuant ; jamais l'eau dans l'acide.",
  "Running water and an eye bottle within reach.": "Eau courante et flacon lave-œil à portée.",
  "Never acid with bleach, sulfide, lime sulfur, cyanide or thiosulfate: poison gas.":
    "Jamais d'acide avec javel, sulfure, bouillie sulfocalcique, cyanure ou thiosulfate : gaz toxique.",
  "Rinse fully between cleaning and filling.": "Rincer à fond entre nettoyage et remplissage.",
  "Acid eats zinc, steel and aluminium and gives hydrogen: plastic gear for concentrates, rinse after.":
    "L'acide attaque zinc, acier et aluminium et dégage de l'hydrogène : matériel plastique pour le concentré, rincer après.",
  "Never ammonium with bleach (chloramine gas) or with lime, caustic or wood ash (ammonia gas).":
    "Jamais d'ammonium avec javel (gaz chloramine), ni avec chaux, soude ou cendre (gaz ammoniac).",
  "Ammonium salts attack brass, copper and zinc and rust steel: rinse the machine the same day.":
    "Les sels d'ammonium attaquent laiton, cuivre et zinc et rouillent l'acier : rincer la machine le jour même.",
  "Dry nitrates feed fire: away from fuel, oil, sulfur, sawdust and acids.":
    "Les nitrates secs nourrissent le feu : loin de carburant, huile, soufre, sciure et acides.",
  "Alkaline: goggles and gloves.": "Alcalin : lunettes étanches et gants.",
  "Never into a tank that already holds ammonium: ammonia comes off.":
    "Jamais dans une cuve qui contient déjà de l'ammonium : de l'ammoniac se dégage.",
  "Sequestrants loosen rust and attack zinc, copper and aluminium slowly: rinse the machine the same day.":
    "Les séquestrants décollent la rouille et attaquent lentement zinc, cuivre et aluminium : rincer le jour même.",
  "Rinse three times with little water and spray it out on the treated field, never into a drain.":
    "Rincer trois fois à peu d'eau et pulvériser sur la parcelle traitée, jamais dans un égout.",
  "Splash in the eye: rinse at once for at least 15 minutes and get help.":
    "Éclaboussure dans l'œil : rincer aussitôt 15 minutes au moins et appeler à l'aide.",
  "{active} is entered by hand: the restrictions of its label are not known here.":
    "{active} est saisi à la main : les restrictions de son étiquette ne sont pas connues ici.",
};
