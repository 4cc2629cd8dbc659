import type { Phrases } from "../phrases.ts";

/** What was taken for granted about a water, and why an entry of a sheet was not taken. */
export const ASSUMPTIONS: Phrases = {
  "Below the detection limit: half the limit is taken, with nothing to the whole limit as range.":
    "Bajo el límite de detección: se toma la mitad, de cero al límite como margen.",
  "The top step of the test: at least this much is there, perhaps twice as much.":
    "Último escalón de la prueba: al menos esto, quizá el doble.",
  "The test gives a step: its middle is taken, with the step as range.":
    "La prueba da un escalón: se toma su centro, con el escalón como margen.",
  "Only the hardness was measured: calcium and magnesium share it as in the waters of the data.":
    "Solo se midió la dureza: calcio y magnesio la reparten como en las aguas de los datos.",
  "Magnesium was not measured: it stands to calcium as in the waters of the data.":
    "Magnesio no medido: relación al calcio como en las aguas de los datos.",
  "Calcium was not measured: it stands to magnesium as in the waters of the data.":
    "Calcio no medido: relación al magnesio como en las aguas de los datos.",
  "No hardness was measured: calcium and magnesium share an estimate of it.":
    "Dureza no medida: calcio y magnesio reparten una estimación.",
  "No hardness was measured: it is estimated from the conductivity, very roughly. A strip would tell.":
    "Dureza no medida: estimada muy a grandes rasgos por la conductividad. Una tira lo diría.",
  "No hardness was measured: it is estimated from the alkalinity, very roughly. A strip would tell.":
    "Dureza no medida: estimada muy a grandes rasgos por la alcalinidad. Una tira lo diría.",
  "Alkalinity was not measured: it is what is left of the cations when chloride, sulfate and nitrate are taken off.":
    "Alcalinidad no medida: resto de los cationes quitando cloruro, sulfato y nitrato.",
  "Alkalinity was not measured: it stands to the hardness as in the waters of the data, which differ widely.":
    "Alcalinidad no medida: relación a la dureza como en las aguas de los datos, muy diversas.",
  "The water has no alkalinity to tell its carbon dioxide: a usual amount is taken.":
    "Sin alcalinidad no se sabe el dióxido de carbono: se toma una cantidad usual.",
  "Potassium was not measured: it stands to sodium as in the waters of the data.":
    "Potasio no medido: relación al sodio como en las aguas de los datos.",
  "Sodium was not measured: it is what the anions need beyond the other cations, potassium counted with it.":
    "Sodio no medido: lo que piden los aniones además de los otros cationes, potasio incluido.",
  "Sodium was not measured: it is taken so that the ions conduct as much as was measured.":
    "Sodio no medido: elegido para que los iones conduzcan lo medido.",
  "Sodium was not measured: it stands to the hardness as in the waters of the data, potassium counted with it.":
    "Sodio no medido: relación a la dureza como en las aguas de los datos, potasio incluido.",
  "Not measured: it is what the cations need beyond the alkalinity and the anions that were measured.":
    "No medido: lo que piden los cationes además de la alcalinidad y los aniones medidos.",
  "Cations exceed anions: this much chloride was added so that the charges balance.":
    "Más cationes que aniones: se añadió este cloruro para equilibrar.",
  "Anions exceed cations: this much sodium was added so that the charges balance.":
    "Más aniones que cationes: se añadió este sodio para equilibrar.",
  "The report does not say what form the iron is in: all of it is taken as dissolved iron(III), which binds most.":
    "Forma del hierro no dicha: todo se toma como hierro(III) disuelto, que es el que más retiene.",
  "Iron was not measured: the trace usual in clear water is taken. A bore with iron can hold far more.":
    "Hierro no medido: se toma la traza usual en agua clara. Un pozo con hierro puede tener mucho más.",
  "Conductivity was not measured: it follows from the dissolved solids by the usual factor.":
    "Conductividad no medida: sale de los sólidos disueltos con el factor usual.",
  "No temperature was given: that of a mild spraying day is taken.":
    "Temperatura no dada: se toma la de un día templado.",
  "pH was not measured: that of the waters of the data is taken.":
    "pH no medido: se toma el de las aguas de los datos.",
  "The sheet gives no value.": "La hoja no da valor.",
  "Several figures stand side by side and nothing says which is the reading.":
    "Hay varias cifras seguidas y nada dice cuál es la medida.",
  "The sheet gives no unit for this.": "La hoja no da unidad.",
  "No reading of this name takes part in the answer.": "Ninguna medida de ese nombre entra en la respuesta.",
  "The sheet gives this twice; the other one was taken.": "La hoja lo da dos veces; se tomó el otro.",
};
