import type { ReactElement } from "react";
import type { Money } from "../../agronomy/index.ts";
import type { Programme } from "../../agronomy/index.ts";
import type { Planned } from "../engine/messages.ts";
import { Section } from "../form/section.tsx";
import { Evidence } from "./evidence.tsx";
import { programmeWords } from "./programme-words.ts";

const words = {
  title: "What it comes to",
  lead: "In the money of the prices. What has no price is not known, never nothing.",
  table: "Cost, and the worth of what is held",
  heads: ["", "Per ha", "Per load", "Per season"],
  held: "Active held as planned",
  heldWith: (programme: string): string => `Active still held with ${programme}`,
  cost: (programme: string): string => `Cost of ${programme}`,
  about: "Held: price of the product times the share held, where the aim is judged.",
  notKnown: "not known",
  noPrice: "Give the price of each product to see the worth of what is held.",
  noSeason: "Give the area of a season to see the cost of a season.",
};

interface MoneyProps {
  readonly planned: Planned;
  readonly picked: Programme;
}

/** What the row picked costs, and what the active that stays held is worth, per hectare, load and season. */
export function MoneyFacts({ planned, picked }: MoneyProps): ReactElement {
  const { plan, job } = planned;
  const nothingAdded = plan.programmes.find(({ kind }) => kind === "none");
  const name = programmeWords(picked);
  const rows: readonly (readonly [string, Money])[] = [
    ...(nothingAdded === undefined ? [] : [[words.held, nothingAdded.heldValue] as const]),
    ...(picked.kind === "none"
      ? []
      : [[words.heldWith(name), picked.heldValue] as const, [words.cost(name), picked.cost] as const]),
  ];
  const unpriced = job.mix.some(({ price }) => price === null);
  return (
    <Section id="section-money" title={words.title} lead={words.lead}>
      <div className="table" role="region" aria-label={words.table} tabIndex={0}>
        <table>
          <thead>
            <tr>
              {words.heads.map((head) =>
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
                  <td key={words.heads[i + 1]}>{amount === null ? words.notKnown : amount.toFixed(2)}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p className="about">
        {words.about} <Evidence of="computed" />
      </p>
      {unpriced && <p className="about">{words.noPrice}</p>}
      {job.spray.seasonArea_ha === null && <p className="about">{words.noSeason}</p>}
    </Section>
  );
}
