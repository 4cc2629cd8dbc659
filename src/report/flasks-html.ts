import type { FlaskScript, FlaskShown, FlaskState, SlipSeen, Stock } from "../agronomy/index.ts";
import { SAME_BELOW } from "../agronomy/index.ts";
import { ENGLISH, sayIn } from "../words/index.ts";
import type { Language } from "../words/index.ts";
import { addedText, liquidText, mediumText, sameContentsText, withStrength } from "./flask-looks.ts";
import { flasksDrawing } from "./flask-drawing.ts";
import { farmSection } from "./flasks-html-farm.ts";
import { FLASKS_STYLE } from "./flasks-style.ts";
import { estimatesInWords, orderInWords } from "./flask-words.ts";
import { html, nothing, said, trusted } from "./html.ts";
import type { SafeHtml } from "./html.ts";

/** Slips that find room on the printed sheet; the page shows all. */
const SLIPS_PRINTED = 9;

/** The script of a demonstration as one self-contained page, to print on two sides of A4. All text is escaped. */
export function flasksHtml(script: FlaskScript, language: Language = ENGLISH): string {
  const say = sayIn(language);
  const { phrases, figures } = language;
  const { show } = script;
  const title = language.page(show.title ?? "Demonstration in flasks");
  return html`<!doctype html>
    <html lang="${language.tag}">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>${title}</title>
        <style>
          ${trusted(FLASKS_STYLE)}
        </style>
      </head>
      <body>
        <main>
          <h1>${title}</h1>
          ${show.about === null ? nothing : html`<p>${said(phrases.say(show.about))}</p>`}
          <div class="flasks">${flasksDrawing(show, { language })}</div>
          <p class="small">
            ${say("From dark to light: {order}", { order: orderInWords(show, language) })}
            ${say(
              "Colours against white through {path} cm, at {temperature} °C; in brackets what the published constants allow.",
              { path: figures.figure(show.path_cm), temperature: figures.figure(show.temperature_C) },
            )}
          </p>
          ${cautionsSection(script, language)} ${benchSection(script, language)}
          <div class="second">
            <h2>${say("Step by step")}</h2>
            <div class="two">${show.flasks.map((flask) => flaskBlock(flask, language))}</div>
            ${show.sameContents.map((same) => html`<p>${sameContentsText(same, language)}</p>`)}
            ${slipsSection(script.slips, language)}
            ${script.farm === null ? nothing : farmSection(script.farm, language)}
            <h2>${say("Afterwards")}</h2>
            <p>
              ${say(
                "All flasks into one labelled can. Wash flasks and hands; nothing goes into a ditch, onto soil or into a sprayer.",
              )}
              ${estimatesInWords(show, language)}
            </p>
          </div>
          ${opticsSection(script, language)}
        </main>
      </body>
    </html> `.html;
}

function cautionsSection({ cautions }: FlaskScript, language: Language): SafeHtml {
  return html`<h2>${sayIn(language)("Beware")}</h2>
    <ul class="two">
      ${cautions.map(({ text }) => html`<li>${said(language.phrases.say(text))}</li>`)}
    </ul>`;
}

function benchSection({ bench }: FlaskScript, language: Language): SafeHtml {
  const say = sayIn(language);
  const { phrases } = language;
  return html`<h2>${say("To have")}</h2>
    <ul class="two">
      ${bench.shopping.map(
        ({ name, amount, note }) =>
          html`<li>
            ${phrases.name(name)}${amount === null ? "" : `, ${bought(amount, language)}`}${note === null ? "" : ` (${phrases.name(note)})`}
          </li>`,
      )}
    </ul>
    <h2>${say("Stocks to make at home")}</h2>
    <table>
      <thead>
        <tr>
          <th scope="col">${say("Stock")}</th>
          <th scope="col">${say("Measure out")}</th>
          <th scope="col">${say("Make up with")}</th>
          <th scope="col" class="n">${say("To")}</th>
          <th scope="col" class="n">${say("Poured in all")}</th>
        </tr>
      </thead>
      <tbody>
        ${bench.stocks.map((stock) => stockRow(stock, language))}
      </tbody>
    </table>
    ${bench.remarks.map(({ text }) => html`<p class="small">${said(phrases.say(text))}</p>`)}`;
}

function bought(
  { value, unit }: { readonly value: number; readonly unit: "g" | "mL" | "" },
  { figures }: Language,
): string {
  return unit === "" ? String(value) : figures.amountText(value, unit);
}

function stockRow(stock: Stock, language: Language): SafeHtml {
  const say = sayIn(language);
  const { figures } = language;
  const { measure, isAcid } = stock;
  const out =
    measure === null
      ? say("dilute the product you have")
      : `${figures.amountText(measure.value, measure.unit)}${isAcid ? `, ${say("poured into the water")}` : ""}`;
  return html`<tr>
    <th scope="row">${withStrength(stock, language)}</th>
    <td>${out}</td>
    <td>${mediumText(stock.medium, language)}</td>
    <td class="n">${stock.make_mL} mL</td>
    <td class="n">${figures.amountText(stock.needed_mL, "mL")}</td>
  </tr>`;
}

function swatch(hex: string): SafeHtml {
  return html`<span class="swatch" style="background:${hex}"></span>`;
}

function flaskBlock(flask: FlaskShown, language: Language): SafeHtml {
  const { page } = language;
  return html`<section class="flask">
    <h3>${page(flask.name)}${flask.shows === null ? "" : `: ${page(flask.shows)}`}</h3>
    <ol>
      <li>${addedText(flask.start.added, language)}</li>
      ${flask.steps.map((state, i) => stepItem(state, flask.steps[i + 1], language))}
    </ol>
    ${heldLine(flask.steps.at(-1), language)}
  </section>`;
}

function stepItem(state: FlaskState, next: FlaskState | undefined, language: Language): SafeHtml {
  const { phrases } = language;
  // A remark that stands at the next step as well is said there.
  const remarks = state.remarks.filter(({ text }) => next?.remarks.every((one) => one.text !== text) ?? true);
  return html`<li>
    ${addedText(state.added, language)}: ${swatch(state.colour.hex)} ${liquidText(state, language)}
    ${state.say === null ? nothing : html`<span class="say">“${said(phrases.say(state.say))}”</span>`}
    ${remarks.map(({ text }) => html`<br /><span class="small">${said(phrases.say(text))}</span>`)}
  </li>`;
}

function heldLine(state: FlaskState | undefined, language: Language): SafeHtml {
  const { phrases, figures } = language;
  const metals = Object.entries(state?.heldBy ?? {}).map(([metal, shares]) => {
    const parts = Object.entries(shares)
      .slice(0, 3)
      .filter(([, share]) => share >= 0.01)
      .map(([name, share]) => `${figures.inHundred(share)} ${phrases.name(name)}`);
    return `${phrases.name(metal)}: ${parts.join(", ")}`;
  });
  const metal = sayIn(language)("Who has the metal: {metals}.", { metals: metals.join("; ") });
  return metals.length === 0 ? nothing : html`<p class="small">${metal}</p>`;
}

function slipsSection(slips: readonly SlipSeen[], language: Language): SafeHtml {
  const say = sayIn(language);
  const { phrases } = language;
  if (slips.length === 0) return nothing;
  return html`<h2>${say("If a flask is not as drawn")}</h2>
    <table>
      <thead>
        <tr>
          <th scope="col">${say("What may have happened")}</th>
          <th scope="col">${say("What it looks like, by the model")}</th>
          <th scope="col">${say("Mend")}</th>
        </tr>
      </thead>
      <tbody>
        ${plainestFirst(slips).map(
          ({ what, mend, flasks }, i) =>
            html`<tr class="${i < SLIPS_PRINTED ? "" : "screen"}">
              <th scope="row">${said(phrases.say(what))}</th>
              <td>${changed(flasks, language)}</td>
              <td>${said(phrases.say(mend))}</td>
            </tr>`,
        )}
      </tbody>
    </table>`;
}

/** Slips by the largest change they make. */
function plainestFirst(slips: readonly SlipSeen[]): readonly SlipSeen[] {
  const most = ({ flasks }: SlipSeen): number => Math.max(...flasks.map((one) => one.deltaE00));
  return slips.toSorted((one, other) => most(other) - most(one));
}

/** The flasks that give a slip away, the plainest first. */
function changed(flasks: SlipSeen["flasks"], language: Language): readonly SafeHtml[] {
  return flasks
    .filter((one) => one.deltaE00 >= SAME_BELOW || one.cloudiness.kind !== "clear")
    .toSorted((one, other) => other.deltaE00 - one.deltaE00)
    .slice(0, 2)
    .map(
      (effect) =>
        html`${swatch(effect.colour.hex)} ${shortName(language.page(effect.flask))}:
        ${liquidText(effect, language)}. `,
    );
}

/** A flask by its letter or number, where its name begins with one. */
function shortName(name: string): string {
  return /^(\w{1,3})\. /.exec(name)?.[1] ?? name;
}

function opticsSection({ show }: FlaskScript, language: Language): SafeHtml {
  const say = sayIn(language);
  const source = (key: string): string => show.sources.find((one) => one.key === key)?.citation ?? key;
  return html`<section class="screen">
    <h2>${say("Where the optical figures come from.")}</h2>
    <table>
      <thead>
        <tr>
          <th scope="col">${say("Species")}</th>
          <th scope="col">${say("Figure")}</th>
          <th scope="col" class="n">${say("Value")}</th>
          <th scope="col">${say("Source")}</th>
        </tr>
      </thead>
      <tbody>
        ${show.optics.map(
          (one) =>
            html`<tr>
              <th scope="row">${one.species}</th>
              <td>${language.page(one.what)}</td>
              <td class="n">${one.value} ${one.unit}</td>
              <td>
                ${one.estimate ? `${say("Estimate.")} ` : ""}
                <span lang="en">${source(one.source)}${one.locator === null ? "" : `; ${one.locator}`}</span>
              </td>
            </tr>`,
        )}
      </tbody>
    </table>
    <h2>${say("Sources")}</h2>
    <ul>
      ${show.sources.map(({ citation }) => html`<li><span lang="en">${citation}</span></li>`)}
    </ul>
  </section>`;
}
