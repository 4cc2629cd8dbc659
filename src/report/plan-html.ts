import type { ActiveVerdict, LeafShare, Plan, Programme, RuleVerdict, Share } from "../agronomy/index.ts";
import { fill } from "../words/index.ts";
import type { Language } from "../words/index.ts";
import { filled, html, nothing, said } from "./html.ts";
import type { SafeHtml } from "./html.ts";
import { mark } from "./html-mark.ts";
import { ionWords } from "./ion-words.ts";
import {
  clockText,
  concentrationText,
  dryingText,
  heldList,
  leafEndsText,
  levelText,
  onMudText,
  ownAcidText,
  rangeText,
  wayName,
} from "./sentences.ts";
import { shareBars } from "./share-bars.ts";
import { commonRemarks, ownRemarks } from "./said-once.ts";
import { uncertaintySentences } from "./uncertainty-words.ts";
import { wordIssue } from "./wording.ts";

/** The water as completed. */
export function waterSection({ water, tank }: Plan, language: Language): SafeHtml {
  const words = language.words.plan;
  const { figure, pHText } = language.figures;
  const ions = Object.entries(water.ions_molPerL).sort(([, a], [, b]) => b - a);
  const hardness = filled(words.hardness, { hardness: figure(water.hardness_mgPerL_asCaCO3) });
  const balance =
    water.chargeBalance_percent === null
      ? words.tooLittleMeasured
      : `${figure(water.chargeBalance_percent, 2)} %`;
  const facts = filled(words.waterFacts, {
    hardness: html`<strong>${hardness}</strong>`,
    alkalinity: figure(water.alkalinity_mgPerL_asCaCO3),
    pH: pHText(water.pH),
    balance,
    tankPH: pHText(tank.pH),
  });
  return html`<section>
    <h2>${words.waterHeading}</h2>
    <p>${facts} ${mark("computed", language)}</p>
    <table class="narrow">
      <caption>
        ${words.composition}
      </caption>
      <thead>
        <tr>
          <th scope="col">${words.component}</th>
          <th scope="col">${words.total}</th>
        </tr>
      </thead>
      <tbody>
        ${ions.map(
          ([name, total]) =>
            html`<tr>
              <th scope="row">${name}</th>
              <td class="n">${figure(total * 1000)}</td>
            </tr>`,
        )}
      </tbody>
    </table>
  </section>`;
}

/** The three answers for each active of a tank, with bars and in words. */
export function activesSection(
  heading: string,
  { actives, drying }: Pick<Programme, "actives" | "drying">,
  language: Language,
): SafeHtml {
  return html`<section>
    <h2>${heading}</h2>
    ${actives.map((active) => activeTable(active, language))}
    <p>${dryingText(drying, language)} ${mark("computed", language)}</p>
  </section>`;
}

function activeTable(active: ActiveVerdict, language: Language): SafeHtml {
  const { plan } = language.words;
  const { byClock } = active;
  const name = language.phrases.name(active.name);
  const ends = leafEndsText(active.onLeaf, language);
  const rules = active.rules.map((rule) => html`<li>${ruleHtml(rule, rule.level, language)}</li>`);
  return html`<div class="block">
      <h3>
        ${fill(plan.activeHeading, { active: name, concentration: concentrationText(active, language) })}
      </h3>
      ${shareBars(active, language)}
      <table>
        <caption>
          ${fill(plan.threeAnswers, { active: name })}
        </caption>
        <thead>
          <tr>
            ${[plan.where, plan.freeOrIntact, plan.range, plan.whatHolds].map((head) => html`<th scope="col">${head}</th> `)}
          </tr>
        </thead>
        <tbody>
          ${shareRow(capitalised(plan.inTheTank), active.inTank, [], language)} ${mudRow(active, language)}
          ${shareRow(capitalised(plan.onTheLeaf), active.onLeaf, [ends === null ? null : `${ends}.`, ownAcidText(active.onLeaf, language)], language)}
          <tr>
            <th scope="row">${capitalised(plan.byTheClock)}</th>
            <td>${shareOrUnknown(byClock.intact, language)}</td>
            <td>${rangeText(byClock.low, byClock.high, language)}</td>
            <td>${clockText(byClock, language)} ${mark(byClock.evidence, language)}</td>
          </tr>
        </tbody>
      </table>
    </div>
    ${bulleted(rules)}`;
}

function ruleHtml(
  { text, contradictedBy, evidence }: RuleVerdict,
  level: RuleVerdict["level"],
  language: Language,
  name = "",
): SafeHtml {
  const { words, phrases } = language;
  const by =
    contradictedBy === null
      ? nothing
      : html`${filled(words.plan.contradicted, { by: said(phrases.say(contradictedBy)) })} `;
  const head =
    name === "" ? capitalised(levelText(level, language)) : `${name}: ${levelText(level, language)}`;
  return html`${head}: ${said(phrases.say(text))} ${by}${mark(evidence, language)}`;
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function shareOrUnknown(share: number | null, { words, figures }: Language): string {
  return share === null ? words.answers.notKnown : figures.inHundred(share);
}

function shareRow(
  where: string,
  share: Share | LeafShare,
  more: readonly (string | null)[],
  language: Language,
): SafeHtml {
  const held = heldList(share.heldBy, language);
  const why = [
    held === "" ? nothing : html`${fill(language.words.plan.heldInHundred, { holders: held })} `,
    ...more.map((text) => (text === null ? nothing : html`${text} `)),
    share.why === null || share.why === "" ? nothing : html`${said(language.phrases.say(share.why))} `,
  ];
  return html`<tr>
    <th scope="row">${where}</th>
    <td>${shareOrUnknown(share.free, language)}</td>
    <td>${rangeText(share.low, share.high, language)}</td>
    <td>${why}${mark(share.evidence, language)}</td>
  </tr>`;
}

function mudRow({ onMud }: ActiveVerdict, language: Language): SafeHtml {
  if (onMud === null) return nothing;
  const { plan } = language.words;
  return html`<tr>
    <th scope="row">${capitalised(plan.onTheMud)}</th>
    <td>${plan.beside}</td>
    <td>${rangeText(onMud.low, onMud.high, language)}</td>
    <td>${onMudText(onMud, language) ?? ""} ${mark(onMud.evidence, language)}</td>
  </tr>`;
}

/** How the ranges were found, and what would narrow them. */
export function uncertaintySection({ uncertainty, programmes }: Plan, language: Language): SafeHtml {
  if (uncertainty === null) return html``;
  const about = programmes.find(({ id }) => id === uncertainty.about.programme);
  return html`<section>
    <h2>${language.words.plan.howSureHeading}</h2>
    ${uncertaintySentences(uncertainty, about ?? null, language).map((sentence) => html`<p>${sentence}</p>`)}
  </section>`;
}

/** What is known of each way out, what was assumed, what to look at. */
export function reasoningSection(plan: Plan, language: Language): SafeHtml {
  const { words, phrases } = language;
  const remarks = plan.programmes.flatMap((programme) => {
    const name = wayName(programme, language);
    return [
      ...programme.reasons.map((one) => html`<li>${ruleHtml(one, one.level, language, name)}</li>`),
      ...ownRemarks(programme).map(
        (one) => html`<li>${name}: ${said(phrases.say(one.text))} ${mark(one.evidence, language)}</li>`,
      ),
    ];
  });
  const notComputed = commonRemarks(plan.programmes).map(
    (one) => html`<li>${said(phrases.say(one.text))} ${mark(one.evidence, language)}</li>`,
  );
  const assumed = plan.water.assumptions.map(
    ({ about, why, evidence }) =>
      html`<li>${phrases.name(ionWords(about))}: ${said(phrases.say(why))} ${mark(evidence, language)}</li>`,
  );
  const issues = [...plan.water.issues, ...plan.issues].map((issue) => wordIssue(issue, language));
  const toLookAt = [...new Set(issues)].map((text) => html`<li>${text}</li>`);
  return html`<section>
    <h2>${words.plan.why}</h2>
    ${bulleted([...notComputed, ...remarks])} ${underHeading(words.plan.assumed, assumed)}
    ${underHeading(words.plan.toLookAtHeading, toLookAt)}
  </section>`;
}

function bulleted(items: readonly SafeHtml[]): SafeHtml {
  return items.length === 0
    ? nothing
    : html`<ul>
        ${items}
      </ul>`;
}

function underHeading(heading: string, items: readonly SafeHtml[]): SafeHtml {
  return items.length === 0
    ? nothing
    : html`<h3>${heading}</h3>
        ${bulleted(items)}`;
}

/** Exactly the sources this plan rests on. */
export function sourcesSection({ sources, versions }: Plan, { words }: Language): SafeHtml {
  const items = sources.map(({ key, citation, fromMemory }) => {
    const cited = html`<span lang="en">${citation}</span>`;
    return html`<li id="source-${key}">
      ${fromMemory ? filled(words.plan.fromMemory, { citation: cited }) : cited}
    </li>`;
  });
  return html`<section>
    <h2>${words.plan.sourcesHeading}</h2>
    ${bulleted(items)}
    <p>${fill(words.plan.foot, { version: versions.hardstand, data: versions.data })}</p>
  </section>`;
}
