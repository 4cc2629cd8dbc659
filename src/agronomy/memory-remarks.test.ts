import { describe, expect, it } from "vitest";
import { builtInThermo } from "../chem/index.ts";
import { readJob } from "./job.ts";
import { memoryRemarks } from "./memory-remarks.ts";
import { planJob } from "./plan.ts";
import { builtInTrade } from "./trade-data.ts";
import type { Plan } from "./types.ts";

const data = { thermo: builtInThermo(), trade: builtInTrade() };

function planOf(calcium_mgPerL: number, conditioner: object): Plan {
  const read = readJob(
    {
      hardstand: 1,
      water: {
        source: "Water",
        readings: [
          { parameter: "calcium", value: calcium_mgPerL, unit: "mg/L" },
          { parameter: "sodium", value: 60, unit: "mg/L" },
          { parameter: "alkalinity", value: 100, unit: "mg/L as CaCO3" },
          { parameter: "pH", value: 7.4 },
        ],
      },
      mix: [
        {
          active: "glyphosate",
          form: "potassium",
          strength: "450 g/L ae",
          rate: "2 L/ha",
          formulation: "SL",
        },
      ],
      spray: { volume: "100 L/ha", tank: "2000 L", area: "20 ha", temperature: "15 °C" },
      aim: { "free share": 0.9, where: "on the leaf" },
      conditioners: [conditioner],
    },
    data,
  );
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const planned = planJob(read.value, data, { draws: 0 });
  if (!planned.ok) throw new Error(JSON.stringify(planned.issues));
  return planned.value;
}

describe("interactions from memory that an answer relies on", () => {
  const plan = planOf(90, { chemistry: "ammonium sulfate" });
  const with_ = (kind: (id: string) => boolean) =>
    plan.programmes.filter(({ conditioner }) => kind(conditioner));

  it("calcium with ammonium: said of a programme with an ammonium salt", () => {
    const [programme] = with_((id) => id === "ammonium-sulfate");
    expect(programme?.drying.fromMemory).toEqual(["Ca+2 NH4+"]);
    const said = programme?.remarks.filter(({ code }) => code === "interaction-from-memory");
    expect(said?.map(({ text }) => text)).toEqual([
      "calcium with ammonium: how they act on each other in strong solution is carried from memory.",
    ]);
    // What is borrowed from similar ions is another matter, and is said of other ions.
    expect(programme?.drying.estimated.join()).not.toContain("memory");
  });

  it("and not of the tank as planned, which has no ammonium, nor of a dilute tank", () => {
    const [programme] = with_((id) => id === "none");
    expect(programme?.drying.fromMemory).toEqual([]);
    expect(programme?.remarks.map(({ code }) => code)).not.toContain("interaction-from-memory");
    expect(plan.tank.fromMemory).toEqual([]);
  });

  it("names a pair once, in words where there are some", () => {
    expect(memoryRemarks(["Ca+2 NH4+", "Ca+2 NH4+"])).toHaveLength(1);
    expect(memoryRemarks(["IPA+ H2PO4-"])[0]?.text).toContain("IPA+ with phosphate:");
  });
});
