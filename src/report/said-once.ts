import type { Programme, Remark } from "../agronomy/index.ts";

/** Code of remarks that hold for every way out alike, and are said once. */
const SAID_ONCE = "binding-not-computed";

/** Remarks that hold for every way out alike, each once. */
export function commonRemarks(programmes: readonly Programme[]): readonly Remark[] {
  const remarks = programmes.flatMap((one) => one.remarks.filter(({ code }) => code === SAID_ONCE));
  return [...new Map(remarks.map((remark) => [remark.text, remark])).values()];
}

/** What is to be said of one way out beside what holds for all. */
export function ownRemarks({ remarks }: Programme): readonly Remark[] {
  return remarks.filter(({ code }) => code !== SAID_ONCE);
}
