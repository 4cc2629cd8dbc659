import type { Phrases } from "../phrases.ts";

/** The usual causes of a failure, what to ask, and what the signs say. */
export const COMPLAINT_CAUSES: Phrases = {
  "wrong weed, or too big": "mauvaise adventice, ou trop grande",
  "Was it the weed on the label, at the stage on the label, on the day?":
    "Était-ce, ce jour-là, l'adventice de l'étiquette, au stade de l'étiquette ?",
  "Large plants living where small ones died is what a late spray leaves.":
    "De grandes plantes vivantes où les petites sont mortes : l'image d'un traitement tardif.",
  "product, rate or adjuvant": "produit, dose ou adjuvant",
  "Is the product in the shed the one in the record, with its rate and its adjuvant?":
    "Le produit au local est-il celui du dossier, avec sa dose et son adjuvant ?",
  "tank arithmetic or mixing order": "calcul de la cuve ou ordre de mélange",
  "Do product used, water used and area sprayed agree? Did all of it go in, in order?":
    "Produit, eau et surface concordent-ils ? Tout est-il allé en cuve, dans l'ordre ?",
  "A fault in one load only speaks for what was put in, or left out, there.":
    "Un défaut dans une seule cuve parle pour ce qui y fut mis, ou oublié.",
  "water volume, calibration or nozzles": "volume d'eau, réglage ou buses",
  "Was the sprayer calibrated, and are nozzles, screens and boom height right?":
    "Le pulvérisateur était-il étalonné, et buses, filtres et hauteur de rampe sont-ils bons ?",
  "Strips along the run are what a nozzle, a screen or the boom leaves.":
    "Des bandes dans le sens d'avance : une buse, un filtre ou la rampe.",
  "An even picture speaks against single nozzles.": "Une image uniforme parle contre des buses isolées.",
  "weather, drought or cold": "météo, sécheresse ou froid",
  "Were the weeds growing? Drought, cold, heat and rain soon after take more than most waters do.":
    "Les adventices poussaient-elles ? Sécheresse, froid, chaleur et pluie proche prennent plus que la plupart des eaux.",
  "Patches that follow soil or shade speak for stress.":
    "Des taches qui suivent le sol ou l'ombre parlent pour le stress.",
  "dust on the leaves": "poussière sur les feuilles",
  "Were leaves dusty, or was dust raised by the wheels? Clay holds some actives at once.":
    "Feuilles poussiéreuses, ou poussière levée par les roues ? L'argile retient aussitôt certaines substances.",
  "Wheel tracks and track sides left alive are what dust leaves.":
    "Des passages de roues restés vivants : l'effet de la poussière.",
  resistance: "résistance",
  "Do survivors stand beside dead plants of the same kind? Has this group failed here before?":
    "Des survivantes à côté de mortes de la même espèce ? Ce groupe a-t-il déjà échoué ici ?",
  "Dead and healthy plants of one kind side by side are what resistance leaves.":
    "Mortes et saines d'une même espèce côte à côte : l'effet de la résistance.",
  "Plants all weakened alike speak against resistance.":
    "Des plantes toutes affaiblies pareillement parlent contre la résistance.",
  "a bad or old batch": "un lot mauvais ou vieux",
  "Keep the container and its lot number. Has the lot failed elsewhere, frozen or grown old?":
    "Garder le bidon et son numéro de lot. Le lot a-t-il échoué ailleurs, gelé ou vieilli ?",
  "the water": "l'eau",
  "Test the water that went in, and spray a strip in soft or conditioned water beside one in this.":
    "Analyser l'eau utilisée, et traiter une bande à l'eau douce ou corrigée à côté d'une à celle-ci.",
  "A fault of the water is even over all that was sprayed with it.":
    "Un défaut de l'eau est uniforme sur tout ce qu'elle a servi à traiter.",
  "The water was the same everywhere: strips, patches and edges speak against it.":
    "L'eau était partout la même : bandes, taches et bords parlent contre elle.",
  "Partial kill with regrowth, all plants alike, is what a dose cut by the water leaves.":
    "Destruction partielle et repousse, toutes pareilles : l'effet d'une dose réduite par l'eau.",
  "Dead beside healthy plants of one kind speak against the water.":
    "Des mortes à côté de saines d'une même espèce parlent contre l'eau.",
  "Only loads from one source failing speaks for its water.":
    "Si seules les cuves d'une source échouent, cela parle pour son eau.",
  "All loads of the same water failing alike is as a fault of the water would be.":
    "Toutes les cuves de la même eau échouent pareillement : comme le ferait un défaut de l'eau.",
  "This is no proof. It says what this water could have taken from the dose, not what happened in the field. Exclude the other causes first.":
    "Ce n'est pas une preuve. Cela dit ce que cette eau a pu prendre à la dose, non ce qui s'est passé au champ. Écarter d'abord les autres causes.",
};
