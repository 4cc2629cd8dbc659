import type { ReactElement } from "react";
import type { Money } from "../../agronomy/index.ts";
import type { Programme } from "../../agronomy/index.ts";
import type { Planned } from "../engine/messages.ts";
import { Section } from "../form/section.tsx";
import { sayIn, useLanguage } from "../language/language-context.ts";
import { Evidence } from "./evidence.tsx";
import { moneySums } from "./money-sums.ts";
import { programmeWords } from "./programme-words.ts";
import { SumList } from "./sum-list.tsx";

interface MoneyProps {
  readonly planned: Planned;
  readonly picked: Programme;
}

/** What the row picked costs, and what the active that stays held is worth, per hectare, load and season. */
export function MoneyFacts({ planned, picked }: MoneyProps): ReactElement {
  const { plan, job } = planned;
  const nothingAdded = plan.programmes.find(({ kind }) => kind === "none");
  const language = useLanguage();
  const say = sayIn(language);
  const name = programmeWords(picked, language);
  const heads = ["", say("Per ha"), say("Per load"), say("Per season")];
  const rows: readonly (readonly [string, Money])[] = [
    ...(nothingAdded === undefined ? [] : [[say("Active held as planned"), nothingAdded.heldValue] as const]),
    ...(picked.kind === "none"
      ? []
      : [
          [say("Active still held with {way}", { way: name }), picked.heldValue] as const,
          [say("Cost of {way}", { way: name }), picked.cost] as const,
        ]),
  ];
  const unpriced = job.mix.some(({ price }) => price === null);
  return (
    <Section
      id="section-money"
      title="What it comes to"
      lead="In the money of the prices. What has no price is not known, never nothing."
    >
      <div
        className="table"
        role="region"
        aria-label={say("Cost, and the worth of what is held")}
        tabIndex={0}
      >
        <table>
          <thead>
            <tr>
              {heads.map((head) =>
                head === "" ? (
                  <td key={head} />
                ) : (
                  <th key={head} scope="col">
                    {head}
                  </th>
                ),
              )}
            </tr>
          </thead>
          <tbody>
            {rows.map(([what, money]) => (
              <tr key={what}>
                <th scope="row">{what}</th>
                {[money.perHa, money.perLoad, money.perSeason].map((amount, i) => (
                  <td key={heads[i + 1]}>
                    {amount === null ? say("not known") : language.figures.fixed(amount, 2)}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p className="about">
        {say("Held: price of the product times the share held, where the aim is judged.")}{" "}
        <Evidence of="computed" />
      </p>
      <SumList
        summary="How these amounts were worked out"
        sums={moneySums(job, nothingAdded, picked, language)}
      />
      {unpriced && (
        <p className="about">{say("Give the price of each product to see the worth of what is held.")}</p>
      )}
      {job.spray.seasonArea_ha === null && (
        <p className="about">{say("Give the area of a season to see the cost of a season.")}</p>
      )}
    </Section>
  );
}
