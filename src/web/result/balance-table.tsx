import type { ReactElement } from "react";
import type { Balance, BalanceLine } from "../../agronomy/index.ts";
import { sayIn, useLanguage } from "../language/language-context.ts";
import { Evidence, SourceLink } from "./evidence.tsx";
import { Formula } from "./formula.tsx";
import { balanceSum, formationText } from "./balance-words.ts";
import { figure, placeWords } from "./words.ts";

/** The free share of an active: its forms, with the constant, the numbers put in and the source of each. */
export function BalanceTable({ balance }: { balance: Balance }): ReactElement {
  const { name, where, lines, factor, temperature_C } = balance;
  const language = useLanguage();
  const say = sayIn(language);
  const sum = balanceSum(balance, language);
  const title = say("Where {active} is, {where}", {
    active: language.phrases.name(name),
    where: placeWords(where, language),
  });
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
              <th scope="col">{say("Form")}</th>
              <th scope="col">{say("Held by")}</th>
              <th scope="col">mmol/L</th>
              <th scope="col">log K</th>
              <th scope="col">{say("Numbers put in")}</th>
              <th scope="col">{say("Source")}</th>
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
        {say(
          "Each form: 10^(log K + how many × log activity of what it is made of) ÷ activity coefficient, at {temperature} °C.",
          { temperature: figure(temperature_C, 2, language) },
        )}{" "}
        {factor > 1 &&
          say("In a drop dried to one part in {factor} of its water.", {
            factor: figure(factor, 2, language),
          })}
      </p>
    </>
  );
}

function Row({ line }: { line: BalanceLine }): ReactElement {
  const language = useLanguage();
  const say = sayIn(language);
  return (
    <tr>
      <th scope="row">
        <Formula text={line.form} />
      </th>
      <td>{line.holders.map(language.phrases.name).join(", ") || say("free")}</td>
      <td>{figure(1000 * line.active_molPerL, 3, language)}</td>
      <td>{line.logK === null ? "–" : figure(line.logK, 3, language)}</td>
      <td>{line.isSolid ? say("solid: what the balance leaves") : formationText(line, language)}</td>
      <td>{line.source === null ? "–" : <SourceLink source={line.source} />}</td>
    </tr>
  );
}
