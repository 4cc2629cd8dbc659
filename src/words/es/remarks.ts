import type { Phrases } from "../phrases.ts";

/** What the engine remarks on ways out, on the clock, on filling and on the sprayer. */
export const REMARKS: Phrases = {
  "The {form} does not ionise in the tank: nothing for metals to bind.":
    "No se ioniza en el tanque ({form}): los metales no tienen qué retener.",
  "No published binding constants: not known.": "Sin constantes publicadas: no se conoce.",
  "{active}: {share} in 100 free on the leaf rest on borrowed activity; by complexes alone {other}. Try it first.":
    "{active}: {share} de cada 100 libres en la hoja se apoyan en actividad prestada; solo por complejos {other}. Pruébelo antes.",
  "{one} with {other}: how they act on each other in strong solution is carried from memory.":
    "{one} con {other}: cómo actúan uno sobre otro en disolución fuerte está puesto de memoria.",
  "Sources say: {what}.": "Según las fuentes: {what}.",
  "No hydrolysis data near pH {pH}.": "Sin datos de hidrólisis cerca de pH {pH}.",
  "For dissolved active; suspended or emulsified active breaks down more slowly.":
    "Para materia disuelta; en suspensión o emulsión se degrada más despacio.",
  "No holding time given.": "Sin tiempo en el tanque.",
  "Not known here: {what}; the dose is a least one.": "No se conoce aquí: {what}; la dosis es mínima.",
  "Iron(II) in air at the tank's pH {pH}: half is iron(III) after {time}.":
    "Hierro(II) al aire, pH del tanque {pH}: mitad hierro(III) tras {time}.",
  "Iron(II) in air at the tank's pH {pH}: half is iron(III) after {time}; {share} in 100 when the last is sprayed.":
    "Hierro(II) al aire, pH del tanque {pH}: mitad hierro(III) tras {time}; {share} de cada 100 al final.",
  "How warmth speeds it is from memory.": "Cuánto lo acelera el calor está puesto de memoria.",
  "Taken to stay as tested.": "Se supone que queda como se analizó.",
  "under 1": "menos de 1",
  "{count} days": "{count} días",
  "{count} years": "{count} años",
  "{count} days, too long to wait for,": "{count} días (demasiado para esperar)",
  "more than ten years": "más de diez años",
  "an hour or less": "una hora o menos",
  "Common practice.": "Práctica común.",
  "With spoons: {what}.": "Con cucharas: {what}.",
  "{count} teaspoon": "{count} cucharadita",
  "{count} teaspoons": "{count} cucharaditas",
  "10 g on a kitchen scale": "10 g en balanza de cocina",
  "With spoons: make {what} up to {volume} mL with water, shake, use {part} of it.":
    "Con cucharas: complete {what} a {volume} mL con agua, agite y use {part}.",
  "Leave {volume} mL of water out of the jar.": "Deje {volume} mL de agua fuera del frasco.",
  "Too small for spoons, even diluted: use a syringe and a balance, or a bigger jar.":
    "Demasiado poco para cucharas, aun diluido: jeringa y balanza, o un frasco mayor.",
  "Below {amount} {unit} and too small even for a dilution: use a bigger jar.":
    "Menos de {amount} {unit} y poco incluso para diluir: use un frasco mayor.",
  "Take the same volume of water out of the jar's share.":
    "Quite el mismo volumen de agua de la parte del frasco.",
  "The leaf adds {amount} mmol of calcium to each litre of spray on it, as a neutral salt.":
    "La hoja aporta {amount} mmol de calcio por litro de caldo, como sal neutra.",
  "Fill to {share} with clean water and start the agitator.":
    "Llene al {share} con agua limpia y arranque el agitador.",
  "Stop here.": "Pare aquí.",
  "Water and movement before any product.": "Agua y movimiento antes de todo producto.",
  "Its formulation is used dry, undiluted or in oil.": "Su formulación se usa seca, sin diluir o en aceite.",
  "Its formulation has no place in the default order. Ask the label, then jar test.":
    "Su formulación no tiene sitio en el orden usual. Lea la etiqueta, luego prueba del frasco.",
  "Salt on a bag that is not dissolved leaves a gel that plugs screens.":
    "Sal sobre una bolsa sin disolver deja un gel que tapa filtros.",
  "Added late or half dissolved it has to win back what is already held.":
    "Tarde o a medio disolver, debe recuperar lo ya retenido.",
  "Suspensions settle. Spray the same day.": "Las suspensiones sedimentan. Aplique el mismo día.",
  "How strongly mud holds it was not found.": "No se halló cuánto lo retiene el barro.",
  "What clay takes at most was not found: the high end is too high.":
    "No se halló el máximo de la arcilla: el extremo alto es excesivo.",
  "Published orders differ: {other} before {name} in {who}; the other way round here.":
    "Los órdenes publicados difieren: {other} antes que {name} en {who}; aquí al revés.",
  "Published orders differ: {other} before {name} in {who}; {same} first in {those}, as here.":
    "Los órdenes publicados difieren: {other} antes que {name} en {who}; {same} primero en {those}, como aquí.",
  "Estimate: {other} stands in for {active} (class “{affinity}”).":
    "Estimación: {other} hace de {active} (clase «{affinity}»).",
  "The borrowed metal constants may be ten times weaker or stronger.":
    "Las constantes prestadas pueden ser diez veces menores o mayores.",
  "Its acid constants are borrowed too.": "Sus constantes de acidez también son prestadas.",
  "{active} was entered as binding no metals.": "{active} se introdujo como que no retiene metales.",
  "No acid constants and no affinity were given for {active}: not known.":
    "Sin constantes de acidez ni afinidad para {active}: no se conoce.",
  "No affinity was given for {active}: what holds it is not known. Its acid counts for the tank's pH.":
    "Sin afinidad para {active}: no se sabe qué lo retiene. Su ácido cuenta para el pH del tanque.",
  "Dose range of the label.": "Margen de dosis de la etiqueta.",
  "Most dose of the label.": "Dosis máxima de la etiqueta.",
  "The label gives no most dose: here {name} reaches its own limit.":
    "La etiqueta no da máximo: aquí {name} llega a su propio límite.",
  "Nothing disclosed.": "Nada declarado.",
  "The label leaves open: {what}. Only what it gives an amount for is counted.":
    "La etiqueta deja abierto: {what}. Solo cuenta lo que lleva cantidad.",
  "Least volume not given: searched down to half the planned volume. Label and coverage decide.":
    "Volumen mínimo no dado: se buscó hasta la mitad del planeado. Deciden etiqueta y cobertura.",
  "Shown at the usual dose.": "Mostrado a la dosis usual.",
  "Shown at the label's least dose.": "Mostrado a la dosis mínima de la etiqueta.",
  "No usual dose is known: shown at the highest dose searched.":
    "Sin dosis usual conocida: mostrado a la mayor dosis buscada.",
  "The aim is met with nothing added.": "El objetivo se alcanza sin añadir nada.",
  "What metals hold of the actives here is not known, so no dose was computed.":
    "No se sabe qué retienen aquí los metales; no se calculó dosis.",
  "No dose up to {dose} g/L meets the aim; this is the best one tried.":
    "Ninguna dosis hasta {dose} g/L alcanza el objetivo; esta es la mejor probada.",
  "No dose up to {dose} g/L meets the aim in {count} of 100 draws; this is the best one tried.":
    "Ninguna dosis hasta {dose} g/L alcanza el objetivo en {count} de cada 100 sorteos; esta es la mejor probada.",
  "{volume} L at {rate} L/min are sprayed in {time} h.": "{volume} L a {rate} L/min se aplican en {time} h.",
  "It is taken as the holding time; add filling, turning and travel.":
    "Se toma como tiempo en el tanque; sume llenado, giros y trayecto.",
  "The holding time of the job is {time} h.": "El tiempo en el tanque del trabajo es {time} h.",
  "{volume} L stay in the machine: they do not reach {area} ha of the last load.":
    "{volume} L quedan en la máquina: no llegan a {area} ha de la última carga.",
  "Spray them out diluted, on the same crop, as the label allows.":
    "Aplíquelos diluidos en el mismo cultivo, según la etiqueta.",
  "Rinsed with {volume} L in three parts, one part in {count} of the spray is left.":
    "Enjuagado con {volume} L en tres partes, queda una parte en {count} del caldo.",
  "{label}: {amount} {unit} go through a hopper of {hopper} L in {count} portions.":
    "{label}: {amount} {unit} pasan por un incorporador de {hopper} L en {count} partes.",
  "Rinse each in before the next.": "Enjuague cada una antes de la siguiente.",
  "The aim is met in free active per hectare, against the planned rate; a share of it is still held.":
    "El objetivo se alcanza en materia libre por hectárea, según la dosis planeada; una parte sigue retenida.",
  "Even the label's {rate} {unit} leaves less free than the aim asks of the planned rate.":
    "Incluso {rate} {unit} de la etiqueta dejan menos libre de lo que pide el objetivo.",
  "The highest rate is the label's for this crop, stage and season: check all three.":
    "La dosis máxima es para este cultivo, estado y temporada: revise los tres.",
  "Counted at the same acid equivalent, {rate} g/ha.": "Contado al mismo equivalente ácido, {rate} g/ha.",
  "Rate, crop and stage are those of its own label.": "Dosis, cultivo y estado según su propia etiqueta.",
  "Esters can move as vapour in warm weather and injure crops that stand the amine.":
    "Con calor los ésteres se volatilizan y dañan cultivos que toleran la amina.",
  "Air turns dissolved iron to rust, and rust sinks. Only settled iron no longer binds.":
    "El aire vuelve óxido el hierro disuelto, y el óxido baja. Solo el sedimentado deja de retener.",
  "Rust that is sucked up plugs screens, and acid in the tank dissolves it again.":
    "El óxido aspirado tapa filtros, y el ácido del tanque lo redisuelve.",
  "Iron {before} mg/L; {after} mg/L taken to be left.":
    "Hierro {before} mg/L; se supone que quedan {after} mg/L.",
  "Iron held by peat or a chelant does not settle, nor does manganese.":
    "El hierro retenido por turba o quelante no sedimenta, el manganeso tampoco.",
  "Iron(II) needs about {time} of air at pH {pH}, then time to sink.":
    "El hierro(II) pide unas {time} de aire a pH {pH}, y luego tiempo para bajar.",
  "Two conditioners: add one, let it dissolve, then the other. Jar test first, and not on one label alone.":
    "Dos acondicionadores: añada uno, deje disolver, luego el otro. Antes prueba del frasco, y lea ambas etiquetas.",
  "Blend by meter or by marks, and test the blend: hardness shows whether the shares are right.":
    "Mezcle con contador o marcas y analice la mezcla: la dureza dice si las partes son correctas.",
  "Hardness {hardness} and alkalinity {alkalinity} mg/L as CaCO3, pH {pH}.":
    "Dureza {hardness} y alcalinidad {alkalinity} mg/L como CaCO3, pH {pH}.",
  "The softer water goes in first, so that no product meets the hard water alone.":
    "El agua más blanda va primero, para que ningún producto halle sola la dura.",
  "The film needs plain water: salts, boron and oil stop it dissolving.":
    "La película pide agua sola: sales, boro y aceite impiden que se disuelva.",
  "It has to take the hardness before the active meets it.":
    "Debe tomar la dureza antes de que llegue la materia activa.",
  "It only helps before the products.": "Solo ayuda antes de los productos.",
  "Dry products need the most water and time.": "Los productos secos piden más agua y tiempo.",
  "It must wet out before oils or surfactants are in.": "Debe mojarse antes de aceites o tensioactivos.",
  "Particles hung in water go in before oils.": "Las partículas en agua van antes que los aceites.",
  "Capsules go in with the suspensions, before oils.":
    "Las cápsulas van con las suspensiones, antes que los aceites.",
  "Already water-based: after the suspensions, before the oils.":
    "Ya en agua: tras las suspensiones, antes de los aceites.",
  "Oil coats dry particles if it goes in before them.": "El aceite envuelve partículas secas si va antes.",
  "A salt solution can break an emulsion that is not yet diluted.":
    "Una solución salina puede romper una emulsión sin diluir.",
  "Last, against foam and coating.": "Al final, contra espuma y recubrimiento.",
  "Metal salts here undo the conditioning: count them in the tank first.":
    "Las sales metálicas deshacen el acondicionado: cuéntelas antes.",
  "Last, if its label does not say otherwise.": "Al final, si la etiqueta no dice otra cosa.",
  "How {active} binds {metal} is not computed.": "No se calcula cómo {active} retiene {metal}.",
  "This is no proof. It says what this water could have taken from the dose, not what happened in the field.":
    "No es una prueba. Dice lo que esta agua pudo quitar a la dosis, no lo que pasó en el campo.",
  "Exclude the other causes first.": "Descarte antes las otras causas.",
  "A conditioner went in after the products. The range runs from its full work to none at all.":
    "Un acondicionador entró tras los productos. El margen va de su efecto pleno a ninguno.",
  "Sources differ: a third (South Dakota), a quarter to three quarters (Manitoba), half to three quarters (Oklahoma).":
    "Las fuentes difieren: 1/3 (Dakota del Sur), 1/4 a 3/4 (Manitoba), 1/2 a 3/4 (Oklahoma).",
  "The label decides.": "La etiqueta decide.",
  "a turf guide": "una guía de césped",
  "water-soluble bags": "bolsas hidrosolubles",
  conditioners: "acondicionadores",
  "compatibility agents": "agentes de compatibilidad",
  defoamers: "antiespumantes",
  "dry products that dissolve": "productos secos solubles",
  "dry products that disperse": "productos secos dispersables",
  suspensions: "suspensiones",
  capsules: "cápsulas",
  "emulsions in water": "emulsiones en agua",
  "oil dispersions": "dispersiones en aceite",
  "emulsifiable concentrates": "concentrados emulsionables",
  solutions: "soluciones",
  surfactants: "tensioactivos",
  oils: "aceites",
  "liquid fertilisers": "abonos líquidos",
  micronutrients: "micronutrientes",
  "drift agents": "antideriva",
  "Adds a little nitrogen.": "Aporta algo de nitrógeno.",
  "Adds a little nitrogen and chloride.": "Aporta algo de nitrógeno y cloruro.",
  "Ammonium harms fish, most of all in alkaline water.":
    "El amonio daña a los peces, sobre todo en agua alcalina.",
  "Readily biodegradable.": "Fácilmente biodegradable.",
  "Readily biodegradable by producers' statements.": "Fácilmente biodegradable según los productores.",
  "Readily biodegradable as the S,S form.": "Fácilmente biodegradable en la forma S,S.",
  "Hardly biodegradable, least of all with iron or copper.":
    "Apenas biodegradable, menos aún con hierro o cobre.",
  "Carries metals along while it lasts.": "Arrastra metales mientras dura.",
  "Phosphonates break down slowly, bind to sediment and end as phosphate.":
    "Los fosfonatos se degradan despacio, se unen al sedimento y acaban en fosfato.",
  "Adds phosphorus: feeds algae where wash-down reaches water.":
    "Aporta fósforo: nutre algas si el lavado llega al agua.",
  "Sulfate and urea last little.": "Sulfato y urea duran poco.",
  "A spill of the concentrate harms fish by its acid.":
    "Un derrame del concentrado daña a los peces por su ácido.",
  "Biodegradable once microbes are used to it.": "Biodegradable cuando los microbios se adaptan.",
  "Poorly biodegradable and a strong carrier of metals.": "Poco biodegradable y gran arrastrador de metales.",
  "Leaves sulfate.": "Deja sulfato.",
  "Harmless salts.": "Sales inocuas.",
  "Not readily biodegradable.": "No es fácilmente biodegradable.",
  "Not readily biodegradable; little phosphorus.": "No es fácilmente biodegradable; poco fósforo.",
  "Not biodegradable; binds to sludge and sediment.": "No biodegradable; se une a lodos y sedimentos.",
};
