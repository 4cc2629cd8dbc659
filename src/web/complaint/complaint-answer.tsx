import { useMemo } from "react";
import type { ReactElement } from "react";
import type { ActiveComplaint } from "../../agronomy/index.ts";
import type { Answered } from "../engine/messages.ts";
import { sayIn, useLanguage } from "../language/language-context.ts";
import { Text } from "../language/text.tsx";
import { Evidence, Rule, SourceLink } from "../result/evidence.tsx";
import { shortCitation, SourcesContext } from "../result/sources-context.ts";
import { Sources, WaterFacts } from "../result/water-facts.tsx";
import { figure, inHundred } from "../result/words.ts";

/** The answer to a complaint: what the water could have taken, beside the other usual causes. Never proof. */
export function ComplaintAnswerView({ answered }: { answered: Answered }): ReactElement {
  const { answer, headline, limits, actives } = answered;
  const language = useLanguage();
  const say = sayIn(language);
  const names = useMemo(
    () => new Map(answer.sources.map(({ key, citation }) => [key, shortCitation(citation)] as const)),
    [answer.sources],
  );
  return (
    <SourcesContext value={names}>
      <div className="answer-line" role="status" data-testid="complaint-headline">
        <p>
          {headline} <Evidence of="computed" />
        </p>
        <p>
          <strong>
            <Text of={answer.noProof} />
          </strong>
        </p>
      </div>
      {answer.actives.map((one, i) => (
        <article key={one.active} className="active" aria-label={language.phrases.name(one.name)}>
          {(actives[i] ?? []).map((line) => (
            <p key={line}>{line}</p>
          ))}
          <TakenPicture active={one} />
        </article>
      ))}
      <p className="about">
        {limits} <Evidence of="common practice" />
      </p>
      <Causes answered={answered} />
      {answer.rules.length > 0 && (
        <>
          <h3>{say("What is published about such a mix")}</h3>
          <ul className="rules">
            {answer.rules.map((rule) => (
              <Rule key={rule.id} rule={rule} />
            ))}
          </ul>
        </>
      )}
      {answer.remarks.length > 0 && (
        <>
          <h3>{say("Remarks")}</h3>
          <ul className="rules">
            {answer.remarks.map(({ code, text, evidence, source }) => (
              <li key={code} className="rule">
                <p>
                  <Text of={text} /> <Evidence of={evidence} />{" "}
                  {source !== null && <SourceLink source={source} />}
                </p>
              </li>
            ))}
          </ul>
        </>
      )}
      <h3>{say("The water, checked")}</h3>
      <WaterFacts water={answer.water} />
      <p>{say("The full tank: pH {pH}.", { pH: figure(answer.tank.pH, 3, language) })}</p>
      <details>
        <summary>{say("{count} sources", { count: answer.sources.length })}</summary>
        <Sources sources={answer.sources} />
      </details>
    </SourcesContext>
  );
}

const HEIGHT = 40;

/** The share held on an axis from none to all of the dose: a line for the range, a dot for the likeliest. */
function TakenPicture({ active }: { active: ActiveComplaint }): ReactElement | null {
  const { takenByWater: taken } = active;
  const language = useLanguage();
  const say = sayIn(language);
  if (taken === null) return null;
  const at = (share: number): string => `${(100 * share).toFixed(2)}%`;
  const said = say("Range for {active}: {low} to {high}, most likely {central}", {
    active: language.phrases.name(active.name),
    low: inHundred(taken.low, language),
    high: inHundred(taken.high, language),
    central: inHundred(taken.central, language),
  });
  return (
    <figure className="plot">
      <figcaption className="about">{say("Held by the water, in 100 of the dose")}</figcaption>
      <svg className="way-picture" width="100%" height={HEIGHT} role="img" aria-label={said}>
        <line x1="0" x2="100%" y1={HEIGHT / 2} y2={HEIGHT / 2} className="grid" />
        <line x1={at(taken.low)} x2={at(taken.high)} y1={HEIGHT / 2} y2={HEIGHT / 2} className="interval" />
        <circle cx={at(taken.central)} cy={HEIGHT / 2} r="7" className="dot" />
      </svg>
      <div className="ways-axis" aria-hidden="true">
        <span className="way-picture">
          <span>0</span>
          <span>50</span>
          <span>100</span>
        </span>
      </div>
    </figure>
  );
}

function Causes({ answered }: { answered: Answered }): ReactElement {
  const { answer, causes } = answered;
  const language = useLanguage();
  const say = sayIn(language);
  return (
    <>
      <h3>{say("The usual causes, in the order to exclude them")}</h3>
      <ol className="order">
        {answer.causes.map(({ id, name, check, evidence, source }, i) => (
          <li key={id}>
            <p>
              <strong>{language.phrases.name(name)}</strong>: {causes[i]}
            </p>
            <p className="about">
              <Text of={check} /> <Evidence of={evidence} /> <SourceLink source={source} />
            </p>
          </li>
        ))}
      </ol>
    </>
  );
}
