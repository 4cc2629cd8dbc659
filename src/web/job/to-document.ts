import { readNumberText } from "../../units/index.ts";
import type { ConditionerEntry, IngredientRow, OwnProductRow } from "./draft-conditioners.ts";
import type { HalfLifeRow, MixEntry, OwnActiveTyped } from "./draft-mix.ts";
import type { Draft, OtherWaterRow, ReadingRow, WaterTyped } from "./draft.ts";
import { quantityText, splitTyped, typedFirst } from "./typed.ts";

/** A JOB document as plain JSON. */
export type JobDocument = Readonly<Record<string, unknown>>;

/** The JOB document of a draft: what is blank is left out, what is typed is passed on as typed. */
export function documentOf(draft: Draft): JobDocument {
  const { otherWaters, conditioners, listsConditioners, partners, aim } = draft;
  const site = siteOf(draft.site);
  return {
    hardstand: 1,
    ...(draft.title.trim() === "" ? {} : { title: draft.title }),
    water: waterOf(draft.water),
    ...(otherWaters.length > 0 ? { "other waters": otherWaters.map(otherWater) } : {}),
    spray: sprayOf(draft.spray),
    mix: draft.mix.map(mixEntry),
    ...(listsConditioners ? { conditioners: conditioners.map(conditionerEntry) } : {}),
    ...(partners === null ? {} : { partners }),
    aim: filled({ "free share": aim.freeShare, confidence: aim.confidence, where: aim.where }, aim.rest),
    ...(Object.keys(site).length > 0 ? { site } : {}),
    // A whole part of a file that is no such part stands until a person takes it away.
    ...draft.rest,
  };
}

function waterOf({ source, sampled, method, ironForm, readings, rest }: WaterTyped): JobDocument {
  const said = { source, sampled, method, "iron form": ironForm, readings: readings.map(readingOf) };
  return filled(said, rest);
}

function readingOf({ parameter, value, rest }: ReadingRow): JobDocument {
  const { text, unit } = splitTyped(typedFirst(value));
  return { value: text, ...filled({ parameter, unit }, rest) };
}

function otherWater(row: OtherWaterRow): JobDocument {
  return { ...waterOf(row), ...filled({ price: quantityText(row.price) }) };
}

function sprayOf(spray: Draft["spray"]): JobDocument {
  return filled(
    {
      volume: quantityText(spray.volume),
      "least volume": quantityText(spray.leastVolume),
      tank: quantityText(spray.tank),
      area: quantityText(spray.area),
      temperature: quantityText(spray.temperature),
      humidity: quantityText(spray.humidity),
      "holding time": quantityText(spray.holdingTime),
      jar: quantityText(spray.jar),
      "season area": quantityText(spray.seasonArea),
      "dead volume": quantityText(spray.deadVolume),
      hopper: quantityText(spray.hopper),
      output: quantityText(spray.output),
      "leaf calcium": quantityText(spray.leafCalcium),
      coverage: quantityText(spray.coverage),
      aerated: yesOrNo(spray.aerated),
    },
    spray.rest,
  );
}

function mixEntry(row: MixEntry): JobDocument {
  const common = {
    form: row.form,
    strength: quantityText(row.strength),
    rate: quantityText(row.rate),
    name: row.name,
  };
  // The key alone says that it is a feed.
  if (row.kind === "feed") return { feed: row.feed, ...filled(common, row.rest) };
  return filled(
    {
      active: row.own === null ? row.active : ownActive(row.own),
      ...common,
      formulation: row.formulation,
      price: quantityText(row.price),
      "most rate": quantityText(row.mostRate),
    },
    row.rest,
  );
}

function ownActive({ name, molarMass, pKa, affinityClass, halfLives, rest }: OwnActiveTyped): JobDocument {
  return filled(
    {
      name,
      "molar mass": quantityText(molarMass),
      pKa: constantsOf(pKa),
      "affinity class": affinityClass,
      "half-lives": halfLives.length === 0 ? "" : halfLives.map(halfLife),
    },
    rest,
  );
}

function halfLife({ pH, halfLife: half, temperature, rest }: HalfLifeRow): JobDocument {
  return filled(
    { pH: numberOf(pH) ?? pH, "half-life": quantityText(half), temperature: quantityText(temperature) },
    rest,
  );
}

/** Acid constants parted by spaces, semicolons or a comma with a space; what is no number is passed on as typed. */
function constantsOf(text: string): string | number | readonly number[] {
  const parts = text
    .trim()
    .split(/[;\s]+|,\s+/)
    .filter((part) => part !== "");
  const numbers = parts.map(numberOf).filter((number) => number !== null);
  if (parts.length === 0 || numbers.length < parts.length) return text.trim();
  return numbers.length === 1 ? (numbers[0] ?? text) : numbers;
}

/** A number small enough that a mark in it can only be the decimal one; null when it is none. */
function numberOf(text: string): number | null {
  const read = readNumberText(text, "", { decimal: text.includes(",") ? "," : "." });
  return text.trim() !== "" && read.ok ? read.value : null;
}

function conditionerEntry(row: ConditionerEntry): JobDocument {
  const common = {
    price: quantityText(row.price),
    "least dose": quantityText(row.leastDose),
    "most dose": quantityText(row.mostDose),
  };
  return row.kind === "chemistry"
    ? filled({ chemistry: row.chemistry, form: row.form, ...common }, row.rest)
    : filled({ ...labelOf(row), ...common }, row.rest);
}

/** What a label discloses. Where it leaves something open, rows nobody filled in say nothing. */
function labelOf(row: OwnProductRow): JobDocument {
  const isOpen = row.leavesOpen || row.undisclosed.trim() !== "";
  const composition = row.composition.map(ingredient);
  const saysNothing = composition.every((entry) => Object.keys(entry).length === 0);
  return {
    product: row.product,
    composition: isOpen && saysNothing && row.product !== "" ? "" : composition,
    density: quantityText(row.density),
    undisclosed: row.undisclosed.trim() === "" ? row.leavesOpen || "" : row.undisclosed,
  };
}

function ingredient({ chemistry, amount, rest }: IngredientRow): JobDocument {
  return filled({ chemistry, amount: quantityText(amount) }, rest);
}

function siteOf({
  volatilityRules,
  airTemperature,
  waterTreatments,
  metals,
  rest,
}: Draft["site"]): JobDocument {
  return filled(
    {
      "volatility rules": yesOrNo(volatilityRules),
      "air temperature": quantityText(airTemperature),
      "water treatments": waterTreatments,
      metals,
    },
    rest,
  );
}

/** A yes or a no as the document has it; null where neither was said. */
function yesOrNo(said: string): boolean | null {
  return said === "" ? null : said === "yes";
}

/** What somebody filled in, and the rest of the file beneath it. */
function filled(entries: Readonly<Record<string, unknown>>, rest: JobDocument = {}): JobDocument {
  const said = Object.entries(entries).filter(
    ([key, value]) => value !== null && value !== "" && !(key in rest && isEmptyList(value)),
  );
  return { ...rest, ...Object.fromEntries(said) };
}

function isEmptyList(value: unknown): boolean {
  return Array.isArray(value) && value.length === 0;
}
