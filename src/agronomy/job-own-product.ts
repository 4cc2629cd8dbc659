import { readQuantity } from "../units/index.ts";
import { findConditioner } from "./find.ts";
import { readDoseRange, readPriceOf } from "./job-doses.ts";
import { describe, isMissing, openFields, textOf } from "./job-fields.ts";
import type { Fields, IssueList } from "./job-fields.ts";
import { addUnknown } from "./job-unknown.ts";
import { ownProductId, recordOfProduct } from "./own-product.ts";
import type { Ingredient } from "./own-product.ts";
import type { TradeData } from "./trade-data.ts";
import type { ConditionerChoice } from "./types.ts";

/** Keys of a conditioner that is described by its label. */
export const OWN_PRODUCT_KEYS: readonly string[] = [
  "product",
  "composition",
  "density",
  "least dose",
  "most dose",
  "price",
  "undisclosed",
];

/** Densities a product for a spray tank can have [g/mL]. Common practice, no published source. */
const DENSITY_G_PER_ML = { least: 0.6, most: 2.2 };
/** Rounded label figures may add up to a little more than the whole [g/kg]. */
const WHOLE_G_PER_KG = 1005;

/** A conditioner as its label describes it: true when the entry names a product or a composition. */
export function isOwnProduct(entry: unknown): boolean {
  return (
    entry !== null &&
    typeof entry === "object" &&
    !("chemistry" in entry) &&
    ("product" in entry || "composition" in entry)
  );
}

/** Reads a conditioner by its label; null when it cannot be used, then with issues. */
export function readOwnProduct(
  entry: unknown,
  path: string,
  trade: TradeData,
  issues: IssueList,
): ConditionerChoice | null {
  const fields = openFields(entry, path, OWN_PRODUCT_KEYS, issues);
  if (fields === null) return null;
  const name = isMissing(fields, "product", "the name of the product", issues)
    ? null
    : textOf(fields, "product", issues);
  const density_gPerMl = readDensity(fields, issues);
  const undisclosed = readUndisclosed(fields, issues);
  const ingredients = readComposition(fields, density_gPerMl, undisclosed !== null, trade, issues);
  const form = { name: name ?? "the product", density_gPerMl };
  const price = readPriceOf(fields, form, issues);
  const doses = readDoseRange(fields, form, issues);
  if (name === null || ingredients === null) return null;
  const record =
    ingredients.length === 0
      ? null
      : recordOfProduct({
          name,
          ingredients,
          density_gPerMl: density_gPerMl ?? null,
          ...doses,
          undisclosed,
        });
  return { chemistry: ownProductId(name), form: null, price, ...doses, own: { name, record }, path };
}

/** g/mL; null when the product is weighed, undefined when what stands there cannot be used. */
function readDensity(fields: Fields, issues: IssueList): number | null | undefined {
  if (fields.get("density") === undefined) return null;
  const read = issues.take(readQuantity(fields.get("density"), "content", fields.at("density")));
  if (read === undefined) return undefined;
  const density_gPerMl = read.value / 1000;
  const { least, most } = DENSITY_G_PER_ML;
  if (read.per === "L" && density_gPerMl >= least && density_gPerMl <= most) return density_gPerMl;
  issues.add("density-unlikely", fields.at("density"), {
    received: describe(fields.get("density")),
    expected: `${String(least)} to ${String(most)} kg/L`,
  });
  return undefined;
}

/** What the label leaves open, in words; null when nothing is said to be. */
function readUndisclosed(fields: Fields, issues: IssueList): string | null {
  const value = fields.get("undisclosed");
  if (value === undefined || value === false) return null;
  return value === true ? "part of its composition" : textOf(fields, "undisclosed", issues);
}

/** The chemistries with their amounts; empty when the label discloses none, null when something cannot be used. */
function readComposition(
  fields: Fields,
  density_gPerMl: number | null | undefined,
  isOpen: boolean,
  trade: TradeData,
  issues: IssueList,
): readonly Ingredient[] | null {
  const list = fields.get("composition");
  const expected = "a list of chemistries with amounts, or undisclosed: true";
  if (list === undefined && isOpen) return [];
  if (isMissing(fields, "composition", expected, issues)) return null;
  if (!Array.isArray(list)) {
    issues.add("list-expected", fields.at("composition"), { received: describe(list), expected });
    return null;
  }
  if (list.length === 0 && !isOpen) {
    issues.add("list-empty", fields.at("composition"), { received: "an empty list", expected });
    return null;
  }
  const read = list.map((entry: unknown, i) =>
    readIngredient(entry, `${fields.at("composition")}[${String(i)}]`, density_gPerMl, trade, issues),
  );
  const ingredients = read.filter((ingredient) => ingredient !== null);
  const ids = ingredients.map(({ record }) => record.id);
  ids.forEach((id, i) => {
    if (ids.indexOf(id) === i) return;
    const parts = { received: `${id} again`, expected: "each chemistry once" };
    issues.add("conditioner-repeated", fields.at("composition"), parts);
  });
  const sum_gPerKg = ingredients.reduce((sum, { content_gPerKg }) => sum + content_gPerKg, 0);
  if (sum_gPerKg > WHOLE_G_PER_KG) {
    const received = `${String(Math.round(sum_gPerKg))} g of chemistries in a kg`;
    issues.add("composition-above-whole", fields.at("composition"), { received, expected: "at most 1000 g" });
  }
  return ingredients.length < read.length ? null : ingredients;
}

function readIngredient(
  entry: unknown,
  path: string,
  density_gPerMl: number | null | undefined,
  trade: TradeData,
  issues: IssueList,
): Ingredient | null {
  const fields = openFields(entry, path, ["chemistry", "amount", "unit"], issues);
  if (fields === null) return null;
  const text = isMissing(fields, "chemistry", "the name of a chemistry, such as citric acid", issues)
    ? null
    : textOf(fields, "chemistry", issues);
  const found = text === null ? null : findConditioner(trade, text);
  if (text !== null && found?.ok === false) {
    const known = trade.conditioners.map((record) => record.name);
    addUnknown("ingredient-unknown", fields.at("chemistry"), text, found.suggestions, known, issues);
  }
  const content_gPerKg = readAmount(fields, density_gPerMl, issues);
  return found?.ok === true && content_gPerKg !== null
    ? { record: found.value.record, content_gPerKg }
    : null;
}

/** Pure substance [g per kg of product]. */
function readAmount(
  fields: Fields,
  density_gPerMl: number | null | undefined,
  issues: IssueList,
): number | null {
  if (isMissing(fields, "amount", "a quantity such as 34 % w/w", issues)) return null;
  const unit = textOf(fields, "unit", issues);
  const options = unit === null ? {} : { unit };
  const amount = issues.take(readQuantity(fields.get("amount"), "content", fields.at("amount"), options));
  if (amount === undefined || density_gPerMl === undefined) return null;
  if (amount.per === "kg") return amount.value;
  if (density_gPerMl !== null) return amount.value / density_gPerMl;
  issues.add("amount-needs-density", fields.at("amount"), {
    received: `${describe(fields.get("amount"))}${unit === null ? "" : ` ${unit}`}`,
    expected: "the density of the product, such as 1.23 kg/L",
  });
  return null;
}
