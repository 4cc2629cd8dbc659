import { ENGLISH, sayIn } from "../words/index.ts";
import type { Language } from "../words/index.ts";

/** A shade as the engine names it: how, and which hue. */
const SHADE = /^(almost black,|almost clear, a touch of|dark|grey|strong|pale|bright|light) (.+)$/;
/** A cloud as the engine names it: how thick, and of what. */
const CLOUD = /^(a faint haze of|cloudy with|thick with) (.+)$/;

/** A colour of the engine, such as "dark violet-red", in the language. */
export function colourText(words: string, language: Language): string {
  const say = sayIn(language);
  const [, how, name] = language.phrases.has(words) ? [] : (SHADE.exec(words) ?? []);
  if (how === undefined || name === undefined) return language.page(words);
  const hue = language.page(name);
  switch (how) {
    case "almost black,":
      return say("almost black, {hue}", { hue });
    case "almost clear, a touch of":
      return say("almost clear, a touch of {hue}", { hue });
    case "dark":
      return say("dark {hue}", { hue });
    case "grey":
      return say("grey {hue}", { hue });
    case "strong":
      return say("strong {hue}", { hue });
    case "pale":
      return say("pale {hue}", { hue });
    case "bright":
      return say("bright {hue}", { hue });
    default:
      return say("light {hue}", { hue });
  }
}

/** A cloudiness of the engine, such as "cloudy with rust", in the language. */
export function cloudText(words: string, language: Language): string {
  const say = sayIn(language);
  const [, how, what] = CLOUD.exec(words) ?? [];
  if (how === undefined || what === undefined) return language.page(words);
  const solid = what
    .split(" and ")
    .map(language.phrases.name)
    .reduce((one, other) => say("{one} and {other}", { one, other }));
  if (how === "a faint haze of") return say("a faint haze of {solid}", { solid });
  return how === "cloudy with" ? say("cloudy with {solid}", { solid }) : say("thick with {solid}", { solid });
}

/** What goes into a flask, as the engine says it: "0.8 mL of iron(III) chloride hexahydrate, 1 % w/v". */
export function addedText(added: string, language: Language = ENGLISH): string {
  const say = sayIn(language);
  const [, pH, acid, strength, about] =
    /^pH set to (\S+) with (.+), (\S+ mol\/L) \(about (.+)\)$/.exec(added) ?? [];
  if (pH !== undefined && acid !== undefined && strength !== undefined && about !== undefined)
    return say("pH set to {pH} with {what}, {strength} (about {amount})", {
      pH: numberText(pH, language),
      what: language.phrases.name(acid),
      strength: numberText(strength, language),
      amount: numberText(about, language),
    });
  const [, before, medium] = /^(.+) \(stock in (.+)\)$/.exec(added) ?? [];
  if (before !== undefined && medium !== undefined)
    return say("{added} (stock in {medium})", {
      added: addedText(before, language),
      medium: substanceText(medium, language),
    });
  const [, amount, substance] = /^([\d.]+ \S+) of (.+)$/.exec(added) ?? [];
  return amount === undefined || substance === undefined
    ? substanceText(added, language)
    : say("{amount} of {substance}", {
        amount: numberText(amount, language),
        substance: substanceText(substance, language),
      });
}

/** A substance with its strength or amount behind it or before: "hydrochloric acid, 1 mol/L". */
export function substanceText(text: string, language: Language): string {
  const { phrases } = language;
  if (phrases.has(text)) return phrases.name(text);
  const [, strength, of] = /^([\d.]+ mol\/L) (.+)$/.exec(text) ?? [];
  if (strength !== undefined && of !== undefined)
    return sayIn(language)("{strength} {substance}", {
      strength: numberText(strength, language),
      substance: substanceText(of, language),
    });
  const at = text.lastIndexOf(", ");
  return at < 1
    ? numberText(text, language)
    : `${substanceText(text.slice(0, at), language)}, ${numberText(text.slice(at + 2), language)}`;
}

/** A number with its unit, with the decimal sign of the language; a name that nobody knows stays. */
function numberText(text: string, { figures }: Language): string {
  return /^\d/.test(text) ? text.replace(/(\d)\.(?=\d)/, `$1${figures.decimal}`) : text;
}

/** A remark on how the flasks compare. Names of flasks may hold a full stop, so no template of the phrases meets it. */
export function comparisonText(remark: string, language: Language = ENGLISH): string {
  const [, one, other, rest] =
    /^“(.+)” and “(.+)” end with the same things in them, so in the same colour\. (.+)$/.exec(remark) ?? [];
  if (one === undefined || other === undefined || rest === undefined)
    return language.phrases.say(remark).text;
  const same = sayIn(language)(
    "“{one}” and “{other}” end with the same things in them, so in the same colour.",
    { one: language.page(one), other: language.page(other) },
  );
  return `${same} ${language.phrases.say(rest).text}`;
}
