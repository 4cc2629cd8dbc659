import type { Plan, Programme } from "../agronomy/index.ts";
import { fill } from "../words/index.ts";
import type { Language } from "../words/index.ts";
import { filled, html, nothing, trusted } from "./html.ts";
import type { SafeHtml } from "./html.ts";
import { mark } from "./html-mark.ts";
import { doseText, heldValueText, leastFree, programmeCostText, standing } from "./sentences.ts";

/** The ways out as a table, with the one chosen and what there is to gain. */
export function programmesSection(plan: Plan, language: Language): SafeHtml {
  const words = language.words.plan;
  const heads = [
    words.programme,
    words.dose,
    words.waterVolume,
    words.freeInTank,
    words.freeOnLeaf,
    words.aim,
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
        ${plan.programmes.map((one) => programmeRow(one, one.id === plan.chosen, language))}
      </tbody>
    </table>
  </section>`;
}

function choiceHtml(plan: Plan, language: Language): SafeHtml {
  const words = language.words.plan;
  const chosen = plan.programmes.find((one) => one.id === plan.chosen);
  if (chosen === undefined) return html`<strong>${words.noneMeetsAim}</strong>`;
  const choice = `${language.phrases.name(chosen.name)}, ${doseText(chosen, language)}`;
  const volume = language.figures.measured(chosen.waterVolume_LPerHa, "L/ha", chosen.filling.loads.measures);
  return filled(words.chosenHeading, { choice: html`<strong>${choice}</strong>`, volume });
}

/** What the active held as planned is worth, to set the costs against. */
function worthLine(plan: Plan, language: Language): SafeHtml {
  const planned = plan.programmes.find((one) => one.kind === "none");
  const worth = planned === undefined ? null : heldValueText(planned, language);
  return worth === null ? nothing : html`<p>${worth} ${mark("computed", language)}</p>`;
}

function programmeRow(programme: Programme, isChosen: boolean, language: Language): SafeHtml {
  const { words, figures } = language;
  const free = (where: "in the tank" | "on the leaf"): string => {
    const share = leastFree(programme.actives, where);
    return share === null ? words.answers.notKnown : figures.perHundred(share);
  };
  const own = language.phrases.name(programme.name);
  const name = isChosen ? fill(words.plan.chosenMark, { name: own }) : own;
  const figuresOf = [
    figures.figure(programme.waterVolume_LPerHa),
    free("in the tank"),
    free("on the leaf"),
  ].map((text) => html`<td class="n">${text}</td>`);
  return html`<tr${isChosen ? trusted(' class="chosen"') : nothing}><th scope="row">${name}</th><td>${doseText(programme, language)}</td>${figuresOf}<td>${standing(programme, language)}</td><td class="n">${figures.pHText(programme.tank.pH)}</td><td>${programmeCostText(programme, language)}</td></tr>
`;
}
