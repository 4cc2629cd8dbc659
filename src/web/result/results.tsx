import { memo, useMemo } from "react";
import type { ReactElement } from "react";
import type { Plan, Programme } from "../../agronomy/index.ts";
import type { FirstAnswer, Planned } from "../engine/messages.ts";
import type { EngineView } from "../engine/use-engine.ts";
import { Section } from "../form/section.tsx";
import { saveText } from "../save-text.ts";
import { sayIn, useLanguage, useSay } from "../language/language-context.ts";
import { ActiveAnswer } from "./active-answer.tsx";
import { CardSection } from "./card-section.tsx";
import { AnswerLine } from "./answer-line.tsx";
import { Certainty } from "./certainty.tsx";
import { alkalinitySum } from "./chemistry-sums.ts";
import { CostPicture } from "./cost-picture.tsx";
import { Cautions, Jar, LoadTable, Order } from "./filling.tsx";
import { ReportSection } from "./report-section.tsx";
import { shortCitation, SourcesContext } from "./sources-context.ts";
import { KnownActives } from "./known-actives.tsx";
import { MoneyFacts } from "./money-facts.tsx";
import { SumList } from "./sum-list.tsx";
import { fillingSums, hardnessSum } from "./sums.ts";
import { Sources, WaterFacts } from "./water-facts.tsx";
import { ThreeAnswers } from "./three-answers.tsx";
import { programmeWords } from "./programme-words.ts";
import { WaysOut } from "./ways-out.tsx";
import { WorkingsPanel } from "./workings-panel.tsx";

export { ThreeAnswers } from "./three-answers.tsx";

interface ResultsProps {
  readonly planned: Planned;
  /** The tank as planned of a newer document whose ways out are still worked out. */
  readonly first: FirstAnswer | null;
  readonly picked: Programme;
  readonly onPick: (id: string) => void;
  readonly askAbout: EngineView<"plan">["askAbout"];
  /** True for a sample that nobody has made their own. */
  readonly sample: boolean;
}

/** Everything that follows from the job; it stays as it is while one types, until there is something new. */
export const Results = memo(function Results({ first, sample, ...whole }: ResultsProps): ReactElement {
  const { planned, picked } = whole;
  const { plan, job, known } = planned;
  const names = useMemo(
    () =>
      new Map(
        [...plan.sources, ...known.sources].map(
          (source) => [source.key, shortCitation(source.citation)] as const,
        ),
      ),
    [plan.sources, known.sources],
  );
  return (
    <SourcesContext value={names}>
      <AnswerLine planned={planned} first={first} picked={picked} />
      {sample && <SampleNote />}
      <ThreeAnswers plan={first?.plan ?? plan} job={first?.job ?? job} first={first !== null} />
      <Following {...whole} />
    </SourcesContext>
  );
});

function SampleNote(): ReactElement {
  const say = useSay();
  return (
    <p className="sample">
      <strong>{say("Sample.")}</strong>{" "}
      {say("A made-up bore, to look around with. Change anything, or start a blank job.")}
    </p>
  );
}

/** What waits for the whole plan; left as it stands while a first answer comes in. */
const Following = memo(function Following({
  planned,
  picked,
  onPick,
  askAbout,
}: Omit<ResultsProps, "first" | "sample">): ReactElement {
  const { plan, job, known } = planned;
  const { aim } = job;
  const language = useLanguage();
  const say = sayIn(language);
  const { order, loads, jar, cautions } = picked.filling;
  const pickedWords = programmeWords(picked, language);
  const beside = known.sources.filter(({ key }) => plan.sources.every((used) => used.key !== key));
  return (
    <>
      <Section id="section-ways" title="Ways out">
        {plan.chosen === null && (
          <p className="message message-warning">
            {plan.programmes.some(({ meetsAim }) => meetsAim !== null)
              ? say("Nothing tried meets the aim.")
              : language.words.plan.noneJudged}
          </p>
        )}
        <WaysOut programmes={plan.programmes} aim={aim} picked={picked.id} onPick={onPick} />
        <CostPicture programmes={plan.programmes} aim={aim} picked={picked.id} />
        <WorkingsPanel plan={planned.id} programme={picked} askAbout={askAbout} />
        {picked.kind !== "none" && (
          <details className="with-picked">
            <summary>{say("The three answers with {way}", { way: pickedWords })}</summary>
            {picked.actives.map((verdict) => (
              <ActiveAnswer
                key={verdict.active}
                idPrefix="picked"
                verdict={verdict}
                path={picked.path}
                tank={picked.tank}
                holdingTime_h={job.spray.holdingTime_h}
              />
            ))}
          </details>
        )}
      </Section>
      <MoneyFacts planned={planned} picked={picked} />
      <Section id="section-certainty" title="How sure">
        <Certainty uncertainty={plan.uncertainty} words={planned.certainty} />
      </Section>
      <Section id="section-order" title="Filling order" lead={say("For: {way}.", { way: pickedWords })}>
        <Order order={order} />
        {cautions.length > 0 && (
          <>
            <h4>{say("Cautions")}</h4>
            <Cautions cautions={cautions} />
          </>
        )}
      </Section>
      <Section id="section-loads" title="Loads" lead={say("For: {way}.", { way: pickedWords })}>
        <LoadTable loads={loads} />
        <SumList summary="How these were worked out" sums={fillingSums(job, picked, language)} />
        <h4>{say("Jar test")}</h4>
        <Jar jar={jar} jarVolume_L={picked.filling.jarVolume_L} />
      </Section>
      <CardSection card={planned.cards[picked.id] ?? null} />
      <ReportSection plan={planned.id} programme={picked} askAbout={askAbout} />
      <Section id="section-water-facts" title="The water, checked">
        <WaterFacts water={plan.water} />
        <SumList
          summary="How hardness and alkalinity were worked out"
          sums={[hardnessSum(plan, language), alkalinitySum(job, plan, language)]}
        />
      </Section>
      <KnownActives known={known.actives} sources={beside} />
      <Section id="section-sources" title="Sources" lead="Exactly those this result rests on.">
        <details>
          <summary>{say("{count} sources", { count: plan.sources.length })}</summary>
          <Sources sources={plan.sources} />
        </details>
        <Versions plan={plan} />
      </Section>
    </>
  );
});

function Versions({ plan }: { plan: Plan }): ReactElement {
  const say = sayIn(useLanguage());
  const save = (): void => {
    saveText("plan.json", `${JSON.stringify(plan, null, 2)}\n`, "application/json");
  };
  return (
    <p className="versions">
      {say("Hardstand {version}, data {data}.", {
        version: plan.versions.hardstand,
        data: plan.versions.data,
      })}{" "}
      <button type="button" className="quiet" onClick={save}>
        {say("Save the result (JSON)")}
      </button>
    </p>
  );
}
