import type { Job, Plan, Programme } from "../agronomy/index.ts";
import { fill } from "../words/index.ts";
import type { Language } from "../words/index.ts";
import { noChoiceText, programmeName } from "./choice-words.ts";
import { filled, html, nothing, trusted } from "./html.ts";
import type { SafeHtml } from "./html.ts";
import { mark } from "./html-mark.ts";
import {
  doseText,
  heldValueText,
  leastFree,
  programmeCostText,
  standing,
  waterVolumeText,
  wayName,
} from "./sentences.ts";

type Where = Job["aim"]["where"];

/**
 * The ways out as a table, with the one chosen and what there is to gain.
 *
 * @param where the aim is about: that share comes first, and the aim is said to be about it
 */
export function programmesSection(plan: Plan, where: Where, language: Language): SafeHtml {
  const words = language.words.plan;
  const places = placesFrom(where);
  const headOf = (place: Where): string => (place === "in the tank" ? words.freeInTank : words.freeOnLeaf);
  const heads = [
    words.programme,
    words.dose,
    words.waterVolume,
    ...places.map(headOf),
    `${words.aim} (${headOf(where)})`,
    words.tankPHHeading,
    words.cost,
  ];
  return html`<section>
    <h2>${words.waysHeading}</h2>
    <p>${choiceHtml(plan, language)}</p>
    ${worthLine(plan, language)}
    <table>
      <caption>
        ${words.waysCaption}
      </caption>
      <thead>
        <tr>
          ${heads.map((head) => html`<th scope="col">${head}</th> `)}
        </tr>
      </thead>
      <tbody>
        ${plan.programmes.map((one) => programmeRow(one, one.id === plan.chosen, where, language))}
      </tbody>
    </table>
  </section>`;
}

function choiceHtml(plan: Plan, language: Language): SafeHtml {
  const words = language.words.plan;
  const chosen = plan.programmes.find((one) => one.id === plan.chosen);
  if (chosen === undefined) return html`<strong>${noChoiceText(plan, language)}</strong>`;
  return filled(words.chosenHeading, {
    choice: html`<strong>${programmeName(chosen, language)}</strong>`,
    volume: waterVolumeText(chosen, language),
  });
}

/** What the active held as planned is worth, to set the costs against. */
function worthLine(plan: Plan, language: Language): SafeHtml {
  const planned = plan.programmes.find((one) => one.kind === "none");
  const worth = planned === undefined ? null : heldValueText(planned, language);
  return worth === null ? nothing : html`<p>${worth} ${mark("computed", language)}</p>`;
}

/** The place the aim is about, then the other. */
function placesFrom(where: Where): readonly Where[] {
  return where === "in the tank" ? ["in the tank", "on the leaf"] : ["on the leaf", "in the tank"];
}

function programmeRow(programme: Programme, isChosen: boolean, where: Where, language: Language): SafeHtml {
  const { words, figures } = language;
  const free = (place: Where): string => {
    const share = leastFree(programme.actives, place);
    return share === null ? words.answers.notKnown : figures.perHundred(share);
  };
  const own = wayName(programme, language);
  const name = isChosen ? fill(words.plan.chosenMark, { name: own }) : own;
  const figuresOf = [figures.figure(programme.waterVolume_LPerHa), ...placesFrom(where).map(free)].map(
    (text) => html`<td class="n">${text}</td>`,
  );
  return html`<tr${isChosen ? trusted(' class="chosen"') : nothing}><th scope="row">${name}</th><td>${doseText(programme, language)}</td>${figuresOf}<td>${standing(programme, language)}</td><td class="n">${figures.pHText(programme.tank.pH)}</td><td>${programmeCostText(programme, language)}</td></tr>
`;
}
