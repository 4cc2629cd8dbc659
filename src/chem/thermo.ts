import aqueous from "../../data/aqueous.json" with { type: "json" };
import components from "../../data/components.json" with { type: "json" };
import counterIons from "../../data/counter-ions.json" with { type: "json" };
import gases from "../../data/gases.json" with { type: "json" };
import ligands from "../../data/ligands.json" with { type: "json" };
import solids from "../../data/solids.json" with { type: "json" };
import sources from "../../data/sources.json" with { type: "json" };
import { HardstandError } from "../units/index.ts";
import type {
  ComponentKind,
  ComponentRecord,
  CounterIonRecord,
  GasRecord,
  LigandRecord,
  MissingConstants,
  SolidChoice,
  SolidRecord,
  SpeciesRecord,
  ThermoData,
} from "./thermo-types.ts";

/** A reaction record as it stands in a file, without what is derived from it. */
type Raw<T> = Omit<T, "deltaZ2">;

/** The data files, as parsed. */
export interface ThermoFiles {
  readonly components: { readonly version: string; readonly components: readonly ComponentRecord[] };
  readonly aqueous: { readonly species: readonly Raw<SpeciesRecord>[] };
  readonly solids: {
    readonly solids: readonly Raw<SolidRecord>[];
    readonly tankSolids: readonly SolidChoice[];
    readonly dryingSolids: readonly SolidChoice[];
    readonly leftOut: readonly SolidChoice[];
    readonly notInData: readonly { readonly what: string; readonly why: string }[];
  };
  readonly gases: { readonly air: ThermoData["air"]; readonly gases: readonly Raw<GasRecord>[] };
  readonly ligands: {
    readonly ligands: readonly (Omit<LigandRecord, "component"> & {
      readonly component: ComponentRecord;
      readonly species: readonly Raw<SpeciesRecord>[];
    })[];
    readonly missing: readonly MissingConstants[];
  };
  readonly counterIons: {
    readonly counterIons: readonly (Omit<CounterIonRecord, "component"> & {
      readonly component: ComponentRecord;
      readonly species: readonly Raw<SpeciesRecord>[];
    })[];
  };
  readonly sources: ThermoData["sources"];
}

/**
 * Builds a data set from data files: one flat list of species, components by name, frozen throughout.
 *
 * @throws HardstandError "component-unknown" when a formation uses a component no file has; "duplicate-name" when two
 * components, species or solids share a name
 */
export function thermoFrom(files: ThermoFiles): ThermoData {
  const byName: Record<string, ComponentRecord> = {};
  const names = new Set<string>();
  const claim = (name: string): void => {
    if (names.has(name)) throw new HardstandError("duplicate-name", "thermoFrom", { name });
    names.add(name);
  };
  const allComponents = [
    ...files.components.components,
    ...files.ligands.ligands.map((ligand) => ligand.component),
    ...files.counterIons.counterIons.map((ion) => ion.component),
  ];
  for (const component of allComponents) {
    claim(component.name);
    byName[component.name] = component;
  }
  const squaredCharges = (formation: Readonly<Record<string, number>>, of: string): number =>
    Object.entries(formation).reduce((sum, [name, n]) => {
      const component = byName[name];
      if (component === undefined) throw new HardstandError("component-unknown", "thermoFrom", { name, of });
      return sum + n * component.charge ** 2;
    }, 0);
  const species = [
    ...files.aqueous.species,
    ...files.ligands.ligands.flatMap((ligand) => ligand.species),
    ...files.counterIons.counterIons.flatMap((ion) => ion.species),
  ].map((s) => ({ ...s, deltaZ2: s.charge ** 2 - squaredCharges(s.formation, s.id) }));
  const dissolving = <T extends Raw<SolidRecord> | Raw<GasRecord>>(record: T): T & { deltaZ2: number } => ({
    ...record,
    deltaZ2: squaredCharges(record.formation, record.id),
  });
  const allSolids = files.solids.solids.map(dissolving);
  for (const record of [...species, ...allSolids]) claim(record.id);
  return deepFreeze({
    version: files.components.version,
    components: byName,
    species,
    solids: allSolids,
    gases: files.gases.gases.map(dissolving),
    ligands: files.ligands.ligands.map(({ species: _species, component, ...rest }) => ({
      ...rest,
      component: component.name,
    })),
    counterIons: files.counterIons.counterIons.map(({ species: _species, component, ...rest }) => ({
      ...rest,
      component: component.name,
    })),
    missing: files.ligands.missing,
    solidLists: {
      tank: files.solids.tankSolids,
      drying: files.solids.dryingSolids,
      leftOut: files.solids.leftOut,
      notInData: files.solids.notInData,
    },
    air: files.gases.air,
    sources: files.sources,
  });
}

// The files are checked against their schemas in the tests; the compiler infers unions too narrow to use.
const builtInFiles = {
  components,
  aqueous,
  solids,
  gases,
  ligands,
  counterIons,
  sources,
} as unknown as ThermoFiles;
let builtIn: ThermoData | null = null;

/** The thermodynamic data set that comes with Hardstand, built once and frozen. */
export function builtInThermo(): ThermoData {
  builtIn ??= thermoFrom(builtInFiles);
  return builtIn;
}

/** What is known of a component. */
export interface ComponentInfo {
  readonly name: string;
  readonly charge: number;
  /** Molar mass of the free form, as counted [g/mol]. */
  readonly molarMass_gPerMol: number;
  readonly kind: ComponentKind;
}

/**
 * Charge, molar mass [g/mol] and kind of a component; "CO2" is the one that replaces carbonate in a system open to
 * the air.
 *
 * @throws HardstandError "component-unknown"
 */
export function componentInfo(thermo: ThermoData, name: string): ComponentInfo {
  const component = Object.hasOwn(thermo.components, name) ? thermo.components[name] : undefined;
  if (component !== undefined) {
    const { charge, molarMass_gPerMol, kind } = component;
    return { name, charge, molarMass_gPerMol, kind };
  }
  const gas = thermo.gases.find((g) => g.aqueous === name);
  if (name === "CO2" && gas !== undefined) {
    return { name, charge: 0, molarMass_gPerMol: gas.molarMass_gPerMol, kind: "neutral" };
  }
  throw new HardstandError("component-unknown", "componentInfo", { name });
}

function deepFreeze<T>(value: T): T {
  if (typeof value === "object" && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const part of Object.values(value)) deepFreeze(part);
  }
  return value;
}
