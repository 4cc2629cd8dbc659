import type { Phrases } from "../phrases.ts";

/** Published rules, what contradicts them, and notes on conditioners. */
export const RULES: Phrases = {
  "No ammonium salt with dicamba: it sets dicamba acid free to evaporate. It blocks unless the job says no volatility rules apply.":
    "Ninguna sal de amonio con dicamba: deja su ácido libre para evaporarse. Bloquea salvo que el trabajo diga que no rigen reglas de volatilidad.",
  "Zollinger and others show ammonium sulfate restoring dicamba in hard water where the label allows it.":
    "Zollinger y otros muestran que el sulfato amónico recupera el dicamba en agua dura donde la etiqueta lo permite.",
  "Ammonium salts raise dicamba vapour loss. Some older labels allow them: read the label in hand.":
    "Las sales de amonio suben la volatilización de dicamba. Algunas etiquetas antiguas las permiten: leer la etiqueta en mano.",
  "Do not acidify dicamba: below pH 5 vapour loss and off-target movement rise.":
    "No acidificar dicamba: por debajo de pH 5 suben la volatilización y el movimiento fuera del objetivo.",
  "The tank is below pH 5, where dicamba vapour loss rises. Some labels ask for an agent that raises the pH.":
    "El tanque está por debajo de pH 5, donde dicamba se volatiliza más. Algunas etiquetas piden un agente que suba el pH.",
  "Glyphosate salts pull a dicamba tank down by 1 to 2 pH units.":
    "Las sales de glifosato bajan un tanque de dicamba 1 a 2 unidades de pH.",
  "Registrants state 0.2 to 0.3 units, as reported in the same paper.":
    "Los titulares del registro dicen 0,2 a 0,3 unidades, según el mismo artículo.",
  "Glufosinate raises dicamba vapour loss and is no labelled partner for it in tolerant crops.":
    "El glufosinato sube la volatilización de dicamba y en cultivos tolerantes no es mezcla de etiqueta con él.",
  "From about 400 mg/L hardness dicamba with glyphosate lost control of some weeds.":
    "Desde unos 400 mg/L de dureza, dicamba con glifosato perdió control de algunas malas hierbas.",
  "Roskamp and others (2013): cations did not move dicamba on horseweed.":
    "Roskamp y otros (2013): los cationes no afectaron a dicamba en coniza.",
  "No acidifier with sulfonylureas: they dissolve poorly in acid water and break down on standing.":
    "Sin acidificante con sulfonilureas: en agua ácida se disuelven mal y se degradan en reposo.",
  "General advice that pH 4 to 6 suits everything.": "El consejo general de que pH 4 a 6 conviene a todo.",
  "This tank is acid for a sulfonylurea: disperse it in plain water first and spray at once. The limit of pH 5.5 is ours.":
    "Este tanque es ácido para una sulfonilurea: dispersarla antes en agua sola y aplicar enseguida. El límite de pH 5,5 es nuestro.",
  "Sulfonylureas break down in acid water: spray the same day.":
    "Las sulfonilureas se degradan en agua ácida: aplicar el mismo día.",
  "Unlike its relatives rimsulfuron breaks down in alkaline water too: keep the tank near pH 6 to 7.":
    "Al contrario que sus parientes, el rimsulfurón también se degrada en agua alcalina: tanque cerca de pH 6 a 7.",
  "No acidifier with saflufenacil: it does not dissolve. Control at pH 4 was up to 56 % lower than at pH 7.7.":
    "Sin acidificante con saflufenacilo: no se disuelve. El control a pH 4 fue hasta un 56 % menor que a pH 7,7.",
  "This tank is acid for saflufenacil, which dissolves poorly. The limit of pH 5 is ours; the trial saw the loss at pH 4.":
    "Este tanque es ácido para el saflufenacilo, que se disuelve mal. El límite de pH 5 es nuestro; el ensayo vio la pérdida a pH 4.",
  "Hardness up to 620 mg/L made no difference to saflufenacil: no conditioner needed for it.":
    "Una dureza de hasta 620 mg/L no afectó al saflufenacilo: no necesita acondicionador.",
  "No acid with fixed copper: acid sets copper free and burns leaves.":
    "Sin ácido con cobre fijo: el ácido libera cobre y quema las hojas.",
  "Keep fixed copper at pH 6.5 or above: labels usually say so.":
    "Mantener el cobre fijo a pH 6,5 o más: las etiquetas suelen decirlo.",
  "Chelants and ammonium dissolve fixed copper: leaf injury, and the conditioner is used up.":
    "Los quelantes y el amonio disuelven el cobre fijo: daño en hojas, y el acondicionador se gasta.",
  "Surfactants, silicones above all, carry copper into the leaf: more injury.":
    "Los tensioactivos, sobre todo las siliconas, meten cobre en la hoja: más daño.",
  "Strong acid throws the herbicide acid out of amine and salt mixes as crystals. Dilute both first, jar test.":
    "El ácido fuerte precipita en cristales el ácido herbicida de mezclas de aminas y sales. Diluir antes ambos, prueba del frasco.",
  "Low pH alone did not raise glyphosate activity. About 1 % v/v of product was needed to match ammonium sulfate in 1,000 mg/L water.":
    "Un pH bajo no aumentó por sí solo la actividad del glifosato. En agua de 1000 mg/L hizo falta un 1 % v/v de producto para igualar al sulfato amónico.",
  "Guides advise lowering water above pH 8.5. Hardness is usually the larger fault: see the computed shares.":
    "Las guías aconsejan bajar el pH del agua si pasa de 8,5. La dureza suele ser el fallo mayor: ver las partes calculadas.",
  "From 350 mg/L hardness tie-up shows at low rates (about 445 g/ha). The same source calls 890 g/ha a high rate.":
    "Desde 350 mg/L de dureza la retención se nota a dosis bajas (unos 445 g/ha). La misma fuente llama alta a 890 g/ha.",
  "150 (Montana), 200 (turf guide), 300 mg/L (canola guide).":
    "150 (Montana), 200 (guía de césped), 300 mg/L (guía de canola).",
  "From 700 mg/L hardness do not spray glyphosate unconditioned, even at high rates.":
    "Desde 700 mg/L de dureza no aplicar glifosato sin acondicionar, ni a dosis altas.",
  "Some field trials saw no loss; rate, volume and species decide.":
    "Algunos ensayos de campo no vieron pérdida; deciden dosis, volumen, especie.",
  "Above 300 mg/L hardness a canola guide asks for ammonium sulfate before weak-acid herbicides.":
    "A más de 300 mg/L de dureza una guía de canola pide sulfato amónico antes de herbicidas de ácido débil.",
  "Other lines for the same water: 150, 200, 350 and 700 mg/L.":
    "Otros límites para la misma agua: 150, 200, 350 y 700 mg/L.",
  "Montana draws its line at 150 mg/L hardness, more so above pH 7.":
    "Montana pone su límite en 150 mg/L de dureza, más aún por encima de pH 7.",
  "Other lines for the same water: 200, 300, 350 and 700 mg/L.":
    "Otros límites para la misma agua: 200, 300, 350 y 700 mg/L.",
  "North Dakota calls 150 mg/L calcium antagonistic to weak-acid herbicides.":
    "Dakota del Norte considera 150 mg/L de calcio antagonista de los herbicidas de ácido débil.",
  "From 300 mg/L sodium weak-acid herbicides are antagonised. No equilibrium of the tank shows it.":
    "Desde 300 mg/L de sodio se antagonizan los herbicidas de ácido débil. Ningún equilibrio del tanque lo muestra.",
  "Sodium bicarbonate at 600 mg/L (436 mg/L as bicarbonate) weakened glyphosate in pots; ammonium nitrate brought it back.":
    "El bicarbonato sódico a 600 mg/L (436 mg/L como bicarbonato) debilitó el glifosato en macetas; el nitrato amónico lo recuperó.",
  "Sodium bicarbonate at 600 mg/L (436 mg/L as bicarbonate) weakened nicosulfuron in pots; ammonium nitrate brought it back.":
    "El bicarbonato sódico a 600 mg/L (436 mg/L como bicarbonato) debilitó el nicosulfurón en macetas; el nitrato amónico lo recuperó.",
  "Dissolved iron holds glyphosate hard: full ammonium sulfate rate, an iron sequestrant, or other water. The limit of 1 mg/L is ours.":
    "El hierro disuelto retiene mucho el glifosato: dosis plena de sulfato amónico, un secuestrante de hierro u otra agua. El límite de 1 mg/L es nuestro.",
  "A provincial specialist says no additive corrects iron.":
    "Un especialista provincial dice que ningún aditivo corrige el hierro.",
  "Manganese, zinc, copper or iron feeds tie glyphosate up like very hard water: separate passes.":
    "Los abonos de manganeso, cinc, cobre o hierro retienen el glifosato como agua muy dura: pasadas separadas.",
  "A full EDTA or DTPA chelate is the only metal feed that may go in: after the conditioner, before glyphosate.":
    "Un quelato completo EDTA o DTPA es el único abono de metales admisible: tras el acondicionador, antes del glifosato.",
  "A calcium or magnesium feed adds thousands of mg/L hardness: no conditioner dose carries that. Separate passes.":
    "Un abono de calcio o magnesio suma miles de mg/L de dureza: ninguna dosis de acondicionador lo aguanta. Pasadas separadas.",
  "Mud holds glyphosate at once and no conditioner helps. A coin on the floor of a bucket must be seen; 20 NTU is our reading of that.":
    "El lodo retiene el glifosato enseguida y ningún acondicionador ayuda. Debe verse una moneda en el fondo de un cubo; 20 NTU es nuestra lectura de eso.",
  "Clay takes this active out at once and no conditioner helps: clean water only. The limit of 20 NTU is ours.":
    "La arcilla anula enseguida esta materia activa y ningún acondicionador ayuda: solo agua limpia. El límite de 20 NTU es nuestro.",
  "From about 400 mg/L hardness 2,4-D amine lost control; ammonium sulfate at 20 g/L brought it back.":
    "Desde unos 400 mg/L de dureza la amina de 2,4-D perdió control; el sulfato amónico a 20 g/L lo recuperó.",
  "Above 600 mg/L hardness one guide calls 2,4-D amine totally deactivated: ester form or conditioned water.":
    "A más de 600 mg/L de dureza una guía da por totalmente desactivada la amina de 2,4-D. Éster o agua acondicionada.",
  "Schortgen and Patton (2020): at 600 mg/L ammonium sulfate gave full control.":
    "Schortgen y Patton (2020): a 600 mg/L el sulfato amónico dio control pleno.",
  "Calcium and magnesium phenoxy salts can fall out of hard water: conditioner first, jar test. Not computed here.":
    "En agua dura pueden precipitar sales fenoxi de calcio y magnesio: primero el acondicionador, prueba del frasco. No se calcula aquí.",
  "2,4-D ester was not antagonised at 600 mg/L hardness: no conditioner needed for it.":
    "El 2,4-D éster no sufrió antagonismo a 600 mg/L de dureza: no necesita acondicionador.",
  "Bicarbonate weakens 2,4-D amine and ammonium sulfate helps less here: other water, top rate or ester form.":
    "El bicarbonato debilita la amina de 2,4-D y aquí el sulfato amónico ayuda menos: otra agua, dosis máxima o éster.",
  "Sources disagree on MCPA: Saskatchewan states no antagonism by bicarbonate or hardness.":
    "Las fuentes discrepan sobre MCPA: Saskatchewan dice que bicarbonato y dureza no lo antagonizan.",
  "An Ontario guide calls MCPA amine sensitive to bicarbonate.":
    "Una guía de Ontario llama a la amina de MCPA sensible al bicarbonato.",
  "Ammonium sulfate does not fully cure manganese antagonism of 2,4-D amine: keep the feed out.":
    "El sulfato amónico no cura del todo el antagonismo del manganeso con la amina de 2,4-D: dejar fuera el abono.",
  "Water cleared with alum is not for amine products.":
    "El agua aclarada con alumbre no es para productos de amina.",
  "At pH 9 glufosinate control fell 8 to 17 points against pH 4: slightly acid water.":
    "A pH 9 el control del glufosinato bajó 8 a 17 puntos frente a pH 4: agua algo ácida.",
  "At 500 and 1,000 mg/L hardness glufosinate was antagonised (about 20 points at 1,000); ammonium sulfate restored it.":
    "A 500 y 1000 mg/L de dureza el glufosinato sufrió antagonismo (unos 20 puntos a 1000). El sulfato amónico lo recuperó.",
  "At 500 and 1,000 mg/L hardness this active was antagonised; ammonium sulfate restored it.":
    "A 500 y 1000 mg/L de dureza esta materia activa sufrió antagonismo; el sulfato amónico la recuperó.",
  "Mesotrione lost 18 to 28 points at 1,000 mg/L hardness; the authors advise water below 200 mg/L.":
    "La mesotriona perdió 18 a 28 puntos a 1000 mg/L de dureza. Los autores aconsejan agua de menos de 200 mg/L.",
  "In one trial mesotrione did best at pH 6.5, worse at 4 and at 9. The limits of 5 and 8.5 are ours.":
    "En un ensayo la mesotriona fue mejor a pH 6,5, peor a 4 y a 9. Los límites de 5 y 8,5 son nuestros.",
  "Calcium, magnesium and iron carbonates halved imazethapyr in pots; ammonium sulfate did most against it. The limits of 300 mg/L are ours.":
    "Los carbonatos de calcio, magnesio y hierro redujeron a la mitad el imazetapir en macetas; el sulfato amónico ayudó más. Los límites de 300 mg/L son nuestros.",
  "Bicarbonate cuts the dims: ammonium sulfate at 1 % w/v or 28 % UAN cures it. A sequestrant or softener does not.":
    "El bicarbonato reduce los DIM: lo cura sulfato amónico al 1 % p/v o solución nitrogenada al 28 %. Un secuestrante o ablandador no.",
  "Ammonium is the published cure for bicarbonate with the dims: ammonium sulfate at 1 % w/v.":
    "El amonio es el remedio publicado contra el bicarbonato con los DIM: sulfato amónico al 1 % p/v.",
  "A sodium sequestrant leaves bicarbonate and adds sodium: it does not help the dims.":
    "Un secuestrante sódico deja el bicarbonato y añade sodio: no ayuda a los DIM.",
  "Hardness is not what hurts the dims: calcium sulfate water did not reduce them.":
    "No es la dureza lo que daña a los DIM: el agua con sulfato cálcico no los redujo.",
  "A softener leaves bicarbonate and adds sodium: still bad for the dims.":
    "Un ablandador deja el bicarbonato y añade sodio: agua aún mala para los DIM.",
  "Bentazon antagonises the dims: ammonium sulfate or UAN reduces it, separate sprays cure it.":
    "La bentazona antagoniza los DIM: sulfato amónico o solución nitrogenada lo reduce, aplicar por separado lo cura.",
  "This active breaks down in alkaline water: bring the tank to pH 5 to 6 before it goes in, spray at once.":
    "En agua alcalina esta materia activa se degrada: tanque a pH 5 a 6 antes de echarla, aplicar enseguida.",
  "Formulated suspensions lose far less than dissolved active (Atwood and others 1987).":
    "Las suspensiones formuladas pierden mucho menos que la materia disuelta (Atwood y otros 1987).",
  "This conditioner makes the tank alkaline and the active would break down: use an acid or part-neutralised one.":
    "Este acondicionador vuelve alcalino el tanque y la materia activa se degradaría: usar uno ácido o parcialmente neutralizado.",
  "Dissolved, it lasts hours at pH 8 and minutes at pH 9. Slightly acid water, mixed just before use.":
    "Disuelta, dura horas a pH 8 y minutos a pH 9. Agua algo ácida, mezclar justo antes de usar.",
  "An extension guide warns of water above pH 8 for organophosphates and carbamates.":
    "Una guía de asesoría advierte contra agua de más de pH 8 para organofosforados y carbamatos.",
  "Half-lives of this one are days to weeks at pH 9.":
    "Las vidas medias de este son de días a semanas a pH 9.",
  "Oil carries captan into leaf and fruit: not together, and 10 to 12 days apart or more.":
    "El aceite mete el captan en hoja y fruto: no juntos, y con 10 a 12 días o más entremedias.",
  "Oil raises crop injury from chlorothalonil: keep the interval of the label.":
    "El aceite sube el daño del clorotalonil al cultivo: respetar el intervalo de etiqueta.",
  "Not with alkaline copper: it breaks down.": "No con cobre alcalino: se degrada.",
  "Fosetyl-aluminium makes the spray acid, which sets copper free: not together.":
    "El fosetil-aluminio acidifica el caldo, y eso libera cobre: no juntos.",
  "Copper ties up thiophanate-methyl: not together.": "El cobre retiene el tiofanato-metil: no juntos.",
  "Not with nitrogen or metal feeds on tender crops: injury.":
    "No con abonos de nitrógeno o metales en cultivos delicados: daños.",
  "Strong chelants take the metals out of mancozeb and break it up.":
    "Los quelantes fuertes sacan los metales del mancozeb y lo rompen.",
  "Mancozeb breaks down in acid water: no acidifier.":
    "El mancozeb se degrada en agua ácida: sin acidificante.",
  "Above pH 4 to 5 ethephon gives off its ethylene in the tank: spray within hours.":
    "Por encima de pH 4 a 5 el etefón suelta su etileno en el tanque: aplicar en pocas horas.",
  "Water of 300 mg/L alkalinity (366 mg/L as bicarbonate) weakened ethephon on bedding plants, against 50 mg/L.":
    "Agua con 300 mg/L de alcalinidad (366 mg/L como bicarbonato) debilitó etefón en plantas de temporada, frente a 50.",
  "A strong ammonium sulfate premix in this water can drop gypsum: dissolve it in the main tank or in soft water.":
    "Una premezcla fuerte de sulfato amónico en esta agua puede soltar yeso. Disolver en el tanque principal o en agua blanda.",
  "Gypsum forming as the drop dries is how ammonium sulfate takes the calcium. It takes no magnesium.":
    "El sulfato amónico quita el calcio como yeso, que se forma al secarse la gota. No quita magnesio.",
  "North Dakota: under 4 lb per 100 US gal (4.8 g/L) ammonium sulfate may not do the job in hard water.":
    "Dakota del Norte: bajo 4 lb por 100 gal US (4,8 g/L), el sulfato amónico puede fallar en agua dura.",
  "Phosphate clouds hard water above about pH 6.5: calcium phosphate fines reach the screens.":
    "El fosfato enturbia el agua dura por encima de pH 6,5 aprox.: finos de fosfato cálcico llegan a los filtros.",
  "Magnesium, ammonium and phosphate above pH 7 can drop struvite.":
    "Magnesio, amonio y fosfato por encima de pH 7 pueden soltar estruvita.",
  "Near equal amounts the calcium phosphonate can fall out as floc: jar test.":
    "Con cantidades casi iguales el fosfonato cálcico puede dar copos: prueba del frasco.",
  "Below about pH 2.5 EDTA falls out as the free acid. Do not premix chelant with strong acid.":
    "Por debajo de pH 2,5 aprox. el EDTA precipita como ácido libre. No premezclar quelante con ácido fuerte.",
  "Ammonium in an alkaline tank gives ammonia gas: choking in a shed, and the nitrogen is lost.":
    "El amonio en tanque alcalino da gas amoníaco: asfixiante en un cobertizo, y el nitrógeno se pierde.",
  "Strong potassium solutions can salt out the potassium salt of amine mixes: dilute first, jar test.":
    "Soluciones potásicas fuertes pueden precipitar la sal potásica en mezclas de aminas: diluir antes, prueba del frasco.",
  "Dry ammonium salts cool the water as they dissolve: pre-dissolve or use the liquid.":
    "Las sales de amonio secas enfrían el agua al disolverse: predisolver o usar la líquida.",
  "Enter the nitrogen where a scheme counts it: 2 % ammonium sulfate at 100 L/ha is 0.42 kg N/ha.":
    "Anotar el nitrógeno donde un programa lo cuente: sulfato amónico al 2 % a 100 L/ha son 0,42 kg N/ha.",
  "Iron and manganese drop out on airing and plug screens: aerate and settle first. The limits of 5 and 2 mg/L are ours.":
    "El hierro y el manganeso precipitan al airearse y tapan filtros: airear y dejar posar antes. Los límites de 5 y 2 mg/L son nuestros.",
  "The cation formula gives iron a coefficient, so treats it as correctable.":
    "La fórmula de cationes da al hierro un coeficiente, así que lo trata como corregible.",
  "Salt breaks emulsions: jar test for an hour. The limit of 3,000 µS/cm is ours; sources say only high.":
    "La sal rompe emulsiones: prueba del frasco de una hora. El límite de 3000 µS/cm es nuestro; las fuentes solo dicen alto.",
  "Above 1,000 µS/cm look at the single ions, not at the total.":
    "Por encima de 1000 µS/cm mirar cada ion, no el total.",
  "Above 10,000 µS/cm the water is very salty: find out which salts before use.":
    "Por encima de 10 000 µS/cm el agua es muy salina: averiguar qué sales antes de usar.",
  "An emulsifiable concentrate in a salt-rich carrier may cream or oil out: compatibility agent and jar test.":
    "Un concentrado emulsionable en líquido rico en sal puede formar nata o soltar aceite: agente de compatibilidad, prueba del frasco.",
  "Very cold or hot spray water cut control in trials: at 5 and 56 °C, not at 22 and 39 °C. The limits of 10 and 45 °C are ours.":
    "El agua muy fría o caliente redujo el control en ensayos (5 y 56 °C, no 22 y 39 °C). Los límites de 10 y 45 °C son nuestros.",
  "Cold water: dry products and bags dissolve and disperse slowly. Wait, stir, check the screens.":
    "Agua fría: productos secos y bolsas se disuelven y dispersan despacio. Esperar, remover, revisar filtros.",
  "Water-soluble bags go into plain water and must be gone before any conditioner: salts stop the film dissolving.":
    "Las bolsas hidrosolubles van en agua sola y deben desaparecer antes de todo acondicionador: las sales impiden disolver la película.",
  "Sources that put the conditioner first.": "Fuentes que ponen primero el acondicionador.",
  "Make a slurry of dry products first; let it disperse fully before the next product.":
    "Hacer antes papilla con los productos secos; dejar dispersar del todo antes del siguiente.",
  "Sources differ on solutions before or after emulsions: label first, then jar test.":
    "Las fuentes difieren sobre soluciones antes o después de emulsiones: primero etiqueta, luego prueba del frasco.",
  "Manitoba and Oklahoma: before; North Dakota: after.":
    "Manitoba y Oklahoma: antes; Dakota del Norte: después.",
  "More than three partners: the jar test is not optional.":
    "Más de tres productos: la prueba del frasco no es opcional.",
  "Do not keep mixed loads overnight unless the label allows it. Restart the agitator well before spraying.":
    "No guardar caldo hecho de un día a otro salvo que la etiqueta lo permita. Reanudar la agitación bastante antes de aplicar.",
  "No loss in 24 to 72 h for several herbicides in trials.":
    "Sin pérdida en 24 a 72 h con varios herbicidas en ensayos.",
  "Use an iprodione mixture on the day it is made.": "Usar una mezcla de iprodiona el día en que se hace.",
  "Carbonate with glyphosate or any acid gives off carbon dioxide. Open the vent, add slowly, wait before closing.":
    "El carbonato con glifosato o cualquier ácido suelta dióxido de carbono. Abrir el venteo, añadir despacio, esperar antes de cerrar.",
  "Carbonate makes scale in hard water. It raises the pH; it is no conditioner against hardness.":
    "El carbonato forma incrustación en agua dura. Sube el pH; no es acondicionador contra la dureza.",
  "Near equal amounts the calcium polyacrylate can fall out as floc: jar test.":
    "Con cantidades casi iguales el poliacrilato cálcico puede dar copos: prueba del frasco.",
  "Anionic wetters and polymers inactivate paraquat and diquat: non-ionic only.":
    "Mojantes y polímeros aniónicos inactivan paraquat y dicuat: solo no iónicos.",
  "Softening swaps calcium for sodium: better for glyphosate, but high sodium still weakens salts. Measure again after the softener.":
    "Ablandar cambia calcio por sodio: mejor para glifosato, pero mucho sodio aún debilita las sales. Medir otra vez tras el ablandador.",
  "Chlorine kills live products: let mains water stand open for a day first.":
    "El cloro mata los productos vivos: dejar antes el agua de red destapada un día.",
  "Live products die at extreme pH: keep the tank between pH 5 and 8. The limits are ours.":
    "Los productos vivos mueren a pH extremo: mantener el tanque entre pH 5 y 8. Los límites son nuestros.",
  "Copper kills live products: separate passes.": "El cobre mata productos vivos: pasadas separadas.",
  "Soap turns to curd in hard water: soft water, or a sequestrant first. The limit of 100 mg/L is ours.":
    "El jabón se corta en agua dura: agua blanda, o antes un secuestrante. El límite de 100 mg/L es nuestro.",
  "Ammonium thiosulfate lowered control by glyphosate and raised the pH. It is no stand-in for ammonium sulfate.":
    "El tiosulfato amónico redujo el control del glifosato y subió el pH. No sustituye al sulfato amónico.",
  "Acid breaks thiosulfate: sulfur plugs screens and sulfur dioxide comes off.":
    "El ácido rompe el tiosulfato: el azufre tapa filtros y se desprende dióxido de azufre.",
  "Acid with bleach gives chlorine gas. Rinse fully between bleach cleaning and any acid.":
    "Ácido con lejía da gas cloro. Enjuagar a fondo entre la limpieza con lejía y cualquier ácido.",
  "Ammonium or urea with bleach gives chloramine gases. Rinse fully after bleach cleaning.":
    "Amonio o urea con lejía da gases de cloramina. Enjuagar a fondo tras limpiar con lejía.",
  "Acid with lime sulfur sets poisonous hydrogen sulfide free.":
    "Ácido con polisulfuro de calcio libera sulfuro de hidrógeno venenoso.",
  "Ammonium with lime, caustic or ash gives ammonia gas: choking in a shed, and the nitrogen is lost.":
    "Amonio con cal, sosa o ceniza da gas amoníaco: asfixiante en un cobertizo, y el nitrógeno se pierde.",
  "Captan with lime or borate breaks down within minutes to hours once dissolved.":
    "Captan con cal o borato, una vez disuelto, se degrada en minutos a horas.",
  "Formulated captan lost 27 % in 48 h at pH 9.5 (Atwood and others 1987).":
    "Captan formulado perdió 27 % en 48 h a pH 9,5 (Atwood y otros 1987).",
  "Not with lime: alkaline breakdown.": "No con cal: degradación alcalina.",
  "Dimethoate is not mixed with sulfur or alkaline materials.":
    "El dimetoato no se mezcla con azufre ni productos alcalinos.",
  "Octaborate takes the tank to pH 8 and above: acidify after it and before this active. Boric acid does not.":
    "El octaborato lleva el tanque a pH 8 o más: acidificar después de él y antes de esta materia activa. El ácido bórico no.",
  "Borate with calcium feeds can cloud: jar test.":
    "Borato con abonos de calcio puede enturbiar: prueba del frasco.",
  "Boron turns the bag film to rubber: never together, and rinse boron out before using bags.":
    "El boro vuelve goma la película de las bolsas: nunca juntos, y enjuagar el boro antes de usar bolsas.",
  "Mineral oil with sulfur burns leaves: never in one tank, and weeks apart.":
    "El aceite mineral con azufre quema hojas: nunca en el mismo tanque, y con semanas entremedias.",
  "Phosphorous acid products acidify and set copper free: days apart, follow both labels.":
    "Los productos de ácido fosforoso acidifican y liberan cobre: días entremedias, seguir ambas etiquetas.",
  "Calcium feed with a sulfate drops gypsum in the tank: never together, not in a premix either.":
    "Abono de calcio con un sulfato suelta yeso en el tanque: nunca juntos, tampoco en premezcla.",
  "Calcium feed with phosphates drops calcium phosphate: never together.":
    "Abono de calcio con fosfatos suelta fosfato cálcico: nunca juntos.",
  "Iron with phosphate drops iron phosphate.": "El hierro con fosfato suelta fosfato de hierro.",
  "Magnesium feed with ammonium phosphate can drop struvite, above pH 7 most.":
    "Abono de magnesio con fosfato amónico puede soltar estruvita, sobre todo a más de pH 7.",
  "A strong premix of ammonium sulfate with potassium salts can crystallise potassium sulfate. Add both to the main tank.":
    "Una premezcla fuerte de sulfato amónico con sales potásicas puede cristalizar sulfato potásico. Añadir ambos al tanque principal.",
  "Metal salts undo the conditioning: last in, if at all. The shares computed here are without them.":
    "Las sales metálicas deshacen el acondicionado: al final, si acaso. Las partes calculadas aquí son sin ellas.",
  "Glyphosate in galvanised or bare steel gives off hydrogen, which can ignite: plastic, stainless or lined tanks only.":
    "El glifosato en acero galvanizado o desnudo suelta hidrógeno, que puede arder: solo tanques de plástico, inoxidable o revestidos.",
  "Ammonium salts attack brass, copper and zinc and rust steel: rinse the whole machine the same day.":
    "Las sales de amonio atacan latón, cobre y cinc y oxidan el acero: enjuagar toda la máquina el mismo día.",
  "Acid strips zinc and gives hydrogen: plastic gear for concentrates, rinse after.":
    "El ácido quita el cinc y da hidrógeno: equipo de plástico para concentrados, enjuagar después.",
  "Copper sulfate eats steel and aluminium: plastic tank only.":
    "El sulfato de cobre ataca acero y aluminio: solo tanque de plástico.",
  "Ammonium and urea sprays can scorch crop leaves in hot, dry or bright weather. The limit of 28 °C is ours.":
    "Aplicar amonio o urea puede quemar hojas del cultivo con calor, sequedad o sol fuerte. El límite de 28 °C es nuestro.",
  "Montana: above 400 mg/L hardness with iron many herbicides lose control. The iron limit of 0.3 mg/L is ours.":
    "Montana: a más de 400 mg/L de dureza con hierro muchos herbicidas pierden control. El límite de 0,3 mg/L de hierro es nuestro.",
  "A turf guide treats water from 200 mg/L hardness.":
    "Una guía de césped trata el agua desde 200 mg/L de dureza.",
  "Other lines for the same water: 150, 300, 350 and 700 mg/L.":
    "Otros límites para la misma agua: 150, 300, 350 y 700 mg/L.",
  "2,4-D choline at a third of the rate lost control evenly with hardness: 20 points or more at 1,000 mg/L.":
    "2,4-D colina a un tercio de dosis perdió control uniformemente con la dureza: 20 puntos o más a 1000 mg/L.",
  "A Victorian guide lists MCPA among what mud weakens. The limit of 20 NTU is ours.":
    "Una guía de Victoria cuenta MCPA entre lo que el lodo debilita. El límite de 20 NTU es nuestro.",
  "A Victorian guide says triazines break down faster in salty water: spray at once. The limit of 3,000 µS/cm is ours.":
    "Una guía de Victoria dice que las triazinas se degradan más deprisa en agua salina: aplicar enseguida. El límite de 3000 µS/cm es nuestro.",
  "No trial was found for it.": "No se halló ensayo de ello.",
  "Bulletins print half-lives of 12 h at pH 6 and 48 min at pH 9 for dimethoate. Do not rely on them.":
    "Hay boletines con vidas medias del dimetoato de 12 h a pH 6 y 48 min a pH 9. No fiarse de ellas.",
  "Registration data: 68 days at pH 7, 4.4 days at pH 9.":
    "Datos de registro: 68 días a pH 7, 4,4 días a pH 9.",
  "In very hard water wetting and emulsifying suffer: jar test. The limit of 700 mg/L is ours.":
    "En agua muy dura sufren el mojado y la emulsión: prueba del frasco. El límite de 700 mg/L es nuestro.",
  "Below 500 µS/cm a water is probably good for spraying.":
    "Un agua de menos de 500 µS/cm es probablemente buena para aplicar.",
  "As a dilute spray at pH 9.5 phosmet lost 70 % in 48 h; twenty times stronger it lost 10 %.":
    "En caldo diluido a pH 9,5 el fosmet perdió 70 % en 48 h; veinte veces más fuerte, 10 %.",
  "Products dissolve and emulsify best between about 10 and 27 °C.":
    "Los productos se disuelven y emulsionan mejor entre unos 10 y 27 °C.",
  "In the tank it pairs with calcium only weakly; on the leaf gypsum takes the calcium out as the drop dries.":
    "En el tanque se une al calcio solo débilmente; en hoja el yeso quita el calcio al secarse la gota.",
  "It also aids uptake in some weeds. No equilibrium shows that.":
    "También ayuda a la absorción en algunas malas hierbas. Ningún equilibrio lo muestra.",
  "Dissolving cools the water: slow below about 8 °C.":
    "Al disolverse enfría el agua: lento por debajo de unos 8 °C.",
  "It does not take calcium out: calcium nitrate stays dissolved.":
    "No quita el calcio: el nitrato cálcico sigue disuelto.",
  "Urea takes no part in the chemistry of the tank and is left out of it.":
    "La urea no interviene en la química del tanque y se deja fuera.",
  "In one hard water it raised glyphosate potency 1.64 times, ammonium sulfate 2.52 times.":
    "En un agua dura aumentó la potencia del glifosato 1,64 veces, el sulfato amónico 2,52 veces.",
  "Which hydrate is in the bag makes 9 % difference in strength.":
    "Según el hidrato de la bolsa, la fuerza cambia un 9 %.",
  "It lets protons go when it takes calcium: the tank turns more acid.":
    "Suelta protones al tomar calcio: el tanque se vuelve más ácido.",
  "Dissolves slowly in cold water. Below about pH 2.5 the free acid falls out.":
    "Se disuelve despacio en agua fría. Por debajo de pH 2,5 aprox. precipita el ácido libre.",
  "Sold solutions often hold 1 to 2 % free caustic, which is not counted here.":
    "Las soluciones comerciales suelen llevar 1 a 2 % de sosa libre, que aquí no se cuenta.",
  "The calcium salt may fall out near equal moles in hard water above pH 6: jar test.":
    "Cerca de moles iguales la sal cálcica puede precipitar en agua dura de más de pH 6: prueba del frasco.",
  "No iron constants are published for it here: its hold on iron is not known.":
    "Aquí no hay constantes de hierro publicadas: no se conoce cuánto lo retiene.",
  "It turns slowly to simpler phosphates in stored solution, faster in acid.":
    "En solución almacenada pasa despacio a fosfatos más simples, más deprisa en ácido.",
  "Under-dosed it clouds hard water. No iron constants: its hold on iron is not known.":
    "Con poca dosis enturbia el agua dura. Sin constantes de hierro: no se conoce cuánto lo retiene.",
  "Above about pH 6 it clouds hard water with calcium phosphate.":
    "A más de pH 6 aprox. enturbia el agua dura con fosfato cálcico.",
  "Low pH alone did not raise glyphosate activity; about 1 % v/v of product was needed in 1,000 mg/L water.":
    "Un pH bajo no aumentó por sí solo la actividad del glifosato. En agua de 1000 mg/L hizo falta un 1 % v/v de producto.",
  "No spray trial was found.": "No se halló ensayo de aplicación.",
  "At spray pH it holds calcium poorly; it helps with iron and in alkaline water.":
    "Al pH del caldo retiene mal el calcio; ayuda con hierro y en agua alcalina.",
  "A weak binder of calcium: an acidifier only.": "Retiene débilmente el calcio: solo acidificante.",
  "Clouds hard water above about pH 6.5; with magnesium above pH 7 struvite may fall out.":
    "Enturbia el agua dura a más de pH 6,5 aprox.; con magnesio a más de pH 7 puede precipitar estruvita.",
  "Salts out in store near −10 °C.": "Cristaliza en almacén cerca de −10 °C.",
  "Salts out in store near −2 °C.": "Cristaliza en almacén cerca de −2 °C.",
  "It does not take calcium out: calcium chloride stays dissolved and wet on the leaf.":
    "No quita el calcio: el cloruro cálcico sigue disuelto y húmedo en la hoja.",
  "Chloride pits stainless steel: rinse the same day.":
    "El cloruro pica el acero inoxidable: enjuagar el mismo día.",
  "It binds calcium as citric acid does, without the acid.":
    "Retiene el calcio como el ácido cítrico, sin el ácido.",
  "It turns bicarbonate into carbon dioxide: the tank foams. Vent it.":
    "Convierte el bicarbonato en dióxido de carbono: el tanque espuma. Ventearlo.",
  "Low pH alone did not raise glyphosate activity.":
    "Un pH bajo no aumentó por sí solo la actividad del glifosato.",
  "A weak binder of calcium: an acidifier first of all.":
    "Retiene débilmente el calcio: ante todo acidificante.",
  "Strong solutions hold part of it as chains that split slowly.":
    "Las soluciones fuertes tienen parte en cadenas que se rompen despacio.",
  "Acid part of several acidifying wetting agents. What the wetting agent does is not computed.":
    "Parte ácida de varios mojantes acidificantes. No se calcula lo que hace el mojante.",
  "Calcium tartrate may fall out within hours. It is not computed: jar test.":
    "El tartrato cálcico puede precipitar en horas. No se calcula: prueba del frasco.",
  "Part of it stands as lactones, which open slowly; all is counted as acid.":
    "Parte está como lactonas, que se abren despacio; todo se cuenta como ácido.",
  "Clouds hard water above about pH 6.": "Enturbia el agua dura a más de pH 6 aprox.",
  "Tried in the field beside ammonium sulfate with glyphosate, dicamba and clethodim.":
    "Probado en campo junto al sulfato amónico con glifosato, dicamba y cletodim.",
  "Clouds hard water; how much calcium stays dissolved is a matter of time.":
    "Enturbia el agua dura; cuánto calcio sigue disuelto es cuestión de tiempo.",
  "Holds dicamba sprays above pH 5. It is no hardness conditioner: it makes scale.":
    "Mantiene caldos de dicamba a más de pH 5. No acondiciona la dureza: forma incrustación.",
  "Lowered dicamba volatility at 0.05 mol/L. It is not sold against hardness.":
    "Redujo la volatilidad de dicamba a 0,05 mol/L. No se vende contra la dureza.",
  "Holds iron(III) up to about pH 9.": "Retiene hierro(III) hasta pH 9 aprox.",
  "Weak for calcium and magnesium; useful for iron, copper and zinc.":
    "Débil con calcio y magnesio; útil con hierro, cobre y cinc.",
  "Sold solutions hold fumarate, aspartate and malate besides, which are not counted.":
    "Las soluciones comerciales llevan además fumarato, aspartato y malato, que no se cuentan.",
  "Sold acid holds a few per cent of other acids from making it, which are not counted.":
    "El ácido comercial lleva un pequeño porcentaje de otros ácidos de su fabricación, que no se cuentan.",
  "A little keeps scale from forming well below equal moles. No equilibrium shows that.":
    "Un poco impide la incrustación muy por debajo de moles iguales. Ningún equilibrio lo muestra.",
  "Grades differ in acid and sodium: measure the pH of the tank.":
    "Las calidades difieren en ácido y sodio: medir el pH del tanque.",
  "No constants with iron are carried: its hold on iron is not known here.":
    "Aquí no hay constantes con hierro: no se conoce cuánto lo retiene.",
  "A scale inhibitor. No metal constants exist: only its acid is computed.":
    "Inhibidor de incrustación. No existen constantes de metal: solo se calcula su ácido.",
  "The product is a mixture of chains that bind more strongly. It is counted as a ring: an indication.":
    "El producto es una mezcla de cadenas que retienen más. Se cuenta como anillo: una indicación.",
  "Sticks as a lump when tipped into still water.": "Se apelmaza si se echa en agua quieta.",
  "Counted by units of acrylate, with constants near half neutralisation: an indication.":
    "Contado por unidades de acrilato, con constantes cerca de media neutralización: una indicación.",
  "With about as much calcium as it has charge it gels: jar test.":
    "Con más o menos tanto calcio como carga tiene, gelifica: prueba del frasco.",
  "North Dakota cation formula: a minimum to cancel the water, found on plants, not an equilibrium.":
    "Fórmula de cationes de Dakota del Norte: un mínimo para anular el agua, hallado en plantas, no un equilibrio.",
  "It has no bicarbonate term.": "No tiene término de bicarbonato.",
  "Not known here: {ions}; the dose is a least one.": "No se conoce aquí: {ions}; la dosis es mínima.",
  "The formula's own extension authors advise 4 to 6 lb per 100 US gal, whatever the formula says.":
    "Los asesores que hicieron la fórmula aconsejan 4 a 6 lb por 100 gal US, diga ella lo que diga.",
};
