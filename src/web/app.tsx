import { memo, Suspense, useMemo, useState } from "react";
import type { ReactElement } from "react";
import type { Programme } from "../agronomy/index.ts";
import { BottomBar } from "./bottom-bar.tsx";
import { useEngine } from "./engine/use-engine.ts";
import type { EngineView } from "./engine/use-engine.ts";
import { AimGroup } from "./form/aim-group.tsx";
import { ConditionersGroup } from "./form/conditioners-group.tsx";
import { DraftContext, FormContext } from "./form/form-context.ts";
import { MixGroup } from "./form/mix-group.tsx";
import { SiteGroup } from "./form/site-group.tsx";
import { SprayGroup } from "./form/spray-group.tsx";
import { Waiting } from "./form/waiting.tsx";
import { WaterGroup } from "./form/water-group.tsx";
import { documentOf } from "./job/to-document.ts";
import { JobsBar } from "./jobs/jobs-bar.tsx";
import type { BookView } from "./jobs/use-book.ts";
import { useResultKept } from "./jobs/use-result-kept.ts";
import { sayIn, useLanguage } from "./language/language-context.ts";
import { OfflineBar } from "./offline/offline-bar.tsx";
import { Patterns } from "./result/patterns.tsx";
import { late } from "./late.tsx";
import { headline } from "./result/headline.ts";
import { Toolbar } from "./toolbar.tsx";
import { useOneByOne } from "./use-one-by-one.ts";
import { useTyping } from "./use-typing.ts";

const results = import("./result/results.tsx");
// Asked for at once; that it could not be had is said where it is shown.
results.catch(() => undefined);
const Results = late(async () => (await results).Results);
const ThreeAnswers = late(async () => (await results).ThreeAnswers);

/** The page: left what you know, right what follows. */
export function App({ jobs }: { jobs: BookView }): ReactElement {
  const { state, dispatch } = jobs;
  const { draft } = state;
  const document = useMemo(() => documentOf(draft), [draft]);
  useTyping();
  const language = useLanguage();
  const say = sayIn(language);
  const engine = useEngine("plan", document, jobs.book.open ?? "");
  const [pickedId, setPickedId] = useState<string | null>(null);

  const picked = pickedProgramme(engine, pickedId);
  const words = engine.answer === null || picked === null ? "" : headline(engine.answer, picked, language);
  useResultKept(jobs, engine.answer?.plan.versions ?? null, words);
  const form = useMemo(
    () => ({
      dispatch,
      catalogue: engine.catalogue,
      issues: engine.issues,
      readSheet: engine.readSheet,
    }),
    [dispatch, engine.catalogue, engine.issues, engine.readSheet],
  );
  return (
    <div className="page">
      <Patterns />
      <a className="skip" href="#what-follows">
        {say("Skip to what follows")}
      </a>
      <Toolbar state={state} dispatch={dispatch} onBegin={jobs.begin} document={document} />
      <JobsBar view={jobs} />
      <OfflineBar />
      <main className="columns">
        <div className="know">
          <h2>{say("What you know")}</h2>
          <FormContext value={form}>
            <DraftContext value={draft}>
              <Groups />
            </DraftContext>
          </FormContext>
        </div>
        <div className="follows" id="what-follows" tabIndex={-1} data-state={stateWord(engine)}>
          <h2>{say("What follows")}</h2>
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
              {say("Computed here in {ms} ms. Nothing leaves this device.", {
                ms: Math.round(engine.elapsed_ms),
              })}
            </p>
          )}
        </div>
      </main>
      <BottomBar planned={engine.answer} first={engine.first} picked={picked} waiting={engine.waiting} />
    </div>
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

function stateWord(engine: EngineView): "working" | "blocked" | "done" | "failed" {
  if (engine.failed) return "failed";
  if (engine.blocked) return "blocked";
  return engine.waiting ? "working" : "done";
}

/** The row picked, as long as it still exists; else the plan's own choice, else nothing added. */
function pickedProgramme(engine: EngineView, pickedId: string | null): Programme | null {
  const plan = engine.answer?.plan;
  if (plan === undefined) return null;
  const find = (id: string | null): Programme | undefined =>
    plan.programmes.find((programme) => programme.id === id && !programme.blocked);
  return find(pickedId) ?? find(plan.chosen) ?? plan.programmes.find((p) => p.kind === "none") ?? null;
}
