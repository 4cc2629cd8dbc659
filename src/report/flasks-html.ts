import type { FarmBeside, FlaskScript, FlaskShown, FlaskState, SlipSeen, Stock } from "../agronomy/index.ts";
import { SAME_BELOW } from "../agronomy/index.ts";
import { amountText, figure, inHundred, pHText } from "./figures.ts";
import { flasksDrawing, lookInWords } from "./flask-drawing.ts";
import { FLASKS_STYLE } from "./flasks-style.ts";
import { estimatesInWords, orderInWords } from "./flasks-text.ts";
import { html, nothing, trusted } from "./html.ts";
import type { SafeHtml } from "./html.ts";

/** Slips that find room on the printed sheet; the page shows all. */
const SLIPS_PRINTED = 9;

/** The script of a demonstration as one self-contained page, to print on two sides of A4. All text is escaped. */
export function flasksHtml(script: FlaskScript): string {
  const { show } = script;
  const title = show.title ?? "Demonstration in flasks";
  return html`<!doctype html>
    <html lang="en-GB">
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
          ${show.about === null ? nothing : html`<p>${show.about}</p>`}
          <div class="flasks">${flasksDrawing(show)}</div>
          <p class="small">
            From dark to light: ${orderInWords(show)} Colours against white through ${figure(show.path_cm)}
            cm, at ${figure(show.temperature_C)} °C; in brackets what the published constants allow.
          </p>
          ${cautionsSection(script)} ${benchSection(script)}
          <div class="second">
            <h2>Step by step</h2>
            <div class="two">${show.flasks.map(flaskBlock)}</div>
            ${show.remarks.map(({ text }) => html`<p>${text}</p>`)} ${slipsSection(script.slips)}
            ${script.farm === null ? nothing : farmSection(script.farm)}
            <h2>Afterwards</h2>
            <p>
              All flasks into one labelled can. Wash flasks and hands; nothing goes into a ditch, onto soil or
              into a sprayer. ${estimatesInWords(show)}
            </p>
          </div>
          ${opticsSection(script)}
        </main>
      </body>
    </html> `.html;
}

function cautionsSection({ cautions }: FlaskScript): SafeHtml {
  return html`<h2>Beware</h2>
    <ul class="two">
      ${cautions.map(({ text }) => html`<li>${text}</li>`)}
    </ul>`;
}

function benchSection({ bench }: FlaskScript): SafeHtml {
  return html`<h2>To have</h2>
    <ul class="two">
      ${bench.shopping.map(
        ({ name, amount, note }) =>
          html`<li>
            ${name}${amount === null ? "" : `, ${bought(amount)}`}${note === null ? "" : ` (${note})`}
          </li>`,
      )}
    </ul>
    <h2>Stocks to make at home</h2>
    <table>
      <thead>
        <tr>
          <th scope="col">Stock</th>
          <th scope="col">Measure out</th>
          <th scope="col">Make up with</th>
          <th scope="col" class="n">to</th>
          <th scope="col" class="n">poured in all</th>
        </tr>
      </thead>
      <tbody>
        ${bench.stocks.map(stockRow)}
      </tbody>
    </table>
    ${bench.remarks.map(({ text }) => html`<p class="small">${text}</p>`)}`;
}

function bought({ value, unit }: { readonly value: number; readonly unit: "g" | "mL" | "" }): string {
  return unit === "" ? String(value) : amountText(value, unit);
}

function stockRow(stock: Stock): SafeHtml {
  const { measure, isAcid } = stock;
  const out =
    measure === null
      ? "dilute the product you have"
      : `${amountText(measure.value, measure.unit)}${isAcid ? ", poured into the water" : ""}`;
  return html`<tr>
    <th scope="row">${stock.substance}, ${stock.strength}</th>
    <td>${out}</td>
    <td>${stock.medium}</td>
    <td class="n">${stock.make_mL} mL</td>
    <td class="n">${amountText(stock.needed_mL, "mL")}</td>
  </tr>`;
}

function swatch(hex: string): SafeHtml {
  return html`<span class="swatch" style="background:${hex}"></span>`;
}

function flaskBlock(flask: FlaskShown): SafeHtml {
  return html`<section class="flask">
    <h3>${flask.name}${flask.shows === null ? "" : `: ${flask.shows}`}</h3>
    <ol>
      <li>${flask.start.added}</li>
      ${flask.steps.map((state, i) => stepItem(state, flask.steps[i + 1]))}
    </ol>
    ${heldLine(flask.steps.at(-1))}
  </section>`;
}

function stepItem(state: FlaskState, next: FlaskState | undefined): SafeHtml {
  // A remark that stands at the next step as well is said there.
  const remarks = state.remarks.filter(({ text }) => next?.remarks.every((one) => one.text !== text) ?? true);
  return html`<li>
    ${state.added}: ${swatch(state.colour.hex)} ${lookInWords(state)}
    ${state.say === null ? nothing : html`<span class="say">“${state.say}”</span>`}
    ${remarks.map(({ text }) => html`<br /><span class="small">${text}</span>`)}
  </li>`;
}

function heldLine(state: FlaskState | undefined): SafeHtml {
  const metals = Object.entries(state?.heldBy ?? {}).map(([metal, shares]) => {
    const parts = Object.entries(shares)
      .slice(0, 3)
      .filter(([, share]) => share >= 0.01)
      .map(([name, share]) => `${inHundred(share)} ${name}`);
    return `${metal}: ${parts.join(", ")}`;
  });
  return metals.length === 0 ? nothing : html`<p class="small">Who has the metal: ${metals.join("; ")}.</p>`;
}

function slipsSection(slips: readonly SlipSeen[]): SafeHtml {
  if (slips.length === 0) return nothing;
  return html`<h2>If a flask is not as drawn</h2>
    <table>
      <thead>
        <tr>
          <th scope="col">What may have happened</th>
          <th scope="col">What it looks like, by the model</th>
          <th scope="col">Mend</th>
        </tr>
      </thead>
      <tbody>
        ${plainestFirst(slips).map(
          ({ what, mend, flasks }, i) =>
            html`<tr class="${i < SLIPS_PRINTED ? "" : "screen"}">
              <th scope="row">${what}</th>
              <td>${changed(flasks)}</td>
              <td>${mend}</td>
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
function changed(flasks: SlipSeen["flasks"]): readonly SafeHtml[] {
  return flasks
    .filter((one) => one.deltaE00 >= SAME_BELOW || one.cloudiness !== "clear")
    .toSorted((one, other) => other.deltaE00 - one.deltaE00)
    .slice(0, 2)
    .map(({ flask, colour, cloudiness }) => {
      const cloudy = cloudiness === "clear" ? "" : `, ${cloudiness}`;
      return html`${swatch(colour.hex)} ${shortName(flask)}: ${colour.words}${cloudy}. `;
    });
}

/** A flask by its letter or number, where its name begins with one. */
function shortName(name: string): string {
  return /^(\w{1,3})\. /.exec(name)?.[1] ?? name;
}

const shareText = (share: number | null): string => (share === null ? "not known" : inHundred(share));

function farmSection(farm: FarmBeside): SafeHtml {
  const programmes = farm.programmes.filter(({ shown }) => shown);
  return html`<h2>From flask to farm: ${farm.water}</h2>
    <p>
      Hardness ${figure(farm.hardness_mgPerL_asCaCO3)} mg/L as CaCO3, pH ${pHText(farm.waterPh)}. Free share
      of the active, computed:
    </p>
    <table>
      <thead>
        <tr>
          <th scope="col">With</th>
          <th scope="col" class="n">Tank pH</th>
          <th scope="col">Active</th>
          <th scope="col" class="n">Free in the tank</th>
          <th scope="col" class="n">Free on the leaf</th>
          <th scope="col" class="n">Ends of the leaf answer</th>
        </tr>
      </thead>
      <tbody>
        ${programmes.flatMap((programme) =>
          programme.shares.map(
            (share) =>
              html`<tr>
                <th scope="row">${programme.name}${doseOf(programme.dose_gPerL)}</th>
                <td class="n">${pHText(programme.tankPh)}</td>
                <td>${share.active}</td>
                <td class="n">${shareText(share.inTank)}</td>
                <td class="n">${shareText(share.onLeaf)}</td>
                <td class="n">
                  ${shareText(share.onLeafWithSolid)} to ${shareText(share.onLeafWithoutSolid)}
                </td>
              </tr>`,
          ),
        )}
      </tbody>
    </table>
    ${farm.notShown.map((text) => html`<p>${text}</p>`)}`;
}

const doseOf = (dose_gPerL: number): string => (dose_gPerL > 0 ? `, ${figure(dose_gPerL)} g/L` : "");

function opticsSection({ show }: FlaskScript): SafeHtml {
  const source = (key: string): string => show.sources.find((one) => one.key === key)?.citation ?? key;
  return html`<section class="screen">
    <h2>Where the optical figures come from</h2>
    <table>
      <thead>
        <tr>
          <th scope="col">Species</th>
          <th scope="col">Figure</th>
          <th scope="col" class="n">Value</th>
          <th scope="col">Source</th>
        </tr>
      </thead>
      <tbody>
        ${show.optics.map(
          (one) =>
            html`<tr>
              <th scope="row">${one.species}</th>
              <td>${one.what}</td>
              <td class="n">${one.value} ${one.unit}</td>
              <td>
                ${one.estimate ? "Estimate. " : ""}${source(one.source)}${
                  one.locator === null ? "" : `; ${one.locator}`
                }
              </td>
            </tr>`,
        )}
      </tbody>
    </table>
    <h2>Sources</h2>
    <ul>
      ${show.sources.map(({ citation }) => html`<li>${citation}</li>`)}
    </ul>
  </section>`;
}
