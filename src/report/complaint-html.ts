import { ionWords } from "./ion-words.ts";
import type { ComplaintAnswer } from "../agronomy/index.ts";
import { activeComplaintLines, causeText, complaintHeadline, limitsText } from "./complaint-words.ts";
import { figure, pHText } from "./figures.ts";
import { html, nothing, trusted } from "./html.ts";
import type { SafeHtml } from "./html.ts";
import { mark } from "./html-mark.ts";
import { wordIssue } from "./wording.ts";

/** The answer to a complaint as one self-contained HTML page. All text is escaped. */
export function complaintHtml(answer: ComplaintAnswer, facts: { readonly date: string }): string {
  const title = answer.title ?? `Complaint: ${answer.water.source}`;
  const { water, tank } = answer;
  const page = html`<!doctype html>
    <html lang="en-GB">
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
          <p>${facts.date}. Water: ${water.source}.</p>
          <p><strong>${complaintHeadline(answer)}</strong> ${mark("computed")}</p>
          <p class="proof">${answer.noProof}</p>
          <p>
            Hardness ${figure(water.hardness_mgPerL_asCaCO3)} mg/L as CaCO3, alkalinity
            ${figure(water.alkalinity_mgPerL_asCaCO3)} mg/L as CaCO3, pH ${pHText(water.pH)}; tank pH
            ${pHText(tank.pH)}.
          </p>
          <h2>What the water could have taken</h2>
          ${answer.actives.map((one) => html`<p>${activeComplaintLines(one).join(" ")} ${mark("computed")}</p>`)}
          <p>${limitsText(answer)} ${mark("common practice")}</p>
          ${causesTable(answer)}
          ${listOf(
            "What is published about such a mix",
            answer.rules.map(
              ({ text, contradictedBy, evidence }) =>
                html`${text} ${contradictedBy === null ? "" : `Contradicted: ${contradictedBy}`}
                ${mark(evidence)}`,
            ),
          )}
          ${listOf(
            "Remarks",
            answer.remarks.map(({ text, evidence }) => html`${text} ${mark(evidence)}`),
          )}
          ${listOf(
            "Taken for granted, and to look at",
            [
              ...water.assumptions.map(({ about, why }) => `${ionWords(about)}: ${why}`),
              ...new Set([...water.issues, ...answer.issues].map((issue) => wordIssue(issue))),
            ].map((line) => html`${line}`),
          )}
          ${listOf(
            "Sources used",
            answer.sources.map(({ citation }) => html`${citation}`),
          )}
          <p>Hardstand ${answer.versions.hardstand}, data ${answer.versions.data}.</p>
        </main>
      </body>
    </html> `;
  return page.html;
}

function causesTable({ causes }: ComplaintAnswer): SafeHtml {
  return html`<h2>The usual causes</h2>
    <table>
      <caption>
        In the order to exclude them
      </caption>
      <thead>
        <tr>
          <th scope="col">Cause</th>
          <th scope="col">Where it stands</th>
          <th scope="col">What to ask</th>
        </tr>
      </thead>
      <tbody>
        ${causes.map(
          (cause) =>
            html`<tr>
              <th scope="row">${cause.name}</th>
              <td>${causeText(cause)}</td>
              <td>${cause.check} ${mark(cause.evidence)}</td>
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
@page { size: auto; margin: 15mm; }
`;
