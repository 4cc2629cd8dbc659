import { wordIssue } from "../../report/index.ts";
import { PARAMETER_RULES } from "../../units/index.ts";
import type { DecimalMark } from "../../units/index.ts";
import type { SheetEntry, SheetRead } from "../../water/index.ts";
import { ENGLISH } from "../../words/index.ts";
import type { Language } from "../../words/index.ts";
import { settledBy } from "../form/two-readings.ts";
import type { SheetEntryView, SheetView } from "./messages.ts";

/** A sheet as the page shows it: every entry with what is asked about it, in words. */
export function sheetView(sheet: SheetRead, language: Language = ENGLISH): SheetView {
  return {
    decimal: sheet.decimal,
    decimalAsked: sheet.decimal === null && sheet.samples.some(({ entries }) => entries.some(asksForMark)),
    unitAsked: sheet.samples.some(({ entries }) => entries.some(asksForUnit)),
    samples: sheet.samples.map(({ label, sampled, entries }) => ({
      label,
      sampled,
      entries: entries.map((entry) => entryView(entry, sheet.decimal, language)),
    })),
    other: sheet.other,
  };
}

function entryView(entry: SheetEntry, decimal: DecimalMark | null, language: Language): SheetEntryView {
  const { raw, line, status, parameter, unit, choices } = entry;
  // On the form it stands alone: what the sheet settled is not asked a second time there.
  const value = decimal === null ? entry.value : settledBy(entry.value, decimal);
  const asked =
    status === "asked" ? entry.issues.map((issue) => wordIssue({ ...issue, path: "" }, language)) : [];
  const why = entry.why === null ? null : language.phrases.say(entry.why).text;
  const words = [why, ...asked].filter((part) => part !== null).join(" ");
  return { raw, line, status, parameter, value, unit, choices, words };
}

function asksForMark(entry: SheetEntry): boolean {
  return entry.issues.some((issue) => issue.code === "number-ambiguous");
}

/** A concentration without a unit: what it was counted in is then a question for the whole sheet. */
function asksForUnit({ status, unit, parameter }: SheetEntry): boolean {
  if (status !== "asked" || unit !== "" || parameter === null) return false;
  return ["substance", "alkalinity"].includes(PARAMETER_RULES[parameter].kind);
}
