import { expect, test } from "vitest";
import { readJob } from "./job.ts";
import { knownOfActives } from "./known-of-active.ts";
import { builtInTrade } from "./trade-data.ts";

const trade = builtInTrade();

function known(mix: readonly object[]) {
  const job = readJob(
    {
      hardstand: 1,
      water: {
        source: "dam",
        readings: [{ parameter: "hardness", value: 100, unit: "mg/L as CaCO3" }],
      },
      spray: { volume: "100 L/ha", tank: "1000 L", area: "10 ha" },
      mix,
    },
    { trade },
  );
  if (!job.ok) throw new Error("job not read");
  return knownOfActives(job.value, trade);
}

const glyphosate = {
  active: "glyphosate",
  form: "potassium",
  strength: "540 g/L ae",
  rate: "1 L/ha",
  formulation: "SL",
};

test("every fact of each active is there once, with a citation behind it", () => {
  const { actives, sources } = known([glyphosate, { ...glyphosate, rate: "2 L/ha" }]);
  const record = trade.actives.find(({ id }) => id === "glyphosate")!;
  expect(actives).toHaveLength(1);
  expect(actives[0]!.cautions).toEqual(record.cautions);
  expect(actives[0]!.sensitivities).toEqual(record.waterSensitivities);
  expect(actives[0]!.sorption).toEqual(record.sorption);
  const keys = new Set(sources.map(({ key }) => key));
  for (const { source } of [...record.cautions, ...record.waterSensitivities, ...record.sorption])
    expect(keys).toContain(source);
  expect(sources.every(({ key, citation }) => citation !== key)).toBe(true);
});

test("of an active entered by hand nothing is invented", () => {
  const own = { name: "testamine", "molar mass": "300 g/mol", pKa: 3 };
  const { actives } = known([{ ...glyphosate, active: own, form: "potassium" }]);
  expect(actives[0]).toMatchObject({ name: "testamine", sensitivities: [], sorption: [] });
});
