import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { builtInThermo } from "../chem/index.ts";
import { readJob } from "./job.ts";
import { planInTasks, planJob } from "./plan.ts";
import { helpPlans, planLine, planTogether, prepareHelper } from "./plan-together.ts";
import type { PlanLine, PlanMessage, PlanThread } from "./plan-together.ts";
import { atOnce } from "./steps.ts";
import { builtInTrade } from "./trade-data.ts";
import type { Job, Plan } from "./types.ts";
import type { Read } from "../units/index.ts";

const data = { thermo: builtInThermo(), trade: builtInTrade() };
const DRAWS = { draws: 60 };

function jobOf(change: object = {}): Job {
  const read = readJob(
    {
      hardstand: 1,
      water: {
        source: "House bore",
        readings: [
          { parameter: "calcium", value: 120, unit: "mg/L" },
          { parameter: "magnesium", value: 45, unit: "mg/L" },
          { parameter: "alkalinity", value: 250, unit: "mg/L as CaCO3" },
          { parameter: "pH", value: 7.6 },
          { parameter: "iron", value: 1.2, unit: "mg/L" },
        ],
      },
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
      conditioners: [
        { chemistry: "ammonium sulfate", price: "0.60 /kg" },
        { chemistry: "citric acid", price: "2.50 /kg" },
      ],
      ...change,
    },
    data,
  );
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.value;
}

const RAIN = {
  source: "Rain tank",
  readings: [
    { parameter: "hardness", value: 15, unit: "mg/L as CaCO3" },
    { parameter: "alkalinity", value: 10, unit: "mg/L as CaCO3" },
    { parameter: "pH", value: 6.4 },
  ],
};

const thread: PlanThread = {
  turn: () => new Promise((resolve) => void setImmediate(resolve)),
  isDue: () => false,
  after: (time_ms, call) => {
    const timer = setTimeout(call, time_ms);
    return () => {
      clearTimeout(timer);
    };
  },
};
/** A thread that has no patience at all. */
const impatient: PlanThread = { ...thread, after: (_, call) => thread.after(0, call) };

/** Two ends of a line, and what went over it to the one who is helped; each message is a copy, as between threads. */
function lines(): { readonly here: PlanLine; readonly there: PlanLine; readonly said: PlanMessage[] } {
  const said: PlanMessage[] = [];
  const over = (to: () => PlanLine) => (message: PlanMessage) => {
    const copy = structuredClone(message);
    setImmediate(() => {
      to().heard(copy);
    });
  };
  const here: PlanLine = planLine(over(() => there));
  const toHere = over(() => here);
  const there: PlanLine = planLine((message) => {
    said.push(message);
    toHere(message);
  });
  return { here, there, said };
}

const text = (plan: Read<Plan> | null): string => JSON.stringify(plan);
const doneBy = (said: readonly PlanMessage[]): number => said.filter(({ type }) => type === "done").length;

const JOBS: Readonly<Record<string, Job>> = {
  "two conditioners": jobOf(),
  "another source": jobOf({ "other waters": [{ ...RAIN, price: "1.50 /m3" }] }),
  "air and iron": jobOf({
    spray: {
      ...{ volume: "150 L/ha", tank: "3000 L", area: "38 ha", temperature: "14 °C" },
      ...{ "holding time": "3 h", aerated: true },
    },
  }),
  "more of the active": jobOf({
    mix: [
      {
        ...{ active: "glyphosate", form: "isopropylammonium", strength: "360 g/L ae", formulation: "SL" },
        ...{ rate: "1 L/ha", "most rate": "3 L/ha" },
      },
    ],
  }),
};

describe("a plan made in two threads", () => {
  test.each(Object.keys(JOBS))("is that of one to the last digit: %s", async (name) => {
    const alone = planJob(JOBS[name]!, data, DRAWS);
    expect(alone.ok).toBe(true);
    const { here, there, said } = lines();
    helpPlans(there, data, thread);
    expect(text(await planTogether(JOBS[name]!, data, thread, here, DRAWS))).toBe(text(alone));
    expect(doneBy(said)).toBeGreaterThan(1);
  });

  test("is that of one to the last digit for any water, rate and volume", async () => {
    const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
    const facts = fc.tuple(between(10, 250), between(0.3, 1.2), between(6.5, 8.2), between(60, 300));
    await fc.assert(
      fc.asyncProperty(facts, async ([calcium, alkalinity, pH, volume]) => {
        const readings = [
          { parameter: "calcium", value: calcium, unit: "mg/L" },
          { parameter: "alkalinity", value: 2.5 * calcium * alkalinity, unit: "mg/L as CaCO3" },
          { parameter: "pH", value: pH },
        ];
        const job = jobOf({
          water: { source: "any", readings },
          "other waters": [RAIN],
          spray: {
            volume: `${String(Math.round(volume))} L/ha`,
            tank: "3000 L",
            area: "38 ha",
            temperature: "14 °C",
          },
        });
        const { here, there } = lines();
        helpPlans(there, data, thread);
        const few = { draws: 20 };
        expect(text(await planTogether(job, data, thread, here, few))).toBe(text(planJob(job, data, few)));
      }),
      { numRuns: 5 },
    );
  });

  test("is the same whatever was planned before", () => {
    const before = planJob(JOBS["two conditioners"]!, data, DRAWS);
    planJob(JOBS["another source"]!, data, { draws: 0 });
    expect(text(planJob(JOBS["two conditioners"]!, data, DRAWS))).toBe(text(before));
  });

  test("is the same without ranges, and for the tank as planned alone", async () => {
    const { here, there } = lines();
    helpPlans(there, data, thread);
    for (const options of [{ draws: 0 }, { draws: 0, waysOut: false }])
      expect(text(await planTogether(jobOf(), data, thread, here, options))).toBe(
        text(planJob(jobOf(), data, options)),
      );
  });
});

describe("a plan that is given up", () => {
  /** Has a turn at every step, and counts them. */
  function counting(): { readonly thread: PlanThread; readonly turns: () => number } {
    let count = 0;
    const turn = async (): Promise<void> => {
      count += 1;
      await thread.turn();
    };
    return { thread: { ...thread, turn, isDue: () => true }, turns: () => count };
  }

  test("is left at the next turn, in the middle of a task too", async () => {
    const whole = counting();
    const alone = await planTogether(jobOf(), data, whole.thread, null, DRAWS);
    expect(text(alone)).toBe(text(planJob(jobOf(), data, DRAWS)));
    for (let last = 1; last < whole.turns(); last += Math.ceil(whole.turns() / 40)) {
      const { thread: counted, turns } = counting();
      expect(
        await planTogether(jobOf(), data, counted, null, DRAWS, () => turns() >= last),
        `given up at turn ${String(last)}`,
      ).toBeNull();
      expect(turns()).toBe(last);
    }
  });

  test("has turns within every task that solves draws", async () => {
    const { thread: counted, turns } = counting();
    const steps = planInTasks(jobOf(), data, DRAWS);
    let tasks = 0;
    for (let step = steps.next(); step.done !== true; step = steps.next()) {
      atOnce(step.value.wanted[0]!.run());
      tasks += 1;
    }
    await planTogether(jobOf(), data, counted, null, DRAWS);
    // 15 draws solved at each of two places at the least, for each of the programmes that are judged.
    expect(turns()).toBeGreaterThan(tasks + 30 * 3);
  });
});

describe("a plan whose helper", () => {
  const job = JOBS["another source"]!;
  const alone = text(planJob(job, data, DRAWS));

  test("is not there is made alone", async () => {
    expect(text(await planTogether(job, data, thread, null, DRAWS))).toBe(alone);
  });

  test("dies at work goes on without it", async () => {
    const { here, there, said } = lines();
    let dead = false;
    const { send } = there;
    there.send = (message) => {
      if (dead) return;
      send(message);
      if (message.type !== "begun" || doneBy(said) < 2) return;
      // It has begun its third task, and no more is heard of it.
      dead = true;
      setImmediate(() => {
        here.lost();
      });
    };
    helpPlans(there, data, thread);
    expect(text(await planTogether(job, data, thread, here, DRAWS))).toBe(alone);
    expect(dead).toBe(true);
  });

  test("falls silent is waited for no longer than patience lasts", async () => {
    const { here, there } = lines();
    there.heard = (message) => {
      if (message.type === "plan")
        for (let k = 0; k < 20; k++)
          there.send({ type: "begun", plan: message.plan, key: `way ${String(k)}` });
    };
    expect(text(await planTogether(job, data, impatient, here, DRAWS))).toBe(alone);
  });

  test("has data that it cannot plan with says so, and is not waited for", async () => {
    const { here, there, said } = lines();
    const trade = {
      ...data.trade,
      get rules(): never {
        throw new Error("no rules here");
      },
    };
    helpPlans(there, { ...data, trade }, thread);
    expect(text(await planTogether(job, data, thread, here, DRAWS))).toBe(alone);
    expect(said.map(({ type }) => type)).toEqual(["begun", "over"]);
  });

  test("cannot be sent the job is done without", async () => {
    const line = planLine(() => {
      throw new Error("cannot be copied");
    });
    expect(text(await planTogether(job, data, thread, line, DRAWS))).toBe(alone);
  });

  test("is asked for another job helps with that one", async () => {
    const { here, there, said } = lines();
    helpPlans(there, data, thread);
    let newest = 1;
    const first = planTogether(job, data, thread, here, DRAWS, () => newest !== 1);
    for (let k = 0; k < 6; k++) await thread.turn();
    newest = 2;
    const other = JOBS["two conditioners"]!;
    const second = planTogether(other, data, thread, here, DRAWS, () => newest !== 2);
    expect(await first).toBeNull();
    expect(text(await second)).toBe(text(planJob(other, data, DRAWS)));
    const last = said.at(-1)!;
    expect(
      "plan" in last && said.filter((one) => "plan" in one && one.plan === last.plan).length,
    ).toBeGreaterThan(2);
  });

  test("is to be quick makes a plan for itself first", async () => {
    const { here, there, said } = lines();
    helpPlans(there, data, thread);
    await new Promise<void>((resolve) => {
      prepareHelper(here, job, { draws: 0 }, resolve);
    });
    expect(said).toEqual([{ type: "ready" }]);
    expect(text(await planTogether(job, data, thread, here, DRAWS))).toBe(alone);
  });
});
