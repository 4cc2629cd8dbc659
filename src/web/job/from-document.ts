import { blankConditioner, blankIngredient, blankOwnProduct } from "./draft-conditioners.ts";
import type { ConditionerEntry, IngredientRow } from "./draft-conditioners.ts";
import { blankFeed, blankHalfLife, blankOwnActive, blankProduct } from "./draft-mix.ts";
import type { HalfLifeRow, MixEntry, OwnActiveTyped } from "./draft-mix.ts";
import { blankDraft, blankOtherWater } from "./draft.ts";
import type { Draft, Origin, OtherWaterRow, ReadingRow, WaterTyped } from "./draft.ts";
import { isRecord, Taker } from "./taker.ts";
import { newKey } from "./typed.ts";
import type { Rest } from "./typed.ts";

/** Version of the job format this page writes. */
const VERSION = 1;

/**
 * The form of a JOB document that a file holds. Nothing is judged here: what cannot be read is shown as typed, and the
 * engine says what is wrong with it. What the form has no box for is kept as it is.
 */
export function draftOf(document: unknown, origin: Origin): Draft {
  const job = new Taker(document);
  const listsConditioners = job.has("conditioners");
  const mix = job.rows("mix").map(mixEntry);
  const draft = {
    origin,
    title: job.text("title"),
    water: waterOf(job.inner("water")),
    otherWaters: job.rows("other waters").map(otherWater),
    spray: sprayOf(job.inner("spray")),
    mix: mix.length > 0 ? mix : [blankProduct()],
    listsConditioners,
    conditioners: job.rows("conditioners").map(conditionerEntry),
    partners: job.words("partners"),
    aim: aimOf(job.inner("aim")),
    site: siteOf(job.inner("site")),
  };
  const { hardstand, ...rest } = job.rest();
  return { ...draft, rest: hardstand === VERSION || hardstand === undefined ? rest : { ...rest, hardstand } };
}

function waterOf(water: Taker): WaterTyped {
  return {
    source: water.text("source"),
    sampled: water.text("sampled"),
    method: water.text("method"),
    ironForm: water.text("iron form"),
    readings: water.rows("readings").map(readingRow),
    rest: water.rest(),
  };
}

function readingRow(entry: Rest): ReadingRow {
  const reading = new Taker(entry);
  return {
    key: newKey(),
    parameter: reading.text("parameter"),
    value: { text: reading.text("value"), unit: reading.text("unit") },
    rest: reading.rest(),
  };
}

function otherWater(entry: Rest): OtherWaterRow {
  const water = new Taker(entry);
  const price = water.quantity("price", blankOtherWater().price.unit);
  return { key: newKey(), price, ...waterOf(water) };
}

function sprayOf(spray: Taker): Draft["spray"] {
  const usual = blankDraft().spray;
  return {
    volume: spray.quantity("volume", usual.volume.unit),
    leastVolume: spray.quantity("least volume", usual.leastVolume.unit),
    tank: spray.quantity("tank", usual.tank.unit),
    area: spray.quantity("area", usual.area.unit),
    temperature: spray.quantity("temperature", usual.temperature.unit),
    humidity: spray.quantity("humidity", usual.humidity.unit),
    holdingTime: spray.quantity("holding time", usual.holdingTime.unit),
    jar: spray.quantity("jar", usual.jar.unit),
    seasonArea: spray.quantity("season area", usual.seasonArea.unit),
    deadVolume: spray.quantity("dead volume", usual.deadVolume.unit),
    hopper: spray.quantity("hopper", usual.hopper.unit),
    output: spray.quantity("output", usual.output.unit),
    leafCalcium: spray.quantity("leaf calcium", usual.leafCalcium.unit),
    coverage: spray.quantity("coverage", usual.coverage.unit),
    aerated: spray.yesNo("aerated"),
    rest: spray.rest(),
  };
}

function mixEntry(entry: Rest): MixEntry {
  const row = new Taker(entry);
  const usual = row.has("feed") ? blankFeed() : blankProduct();
  const common = {
    form: row.text("form"),
    strength: row.quantity("strength", usual.strength.unit),
    rate: row.quantity("rate", usual.rate.unit),
    name: row.text("name"),
  };
  if (usual.kind === "feed") return { ...usual, ...common, feed: row.text("feed"), rest: row.rest() };
  const own = isRecord(entry["active"]) ? ownActive(row.inner("active")) : null;
  return {
    ...usual,
    ...common,
    active: own === null ? row.text("active") : "",
    own,
    formulation: row.text("formulation"),
    price: row.quantity("price", usual.price.unit),
    mostRate: row.quantity("most rate", usual.mostRate.unit),
    rest: row.rest(),
  };
}

function ownActive(active: Taker): OwnActiveTyped {
  const usual = blankOwnActive();
  const constants = active.list("pKa");
  return {
    name: active.text("name"),
    molarMass: active.quantity("molar mass", usual.molarMass.unit),
    pKa: constants.length > 0 ? constants.map(String).join("; ") : active.text("pKa"),
    affinityClass: active.text("affinity class"),
    halfLives: active.rows("half-lives").map(halfLife),
    rest: active.rest(),
  };
}

function halfLife(entry: Rest): HalfLifeRow {
  const row = new Taker(entry);
  const usual = blankHalfLife();
  return {
    key: usual.key,
    pH: row.text("pH"),
    halfLife: row.quantity("half-life", usual.halfLife.unit),
    temperature: row.quantity("temperature", usual.temperature.unit),
    rest: row.rest(),
  };
}

function conditionerEntry(entry: Rest): ConditionerEntry {
  const row = new Taker(entry);
  const isOwn = !row.has("chemistry") && (row.has("product") || row.has("composition"));
  const usual = isOwn ? blankOwnProduct() : blankConditioner();
  const common = {
    price: row.quantity("price", usual.price.unit),
    leastDose: row.quantity("least dose", usual.leastDose.unit),
    mostDose: row.quantity("most dose", usual.mostDose.unit),
  };
  if (usual.kind === "chemistry")
    return {
      ...usual,
      ...common,
      chemistry: row.text("chemistry"),
      form: row.text("form"),
      rest: row.rest(),
    };
  return {
    ...usual,
    ...common,
    product: row.text("product"),
    composition: row.rows("composition").map(ingredient),
    density: row.quantity("density", usual.density.unit),
    leavesOpen: row.yesNo("undisclosed") === "yes",
    undisclosed: row.text("undisclosed"),
    rest: row.rest(),
  };
}

function ingredient(entry: Rest): IngredientRow {
  const row = new Taker(entry);
  const chemistry = row.text("chemistry");
  const unit = row.text("unit");
  const amount = row.quantity("amount", unit === "" ? blankIngredient().amount.unit : unit);
  return {
    key: newKey(),
    chemistry,
    amount: amount.unit === "" ? { ...amount, unit } : amount,
    rest: row.rest(),
  };
}

function aimOf(aim: Taker): Draft["aim"] {
  return {
    freeShare: aim.text("free share"),
    confidence: aim.text("confidence"),
    where: aim.text("where"),
    rest: aim.rest(),
  };
}

function siteOf(site: Taker): Draft["site"] {
  const usual = blankDraft().site;
  return {
    volatilityRules: site.yesNo("volatility rules"),
    airTemperature: site.quantity("air temperature", usual.airTemperature.unit),
    waterTreatments: site.words("water treatments"),
    metals: site.words("metals"),
    rest: site.rest(),
  };
}
