import { describe, expect, it } from "vitest";
import { planJob, readJob, builtInTrade } from "../agronomy/index.ts";
import type { Job, Plan } from "../agronomy/index.ts";
import { builtInThermo } from "../chem/index.ts";
import { ENGLISH } from "../words/index.ts";
import { ionWords } from "./ion-words.ts";
import { planHtml } from "./plan-page.ts";
import { programmesSection } from "./plan-html-ways.ts";
import { planText } from "./plan-text.ts";

const data = { thermo: builtInThermo(), trade: builtInTrade() };
const HARD = [
  { parameter: "hardness", value: 350, unit: "mg/L as CaCO3" },
  { parameter: "pH", value: 7.6 },
];

function planned(change: Record<string, unknown>): { readonly plan: Plan; readonly job: Job } {
  const read = readJob(
    {
      hardstand: 1,
      water: { source: "bore", method: "laboratory", readings: HARD },
      spray: { volume: "200 L/ha", tank: "1000 L", area: "5 ha" },
      mix: [{ active: "glyphosate", strength: "360 g/L ae", rate: "2 L/ha", formulation: "SL" }],
      conditioners: [{ chemistry: "ammonium sulfate" }, { chemistry: "citric acid" }],
      ...change,
    },
    data,
  );
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const plan = planJob(read.value, data, { draws: 0 });
  if (!plan.ok) throw new Error(JSON.stringify(plan.issues));
  return { plan: plan.value, job: read.value };
}

/** The text of some HTML, its tags left out. */
const textOf = (markup: string): string => markup.replace(/<[^>]*>/g, " ").replace(/\s+/g, " ");
const ways = ({ plan, job }: ReturnType<typeof planned>): string =>
  textOf(programmesSection(plan, job.aim.where, ENGLISH).html);
const count = (text: string, part: string): number => text.split(part).length - 1;
const aim = (where: string, share = 0.9): Record<string, unknown> => ({
  aim: { "free share": share, confidence: 0.9, where },
});

describe("the ways out on paper", () => {
  it.each([
    ["in the tank", "Free in the tank Free on the leaf Aim (Free in the tank)"],
    ["on the leaf", "Free on the leaf Free in the tank Aim (Free on the leaf)"],
  ])("have first what the aim is about: %s", (where, heads) => {
    expect(ways(planned(aim(where)))).toContain(heads);
  });

  it("say once that nothing is added where nothing is", () => {
    const soft = planned({
      water: {
        source: "rain",
        method: "laboratory",
        readings: [
          { parameter: "hardness", value: 10, unit: "mg/L as CaCO3" },
          { parameter: "pH", value: 6.5 },
        ],
      },
      ...aim("in the tank", 0.5),
    });
    expect(soft.plan.chosen).toBe("none");
    const chosen = /Chosen: [^.]*\./.exec(ways(soft))![0];
    expect(count(chosen, "nothing added")).toBe(1);
  });

  describe("where what metals hold is not known", () => {
    // An active of which data/actives.json says that no constants with metals are published.
    const unknown = data.trade.actives.find(({ binding, forms }) => binding === "none" && forms.length > 0)!;
    const form = unknown.forms[0]!.id;
    const strength = "300 g/L";
    const one = planned({
      mix: [
        {
          active: unknown.id,
          form,
          strength,
          rate: "1 L/ha",
          formulation: unknown.formulations?.[0] ?? "SL",
        },
      ],
    });

    it("say that nothing could be judged, as the text does", () => {
      expect(one.plan.programmes.find(({ kind }) => kind === "none")!.meetsAim).toBeNull();
      const judged = ENGLISH.words.plan.noneJudged;
      expect(ways(one)).toContain(judged);
      expect(ways(one)).not.toContain("No programme meets the aim");
      expect(textOf(planText(one.plan, one.job.aim.where))).toContain(judged);
    });

    it("say once what is not computed", () => {
      const remarks = one.plan.programmes.flatMap((p) =>
        p.remarks.filter((r) => r.code === "binding-not-computed"),
      );
      expect(remarks.length).toBeGreaterThan(1);
      const page = textOf(planHtml(one.plan, one.job, { date: "2026-01-01", title: "x", sampled: null }));
      const why = page.slice(page.indexOf(ENGLISH.words.plan.why));
      const said = textOf(ENGLISH.phrases.say(remarks[0]!.text).text);
      expect(count(why, said)).toBe(1);
    });
  });
});

it("names of metals are those that answers give", () => {
  expect(["Ca+2", "Fe+2", "Zn+2", "Na+", "Cl-", "pH"].map(ionWords)).toEqual([
    "calcium",
    "iron",
    "zinc",
    "sodium",
    "chloride",
    "pH",
  ]);
});
