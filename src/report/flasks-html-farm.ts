import type { FarmBeside } from "../agronomy/index.ts";
import { sayIn } from "../words/index.ts";
import type { Language } from "../words/index.ts";
import { html, said } from "./html.ts";
import type { SafeHtml } from "./html.ts";

const shareText = (share: number | null, { words, figures }: Language): string =>
  share === null ? words.answers.notKnown : figures.inHundred(share);

/** What the conditioners of the flasks do in the water and at the rates of a job, beside the flasks. */
export function farmSection(farm: FarmBeside, language: Language): SafeHtml {
  const say = sayIn(language);
  const { phrases, figures } = language;
  const heads = [say("Free in the tank"), say("Free on the leaf"), say("Leaf, its two ends")];
  const programmes = farm.programmes.filter(({ shown }) => shown);
  return html`<h2>${say("From flask to farm: {water}", { water: farm.water })}</h2>
    <p>
      ${say("Hardness {hardness} mg/L as CaCO₃, pH {pH}.", {
        hardness: figures.figure(farm.hardness_mgPerL_asCaCO3),
        pH: figures.pHText(farm.waterPh),
      })}
      ${say("Free share of each active, in 100, at the rates of the job. Computed.")}
    </p>
    <table>
      <thead>
        <tr>
          <th scope="col">${say("With")}</th>
          <th scope="col" class="n">${say("Tank pH")}</th>
          <th scope="col">${say("Active")}</th>
          ${heads.map((head) => html`<th scope="col" class="n">${head}</th> `)}
        </tr>
      </thead>
      <tbody>
        ${programmes.flatMap((programme) =>
          programme.shares.map(
            (share) =>
              html`<tr>
                <th scope="row">${phrases.name(programme.name)}${doseOf(programme.dose_gPerL, language)}</th>
                <td class="n">${figures.pHText(programme.tankPh)}</td>
                <td>${phrases.name(share.active)}</td>
                <td class="n">${shareText(share.inTank, language)}</td>
                <td class="n">${shareText(share.onLeaf, language)}</td>
                <td class="n">
                  ${say("{low} to {high}", {
                    low: shareText(share.onLeafWithSolid, language),
                    high: shareText(share.onLeafWithoutSolid, language),
                  })}
                </td>
              </tr>`,
          ),
        )}
      </tbody>
    </table>
    ${farm.notShown.map((text) => html`<p>${said(phrases.say(text))}</p>`)}`;
}

const doseOf = (dose_gPerL: number, { figures }: Language): string =>
  dose_gPerL > 0 ? `, ${figures.figure(dose_gPerL)} g/L` : "";
