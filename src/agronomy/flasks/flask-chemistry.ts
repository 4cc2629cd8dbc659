import {
  TANK_SOLIDS,
  compileSystem,
  davies,
  debyeHuckelA,
  equilibrate,
  systemFor,
  systemUncertainties,
  withLigands,
} from "../../chem/index.ts";
import type { CompiledSystem, Equilibrium, SystemDefinition, ThermoData } from "../../chem/index.ts";
import { DAVIES_TO_MOL_PER_L } from "../chemistry.ts";
import { TITRANT_IONS, startContents, withAddition } from "./contents.ts";
import type { Contents } from "./contents.ts";
import type { IndicatorRecord } from "./flask-data.ts";
import type { Demo, FlaskContext } from "./types.ts";

/** Slow solid that is watched but not let form: what fresh rust ages to. */
export const SLOW_RUST = "ferrihydrite";

/** Constants other than the central ones. */
export interface DrawnConstants {
  readonly logK: Readonly<Record<string, number>>;
  readonly logKsp: Readonly<Record<string, number>>;
}

/** Equilibrium answers for the flasks of one demonstration. */
export interface FlaskChemistry {
  readonly thermo: ThermoData;
  /** Indicators of the data and those typed in by hand. */
  readonly indicators: readonly IndicatorRecord[];
  readonly definition: SystemDefinition;
  readonly compiled: CompiledSystem;
  /** One standard uncertainty of every constant. */
  readonly uncertainties: ReturnType<typeof systemUncertainties>;
  /** null when there is no equilibrium, which no flask that can be mixed should bring about. */
  solve(contents: Contents, drawn?: DrawnConstants, start?: Equilibrium): Equilibrium | null;
}

/** Sets up the chemistry of a demonstration: one system that holds everything any of its flasks gets. */
export function flaskChemistry(demo: Demo, context: FlaskContext): FlaskChemistry {
  const indicators = [...context.flasks.indicators, ...demo.ownIndicators];
  const thermo = withLigands(context.thermo, indicators);
  const definition = systemFor(thermo, {
    components: componentsOf(demo),
    temperature_C: demo.temperature_C,
    solids: [...TANK_SOLIDS, SLOW_RUST],
    carbonate: "closed",
  });
  const compiled = compileSystem(definition);
  const activity = davies({ A: debyeHuckelA(demo.temperature_C), holdAbove_molPerL: DAVIES_TO_MOL_PER_L });
  const allowed = compiled.solidNames.filter((name) => name !== SLOW_RUST);
  return {
    thermo,
    indicators,
    definition,
    compiled,
    uncertainties: systemUncertainties(thermo, definition, demo.temperature_C),
    solve: (contents, drawn, start) => {
      const litres = contents.volume_mL / 1000;
      const totals: Record<string, number> = {};
      for (const name of compiled.componentNames) {
        if (name !== "H+") totals[name] = (contents.amounts_mol[name] ?? 0) / litres;
      }
      const solved = equilibrate(compiled, {
        totals_molPerL: totals,
        ...(contents.heldPh === null
          ? { electroneutral: "H+" }
          : { fixedLog10Activities: { "H+": -contents.heldPh } }),
        activity,
        solids: allowed,
        ...(drawn ?? {}),
        ...(start === undefined ? {} : { start }),
      });
      return solved.ok ? solved.value : null;
    },
  };
}

function componentsOf(demo: Demo): readonly string[] {
  const names = new Set<string>();
  for (const flask of demo.flasks) {
    let contents = startContents(flask);
    for (const step of flask.steps) {
      if (step.kind === "add") contents = withAddition(contents, step);
      else for (const ion of TITRANT_IONS) names.add(ion);
    }
    for (const name of Object.keys(contents.amounts_mol)) names.add(name);
  }
  return [...names].sort();
}
