import { useMemo } from "react";
import type { ReactElement } from "react";
import type { ActiveComplaint } from "../../agronomy/index.ts";
import type { Answered } from "../engine/messages.ts";
import { Evidence, Rule, SourceLink } from "../result/evidence.tsx";
import { shortCitation, SourcesContext } from "../result/sources-context.ts";
import { Sources, WaterFacts } from "../result/water-facts.tsx";
import { figure, inHundred } from "../result/words.ts";

const words = {
  taken: "Held by the water, in 100 of the dose",
  rangeOf: (name: string): string => `Range for ${name}`,
  causes: "The usual causes, in the order to exclude them",
  causeHeads: ["Cause", "Where it stands", "What to ask"],
  rules: "What is published about such a mix",
  remarks: "Remarks",
  water: "The water, checked",
  tank: (pH: string): string => `The full tank: pH ${pH}.`,
  sources: (count: number): string => `${String(count)} sources`,
};

/** The answer to a complaint: what the water could have taken, beside the other usual causes. Never proof. */
export function ComplaintAnswerView({ answered }: { answered: Answered }): ReactElement {
  const { answer, headline, limits, actives } = answered;
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
          <strong>{answer.noProof}</strong>
        </p>
      </div>
      {answer.actives.map((one, i) => (
        <article key={one.active} className="active" aria-label={one.name}>
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
          <h3>{words.rules}</h3>
          <ul className="rules">
            {answer.rules.map((rule) => (
              <Rule key={rule.id} rule={rule} />
            ))}
          </ul>
        </>
      )}
      {answer.remarks.length > 0 && (
        <>
          <h3>{words.remarks}</h3>
          <ul className="rules">
            {answer.remarks.map(({ code, text, evidence, source }) => (
              <li key={code} className="rule">
                <p>
                  {text} <Evidence of={evidence} /> {source !== null && <SourceLink source={source} />}
                </p>
              </li>
            ))}
          </ul>
        </>
      )}
      <h3>{words.water}</h3>
      <WaterFacts water={answer.water} />
      <p>{words.tank(figure(answer.tank.pH))}</p>
      <details>
        <summary>{words.sources(answer.sources.length)}</summary>
        <Sources sources={answer.sources} />
      </details>
    </SourcesContext>
  );
}

const HEIGHT = 40;

/** The share held on an axis from none to all of the dose: a line for the range, a dot for the likeliest. */
function TakenPicture({ active }: { active: ActiveComplaint }): ReactElement | null {
  const { takenByWater: taken } = active;
  if (taken === null) return null;
  const at = (share: number): string => `${(100 * share).toFixed(2)}%`;
  const said = `${words.rangeOf(active.name)}: ${inHundred(taken.low)} to ${inHundred(taken.high)}, ${inHundred(taken.central)}`;
  return (
    <figure className="plot">
      <figcaption className="about">{words.taken}</figcaption>
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
  return (
    <>
      <h3>{words.causes}</h3>
      <div className="table" role="region" aria-label={words.causes} tabIndex={0}>
        <table className="words-table">
          <thead>
            <tr>
              {words.causeHeads.map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {answer.causes.map(({ id, name, check, evidence, source }, i) => (
              <tr key={id}>
                <th scope="row">{name}</th>
                <td>{causes[i]}</td>
                <td>
                  {check} <Evidence of={evidence} /> <SourceLink source={source} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}
