import type { ReactElement } from "react";
import type { Balance, BalanceLine } from "../../agronomy/index.ts";
import { Evidence, SourceLink } from "./evidence.tsx";
import { Formula } from "./formula.tsx";
import { balanceSum, formationText } from "./balance-words.ts";
import { figure } from "./words.ts";

const words = {
  title: (name: string, where: string) => `Where ${name} is, ${where}`,
  form: "Form",
  held: "Held by",
  logK: "log K",
  putIn: "Numbers put in",
  amount: "mmol/L",
  source: "Source",
  free: "free",
  solid: "solid: what the balance leaves",
  temperature: (temperature: string) =>
    `Each form: 10^(log K + how many × log activity of what it is made of) ÷ activity coefficient, at ${temperature} °C.`,
  drop: (factor: string) => `In a drop dried to one part in ${factor} of its water.`,
} as const;

/** The free share of an active: its forms, with the constant, the numbers put in and the source of each. */
export function BalanceTable({ balance }: { balance: Balance }): ReactElement {
  const { name, where, lines, factor, temperature_C } = balance;
  const sum = balanceSum(balance);
  const title = words.title(name, where);
  return (
    <>
      <dl className="sums">
        <div>
          <dt>{sum.what}</dt>
          <dd>= {sum.formula}</dd>
          <dd>= {sum.numbers}</dd>
          <dd>
            = <strong>{sum.result}</strong> <Evidence of="computed" />
          </dd>
        </div>
      </dl>
      <div className="table" role="region" aria-label={title} tabIndex={0}>
        <table>
          <caption>{title}</caption>
          <thead>
            <tr>
              <th scope="col">{words.form}</th>
              <th scope="col">{words.held}</th>
              <th scope="col">{words.amount}</th>
              <th scope="col">{words.logK}</th>
              <th scope="col">{words.putIn}</th>
              <th scope="col">{words.source}</th>
            </tr>
          </thead>
          <tbody>
            {lines.map((line) => (
              <Row key={line.form} line={line} />
            ))}
          </tbody>
        </table>
      </div>
      <p className="about">
        {words.temperature(figure(temperature_C, 2))} {factor > 1 && words.drop(figure(factor, 2))}
      </p>
    </>
  );
}

function Row({ line }: { line: BalanceLine }): ReactElement {
  return (
    <tr>
      <th scope="row">
        <Formula text={line.form} />
      </th>
      <td>{line.holders.length === 0 ? words.free : line.holders.join(", ")}</td>
      <td>{figure(1000 * line.active_molPerL)}</td>
      <td>{line.logK === null ? "–" : figure(line.logK)}</td>
      <td>{line.isSolid ? words.solid : formationText(line)}</td>
      <td>{line.source === null ? "–" : <SourceLink source={line.source} />}</td>
    </tr>
  );
}
