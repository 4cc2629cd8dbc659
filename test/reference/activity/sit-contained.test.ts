import { describe, expect, it } from "vitest";
import {
  builtInPitzer,
  builtInSit,
  builtInThermo,
  compileSystem,
  equilibrate,
  pitzer,
  sit,
  systemFor,
} from "../../../src/chem/index.ts";
import type { InteractionModel, SystemDefinition } from "../../../src/chem/index.ts";

const thermo = builtInThermo();
const data = builtInSit();
const reference = pitzer(builtInPitzer());
/** Ionic strengths [mol/kg] a coefficient is fitted over, to the end of the theory's reach. */
const STRENGTHS = [0.1, 0.2, 0.5, 1, 1.5, 2, 2.5, 3, 3.5];

/** Ions of the salt that a species is formed from, with their number in the salt, and the species among them. */
function saltOf(species: string): {
  readonly cation: string;
  readonly anion: string;
  readonly numbers: readonly [number, number];
  readonly definition: SystemDefinition;
} {
  const record = thermo.species.find(({ id }) => id === species)!;
  const formation = { ...record.formation };
  const components = Object.keys(formation);
  const all = systemFor(thermo, {
    components,
    temperature_C: 25,
    solids: [],
    carbonate: "closed",
    alkaliPairs: true,
  });
  const [cation, anion] = [
    components.find((n) => n.includes("+"))!,
    components.find((n) => n.endsWith("-") || /-\d$/.test(n))!,
  ];
  const charge = (name: string): number => Math.abs(all.components.find((c) => c.name === name)!.charge);
  const common = charge(cation) === charge(anion) ? charge(cation) : 1;
  const wanted = [cation, anion, species];
  return {
    cation,
    anion,
    numbers: [charge(anion) / common, charge(cation) / common],
    definition: {
      components: all.components.filter(({ name }) => name === cation || name === anion),
      species: all.species.filter(({ name }) => wanted.includes(name)),
      solids: [],
    },
  };
}

type Salt = ReturnType<typeof saltOf>;

/** log10 of the stoichiometric mean activity coefficient of a salt at a molality [mol/kg]. */
function log10Mean(
  salt: Salt,
  definition: SystemDefinition,
  molality: number,
  activity: InteractionModel,
): number {
  const [nc, na] = salt.numbers;
  const totals_molPerL = { [salt.cation]: nc * molality, [salt.anion]: na * molality };
  const solved = equilibrate(compileSystem(definition), { totals_molPerL, activity });
  if (!solved.ok) throw new Error(solved.detail);
  const { system, concentrations, lnGamma } = solved.value;
  const log10 = (name: string, number: number): number => {
    const i = system.speciesIndex.get(name)!;
    return Math.log10(concentrations[i]! / (number * molality)) + lnGamma[i]! / Math.LN10;
  };
  return (nc * log10(salt.cation, nc) + na * log10(salt.anion, na)) / (nc + na);
}

/** Coefficient [kg/mol] that fits the salt best, by halving steps; its sum of squares has one least place. */
function fitted(salt: Salt, definition: SystemDefinition): number {
  const free = { ...salt.definition, species: salt.definition.species.slice(0, 2) };
  const [nc, na] = salt.numbers;
  const charges = salt.definition.components.map(({ charge }) => charge);
  const perMole = 0.5 * (nc * charges[0]! ** 2 + na * charges[1]! ** 2);
  const aims = STRENGTHS.map((I) => [I / perMole, log10Mean(salt, free, I / perMole, reference)] as const);
  const squares = (epsilon_kgPerMol: number): number => {
    const pairs = [
      { cation: salt.cation, anion: salt.anion, epsilon_kgPerMol, fitted: false, fromMemory: false },
    ];
    const model = sit({ ...data, pairs });
    return aims.reduce((sum, [m, aim]) => sum + (log10Mean(salt, definition, m, model) - aim) ** 2, 0);
  };
  let best = 0;
  for (let step = 0.2; step > 0.001; step /= 2) {
    while (squares(best + step) < squares(best)) best += step;
    while (squares(best - step) < squares(best)) best -= step;
  }
  return best;
}

const published = ({ cation, anion }: Salt): number =>
  data.pairs.find((pair) => pair.cation === cation && pair.anion === anion)!.epsilon_kgPerMol;

describe("species left out because a coefficient of the theory contains them", () => {
  const reproduced = data.contained.filter(({ basis }) => basis === "reproduced");

  it.each(reproduced)("$species: the coefficient is that of the salt with its ions free", ({ species }) => {
    const salt = saltOf(species);
    const free = {
      ...salt.definition,
      species: salt.definition.species.filter(({ name }) => name !== species),
    };
    expect(free.species).toHaveLength(2);
    expect(Math.abs(fitted(salt, free) - published(salt))).toBeLessThan(0.03);
  });

  // The first complex says it of the chain: a second one of the same ions was as free.
  it.each(reproduced.filter(({ species }) => species !== "CuCl2"))(
    "$species: with the pair as a species the coefficient would be another",
    ({ species }) => {
      const salt = saltOf(species);
      expect(Math.abs(fitted(salt, salt.definition) - published(salt))).toBeGreaterThan(0.1);
    },
  );

  it("each has a coefficient between its ions, by us where it is said to be", () => {
    for (const { species, basis } of data.contained) {
      const { formation } = thermo.species.find(({ id }) => id === species)!;
      const ions = species === "NH4HPO4-" ? ["NH4+", "HPO4-2"] : Object.keys(formation);
      const pair = data.pairs.find(({ cation, anion }) => ions.includes(cation) && ions.includes(anion));
      expect(pair, species).toBeDefined();
      expect(pair!.fitted, species).toBe(basis === "own fit");
    }
  });

  it.each([
    ["ZnCl+", 0.12],
    ["NaCO3-", 0.05],
  ])("%s stays: the coefficient agrees with it as a species, within %f kg/mol", (species, within) => {
    const salt = saltOf(species);
    const free = { ...salt.definition, species: salt.definition.species.slice(0, 2) };
    const off = (definition: SystemDefinition): number =>
      Math.abs(fitted(salt, definition) - published(salt));
    expect(off(salt.definition)).toBeLessThan(within);
    expect(off(salt.definition)).toBeLessThan(off(free) + 0.01);
    expect(data.contained.map((one) => one.species)).not.toContain(species);
  });
});
