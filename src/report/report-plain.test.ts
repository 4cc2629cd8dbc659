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

it("tells the rates of products in the measures of the job, the metric ones beside", () => {
  const readings = [
    { parameter: "hardness", value: 350, unit: "mg/L as CaCO3" },
    { parameter: "pH", value: 7.6 },
  ];
  const water = { source: "bore", method: "laboratory", readings };
  const product = {
    active: "glyphosate",
    form: "isopropylammonium",
    strength: "3 lb/US gal ae",
    formulation: "SL",
  };
  const asked = (spray: object, rate: string): string => {
    const job = readJob({ hardstand: 1, water, spray, mix: [{ ...product, rate }], conditioners: [] }, data);
    if (!job.ok) throw new Error(JSON.stringify(job.issues));
    const plan = planJob(job.value, data, { draws: 0 });
    if (!plan.ok) throw new Error(JSON.stringify(plan.issues));
    const facts = { date: "2026-03-02", title: null, sampled: null };
    const { parts } = plainReport(plan.value, job.value, facts, plan.value.programmes[0]!, ENGLISH);
    return parts.find(({ key }) => key === "asked")?.lines[1]?.said.text ?? "";
  };
  const us = { volume: "10 US gal/ac", tank: "300 US gal", area: "40 ac" };
  // 24 × 29.5735 mL on 0.404686 ha are 1.754 L/ha; 1.5 × 0.946353 L are 3.508 L/ha (NIST Handbook 44, appendix C).
  expect(asked(us, "24 fl oz/ac")).toContain(", 24 US fl oz/ac (1.75 L/ha).");
  expect(asked(us, "1.5 qt/ac")).toContain(", 1.5 US qt/ac (3.51 L/ha).");
  const imperial = { volume: "90 L/ha", tank: "200 imp gal", area: "16 ha" };
  expect(asked(imperial, "1.75 L/ha")).toContain(", 1.25 imp pt/ac (1.75 L/ha).");
});
