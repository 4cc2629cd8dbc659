import { useMemo } from "react";
import type { ComponentType, ReactElement } from "react";
import { stateWord, useEngine } from "../engine/use-engine.ts";
import { DraftContext, FormContext } from "../form/form-context.ts";
import { MixGroup } from "../form/mix-group.tsx";
import { SiteGroup } from "../form/site-group.tsx";
import { SprayGroup } from "../form/spray-group.tsx";
import { Waiting } from "../form/waiting.tsx";
import { WaterGroup } from "../form/water-group.tsx";
import type { Draft } from "../job/draft.ts";
import { keptPaper } from "../kept-paper.ts";
import type { KeptPaper } from "../kept-paper.ts";
import { useSay } from "../language/language-context.ts";
import { CausesGroup } from "./causes-group.tsx";
import { ComplaintAnswerView } from "./complaint-answer.tsx";
import { recordOf } from "./complaint-draft.ts";
import { ComplaintToolbar } from "./complaint-toolbar.tsx";
import { SeenGroup } from "./seen-group.tsx";
import { useComplaint } from "./use-complaint.ts";
import { UsedGroup } from "./used-group.tsx";

interface ComplaintScreenProps {
  readonly openJob: Draft;
}

/** The screen of a complaint, once the record that this browser keeps is at hand. */
export async function complaintScreen(): Promise<ComponentType<ComplaintScreenProps>> {
  const paper = await keptPaper("complaint");
  return (props) => <ComplaintScreen {...props} paper={paper} />;
}

/** An application that failed, and what its water could have taken of the dose. */
function ComplaintScreen({ openJob, paper }: ComplaintScreenProps & { paper: KeptPaper }): ReactElement {
  const say = useSay();
  const { state, keeping, dispatch, dispatchJob } = useComplaint(openJob, paper);
  const { draft } = state;
  const document = useMemo(() => recordOf(draft), [draft]);
  const engine = useEngine("complaint", document, "complaint");
  const { catalogue, issues, readSheet } = engine;
  const form = useMemo(
    () => ({ dispatch: dispatchJob, catalogue, issues, readSheet }),
    [dispatchJob, catalogue, issues, readSheet],
  );
  return (
    <div className="page">
      <a className="skip" href="#complaint-follows">
        {say("Skip to what follows")}
      </a>
      <ComplaintToolbar
        state={state}
        keeping={keeping}
        dispatch={dispatch}
        openJob={openJob}
        document={document}
        answered={engine.answer}
      />
      <FormContext value={form}>
        <main className="columns">
          <div className="know">
            <h2>{say("What is on record")}</h2>
            <DraftContext value={draft.job}>
              <WaterGroup others={false} />
              <SprayGroup />
              <MixGroup />
            </DraftContext>
            <UsedGroup used={draft.used} dispatch={dispatch} />
            <SeenGroup seen={draft.seen} dispatch={dispatch} />
            <DraftContext value={draft.job}>
              <SiteGroup />
            </DraftContext>
            <CausesGroup causes={draft.causes} dispatch={dispatch} />
          </div>
          <div className="follows" id="complaint-follows" tabIndex={-1} data-complaint={stateWord(engine)}>
            <h2>{say("What the water could have taken")}</h2>
            <Waiting answer={engine} hasAnswer={engine.answer !== null} draft={draft.job} />
            {engine.answer !== null && <ComplaintAnswerView answered={engine.answer} />}
          </div>
        </main>
      </FormContext>
    </div>
  );
}
