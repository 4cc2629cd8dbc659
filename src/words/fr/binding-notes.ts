import type { Phrases } from "../phrases.ts";

/** How actives bind metals, sentence by sentence, or why that is not known. */
export const BINDING_NOTES: Phrases = {
  "An ester does not ionise in the tank: there is nothing for metals to bind.":
    "Un ester ne s'ionise pas en cuve : les métaux n'ont rien à lier.",
  "A neutral molecule: nothing for metals to bind.": "Molécule neutre : les métaux n'ont rien à lier.",
  "Neutral at spray pH: nothing for metals to bind.":
    "Neutre au pH de la bouillie : les métaux n'ont rien à lier.",
  "A permanent cation: it binds no metal ions.": "Cation permanent : il ne lie aucun ion métallique.",
  "What the clay of muddy water takes is told apart.":
    "Ce que prend l'argile d'une eau trouble est dit à part.",
  "A solid that hangs in the water; its weak amine base binds no hardness.":
    "Un solide en suspension ; sa base amine faible ne lie pas la dureté.",
  "The formula is that of {name}.": "La formule est celle de {name}.",
  "A solid that hangs in the water.": "Un solide en suspension.",
  "How much copper acid or chelants set free is not computed here: see the published rules.":
    "Le cuivre libéré par l'acide ou les chélatants n'est pas calculé ici : voir les règles publiées.",
  "A polymer that holds its own manganese and zinc.":
    "Un polymère qui retient son propre manganèse et son zinc.",
  "What acid or chelants take out of it is not computed.":
    "Ce qu'en tirent l'acide ou les chélatants n'est pas calculé.",
  "A very weak acid (pKa 7.3), mostly a solid that hangs in the water.":
    "Un acide très faible (pKa 7,3), surtout un solide en suspension.",
  "A copper complex is known, constants are not.": "Un complexe de cuivre est connu, ses constantes non.",
  "The acid constants of glufosinate are from memory.":
    "Les constantes d'acidité du glufosinate sont de mémoire.",
  "The metal constants hold for the form with a free amine, which is scarce below pH 8.":
    "Les constantes de métaux valent pour la forme à amine libre, rare sous pH 8.",
  "The calcium constant was measured on 2,4-D; magnesium is taken equal to it, as in phenoxyacetate.":
    "La constante du calcium a été mesurée sur le 2,4-D ; le magnésium est pris égal, comme pour le phénoxyacétate.",
  "No solubility product of the calcium salt was found, so its precipitation is not computed.":
    "Aucun produit de solubilité du sel de calcium trouvé : sa précipitation n'est pas calculée.",
  "No metal constants were found; calcium and magnesium are borrowed from phenoxyacetate, its parent.":
    "Aucune constante de métaux trouvée ; calcium et magnésium sont empruntés au phénoxyacétate, la molécule mère.",
  "The size is small either way.": "L'effet est faible de toute façon.",
  "No published metal constants were found for {active}.":
    "Aucune constante de métaux publiée n'a été trouvée pour {active}.",
  "No metal constants were found for {active}.": "Aucune constante de métaux n'a été trouvée pour {active}.",
  "No published metal constants were found.": "Aucune constante de métaux publiée trouvée.",
  "No metal constants were found.": "Aucune constante de métaux trouvée.",
  "As a simple carboxylate it should bind calcium and magnesium next to nothing in a dilute spray.":
    "Simple carboxylate, il ne devrait presque pas lier le calcium ni le magnésium dans une bouillie diluée.",
  "It is a singly charged anion and should bind calcium and magnesium next to nothing in a dilute spray.":
    "Anion à une charge, il ne devrait presque pas lier le calcium ni le magnésium dans une bouillie diluée.",
  "Field antagonism is reported all the same: see the published rules.":
    "Un antagonisme au champ est rapporté malgré tout : voir les règles publiées.",
  "Hardness is not its trouble; sodium and bicarbonate are, by a mechanism no equilibrium shows: see the published rules.":
    "Ce n'est pas la dureté qui lui nuit, mais sodium et bicarbonate. Aucun équilibre ne le montre : voir les règles publiées.",
  "It dissolves as a singly charged anion at milligrams per litre.":
    "Il se dissout en anion à une charge, à raison de milligrammes par litre.",
  "No published metal constants were found, and no hardness effect is reported.":
    "Aucune constante de métaux publiée trouvée, et aucun effet de la dureté rapporté.",
  "Hardness up to 620 mg/L as CaCO3 made no difference in a trial (Roskamp and others 2013).":
    "Une dureté jusqu'à 620 mg/L en CaCO3 n'a rien changé dans un essai (Roskamp et autres 2013).",
  "Picolinate, built alike, binds metals well; chlorine on the ring weakens that.":
    "Le picolinate, de structure voisine, lie bien les métaux ; le chlore du cycle affaiblit cela.",
  "How much is left is not known.": "Ce qu'il en reste n'est pas connu.",
  "Phenoxyacetate, built alike, binds calcium and magnesium next to nothing in a dilute spray.":
    "Le phénoxyacétate, de structure voisine, ne lie presque pas le calcium ni le magnésium dans une bouillie diluée.",
  "No constants with calcium, magnesium or iron were found, so the binding is not known.":
    "Aucune constante avec calcium, magnésium ou fer trouvée : la liaison n'est pas connue.",
  "A pot trial on imazethapyr shows antagonism by hard carbonate water.":
    "Un essai en pots sur l'imazéthapyr montre un antagonisme par l'eau dure carbonatée.",
  "Triketones chelate copper and iron, and trials show loss in hard water.":
    "Les tricétones chélatent le cuivre et le fer, et des essais montrent une perte en eau dure.",
  "No metal constants of {active} were found.": "Aucune constante de métaux trouvée pour {active}.",
  "It brings its own aluminium and makes the water acid.":
    "Il apporte son propre aluminium et acidifie l'eau.",
  "Alkalinity is what harms it: as the pH rises it gives off ethylene.":
    "C'est l'alcalinité qui lui nuit : quand le pH monte, il dégage de l'éthylène.",
};
