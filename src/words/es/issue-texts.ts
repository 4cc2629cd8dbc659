import type { Phrases } from "../phrases.ts";

/** What is said of slips and gaps that the main flow meets. */
export const ISSUE_TEXTS: Phrases = {
  "A number belongs here.": "Aquí va un número.",
  "Write a number, or leave the entry out.": "Escriba un número u omita el dato.",
  "This is not a number.": "Esto no es un número.",
  "Write a number such as 12.5.": "Escriba un número como 12,5.",
  "This number can be read two ways, a thousand apart.":
    "Este número se lee de dos formas, mil veces distintas.",
  "Write it without the mark.": "Escríbalo sin el signo.",
  "This must be more than zero.": "Debe ser más que cero.",
  "Check the sign and the number.": "Revise el signo y el número.",
  "This cannot be less than zero.": "No puede ser menos que cero.",
  "Take the minus away, or check the report.": "Quite el menos o revise el informe.",
  "The range runs from high to low.": "El margen va de mayor a menor.",
  "Write the lower end first.": "Escriba primero el extremo menor.",
  "A quantity is missing.": "Falta una cantidad.",
  "Write a number with its unit.": "Escriba un número con su unidad.",
  "The unit is missing.": "Falta la unidad.",
  "Write the unit behind the number.": "Escriba la unidad tras el número.",
  "This unit is not known.": "Esta unidad no se conoce.",
  "Use one of the units named.": "Use una de las unidades citadas.",
  "This unit measures something else.": "Esta unidad mide otra cosa.",
  "The water has no name.": "El agua no tiene nombre.",
  "Name it, so that the card can say which water it is for.":
    "Póngale nombre, para que la hoja diga de qué agua es.",
  "No reading was given.": "No se dio ninguna medida.",
  "Add at least the hardness.": "Añada al menos la dureza.",
  "No water has this value.": "Ningún agua tiene este valor.",
  "No water has less than nothing of this.": "Ningún agua tiene menos que nada de esto.",
  "This value is far from what waters have.": "Este valor está lejos de lo que tienen las aguas.",
  "Check the number and its unit.": "Revise el número y su unidad.",
  "Hardness and the sum of calcium and magnesium do not fit.": "La dureza no cuadra con calcio más magnesio.",
  "Nothing measured tells the hardness.": "Ninguna medida dice la dureza.",
  "Iron was not measured.": "No se midió el hierro.",
  "If the water stains or tastes of metal, have the iron tested.":
    "Si el agua mancha o sabe a metal, haga analizar el hierro.",
  "The report does not say what form the iron is in.": "El informe no dice en qué forma está el hierro.",
  "Ask the laboratory whether it is total or dissolved, and whether it is iron(II).":
    "Pregunte al laboratorio si es total o disuelto, y si es hierro(II).",
  "Cations and anions differ by more than the published limit.":
    "Cationes y aniones difieren más que el límite publicado.",
  "The conductivity does not fit the ions.": "La conductividad no cuadra con los iones.",
  "Some readings were not measured and are left out of the composition.":
    "Algunas medidas faltan y quedan fuera de la composición.",
  "Not measured and left out: they are usually small beside calcium and magnesium.":
    "No medidos y omitidos: suelen ser poco junto a calcio y magnesio.",
  "An ion was added so that the charges balance.": "Se añadió un ion para equilibrar las cargas.",
  "This key is needed.": "Este dato hace falta.",
  "This list has no entry.": "Esta lista está vacía.",
  "Add at least one entry.": "Añada al menos una entrada.",
  "No active of this name is in the data.": "Ninguna materia activa de ese nombre en los datos.",
  "Use the ISO common name.": "Use el nombre ISO.",
  "Which salt or ester is not said, so its counter-ion is left out.":
    "No se dice la sal o el éster, así que se omite su contraión.",
  "Add the form from the label.": "Añada la forma de la etiqueta.",
  "The strength does not say what it counts; the usual basis of this active was taken.":
    "El contenido no dice su base; se tomó la usual de esta materia.",
  "Taken as acid equivalent, as labels of {active} usually count.":
    "Tomado como equivalente ácido, como suelen las etiquetas de {active}.",
  "Rate and strength do not fit: one counts volume, the other mass.":
    "Dosis y contenido no cuadran: uno cuenta volumen, otro masa.",
  "Use L/ha with g/L, or kg/ha with g/kg.": "L/ha con g/L, o kg/ha con g/kg.",
  "This formulation code is not known.": "Este código de formulación no se conoce.",
  "This is unlikely.": "Es poco probable.",
  "No sprayer or field has this.": "Ningún pulverizador ni campo tiene esto.",
  "The least dose is above the most.": "La dosis mínima supera la máxima.",
  "Swap the two, or check the label.": "Cámbielas o revise la etiqueta.",
  "The least water volume is above the planned one.": "El volumen mínimo supera el planeado.",
  "Swap the two, or leave the least one out.": "Cámbielas u omita el mínimo.",
  // What is said of a sheet in a PDF.
  "Read: the first {read} of {pages} pages. Open the others as a file of their own.":
    "Leídas: las primeras {read} de {pages} páginas. Abra las demás en un archivo aparte.",
  "Page {page} broke off and could not be read to the end.":
    "La página {page} se corta y no se pudo leer hasta el final.",
  "Pages {list} broke off and could not be read to the end.":
    "Las páginas {list} se cortan y no se pudieron leer hasta el final.",
  "Page {page} without text: a picture is not read.": "Página {page} sin texto: una imagen no se lee.",
  "Pages {list} without text: a picture is not read.": "Páginas {list} sin texto: una imagen no se lee.",
  "Not read: {count} filled-in form fields. Print the file to a PDF and open that.":
    "Sin leer: {count} campos de formulario rellenos. Imprima el archivo en PDF y abra ese.",
  "Some of its letters have no known meaning. Compare what was read with the sheet.":
    "Algunas letras son desconocidas. Compare lo leído con la hoja.",
};
