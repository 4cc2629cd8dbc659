import { ATOMIC_WEIGHTS } from "../../src/units/index.ts";

/** Number of atoms of each element. */
export type Atoms = Readonly<Record<string, number>>;

/** Adds `times` of b to a. */
export function plus(a: Atoms, b: Atoms, times = 1): Atoms {
  const sum: Record<string, number> = { ...a };
  for (const [element, n] of Object.entries(b)) sum[element] = (sum[element] ?? 0) + n * times;
  return sum;
}

/** Takes b from a. */
export function minus(a: Atoms, b: Atoms): Atoms {
  return plus(a, b, -1);
}

/** Atoms of a formula such as "(NH4)2SO4", "C10H14N2Na2O8·2H2O" or "C2H6O3P·1/3Al"; throws on what it cannot read. */
export function atomsIn(formula: string): Atoms {
  return formula.split("·").reduce<Atoms>((sum, part) => {
    const [, times = "", share = "1", rest = ""] = /^(\d*\.?\d*)(?:\/(\d+))?(.+)$/.exec(part) ?? [];
    return plus(sum, atomsOfPart(rest, formula), (times === "" ? 1 : Number(times)) / Number(share));
  }, {});
}

function atomsOfPart(part: string, whole: string): Atoms {
  let atoms: Atoms = {};
  let left = part;
  while (left !== "") {
    const group = /^\(([^()]+)\)(\d*)/.exec(left);
    const element = /^([A-Z][a-z]?)(\d*)/.exec(left);
    const match = group ?? element;
    if (match === null) throw new Error(`cannot read "${left}" in ${whole}`);
    const [text, name = "", count = ""] = match;
    const n = count === "" ? 1 : Number(count);
    atoms = group === null ? plus(atoms, { [name]: n }) : plus(atoms, atomsOfPart(name, whole), n);
    left = left.slice(text.length);
  }
  return atoms;
}

/** Molar mass of a formula [g/mol]. */
export function massOf(formula: string): number {
  return Object.entries(atomsIn(formula)).reduce((sum, [element, n]) => {
    const weight = (ATOMIC_WEIGHTS as Readonly<Record<string, number>>)[element];
    if (weight === undefined) throw new Error(`no atomic weight for ${element}`);
    return sum + n * weight;
  }, 0);
}
