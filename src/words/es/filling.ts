import type { Phrases } from "../phrases.ts";

/** Ways out by name, and the steps of filling. */
export const FILLING: Phrases = {
  "nothing added": "sin añadir nada",
  "less water: {volume} L/ha": "menos agua: {volume} L/ha",
  "let the iron settle": "dejar que el hierro se deposite",
  "other source: {source}": "otra agua: {source}",
  "blend: {part} % {source}, {rest} % {other}": "mezcla: {part} % {source}, {rest} % {other}",
  "more {active}: {rate} {unit} in place of {planned} {sameUnit}":
    "más {active}: {rate} {unit} en lugar de {planned} {sameUnit}",
  "other form: {active} as {form}": "otra forma: {active} como {form}",
  "Fill to half with clean water and start the agitator. Stop here.":
    "Llenar hasta la mitad con agua limpia y poner en marcha el agitador. Parar aquí.",
  "Add {product} in its bags and wait until the film is gone.":
    "Añadir {product} en sus bolsas y esperar a que desaparezca la película.",
  "Add {product} slowly and let it dissolve or mix in fully.":
    "Añadir {product} despacio y dejar que se disuelva o mezcle del todo.",
  "Add {product}.": "Añadir {product}.",
  "Add {product} slowly and wait until it is dissolved.":
    "Añadir {product} despacio y esperar a que se disuelva.",
  "Stir {product} into a slurry with water, add it and let it disperse.":
    "Hacer una papilla de {product} con agua, añadirla y dejar que se disperse.",
  "Add {product}, shaken, and let it spread.": "Añadir {product} bien agitado y dejar que se reparta.",
  "Add {product} slowly.": "Añadir {product} despacio.",
  "Add {product} slowly, agitator low.": "Añadir {product} despacio, con el agitador bajo.",
  "Add {product} where its label says.": "Añadir {product} donde indique su etiqueta.",
  "Stop: {product} is not made for mixing with water.":
    "Alto: {product} no está hecho para mezclarse con agua.",
  "Wait until every bag is gone, and look.": "Esperar a que desaparezca cada bolsa, y mirar.",
  "Wait until the conditioner is dissolved and mixed in. Measure the pH.":
    "Esperar a que el acondicionador esté disuelto y mezclado. Medir el pH.",
  "Fill up with water and keep the agitator on until the tank is empty.":
    "Completar con agua y mantener el agitador hasta vaciar el tanque.",
  "Spray or stir the water into a holding tank with air.":
    "Rociar o remover el agua con aire en un depósito.",
  "Let it stand overnight or longer.": "Dejarla reposar una noche o más.",
  "Draw the clear water from above the sludge and test its iron before filling.":
    "Sacar el agua clara de encima del lodo y analizar su hierro antes de llenar.",
  "Of every 100 L of water take {litres} L from {source} and {rest} L from {other}.":
    "De cada 100 L de agua tomar {litres} L de {source} y {rest} L de {other}.",
  "Start with {source}.": "Empezar con {source}.",
  "{active} as {form}": "{active} como {form}",
  "{product}, as acid equivalent,": "{product}, como equivalente ácido,",
  "Fill with water from {source} alone, in place of {other}.":
    "Llenar solo con agua de {source}, en lugar de {other}.",
};
