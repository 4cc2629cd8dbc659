import { expect, test } from "vitest";
import { builtInThermo, isInteraction } from "../chem/index.ts";
import { readJob } from "./job.ts";
import { asPlanned } from "./programmes.ts";
import { settingOf } from "./setting.ts";
import { builtInTrade } from "./trade-data.ts";

const data = { thermo: builtInThermo(), trade: builtInTrade() };

function settingNow(): Parameters<typeof asPlanned>[0] {
  const read = readJob(
    {
      hardstand: 1,
      water: { source: "bore", readings: [{ parameter: "hardness", value: 300, unit: "mg/L as CaCO3" }] },
      spray: { volume: "150 L/ha", tank: "3000 L", area: "38 ha", temperature: "14 °C" },
      mix: [
        {
          active: "glyphosate",
          form: "isopropylammonium",
          strength: "360 g/L ae",
          rate: "2 L/ha",
          formulation: "SL",
        },
      ],
    },
    data,
  );
  const setting = read.ok ? settingOf(read.value, data, 0) : read;
  if (!setting.ok) throw new Error(JSON.stringify(setting.issues));
  return setting.value;
}

test("what an answer was solved by is still known when many other tanks were solved since", () => {
  const setting = settingNow();
  const { chemistry } = setting;
  const { tank } = asPlanned(setting);
  const answer = chemistry.inTank(tank);
  if (!answer.ok) throw new Error(answer.detail);
  expect(isInteraction(chemistry.conditionsInTank(tank, answer.value).activity)).toBe(false);
  for (let k = 1; k <= 210; k++) chemistry.inTank({ ...tank, temperature_C: 14 + k / 50 });
  expect(isInteraction(chemistry.conditionsInTank(tank, answer.value).activity)).toBe(false);
});

test("an answer begun afresh is the same to the last digit whatever was solved before", () => {
  const setting = settingNow();
  const { tank } = asPlanned(setting);
  const less = { ...tank, totals_molPerL: { ...tank.totals_molPerL, "Ca+2": 1e-3 } };
  const shares = (): unknown => {
    const chemistry = setting.chemistry.afresh();
    const dried = chemistry.dry(tank, "never", [1, 10]);
    const answer = chemistry.inTank(tank);
    if (!dried.ok || !answer.ok) throw new Error("not solved");
    return [answer.value, dried.steps.at(-1)!.equilibrium].map((one) => one.concentrations.slice());
  };
  const first = shares();
  setting.chemistry.inTank(less);
  setting.chemistry.dry(less, "never", [1, 10]);
  expect(shares()).toEqual(first);
});
