import type { ReactElement } from "react";
import { jarStart } from "../../report/index.ts";
import type { Caution, Filling, JarAmount, Load } from "../../agronomy/index.ts";
import type { MeasuredUnit, Measures } from "../../units/index.ts";
import { sayIn, useLanguage } from "../language/language-context.ts";
import { Text } from "../language/text.tsx";
import { Evidence, SourceLink, WarningMark } from "./evidence.tsx";
import { figure } from "./words.ts";

/** The mixing order, with the reason for each step. */
export function Order({ order }: { order: Filling["order"] }): ReactElement {
  return (
    <ol className="order">
      {order.map((step) => (
        <li key={step.step} className={step.pause ? "pause" : undefined}>
          <p>
            <strong>
              <Text of={step.what} />
            </strong>
          </p>
          <p className="about">
            <Text of={step.why} /> <Evidence of={step.evidence} /> <SourceLink source={step.source} />
          </p>
        </li>
      ))}
    </ol>
  );
}

/** Amounts for each full load and for the last one. */
export function LoadTable({ loads }: { loads: Filling["loads"] }): ReactElement {
  const { full, last, count, measures } = loads;
  const say = sayIn(useLanguage());
  const fullCount = last === null ? count : count - 1;
  return (
    <>
      <p className="figure-line">
        <span className="figure">{count}</span>{" "}
        <span className="unit">
          {count === 1 ? say("load") : say("loads")}
          {last !== null && fullCount > 0 ? `: ${say("{count} full, 1 part", { count: fullCount })}` : ""}
        </span>
      </p>
      <div className="table" role="region" aria-label={say("Amounts per load")} tabIndex={0}>
        <table>
          <thead>
            <tr>
              <th scope="col">{say("Per load")}</th>
              {fullCount > 0 && <th scope="col">{say("Full")}</th>}
              {last !== null && <th scope="col">{say("Last")}</th>}
            </tr>
          </thead>
          <tbody>
            <LoadRow
              label={say("Spray")}
              unit="L"
              measures={measures}
              pick={(load) => load.volume_L}
              full={fullCount > 0 ? full : null}
              last={last}
            />
            <LoadRow
              label={say("Area")}
              unit="ha"
              measures={measures}
              pick={(load) => load.area_ha}
              full={fullCount > 0 ? full : null}
              last={last}
            />
            {full.amounts.map((amount) => (
              <LoadRow
                key={amount.product}
                label={amount.label}
                unit={amount.unit}
                measures={measures}
                pick={(load) => load.amounts.find((a) => a.product === amount.product)?.amount ?? null}
                full={fullCount > 0 ? full : null}
                last={last}
              />
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}

interface LoadRowProps {
  readonly label: string;
  readonly unit: MeasuredUnit;
  readonly measures: Measures;
  readonly pick: (load: Load) => number | null;
  readonly full: Load | null;
  readonly last: Load | null;
}

function LoadRow({ label, unit, measures, pick, full, last }: LoadRowProps): ReactElement {
  const language = useLanguage();
  const cell = (load: Load): string => {
    const value = pick(load);
    return value === null
      ? language.words.answers.notKnown
      : language.figures.measured(value, unit, measures);
  };
  return (
    <tr>
      <th scope="row">{language.phrases.name(label)}</th>
      {full !== null && <td>{cell(full)}</td>}
      {last !== null && <td>{cell(last)}</td>}
    </tr>
  );
}

/** The jar test in the proportions of the tank. */
export function Jar({ jar, jarVolume_L }: { jar: readonly JarAmount[]; jarVolume_L: number }): ReactElement {
  const language = useLanguage();
  return (
    <>
      <p>{jarStart(jarVolume_L, language)}</p>
      <ul className="jar">
        {jar.map((amount) => (
          <li key={amount.product}>
            <strong>
              {figure(amount.amount, 3, language)} {amount.unit}
            </strong>{" "}
            {language.phrases.name(amount.label)}
            {amount.how !== null && (
              <span className="about">
                {" "}
                <Text of={amount.how} />
              </span>
            )}
            {amount.spoons !== null && (
              <span className="about">
                {" "}
                <Text of={amount.spoons} />
              </span>
            )}
          </li>
        ))}
      </ul>
    </>
  );
}

/** Cautions that apply, in the flow. */
export function Cautions({ cautions }: { cautions: readonly Caution[] }): ReactElement {
  return (
    <ul className="cautions">
      {cautions.map((caution) => (
        <li key={caution.id}>
          <WarningMark /> <Text of={caution.text} /> <SourceLink source={caution.source} />
        </li>
      ))}
    </ul>
  );
}
