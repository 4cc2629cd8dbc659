import { blank, blankDraft, blankProduct, newKey } from "./draft.ts";
import type { ConditionerRow, Draft, MixRow, Origin, ReadingRow, Typed, WrittenRow } from "./draft.ts";
import { splitTyped } from "./to-document.ts";

type Loose = Readonly<Record<string, unknown>>;

/**
 * The form of a JOB document that a file holds. Nothing is judged here: what cannot be read is shown as typed, and the
 * engine says what is wrong with it.
 */
export function draftOf(document: unknown, origin: Origin): Draft {
  const job = record(document);
  const water = record(job["water"]);
  const spray = record(job["spray"]);
  const aim = record(job["aim"]);
  const empty = blankDraft();
  const conditioners = job["conditioners"];
  const isFeed = (entry: unknown): boolean => "feed" in record(entry);
  const isOwn = (entry: unknown): boolean => "product" in record(entry);
  const mix = list(job["mix"])
    .filter((entry) => !isFeed(entry))
    .map(productRow);
  return {
    origin,
    title: text(job["title"]),
    water: {
      source: text(water["source"]),
      sampled: text(water["sampled"]),
      method: text(water["method"]),
      readings: list(water["readings"]).map(readingRow),
    },
    spray: {
      volume: quantity(spray["volume"], empty.spray.volume.unit),
      leastVolume: quantity(spray["least volume"], empty.spray.leastVolume.unit),
      tank: quantity(spray["tank"], empty.spray.tank.unit),
      area: quantity(spray["area"], empty.spray.area.unit),
      temperature: quantity(spray["temperature"], empty.spray.temperature.unit),
      humidity: quantity(spray["humidity"], empty.spray.humidity.unit),
      holdingTime: quantity(spray["holding time"], empty.spray.holdingTime.unit),
      jar: quantity(spray["jar"], empty.spray.jar.unit),
    },
    mix: mix.length > 0 ? mix : [blankProduct()],
    feeds: list(job["mix"]).filter(isFeed).map(writtenRow),
    listsConditioners: conditioners !== undefined,
    conditioners: list(conditioners)
      .filter((entry) => !isOwn(entry))
      .map(conditionerRow),
    ownProducts: list(conditioners).filter(isOwn).map(writtenRow),
    aim: {
      freeShare: text(aim["free share"]),
      confidence: text(aim["confidence"]),
      where: text(aim["where"]),
    },
    volatilityRules: yesNo(record(job["site"])["volatility rules"]),
  };
}

function readingRow(entry: unknown): ReadingRow {
  const reading = record(entry);
  return {
    key: newKey(),
    parameter: text(reading["parameter"]),
    value: { text: text(reading["value"]), unit: text(reading["unit"]) },
  };
}

function productRow(entry: unknown): MixRow {
  const product = record(entry);
  const empty = blankProduct();
  const { active } = product;
  const own = typeof active === "object" && active !== null ? record(active) : null;
  return {
    key: newKey(),
    active: own === null ? text(active) : "",
    own,
    form: text(product["form"]),
    strength: quantity(product["strength"], empty.strength.unit),
    rate: quantity(product["rate"], empty.rate.unit),
    formulation: text(product["formulation"]),
    name: text(product["name"]),
    price: quantity(product["price"], empty.price.unit),
  };
}

function conditionerRow(entry: unknown): ConditionerRow {
  const conditioner = record(entry);
  return {
    key: newKey(),
    chemistry: text(conditioner["chemistry"]),
    form: text(conditioner["form"]),
    price: quantity(conditioner["price"], "/kg"),
    leastDose: text(conditioner["least dose"]),
    mostDose: text(conditioner["most dose"]),
  };
}

function writtenRow(entry: unknown): WrittenRow {
  return { key: newKey(), document: record(entry) };
}

function quantity(value: unknown, usualUnit: string): Typed {
  const typed = text(value);
  return typed === "" ? blank(usualUnit) : splitTyped({ text: typed, unit: "" });
}

function record(value: unknown): Loose {
  return typeof value === "object" && value !== null && !Array.isArray(value) ? (value as Loose) : {};
}

function list(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

function text(value: unknown): string {
  if (typeof value === "string") return value;
  return typeof value === "number" || typeof value === "boolean" ? String(value) : "";
}

function yesNo(value: unknown): string {
  if (value === true || value === "yes") return "yes";
  return value === false || value === "no" ? "no" : "";
}
