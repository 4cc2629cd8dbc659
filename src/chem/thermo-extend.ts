import { HardstandError } from "../units/index.ts";
import type { ComponentRecord, SpeciesRecord, ThermoData } from "./thermo-types.ts";

/** A ligand with its species that a data set does not carry. */
export interface AddedLigand {
  readonly component: ComponentRecord;
  /** As in the data files: what follows from the formation is worked out here. */
  readonly species: readonly Omit<SpeciesRecord, "deltaZ2">[];
}

/**
 * A data set with ligands added, such as the indicators of a demonstration. The one given is not changed.
 *
 * @throws HardstandError "duplicate-name" when a component or species is there already; "component-unknown" when a
 * formation uses a component that neither has
 */
export function withLigands(thermo: ThermoData, added: readonly AddedLigand[]): ThermoData {
  const components: Record<string, ComponentRecord> = { ...thermo.components };
  const names = new Set([
    ...Object.keys(components),
    ...thermo.species.map(({ id }) => id),
    ...thermo.solids.map(({ id }) => id),
  ]);
  const claim = (name: string): void => {
    if (names.has(name)) throw new HardstandError("duplicate-name", "withLigands", { name });
    names.add(name);
  };
  for (const { component } of added) {
    claim(component.name);
    components[component.name] = component;
  }
  const species = added.flatMap((ligand) =>
    ligand.species.map((one): SpeciesRecord => {
      claim(one.id);
      const squared = Object.entries(one.formation).reduce((sum, [name, n]) => {
        const component = components[name];
        if (component === undefined) {
          throw new HardstandError("component-unknown", "withLigands", { name, of: one.id });
        }
        return sum + n * component.charge ** 2;
      }, 0);
      return { ...one, deltaZ2: one.charge ** 2 - squared };
    }),
  );
  return { ...thermo, components, species: [...thermo.species, ...species] };
}
