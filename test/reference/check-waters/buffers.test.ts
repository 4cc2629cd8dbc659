import { describe, it } from "vitest";
import { builtInThermo, logKAt } from "../../../src/chem/index.ts";
import { checkCase, compare } from "./compare.ts";
import { solve } from "./solution.ts";

const GROUP = "pH standards and ammonia";

/** What is known to lie outside its tolerance, ours by check id and temperature. */
const OUTSIDE: Readonly<Record<string, number>> = {};

describe("pH standards", () => {
  const standards = [
    "buffer-phosphate-equimolal",
    "buffer-phosphate-1-3.5",
    "buffer-borax",
    "buffer-carbonate",
  ];
  const points = standards.flatMap((id) => {
    const { expected } = checkCase(id);
    const table = (expected.pH_at_T ?? { "25": expected.pH }) as Record<string, number>;
    return Object.entries(table).map(([T, pH]) => [id, Number(T), pH] as const);
  });
  it.each(points)("%s at %d °C", (id, temperature_C, theirs) => {
    const check = checkCase(id);
    const { tolerance } = check;
    const ours = solve({ totals: check.input.totals_mol_kg as Record<string, number>, temperature_C }).pH;
    const known = OUTSIDE[`${id} ${String(temperature_C)}`];
    compare({
      check,
      group: GROUP,
      what: `${check.what}, pH at ${String(temperature_C)} °C`,
      published: theirs,
      ours,
      tolerance: tolerance.pH ?? (temperature_C === 25 ? tolerance.pH_at_25 : tolerance.pH_at_0_to_10)!,
      ...(known === undefined ? {} : { outside: { ours: known, reason: "constants or activity model" } }),
    });
  });
});

describe("ammonia", () => {
  const ammonia = builtInThermo().species.find((s) => s.id === "NH3")!;

  it("half of it is un-ionised at the pKa", () => {
    const check = checkCase("nh3-fraction-pka");
    const solution = solve({
      totals: { "NH4+": 1e-4 },
      fixedLog10Activities: { "H+": -(check.input.pH as number) },
      electroneutral: false,
    });
    compare({
      check,
      group: GROUP,
      what: "un-ionised share of 0.1 mmol/kg ammonia at pH 9.25, 25 °C",
      published: check.expected.fraction_NH3 as number,
      ours: solution.concentration("NH3") / 1e-4,
      tolerance: check.tolerance.fraction_NH3!,
    });
    compare({
      check,
      group: GROUP,
      what: "pKa of ammonium at 25 °C",
      published: check.expected.pKa as number,
      ours: -logKAt(ammonia, 25),
      tolerance: check.tolerance.pKa!,
    });
  });

  const table = checkCase("nh3-fraction-temperature");
  it.each(Object.entries(table.expected as Record<string, Record<string, number>>))(
    "at %s °C",
    (T, expected) => {
      const pKa = -logKAt(ammonia, Number(T));
      const common = { check: table, group: GROUP };
      compare({
        ...common,
        what: `pKa of ammonium at ${T} °C`,
        published: expected.pKa!,
        ours: pKa,
        tolerance: table.tolerance.pKa!,
      });
      for (const pH of [8, 9]) {
        const theirs = expected[`fraction_NH3_pH${String(pH)}`]!;
        compare({
          ...common,
          what: `un-ionised share of ammonia at ${T} °C and pH ${String(pH)}, infinite dilution`,
          published: theirs,
          ours: 1 / (1 + 10 ** (pKa - pH)),
          tolerance: theirs * table.tolerance.relative_fraction!,
        });
      }
    },
  );
});
