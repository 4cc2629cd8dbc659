import type { Filling } from "../agronomy/index.ts";
import { fill } from "../words/index.ts";
import type { Language } from "../words/index.ts";
import { filled, html, nothing, said } from "./html.ts";
import type { SafeHtml } from "./html.ts";
import { mark } from "./html-mark.ts";
import { jarStart } from "./sentences.ts";

/** How to fill: loads, order, where published orders differ, the sprayer, cautions and the jar test. */
export function fillingSection(plan: Filling, language: Language): SafeHtml {
  const { words, phrases } = language;
  const steps = plan.order.map(({ pause, what, why, evidence }) => {
    const stop = pause ? html`<strong>${words.plan.pauseHeading}</strong> ` : nothing;
    const reason = html`<span class="why">${said(phrases.say(why))}</span>`;
    return html`<li>${stop}${said(phrases.say(what))} ${reason} ${mark(evidence, language)}</li>`;
  });
  return html`<section>
    <h2>${words.plan.filling}</h2>
    <p class="lead">${loadsHtml(plan, language)}</p>
    ${amountsTable(plan, language)}
    <ol>
      ${steps}
    </ol>
    ${listOf(
      words.plan.ordersDiffer,
      plan.differences.map(
        ({ text }) => html`${said(phrases.say(text))} ${mark("published rule", language)}`,
      ),
    )}
    ${listOf(
      words.plan.thisSprayer,
      plan.sprayer.map(({ text, evidence }) => html`${said(phrases.say(text))} ${mark(evidence, language)}`),
    )}
    ${listOf(
      words.plan.cautionsHeading,
      plan.cautions.map(({ text }) => html`▲ ${said(phrases.say(text))}`),
    )}
    ${jarHtml(plan, language)}
  </section>`;
}

function loadsHtml({ loads }: Filling, { words, figures }: Language): SafeHtml {
  const { count, full, last, measures } = loads;
  const said = fill(count === 1 ? words.card.oneLoad : words.card.manyLoads, { count });
  const volume = figures.measured(full.volume_L, "L", measures);
  const area = figures.measured(full.area_ha, "ha", measures);
  if (last === null) return filled(words.plan.fullLoads, { loads: said, volume, area });
  return filled(words.plan.fullAndLastLoads, {
    loads: said,
    volume,
    area,
    lastVolume: figures.measured(last.volume_L, "L", measures),
    lastArea: figures.measured(last.area_ha, "ha", measures),
  });
}

function amountsTable({ loads }: Filling, { words, figures, phrases }: Language): SafeHtml {
  const { full, last, measures } = loads;
  const lastOf = (product: string): string => {
    const amount = last?.amounts.find((one) => one.product === product);
    return amount === undefined ? "–" : figures.measured(amount.amount, amount.unit, measures);
  };
  return html`<table>
    <caption>
      ${words.plan.amountsPerLoad}
    </caption>
    <thead>
      <tr>
        <th scope="col">${words.plan.product}</th>
        <th scope="col">${words.plan.fullLoad}</th>
        <th scope="col">${words.plan.lastLoad}</th>
      </tr>
    </thead>
    <tbody>
      ${full.amounts.map(
        (one) =>
          html`<tr>
            <th scope="row">${phrases.name(one.label)}</th>
            <td class="n">${figures.measured(one.amount, one.unit, measures)}</td>
            <td class="n">${lastOf(one.product)}</td>
          </tr>`,
      )}
    </tbody>
  </table>`;
}

function jarHtml({ jar, jarVolume_L }: Filling, language: Language): SafeHtml {
  const { words, figures, phrases } = language;
  if (jar.length === 0) return nothing;
  const items = jar.map(({ label, amount, unit, how, spoons }) => {
    const ways = [how, spoons].flatMap((way) => (way === null ? [] : [html` ${said(phrases.say(way))}`]));
    return html`${phrases.name(label)}: ${figures.amountText(amount, unit)}${ways}`;
  });
  return html`<h3>${words.plan.jarHeading}</h3>
    <p class="lead">${jarStart(jarVolume_L, language)}</p>
    ${bulleted(items)}`;
}

/** A heading with a list; nothing when the list is empty. */
function listOf(heading: string, items: readonly SafeHtml[]): SafeHtml {
  return items.length === 0
    ? nothing
    : html`<h3>${heading}</h3>
        ${bulleted(items)}`;
}

function bulleted(items: readonly SafeHtml[]): SafeHtml {
  return html`<ul>
    ${items.map((item) => html`<li>${item}</li>`)}
  </ul>`;
}
