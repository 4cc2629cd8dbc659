/** Content of a level teaspoon [mL]. Common practice, no published source; the US one holds 4.93 mL. */
const TEASPOON_ML = 5;
/** Steps of a kitchen scale make lighter amounts wrong by more than a tenth. Common practice, no published source. */
const LEAST_ON_KITCHEN_SCALE_G = 10;
/** Above this, a measuring jug does. */
const MOST_SPOONED_ML = 20;
/** What a dilution with spoons starts from: two teaspoons, or ten grams on a kitchen scale. */
const BASE = 10;
const LEAST_MADE_ML = 50;
const MOST_MADE_ML = 1000;
const MOST_SPOONS = 20;
/** How far a number of quarter spoons may be off the amount; a little more where the amount is larger. */
const SPOON_TOLERANCE = { belowOneSpoon: 0.05, fromOneSpoon: 0.1 } as const;
const QUARTERS = ["", "¼", "½", "¾"] as const;

/**
 * How to measure an amount of a jar test with spoons and a kitchen scale, for those without a syringe and a balance.
 * null where a scale or a jug does it straight away.
 *
 * @param jar_L finished volume in the jar
 */
export function withSpoons(amount: number, unit: "mL" | "g", jar_L: number): string | null {
  if (amount === 0 || amount >= (unit === "g" ? LEAST_ON_KITCHEN_SCALE_G : MOST_SPOONED_ML)) return null;
  if (unit === "mL") {
    const quarters = Math.round((4 * amount) / TEASPOON_ML);
    const off = Math.abs((quarters * TEASPOON_ML) / 4 - amount) / amount;
    const allowed = SPOON_TOLERANCE[amount < TEASPOON_ML ? "belowOneSpoon" : "fromOneSpoon"];
    if (off <= allowed) return `With spoons: ${spoonText(quarters / 4)}. Common practice.`;
  }
  for (let spoons = 1; spoons <= MOST_SPOONS; spoons++) {
    const made_mL = (BASE * spoons * TEASPOON_ML) / amount;
    if (made_mL < LEAST_MADE_ML) continue;
    if (made_mL > MOST_MADE_ML) break;
    const drawn_mL = spoons * TEASPOON_ML;
    const room = drawn_mL > jar_L * 100 ? ` Leave ${String(drawn_mL)} mL of water out of the jar.` : "";
    const base = unit === "mL" ? "2 teaspoons" : "10 g on a kitchen scale";
    return (
      `With spoons: make ${base} up to ${String(Math.round(made_mL / 10) * 10)} mL with water, shake, ` +
      `use ${spoonText(spoons)} of it.${room} Common practice.`
    );
  }
  return "Too small for spoons, even diluted: use a syringe and a balance, or a bigger jar. Common practice.";
}

function spoonText(spoons: number): string {
  const whole = Math.floor(spoons);
  const quarters = QUARTERS[Math.round(4 * (spoons - whole))] ?? "";
  return `${whole === 0 ? "" : String(whole)}${quarters} teaspoon${spoons > 1 ? "s" : ""}`;
}
