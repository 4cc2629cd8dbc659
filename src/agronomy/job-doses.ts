import { readQuantity } from "../units/index.ts";
import { describe } from "./job-fields.ts";
import type { Fields, IssueList } from "./job-fields.ts";
import type { ConditionerChoice } from "./types.ts";

/** What is sold, as far as prices and doses ask: a density of null is weighed, undefined not known. */
export interface Sold {
  readonly name: string;
  readonly density_gPerMl: number | null | undefined;
}

/** The price of what is sold; null when left out or not usable, then with an issue. */
export function readPriceOf(
  fields: Fields,
  sold: Sold | null,
  issues: IssueList,
): ConditionerChoice["price"] {
  if (fields.get("price") === undefined) return null;
  const price = issues.take(readQuantity(fields.get("price"), "price", fields.at("price"))) ?? null;
  if (price?.per === "L" && sold !== null && sold.density_gPerMl === null) {
    const parts = {
      received: describe(fields.get("price")),
      expected: `a price per kg: without a density ${sold.name} is sold by mass`,
    };
    issues.add("price-does-not-fit-product", fields.at("price"), parts);
  }
  return price;
}

/** The label limits of the dose [g of what is sold per L of spray]. */
export function readDoseRange(
  fields: Fields,
  sold: Sold | null,
  issues: IssueList,
): Pick<ConditionerChoice, "leastDose_gPerL" | "mostDose_gPerL"> {
  const least = readDose(fields, "least dose", sold, issues);
  const most = readDose(fields, "most dose", sold, issues);
  if (least !== null && most !== null && least > most) {
    const received = `${describe(fields.get("least dose"))} and ${describe(fields.get("most dose"))}`;
    issues.add("least-above-most", fields.at("least dose"), {
      received,
      expected: "the least dose at most the most",
    });
  }
  return { leastDose_gPerL: least, mostDose_gPerL: most };
}

/** A dose limit [g of the form sold per L of spray]; null when left out or not usable. */
function readDose(fields: Fields, key: string, sold: Sold | null, issues: IssueList): number | null {
  if (fields.get(key) === undefined) return null;
  const dose = issues.take(readQuantity(fields.get(key), "dose", fields.at(key)));
  if (dose === undefined) return null;
  if (dose.unit === "g/L") return dose.value;
  if (sold?.density_gPerMl === undefined) return null;
  if (sold.density_gPerMl === null) {
    const parts = { received: describe(fields.get(key)), expected: "a dose by mass, such as 1 kg/100 L" };
    issues.add("dose-does-not-fit-form", fields.at(key), parts);
    return null;
  }
  return dose.value * sold.density_gPerMl * 1000;
}
