import { memo, Suspense, useMemo, useState } from "react";
import type { ReactElement } from "react";
import type { Programme } from "../agronomy/index.ts";
import { useEngine } from "./engine/use-engine.ts";
import type { EngineView } from "./engine/use-engine.ts";
import { AimGroup } from "./form/aim-group.tsx";
import { ConditionersGroup } from "./form/conditioners-group.tsx";
import { MixGroup } from "./form/mix-group.tsx";
import { SiteGroup } from "./form/site-group.tsx";
import { SprayGroup } from "./form/spray-group.tsx";
import { Waiting } from "./form/waiting.tsx";
import { WaterGroup } from "./form/water-group.tsx";
import { documentOf } from "./job/to-document.ts";
import type { BookView } from "./jobs/use-book.ts";
import { useResultKept } from "./jobs/use-result-kept.ts";
import { sayIn, useLanguage } from "./language/language-context.ts";
import { Patterns } from "./result/patterns.tsx";
import { late } from "./late.tsx";
import { PageFrame } from "./page-frame.tsx";
import { headline } from "./result/headline.ts";
import { useOneByOne } from "./use-one-by-one.ts";
import { useTyping } from "./use-typing.ts";

const results = import("./result/results.tsx");
// Asked for at once; that it could not be had is said where it is shown.
results.catch(() => undefined);
const Results = late(async () => (await results).Results);
const ThreeAnswers = late(async () => (await results).ThreeAnswers);

/** The page: left what you know, right what follows. */
export function App({ jobs }: { jobs: BookView }): ReactElement {
  const { draft } = jobs.state;
  const document = useMemo(() => documentOf(draft), [draft]);
  useTyping();
  const language = useLanguage();
  const engine = useEngine("plan", document, jobs.book.open ?? "");
  const [pickedId, setPickedId] = useState<string | null>(null);

  const picked = pickedProgramme(engine, pickedId);
  const words = engine.answer === null || picked === null ? "" : headline(engine.answer, picked, language);
  useResultKept(jobs, engine.answer?.plan.versions ?? null, words);
  return (
    <PageFrame jobs={jobs} document={document} engine={engine} picked={picked} groups={<Groups />}>
      <Patterns />
      <p className="visually-hidden" role="status">
        {engine.waiting ? "" : words}
      </p>
      <Waiting answer={engine} hasAnswer={engine.answer !== null} draft={draft} />
      <Suspense>
        {engine.answer !== null && picked !== null && (
          <Results
            planned={engine.answer}
            first={engine.first}
            picked={picked}
            onPick={setPickedId}
            askAbout={engine.askAbout}
            sample={draft.origin === "sample"}
          />
        )}
        {engine.answer === null && engine.first !== null && (
          <ThreeAnswers plan={engine.first.plan} job={engine.first.job} first />
        )}
      </Suspense>
      {engine.elapsed_ms !== null && (
        <p className="about elapsed" data-elapsed={engine.elapsed_ms}>
          {sayIn(language)("Computed here in {ms} ms. Nothing leaves this device.", {
            ms: Math.round(engine.elapsed_ms),
          })}
        </p>
      )}
    </PageFrame>
  );
}

const GROUPS = [WaterGroup, SprayGroup, MixGroup, ConditionersGroup, AimGroup, SiteGroup] as const;

/** The groups of the form, one after the other; they follow the form's view alone. */
const Groups = memo(function Groups(): ReactElement {
  const count = useOneByOne(GROUPS.length);
  return (
    <>
      {GROUPS.slice(0, count).map((Group, i) => (
        <Group key={i} />
      ))}
    </>
  );
});

/** The row picked, as long as it still exists; else the plan's own choice, else nothing added. */
function pickedProgramme(engine: EngineView, pickedId: string | null): Programme | null {
  const plan = engine.answer?.plan;
  if (plan === undefined) return null;
  const find = (id: string | null): Programme | undefined =>
    plan.programmes.find((programme) => programme.id === id && !programme.blocked);
  return find(pickedId) ?? find(plan.chosen) ?? plan.programmes.find((p) => p.kind === "none") ?? null;
}
