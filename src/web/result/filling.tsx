import type { ReactElement } from "react";
import { jarStart } from "../../report/index.ts";
import type { Caution, Filling, JarAmount, Load } from "../../agronomy/index.ts";
import { Evidence, SourceLink, WarningMark } from "./evidence.tsx";
import { figure } from "./words.ts";

/** The mixing order, with the reason for each step. */
export function Order({ order }: { order: Filling["order"] }): ReactElement {
  return (
    <ol className="order">
      {order.map((step) => (
        <li key={step.step} className={step.pause ? "pause" : undefined}>
          <p>
            <strong>{step.what}</strong>
          </p>
          <p className="about">
            {step.why} <Evidence of={step.evidence} /> <SourceLink source={step.source} />
          </p>
        </li>
      ))}
    </ol>
  );
}

/** Amounts for each full load and for the last one. */
export function LoadTable({ loads }: { loads: Filling["loads"] }): ReactElement {
  const { full, last, count } = loads;
  const fullCount = last === null ? count : count - 1;
  return (
    <>
      <p className="figure-line">
        <span className="figure">{count}</span>{" "}
        <span className="unit">
          {count === 1 ? "load" : "loads"}
          {last !== null && fullCount > 0 ? `: ${String(fullCount)} full, 1 part` : ""}
        </span>
      </p>
      <div className="table" role="region" aria-label="Amounts per load" tabIndex={0}>
        <table>
          <thead>
            <tr>
              <th scope="col">Per load</th>
              {fullCount > 0 && <th scope="col">Full</th>}
              {last !== null && <th scope="col">Last</th>}
            </tr>
          </thead>
          <tbody>
            <LoadRow
              label="Spray"
              unit="L"
              pick={(load) => load.volume_L}
              full={fullCount > 0 ? full : null}
              last={last}
            />
            <LoadRow
              label="Area"
              unit="ha"
              pick={(load) => load.area_ha}
              full={fullCount > 0 ? full : null}
              last={last}
            />
            {full.amounts.map((amount) => (
              <LoadRow
                key={amount.product}
                label={amount.label}
                unit={amount.unit}
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
  readonly unit: string;
  readonly pick: (load: Load) => number | null;
  readonly full: Load | null;
  readonly last: Load | null;
}

function LoadRow({ label, unit, pick, full, last }: LoadRowProps): ReactElement {
  const cell = (load: Load): string => {
    const value = pick(load);
    return value === null ? "not known" : `${figure(value)} ${unit}`;
  };
  return (
    <tr>
      <th scope="row">{label}</th>
      {full !== null && <td>{cell(full)}</td>}
      {last !== null && <td>{cell(last)}</td>}
    </tr>
  );
}

/** The jar test in the proportions of the tank. */
export function Jar({ jar, jarVolume_L }: { jar: readonly JarAmount[]; jarVolume_L: number }): ReactElement {
  return (
    <>
      <p>{jarStart(jarVolume_L)}</p>
      <ul className="jar">
        {jar.map((amount) => (
          <li key={amount.product}>
            <strong>
              {figure(amount.amount)} {amount.unit}
            </strong>{" "}
            {amount.label}
            {amount.how !== null && <span className="about"> {amount.how}</span>}
            {amount.spoons !== null && <span className="about"> {amount.spoons}</span>}
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
          <WarningMark /> {caution.text} <SourceLink source={caution.source} />
        </li>
      ))}
    </ul>
  );
}
