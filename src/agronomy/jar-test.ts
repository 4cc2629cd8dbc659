import { HardstandError } from "../units/index.ts";
import { withSpoons } from "./jar-spoons.ts";
import type { MixAmount } from "./loads.ts";
import type { JarAmount } from "./types.ts";

/** Smallest amounts measured directly, with a 1 mL syringe and a 0.01 g balance. Common practice, no published source. */
export const LEAST_MEASURED = { mL: 0.2, g: 0.1 } as const;

/** Smallest volume of a dilution that is drawn [mL]. Common practice, no published source. */
const LEAST_DRAWN_ML = 1;
const LARGEST_DILUTION_ML = 1000;

/**
 * Amounts for a jar test: the tank in small, in the same order and strength. What is too small to measure comes with
 * a dilution step.
 *
 * @param jar_L finished volume in the jar
 * @param amounts as for the loads
 * @throws HardstandError "jar-invalid" when jar or spray volume is not above zero
 */
export function jarTest(
  jar_L: number,
  amounts: readonly MixAmount[],
  volume_LPerHa: number,
): readonly JarAmount[] {
  if (!(jar_L > 0 && volume_LPerHa > 0))
    throw new HardstandError("jar-invalid", "jarTest", { jar_L, volume_LPerHa });
  return amounts.map((item): JarAmount => {
    const { amount, unit } = inJar(item, jar_L, volume_LPerHa);
    return {
      product: item.product,
      label: item.label,
      amount,
      unit,
      how: dilutionFor(amount, unit, jar_L),
      spoons: withSpoons(amount, unit, jar_L),
    };
  });
}

function inJar(item: MixAmount, jar_L: number, volume_LPerHa: number): { amount: number; unit: "mL" | "g" } {
  if (item.perHa !== undefined) {
    const amount = (item.perHa.value * 1000 * jar_L) / volume_LPerHa;
    return { amount, unit: item.perHa.unit === "L" ? "mL" : "g" };
  }
  if (item.perL === undefined)
    throw new HardstandError("amount-without-dose", "jarTest", { product: item.product });
  const mass_g = item.perL.value_g * jar_L;
  const density = item.perL.density_gPerMl;
  return density === null ? { amount: mass_g, unit: "g" } : { amount: mass_g / density, unit: "mL" };
}

/** How to measure what is too small: one unit made up to a round volume, and a part of that. */
function dilutionFor(amount: number, unit: "mL" | "g", jar_L: number): string | null {
  const least = LEAST_MEASURED[unit];
  if (amount === 0 || amount >= least) return null;
  let made_mL = 10;
  while (amount * made_mL < LEAST_DRAWN_ML && made_mL < LARGEST_DILUTION_ML) made_mL *= 10;
  const drawn_mL = amount * made_mL;
  if (drawn_mL < LEAST_DRAWN_ML) {
    return `Below ${String(least)} ${unit} and too small even for a dilution: use a bigger jar. Common practice.`;
  }
  const shown = Number(drawn_mL.toPrecision(2));
  const room = drawn_mL > jar_L * 1000 * 0.1 ? " Take the same volume of water out of the jar's share." : "";
  return (
    `Below ${String(least)} ${unit}: make 1 ${unit} up to ${String(made_mL)} mL with water, shake, ` +
    `use ${String(shown)} mL of it.${room} Common practice.`
  );
}
