import type { Phrases } from "../phrases.ts";

/** What the flasks and their bench list say: cautions, slips, things to have, what is seen. */
export const FLASK_PHRASES: Phrases = {
  "Gloves and eye protection for whoever pours and for the front row. No food vessels, no drinking.":
    "Guantes y gafas para quien vierte y para la primera fila. Sin recipientes de alimentos, sin beber.",
  "Mark every flask with what is in it. Nothing is poured back.":
    "Rotule cada frasco con lo que contiene. Nada se devuelve.",
  "Plastic or thick glass, none chipped, a tray under the flasks, water for hands, out of reach of children.":
    "Plástico o vidrio grueso sin grietas, una bandeja debajo, agua para las manos, lejos de los niños.",
  "Collect all flasks in one labelled can. Anything with a herbicide goes to a labelled use, never down the sink.":
    "Reúna todo en un bidón rotulado. Lo que lleve herbicida va a un uso autorizado, nunca al desagüe.",
  "Iron and indicator rests: a little bicarbonate in an open vessel, let the rust settle, dispose by local rules.":
    "Restos de hierro e indicador: algo de bicarbonato en recipiente abierto, deje posar el óxido, deseche según las normas locales.",
  "Spill: sand or cat litter, sweep up, bag, label. Iron stains come off with citric acid, not with bleach.":
    "Derrame: arena o arena de gato, barrer, embolsar, rotular. Las manchas de hierro salen con ácido cítrico, no con lejía.",
  "Iron(III) chloride: harmful if swallowed, damages eyes, stains. Bring only a dilute, labelled, stoppered bottle; no dry salt.":
    "Cloruro de hierro(III): nocivo si se traga, daña los ojos, mancha. Lleve solo diluido, rotulado, tapado; nada de sal seca.",
  "Herbicide: a ready dilution, only as the label allows. A thimble of concentrate is still concentrate.":
    "Herbicida: dilución lista, solo según la etiqueta. Un dedal de concentrado sigue siendo concentrado.",
  "Thiocyanate: harmful; with strong acid it gives very toxic gas. Dilute, cold and weakly acid only.":
    "Tiocianato: nocivo; con ácido fuerte da un gas muy tóxico. Solo diluido, frío y débilmente ácido.",
  "Ferrocyanide: never near concentrated acid, bleach or heat.":
    "Ferrocianuro: nunca cerca de ácido concentrado, lejía o calor.",
  "Dilute the acid at home: acid into water, slowly. Bring only the dilute one.":
    "Diluya el ácido en casa: el ácido al agua, despacio. Lleve solo el diluido.",
  "Acid burns: goggles and gloves, acid into water, slowly.":
    "El ácido quema: gafas y guantes, el ácido al agua, despacio.",
  "Caustic burns, most of all the eyes; it gets hot as it dissolves. Goggles and gloves.":
    "La sosa quema, sobre todo los ojos; se calienta al disolverse. Gafas y guantes.",
  "Its fumes bite eyes and lungs: open it outdoors, bring only the ready buffer.":
    "Sus vapores irritan ojos y pulmones: abra al aire libre, lleve solo el tampón listo.",
  "Stains skin, cloth and concrete; eats metal. The dry salt heats and fumes with water: make the stock at home.":
    "Mancha piel, tela y hormigón; ataca el metal. La sal seca se calienta y humea con agua: prepare la solución en casa.",
  "Irritates skin and eyes, stains.": "Irrita piel y ojos, mancha.",
  "Irritates the eyes.": "Irrita los ojos.",
  "Irritates the eyes; it gets hot as it dissolves.": "Irrita los ojos; se calienta al disolverse.",
  "Irritates skin, eyes and airways: no dust, goggles, gloves.":
    "Irrita piel, ojos y vías respiratorias: sin polvo, gafas, guantes.",
  "Salicylic acid: harmful if swallowed, damages eyes.":
    "Ácido salicílico: nocivo si se traga, daña los ojos.",
  "Harmful if swallowed, irritates the eyes.": "Nocivo si se traga, irrita los ojos.",
  "Irritates the eyes, harms water life: no rest down the drain.":
    "Irrita los ojos, daña la vida acuática: ningún resto al desagüe.",
  "Edetic acid may fall out as a white powder: less EDTA or less acid.":
    "El ácido edético puede precipitar como polvo blanco: menos EDTA o menos ácido.",
  "Salicylic acid may fall out as white needles.": "El ácido salicílico puede precipitar en agujas blancas.",
  "Thiocyanate in strong acid gives very toxic gas: keep the pH above 1.":
    "El tiocianato en ácido fuerte da un gas muy tóxico: mantenga el pH por encima de 1.",
  "{amount} is too little for a pipette: make the stock weaker.":
    "{amount} es muy poco para una pipeta: haga la solución más débil.",
  "{amount} needs {what}, or a stock.": "{amount} necesita {what}, o una solución madre.",
  "{amount} for {volume} needs {what}.": "{amount} para {volume} necesita {what}.",
  "a balance with steps of 0.01 g": "una balanza con pasos de 0,01 g",
  "a balance with steps of 0.001 g": "una balanza con pasos de 0,001 g",
  "As computed, within what constants, glass and camera leave open.":
    "Como lo calculado, dentro de lo que dejan abierto constantes, vidrio y cámara.",
  "Not as computed, and no single slip of the list explains it. Look for a second one, or for old stocks.":
    "No como lo calculado, y ningún fallo solo de la lista lo explica. Busque un segundo, o soluciones viejas.",
  "Not as computed. Likeliest: {slips}.": "No como lo calculado. Lo más probable: {slips}.",
  "The flasks show iron in acid. A tank holds calcium and magnesium near pH 5: another metal, another strength.":
    "Los frascos muestran hierro en ácido. Un tanque tiene calcio y magnesio cerca de pH 5: otro metal, otra fuerza.",
  "The flasks stand at pH 10. A spray tank stands near pH 5, where an active holds calcium far less.":
    "Los frascos están a pH 10. Un tanque está cerca de pH 5, donde una materia retiene mucho menos calcio.",
  "A flask shows the liquid as mixed. On the leaf the drop dries, and solids may form that no flask shows.":
    "Un frasco muestra el líquido tal como se mezcló. En la hoja la gota se seca, y pueden formarse sólidos que ningún frasco muestra.",
  "A coloured stand-in shows that a metal is held, not what that does to a weed.":
    "Un sustituto de color muestra que un metal está retenido, no qué le hace a la mala hierba.",
  "{indicator} is known from pH {low} to {high}: at pH {pH} its colour is a guess.":
    "{indicator} se conoce de pH {low} a {high}: a pH {pH} su color es una suposición.",
  "At pH {pH} sulfate holds {share} of the iron. A half-tone here has another cause.":
    "A pH {pH} el sulfato retiene {share} del hierro. Un medio tono aquí tiene otra causa.",
  "Rust may form within hours: show it fresh, or add a little acid.":
    "Puede formarse óxido en horas: muéstrelo fresco, o añada un poco de ácido.",
  "More salt than the activity model was fitted to: the shade is less sure.":
    "Más sal de la que cubre el modelo de actividad: el tono es menos seguro.",
  "“{one}” and “{other}” end with the same things in them, so in the same colour.":
    "«{one}» y «{other}» acaban con lo mismo dentro, así que con el mismo color.",
  "Equilibrium has no memory; if they differ on the bench, time or a solid is the cause.":
    "El equilibrio no tiene memoria; si difieren, la causa es el tiempo o un sólido.",
  "Tap water instead of deionised": "Agua del grifo en vez de desionizada",
  "Use deionised water.": "Use agua desionizada.",
  "Acid left out": "Ácido olvidado",
  "Add the acid first.": "Añada primero el ácido.",
  "Acid half as strong": "Ácido la mitad de fuerte",
  "Make the acid afresh.": "Prepare de nuevo el ácido.",
  "Acid twice as strong": "Ácido el doble de fuerte",
  "Dilute the acid.": "Diluya el ácido.",
  "pH half a unit too low": "pH media unidad bajo",
  "pH half a unit too high": "pH media unidad alto",
  "Check the meter or take a new strip.": "Revise el medidor o tome una tira nueva.",
  "Metal stock old, half of it rust or lime": "Solución de metal vieja, mitad óxido o cal",
  "Make the stock afresh, in acid.": "Prepare de nuevo la solución, en ácido.",
  "Another hydrate: 1.7 times the metal": "Otro hidrato: 1,7 veces el metal",
  "Read the hydrate on the bottle.": "Lea el hidrato en la botella.",
  "Indicator half as strong": "Indicador la mitad de fuerte",
  "Make the indicator afresh.": "Prepare de nuevo el indicador.",
  "Indicator twice as strong": "Indicador el doble de fuerte",
  "Check the weight.": "Revise el peso.",
  "Conditioner left out": "Acondicionador olvidado",
  "Add it, in the order of the script.": "Añádalo, en el orden del guion.",
  "A narrower glass, two thirds as wide": "Un vaso más estrecho, dos tercios de ancho",
  "A wider glass, half as wide again": "Un vaso más ancho, vez y media",
  "Use the glass of the script.": "Use el vaso del guion.",
  "look the same": "se ven iguales",
  "plainly different": "claramente distintos",
  "about the same; the constants leave it open": "casi iguales; las constantes lo dejan abierto",
  "different, but not for every published constant": "distintos, pero no con toda constante publicada",
  "told apart only side by side": "se distinguen solo lado a lado",
  "a ready dilution of {strength}, not the concentrate":
    "una dilución lista de {strength}, no el concentrado",
  "tap water spoils the colours": "el agua del grifo estropea los colores",
  "flasks, clear and alike": "frascos, claros e iguales",
  "about {width} cm wide at the liquid": "unos {width} cm de ancho en el líquido",
  "pipettes or syringes, 1 mL and 10 mL": "pipetas o jeringas, 1 mL y 10 mL",
  "one for each stock": "una por solución",
  "pH meter or narrow strips, with acid and alkali of 1 mol/L":
    "medidor de pH o tiras finas, con ácido y álcali de 1 mol/L",
  "goggles, gloves, tray, labels, white card behind the flasks, eye-wash bottle":
    "gafas, guantes, bandeja, etiquetas, cartulina blanca detrás de los frascos, lavaojos",
  "sodium hydrogen carbonate and a labelled can for the rests":
    "hidrogenocarbonato de sodio y un bidón rotulado para los restos",
  "deionised water": "agua desionizada",
  "hydrochloric acid": "ácido clorhídrico",
  "sodium hydroxide": "hidróxido de sodio",
  "sodium hydrogen carbonate": "hidrogenocarbonato de sodio",
  ammonia: "amoníaco",
  "iron(III) chloride hexahydrate": "cloruro de hierro(III) hexahidrato",
  "iron(III) chloride, anhydrous": "cloruro de hierro(III) anhidro",
  "ammonium iron(III) sulfate dodecahydrate": "sulfato de amonio y hierro(III) dodecahidrato",
  "calcium chloride dihydrate": "cloruro de calcio dihidrato",
  "calcium chloride, anhydrous": "cloruro de calcio anhidro",
  "magnesium sulfate heptahydrate": "sulfato de magnesio heptahidrato",
  "magnesium chloride hexahydrate": "cloruro de magnesio hexahidrato",
  "sulfosalicylic acid dihydrate": "ácido sulfosalicílico dihidrato",
  "5-sulfosalicylic acid": "ácido 5-sulfosalicílico",
  "salicylic acid": "ácido salicílico",
  "sodium salicylate": "salicilato de sodio",
  tiron: "tirón",
  "tiron monohydrate": "tirón monohidrato",
  thiocyanate: "tiocianato",
  "potassium thiocyanate": "tiocianato de potasio",
  "ammonium thiocyanate": "tiocianato de amonio",
  "Eriochrome black T": "negro de eriocromo T",
  rust: "óxido",
  "a white or light grey patch": "una zona blanca o gris claro",
  "a colour such as #7b0246": "un color como #7b0246",
  "No reasonable amount of strong acid or alkali brings this pH.":
    "Ninguna cantidad razonable de ácido o álcali fuerte da este pH.",
  "No equilibrium was found.": "No se halló equilibrio.",
};
