import type { Phrases } from "../phrases.ts";

/** Cautions that hold at every filling or with a kind of conditioner. */
export const CAUTIONS: Phrases = {
  "The label in hand and local law win over anything here.":
    "La etiqueta en mano y la ley local mandan sobre todo lo dicho aquí.",
  "A mix may be forbidden or need permission where you are.":
    "Una mezcla puede estar prohibida o necesitar permiso donde usted está.",
  "Handling concentrates is the riskiest minute: label gear, and never less than goggles, chemical-proof gloves, apron and boots.":
    "El concentrado es el minuto más peligroso: equipo de la etiqueta, al menos gafas, guantes químicos, delantal y botas.",
  "Water in first.": "Primero el agua.",
  "Keep the hose end at least 15 cm above the rim, 30 m from the well.":
    "Mantener la boca de la manguera al menos 15 cm sobre el borde, a 30 m del pozo.",
  "Never leave a filling tank.": "No dejar nunca solo un tanque que se llena.",
  "Fill on level, lit, aired ground away from drains and animals, spill kit and first aid at hand.":
    "Llenar en suelo llano, con luz y aire, lejos de desagües y animales, con absorbente y botiquín a mano.",
  "Acid into water, slowly, stirring; never water into acid.":
    "Ácido sobre agua, despacio y removiendo; nunca agua sobre ácido.",
  "Running water and an eye bottle within reach.": "Agua corriente y lavaojos al alcance.",
  "Never acid with bleach, sulfide, lime sulfur, cyanide or thiosulfate: poison gas.":
    "Nunca ácido con lejía, sulfuro, polisulfuro de calcio, cianuro o tiosulfato: gas tóxico.",
  "Rinse fully between cleaning and filling.": "Enjuagar a fondo entre la limpieza y el llenado.",
  "Acid eats zinc, steel and aluminium and gives hydrogen: plastic gear for concentrates, rinse after.":
    "El ácido ataca cinc, acero y aluminio y da hidrógeno: equipo de plástico para concentrados, enjuagar después.",
  "Never ammonium with bleach (chloramine gas) or with lime, caustic or wood ash (ammonia gas).":
    "Nunca amonio con lejía (gas cloramina) ni con cal, sosa o ceniza (gas amoníaco).",
  "Ammonium salts attack brass, copper and zinc and rust steel: rinse the machine the same day.":
    "Las sales de amonio atacan latón, cobre y cinc y oxidan el acero: enjuagar la máquina el mismo día.",
  "Dry nitrates feed fire: away from fuel, oil, sulfur, sawdust and acids.":
    "Los nitratos secos avivan el fuego: lejos de combustible, aceite, azufre, serrín y ácidos.",
  "Alkaline: goggles and gloves.": "Alcalino: gafas y guantes.",
  "Never into a tank that already holds ammonium: ammonia comes off.":
    "Nunca en un tanque que ya tiene amonio: se desprende amoníaco.",
  "Sequestrants loosen rust and attack zinc, copper and aluminium slowly: rinse the machine the same day.":
    "Los secuestrantes sueltan óxido y atacan despacio cinc, cobre y aluminio: enjuagar la máquina el mismo día.",
  "Rinse three times with little water and spray it out on the treated field, never into a drain.":
    "Enjuagar tres veces con poca agua y aplicarla en el campo tratado, nunca a un desagüe.",
  "Splash in the eye: rinse at once for at least 15 minutes and get help.":
    "Salpicadura en el ojo: enjuagar enseguida al menos 15 minutos y pedir ayuda.",
  "{active} is entered by hand: the restrictions of its label are not known here.":
    "{active} se introdujo a mano: aquí no se conocen las restricciones de su etiqueta.",
};
