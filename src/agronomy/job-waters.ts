import { readQuantity } from "../units/index.ts";
import { readWaterTest } from "../water/index.ts";
import { describe } from "./job-fields.ts";
import type { Fields, IssueList } from "./job-fields.ts";
import type { OtherWater } from "./types.ts";

const KEY = "other waters";

/**
 * Reads the further sources of a job; empty when the key is left out.
 *
 * @param planned name of the planned water; null when that could not be read
 */
export function readOtherWaters(
  top: Fields,
  planned: string | null,
  issues: IssueList,
): readonly OtherWater[] {
  const list = top.get(KEY);
  if (list === undefined) return [];
  if (!Array.isArray(list)) {
    issues.add("list-expected", KEY, { received: describe(list), expected: "a list of waters" });
    return [];
  }
  const names = new Set<string>(planned === null ? [] : [planned]);
  return list.flatMap((entry: unknown, index): OtherWater[] => {
    const path = `${KEY}[${String(index)}]`;
    const other = readOther(entry, path, issues);
    if (other === null) return [];
    const { source } = other.water;
    if (names.has(source)) {
      const parts = { received: source, expected: "a name of its own for each water" };
      issues.add("water-name-repeated", `${path}.source`, parts);
    }
    names.add(source);
    return [other];
  });
}

/** One source: a water test with a price beside it. */
function readOther(entry: unknown, path: string, issues: IssueList): OtherWater | null {
  const isBlock = typeof entry === "object" && entry !== null && !Array.isArray(entry);
  const { price, ...block } = isBlock ? (entry as Readonly<Record<string, unknown>>) : {};
  const water = issues.take(readWaterTest(isBlock ? block : entry, path));
  const price_perL = readPrice(price, `${path}.price`, issues);
  return water === undefined ? null : { water, price_perL, path };
}

function readPrice(value: unknown, path: string, issues: IssueList): number | null {
  if (value === undefined || value === null) return null;
  const price = issues.take(readQuantity(value, "price", path));
  if (price === undefined) return null;
  if (price.per === "L") return price.value;
  issues.add("water-price-by-mass", path, { received: describe(value), expected: "a price such as 3 /m3" });
  return null;
}
