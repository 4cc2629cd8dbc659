import type { FlaskShow } from "../agronomy/index.ts";
import { ENGLISH, sayIn } from "../words/index.ts";
import type { Language } from "../words/index.ts";

/** Shares of a metal in words: "69 % 5-sulfosalicylic acid, 25 % free". */
export function sharesInWords(
  shares: Readonly<Record<string, number>>,
  { phrases }: Language = ENGLISH,
): string {
  const parts = Object.entries(shares)
    .filter(([, share]) => share >= 0.005)
    .map(([name, share]) => `${Math.round(100 * share)} % ${phrases.name(name)}`);
  return parts.join(", ");
}

/** The order of darkness and how sure it is, in words. */
export function orderInWords({ order }: FlaskShow, language: Language = ENGLISH): string {
  const say = sayIn(language);
  const groups = order.groups.map((group) => group.map(language.page).join(" = ")).join(" > ");
  const sure =
    order.sure >= 0.995
      ? say("the same for every draw of the constants")
      : say("the same in {count} of 100 draws of the constants", { count: Math.floor(100 * order.sure) });
  return `${groups}; ${sure}.`;
}

/** Says how many optical figures are estimates. */
export function estimatesInWords({ optics }: FlaskShow, language: Language = ENGLISH): string {
  const estimates = optics.filter((one) => one.estimate).length;
  const memory = optics.filter((one) => one.fromMemory && !one.estimate).length;
  return sayIn(language)(
    "Of {count} optical figures, {estimates} are estimates made for drawing and {memory} are from memory.",
    { count: optics.length, estimates, memory },
  );
}
