import type { Phrases } from "../phrases.ts";

/** The panel for a laboratory's sheet. */
export const SHEET: Phrases = {
  "{name} is {size} MB; a sheet is at most 5 MB.": "{name} ocupa {size} MB; una hoja tiene como mucho 5 MB.",
  "{name} is locked with a password. Open it, print it to a PDF without one, and take that.":
    "{name} está protegido con contraseña. Ábralo, imprímalo en PDF sin ella y use ese.",
  "{name} is a broken PDF. Fetch it anew, or open it, copy its text and take that.":
    "{name} es un PDF dañado. Pídalo de nuevo, o ábralo, copie su texto y úselo.",
  "{name} holds pictures without text. Ask the laboratory for a file, or type the readings in.":
    "{name} contiene imágenes sin texto. Pida un archivo al laboratorio, o escriba las mediciones.",
  "{name} could not be read here. Open it, copy its text and paste it here.":
    "{name} no se pudo leer aquí. Ábralo, copie su texto y péguelo aquí.",
  "{name} is not text. Save it as CSV, or copy its cells and paste them.":
    "{name} no es texto. Guárdelo como CSV, o copie sus celdas y péguelas.",
  "{name} holds no filled cell.": "{name} no tiene celdas llenas.",
  "Read: table “{table}”. Not read: {others}.": "Leído: tabla «{table}». Sin leer: {others}.",
  "{name} is no spreadsheet of the kind .xlsx. Save it as .xlsx or CSV.":
    "{name} no es una tabla .xlsx. Guárdelo como .xlsx o CSV.",
  "Water test taken from the sheet": "Análisis de agua tomado de la hoja",
  "Take over 1 reading": "Tomar 1 medida",
  "Take over {count} readings": "Tomar {count} medidas",
  "They take the place of the water test on the form; undo brings it back.":
    "Sustituyen el análisis del formulario; deshacer lo recupera.",
  "1 still open: it is left out.": "1 aún abierta: se omite.",
  "{count} still open: they are left out.": "{count} aún abiertas: se omiten.",
  "On the sheet,": "En la hoja,",
  "Line {number}:": "Línea {number}:",
  "What line {number} means": "Qué significa la línea {number}",
  "As it stands, to mend on the form": "Como está, para corregir en el formulario",
  "To ask": "Por aclarar",
  Understood: "Entendido",
  "Given twice, the other one is taken": "Dos veces, se toma el otro",
  "No value, so not measured": "Sin valor, así que no medido",
  "Not used, takes no part in the answer": "Sin uso, no entra en la respuesta",
  "Text or table of the sheet": "Texto o tabla de la hoja",
  "Paste lines or cells, or drop a file here. Nothing on it is left out unsaid.":
    "Pegue líneas o celdas, o suelte un archivo. Nada se omite sin decirlo.",
  "Open a sheet file": "Abrir una hoja",
  "Sheet file": "Archivo de la hoja",
  "No reading found. Expected lines such as “Calcium 92 mg/L”.":
    "No se halló ninguna medida. Se esperan líneas como «Calcio 92 mg/L».",
  "Decimal mark of the sheet": "Signo decimal de la hoja",
  "How does this sheet write one and a half?": "¿Cómo escribe esta hoja uno y medio?",
  "Unit of concentrations that stand without one": "Unidad de las concentraciones sin ella",
  "Sample, one of {count}": "Muestra, una de {count}",
  "Sample {number}": "Muestra {number}",
  "1 line without a reading": "1 línea sin medida",
  "{count} lines without a reading": "{count} líneas sin medida",
  "Carbonate hardness is the alkalinity counted in hardness units on most sheets, part of the hardness on some.":
    "La dureza carbonatada suele ser la alcalinidad en grados de dureza; a veces, parte de la dureza.",
  "Nitrate and nitrite are reported together; nitrite is usually a small part.":
    "Nitrato y nitrito van juntos; el nitrito suele ser poco.",
  "This conductivity is not at 25 °C. At 20 °C it reads about a tenth lower.":
    "Esta conductividad no es a 25 °C. A 20 °C es más o menos una décima parte menor.",
};
