/** A label for a mass balance; its free form is a species only if listed as one. */
export interface Component {
  readonly name: string;
  /** Charge number of the free form. */
  readonly charge: number;
}

/** An aqueous species formed from components. */
export interface Species {
  readonly name: string;
  readonly charge: number;
  /** Coefficient of each component in one mole of the species; negative where a component is released. */
  readonly formation: Readonly<Record<string, number>>;
  /** log10 of the formation constant from the components (activities, mol/L scale, at the system's temperature). */
  readonly logK: number;
  /** Water taken up in forming one mole; negative where it is released. Left out: none. Interaction models use it. */
  readonly water?: number;
}

/** A solid that may appear or vanish. */
export interface Solid {
  readonly name: string;
  /** What one mole of the solid releases into solution, by component. */
  readonly formation: Readonly<Record<string, number>>;
  /** log10 of the ion activity product at saturation. */
  readonly logKsp: number;
  /** Water released by one mole of the solid (of crystallisation). Left out: none. Interaction models use it. */
  readonly water?: number;
}

/** The same species or solid with another amount of water. */
export function withWater<T extends Species | Solid>(row: T, water: number): T {
  const { water: _before, ...rest } = row;
  return (water === 0 ? rest : { ...rest, water }) as T;
}

/** Everything that defines one chemical system in tableau form. Water is not a component: its activity is 1 or, with an interaction model, follows from `water`. */
export interface SystemDefinition {
  readonly components: readonly Component[];
  readonly species: readonly Species[];
  readonly solids: readonly Solid[];
}
