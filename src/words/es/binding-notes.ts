import type { Phrases } from "../phrases.ts";

/** How actives bind metals, sentence by sentence, or why that is not known. */
export const BINDING_NOTES: Phrases = {
  "An ester does not ionise in the tank: there is nothing for metals to bind.":
    "Un éster no se ioniza en el tanque: los metales no tienen nada que ligar.",
  "A neutral molecule: nothing for metals to bind.": "Molécula neutra: los metales no tienen nada que ligar.",
  "Neutral at spray pH: nothing for metals to bind.":
    "Neutro al pH del caldo: los metales no tienen nada que ligar.",
  "A permanent cation: it binds no metal ions.": "Catión permanente: no liga iones metálicos.",
  "What the clay of muddy water takes is told apart.":
    "Lo que toma la arcilla del agua turbia se dice aparte.",
  "A solid that hangs in the water; its weak amine base binds no hardness.":
    "Un sólido en suspensión; su base amina débil no liga la dureza.",
  "The formula is that of {name}.": "La fórmula es la de {name}.",
  "A solid that hangs in the water.": "Un sólido en suspensión.",
  "How much copper acid or chelants set free is not computed here: see the published rules.":
    "Cuánto cobre liberan el ácido o los quelantes no se calcula aquí: ver las reglas publicadas.",
  "A polymer that holds its own manganese and zinc.": "Un polímero que retiene su propio manganeso y zinc.",
  "What acid or chelants take out of it is not computed.":
    "Lo que le quitan el ácido o los quelantes no se calcula.",
  "A very weak acid (pKa 7.3), mostly a solid that hangs in the water.":
    "Un ácido muy débil (pKa 7,3), sobre todo un sólido en suspensión.",
  "A copper complex is known, constants are not.": "Se conoce un complejo de cobre, no sus constantes.",
  "The acid constants of glufosinate are from memory.":
    "Las constantes de acidez del glufosinato son de memoria.",
  "The metal constants hold for the form with a free amine, which is scarce below pH 8.":
    "Las constantes de metales valen para la forma con amina libre, escasa por debajo de pH 8.",
  "The calcium constant was measured on 2,4-D; magnesium is taken equal to it, as in phenoxyacetate.":
    "La constante del calcio se midió en 2,4-D; el magnesio se toma igual, como en el fenoxiacetato.",
  "No solubility product of the calcium salt was found, so its precipitation is not computed.":
    "No se halló producto de solubilidad de la sal de calcio: su precipitación no se calcula.",
  "No metal constants were found; calcium and magnesium are borrowed from phenoxyacetate, its parent.":
    "No se hallaron constantes de metales; calcio y magnesio se toman del fenoxiacetato, la molécula de base.",
  "The size is small either way.": "El efecto es pequeño en todo caso.",
  "No published metal constants were found for {active}.":
    "No se hallaron constantes de metales publicadas para {active}.",
  "No metal constants were found for {active}.": "No se hallaron constantes de metales para {active}.",
  "No published metal constants were found.": "No se hallaron constantes de metales publicadas.",
  "No metal constants were found.": "No se hallaron constantes de metales.",
  "As a simple carboxylate it should bind calcium and magnesium next to nothing in a dilute spray.":
    "Como carboxilato simple, apenas debería ligar calcio y magnesio en un caldo diluido.",
  "It is a singly charged anion and should bind calcium and magnesium next to nothing in a dilute spray.":
    "Es un anión de una carga y apenas debería ligar calcio y magnesio en un caldo diluido.",
  "Field antagonism is reported all the same: see the published rules.":
    "Aun así se informa de antagonismo en campo: ver las reglas publicadas.",
  "Hardness is not its trouble; sodium and bicarbonate are, by a mechanism no equilibrium shows: see the published rules.":
    "No le daña la dureza, sino el sodio y el bicarbonato, lo que ningún equilibrio muestra: ver las reglas publicadas.",
  "It dissolves as a singly charged anion at milligrams per litre.":
    "Se disuelve como anión de una carga, a miligramos por litro.",
  "No published metal constants were found, and no hardness effect is reported.":
    "No se hallaron constantes de metales publicadas, ni se informa de efecto de la dureza.",
  "Hardness up to 620 mg/L as CaCO3 made no difference in a trial (Roskamp and others 2013).":
    "Una dureza de hasta 620 mg/L como CaCO3 no cambió nada en un ensayo (Roskamp y otros 2013).",
  "Picolinate, built alike, binds metals well; chlorine on the ring weakens that.":
    "El picolinato, de estructura parecida, liga bien los metales; el cloro del anillo lo debilita.",
  "How much is left is not known.": "Cuánto queda no se sabe.",
  "Phenoxyacetate, built alike, binds calcium and magnesium next to nothing in a dilute spray.":
    "El fenoxiacetato, de estructura parecida, apenas liga calcio y magnesio en un caldo diluido.",
  "No constants with calcium, magnesium or iron were found, so the binding is not known.":
    "No se hallaron constantes con calcio, magnesio o hierro: la unión no se conoce.",
  "A pot trial on imazethapyr shows antagonism by hard carbonate water.":
    "Un ensayo en macetas con imazetapir muestra antagonismo por agua dura carbonatada.",
  "Triketones chelate copper and iron, and trials show loss in hard water.":
    "Las tricetonas quelan cobre y hierro, y los ensayos muestran pérdida en agua dura.",
  "No metal constants of {active} were found.": "No se hallaron constantes de metales de {active}.",
  "It brings its own aluminium and makes the water acid.": "Trae su propio aluminio y acidifica el agua.",
  "Alkalinity is what harms it: as the pH rises it gives off ethylene.":
    "Lo que le daña es la alcalinidad: al subir el pH desprende etileno.",
};
