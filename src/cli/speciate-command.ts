import {
  compileSystem,
  definitionProblems,
  equilibrate,
  isInteraction,
  withoutContained,
} from "../chem/index.ts";
import type { Equilibrium } from "../chem/index.ts";
import type { Issue } from "../units/index.ts";
import { readCase } from "./case.ts";
import { readDocument } from "./document.ts";
import { EXIT, finiteOrNull, sayIssues } from "./exit.ts";
import type { CliIo } from "./io.ts";

/** Solves one bare equilibrium and prints it as JSON. @returns the exit code */
export async function speciateCommand(name: string, strict: boolean, io: CliIo): Promise<number> {
  const document = await readDocument(name, io);
  const read = document.ok ? readCase(document.value) : document;
  if (!read.ok) return refuse("case-not-read", read.issues, name, io);
  sayIssues(read.issues, name, io);
  const { system, totals_molPerL, fixedLog10Activities, activity } = read.value;
  const problems = definitionProblems(system);
  if (problems.length > 0) {
    const issues = problems.map((problem): Issue => ({
      ...problem,
      code: `case-${problem.code}`,
      severity: "error",
    }));
    return refuse("case-not-usable", issues, name, io);
  }
  const { definition, leftOut } = isInteraction(activity)
    ? withoutContained(system, activity)
    : { definition: system, leftOut: [] };
  const result = equilibrate(compileSystem(definition), { totals_molPerL, fixedLog10Activities, activity });
  if (!result.ok) {
    const { reason, detail, iterations, residual } = result;
    print({ ok: false, reason, detail, iterations, residual }, io);
    io.stderr(`No equilibrium: ${detail} (${reason}).\n`);
    return reason === "not-converged" ? EXIT.noneFound : EXIT.badInput;
  }
  print(
    { ...answer(result.value), ...(isInteraction(activity) ? interaction(result.value, leftOut) : {}) },
    io,
  );
  if (leftOut.length > 0) {
    io.stderr(
      `Already contained in the interaction parameters, so not counted again: ${leftOut.join(", ")}.\n`,
    );
  }
  if (!result.value.extrapolated) return EXIT.done;
  io.stderr("The solution lies outside the range the activity model was fitted to.\n");
  return strict ? EXIT.outsideRange : EXIT.done;
}

function refuse(reason: string, issues: readonly Issue[], name: string, io: CliIo): number {
  print({ ok: false, reason, issues }, io);
  sayIssues(issues, name, io);
  return EXIT.badInput;
}

function print(value: unknown, io: CliIo): void {
  io.stdout(`${JSON.stringify(value, null, 2)}\n`);
}

/** What only an interaction model can say: its basis, what rests on estimates, what it does not count as species. */
function interaction(value: Equilibrium, leftOut: readonly string[]): Record<string, unknown> {
  const concentrations = { ...(answer(value)["concentrations"] as object) };
  for (const name of leftOut) Object.assign(concentrations, { [name]: null });
  return {
    concentrations,
    basis: "mol per kg of water",
    osmoticCoefficient: value.osmoticCoefficient,
    estimated: value.estimates,
    outsideRange: value.rangeNotes,
    containedInParameters: leftOut,
  };
}

function answer(equilibrium: Equilibrium): Record<string, unknown> {
  const { system, pH } = equilibrium;
  const by = (
    names: readonly string[],
    value: (index: number) => number | null,
  ): Record<string, number | null> => Object.fromEntries(names.map((name, index) => [name, value(index)]));
  return {
    ok: true,
    ...(pH === null ? {} : { pH }),
    ionicStrength: equilibrium.ionicStrength_molPerL,
    concentrations: by(system.speciesNames, (i) => equilibrium.concentrations[i] ?? null),
    activityCoefficients: by(system.speciesNames, (i) => Math.exp(equilibrium.lnGamma[i] ?? 0)),
    solids: by(system.solidNames, (i) => equilibrium.solids[i] ?? null),
    ...(equilibrium.waterActivity === null ? {} : { waterActivity: equilibrium.waterActivity }),
    saturationIndices: by(system.solidNames, (i) => finiteOrNull(equilibrium.saturationIndices[i])),
    extrapolated: equilibrium.extrapolated,
    iterations: equilibrium.iterations,
    residual: equilibrium.residual,
  };
}
