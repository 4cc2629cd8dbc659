import { expect, test } from "vitest";
import { readJob } from "./job.ts";
import { knownOfActives, shareOnMud } from "./known-of-active.ts";
import { builtInTrade } from "./trade-data.ts";

const trade = builtInTrade();

function known(readings: readonly object[], mix: readonly object[]) {
  const job = readJob(
    {
      hardstand: 1,
      water: {
        source: "dam",
        readings: [{ parameter: "hardness", value: 100, unit: "mg/L as CaCO3" }, ...readings],
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

test("half of an active is held where the solids times Kd are one", () => {
  const bound = { measure: "Kd", low_LPerKg: 1000, high_LPerKg: 3000 } as const;
  expect(shareOnMud(bound, 1e-3)).toEqual({ low: 0.5, high: 0.75 });
  expect(shareOnMud(bound, null)).toBeNull();
  expect(shareOnMud({ ...bound, measure: "Koc" }, 1e-3)).toBeNull();
});

test("what mud holds is computed from the suspended solids of the water, and only from them", () => {
  const muddy = known([{ parameter: "suspended solids", value: 500, unit: "mg/L" }], [glyphosate]);
  const record = trade.actives.find(({ id }) => id === "glyphosate")!;
  const Kd = record.sorption.find(({ measure }) => measure === "Kd")!;
  const held = (litres: number): number => (litres * 5e-4) / (1 + litres * 5e-4);
  expect(muddy.actives[0]!.sorption.find(({ measure }) => measure === "Kd")!.onMud).toEqual({
    low: held(Kd.low_LPerKg),
    high: held(Kd.high_LPerKg),
  });
  const unmeasured = known([{ parameter: "suspended solids", value: null, unit: "mg/L" }], [glyphosate]);
  expect(unmeasured.actives[0]!.sorption.every(({ onMud }) => onMud === null)).toBe(true);
});

test("every fact of each active is there once, with a citation behind it", () => {
  const { actives, sources } = known([], [glyphosate, { ...glyphosate, rate: "2 L/ha" }]);
  const record = trade.actives.find(({ id }) => id === "glyphosate")!;
  expect(actives).toHaveLength(1);
  expect(actives[0]!.cautions).toEqual(record.cautions);
  expect(actives[0]!.sensitivities).toEqual(record.waterSensitivities);
  const keys = new Set(sources.map(({ key }) => key));
  for (const { source } of [...record.cautions, ...record.waterSensitivities, ...record.sorption])
    expect(keys).toContain(source);
  expect(sources.every(({ key, citation }) => citation !== key)).toBe(true);
});

test("of an active entered by hand nothing is invented", () => {
  const own = { name: "testamine", "molar mass": "300 g/mol", pKa: 3 };
  const { actives } = known([], [{ ...glyphosate, active: own, form: "potassium" }]);
  expect(actives[0]).toMatchObject({ name: "testamine", sensitivities: [], sorption: [] });
});
