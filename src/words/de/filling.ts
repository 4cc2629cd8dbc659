import type { Phrases } from "../phrases.ts";

/** Ways out by name, and the steps of filling. */
export const FILLING: Phrases = {
  "nothing added": "ohne Zusatz",
  "less water: {volume} L/ha": "weniger Wasser: {volume} L/ha",
  "let the iron settle": "das Eisen absetzen lassen",
  "other source: {source}": "anderes Wasser: {source}",
  "blend: {part} % {source}, {rest} % {other}": "Mischung: {part} % {source}, {rest} % {other}",
  "more {active}: {rate} {unit} in place of {planned} {sameUnit}":
    "mehr {active}: {rate} {unit} statt {planned} {sameUnit}",
  "other form: {active} as {form}": "andere Form: {active} als {form}",
  "Fill to half with clean water and start the agitator. Stop here.":
    "Tank zur Hälfte mit sauberem Wasser füllen und das Rührwerk einschalten. Hier anhalten.",
  "Add {product} in its bags and wait until the film is gone.":
    "{product} in den Beuteln zugeben und warten, bis die Folie aufgelöst ist.",
  "Add {product} slowly and let it dissolve or mix in fully.":
    "{product} langsam zugeben und ganz auflösen oder einmischen lassen.",
  "Add {product}.": "{product} zugeben.",
  "Add {product} slowly and wait until it is dissolved.":
    "{product} langsam zugeben und warten, bis es gelöst ist.",
  "Stir {product} into a slurry with water, add it and let it disperse.":
    "{product} mit Wasser zu einem Brei anrühren, zugeben und verteilen lassen.",
  "Add {product}, shaken, and let it spread.": "{product} gut geschüttelt zugeben und verteilen lassen.",
  "Add {product} slowly.": "{product} langsam zugeben.",
  "Add {product} slowly, agitator low.": "{product} langsam zugeben, Rührwerk auf kleiner Stufe.",
  "Add {product} where its label says.": "{product} dort zugeben, wo es das Etikett vorsieht.",
  "Stop: {product} is not made for mixing with water.":
    "Halt: {product} ist nicht zum Mischen mit Wasser bestimmt.",
  "Wait until every bag is gone, and look.": "Warten, bis jeder Beutel aufgelöst ist, und nachsehen.",
  "Wait until the conditioner is dissolved and mixed in. Measure the pH.":
    "Warten, bis der Wasserkonditionierer gelöst und eingemischt ist. Den pH-Wert messen.",
  "Fill up with water and keep the agitator on until the tank is empty.":
    "Mit Wasser auffüllen und das Rührwerk laufen lassen, bis der Tank leer ist.",
  "Spray or stir the water into a holding tank with air.":
    "Das Wasser mit Luft in einen Vorratsbehälter sprühen oder rühren.",
  "Let it stand overnight or longer.": "Über Nacht oder länger stehen lassen.",
  "Draw the clear water from above the sludge and test its iron before filling.":
    "Das klare Wasser über dem Schlamm abziehen und vor dem Füllen auf Eisen prüfen.",
  "Of every 100 L of water take {litres} L from {source} and {rest} L from {other}.":
    "Von je 100 L Wasser {litres} L aus {source} und {rest} L aus {other} nehmen.",
  "Start with {source}.": "Mit {source} beginnen.",
  "{active} as {form}": "{active} als {form}",
  "{product}, as acid equivalent,": "{product}, als Säureäquivalent,",
  "Fill with water from {source} alone, in place of {other}.":
    "Nur mit Wasser aus {source} füllen, statt aus {other}.",
};
