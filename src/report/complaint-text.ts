import { ionWords } from "./ion-words.ts";
import type { ComplaintAnswer } from "../agronomy/index.ts";
import { wrap } from "./card-text.ts";
import { activeComplaintLines, causeText, complaintHeadline, limitsText } from "./complaint-words.ts";
import { figure, pHText } from "./figures.ts";
import { evidenceMark } from "./sentences.ts";
import { wordIssue } from "./wording.ts";

const LEVEL_WORD = { block: "blocked", warn: "warning", note: "note" } as const;

/** The answer to a complaint as plain text, at most 78 signs wide. */
export function complaintText(answer: ComplaintAnswer): string {
  const { water, tank } = answer;
  const parts: readonly (readonly string[])[] = [
    [
      ...(answer.title === null ? [] : wrap(answer.title)),
      ...wrap(`${complaintHeadline(answer)} ${evidenceMark("computed")}`),
      ...wrap(answer.noProof),
    ],
    [
      ...wrap(
        `${water.source}: hardness ${figure(water.hardness_mgPerL_asCaCO3)} mg/L as CaCO3, alkalinity ` +
          `${figure(water.alkalinity_mgPerL_asCaCO3)} mg/L as CaCO3, pH ${pHText(water.pH)}; tank pH ${pHText(tank.pH)}.`,
        "  ",
      ),
    ],
    [
      "WHAT THE WATER COULD HAVE TAKEN",
      ...answer.actives.flatMap((one) => {
        const [head = "", ...lines] = activeComplaintLines(one);
        return [head, ...lines.flatMap((line) => wrap(`  ${line} ${evidenceMark("computed")}`, "    "))];
      }),
      ...wrap(`${limitsText(answer)} ${evidenceMark("common practice")}`, "  "),
    ],
    [
      "THE USUAL CAUSES, in the order to exclude them",
      ...answer.causes.flatMap((cause, i) => [
        ...wrap(`${String(i + 1).padStart(2)}. ${cause.name}: ${causeText(cause)}`, "    "),
        ...wrap(`    ${cause.check} ${evidenceMark(cause.evidence)}`, "    "),
      ]),
    ],
    answer.rules.length === 0
      ? []
      : [
          "WHAT IS PUBLISHED ABOUT SUCH A MIX",
          ...answer.rules.flatMap((rule) => {
            const against = rule.contradictedBy === null ? "" : ` Contradicted: ${rule.contradictedBy}`;
            const text = `  ${LEVEL_WORD[rule.level]}: ${rule.text}${against} ${evidenceMark(rule.evidence)}`;
            return wrap(text, "    ");
          }),
        ],
    answer.remarks.length === 0
      ? []
      : [
          "REMARKS",
          ...answer.remarks.flatMap(({ text, evidence }) =>
            wrap(`  ${text} ${evidenceMark(evidence)}`, "    "),
          ),
        ],
    assumedLines(answer),
    [
      `${String(answer.sources.length)} sources used; --json lists them. Hardstand ${answer.versions.hardstand}, data ${answer.versions.data}.`,
    ],
  ];
  return `${parts
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}

function assumedLines({ water, issues }: ComplaintAnswer): readonly string[] {
  const said = [...new Set([...water.issues, ...issues].map((issue) => wordIssue(issue)))];
  const lines = [
    ...water.assumptions.map((one) => `${ionWords(one.about)}: ${one.why} ${evidenceMark(one.evidence)}`),
    ...said,
  ];
  return lines.length === 0
    ? []
    : ["TAKEN FOR GRANTED, AND TO LOOK AT", ...lines.flatMap((line) => wrap(`  ${line}`, "    "))];
}
