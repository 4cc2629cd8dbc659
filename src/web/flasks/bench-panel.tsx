import { useState } from "react";
import type { ReactElement } from "react";
import type { FlaskShow, ShoppingItem, SlipSeen, Stock } from "../../agronomy/index.ts";
import { figure } from "../result/words.ts";
import type { BenchView } from "./messages.ts";
import type { FlasksView } from "./use-flasks.ts";

const words = {
  summary: "What to have, and how much goes into each flask",
  working: "Making the list …",
  beware: "Beware",
  have: "To have",
  stocks: "Stocks to make at home",
  stockHeads: ["Stock", "Measure out", "Make up with", "To", "Poured in all"],
  dilute: "dilute the product you have",
  intoWater: "poured into the water",
  flasks: "Into each flask, in this order",
  slips: "If a flask is not as drawn",
  slipHeads: ["What may have happened", "What it looks like, by the model", "Mend"],
};

interface BenchPanelProps {
  readonly flasks: FlasksView;
  readonly show: FlaskShow;
}

/** The shopping list, the stocks, the amounts for each flask, and what may go wrong. */
export function BenchPanel({ flasks, show }: BenchPanelProps): ReactElement {
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
      <summary>{words.summary}</summary>
      {flasks.bench === null ? (
        <p role="status">{words.working}</p>
      ) : (
        <Bench view={flasks.bench} show={show} />
      )}
    </details>
  );
}

function Bench({ view, show }: { view: BenchView; show: FlaskShow }): ReactElement {
  const { bench, cautions, slips } = view;
  return (
    <div data-testid="bench">
      <h4>{words.beware}</h4>
      <ul className="bench-list">
        {cautions.map(({ id, text }) => (
          <li key={id}>{text}</li>
        ))}
      </ul>
      <h4>{words.have}</h4>
      <ul className="bench-list">
        {bench.shopping.map((item) => (
          <li key={item.name}>{shoppingWords(item)}</li>
        ))}
      </ul>
      <h4>{words.stocks}</h4>
      <Stocks stocks={bench.stocks} />
      {bench.remarks.map(({ text }) => (
        <p key={text} className="about">
          {text}
        </p>
      ))}
      <h4>{words.flasks}</h4>
      <div className="slips">
        {show.flasks.map((flask) => (
          <section key={flask.name} className="slip">
            <h5>{flask.name}</h5>
            <ol>
              {[flask.start, ...flask.steps].map(({ added }, i) => (
                <li key={`${String(i)} ${added}`}>{added}</li>
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
  return (
    <div className="flask-scroll" role="group" aria-label={words.stocks} tabIndex={0}>
      <table className="flask-pairs">
        <thead>
          <tr>
            {words.stockHeads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {stocks.map(({ substance, strength, measure, isAcid, medium, make_mL, needed_mL }) => (
            <tr key={`${substance} ${strength}`}>
              <th scope="row">
                {substance}, {strength}
              </th>
              <td>
                {measure === null
                  ? words.dilute
                  : `${figure(measure.value)} ${measure.unit}${isAcid ? `, ${words.intoWater}` : ""}`}
              </td>
              <td>{medium}</td>
              <td>{make_mL} mL</td>
              <td>{figure(needed_mL)} mL</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Slips({ slips }: { slips: readonly SlipSeen[] }): ReactElement {
  return (
    <>
      <h4>{words.slips}</h4>
      <div className="flask-scroll" role="group" aria-label={words.slips} tabIndex={0}>
        <table className="flask-pairs">
          <thead>
            <tr>
              {words.slipHeads.map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {slips.map(({ id, what, mend, flasks }) => (
              <tr key={id}>
                <th scope="row">{what}</th>
                <td>{plainest(flasks)}</td>
                <td>{mend}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}

/** The flask that gives a slip away most plainly. */
function plainest(flasks: SlipSeen["flasks"]): string {
  const [first] = flasks.toSorted((one, other) => other.deltaE00 - one.deltaE00);
  if (first === undefined) return "";
  const cloudy = first.cloudiness === "clear" ? "" : `, ${first.cloudiness}`;
  return `${first.flask}: ${first.colour.words}${cloudy}`;
}

function shoppingWords({ name, amount, note }: ShoppingItem): string {
  const much =
    amount === null
      ? ""
      : `, ${amount.unit === "" ? String(amount.value) : `${figure(amount.value)} ${amount.unit}`}`;
  return `${name}${much}${note === null ? "" : ` (${note})`}`;
}
