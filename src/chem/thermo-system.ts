import solidLists from "../../data/solids.json" with { type: "json" };
import { HardstandError } from "../units/index.ts";
import type { InteractionModel } from "./interaction-model.ts";
import type { PitzerData, SolidConstantRecord } from "./pitzer-data.ts";
import { chargeInName } from "./pitzer-parameters.ts";
import { withWater } from "./system.ts";
import type { Component, Solid, Species, SystemDefinition } from "./system.ts";
import { constantAt, fromExpression, logKAt, vantHoffShift } from "./thermo-constants.ts";
import type { Constant } from "./thermo-constants.ts";
import { componentInfo } from "./thermo.ts";
import type { SolidRecord, SpeciesRecord, ThermoData, ThermoProvenance } from "./thermo-types.ts";

/** Ids of the solids that form within minutes in a tank; each with its reason in data/solids.json (tankSolids). */
export const TANK_SOLIDS: readonly string[] = Object.freeze(solidLists.tankSolids.map((solid) => solid.id));

/**
 * Ids of the solids that may form as a droplet dries: those of the tank and some that are slow there; each with its
 * reason in data/solids.json (dryingSolids), like those left out (leftOut) and those without data (notInData).
 */
export const DRYING_SOLIDS: readonly string[] = Object.freeze(
  solidLists.dryingSolids.map((solid) => solid.id),
);

/**
 * Ids of soluble salts that may form in a nearly dry droplet, beside those of `DRYING_SOLIDS`; each with its reason in
 * data/solids.json (dropletSolids). Their constants belong to the interaction parameters: use them with `interactions`
 * only.
 */
export const DROPLET_SOLIDS: readonly string[] = Object.freeze(
  solidLists.dropletSolids.map((solid) => solid.id),
);

/** What a chemical system is to contain. */
export interface SystemRequest {
  /** Names of the components present besides H+, which is always included, e.g. ["Ca+2", "CO3-2", "Gly-3"]. */
  readonly components: readonly string[];
  /** Temperature the constants are brought to [°C]. */
  readonly temperature_C: number;
  /** No solids, those that form fast in a tank, or those named; solids of absent components are left out. */
  readonly solids: "none" | "fast" | readonly string[];
  /**
   * "closed": carbonate is a component like the others. "open": carbonate always takes part, as the component "CO2"
   * whose activity the caller fixes (`co2Log10Activity`).
   */
  readonly carbonate: "closed" | "open";
  /**
   * Include sodium and potassium complexes of ligands whose constants were measured in such media (default false:
   * those constants already contain that binding).
   */
  readonly alkaliPairs?: boolean;
  /**
   * Interaction parameters the system will be solved with: species they already contain are left out, and solids take
   * the constants that belong to them. Left out: a system for a model of the ionic strength.
   */
  readonly interactions?: PitzerData;
}

const CARBONATE = "CO3-2";
const CARBON_DIOXIDE = "CO2";

/**
 * Chemical system of the requested components: every species and requested solid formed from them alone, constants at
 * zero ionic strength and the temperature asked for. Water stands beside the formations (`water`); it is no component.
 *
 * @throws HardstandError "component-unknown", "solid-unknown"
 * @validity 0–45 °C; constants on the mol/L scale, which differs from mol/kg by less than 0.01 in log10 below 45 °C
 */
export function systemFor(thermo: ThermoData, request: SystemRequest): SystemDefinition {
  const open = request.carbonate === "open";
  const wanted = new Set<string>(["H+", ...request.components.filter((name) => name !== "H2O")]);
  if (open) {
    wanted.delete(CARBON_DIOXIDE);
    wanted.add(CARBONATE);
  }
  const components: Component[] = [...wanted].map((name) => ({ name, charge: knownCharge(thermo, name) }));
  const free = components.map(({ name, charge }) => ({ name, charge, formation: { [name]: 1 }, logK: 0 }));
  const contained = new Set(request.interactions?.contained.map((entry) => entry.species));
  const formed = thermo.species.filter(
    (record) =>
      (request.alkaliPairs === true || !record.alkaliPair) &&
      !contained.has(record.id) &&
      madeOf(record.formation, wanted),
  );
  const definition: SystemDefinition = {
    components,
    species: [...free, ...formed.map((record) => speciesAt(record, request.temperature_C))],
    solids: requestedSolids(thermo, request.solids)
      .filter((record) => madeOf(record.formation, wanted))
      .map((record) => solidAt(record, request)),
  };
  return open ? withCarbonDioxide(definition) : definition;
}

function knownCharge(thermo: ThermoData, name: string): number {
  if (!Object.hasOwn(thermo.components, name)) {
    throw new HardstandError("component-unknown", "systemFor", { name });
  }
  return componentInfo(thermo, name).charge;
}

function madeOf(formation: Readonly<Record<string, number>>, components: ReadonlySet<string>): boolean {
  return Object.keys(formation).every((name) => name === "H2O" || components.has(name));
}

function withoutWater(formation: Readonly<Record<string, number>>): Record<string, number> {
  return Object.fromEntries(Object.entries(formation).filter(([name]) => name !== "H2O"));
}

function speciesAt(record: SpeciesRecord, temperature_C: number): Species {
  const { id, charge, formation } = record;
  return withWater(
    { name: id, charge, formation: withoutWater(formation), logK: logKAt(record, temperature_C) },
    formation["H2O"] ?? 0,
  );
}

function solidAt(record: SolidRecord, { temperature_C, interactions }: SystemRequest): Solid {
  const own = interactions?.solidConstants.find((constant) => constant.solid === record.id);
  return withWater(
    {
      name: record.id,
      formation: withoutWater(record.formation),
      logKsp: own === undefined ? logKAt(record, temperature_C) : ownConstantAt(own, temperature_C),
    },
    record.formation["H2O"] ?? 0,
  );
}

/** A solubility product that belongs to interaction parameters: its value at 25 °C, changed as they change with temperature. */
function ownConstantAt({ logKsp, analytic }: SolidConstantRecord, temperature_C: number): number {
  const { coefficients } = analytic;
  return logKsp + fromExpression(coefficients, temperature_C) - fromExpression(coefficients, 25);
}

function requestedSolids(thermo: ThermoData, solids: SystemRequest["solids"]): readonly SolidRecord[] {
  if (solids === "none") return [];
  const ids = solids === "fast" ? thermo.solidLists.tank.map((solid) => solid.id) : solids;
  return [...new Set(ids)].map((id) => {
    const record = thermo.solids.find((solid) => solid.id === id);
    if (record === undefined) throw new HardstandError("solid-unknown", "systemFor", { id });
    return record;
  });
}

/**
 * Writes carbonate as CO2 − 2 H+ everywhere; the free carbonate ion becomes a species like any other. With
 * log a(CO3) = log a(CO2) − 2 log a(H) − log K(CO2), a species with n carbonates has log K − n log K(CO2) in the new
 * components, and a solid, whose constant stands on the other side, log Ksp + n log K(CO2).
 */
function withCarbonDioxide(definition: SystemDefinition): SystemDefinition {
  const gas = definition.species.find((species) => species.name === CARBON_DIOXIDE);
  if (gas === undefined) throw new HardstandError("species-missing", "systemFor", { name: CARBON_DIOXIDE });
  const swap = (
    formation: Readonly<Record<string, number>>,
  ): { formation: Record<string, number>; shift: number; water: number } => {
    const { [CARBONATE]: n = 0, ...rest } = formation;
    if (n === 0) return { formation: { ...formation }, shift: 0, water: 0 };
    const protons = (rest["H+"] ?? 0) - n * (gas.formation["H+"] ?? 0);
    const swapped: Record<string, number> = { ...rest, [CARBON_DIOXIDE]: n };
    if (protons === 0) delete swapped["H+"];
    else swapped["H+"] = protons;
    return { formation: swapped, shift: -n * gas.logK, water: -n * (gas.water ?? 0) };
  };
  return {
    components: definition.components.map((c) =>
      c.name === CARBONATE ? { name: CARBON_DIOXIDE, charge: 0 } : c,
    ),
    species: definition.species.map((species) => {
      const { formation, shift, water } = swap(species.formation);
      return withWater({ ...species, formation, logK: species.logK + shift }, (species.water ?? 0) + water);
    }),
    solids: definition.solids.map((solid) => {
      const { formation, shift, water } = swap(solid.formation);
      return withWater({ ...solid, formation, logKsp: solid.logKsp - shift }, (solid.water ?? 0) + water);
    }),
  };
}

/**
 * A definition from elsewhere without the species that interaction parameters already contain (matched by name and
 * charge), and the names of those left out.
 */
export function withoutContained(
  definition: SystemDefinition,
  interactions: Pick<InteractionModel, "contained">,
): { readonly definition: SystemDefinition; readonly leftOut: readonly string[] } {
  const names = new Set(interactions.contained.map((entry) => entry.species));
  const leftOut = definition.species.filter((s) => names.has(s.name) && chargeInName(s.name) === s.charge);
  const kept = definition.species.filter((species) => !leftOut.includes(species));
  return { definition: { ...definition, species: kept }, leftOut: leftOut.map((species) => species.name) };
}

/** Partial pressure of carbon dioxide in outdoor air [atm]; its source is in data/gases.json (air.CO2_atm). */
export function airCarbonDioxide_atm(thermo: ThermoData): number {
  return thermo.air.CO2_atm.value;
}

/**
 * log10 of the activity of dissolved carbon dioxide in equilibrium with the air [mol/L].
 *
 * @param temperature_C temperature of the liquid [°C]
 * @param partialPressure_atm partial pressure of carbon dioxide [atm]; outdoor air when left out
 * @source Plummer & Busenberg (1982), the Henry constant of the data set
 */
export function co2Log10Activity(
  thermo: ThermoData,
  temperature_C: number,
  partialPressure_atm: number = airCarbonDioxide_atm(thermo),
): number {
  if (!(partialPressure_atm > 0)) {
    throw new HardstandError("pressure-invalid", "co2Log10Activity", { partialPressure_atm });
  }
  return henryLogKAt(thermo, CARBON_DIOXIDE, temperature_C) + Math.log10(partialPressure_atm);
}

/** log10 of the dissolved activity over the partial pressure of a gas [mol/(L·atm)], by the id of its dissolved form. */
export function henryLogKAt(thermo: ThermoData, dissolved: string, temperature_C: number): number {
  const gas = thermo.gases.find((g) => g.aqueous === dissolved);
  if (gas === undefined) throw new HardstandError("gas-unknown", "henryLogKAt", { dissolved });
  const { logKH, dH_kJPerMol, analytic } = gas.henry;
  if (analytic !== null) return fromExpression(analytic, temperature_C);
  return logKH.value + vantHoffShift(dH_kJPerMol ?? 0, logKH.conditions.T_C, temperature_C);
}

/** Records behind a system, by the names used in it; free components have none. */
function recordsOf(
  thermo: ThermoData,
  definition: SystemDefinition,
): { readonly species: readonly SpeciesRecord[]; readonly solids: readonly SolidRecord[] } {
  const species = new Set(definition.species.map((s) => s.name));
  const solids = new Set(definition.solids.map((s) => s.name));
  return {
    species: thermo.species.filter((record) => species.has(record.id)),
    solids: thermo.solids.filter((record) => solids.has(record.id)),
  };
}

/** Source keys behind the species and solids of a system, sorted; those of the air's gas where it is open to it. */
export function sourcesUsed(thermo: ThermoData, definition: SystemDefinition): readonly string[] {
  return [...new Set(figuresUsed(thermo, definition).map((record) => record.source))].sort();
}

/** Where each constant of a system comes from; those of the air's gas where it is open to it. */
export function figuresUsed(
  thermo: ThermoData,
  definition: SystemDefinition,
): readonly Pick<ThermoProvenance, "source" | "fromMemory">[] {
  const { species, solids } = recordsOf(thermo, definition);
  const open = definition.components.some((component) => component.name === CARBON_DIOXIDE);
  const ofAir = open
    ? [thermo.air.CO2_atm, ...thermo.gases.filter((gas) => gas.aqueous === CARBON_DIOXIDE)]
    : [];
  return [...species, ...solids, ...ofAir];
}

/** One standard uncertainty of each log K and log Ksp of a system, by name; free components are exact and absent. */
export function systemUncertainties(
  thermo: ThermoData,
  definition: SystemDefinition,
  temperature_C: number,
): { readonly logK: Readonly<Record<string, number>>; readonly logKsp: Readonly<Record<string, number>> } {
  const { species, solids } = recordsOf(thermo, definition);
  const byId = (records: readonly (SpeciesRecord | SolidRecord)[]): Record<string, number> =>
    Object.fromEntries(
      records.map((record): [string, number] => {
        const { standardUncertainty }: Constant = constantAt(record, temperature_C);
        return [record.id, standardUncertainty];
      }),
    );
  return { logK: byId(species), logKsp: byId(solids) };
}
