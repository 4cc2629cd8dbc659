import { expect, it } from "vitest";
import { builtInTrade, planJob, readJob } from "../agronomy/index.ts";
import { builtInThermo } from "../chem/index.ts";
import { ENGLISH } from "../words/index.ts";
import { plainReport } from "./report-plain.ts";

const data = { thermo: builtInThermo(), trade: builtInTrade() };

it("calls each product by its name on the can, else by the name of its active", () => {
  const rest = { strength: "100 g/L ae", rate: "1 L/ha", formulation: "SL" };
  const mix = [
    { active: "2,4-D", form: "dimethylammonium", ...rest },
    { active: "mecoprop-P", form: "dimethylammonium", ...rest },
    { active: "glyphosate", form: "isopropylammonium", name: "the red can", ...rest },
  ];
  const readings = [
    { parameter: "hardness", value: 350, unit: "mg/L as CaCO3" },
    { parameter: "pH", value: 7.6 },
  ];
  const water = { source: "bore", method: "laboratory", readings };
  const spray = { volume: "200 L/ha", tank: "1000 L", area: "5 ha" };
  const job = readJob({ hardstand: 1, water, spray, mix, conditioners: [] }, data);
  if (!job.ok) throw new Error(JSON.stringify(job.issues));
  const plan = planJob(job.value, data, { draws: 0 });
  if (!plan.ok) throw new Error(JSON.stringify(plan.issues));
  const facts = { date: "2026-03-02", title: null, sampled: null };
  const { parts } = plainReport(plan.value, job.value, facts, plan.value.programmes[0]!, ENGLISH);
  const asked = parts.find(({ key }) => key === "asked")?.lines.map(({ said }) => said.text) ?? [];
  expect(asked.slice(1, 4)).toEqual([
    "2,4-D, 100 g/L, 1 L/ha.",
    "Mecoprop-P, 100 g/L, 1 L/ha.",
    "The red can, 100 g/L, 1 L/ha.",
  ]);
});
