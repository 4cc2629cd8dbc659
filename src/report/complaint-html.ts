import type { ComplaintAnswer } from "../agronomy/index.ts";
import { ENGLISH, sayIn } from "../words/index.ts";
import type { Language } from "../words/index.ts";
import { activeComplaintLines, causeText, complaintHeadline, limitsText } from "./complaint-words.ts";
import { html, nothing, said, trusted } from "./html.ts";
import type { SafeHtml } from "./html.ts";
import { mark } from "./html-mark.ts";
import { ionWords } from "./ion-words.ts";
import { wordIssue } from "./wording.ts";

/** The answer to a complaint as one self-contained HTML page. All text is escaped. */
export function complaintHtml(
  answer: ComplaintAnswer,
  facts: { readonly date: string },
  language: Language = ENGLISH,
): string {
  const say = sayIn(language);
  const { phrases, figures } = language;
  const { water, tank } = answer;
  const title = answer.title ?? say("Complaint: {water}", { water: water.source });
  const page = html`<!doctype html>
    <html lang="${language.tag}">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>${title}</title>
        <style>
          ${trusted(STYLE)}
        </style>
      </head>
      <body>
        <main>
          <h1>${title}</h1>
          <p>${say("{date}. Water: {water}.", { date: figures.dayText(facts.date), water: water.source })}</p>
          <p><strong>${complaintHeadline(answer, language)}</strong> ${mark("computed", language)}</p>
          <p class="proof">${said(phrases.say(answer.noProof))}</p>
          <p>
            ${say(
              "Hardness {hardness} mg/L as CaCO3, alkalinity {alkalinity} mg/L as CaCO3, pH {pH}; tank pH {tankPH}.",
              {
                hardness: figures.figure(water.hardness_mgPerL_asCaCO3),
                alkalinity: figures.figure(water.alkalinity_mgPerL_asCaCO3),
                pH: figures.pHText(water.pH),
                tankPH: figures.pHText(tank.pH),
              },
            )}
          </p>
          <h2>${say("What the water could have taken")}</h2>
          ${answer.actives.map(
            (one) =>
              html`<p>${activeComplaintLines(one, language).join(" ")} ${mark("computed", language)}</p>`,
          )}
          <p>${limitsText(answer, language)} ${mark("common practice", language)}</p>
          ${causesTable(answer, language)} ${listsOf(answer, language)}
          <p>
            ${say("Hardstand {version}, data {data}.", {
              version: answer.versions.hardstand,
              data: answer.versions.data,
            })}
          </p>
        </main>
      </body>
    </html> `;
  return page.html;
}

/** Rules, remarks, what was taken for granted, and the sources. */
function listsOf({ water, rules, remarks, issues, sources }: ComplaintAnswer, language: Language): SafeHtml {
  const say = sayIn(language);
  const { phrases, words } = language;
  const assumed = water.assumptions.map(
    ({ about, why }) => html`${phrases.name(ionWords(about))}: ${said(phrases.say(why))}`,
  );
  const toLookAt = new Set([...water.issues, ...issues].map((issue) => wordIssue(issue, language)));
  const lists: readonly (readonly [string, readonly SafeHtml[]])[] = [
    [
      say("What is published about such a mix"),
      rules.map(
        ({ text, contradictedBy, evidence }) =>
          html`${said(phrases.say(text))}
          ${contradictedBy === null ? nothing : html`${say("Contradicted:")} ${said(phrases.say(contradictedBy))}`}
          ${mark(evidence, language)}`,
      ),
    ],
    [
      say("Remarks"),
      remarks.map(({ text, evidence }) => html`${said(phrases.say(text))} ${mark(evidence, language)}`),
    ],
    [say("Taken for granted, and to look at"), [...assumed, ...[...toLookAt].map((line) => html`${line}`)]],
    [words.plan.sourcesHeading, sources.map(({ citation }) => html`<span lang="en">${citation}</span>`)],
  ];
  return html`${lists.map(([heading, items]) => listOf(heading, items))}`;
}

function causesTable({ causes }: ComplaintAnswer, language: Language): SafeHtml {
  const say = sayIn(language);
  const { phrases } = language;
  const heads = [say("Cause"), say("Where it stands"), say("What to ask")];
  return html`<h2>${say("The usual causes")}</h2>
    <table>
      <caption>
        ${say("In the order to exclude them")}
      </caption>
      <thead>
        <tr>
          ${heads.map((head) => html`<th scope="col">${head}</th> `)}
        </tr>
      </thead>
      <tbody>
        ${causes.map(
          (cause) =>
            html`<tr>
              <th scope="row">${phrases.name(cause.name)}</th>
              <td>${causeText(cause, language)}</td>
              <td>${said(phrases.say(cause.check))} ${mark(cause.evidence, language)}</td>
            </tr>`,
        )}
      </tbody>
    </table>`;
}

function listOf(heading: string, items: readonly SafeHtml[]): SafeHtml {
  return items.length === 0
    ? nothing
    : html`<h2>${heading}</h2>
        <ul>
          ${items.map((item) => html`<li>${item}</li>`)}
        </ul>`;
}

const STYLE = `
body { background: #fff; color: #14202b; font: 16px/1.45 system-ui, sans-serif; margin: 0; }
main { max-width: 60rem; margin: 0 auto; padding: 1rem; }
h1 { font-size: 1.8rem; line-height: 1.2; margin: 0 0 0.3rem; }
h2 { font-size: 1.3rem; border-top: 2px solid #14202b; padding-top: 0.5rem; margin: 1.5rem 0 0.5rem; }
table { border-collapse: collapse; width: 100%; }
caption { text-align: left; font-weight: 600; padding: 0.2rem 0; }
th, td { text-align: left; vertical-align: top; border-bottom: 1px solid #14202b; padding: 0.25rem 0.5rem 0.25rem 0; }
.proof { border-left: 4px solid #14202b; padding-left: 0.75rem; }
.evidence { font-size: 0.85em; }
tr, li, p, h1, h2 { break-inside: avoid; }
h1, h2, caption, thead { break-after: avoid; }
@page { size: auto; margin: 15mm; }
`;
