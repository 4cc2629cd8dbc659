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
}

/** A solid that may appear or vanish. */
export interface Solid {
  readonly name: string;
  /** What one mole of the solid releases into solution, by component. */
  readonly formation: Readonly<Record<string, number>>;
  /** log10 of the ion activity product at saturation. */
  readonly logKsp: number;
}

/** Everything that defines one chemical system in tableau form. Water is not a component: its activity enters logK. */
export interface SystemDefinition {
  readonly components: readonly Component[];
  readonly species: readonly Species[];
  readonly solids: readonly Solid[];
}
