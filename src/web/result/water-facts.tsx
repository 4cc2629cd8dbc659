import type { ReactElement } from "react";
import type { Plan, SourceUsed } from "../../agronomy/index.ts";
import { sayIn, useLanguage } from "../language/language-context.ts";
import { Text } from "../language/text.tsx";
import { Evidence, SourceLink } from "./evidence.tsx";
import { Formula } from "./formula.tsx";
import { figure } from "./words.ts";

/** The completed water: what was read, what was taken for granted. */
export function WaterFacts({ water }: { water: Plan["water"] }): ReactElement {
  const language = useLanguage();
  const say = sayIn(language);
  return (
    <>
      <dl className="facts">
        <div>
          <dt>{say("Hardness")}</dt>
          <dd>
            <span className="figure">{figure(water.hardness_mgPerL_asCaCO3, 3, language)}</span>{" "}
            <span className="unit">
              <Formula text={say("mg/L as CaCO3")} />
            </span>
          </dd>
        </div>
        <div>
          <dt>{say("Alkalinity")}</dt>
          <dd>
            <span className="figure">{figure(water.alkalinity_mgPerL_asCaCO3, 3, language)}</span>{" "}
            <span className="unit">
              <Formula text={say("mg/L as CaCO3")} />
            </span>
          </dd>
        </div>
        <div>
          <dt>pH</dt>
          <dd>
            <span className="figure">{figure(water.pH, 3, language)}</span>
          </dd>
        </div>
        <div>
          <dt>{say("Charge balance")}</dt>
          <dd>
            {water.chargeBalance_percent === null ? (
              say("not known, too little measured")
            ) : (
              <>
                <span className="figure">{figure(water.chargeBalance_percent, 2, language)}</span>{" "}
                <span className="unit">%</span>
              </>
            )}
          </dd>
        </div>
      </dl>
      {water.assumptions.length > 0 && (
        <>
          <h4>{say("Taken for granted")}</h4>
          <ul className="assumptions">
            {water.assumptions.map((a) => (
              <li key={`${a.code} ${a.about}`}>
                <Text of={a.why} />{" "}
                <span className="about">
                  <Formula text={language.phrases.name(a.about)} />:{" "}
                  {say("{value} {unit}, from {low} to {high}.", {
                    value: figure(a.value, 3, language),
                    unit: a.unit,
                    low: figure(a.low, 3, language),
                    high: figure(a.high, 3, language),
                  })}
                </span>{" "}
                <Evidence of={a.evidence} /> <SourceLink source={a.source} />
              </li>
            ))}
          </ul>
        </>
      )}
      <details>
        <summary>{say("Ions put into the calculation")}</summary>
        <div className="table" role="region" aria-label={say("Ions put into the calculation")} tabIndex={0}>
          <table>
            <thead>
              <tr>
                <th scope="col">{say("Total of")}</th>
                <th scope="col">mmol/L</th>
              </tr>
            </thead>
            <tbody>
              {Object.entries(water.ions_molPerL).map(([ion, amount]) => (
                <tr key={ion}>
                  <th scope="row">
                    <Formula text={ion} />
                  </th>
                  <td>{figure(1000 * amount, 3, language)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      </details>
    </>
  );
}

/** Exactly the sources this result rests on. */
export function Sources({ sources }: { sources: readonly SourceUsed[] }): ReactElement {
  const { page, tag } = useLanguage();
  return (
    <ol className="sources">
      {sources.map((source) => (
        <li key={source.key} id={`source-${source.key}`} tabIndex={-1}>
          {page(source.citation) === source.citation && !tag.startsWith("en") ? (
            <span lang="en">{source.citation}</span>
          ) : (
            page(source.citation)
          )}
        </li>
      ))}
    </ol>
  );
}
