import type { Phrases } from "../phrases.ts";

/** What is said of numbers, units and quantities. */
export const ISSUES_UNITS: Phrases = {
  "The decimal mark differs from the one in use.": "El signo decimal no es el que se usa.",
  "Use the same decimal mark throughout.": "Use siempre el mismo signo decimal.",
  "The marks between groups of digits do not fit.": "Los signos entre grupos de cifras no cuadran.",
  "Write the number without marks between groups.": "Escriba el número sin signos entre grupos.",
  "This number is too large to compute with.": "Este número es demasiado grande para calcular.",
  "Check the power of ten.": "Revise la potencia de diez.",
  "Not detected, but without the detection limit.": "No detectado, pero sin límite de detección.",
  "Write the limit with a < in front.": "Escriba el límite con < delante.",
  "One number is needed here, not a range.": "Aquí hace falta un número, no un margen.",
  "Write the number to plan with.": "Escriba el número con que se planea.",
  "This is not a number followed by a unit.": "No es un número seguido de una unidad.",
  "Write the number first, then the unit.": "Escriba primero el número y luego la unidad.",
  "Check whether the entry is in the right place.": "Compruebe que el dato esté en su sitio.",
  "This unit has two meanings.": "Esta unidad tiene dos sentidos.",
  "Write which of the two is meant.": "Escriba cuál de los dos vale.",
  "This unit belongs to another method and cannot be converted.":
    "Esta unidad es de otro método y no se convierte.",
  "Ask the laboratory for one of the units named.": "Pida al laboratorio una de las unidades citadas.",
  "Milliequivalents need a charge, and that of this reading is not known.":
    "Los miliequivalentes piden una carga; la de esta medida no se conoce.",
  "Give the reading in mg/L.": "Dé la medida en mg/L.",
  "The unit does not say what it counts; the usual basis was taken.":
    "La unidad no dice su base; se tomó la usual.",
  "Write the basis, such as “mg/L as CaCO3”.": "Escriba la base, como «mg/L as CaCO3».",
  "This reading cannot be counted on that basis.": "Esta medida no se cuenta en esa base.",
  "Check what the report counts it as.": "Revise cómo la cuenta el informe.",
  "No reading of a water test has this name.": "Ninguna medida de un análisis de agua se llama así.",
  "Use one of the names known.": "Use uno de los nombres conocidos.",
  "A share lies between 0 and 1.": "Una parte está entre 0 y 1.",
  "Write 0.95 or 95 % for ninety-five in a hundred.": "Para 95 de cada 100 escriba 0,95 o 95 %.",
  "Copy the unit from the report.": "Copie la unidad del informe.",
  "Did you mean {near}?": "¿Quiso decir {near}?",
  "Did you mean “{near}”?": "¿Quiso decir «{near}»?",
  "Did you mean “{near}” or “{other}”?": "¿Quiso decir «{near}» o «{other}»?",
  "Did you mean “{near}” or “{other}” or “{third}”?": "¿Quiso decir «{near}», «{other}» o «{third}»?",
  'Taken as {unit} as {basis}. Write "as {other}" if the report counts it so.':
    "Tomado como {unit} as {basis}. Escriba «as {other}» si el informe cuenta así.",
  "Its charge depends on pH or on its form, so equivalents cannot be turned into moles.":
    "Su carga depende del pH o de su forma; los equivalentes no pasan a moles.",
  "mg/L or mmol/L": "mg/L o mmol/L",
  "A pen that shows ppm has turned conductivity into dissolved solids: give it as those.":
    "Un lápiz que marca ppm pasó la conductividad a sólidos disueltos: déla así.",
  "That is a unit of conductivity: give the reading as conductivity.":
    "Es una unidad de conductividad: dé la medida como conductividad.",
  "That is a unit of conductivity: was the line mistaken?":
    "Es una unidad de conductividad: ¿línea equivocada?",
  "That is a unit of hardness or alkalinity: was the line mistaken?":
    "Es una unidad de dureza o alcalinidad: ¿línea equivocada?",
  "That is a unit of temperature: was the line mistaken?": "Es una unidad de temperatura: ¿línea equivocada?",
  "That is a unit of another kind of reading: was the line mistaken?":
    "Es una unidad de otro tipo de medida: ¿línea equivocada?",
  "a number": "un número",
  "a number, a limit such as <0.05, a range such as 20–30, or nothing":
    "un número, un límite como <0,05, un margen como 20–30, o nada",
  "the detection limit, such as <0.05, or nothing if it was not measured":
    "el límite de detección, como <0,05, o nada si no se midió",
  "Look for the reporting limit on the report and write it with a < in front.":
    "Busque el límite en el informe y escríbalo con < delante.",
  "the lower end first": "primero el extremo menor",
  "a number such as 12.5": "un número como 12,5",
  "groups of three digits, such as 1 250": "grupos de tres cifras, como 1 250",
  "groups of three digits, such as 1,250.5": "grupos de tres cifras, como 1.250,5",
  "a smaller number": "un número menor",
  "{one} or {other}": "{one} o {other}",
  "Write it as {one} or {other}, whichever is meant.": "Escriba {one} o {other}, lo que corresponda.",
  "The mark used here is not the decimal mark the report uses.": "Este signo no es el decimal del informe.",
  "a number with {units}": "un número con {units}",
  "zero or more": "cero o más",
  "more than zero": "más que cero",
  "at most 1000 g/kg": "como mucho 1000 g/kg",
  "at most 2500 g/L": "como mucho 2500 g/L",
  "More than the product can hold: is the unit right?":
    "Más de lo que cabe en el producto: ¿es correcta la unidad?",
  "a price such as 0.55 /kg, 1.20 /L or 12 /20 kg": "un precio como 0,55 /kg, 1,20 /L o 12 /20 kg",
  "a share such as 0.95 or 95 %": "una parte como 0,95 o 95 %",
  "Did you mean {number} %?": "¿Quiso decir {number} %?",
  "FAU measures how much light is lost through the sample, NTU and FNU how much is scattered: there is no factor.":
    "FAU mide la luz perdida, NTU y FNU la dispersada: no hay factor.",
  "JTU is read by eye over a candle: there is no factor to NTU.":
    "JTU se lee a ojo sobre una vela: no hay factor a NTU.",
  "FTU names the standard suspension, not the method: ask whether the meter gives NTU, FNU or FAU.":
    "FTU nombra el patrón, no el método: pregunte si el aparato da NTU, FNU o FAU.",
  "Write the unit after the number.": "Escriba la unidad tras el número.",
  "Give the one number the card is to be written for.": "Dé el número para el que vale la hoja.",
  "% w/w (g per 100 g) or % w/v (g per 100 mL)": "% w/w (g en 100 g) o % w/v (g en 100 mL)",
  "% w/v or % v/v": "% w/v o % v/v",
  "The label says which.": "La etiqueta dice cuál.",
  "An ounce is a weight. Did you mean fl oz/ac?": "La onza es un peso. ¿Quiso decir fl oz/ac?",
  "{unit} is a unit of {quantity}.": "{unit} es unidad de: {quantity}.",
};
