import type { Filling } from "../agronomy/index.ts";
import { amountText, figure } from "./figures.ts";
import { html, nothing } from "./html.ts";
import type { SafeHtml } from "./html.ts";
import { jarStart } from "./sentences.ts";
import { mark } from "./html-mark.ts";

/** How to fill: loads, order, where published orders differ, the sprayer, cautions and the jar test. */
export function fillingSection(plan: Filling): SafeHtml {
  const { count, full, last } = plan.loads;
  const lastOf = (product: string): string => {
    const amount = last?.amounts.find((one) => one.product === product);
    return amount === undefined ? "–" : amountText(amount.amount, amount.unit);
  };
  return html`<section>
    <h2>Filling</h2>
    <p class="lead">
      ${count} ${count === 1 ? "load" : "loads"}: full load ${figure(full.volume_L)} L for
      ${figure(full.area_ha)}
      ha${last === null ? "" : `, last load ${figure(last.volume_L)} L for ${figure(last.area_ha)} ha`}.
    </p>
    <table>
      <caption>
        Amounts per load
      </caption>
      <thead>
        <tr>
          <th scope="col">Product</th>
          <th scope="col">Full load</th>
          <th scope="col">Last load</th>
        </tr>
      </thead>
      <tbody>
        ${full.amounts.map(
          (one) =>
            html`<tr>
              <th scope="row">${one.label}</th>
              <td class="n">${amountText(one.amount, one.unit)}</td>
              <td class="n">${lastOf(one.product)}</td>
            </tr>`,
        )}
      </tbody>
    </table>
    <ol>
      ${plan.order.map((step) => html`<li>${step.pause ? html`<strong>Pause.</strong> ` : nothing}${step.what} <span class="why">${step.why}</span> ${mark(step.evidence)}</li>`)}
    </ol>
    ${listOf(
      "Where published orders differ",
      plan.differences.map((one) => html`${one.text} ${mark("published rule")}`),
    )}
    ${listOf(
      "This sprayer",
      plan.sprayer.map((one) => html`${one.text} ${mark(one.evidence)}`),
    )}
    ${
      plan.cautions.length === 0
        ? nothing
        : html`<h3>Cautions</h3>
            <ul>
              ${plan.cautions.map((one) => html`<li>▲ ${one.text}</li>`)}
            </ul>`
    }
    ${
      plan.jar.length === 0
        ? nothing
        : html`<h3>Jar test</h3>
            <p>${jarStart(plan.jarVolume_L)}</p>
            <ul>
              ${plan.jar.map((one) => html`<li>${one.label}: ${amountText(one.amount, one.unit)}${[one.how, one.spoons].flatMap((way) => (way === null ? [] : [html` ${way}`]))}</li>`)}
            </ul>`
    }
  </section>`;
}

/** A heading with a list; nothing when the list is empty. */
function listOf(heading: string, items: readonly SafeHtml[]): SafeHtml {
  return items.length === 0
    ? nothing
    : html`<h3>${heading}</h3>
        <ul>
          ${items.map((item) => html`<li>${item}</li>`)}
        </ul>`;
}
