import type { Job, Plan, Programme } from "../agronomy/index.ts";
import { fill, growerWords } from "../words/index.ts";
import type { Language } from "../words/index.ts";
import type { CardFacts } from "./card.ts";
import { html, nothing, said } from "./html.ts";
import type { SafeHtml } from "./html.ts";
import { mark } from "./html-mark.ts";
import type { Sheet } from "./html-page.ts";
import { fillingSection } from "./plan-html-filling.ts";
import {
  activesSection,
  reasoningSection,
  sourcesSection,
  uncertaintySection,
  waterSection,
} from "./plan-html.ts";
import { programmesSection } from "./plan-html-ways.ts";
import { PLAIN_DOTS, plainReport } from "./report-plain.ts";
import type { PlainLine, PlainPart, PlainReport } from "./report-plain.ts";
import { wayName } from "./sentences.ts";

/** The report for the grower: a page of plain words, then the reasoning, then the sources. */
export function reportSheet(
  plan: Plan,
  job: Job,
  facts: CardFacts,
  programme: Programme | null,
  language: Language,
): Sheet {
  const texts = language.words.plan;
  const plain = plainReport(plan, job, facts, programme, language);
  const planned = plan.programmes.find(({ kind }) => kind === "none");
  const way = programme === null || programme.kind === "none" ? null : programme;
  const body = html`<main class="report">
    ${plainHtml(plain, language)}
    <div class="reasoning">
      <h1>${texts.reasoning}</h1>
      ${waterSection(plan, language)}
      ${planned === undefined ? nothing : activesSection(texts.asPlannedHeading, planned, language)}
      ${programmesSection(plan, job.aim.where, language)}
      ${way === null ? nothing : activesSection(fill(texts.sameWith, { way: wayName(way, language) }), way, language)}
      ${uncertaintySection(plan, language)} ${fillingSection(programme?.filling ?? plan, language)}
      ${reasoningSection(plan, language)} ${sourcesSection(plan, language)}
    </div>
  </main>`;
  return { style: styleSheet(plainSize_pt(plain)), body };
}

function plainHtml(plain: PlainReport, language: Language): SafeHtml {
  return html`<div class="plain">
    <h1>${plain.title}</h1>
    <p>${plain.about}</p>
    ${plain.parts.map((part) => partHtml(part, plain.sure, language))}
    <p class="footer">${plain.footer}</p>
  </div>`;
}

function partHtml({ key, heading, lines }: PlainPart, sure: number | null, language: Language): SafeHtml {
  return html`<section>
    <h2>${heading}</h2>
    ${key === "sure" && sure !== null ? dotRow(sure, language) : nothing}
    <ul>
      ${lines.map((one) => html`<li>${said(one.said)} ${markOf(one, language)}</li>`)}
    </ul>
  </section>`;
}

function markOf({ evidence }: PlainLine, language: Language): SafeHtml {
  return evidence === null ? nothing : mark(evidence, language);
}

/** Countable dots, filled for the waters that meet the aim; the sentence below says the same. */
function dotRow(met: number, language: Language): SafeHtml {
  const size = 16;
  const dots = Array.from(
    { length: PLAIN_DOTS },
    (_, i) =>
      html`<circle
        cx="${size * (i + 0.5)}"
        cy="${size / 2}"
        r="${size / 2 - 2}"
        class="${i < met ? "dot" : "ring"}"
      />`,
  );
  return html`<svg
    class="dots"
    role="img"
    viewBox="0 0 ${size * PLAIN_DOTS} ${size}"
    width="${size * PLAIN_DOTS}"
    height="${size}"
  >
    <title>${fill(growerWords(language).dots, { met, of: PLAIN_DOTS })}</title>
    ${dots}
  </svg>`;
}

/** Sizes of the text of the first page [pt] from few lines to many, so that it stays one page. */
const SIZES: readonly { readonly upTo: number; readonly base_pt: number }[] = [
  { upTo: 38, base_pt: 12 },
  { upTo: 46, base_pt: 10.5 },
  { upTo: 58, base_pt: 9 },
  { upTo: 76, base_pt: 8 },
];
const LEAST_PT = 6;
/** Signs that fit on one line at the first size; smaller sizes hold more. */
const SIGNS_PER_LINE = 88;

/** Size of the text [pt] at which the first page is expected to stay one page. */
function plainSize_pt({ parts, about }: PlainReport): number {
  const linesOf = (text: string): number => Math.max(1, Math.ceil(text.length / SIGNS_PER_LINE));
  let total = 5 + linesOf(about);
  for (const part of parts) {
    total += 2;
    for (const one of part.lines) total += linesOf(`${one.said.text} ${one.evidence ?? ""}`);
  }
  return SIZES.find((size) => total <= size.upTo)?.base_pt ?? LEAST_PT;
}

function styleSheet(plain_pt: number): string {
  return `
.report { background: #fff; color: #000; font: 16px/1.45 system-ui, sans-serif; font-variant-numeric: tabular-nums; max-width: 60rem; margin: 0 auto; padding: 1rem; }
.report h1 { font-size: 1.7em; line-height: 1.2; margin: 0 0 0.3rem; }
.report h2 { font-size: 1.2em; border-top: 2px solid #000; padding-top: 0.4rem; margin: 1.4rem 0 0.4rem; }
.report h3 { font-size: 1.05em; margin: 1rem 0 0.3rem; }
.report table { border-collapse: collapse; width: 100%; margin: 0.5rem 0; }
.report caption { text-align: left; font-weight: 600; padding: 0.2rem 0; }
.report table.narrow { width: auto; }
.report th, .report td { text-align: left; vertical-align: top; border-bottom: 1px solid #000; padding: 0.25rem 0.5rem 0.25rem 0; }
.report tr.chosen th, .report tr.chosen td { font-weight: 700; border-bottom-width: 3px; }
.report .n { text-align: right; white-space: nowrap; }
.report .evidence, .report .why { font-size: 0.85em; }
.report .footer { border-top: 2px solid #000; padding-top: 0.4em; }
.report svg { display: block; max-width: 100%; }
.report svg text { font: 13px system-ui, sans-serif; fill: #000; }
.report .dot { fill: #000; } .report .ring { fill: #fff; stroke: #000; stroke-width: 1.5; }
.plain ul { margin: 0; padding-left: 1.2em; }
.reasoning { border-top: 4px double #000; margin-top: 2rem; padding-top: 1rem; }
.report .block, .report tr, .report li, .report p, .report figure, .report h1, .report h2, .report h3 { break-inside: avoid; }
.report h1, .report h2, .report h3, .report caption, .report thead, .report .lead { break-after: avoid; }
@media print {
  .report { font-size: 10pt; padding: 0; max-width: none; }
  .plain { font-size: ${String(plain_pt)}pt; line-height: 1.3; break-after: page; }
  .plain h2 { margin: 0.6em 0 0.2em; padding-top: 0.2em; }
  .plain p { margin: 0.2em 0; }
  .reasoning { border: 0; margin: 0; padding: 0; }
}
@media (max-width: 40rem) { .report section { overflow-x: auto; } }
`;
}
