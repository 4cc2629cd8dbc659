import { expect, test } from "vitest";
import { equationsOf, solveGenerally } from "../../bench/general-solver.ts";
import { tankProblem, variedTanks } from "../../bench/problems.ts";
import { equilibrate } from "../../src/chem/index.ts";

// The benchmark is fair only where both solve the same problem. No time is tested here.

const problem = tankProblem("without solids");
const equations = equationsOf(problem);

test("our equilibrium solves the equations of the general solver", () => {
  for (const tank of [problem, ...variedTanks(10, 1)]) {
    const answer = equilibrate(tank.system, tank.conditions);
    if (!answer.ok) throw new Error(answer.reason);
    const general = equationsOf(tank);
    const { residuals } = general.evaluate(general.startFrom(answer.value));
    expect(Math.max(...residuals.map(Math.abs))).toBeLessThan(1e-9);
  }
});

test("the general solver comes to our equilibrium", () => {
  const answer = equilibrate(problem.system, problem.conditions);
  const general = solveGenerally(equations, equations.start);
  if (!answer.ok || general === null) throw new Error("no answer");
  general.lnConcentrations.forEach((value, i) =>
    expect(value / Math.LN10).toBeCloseTo(answer.value.log10Concentrations[i]!, 8),
  );
});

test("its derivatives are those of its equations", () => {
  const at = [...equations.start];
  const { residuals, jacobian } = equations.evaluate(at);
  const step = 1e-6;
  for (let k = 0; k < equations.size; k++) {
    const moved = equations.evaluate(at.map((value, j) => (j === k ? value + step : value))).residuals;
    for (let row = 0; row < equations.size; row++)
      expect((moved[row]! - residuals[row]!) / step).toBeCloseTo(jacobian[row]![k]!, 4);
  }
});
