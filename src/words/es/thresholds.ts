import type { Phrases } from "../phrases.ts";

/** From where on a water harms an active, as published. */
export const THRESHOLDS: Phrases = {
  "From about 150 to 350 mg/L as CaCO3 at low rates, 700 at high ones; the computed loss depends on rate, volume and pH.":
    "Desde unos 150 a 350 mg/L como CaCO3 a dosis bajas, 700 a altas. La pérdida calculada depende de dosis, volumen y pH.",
  "Iron(III) is bound one to one: each mg/L can hold about 3 mg/L of glyphosate.":
    "El hierro(III) se liga uno a uno: cada mg/L puede retener unos 3 mg/L de glifosato.",
  "Significant loss with NaHCO3 up to 600 mg/L in pot trials.":
    "Pérdida significativa con NaHCO3 hasta 600 mg/L en macetas.",
  "Control at pH 9 below that at pH 4 (6 points or more, with dicamba).":
    "Control a pH 9 por debajo del de pH 4 (6 puntos o más, con dicamba).",
  "Sodium above about 300 mg/L.": "Sodio por encima de unos 300 mg/L.",
  "Visibly muddy water.": "Agua visiblemente turbia.",
  "Linear, about 20 points less control at 1000 mg/L as CaCO3.":
    "Lineal, unos 20 puntos menos de control a 1000 mg/L como CaCO3.",
  "Each mg/L of iron can hold at most 3.2 mg/L of the acid, and above pH 5 iron goes to rust first.":
    "Cada mg/L de hierro retiene como mucho 3,2 mg/L del ácido. Por encima de pH 5 pasa antes a óxido.",
  "8-17 points less at pH 9 than pH 4.": "8 a 17 puntos menos a pH 9 que a pH 4.",
  "pH 4 was best.": "pH 4 fue lo mejor.",
  "Control falls from about 390-420 mg/L as CaCO3; near useless above 600.":
    "El control baja desde unos 390 a 420 mg/L como CaCO3; casi inútil por encima de 600.",
  "Iron throws it out, manganese feeds antagonise.":
    "El hierro lo precipita, los abonos de manganeso son antagonistas.",
  "500 mg/L HCO3; ammonium sulfate only partly corrects.":
    "500 mg/L HCO3; el sulfato amónico solo corrige en parte.",
  "Ca and Mg salts precipitate more readily; no hydrolysis.":
    "Las sales de Ca y Mg precipitan más; sin hidrólisis.",
  "Below about pH 3 the free acid (311 mg/L) drops out of the amine solution.":
    "Por debajo de pH 3 aprox., el ácido libre (311 mg/L) precipita de la solución de amina.",
  "No antagonism at 600 mg/L as CaCO3.": "Sin antagonismo a 600 mg/L como CaCO3.",
  "Hydrolysis takes days.": "La hidrólisis tarda días.",
  "Sources disagree: one states no antagonism, handbooks warn of calcium and magnesium salts falling out.":
    "Las fuentes discrepan: una no ve antagonismo, los manuales avisan de sales de calcio y magnesio que precipitan.",
  "Sources disagree.": "Las fuentes discrepan.",
  "Acid precipitates below about pH 3.5 in strong solutions.":
    "El ácido precipita por debajo de pH 3,5 aprox. en soluciones fuertes.",
  "Water-soluble auxin premixes antagonised at 600 mg/L as CaCO3.":
    "Mezclas de auxinas solubles antagonizadas a 600 mg/L como CaCO3.",
  "Free acid precipitates below about pH 3.5.": "El ácido libre precipita por debajo de pH 3,5 aprox.",
  "400-800 mg/L as CaCO3 lowered control with glyphosate; alone, cations did not move horseweed control.":
    "400 a 800 mg/L como CaCO3 bajaron el control con glifosato; solo, los cationes no afectaron al control de coniza.",
  "pH 9 below pH 4 in mixture with glyphosate.": "pH 9 peor que pH 4 en mezcla con glifosato.",
  "Below pH 5 volatilisation as the free acid rises: do not acidify.":
    "Por debajo de pH 5 sube la volatilización como ácido libre: no acidificar.",
  "Listed among affected weak acids.": "Citado entre los ácidos débiles afectados.",
  "Listed among affected weak acids; no number found.":
    "Citado entre los ácidos débiles afectados; no se halló cifra.",
  "Free acid 500 mg/L can precipitate below pH 3-4.":
    "El ácido libre, 500 mg/L, puede precipitar por debajo de pH 3 a 4.",
  "Calcium sulfate water did not reduce efficacy.": "El agua con sulfato cálcico no redujo la eficacia.",
  "From about 500 mg/L of bicarbonate, with sodium; 1 % ammonium sulfate cures it.":
    "Desde unos 500 mg/L de bicarbonato, con sodio; 1 % de sulfato amónico lo remedia.",
  "Through bicarbonate and sodium rather than pH itself.":
    "Por el bicarbonato y el sodio más que por el pH mismo.",
  "Acid-catalysed degradation; keep above pH 5 and do not store.":
    "Degradación catalizada por ácido; mantener por encima de pH 5 y no guardar.",
  "Sodium salts.": "Sales de sodio.",
  "From about 500 mg/L of bicarbonate, with sodium.": "Desde unos 500 mg/L de bicarbonato, con sodio.",
  "Via bicarbonate.": "Por el bicarbonato.",
  "Half-life about 9 d at pH 5.": "Semivida de unos 9 días a pH 5.",
  "Half-life 50 d at pH 5, faster below; solubility falls.":
    "Semivida de 50 días a pH 5, menor por debajo; baja la solubilidad.",
  "Half-life under a day at pH 5.": "Semivida de menos de un día a pH 5.",
  "0-620 mg/L as CaCO3 made no difference.": "0 a 620 mg/L como CaCO3 no cambiaron nada.",
  "pH 5.2-9.0 fine if sprayed the same day.": "pH 5,2 a 9,0 vale si se aplica el mismo día.",
  "At pH 4 it does not dissolve: up to 56 % less control than at pH 7.7.":
    "A pH 4 no se disuelve: hasta un 56 % menos de control que a pH 7,7.",
  "Half-life 19 h at pH 8, about 12 h at pH 9.": "Semivida de 19 h a pH 8, unas 12 h a pH 9.",
  "Best at pH 5-7.": "Mejor entre pH 5 y 7.",
  "3 h to 1 day at pH 9, by source; days to weeks at pH 7.":
    "3 h a 1 día a pH 9, según la fuente; días a semanas a pH 7.",
  "Dissolved: half-life 10 h at pH 7, 12 minutes at pH 9; as a suspension far longer.":
    "Disuelto: semivida de 10 h a pH 7, 12 minutos a pH 9; mucho más en suspensión.",
  "Buffer to 5-5.5.": "Tamponar entre 5 y 5,5.",
  "Dissolved: half-life 8 to 12 h at pH 7, 10 minutes at pH 8, 2 to 4 minutes at pH 9.":
    "Disuelto: semivida 8-12 h a pH 7, 10 minutos a pH 8, 2-4 minutos a pH 9.",
  "pH 5-6 recommended.": "pH 5 a 6 recomendado.",
  "Buffering or lime lowers injury.": "Un tampón o cal reduce el daño.",
  "Acid sets copper ions free, which burn leaves; labels often ask for pH 6 to 6.5 at least.":
    "El ácido libera iones de cobre, que queman hojas; las etiquetas suelen pedir pH 6 a 6,5 como mínimo.",
  "Listed with the weak acids, above 150 mg/L as CaCO3.":
    "Citado con los ácidos débiles, por encima de 150 mg/L como CaCO3.",
  "Antagonised by Ca and Mg at 500-1000 mg/L; ammonium sulfate by the cation equation restored it.":
    "Antagonizado por Ca y Mg, de 500 a 1000 mg/L; el sulfato amónico según la fórmula de cationes lo recuperó.",
  "A weak acid; no threshold was found.": "Un ácido débil; no se halló umbral.",
  "Acid form 430 mg/L precipitates in strongly acid mixes.":
    "La forma ácida, 430 mg/L, precipita en mezclas muy ácidas.",
  "Its salts behave like other weak acids; no threshold was found.":
    "Sus sales se comportan como otros ácidos débiles; no se halló umbral.",
  "An ester is not affected, as shown for 2,4-D esters.":
    "Un éster no se ve afectado, como se mostró con ésteres de 2,4-D.",
  "Half-life about 12 h at pH 9.": "Semivida de unas 12 h a pH 9.",
  "An ester: the emulsion is the question, not the binding.": "Un éster: importa la emulsión, no la unión.",
  "Its ester takes days to hydrolyse at pH 9.": "Su éster tarda días en hidrolizarse a pH 9.",
  "Octanoate half-life about 1.7 d at pH 9.": "Octanoato: semivida de unos 1,7 días a pH 9.",
  "Ester half-life about a day at pH 9.": "Éster: semivida de un día aprox. a pH 9.",
  "Half-life below a day at pH 9.": "Semivida de menos de un día a pH 9.",
  "Calcium sulfate water had no effect.": "El agua con sulfato cálcico no tuvo efecto.",
  "Sodium bicarbonate trials showed loss only for sethoxydim and clethodim.":
    "Los ensayos con bicarbonato sódico solo mostraron pérdida con setoxidim y cletodim.",
  "Half-life of hours to a day at pH 9.": "Semivida de horas a un día a pH 9.",
  "Half-life about 7 h at pH 9.": "Semivida de unas 7 h a pH 9.",
  "Calcium or magnesium carbonate at 0.5 g/L halved its potency in pots.":
    "Carbonato de calcio o magnesio a 0,5 g/L redujo a la mitad su potencia en macetas.",
  "Iron carbonate at 0.5 g/L: relative potency 0.47 in pots.":
    "Carbonato de hierro a 0,5 g/L: potencia relativa 0,47 en macetas.",
  "Sodium or potassium carbonate at 0.5 g/L: relative potency about 0.67 in pots.":
    "Carbonato de sodio o potasio a 0,5 g/L: potencia relativa de 0,67 aprox. en macetas.",
  "By analogy with imazethapyr, not measured.": "Por analogía con imazetapir, no medido.",
  "Loss with up to 600 mg/L of sodium bicarbonate; ammonium nitrate recovers it.":
    "Pérdida con hasta 600 mg/L de bicarbonato sódico; el nitrato amónico la recupera.",
  "Poorly soluble below its pKa and hydrolyses on standing; raising the pH dissolved it and raised activity.":
    "Poco soluble por debajo de su pKa y se hidroliza en reposo. Subir el pH lo disolvió y aumentó la eficacia.",
  "Half-life about 7 h at pH 9: spray the same day, do not raise pH.":
    "Semivida de unas 7 h a pH 9: aplicar el mismo día, no subir el pH.",
  "Half-life 4.6 d at pH 5.": "Semivida de 4,6 días a pH 5.",
  "The ester hydrolyses slowly at pH 9.": "El éster se hidroliza despacio a pH 9.",
  "Half-life 4.3 days at pH 5, shorter below.": "Semivida de 4,3 días a pH 5, menor por debajo.",
  "18-28 points less at 1000 mg/L; authors advise below 200 mg/L.":
    "18 a 28 puntos menos a 1000 mg/L; los autores aconsejan menos de 200 mg/L.",
  "pH 6.5 better than {pH}.": "pH 6,5 mejor que {pH}.",
  "Antagonised by Ca and Mg at 500-1000 mg/L; ammonium sulfate restored it.":
    "Antagonizado por Ca y Mg, de 500 a 1000 mg/L; el sulfato amónico lo recuperó.",
  "Non-ionic at spray pH; hard water can flocculate some suspensions.":
    "No iónico al pH del caldo; el agua dura puede flocular algunas suspensiones.",
  "Emulsion quality only.": "Solo la calidad de la emulsión.",
  "Held strongly by soil.": "Muy retenido por el suelo.",
  "A permanent cation: no complexes.": "Catión permanente: sin complejos.",
  "Up to about pH 9.": "Hasta pH 9 aprox.",
  "Any visible clay: 100 mg/L of montmorillonite can hold about 8 mg/L.":
    "Cualquier arcilla visible: 100 mg/L de montmorillonita pueden retener unos 8 mg/L.",
  "Readily hydrolysed in alkaline solution (no rate given).":
    "Se hidroliza fácilmente en solución alcalina (sin velocidad dada).",
  "Any visible clay.": "Cualquier arcilla visible.",
  "Half-life about 15-20 min at pH 9, one day at pH 7: buffer to 5-7 and spray at once.":
    "Semivida de 15-20 min a pH 9, un día a pH 7. Tamponar entre 5 y 7 y aplicar enseguida.",
  "Iron catalyses decomposition in concentrates.": "El hierro cataliza la descomposición en concentrados.",
  "Half-life of days at pH 9; the printed 48 minutes is not borne out.":
    "Semivida de días a pH 9; los 48 minutos impresos no se confirman.",
  "Weeks even at pH 9; formulated spray lost nothing measurable in 48 h.":
    "Semanas incluso a pH 9; el caldo formulado no perdió nada medible en 48 h.",
  "18 d at pH 9; fine within a spray day.": "18 días a pH 9; vale dentro del día de aplicación.",
  "37 d at pH 9.": "37 días a pH 9.",
  "About 9 d at pH 9; stable at pH 5-7.": "Unos 9 días a pH 9; estable entre pH 5 y 7.",
  "Stable at pH 5-7.": "Estable entre pH 5 y 7.",
  "Held very strongly by soil.": "Muy fuertemente retenido por el suelo.",
  "2.5 d at pH 9.": "2,5 días a pH 9.",
  "200 d at pH 9.": "200 días a pH 9.",
  "Below pH 6 more of it dissolves: efficacy may fall.":
    "Por debajo de pH 6 se disuelve más: la eficacia puede bajar.",
  "Over 200 d at pH 9.": "Más de 200 días a pH 9.",
  "Stable for a spray day at pH 9.": "Estable un día de aplicación a pH 9.",
  "Slow at pH 9 and 45 C only.": "Lento, solo a pH 9 y 45 °C.",
  "Iron and copper trade places with its metals: it discolours.":
    "Hierro y cobre ocupan el lugar de sus metales: cambia de color.",
  "About 1 d at any pH; use within the day.": "Alrededor de 1 día a cualquier pH; usar en el día.",
  "Least stable in acid water; keep at pH 6-8.": "Lo menos estable en agua ácida; mantener entre pH 6 y 8.",
  "No hydrolysis at pH 7 or below; weeks at pH 9.": "Sin hidrólisis a pH 7 o menos; semanas a pH 9.",
  "Half-life about 20 minutes at pH 9, days at pH 7.": "Semivida de unos 20 minutos a pH 9, días a pH 7.",
  "About 17 h at pH 9 (forms carbendazim, still active).":
    "Unas 17 h a pH 9 (forma carbendazima, aún activa).",
  "Chemically stable at spray pH; aluminium hydroxide can flocculate when the solution is neutralised.":
    "Químicamente estable al pH del caldo; el hidróxido de aluminio puede flocular al neutralizar la solución.",
  "Solution is itself acid, pH 3-4.": "La solución ya es ácida, pH 3 a 4.",
  "Through alkalinity only.": "Solo por la alcalinidad.",
  "300 against 50 mg/L of alkalinity lowered branching in bedding plants.":
    "300 frente a 50 mg/L de alcalinidad redujeron la ramificación en plantas de parterre.",
  "Ethylene release begins above about pH 3.5; half-life of days at pH 7 and above.":
    "El etileno empieza a liberarse por encima de pH 3,5 aprox.; semivida de días a pH 7 o más.",
  "Cation exchange on clay.": "Intercambio de cationes en la arcilla.",
};
