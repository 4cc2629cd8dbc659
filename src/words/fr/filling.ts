import type { Phrases } from "../phrases.ts";

/** Ways out by name, and the steps of filling. */
export const FILLING: Phrases = {
  "nothing added": "rien d'ajouté",
  "less water: {volume} L/ha": "moins d'eau : {volume} L/ha",
  "let the iron settle": "laisser déposer le fer",
  "other source: {source}": "autre eau : {source}",
  "blend: {part} % {source}, {rest} % {other}": "mélange : {part} % {source}, {rest} % {other}",
  "more {active}: {rate} {unit} in place of {planned} {sameUnit}":
    "plus de {active} : {rate} {unit} au lieu de {planned} {sameUnit}",
  "other form: {active} as {form}": "autre forme : {active} en {form}",
  "Fill to half with clean water and start the agitator. Stop here.":
    "Remplir la cuve à moitié d'eau propre et lancer l'agitation. S'arrêter ici.",
  "Add {product} in its bags and wait until the film is gone.":
    "Ajouter {product} dans ses sachets et attendre que le film ait disparu.",
  "Add {product} slowly and let it dissolve or mix in fully.":
    "Ajouter {product} lentement et laisser dissoudre ou mélanger complètement.",
  "Add {product}.": "Ajouter {product}.",
  "Add {product} slowly and wait until it is dissolved.":
    "Ajouter {product} lentement et attendre la dissolution complète.",
  "Stir {product} into a slurry with water, add it and let it disperse.":
    "Délayer {product} dans l'eau, verser et laisser disperser.",
  "Add {product}, shaken, and let it spread.": "Ajouter {product} bien agité et laisser se répartir.",
  "Add {product} slowly.": "Ajouter {product} lentement.",
  "Add {product} slowly, agitator low.": "Ajouter {product} lentement, agitation réduite.",
  "Add {product} where its label says.": "Ajouter {product} au moment que dit son étiquette.",
  "Stop: {product} is not made for mixing with water.":
    "Stop : {product} n'est pas fait pour être mélangé à l'eau.",
  "Wait until every bag is gone, and look.": "Attendre que chaque sachet ait disparu, et regarder.",
  "Wait until the conditioner is dissolved and mixed in. Measure the pH.":
    "Attendre que le correcteur d'eau soit dissous et mélangé. Mesurer le pH.",
  "Fill up with water and keep the agitator on until the tank is empty.":
    "Compléter avec de l'eau et garder l'agitation jusqu'à la cuve vide.",
  "Spray or stir the water into a holding tank with air.":
    "Pulvériser ou brasser l'eau avec de l'air dans une réserve.",
  "Let it stand overnight or longer.": "Laisser reposer une nuit ou plus.",
  "Draw the clear water from above the sludge and test its iron before filling.":
    "Prélever l'eau claire au-dessus du dépôt et doser son fer avant de remplir.",
  "Of every 100 L of water take {litres} L from {source} and {rest} L from {other}.":
    "Pour 100 L d'eau, prendre {litres} L de {source} et {rest} L de {other}.",
  "Start with {source}.": "Commencer par {source}.",
  "{active} as {form}": "{active} en {form}",
  "{product}, as acid equivalent,": "{product}, en équivalent acide,",
  "Fill with water from {source} alone, in place of {other}.":
    "Remplir avec l'eau de {source} seule, au lieu de {other}.",
};
