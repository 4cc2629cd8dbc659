import { ionWords } from "./ion-words.ts";
import type { ComplaintAnswer } from "../agronomy/index.ts";
import { ENGLISH, fill, sayIn } from "../words/index.ts";
import type { Language } from "../words/index.ts";
import { wrap } from "./card-text.ts";
import { activeComplaintLines, causeText, complaintHeadline, limitsText } from "./complaint-words.ts";
import { evidenceMark, levelText } from "./sentences.ts";
import { wordIssue } from "./wording.ts";

/** The answer to a complaint as plain text, at most 78 signs wide. */
export function complaintText(answer: ComplaintAnswer, language: Language = ENGLISH): string {
  const { phrases, words } = language;
  const mark = evidenceMark("computed", language);
  const parts: readonly (readonly string[])[] = [
    [
      ...(answer.title === null ? [] : wrap(answer.title)),
      ...wrap(`${complaintHeadline(answer, language)} ${mark}`),
      ...wrap(phrases.say(answer.noProof).text),
    ],
    wrap(waterText(answer, language), "  "),
    [
      heading("What the water could have taken", language),
      ...answer.actives.flatMap((one) => {
        const [head = "", ...lines] = activeComplaintLines(one, language);
        return [head, ...lines.flatMap((line) => wrap(`  ${line} ${mark}`, "    "))];
      }),
      ...wrap(`${limitsText(answer, language)} ${evidenceMark("common practice", language)}`, "  "),
    ],
    [
      heading("The usual causes, in the order to exclude them", language),
      ...answer.causes.flatMap((cause, i) => [
        ...wrap(
          `${String(i + 1).padStart(2)}. ${phrases.name(cause.name)}: ${causeText(cause, language)}`,
          "    ",
        ),
        ...wrap(`    ${phrases.say(cause.check).text} ${evidenceMark(cause.evidence, language)}`, "    "),
      ]),
    ],
    listed("What is published about such a mix", ruleLines(answer, language), language),
    listed(
      "Remarks",
      answer.remarks.map(
        ({ text, evidence }) => `${phrases.say(text).text} ${evidenceMark(evidence, language)}`,
      ),
      language,
    ),
    listed("Taken for granted, and to look at", assumedLines(answer, language), language),
    wrap(
      fill(words.plan.sourcesUsed, {
        count: answer.sources.length,
        version: answer.versions.hardstand,
        data: answer.versions.data,
      }),
    ),
  ];
  return `${parts
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}

function waterText({ water, tank }: ComplaintAnswer, language: Language): string {
  const { figures } = language;
  const facts = sayIn(language)(
    "Hardness {hardness} mg/L as CaCO3, alkalinity {alkalinity} mg/L as CaCO3, pH {pH}; tank pH {tankPH}.",
    {
      hardness: figures.figure(water.hardness_mgPerL_asCaCO3),
      alkalinity: figures.figure(water.alkalinity_mgPerL_asCaCO3),
      pH: figures.pHText(water.pH),
      tankPH: figures.pHText(tank.pH),
    },
  );
  return `${water.source}. ${facts}`;
}

function ruleLines({ rules }: ComplaintAnswer, language: Language): readonly string[] {
  const { phrases } = language;
  const contradicted = sayIn(language)("Contradicted:");
  return rules.map(({ level, text, contradictedBy, evidence }) => {
    const against = contradictedBy === null ? "" : ` ${contradicted} ${phrases.say(contradictedBy).text}`;
    const said = `${levelText(level, language)}: ${phrases.say(text).text}${against}`;
    return `${said} ${evidenceMark(evidence, language)}`;
  });
}

function assumedLines({ water, issues }: ComplaintAnswer, language: Language): readonly string[] {
  const { phrases } = language;
  return [
    ...water.assumptions.map(({ about, why, evidence }) => {
      const said = `${phrases.name(ionWords(about))}: ${phrases.say(why).text}`;
      return `${said} ${evidenceMark(evidence, language)}`;
    }),
    ...new Set([...water.issues, ...issues].map((issue) => wordIssue(issue, language))),
  ];
}

/** A heading with its lines under it; nothing where there are none. */
function listed(title: string, lines: readonly string[], language: Language): readonly string[] {
  return lines.length === 0
    ? []
    : [heading(title, language), ...lines.flatMap((line) => wrap(`  ${line}`, "    "))];
}

function heading(title: string, language: Language): string {
  return language.page(title).toLocaleUpperCase(language.tag);
}
