import { HardstandError } from "../units/index.ts";
import { withWater } from "./system.ts";
import type { Solid, Species, SystemDefinition } from "./system.ts";

/**
 * The same system with one component replaced by one of its species, e.g. CO3-2 by CO2 so that its activity can be
 * fixed. Formations and log10 K are rewritten; the chemistry does not change.
 *
 * @param definition system in which `by` is a species
 * @param replace name of the component that goes; its free form stays as an ordinary species, if it was one
 * @param by name of the species that becomes the component, in the same place
 * @throws HardstandError `rebase-impossible` if either name is unknown, if the species does not hold the component, or
 *   if another component has that name already
 */
export function rebase(definition: SystemDefinition, replace: string, by: string): SystemDefinition {
  const species = swapSpecies(definition, replace, by);
  const rewrite = (formation: Readonly<Record<string, number>>): Record<string, number> => {
    const { [replace]: held = 0, ...rest } = formation;
    const exchanged = exchange(rest, held, species, replace, by);
    return Object.fromEntries(Object.entries(exchanged).filter(([, coefficient]) => coefficient !== 0));
  };
  const share = (row: Species | Solid): number => (row.formation[replace] ?? 0) / species.formation[replace]!;
  const drier = <T extends Species | Solid>(rewritten: T, row: T): T =>
    withWater(rewritten, (row.water ?? 0) - share(row) * (species.water ?? 0));
  return {
    components: definition.components.map((component) =>
      component.name === replace ? { name: by, charge: species.charge } : component,
    ),
    species: definition.species.map((row) =>
      row.name === by
        ? withWater({ ...row, formation: { [by]: 1 }, logK: 0 }, 0)
        : drier(
            { ...row, formation: rewrite(row.formation), logK: row.logK - share(row) * species.logK },
            row,
          ),
    ),
    solids: definition.solids.map((row) =>
      drier(
        { ...row, formation: rewrite(row.formation), logKsp: row.logKsp + share(row) * species.logK },
        row,
      ),
    ),
  };
}

/**
 * Totals [mol/L] of the rebased system that describe the same solution as `totals_molPerL` do in the old one.
 *
 * @param definition, replace, by as given to `rebase`
 * @throws HardstandError `rebase-impossible` as `rebase` does
 */
export function rebaseTotals(
  definition: SystemDefinition,
  replace: string,
  by: string,
  totals_molPerL: Readonly<Record<string, number>>,
): Record<string, number> {
  const species = swapSpecies(definition, replace, by);
  const { [replace]: held = 0, ...rest } = totals_molPerL;
  return exchange(rest, held, species, replace, by);
}

/** Writes `held` units of the old component as the new one and what has to be made up in the others. */
function exchange(
  rest: Readonly<Record<string, number>>,
  held: number,
  species: Species,
  replace: string,
  by: string,
): Record<string, number> {
  const result: Record<string, number> = { ...rest };
  const units = held / species.formation[replace]!;
  for (const [component, coefficient] of Object.entries(species.formation)) {
    if (component !== replace) result[component] = (result[component] ?? 0) - units * coefficient;
  }
  result[by] = units;
  return result;
}

function swapSpecies(definition: SystemDefinition, replace: string, by: string): Species {
  const species = definition.species.find((row) => row.name === by);
  const known = definition.components.some((component) => component.name === replace);
  const clash = by !== replace && definition.components.some((component) => component.name === by);
  if (species === undefined || !known || clash || !species.formation[replace]) {
    throw new HardstandError("rebase-impossible", "rebase", { replace, by });
  }
  return species;
}
