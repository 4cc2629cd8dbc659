import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { inProject } from "../../scripts/project.mjs";
import {
  builtInTrade,
  FEEDS,
  OTHER_PARTNERS,
  planJob,
  readJob,
  SPRAYER_METALS,
  WATER_TREATMENTS,
} from "../../src/agronomy/index.ts";
import type { Plan, TitledJob } from "../../src/agronomy/index.ts";
import { builtInThermo } from "../../src/chem/index.ts";
import { fillCard } from "../../src/report/index.ts";
import type { FillCard } from "../../src/report/index.ts";
import { plainReport } from "../../src/report/report-plain.ts";
import { loadLanguage } from "../../src/words/index.ts";
import type { Language } from "../../src/words/index.ts";

const trade = builtInTrade();
const languages = await Promise.all((["de", "fr", "es"] as const).map(loadLanguage));
/** Between them they have every kind of step: conditioners, blends, settled iron, leaf feeds. */
const jobs = ["top-bore.yaml", "two-sources.yaml", "iron-bore.yaml", "manganese-feed.yaml"];

/** What the data say: names, forms, steps, cautions, published rules, notes, and where a water begins to harm. */
function textsOfData(): readonly string[] {
  const records = [...trade.actives, ...trade.conditioners, ...trade.feeds];
  return [
    ...records.flatMap((one) => [one.name, ...one.cautions.map(({ text }) => text)]),
    ...[...trade.actives, ...trade.conditioners].flatMap((one) => one.forms.map(({ name }) => name)),
    ...trade.conditioners.flatMap(({ environment }) => (environment === null ? [] : [environment.text])),
    ...Object.values(trade.formulations.groupNames),
    ...trade.affinityClasses.map(({ name }) => name),
    ...[...FEEDS, ...OTHER_PARTNERS, ...WATER_TREATMENTS, ...SPRAYER_METALS],
    ...trade.formulations.order.map(({ why }) => why),
    ...trade.formulations.order.map(({ say }) => say.replace("{label}", "glyphosate SL")),
    ...trade.rules.flatMap(({ text, contradictedBy }) => [text, contradictedBy ?? ""]),
    ...trade.conditioners.flatMap(({ notes }) => notes.map(({ text }) => text)),
    ...trade.actives.flatMap(({ bindingNote }) => bindingNote ?? []),
    ...trade.actives.flatMap(({ waterSensitivities }) =>
      waterSensitivities.flatMap(({ factor, level, threshold }) => [factor, level, threshold ?? ""]),
    ),
    ...trade.actives.flatMap(({ sorption }) => sorption.map(({ matrix }) => matrix)),
    trade.doseRules.cationFormula.text,
    ...trade.cautions
      .filter(({ scope }) => ["always", "conditioner"].includes(scope))
      .map(({ text }) => text),
  ];
}

function planned(name: string): { readonly job: TitledJob; readonly plan: Plan } {
  const document: unknown = parse(readFileSync(inProject("examples", "jobs", name), "utf8"));
  const job = readJob(document, { trade });
  if (!job.ok) throw new Error(`${name} cannot be read`);
  const plan = planJob(job.value, { thermo: builtInThermo(), trade });
  if (!plan.ok) throw new Error(`${name} cannot be planned`);
  return { job: job.value, plan: plan.value };
}

const plans = jobs.map(planned);

/** Texts of a card that stayed English. */
function englishOf(card: FillCard): readonly string[] {
  const said = [...card.before, ...card.steps.flatMap(({ what, cautions }) => [what, ...cautions])];
  return said.filter(({ isEnglish }) => isEnglish).map(({ text }) => text);
}

describe.each(languages.map((language): [string, Language] => [language.tag, language]))(
  "%s",
  (_, language) => {
    test("has every name, step, rule, note, threshold and caution of the data", () => {
      expect(textsOfData().filter((text) => text !== "" && !language.phrases.has(text))).toEqual([]);
    });

    test("leaves nothing in English on the cards of the examples", () => {
      const left = plans.flatMap(({ plan }) =>
        plan.programmes.flatMap(({ id }) => {
          const facts = { date: "2026-03-02", title: null, sampled: "2026-03-01", programme: id };
          return englishOf(fillCard(plan, facts, language));
        }),
      );
      expect([...new Set(left)]).toEqual([]);
    });

    test("leaves nothing in English on the first page of the reports", () => {
      const left = plans.flatMap(({ job, plan }) =>
        plan.programmes.flatMap((programme) => {
          const facts = { date: "2026-03-02", title: null, sampled: "2026-03-01" };
          const { parts } = plainReport(plan, job, facts, programme, language);
          return parts.flatMap(({ lines }) => lines.map(({ said }) => said));
        }),
      );
      expect(left.length).toBeGreaterThan(100);
      const english = left.filter(({ isEnglish }) => isEnglish).map(({ text }) => text);
      expect([...new Set(english)]).toEqual([]);
    });

    test("says in its own words what was assumed and remarked in the examples", () => {
      const said = plans.flatMap(({ plan }) => [
        ...plan.water.assumptions.map(({ why }) => why),
        ...plan.programmes.flatMap(({ remarks }) => remarks.map(({ text }) => text)),
        ...plan.order.map(({ why }) => why),
        ...plan.sprayer.map(({ text }) => text),
      ]);
      expect(said.length).toBeGreaterThan(50);
      expect([...new Set(said)].filter((text) => !language.phrases.has(text))).toEqual([]);
    });
  },
);
