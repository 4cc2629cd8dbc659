import type { Phrases } from "../phrases.ts";

/** Cautions of single actives, conditioners and leaf feeds. */
export const PRODUCT_CAUTIONS: Phrases = {
  "Not in galvanised or unlined steel: hydrogen forms and can ignite.":
    "No en acero galvanizado ni sin revestir: se forma hidrógeno, que puede arder.",
  "Manganese feeds cut control by 10 to 30 % unless the manganese is the EDTA chelate.":
    "Los abonos de manganeso reducen el control un 10 a 30 %, salvo el quelato EDTA.",
  "Conditioner goes in and dissolves before glyphosate.":
    "El acondicionador entra y se disuelve antes que el glifosato.",
  "Ammonium sulfate is the usual additive and raises activity even in soft water.":
    "El sulfato amónico es el aditivo usual y aumenta el efecto también en agua blanda.",
  "Calcium and magnesium salts can fall out of hard water; products carry a sequestrant against it.":
    "En agua dura pueden precipitar sales de calcio y magnesio; los productos llevan un secuestrante.",
  "Calcium and magnesium salts may fall out of hard water.":
    "En agua dura pueden precipitar sales de calcio y magnesio.",
  "Not with water cleared with alum when the product is an amine.":
    "No con agua aclarada con alumbre si el producto es una amina.",
  "The emulsion is the hard-water question here: check it in the jar.":
    "En agua dura aquí importa la emulsión: comprobarla en el frasco.",
  "Some labels ask for an agent that keeps the spray above pH 5.":
    "Algunas etiquetas piden un agente que mantenga el caldo por encima de pH 5.",
  "Usual partners are ammonium sulfate or UAN and a crop oil.":
    "Acompañantes usuales: sulfato amónico o solución nitrogenada y un aceite.",
  "Bentazon antagonises it.": "La bentazona lo antagoniza.",
  "Sodium salts antagonise it; ammonium sulfate reduces that.":
    "Las sales de sodio lo antagonizan; el sulfato amónico lo reduce.",
  "Do not acidify: it dissolves poorly below about pH 5 and breaks down on standing.":
    "No acidificar: por debajo de pH 5 se disuelve mal y se degrada en reposo.",
  "Do not use acidifying conditioners.": "No usar acondicionadores acidificantes.",
  "Half-lives are those of regulatory studies as remembered.":
    "Vidas medias de estudios de registro, citadas de memoria.",
  "An extension table prints 8 days at pH 6 and 19 h at pH 8.":
    "Una tabla de asesoría da 8 días a pH 6 y 19 h a pH 8.",
  "Sources differ: 3 hours to 3 days at pH 9, 9 to 30 days at pH 7.":
    "Las fuentes difieren: 3 horas a 3 días a pH 9, 9 a 30 días a pH 7.",
  "Not with copper or lime.": "No con cobre ni cal.",
  "Suspended particles last longer: at pH 9.5 a dilute spray lost 70 % in 48 h, one twenty times stronger lost 10 %.":
    "En suspensión dura más: a pH 9,5 perdió en 48 h 70 % diluido, 10 % veinte veces más fuerte.",
  "Half-lives are for dissolved captan.": "Las vidas medias valen para el captan disuelto.",
  "A formulated spray lost 27 % in 48 h at pH 9.5.": "Un caldo formulado perdió 27 % en 48 h a pH 9,5.",
  "An extension table prints 32 h at pH 5, 8 h at pH 7, 10 min at pH 8 and 2 min at pH 9.":
    "Una tabla da para pH 5, 7, 8 y 9: 32 h, 8 h, 10 min, 2 min.",
  "Not with oils, lime or strongly alkaline copper.": "No con aceites, cal ni cobre muy alcalino.",
  "Never with acidifiers or other acid partners: copper set free burns leaves.":
    "Nunca con acidificantes ni productos ácidos: el cobre liberado quema las hojas.",
  "Surfactants raise the injury.": "Los tensioactivos aumentan el daño.",
  "Ammonium sulfate dosed by the cations of the water restored control in trials.":
    "En ensayos, el sulfato amónico dosificado según los cationes del agua recuperó el control.",
  "Of the partners tried, ammonium sulfate gained most, ahead of citric acid and ammonium nitrate.":
    "De lo probado, el sulfato amónico aportó más, por delante del ácido cítrico y el nitrato amónico.",
  "Half-lives at pH 5 disagree: 15 days is used here, 247 days is also published.":
    "Las vidas medias a pH 5 difieren: aquí se usan 15 días, también hay publicados 247.",
  "Unlike most sulfonylureas it breaks down in alkaline water too: keep the tank at pH 6 to 7.":
    "A diferencia de otras sulfonilureas, también se degrada en agua alcalina: mantener pH 6 a 7.",
  "Clay and anionic surfactants take it out: clean water only, non-ionic wetters only.":
    "La arcilla y los mojantes aniónicos lo anulan: solo agua limpia y mojantes no iónicos.",
  "Very poisonous if swallowed: never decant it into another container.":
    "Muy venenoso si se traga: no trasvasar nunca a otro envase.",
  "Alkali breaks it down: no alkaline partners.": "El álcali lo descompone: sin productos alcalinos.",
  "Slightly acid water, mixed just before use: hydrolysis is its main loss.":
    "Agua algo ácida, mezclar justo antes de usar: la hidrólisis es la pérdida principal.",
  "Not with alkaline materials or sulfur products.": "No con productos alcalinos ni azufrados.",
  "The often printed 48 minutes at pH 9 and 12 hours at pH 6 are not borne out by regulatory studies.":
    "Los estudios de registro no confirman los 48 minutos a pH 9 ni las 12 horas a pH 6.",
  "Strong chelants break the polymer up: not with EDTA and the like.":
    "Los quelantes fuertes rompen el polímero: no con EDTA ni parecidos.",
  "Half-lives are of dissolved mancozeb: use the mixture within the day.":
    "Vidas medias del mancozeb disuelto: usar la mezcla en el día.",
  "Not with oils: injury.": "No con aceites: daños.",
  "Use the mixture on the day it is made.": "Usar la mezcla el mismo día.",
  "A formulated product breaks down more slowly than the dissolved active.":
    "Un producto formulado se degrada más despacio que la materia activa disuelta.",
  "Not with copper: a complex forms.": "No con cobre: se forma un complejo.",
  "What it breaks down to, carbendazim, is a fungicide itself.":
    "Su producto de degradación, la carbendazima, es también fungicida.",
  "Not with copper: its acid sets copper ions free.": "No con cobre: su ácido libera iones de cobre.",
  "Not with foliar nitrogen or metal feeds on tender crops.":
    "No con nitrógeno foliar ni abonos de metales en cultivos delicados.",
  "Spray within hours; no alkaline partners, no calcium or iron feeds.":
    "Aplicar en pocas horas; sin productos alcalinos ni abonos de calcio o hierro.",
  "The concentrate is a strong acid: eyes and skin.": "El concentrado es un ácido fuerte: ojos y piel.",
  "Above about 10 % N it scorched wheat leaves within a day.":
    "Por encima de un 10 % N quemó hojas de trigo en un día.",
  "Stings eyes and cuts; dust makes you cough.": "Escuece en ojos y heridas; el polvo hace toser.",
  "Do not breathe the dust.": "No respirar el polvo.",
  "Alkaline: serious eye damage.": "Alcalino: daño ocular grave.",
  "Goggles.": "Gafas de protección.",
  "Strong acid: eye damage.": "Ácido fuerte: daño ocular.",
  "Gloves and goggles.": "Guantes y gafas.",
  "Strong acid: goggles and gloves.": "Ácido fuerte: gafas y guantes.",
  "Alkaline: glasses.": "Alcalino: gafas.",
  "Burns skin and eyes: goggles or face shield, acid-proof gloves, water at hand.":
    "Quema piel y ojos: gafas o pantalla, guantes antiácido, agua a mano.",
  "Extremely caustic to skin and eyes.": "Muy cáustico para piel y ojos.",
  "Never with bleach, sulfide, thiosulfate or alkali.": "Nunca con lejía, sulfuro, tiosulfato o álcali.",
  "Alkaline liquid: glasses and gloves.": "Líquido alcalino: gafas y guantes.",
  "Suspected of causing cancer: no dust.": "Sospechoso de causar cáncer: sin polvo.",
  "May harm the unborn child: not handled by people who are pregnant.":
    "Puede dañar al feto: que no lo manejen personas embarazadas.",
  "The concentrate burns and its vapour is flammable.": "El concentrado quema y su vapor es inflamable.",
  "Dust irritates eyes and throat.": "El polvo irrita ojos y garganta.",
  "Extremely caustic; water poured into it boils and spits.":
    "Muy cáustico; el agua que se le vierte hierve y salpica.",
  "Above 15 % its sale to private buyers is restricted in the European Union.":
    "Por encima del 15 % su venta a particulares está restringida en la Unión Europea.",
  "The concentrate damages eyes.": "El concentrado daña los ojos.",
  "Burns badly; choking vapour.": "Quema mucho; vapor asfixiante.",
  "Store it vented: it slowly gives carbon monoxide.":
    "Guardar con venteo: desprende despacio monóxido de carbono.",
  "Crystals and strong solutions damage eyes: glasses.":
    "Cristales y soluciones fuertes dañan los ojos: gafas.",
  "With acids, glyphosate included, carbon dioxide builds pressure and foams over: vent and wait.":
    "Con ácidos, glifosato incluido, el dióxido de carbono hace presión y espuma: ventear y esperar.",
  "Do not breathe the dust; it damages eyes.": "No respirar el polvo; daña los ojos.",
  "Toxic to water life.": "Tóxico para la vida acuática.",
  "Damages eyes.": "Daña los ojos.",
  "Keep dry.": "Mantener seco.",
  "Very toxic to water life: no wash-down to drains or ditches.":
    "Muy tóxico para la vida acuática: nada a desagües ni acequias.",
  "Poisonous if swallowed; damages eyes.": "Venenoso si se traga; daña los ojos.",
  "It eats steel, zinc and aluminium: plastic tanks only.":
    "Ataca acero, cinc y aluminio: solo tanques de plástico.",
  "Harmful if swallowed; stains everything.": "Nocivo si se traga; mancha todo.",
  "Stains.": "Mancha.",
  "Feeds fire; damages eyes.": "Aviva el fuego; daña los ojos.",
  "It heats when dissolved; stings eyes.": "Se calienta al disolverse; irrita los ojos.",
  "May harm fertility and the unborn child: no dust, gloves.":
    "Puede dañar la fertilidad y al feto: sin polvo, guantes.",
  "Feeds fire: away from fuel, oil and sulfur.": "Aviva el fuego: lejos de combustible, aceite y azufre.",
};
