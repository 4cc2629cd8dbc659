import type { Added, Cloudiness, FlaskState, SameContents, Stock, StockMedium } from "../agronomy/index.ts";
import type { ColourLook, Grey } from "../colour/index.ts";
import { ENGLISH, sayIn } from "../words/index.ts";
import type { Language } from "../words/index.ts";

/** A liquid in words: its colour, and how cloudy it is unless it is clear. */
export function liquidText(
  { colour, cloudiness }: Pick<FlaskState, "colour" | "cloudiness">,
  language: Language = ENGLISH,
): string {
  const seen = colourText(colour.look, language);
  return cloudiness.kind === "clear" ? seen : `${seen}, ${cloudText(cloudiness, language)}`;
}

/** A colour in words, such as "dark violet-red". */
export function colourText(look: ColourLook, language: Language = ENGLISH): string {
  const say = sayIn(language);
  if (look.kind === "grey") return greyText(look.grey, language);
  const hue = language.page(look.hue);
  switch (look.tone) {
    case "almost black":
      return say("almost black, {hue}", { hue });
    case "dark":
      return say("dark {hue}", { hue });
    case "grey":
      return say("grey {hue}", { hue });
    case "strong":
      return say("strong {hue}", { hue });
    case "plain":
      return hue;
    case "light":
      return say("light {hue}", { hue });
    case "pale":
      return say("pale {hue}", { hue });
    case "bright":
      return say("bright {hue}", { hue });
    case "almost clear":
      return say("almost clear, a touch of {hue}", { hue });
  }
}

function greyText(grey: Grey, language: Language): string {
  return grey === "no colour" ? sayIn(language)("clear, no colour") : language.page(grey);
}

/** Cloudiness in words, such as "cloudy with rust". */
export function cloudText(cloudiness: Cloudiness, language: Language = ENGLISH): string {
  const say = sayIn(language);
  if (cloudiness.kind === "clear") return say("clear");
  const solid = cloudiness.solids
    .map(language.phrases.name)
    .reduce((one, other) => say("{one} and {other}", { one, other }));
  switch (cloudiness.kind) {
    case "faint":
      return say("a faint haze of {solid}", { solid });
    case "cloudy":
      return say("cloudy with {solid}", { solid });
    case "thick":
      return say("thick with {solid}", { solid });
  }
}

/** What went into a flask, in words: "0.8 mL of iron(III) chloride hexahydrate, 1 % w/v". */
export function addedText(added: Added, language: Language = ENGLISH): string {
  const say = sayIn(language);
  const { name } = language.phrases;
  switch (added.kind) {
    case "water":
      return `${name(added.water)}, ${numberText(`${added.volume_mL} mL`, language)}`;
    case "measured": {
      const { amount, medium } = added;
      const measured = say("{amount} of {substance}", {
        amount: numberText(amount, language),
        substance: withStrength(added, language),
      });
      return medium === null
        ? measured
        : say("{added} (stock in {medium})", { added: measured, medium: name(medium.substance) });
    }
    case "pH set":
      return say("pH set to {pH} with {what}, {strength} (about {amount})", {
        pH: numberText(`${added.pH}`, language),
        what: name(added.substance),
        strength: numberText(`${added.molPerL} mol/L`, language),
        amount: numberText(`${twoFigures(added.about_mL)} mL`, language),
      });
  }
}

/** A rough amount as people write it: "0.50", "12", "120". */
function twoFigures(amount: number): string {
  const figures = amount.toPrecision(2);
  return Number(figures) < 100 ? figures : String(Number(figures));
}

/** A substance and how strong it is, in words: "hydrochloric acid, 1 mol/L". */
export function withStrength(
  { substance, strength }: Pick<Stock, "substance"> & { readonly strength: string | null },
  language: Language,
): string {
  const name = language.phrases.name(substance);
  return strength === null ? name : `${name}, ${numberText(strength, language)}`;
}

/** What a stock is made up with, in words: "0.1 mol/L hydrochloric acid". */
export function mediumText(medium: StockMedium | null, language: Language): string {
  const say = sayIn(language);
  return medium === null
    ? say("deionised water")
    : say("{strength} {substance}", {
        strength: numberText(`${medium.molPerL} mol/L`, language),
        substance: language.phrases.name(medium.substance),
      });
}

/** A number with its unit, with the decimal sign of the language. */
function numberText(text: string, { figures }: Language): string {
  return text.replace(/(\d)\.(?=\d)/, `$1${figures.decimal}`);
}

/** Says that two flasks end with the same things in them. */
export function sameContentsText({ a, b }: SameContents, language: Language = ENGLISH): string {
  const say = sayIn(language);
  const same = say("“{one}” and “{other}” end with the same things in them, so in the same colour.", {
    one: language.page(a),
    other: language.page(b),
  });
  return `${same} ${say("Equilibrium has no memory; if they differ on the bench, time or a solid is the cause.")}`;
}
