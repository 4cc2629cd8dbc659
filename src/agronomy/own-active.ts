import type { ActiveForm, ActiveRecord, HalfLife, Provenance } from "./data-types.ts";
import type { AffinityClass, TradeData } from "./trade-data.ts";

/** An active that is not in the data, as the job describes it. */
export interface OwnActive {
  /** Id in the plan; no active of the data starts like it. */
  readonly id: string;
  readonly name: string;
  /** Molar mass of the acid or of the molecule [g/mol]. */
  readonly molarMass_gPerMol: number;
  /** Acid constants at 25 °C and zero ionic strength, strongest acid first; empty: it does not ionise, or none was given. */
  readonly pKa: readonly number[];
  /** Id of its affinity class. */
  readonly affinityClass: string;
  readonly halfLives: readonly {
    readonly pH: number;
    readonly temperature_C: number;
    readonly halfLife_h: number;
  }[];
}

/** Source of what a job itself says of an active. */
export const OWN_SOURCE = "entered-by-hand";

const OWN: Provenance = { source: OWN_SOURCE, locator: null, fromMemory: false };

/** Activation energy of hydrolysis where nothing is known of it [kJ/mol]; as in the data, from memory. */
const USUAL_ENERGY = {
  value: 75,
  low: 55,
  high: 100,
  source: "from-memory",
  locator: "usual span for hydrolysis of esters, carbamates, organophosphates and sulfonylureas",
  fromMemory: true,
};

/** Id of an active entered by hand under a name. */
export function ownActiveId(name: string): string {
  const slug = name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "");
  return `own-${slug}`;
}

/** Id of its ligand in the thermodynamic data of the job; no ligand of the data ends like it. */
export function ownLigandId(own: OwnActive): string {
  return `${own.name} (entered by hand)`;
}

/** The affinity class of an own active. */
export function affinityClassOf(own: OwnActive, trade: TradeData): AffinityClass | null {
  return trade.affinityClasses.find((c) => c.id === own.affinityClass) ?? null;
}

/** True when the active takes part in the equilibrium: it has acid constants, or those of a stand-in. */
export function ionises(own: OwnActive, affinity: AffinityClass | null): boolean {
  return own.pKa.length > 0 || (affinity?.ligand ?? null) !== null;
}

/**
 * The record by which an active entered by hand takes part like those of the data. What was not given is left empty,
 * so that the plan says "not known" there: no groups, rules, rates, sensitivities or sorption.
 */
export function recordOfOwn(own: OwnActive, trade: TradeData): ActiveRecord {
  const affinity = affinityClassOf(own, trade);
  const dissolves = ionises(own, affinity);
  return {
    id: own.id,
    name: own.name,
    synonyms: [],
    cas: null,
    type: "other",
    groups: {},
    chemicalClass: affinity?.name ?? "not known",
    formula: "",
    molarMass_gPerMol: own.molarMass_gPerMol,
    basis: dissolves ? "acid equivalent" : "active",
    ligand: dissolves ? ownLigandId(own) : null,
    binding: bindingBy(affinity),
    bindingNote: bindingNote(own, affinity),
    pKa: own.pKa.map((value) => ({ value, temperature_C: 25, note: null, ...OWN })),
    forms: formsOf(own, dissolves, trade),
    formulations: [],
    typicalStrengths: [],
    typicalRate: null,
    waterSensitivities: [],
    halfLives: own.halfLives.map((half): HalfLife => ({ ...half, qualifier: null, ...OWN })),
    rateLaw: null,
    activationEnergy_kJPerMol: USUAL_ENERGY,
    sorption: [],
    cautions: [
      { text: `${own.name} is entered by hand: the restrictions of its label are not known here.`, ...OWN },
    ],
    ...OWN,
  };
}

function bindingBy(affinity: AffinityClass | null): ActiveRecord["binding"] {
  if ((affinity?.ligand ?? null) !== null) return "analogy";
  return affinity?.id === "none" ? "nothing to bind" : "none";
}

function bindingNote(own: OwnActive, affinity: AffinityClass | null): string {
  if (affinity !== null && affinity.standIn !== null) {
    const acids = own.pKa.length === 0 ? " Its acid constants are borrowed too." : "";
    return (
      `Estimate: ${affinity.standIn} stands in for ${own.name} (class “${affinity.name}”). ` +
      `The borrowed metal constants may be ten times weaker or stronger.${acids}`
    );
  }
  if (affinity?.id === "none") return `${own.name} was entered as binding no metals.`;
  if (own.pKa.length === 0) return `No acid constants and no affinity were given for ${own.name}: not known.`;
  return `No affinity was given for ${own.name}: what holds it is not known. Its acid counts for the tank's pH.`;
}

/** The acid or molecule itself, and for an acid every salt with one base that the data know from other actives. */
function formsOf(own: OwnActive, dissolves: boolean, trade: TradeData): readonly ActiveForm[] {
  const parent: ActiveForm = {
    id: "parent",
    name: dissolves ? `${own.name} acid` : `${own.name} itself`,
    synonyms: dissolves ? ["acid"] : [],
    formula: "",
    molarMass_gPerMol: own.molarMass_gPerMol,
    acidEquivalent: 1,
    counterIons: {},
    dissociates: dissolves,
    ...OWN,
  };
  if (!dissolves) return [parent];
  const salts = new Map<string, ActiveForm>();
  for (const active of trade.actives) {
    for (const form of active.forms) {
      if (salts.has(form.id) || !isSaltOfOneBase(form)) continue;
      const molarMass_gPerMol = own.molarMass_gPerMol + form.molarMass_gPerMol - active.molarMass_gPerMol;
      const acidEquivalent = own.molarMass_gPerMol / molarMass_gPerMol;
      salts.set(form.id, { ...form, formula: "", molarMass_gPerMol, acidEquivalent, ...OWN });
    }
  }
  return [parent, ...salts.values()];
}

function isSaltOfOneBase(form: ActiveForm): boolean {
  const [first, ...more] = Object.entries(form.counterIons);
  return first !== undefined && more.length === 0 && first[1] === 1 && /[^+\d]\+$|\d\+$/.test(first[0]);
}
