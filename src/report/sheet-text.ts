import { readingsOfSample } from "../water/index.ts";
import type { EntryChoice, EntryStatus, SheetEntry, SheetRead, SheetSample } from "../water/index.ts";
import { wrap } from "./card-text.ts";
import { wordIssue } from "./wording.ts";

const HEADINGS: Readonly<Record<EntryStatus, string>> = {
  understood: "UNDERSTOOD",
  asked: "TO ASK, not taken over",
  second: "GIVEN TWICE, the other one was taken",
  blank: "NO VALUE",
  "not used": "NOT USED, takes no part in the answer",
};
const ORDER: readonly EntryStatus[] = ["understood", "asked", "second", "blank", "not used"];

/** A laboratory sheet as read, as plain text: what stands there beside what was understood. At most 78 signs wide. */
export function sheetText(sheet: SheetRead): string {
  const mark =
    sheet.decimal === null ? "no number tells the decimal mark" : `decimal mark “${sheet.decimal}”`;
  const samples = sheet.samples.length === 1 ? "1 sample" : `${String(sheet.samples.length)} samples`;
  const parts = [
    [`${samples}, ${sheet.layout}, ${mark}.`],
    ...sheet.samples.flatMap((sample) => sampleParts(sample)),
    otherLines(sheet),
  ];
  return `${parts
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}

function sampleParts(sample: SheetSample): readonly (readonly string[])[] {
  const date = sample.sampled === null ? "" : `, ${sample.sampled}`;
  const groups = ORDER.map((status) => {
    const entries = sample.entries.filter((entry) => entry.status === status);
    return entries.length === 0 ? [] : [HEADINGS[status], ...entries.flatMap(entryLines)];
  });
  return [[`SAMPLE ${sample.label ?? "without a name"}${date}`], ...groups, waterBlock(sample)];
}

function entryLines(entry: SheetEntry): readonly string[] {
  const name = entry.parameter ?? "?";
  const reading = `  ${name.padEnd(19)}${[entry.value, entry.unit].join(" ").trim()}`;
  const lines = [...wrap(`${reading}   [line ${String(entry.line)}: ${entry.raw}]`, "      ")];
  if (entry.status !== "asked") return lines;
  if (entry.why !== null) lines.push(...wrap(`      ${entry.why}`, "      "));
  for (const issue of entry.issues) lines.push(...wrap(`      ${wordIssue(issue)}`, "      "));
  if (entry.choices.length > 0) {
    lines.push(...wrap(`      Which one: ${entry.choices.map(choiceText).join("; ")}?`, "      "));
  }
  return lines;
}

function choiceText({ parameter, value, unit }: EntryChoice): string {
  return `${parameter} ${value} ${unit}`.trim();
}

/** The understood readings as a water block of a job, in YAML. */
function waterBlock(sample: SheetSample): readonly string[] {
  const readings = readingsOfSample(sample);
  if (readings.length === 0) return [];
  const text = (value: string): string => JSON.stringify(value);
  return [
    "For a job:",
    "water:",
    `  source: ${text(sample.label ?? "unnamed water")}`,
    ...(sample.sampled === null ? [] : [`  sampled: ${sample.sampled}`]),
    "  method: laboratory",
    "  readings:",
    ...readings.map(({ parameter, value, unit }) => {
      const unitPart = unit === "" ? "" : `, unit: ${text(unit)}`;
      return `    - {parameter: ${parameter}, value: ${text(value)}${unitPart}}`;
    }),
  ];
}

function otherLines(sheet: SheetRead): readonly string[] {
  if (sheet.other.length === 0) return [];
  return [
    "OTHER TEXT",
    ...sheet.other.flatMap(({ line, text }) => wrap(`  line ${String(line)}: ${text}`, "      ")),
  ];
}
