import type { Phrases } from "../phrases.ts";

/** The usual causes of a failure, what to ask, and what the signs say. */
export const COMPLAINT_CAUSES: Phrases = {
  "wrong weed, or too big": "mala hierba equivocada, o muy grande",
  "Was it the weed on the label, at the stage on the label, on the day?":
    "¿Era ese día la mala hierba de la etiqueta, en el estado de la etiqueta?",
  "Large plants living where small ones died is what a late spray leaves.":
    "Plantas grandes vivas donde murieron las pequeñas: eso deja una aplicación tardía.",
  "product, rate or adjuvant": "producto, dosis o adyuvante",
  "Is the product in the shed the one in the record, with its rate and its adjuvant?":
    "¿Es el producto del almacén el del registro, con su dosis y su adyuvante?",
  "tank arithmetic or mixing order": "cálculo del tanque u orden de mezcla",
  "Do product used, water used and area sprayed agree? Did all of it go in, in order?":
    "¿Concuerdan producto, agua y superficie? ¿Se echó todo, en orden?",
  "A fault in one load only speaks for what was put in, or left out, there.":
    "Un fallo en una sola carga habla de lo que allí se echó, o se omitió.",
  "water volume, calibration or nozzles": "volumen de agua, calibración o boquillas",
  "Was the sprayer calibrated, and are nozzles, screens and boom height right?":
    "¿Estaba calibrado el equipo, y son correctas boquillas, filtros y altura de barra?",
  "Strips along the run are what a nozzle, a screen or the boom leaves.":
    "Franjas en el sentido de avance: una boquilla, un filtro o la barra.",
  "An even picture speaks against single nozzles.":
    "Una imagen uniforme habla en contra de boquillas sueltas.",
  "weather, drought or cold": "tiempo, sequía o frío",
  "Were the weeds growing? Drought, cold, heat and rain soon after take more than most waters do.":
    "¿Crecían las malas hierbas? Sequía, frío, calor y lluvia temprana quitan más que la mayoría de las aguas.",
  "Patches that follow soil or shade speak for stress.":
    "Rodales que siguen el suelo o la sombra hablan de estrés.",
  "dust on the leaves": "polvo en las hojas",
  "Were leaves dusty, or was dust raised by the wheels? Clay holds some actives at once.":
    "¿Había polvo en las hojas, o lo levantaron las ruedas? La arcilla retiene enseguida algunas materias.",
  "Wheel tracks and track sides left alive are what dust leaves.":
    "Rodadas y sus bordes vivos: eso deja el polvo.",
  resistance: "resistencia",
  "Do survivors stand beside dead plants of the same kind? Has this group failed here before?":
    "¿Hay supervivientes junto a muertas de la misma especie? ¿Falló antes aquí este grupo?",
  "Dead and healthy plants of one kind side by side are what resistance leaves.":
    "Muertas y sanas de una especie lado a lado: eso deja la resistencia.",
  "Plants all weakened alike speak against resistance.":
    "Plantas todas igual de débiles hablan en contra de la resistencia.",
  "a bad or old batch": "un lote malo o viejo",
  "Keep the container and its lot number. Has the lot failed elsewhere, frozen or grown old?":
    "Guarde el envase y su número de lote. ¿Falló el lote en otra parte, se heló o envejeció?",
  "the water": "el agua",
  "Test the water that went in, and spray a strip in soft or conditioned water beside one in this.":
    "Analice el agua usada, y aplique una franja con agua blanda o corregida junto a otra con esta.",
  "A fault of the water is even over all that was sprayed with it.":
    "Un fallo del agua es uniforme en todo lo tratado con ella.",
  "The water was the same everywhere: strips, patches and edges speak against it.":
    "El agua era igual en todas partes: franjas, rodales y bordes hablan en contra.",
  "Partial kill with regrowth, all plants alike, is what a dose cut by the water leaves.":
    "Muerte parcial con rebrote, todas igual: eso deja una dosis recortada por el agua.",
  "Dead beside healthy plants of one kind speak against the water.":
    "Muertas junto a sanas de una especie hablan en contra del agua.",
  "Only loads from one source failing speaks for its water.":
    "Si solo fallan cargas de una fuente, eso apunta a su agua.",
  "All loads of the same water failing alike is as a fault of the water would be.":
    "Todas las cargas de la misma agua fallan igual: así sería un fallo del agua.",
  "This is no proof. It says what this water could have taken from the dose, not what happened in the field. Exclude the other causes first.":
    "No es una prueba. Dice lo que esta agua pudo quitar de la dosis, no lo que pasó en el campo. Descarte primero las otras causas.",
};
