/** A number's uncertainty: one standard uncertainty, or a judged half-width (taken as a rectangular distribution). */
export interface ConstantUncertainty {
  readonly kind: "standard" | "half-width";
  readonly value: number;
}

/** An equilibrium constant as published [log10]. */
export interface PublishedConstant {
  readonly value: number;
  readonly uncertainty: ConstantUncertainty;
  readonly conditions: {
    readonly T_C: number;
    /** Ionic strength [mol/L]; null when the source does not say (then taken as zero). */
    readonly I_molPerL: number | null;
    readonly medium: string | null;
  };
}

/** One step of a cumulative constant whose steps were measured at different ionic strengths. */
export interface ConstantStep {
  readonly expression: string;
  /** How often the step enters the cumulative constant; negative when it enters inverted. */
  readonly times: number;
  readonly logK: number;
  readonly T_C: number;
  readonly I_molPerL: number;
  /** Squared charges of the products less those of the reactants. */
  readonly deltaZ2: number;
}

/** Where a value comes from. */
export interface ThermoProvenance {
  /** Key in the sources. */
  readonly source: string;
  readonly locator: string | null;
  readonly fromMemory: boolean;
  readonly note: string | null;
}

/** Ion sizes of the extended Debye–Hückel equation; the two sets are never mixed. */
export interface IonSize {
  readonly wateq?: { readonly a_angstrom: number; readonly b_LPerMol: number };
  readonly kielland_angstrom?: number;
}

export type ComponentKind =
  "proton" | "solvent" | "metal" | "cation" | "anion" | "neutral" | "ligand" | "counter-ion";

/** A component of the data set. */
export interface ComponentRecord extends ThermoProvenance {
  readonly name: string;
  readonly kind: ComponentKind;
  readonly charge: number;
  /** Molar mass of the free form, as counted [g/mol]. */
  readonly molarMass_gPerMol: number;
  readonly ionSize: IonSize | null;
}

interface ReactionRecord extends ThermoProvenance {
  readonly id: string;
  readonly name: string;
  /** By component, water included. */
  readonly formation: Readonly<Record<string, number>>;
  /** Enthalpy of the reaction as written [kJ/mol]; null: not known. */
  readonly dH_kJPerMol: number | null;
  /** A…E of log10 K = A + B·T + C/T + D·log10(T) + E/T², T in K, at zero ionic strength; null: not known. */
  readonly analytic: readonly number[] | null;
  /** Squared charges of the products less those of the reactants; derived from the formation. */
  readonly deltaZ2: number;
}

/** An aqueous species: its constant is that of formation from the components. */
export interface SpeciesRecord extends ReactionRecord {
  readonly charge: number;
  readonly logK: PublishedConstant;
  /** Ligand id, counter-ion id, or family of the inorganic set. */
  readonly group: string;
  /** Sodium or potassium complex already contained in constants measured in such media. */
  readonly alkaliPair: boolean;
  /** Ligand the constant was measured on, when it is borrowed; null when measured on this one. */
  readonly analogyOf: string | null;
  readonly chain: readonly ConstantStep[] | null;
  readonly ionSize: IonSize | null;
}

/** How readily a solid forms; what the words mean is in data/solids.json. */
export type SolidKinetics = "fast" | "slow" | "never" | "nucleation";

/** A solid: its constant is that of dissolution to the components. */
export interface SolidRecord extends ReactionRecord {
  readonly formula: string;
  readonly logKsp: PublishedConstant;
  readonly group: string;
  readonly kinetics: SolidKinetics;
  readonly kineticsNote: string | null;
  readonly molarMass_gPerMol: number;
  readonly density_gPerMl: number | null;
}

/** A gas: dissolution to the components, and Henry's law to its aqueous form. */
export interface GasRecord extends ReactionRecord {
  /** Id of the dissolved species. */
  readonly aqueous: string;
  readonly logK: PublishedConstant;
  /** log10 of activity of the dissolved form over partial pressure [1/atm]. */
  readonly henry: {
    readonly logKH: PublishedConstant;
    readonly dH_kJPerMol: number | null;
    readonly analytic: readonly number[] | null;
  };
  readonly molarMass_gPerMol: number;
}

/** An active, conditioner, metabolite or analogue with its own component. */
export interface LigandRecord {
  readonly id: string;
  readonly name: string;
  readonly role: "active" | "metabolite" | "analogue" | "conditioner";
  readonly cas: string | null;
  readonly acidFormula: string;
  readonly acidMolarMass_gPerMol: number;
  readonly component: string;
  readonly note: string | null;
}

/** A base that comes with salts of actives. */
export interface CounterIonRecord {
  readonly id: string;
  readonly name: string;
  readonly cas: string | null;
  readonly component: string;
  readonly note: string | null;
}

/** Constants that do not exist or are not good enough to compute with: to be said, never to be read as zero. */
export interface MissingConstants {
  /** Component of the ligand. */
  readonly ligand: string;
  /** Components of the metals. */
  readonly metals: readonly string[];
  readonly why: string;
}

/** A solid of a list, with the reason why it is there (or left out). */
export interface SolidChoice {
  readonly id: string;
  readonly why: string;
}

/** The thermodynamic data set: an argument of everything that computes with it. */
export interface ThermoData {
  readonly version: string;
  /** By component name. */
  readonly components: Readonly<Record<string, ComponentRecord>>;
  readonly species: readonly SpeciesRecord[];
  readonly solids: readonly SolidRecord[];
  readonly gases: readonly GasRecord[];
  readonly ligands: readonly LigandRecord[];
  readonly counterIons: readonly CounterIonRecord[];
  readonly missing: readonly MissingConstants[];
  readonly solidLists: {
    readonly tank: readonly SolidChoice[];
    readonly drying: readonly SolidChoice[];
    readonly leftOut: readonly SolidChoice[];
    readonly notInData: readonly { readonly what: string; readonly why: string }[];
  };
  readonly air: { readonly CO2_atm: ThermoProvenance & { readonly value: number } };
  readonly sources: Readonly<Record<string, { readonly citation: string; readonly kind: string }>>;
}
