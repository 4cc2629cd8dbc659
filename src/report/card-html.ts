import { ENGLISH } from "../words/index.ts";
import type { Language, Said } from "../words/index.ts";
import type { CardStep, FillCard } from "./card.ts";
import { filled, html, nothing, said, trusted } from "./html.ts";
import type { SafeHtml } from "./html.ts";
import { mark } from "./html-mark.ts";
import { pageHtml } from "./html-page.ts";
import type { Paper, Sheet } from "./html-page.ts";

/** Sizes of the text [pt] from few lines to many, so that the card stays one page. */
const SIZES: readonly { readonly upTo: number; readonly base_pt: number }[] = [
  { upTo: 26, base_pt: 13.5 },
  { upTo: 34, base_pt: 12.5 },
  { upTo: 44, base_pt: 11 },
  { upTo: 56, base_pt: 9.5 },
  { upTo: 74, base_pt: 7.2 },
];
const LEAST_PT = 6;

/** Signs that fit on one line at the first size; smaller sizes hold more. */
const SIGNS_PER_LINE = 78;

/**
 * The fill card as one self-contained HTML page: black on white, content area 186 × 255 mm, which fits A4 and Letter.
 * All text is escaped.
 *
 * @param language the one the card was made in
 */
export function cardHtml(card: FillCard, language: Language = ENGLISH, paper: Paper = "auto"): string {
  return pageHtml(card.title, { paper, language }, [cardSheet(card, language)]);
}

/** The fill card as a sheet of a page. */
export function cardSheet(card: FillCard, language: Language = ENGLISH): Sheet {
  return { style: styleSheet(textSize_pt(card)), body: bodyHtml(card, language) };
}

function bodyHtml(card: FillCard, language: Language): SafeHtml {
  const words = language.words.card;
  return html`<main class="card">
    <header>
      <h1>${card.title}</h1>
      <p class="facts">
        <span><b>${words.water}</b> ${card.sample}</span> <span><b>${words.printed}</b> ${card.date}</span>
      </p>
      <p class="programme">${card.programme}, <b>${card.waterVolume}</b></p>
      ${card.result === null ? nothing : html`<p>${card.result}</p>`}
      ${card.warnings.map((text) => html`<p class="warning"><b>▲ ${words.attention}</b> ${said(text)}</p> `)}
    </header>
    ${loadsHtml(card, words)} ${card.before.length === 0 ? nothing : beforeHtml(card.before, words)}
    ${card.jar === null ? nothing : html`<p class="jar">${card.jar}</p>`}
    <ol>
      ${card.steps.map((step) => stepHtml(step, card.loads.last !== null, words))}
    </ol>
    <footer>
      <p>${card.check} ${words.found}</p>
      <p>${card.redo.text} ${mark(card.redo.evidence, language)}</p>
      <p class="small">${card.footer}</p>
    </footer>
  </main>`;
}

type CardWords = Language["words"]["card"];

function loadsHtml(card: FillCard, words: CardWords): SafeHtml {
  const { count, full, last } = card.loads;
  const loads = filled(count === 1 ? words.oneLoad : words.manyLoads, { count: html`<b>${count}</b>` });
  const volume = html`<b>${full.volume}</b>`;
  const line =
    last === null
      ? filled(words.fullLoads, { loads, volume, area: full.area })
      : filled(words.fullAndLastLoads, {
          loads,
          volume,
          area: full.area,
          lastVolume: html`<b>${last.volume}</b>`,
          lastArea: last.area,
        });
  const ticks = trusted('<span class="tick"></span> '.repeat(Math.min(count, 12)));
  return html`<p class="loads">${line} ${words.loadsDone} ${ticks}</p>`;
}

function beforeHtml(cautions: readonly Said[], words: CardWords): SafeHtml {
  return html`<section aria-label="${words.beforeYouStart}">
    <h2>${words.beforeYouStart}</h2>
    <ul>
      ${cautions.map((text) => html`<li>${said(text)}</li>`)}
    </ul>
  </section>`;
}

function stepHtml(step: CardStep, hasLast: boolean, words: CardWords): SafeHtml {
  const last =
    step.amount === null || !hasLast
      ? nothing
      : html`<span class="amount last"
          ><small>${words.lastLoad}</small> ${step.amount.last ?? words.noAmount}</span
        >`;
  const amount =
    step.amount === null
      ? nothing
      : html`<span class="amounts"
          ><span class="amount"><small>${words.fullLoad}</small> ${step.amount.full}</span>${last}</span
        >`;
  const cautions = step.cautions.map((text) => html`<p class="caution"><b>▲</b> ${said(text)}</p>`);
  return html`<li class="${step.pause ? "pause" : "step"}">
    <span class="tick"></span><span class="number">${step.number}</span>
    <div class="what">
      <p>${step.pause ? html`<b>${words.pause}</b> ` : nothing}${said(step.what)}</p>
      ${cautions}
    </div>
    ${amount}
  </li> `;
}

/** Size of the text [pt] at which the card is expected to fill one page at most. */
function textSize_pt(card: FillCard): number {
  const lines = (text: string, signs = SIGNS_PER_LINE): number => Math.max(1, Math.ceil(text.length / signs));
  let total = 9 + lines(card.sample) + lines(card.programme) + lines(card.redo.text) + lines(card.footer);
  for (const { text } of card.warnings) total += lines(text) + 0.5;
  for (const { text } of card.before) total += lines(text);
  if (card.jar !== null) total += lines(card.jar);
  for (const step of card.steps) {
    const signs = step.amount === null ? SIGNS_PER_LINE - 6 : SIGNS_PER_LINE - 36;
    total += lines(step.what.text, signs) + 0.5;
    for (const { text } of step.cautions) total += lines(text, signs);
  }
  return SIZES.find((size) => total <= size.upTo)?.base_pt ?? LEAST_PT;
}

function styleSheet(base_pt: number): string {
  return `
.card { background: #fff; color: #000; font: 500 ${base_pt}pt/1.3 system-ui, sans-serif; font-variant-numeric: tabular-nums; }
.card { width: 186mm; max-width: 100%; margin: 0 auto; }
.card * { box-sizing: border-box; margin: 0; padding: 0; }
.card h1 { font-size: 1.6em; line-height: 1.15; }
.card h2 { font-size: 1em; }
.card header { border-bottom: 2px solid #000; padding-bottom: 1.5mm; }
.card .facts { display: flex; flex-wrap: wrap; gap: 0 6mm; }
.card .programme { font-size: 1.25em; font-weight: 650; }
.card .warning { border: 3px double #000; padding: 1mm 2mm; margin-top: 1mm; }
.card .loads { padding: 1.5mm 0; border-bottom: 2px solid #000; }
.card section { padding: 1mm 0; border-bottom: 2px solid #000; }
.card ul { padding-left: 5mm; }
.card ol { list-style: none; }
.card li.step, .card li.pause { display: flex; gap: 2.5mm; align-items: flex-start; padding: 0.9mm 0; border-bottom: 1px solid #000; break-inside: avoid; }
.card li.pause { border-top: 3px double #000; border-bottom: 3px double #000; font-weight: 700; }
.card .tick { display: inline-block; flex: none; width: 1.15em; height: 1.15em; border: 2px solid #000; vertical-align: middle; }
.card .number { flex: none; width: 1.6em; font-weight: 700; text-align: right; }
.card .what { flex: 1; }
.card .caution { font-weight: 650; }
.card .amounts { flex: none; display: flex; gap: 4mm; text-align: right; }
.card .amount { min-width: 22mm; font-size: 1.5em; line-height: 1.1; font-weight: 700; white-space: nowrap; }
.card .amount small { display: block; font-size: 0.5em; font-weight: 500; }
.card footer { padding-top: 1.5mm; }
.card .small, .card .evidence { font-size: 0.85em; }
@media screen { .card { padding: min(12mm, 4vw); width: 210mm; } }
@media screen and (max-width: 600px) { .card .amounts, .card li.step { flex-wrap: wrap; } }
@media print { .card { max-height: 255mm; } }
`;
}
