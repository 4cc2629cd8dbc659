import type { Issue } from "../units/index.ts";
import { ENGLISH, fill } from "../words/index.ts";
import type { Language } from "../words/index.ts";
import { FILE_WORDING } from "./wording-files.ts";
import { JOB_WORDING } from "./wording-job.ts";
import { RECORDS_WORDING } from "./wording-records.ts";
import { UNITS_WORDING } from "./wording-units.ts";
import { WATER_WORDING } from "./wording-water.ts";

/** Sentences for one kind of issue. */
export interface Wording {
  /** What is the matter, as a sentence. */
  readonly say: string;
  /** What to do about it; said when the issue brings no hint of its own. */
  readonly mend?: string;
}

/** Sentences by code of the issue. */
export const WORDING: Readonly<Record<string, Wording>> = {
  ...UNITS_WORDING,
  ...WATER_WORDING,
  ...JOB_WORDING,
  ...FILE_WORDING,
  ...RECORDS_WORDING,
};

/** True when there are sentences for this code, rather than a general one. */
export function hasWording(code: string): boolean {
  return Object.hasOwn(WORDING, code);
}

/**
 * An issue in words: where, what, what was received and expected, what to do.
 *
 * @returns sentences; a code without sentences of its own gets a general one
 */
export function wordIssue(issue: Issue, { words, phrases }: Language = ENGLISH): string {
  const { issues } = words;
  const wording: Wording = hasWording(issue.code) ? (WORDING[issue.code] as Wording) : general(issue.code);
  const what = phrases.say(wording.say).text;
  const parts = [issue.path === "" ? what : fill(issues.at, { path: issue.path, sentence: what })];
  if (issue.received !== undefined)
    parts.push(sentence(fill(issues.received, { text: receivedText(issue, phrases) })));
  if (issue.expected !== undefined) {
    parts.push(sentence(fill(issues.expected, { text: phrases.say(issue.expected).text })));
  }
  const mend = issue.hint ?? wording.mend;
  if (mend !== undefined) parts.push(sentence(phrases.say(mend).text));
  return parts.join(" ");
}

/** What was received, as it was typed; names that the program itself gives are put into the language. */
function receivedText({ code, received = "" }: Issue, phrases: Language["phrases"]): string {
  return code === "minor-readings-left-out" ? phrases.name(received) : received;
}

function general(code: string): Wording {
  const words = code.replaceAll("-", " ");
  return {
    say: `${words.slice(0, 1).toUpperCase()}${words.slice(1)}.`,
    mend: "Check this entry against the document it came from.",
  };
}

function sentence(text: string): string {
  const trimmed = text.trim();
  return /[.!?…]$/.test(trimmed) || /[.!?][”’"')]$/.test(trimmed) ? trimmed : `${trimmed}.`;
}
