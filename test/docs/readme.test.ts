import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { inProject } from "../../scripts/project.mjs";
import golden from "../golden/top-bore.json" with { type: "json" };

const { summary } = golden;
const readme = readFileSync(inProject("README.md"), "utf8");

/** "0.959 (0.931 to 0.974)" as "96 …(93 to 97)": per hundred, with words between. */
function perHundred(range: string, words: string): string {
  const [free = 0, low = 0, high = 0] = (range.match(/\d\.\d+/g) ?? []).map((part) =>
    Math.round(100 * Number(part)),
  );
  return `${free}${words} (${low} to ${high})`;
}

test("the worked number of the README is the one kept of that job", () => {
  const { glyphosate } = summary.actives;
  const conditioner = summary.programmes["ammonium-sulfate"];
  expect(readme).toContain(`hardness ${summary.water.hardness_mgPerL_asCaCO3} mg/L as CaCO3`);
  expect(readme).toContain(`in the tank (pH ${summary.tank.pH.toFixed(1)})`);
  expect(readme).toContain(perHundred(glyphosate.inTank, " in 100 are free"));
  expect(readme).toContain(perHundred(glyphosate.onLeaf, ""));
  expect(readme).toContain(`Ammonium sulfate at ${conditioner.dose_gPerL} g/L`);
  expect(readme).toContain(`in ${Math.round(100 * conditioner.confidence)} of 100 draws`);
});
