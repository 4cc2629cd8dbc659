import { useState } from "react";
import type { ReactElement } from "react";
import type { FlaskShow, ShoppingItem, SlipSeen, Stock } from "../../agronomy/index.ts";
import { addedText, liquidText, mediumText, withStrength } from "../../report/index.ts";
import type { Language } from "../../words/index.ts";
import { sayIn, useLanguage, useSay } from "../language/language-context.ts";
import { Text } from "../language/text.tsx";
import { figure } from "../result/words.ts";
import type { BenchView } from "./messages.ts";
import type { FlasksView } from "./use-flasks.ts";

interface BenchPanelProps {
  readonly flasks: FlasksView;
  readonly show: FlaskShow;
}

/** The shopping list, the stocks, the amounts for each flask, and what may go wrong. */
export function BenchPanel({ flasks, show }: BenchPanelProps): ReactElement {
  const say = useSay();
  const [asked, setAsked] = useState(false);
  return (
    <details
      className="bench-panel"
      onToggle={(event) => {
        if (!event.currentTarget.open || asked) return;
        setAsked(true);
        flasks.askBench();
      }}
    >
      <summary>{say("What to have, and how much goes into each flask")}</summary>
      {flasks.bench === null ? (
        <p role="status">{say("Making the list …")}</p>
      ) : (
        <Bench view={flasks.bench} show={show} />
      )}
    </details>
  );
}

function Bench({ view, show }: { view: BenchView; show: FlaskShow }): ReactElement {
  const { bench, cautions, slips } = view;
  const language = useLanguage();
  const say = sayIn(language);
  return (
    <div data-testid="bench">
      <h4>{say("Beware")}</h4>
      <ul className="bench-list">
        {cautions.map(({ id, text }) => (
          <li key={id}>
            <Text of={text} />
          </li>
        ))}
      </ul>
      <h4>{say("To have")}</h4>
      <ul className="bench-list">
        {bench.shopping.map((item) => (
          <li key={item.name}>{shoppingWords(item, language)}</li>
        ))}
      </ul>
      <h4>{say("Stocks to make at home")}</h4>
      <Stocks stocks={bench.stocks} />
      {bench.remarks.map(({ text }) => (
        <p key={text} className="about">
          <Text of={text} />
        </p>
      ))}
      <h4>{say("Into each flask, in this order")}</h4>
      <div className="slips">
        {show.flasks.map((flask) => (
          <section key={flask.name} className="slip">
            <h5>{language.page(flask.name)}</h5>
            <ol>
              {[flask.start, ...flask.steps].map(({ added }, i) => (
                <li key={i}>{addedText(added, language)}</li>
              ))}
            </ol>
          </section>
        ))}
      </div>
      {slips.length > 0 && <Slips slips={slips} />}
    </div>
  );
}

function Stocks({ stocks }: { stocks: readonly Stock[] }): ReactElement {
  const language = useLanguage();
  const say = sayIn(language);
  const heads = [say("Stock"), say("Measure out"), say("Make up with"), say("To"), say("Poured in all")];
  return (
    <div className="flask-scroll" role="group" aria-label={say("Stocks to make at home")} tabIndex={0}>
      <table className="flask-pairs">
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {stocks.map(({ substance, strength, measure, isAcid, medium, make_mL, needed_mL }) => (
            <tr key={`${substance} ${strength}`}>
              <th scope="row">{withStrength({ substance, strength }, language)}</th>
              <td>
                {measure === null
                  ? say("dilute the product you have")
                  : `${figure(measure.value, 3, language)} ${measure.unit}${isAcid ? `, ${say("poured into the water")}` : ""}`}
              </td>
              <td>{mediumText(medium, language)}</td>
              <td>{make_mL} mL</td>
              <td>{figure(needed_mL, 3, language)} mL</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Slips({ slips }: { slips: readonly SlipSeen[] }): ReactElement {
  const language = useLanguage();
  const say = sayIn(language);
  const title = say("If a flask is not as drawn");
  const heads = [say("What may have happened"), say("What it looks like, by the model"), say("Mend")];
  return (
    <>
      <h4>{title}</h4>
      <div className="flask-scroll" role="group" aria-label={title} tabIndex={0}>
        <table className="flask-pairs">
          <thead>
            <tr>
              {heads.map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {slips.map(({ id, what, mend, flasks }) => (
              <tr key={id}>
                <th scope="row">
                  <Text of={what} />
                </th>
                <td>{plainest(flasks, language)}</td>
                <td>
                  <Text of={mend} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}

/** The flask that gives a slip away most plainly. */
function plainest(flasks: SlipSeen["flasks"], language: Language): string {
  const [first] = flasks.toSorted((one, other) => other.deltaE00 - one.deltaE00);
  if (first === undefined) return "";
  return `${language.page(first.flask)}: ${liquidText(first, language)}`;
}

function shoppingWords({ name, amount, note }: ShoppingItem, language: Language): string {
  const { phrases } = language;
  const much =
    amount === null
      ? ""
      : `, ${amount.unit === "" ? String(amount.value) : `${figure(amount.value, 3, language)} ${amount.unit}`}`;
  return `${phrases.name(name)}${much}${note === null ? "" : ` (${phrases.name(note)})`}`;
}
