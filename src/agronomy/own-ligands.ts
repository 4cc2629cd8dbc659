import { logKAtZeroI } from "../chem/index.ts";
import type { ComponentRecord, LigandRecord, SpeciesRecord, ThermoData } from "../chem/index.ts";
import { affinityClassOf, ionises, OWN_SOURCE, ownLigandId } from "./own-active.ts";
import type { OwnActive } from "./own-active.ts";
import type { AffinityClass, TradeData } from "./trade-data.ts";

/** Molar mass of a proton as the data count it [g/mol]. */
const PROTON_G_PER_MOL = 1.008;
/** Temperature at which acid constants of a job hold [°C]. */
const STATED_AT_C = 25;
/** Half-width of a given acid constant [log10]: what lists of one active differ by between media; our judgement. */
const ACID_HALF_WIDTH = 0.3;

/**
 * The data set with the actives of a job that were entered by hand, each as a component of its own.
 *
 * Its acid constants are the given ones, else those of the stand-in. Its metal constants are those of the stand-in,
 * form by form: a complex of the protonated ligand keeps its own stepwise constant. Solids of the stand-in are not
 * carried over. The uncertainty of a borrowed constant is the half-width of the class.
 */
export function withOwnLigands(thermo: ThermoData, owns: readonly OwnActive[], trade: TradeData): ThermoData {
  const components: Record<string, ComponentRecord> = { ...thermo.components };
  const species = [...thermo.species];
  const ligands = [...thermo.ligands];
  const missing = [...thermo.missing];
  for (const own of owns) {
    const affinity = affinityClassOf(own, trade);
    if (!ionises(own, affinity)) continue;
    const standIn = standInOf(thermo, affinity);
    const charge = standIn?.component.charge ?? -own.pKa.length;
    const component = componentOf(own, charge);
    components[component.name] = component;
    ligands.push(ligandOf(own, component.name));
    const acids = acidSteps(own, standIn);
    species.push(...acidSpecies(own, component, acids, standIn));
    if (standIn === null || affinity === null) continue;
    species.push(...borrowed(standIn, own, component, acids, affinity));
    missing.push(
      ...thermo.missing
        .filter((entry) => entry.ligand === standIn.component.name)
        .map((entry) => ({ ...entry, ligand: component.name })),
    );
  }
  return { ...thermo, components, species, ligands, missing };
}

/** Acid constants of the stand-in of a class [log10, zero ionic strength], weakest acid first; empty without one. */
export function standInSteps(thermo: ThermoData, affinity: AffinityClass): readonly number[] {
  return standInOf(thermo, affinity)?.steps ?? [];
}

interface StandIn {
  readonly component: ComponentRecord;
  readonly species: readonly SpeciesRecord[];
  /** Stepwise protonation constants, the first proton first. */
  readonly steps: readonly number[];
  /** Enthalpies of the same, from the ligand alone [kJ/mol]; null: not known. */
  readonly enthalpies_kJPerMol: readonly (number | null)[];
  /** Temperatures the protonation constants were measured at [°C]. */
  readonly temperatures_C: readonly number[];
}

function standInOf(thermo: ThermoData, affinity: AffinityClass | null): StandIn | null {
  const ligand = thermo.ligands.find((l) => l.id === affinity?.ligand);
  const component = ligand === undefined ? undefined : thermo.components[ligand.component];
  if (component === undefined) return null;
  const species = thermo.species.filter((s) => (s.formation[component.name] ?? 0) > 0);
  const protonated = species
    .filter((s) => isAcid(s, component.name))
    .sort((a, b) => (a.formation["H+"] ?? 0) - (b.formation["H+"] ?? 0));
  const sums = protonated.map((s) => logKAtZeroI(s).value);
  return {
    component,
    species,
    steps: sums.map((logK, i) => logK - (sums[i - 1] ?? 0)),
    enthalpies_kJPerMol: protonated.map((s) => s.dH_kJPerMol),
    temperatures_C: protonated.map((s) => s.logK.conditions.T_C),
  };
}

function isAcid(species: SpeciesRecord, component: string): boolean {
  const names = Object.keys(species.formation);
  return names.length === 2 && species.formation[component] === 1 && (species.formation["H+"] ?? 0) > 0;
}

/** The given constants, weakest acid first, then those of the stand-in that are stronger than all of them. */
function acidSteps(own: OwnActive, standIn: StandIn | null): readonly number[] {
  const given = [...own.pKa].sort((a, b) => b - a);
  return [...given, ...(standIn?.steps ?? []).slice(given.length)];
}

function componentOf(own: OwnActive, charge: number): ComponentRecord {
  return {
    // No component of the data has a space in its name.
    name: `${own.name} ion${signed(charge)}`,
    kind: "ligand",
    charge,
    molarMass_gPerMol: own.molarMass_gPerMol + charge * PROTON_G_PER_MOL,
    ionSize: null,
    source: OWN_SOURCE,
    locator: null,
    fromMemory: false,
    note: null,
  };
}

function ligandOf(own: OwnActive, component: string): LigandRecord {
  return {
    id: ownLigandId(own),
    name: own.name,
    role: "active",
    cas: null,
    acidFormula: "",
    acidMolarMass_gPerMol: own.molarMass_gPerMol,
    component,
    note: null,
  };
}

function acidSpecies(
  own: OwnActive,
  component: ComponentRecord,
  steps: readonly number[],
  standIn: StandIn | null,
): readonly SpeciesRecord[] {
  let sum = 0;
  return steps.map((step, i): SpeciesRecord => {
    const protons = i + 1;
    sum += step;
    const charge = component.charge + protons;
    return {
      id: nameOf({ "H+": protons }, own, 1, charge),
      name: nameOf({ "H+": protons }, own, 1, charge),
      charge,
      formation: { [component.name]: 1, "H+": protons },
      logK: {
        value: sum,
        uncertainty: { kind: "half-width", value: ACID_HALF_WIDTH * Math.sqrt(protons) },
        conditions: { T_C: standIn?.temperatures_C[i] ?? STATED_AT_C, I_molPerL: 0, medium: null },
      },
      // How it changes with temperature is borrowed even where the constant itself is given.
      dH_kJPerMol: standIn?.enthalpies_kJPerMol[i] ?? null,
      analytic: null,
      deltaZ2: charge ** 2 - component.charge ** 2 - protons,
      group: own.id,
      alkaliPair: false,
      analogyOf: null,
      chain: null,
      ionSize: null,
      source: OWN_SOURCE,
      locator: null,
      fromMemory: false,
      note: null,
    };
  });
}

/** Metal complexes of the stand-in, rewritten for the own component. */
function borrowed(
  standIn: StandIn,
  own: OwnActive,
  component: ComponentRecord,
  acids: readonly number[],
  affinity: AffinityClass,
): readonly SpeciesRecord[] {
  const from = standIn.component.name;
  return standIn.species
    .filter((s) => !isAcid(s, from))
    .map((s): SpeciesRecord => {
      const { [from]: count = 0, ...rest } = s.formation;
      const protons = Math.max(0, s.formation["H+"] ?? 0);
      const moved = protonShift(protons, count, acids, standIn.steps);
      const value = logKAtZeroI(s).value + moved;
      return {
        ...s,
        id: nameOf(rest, own, count, s.charge),
        name: nameOf(rest, own, count, s.charge),
        group: own.id,
        formation: { ...rest, [component.name]: count },
        logK: {
          value,
          uncertainty: { kind: "half-width", value: affinity.halfWidth_logK ?? 0 },
          conditions: { ...s.logK.conditions, I_molPerL: 0 },
        },
        analytic: null,
        analogyOf: affinity.ligand,
        chain: null,
      };
    });
}

/** What the protons of a complex are worth on the own ligand more than on the stand-in [log10]. */
function protonShift(
  protons: number,
  ligands: number,
  own: readonly number[],
  standIn: readonly number[],
): number {
  const upTo = (steps: readonly number[], n: number): number => steps.slice(0, n).reduce((a, b) => a + b, 0);
  let sum = 0;
  for (let i = 0; i < ligands; i++) {
    // Protons are spread evenly over the ligands of the complex.
    const n = Math.floor((protons + i) / ligands);
    sum += upTo(own, n) - upTo(standIn, n);
  }
  return sum;
}

/** Name of a form of an own active, such as "Ca·dichlorprop+" or "H·dichlorprop". */
function nameOf(
  others: Readonly<Record<string, number>>,
  own: OwnActive,
  count: number,
  charge: number,
): string {
  const parts = Object.entries(others)
    .filter(([component]) => component !== "H2O")
    .map(([component, n]) => {
      const symbol = n < 0 ? "OH" : component.replace(/[+-]\d*$/, "");
      return Math.abs(n) === 1 ? symbol : `${symbol}${String(Math.abs(n))}`;
    });
  return `${[...parts, ...Array.from({ length: count }, () => own.name)].join("·")}${signed(charge)}`;
}

/** Charge as it stands behind a name: "", "-", "+2". */
function signed(charge: number): string {
  if (charge === 0) return "";
  const size = Math.abs(charge) === 1 ? "" : String(Math.abs(charge));
  return `${charge < 0 ? "-" : "+"}${size}`;
}
