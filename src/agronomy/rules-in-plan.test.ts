import { expect, test } from "vitest";
import { builtInThermo } from "../chem/index.ts";
import { readJob } from "./job.ts";
import { planJob } from "./plan.ts";
import { builtInTrade } from "./trade-data.ts";

const thermo = builtInThermo();
const trade = builtInTrade();

/** Ids of all rules that a plan speaks of. */
function spoken(changes: Readonly<Record<string, unknown>>): readonly string[] {
  const read = readJob(
    {
      hardstand: 1,
      water: { source: "Bore", readings: [{ parameter: "hardness", value: 120, unit: "mg/L as CaCO3" }] },
      spray: { volume: "100 L/ha", tank: "1000 L", area: "10 ha" },
      mix: [
        {
          active: "glyphosate",
          form: "potassium",
          strength: "450 g/L ae",
          rate: "2 L/ha",
          formulation: "SL",
        },
      ],
      conditioners: [{ chemistry: "ammonium sulfate" }, { chemistry: "citric acid" }],
      ...changes,
    },
    { trade },
  );
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const plan = planJob(read.value, { thermo, trade }, { draws: 0 });
  if (!plan.ok) throw new Error(JSON.stringify(plan.issues));
  const { programmes, actives } = plan.value;
  return [
    ...programmes.flatMap(({ reasons }) => reasons.map(({ id }) => id)),
    ...actives.flatMap(({ rules }) => rules.map(({ id }) => id)),
  ];
}

test("what a job does not say fires no rule about it, and what it says does", () => {
  const asked = [
    "metal-feed-glyphosate",
    "ammonium-bleach",
    "acid-bleach",
    "softened-water-weak-acids",
    "galvanised-glyphosate",
    "ammonium-metals",
    "nitrogen-scorch",
  ];
  const unsaid = spoken({});
  for (const id of asked) expect(unsaid, id).not.toContain(id);
  const said = spoken({
    partners: ["manganese", "bleach"],
    site: {
      "water treatments": ["softener"],
      metals: ["galvanised steel"],
      "air temperature": "31 °C",
    },
  });
  for (const id of asked) expect(said, id).toContain(id);
  const none = spoken({
    partners: [],
    site: { "water treatments": [], metals: [], "air temperature": "12 °C" },
  });
  for (const id of asked) expect(none, id).not.toContain(id);
});
