import { isInteraction } from "../chem/index.ts";
import type { Conditions, Equilibrium } from "../chem/index.ts";
import { computedComponents } from "./binding-known.ts";
import { DRYING_STOPS } from "./chemistry.ts";
import type { Draft } from "./programmes.ts";
import { sharePartsOf, sharesOf } from "./shares.ts";
import type { SharePart } from "./shares.ts";
import type { Place } from "./types.ts";

/** One form that an active is in, with the numbers its concentration follows from. */
export interface BalanceLine {
  readonly form: string;
  readonly isSolid: boolean;
  /** What holds the active in this form; empty where it counts as free. */
  readonly holders: readonly string[];
  /** The active in this form [mol/L of the liquid that is there]. */
  readonly active_molPerL: number;
  /** log10 of the formation constant at the tank's temperature and zero ionic strength; null for a solid. */
  readonly logK: number | null;
  /** What it forms from: component, how many, log10 of its activity. */
  readonly from: readonly {
    readonly component: string;
    readonly times: number;
    readonly log10Activity: number;
  }[];
  /** log10 of the activity coefficient of the form; null for a solid. */
  readonly log10Gamma: number | null;
  /** Key of the source of the constant; null where there is none to cite (the free ion itself). */
  readonly source: string | null;
}

/** The mass balance of one active at one place: free share = free forms ÷ all forms. */
export interface Balance {
  readonly active: string;
  readonly name: string;
  readonly where: Place;
  readonly temperature_C: number;
  /** How many times stronger the liquid is than the tank. */
  readonly factor: number;
  readonly total_molPerL: number;
  readonly free_molPerL: number;
  readonly free: number;
  /** Largest amount first. */
  readonly lines: readonly BalanceLine[];
}

/** Forms with less than this share of the active are left out; the sums count them. */
const LEAST_SHOWN = 1e-6;

/** A solved liquid, with the activity model it was solved by. */
interface Solved {
  readonly equilibrium: Equilibrium;
  readonly activity: Conditions["activity"];
}

/** The balances of every active of a draft whose binding is known, in the tank and on the leaf; none where not solved. */
export function balancesOf(draft: Draft): readonly Balance[] {
  const { tank, setting } = draft;
  const { chemistry } = setting;
  const solved = chemistry.inTank(tank);
  const dried = chemistry.dry(tank, "at threshold", DRYING_STOPS);
  const last = dried.ok ? dried.steps.at(-1) : undefined;
  return computedComponents(tank).flatMap(({ active, component }) => {
    const about = { active: active.id, name: active.name, temperature_C: tank.temperature_C };
    const at = (where: Place, equilibrium: Equilibrium, factor: number): Balance => {
      const { activity } =
        where === "in the tank"
          ? chemistry.conditionsInTank(tank, equilibrium)
          : chemistry.conditionsOnLeaf(tank, "at threshold");
      return { ...about, where, factor, ...balanceAt({ equilibrium, activity }, component, draft) };
    };
    return [
      ...(solved.ok ? [at("in the tank", solved.value, 1)] : []),
      ...(last === undefined ? [] : [at("on the leaf", last.equilibrium, last.factor)]),
    ];
  });
}

function balanceAt(
  solved: Solved,
  component: string,
  draft: Draft,
): Pick<Balance, "total_molPerL" | "free_molPerL" | "free" | "lines"> {
  const { equilibrium } = solved;
  const lines = sharePartsOf(equilibrium.system, component).map((part) => lineOf(part, solved, draft));
  const total_molPerL = lines.reduce((sum, line) => sum + line.active_molPerL, 0);
  const { free } = sharesOf(equilibrium, component);
  return {
    total_molPerL,
    free_molPerL: free * total_molPerL,
    free,
    lines: lines
      .filter((line) => line.active_molPerL > LEAST_SHOWN * total_molPerL)
      .sort((a, b) => b.active_molPerL - a.active_molPerL),
  };
}

function lineOf(part: SharePart, { equilibrium, activity }: Solved, draft: Draft): BalanceLine {
  const { definition } = equilibrium.system;
  const { thermo } = draft.setting.chemistry;
  const holders = part.holders.map(([holder]) => holder);
  if (part.kind === "solid") {
    const name = equilibrium.system.solidNames[part.index] ?? "";
    return {
      form: name,
      isSolid: true,
      holders,
      active_molPerL: part.coefficient * (equilibrium.solids[part.index] ?? 0),
      logK: null,
      from: [],
      log10Gamma: null,
      source: thermo.solids.find(({ id }) => id === name)?.source ?? null,
    };
  }
  const species = definition.species[part.index];
  const { componentIndex } = equilibrium.system;
  const formed = Object.entries(species?.formation ?? {}).map(([component, times]) => ({
    component,
    times,
    log10Activity: equilibrium.log10Activities[componentIndex.get(component) ?? -1] ?? 0,
  }));
  const { waterActivity } = equilibrium;
  // A model of the ionic strength takes the activity of water as 1.
  const water =
    species?.water === undefined || waterActivity === null || !isInteraction(activity)
      ? []
      : [{ component: "H2O", times: species.water, log10Activity: Math.log10(waterActivity) }];
  return {
    form: species?.name ?? "",
    isSolid: false,
    holders,
    active_molPerL: part.coefficient * (equilibrium.concentrations[part.index] ?? 0),
    logK: species?.logK ?? 0,
    from: [...formed, ...water],
    log10Gamma: (equilibrium.lnGamma[part.index] ?? 0) / Math.LN10,
    source: thermo.species.find(({ id }) => id === species?.name)?.source ?? null,
  };
}
