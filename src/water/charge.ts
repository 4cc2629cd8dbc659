import { chargeOfName } from "./conductivity.ts";

/** Name of the component that stands for all dissolved inorganic carbon. */
export const CARBONATE = "CO3-2";

/**
 * Charge that a component brings to the alkalinity when acid is added down to the end point of the titration.
 *
 * Strong ions keep their charge. Phosphate ends as H2PO4−. Iron(III) and aluminium are hydroxides before and after, so
 * they neither take nor give acid. Boric acid, silica and carbonic acid end uncharged.
 */
function chargeAtEndPoint(component: string): number {
  if (component === CARBONATE || component === "Fe+3" || component === "Al+3") return 0;
  if (component === "PO4-3") return -1;
  return chargeOfName(component);
}

/**
 * Alkalinity that a composition has [eq/L]: Σ z·T over its components in the form they have at the end point of the
 * titration. It follows from the totals alone and mixes linearly.
 */
export function alkalinityOf_eqPerL(totals_molPerL: Readonly<Record<string, number>>): number {
  return Object.entries(totals_molPerL).reduce(
    (sum, [name, total]) => sum + chargeAtEndPoint(name) * total,
    0,
  );
}
