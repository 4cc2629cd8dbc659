import { findRoot } from "../../numerics/index.ts";
import type { Equilibrium } from "../../chem/index.ts";
import type { Addition, Flask, FlaskStep } from "./types.ts";

/** What is in a flask: amounts and how full it is. */
export interface Contents {
  /** Components [mol] besides H+. */
  readonly amounts_mol: Readonly<Record<string, number>>;
  readonly volume_mL: number;
  /** pH held by hand at this point; null where it follows from the rest. */
  readonly heldPh: number | null;
}

/** Strength of the acid or alkali with which a pH is set [mol/L]. */
export const TITRANT_MOL_PER_L = 1;

/** Components that setting a pH may bring in. */
export const TITRANT_IONS: readonly string[] = ["Cl-", "Na+"];

/** Acid (positive) or alkali (negative) [mol] that was needed to set a pH. */
export interface AdjustmentUsed {
  readonly acid_mol: number;
}

/** What a flask holds at its start. */
export function startContents({ start }: Flask): Contents {
  const litres = start.volume_mL / 1000;
  const totals = start.water?.totals_molPerL ?? {};
  return {
    amounts_mol: Object.fromEntries(Object.entries(totals).map(([name, total]) => [name, total * litres])),
    volume_mL: start.volume_mL,
    heldPh: null,
  };
}

/** What a flask holds after something was measured in. Volumes add; what dissolves as a solid takes no room. */
export function withAddition(contents: Contents, addition: Addition): Contents {
  const amounts: Record<string, number> = { ...contents.amounts_mol };
  const add = (released: Readonly<Record<string, number>>, moles: number): void => {
    for (const [component, count] of Object.entries(released)) {
      amounts[component] = (amounts[component] ?? 0) + count * moles;
    }
  };
  add(addition.substance.released, addition.amount_mol);
  const { medium, volume_mL } = addition;
  if (medium !== null) add(medium.substance.released, (medium.molPerL * volume_mL) / 1000);
  return { amounts_mol: amounts, volume_mL: contents.volume_mL + volume_mL, heldPh: null };
}

function withTitrant(contents: Contents, acid_mol: number, heldPh: number): Contents {
  const ion = acid_mol >= 0 ? "Cl-" : "Na+";
  const moles = Math.abs(acid_mol);
  return {
    amounts_mol: { ...contents.amounts_mol, [ion]: (contents.amounts_mol[ion] ?? 0) + moles },
    volume_mL: contents.volume_mL + (moles / TITRANT_MOL_PER_L) * 1000,
    heldPh,
  };
}

/**
 * What a flask holds after its pH was set with strong acid or alkali; null when no reasonable amount reaches it.
 *
 * @param solve equilibrium of contents, with its pH computed
 */
export function withPhSet(
  contents: Contents,
  pH: number,
  solve: (contents: Contents) => Equilibrium | null,
): { readonly contents: Contents; readonly acid_mol: number } | null {
  const off = (acid_mol: number): number => {
    const solved = solve({ ...withTitrant(contents, acid_mol, pH), heldPh: null });
    return solved?.pH == null ? NaN : solved.pH - pH;
  };
  const now = off(0);
  if (!Number.isFinite(now)) return null;
  const direction = now >= 0 ? 1 : -1;
  // Up to as much as the flask itself: beyond that another acid or alkali is meant.
  const most = (contents.volume_mL / 1000) * TITRANT_MOL_PER_L;
  let reach = most / 4096;
  while (off(direction * reach) * now > 0) {
    reach *= 2;
    if (reach > most) return null;
  }
  const found = findRoot(off, 0, direction * reach, { xTolerance: most * 1e-9, fTolerance: 1e-4 });
  return found.ok ? { contents: withTitrant(contents, found.x, pH), acid_mol: found.x } : null;
}

/** The contents of a flask at its start and after each step; null with the step that could not be done. */
export function contentsOf(
  flask: Flask,
  solve: (contents: Contents) => Equilibrium | null,
):
  | {
      readonly ok: true;
      readonly contents: readonly Contents[];
      readonly acids_mol: readonly (number | null)[];
    }
  | { readonly ok: false; readonly step: FlaskStep } {
  let now = startContents(flask);
  const contents = [now];
  const acids: (number | null)[] = [null];
  for (const step of flask.steps) {
    if (step.kind === "add") {
      now = withAddition(now, step);
      acids.push(null);
    } else {
      const set = withPhSet(now, step.pH, solve);
      if (set === null) return { ok: false, step };
      now = set.contents;
      acids.push(set.acid_mol);
    }
    contents.push(now);
  }
  return { ok: true, contents, acids_mol: acids };
}
