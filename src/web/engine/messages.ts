import type {
  ComplaintAnswer,
  Job,
  KnownOfActive,
  Plan,
  SourceUsed,
  Workings,
} from "../../agronomy/index.ts";
import type { DecimalMark } from "../../units/index.ts";
import type { EntryChoice, EntryStatus, SheetOptions, SheetText } from "../../water/index.ts";
import type { LanguagePack, LanguageTag } from "../../words/index.ts";
import type { FlasksReply, FlasksRequest } from "../flasks/messages.ts";
import type { JobDocument } from "../job/to-document.ts";

/** An issue with the words that go with it; the page shows words and puts them beside the field of `path`. */
export interface WordedIssue {
  readonly path: string;
  readonly severity: "error" | "warning" | "note";
  readonly words: string;
  /** True when nothing is wrong yet: the field is only still empty. */
  readonly missing: boolean;
  /** The readings of a number that has two; empty for all else. */
  readonly readings: readonly string[];
}

/** A choice in a select: what is written into the document, and what a person reads. */
export interface Choice {
  readonly id: string;
  readonly name: string;
  /** Other spellings that mean the same. */
  readonly also?: readonly string[];
  /** Heading it stands under in a long list. */
  readonly group?: string;
}

/** An active as far as the form needs it. */
export interface ActiveChoice extends Choice {
  readonly forms: readonly Choice[];
  readonly formulations: readonly string[];
}

export interface ConditionerOption extends Choice {
  readonly forms: readonly Choice[];
}

/** What the form's selects offer, taken from the engine's own data. */
export interface Catalogue {
  /** Formulation type codes met in the trade. */
  readonly formulations: readonly string[];
  readonly parameters: readonly { readonly name: string; readonly units: readonly string[] }[];
  readonly actives: readonly ActiveChoice[];
  readonly conditioners: readonly ConditionerOption[];
  readonly feeds: readonly ConditionerOption[];
  /** What binds metals as an active entered by hand does. */
  readonly affinityClasses: readonly Choice[];
  /** Partners of the tank that published rules speak of. */
  readonly partners: readonly string[];
  readonly waterTreatments: readonly string[];
  readonly sprayerMetals: readonly string[];
  /** What the record of a complaint may say. */
  readonly complaint: ComplaintCatalogue;
}

export interface ComplaintCatalogue {
  readonly added: readonly string[];
  readonly patterns: readonly string[];
  readonly plants: readonly string[];
  readonly loads: readonly string[];
  /** The usual causes in the order of exclusion, each with what to ask. */
  readonly causes: readonly (Choice & { readonly check: string })[];
}

/** A laboratory sheet as it is given: pasted text, or cells known already. */
export type SheetInput = { readonly text: string } | { readonly cells: readonly (readonly string[])[] };

/** One reading found on a sheet, with the words that go with it. */
export interface SheetEntryView {
  /** What stands on the sheet. */
  readonly raw: string;
  readonly line: number;
  readonly status: EntryStatus;
  readonly parameter: string | null;
  readonly value: string;
  readonly unit: string;
  readonly choices: readonly EntryChoice[];
  /** What is asked or why it is not used; "" when there is nothing to say. */
  readonly words: string;
}

/** The readings of one sample of a sheet. */
export interface SheetSampleView {
  readonly label: string | null;
  readonly sampled: string | null;
  readonly entries: readonly SheetEntryView[];
}

/** A sheet as read. */
export interface SheetView {
  readonly decimal: DecimalMark | null;
  /** True when a number on it has two readings and nothing on the sheet tells which. */
  readonly decimalAsked: boolean;
  /** True when concentrations stand on it without a unit. */
  readonly unitAsked: boolean;
  readonly samples: readonly SheetSampleView[];
  /** Lines that hold no reading. */
  readonly other: readonly SheetText[];
}

/** Documents the engine answers as they are typed, with what it makes of each. */
export interface AnswerTo {
  readonly plan: Planned;
  readonly complaint: Answered;
}

/** A document to be answered. */
export interface AnswerRequest {
  readonly type: keyof AnswerTo;
  readonly id: number;
  readonly document: JobDocument;
  /** True where another engine gives the first answer to it. */
  readonly isFirstElsewhere?: boolean;
}

/** A document of which the first answer alone is wanted; a whole one says what stands in its way. */
export interface FirstRequest {
  readonly type: "first";
  readonly id: number;
  readonly document: JobDocument;
}

/** Work on documents before the one of this number is given up: the whole answer to that is asked for in a moment. */
export interface OverRequest {
  readonly type: "over";
  readonly id: number;
}

/** Somebody types: work on a plan rests until what that changes is known, or a moment is over. */
export interface RestRequest {
  readonly type: "rest";
}

/** The language of all that is said from then on. */
export interface LanguageRequest {
  readonly type: "language";
  readonly tag: LanguageTag;
  readonly pack: LanguagePack;
}

/** What the page asks of the engine. */
export type EngineRequest =
  | AnswerRequest
  | FirstRequest
  | OverRequest
  | RestRequest
  | LanguageRequest
  | { readonly type: "flasks"; readonly request: FlasksRequest }
  | {
      readonly type: "sheet";
      readonly id: number;
      readonly input: SheetInput;
      readonly options: SheetOptions;
    }
  | { readonly type: "about"; readonly id: number; readonly about: AboutRequest };

/** A question about one programme of a plan that was given: how it came about, or its report. */
export interface AboutRequest {
  /** The plan it is of. */
  readonly plan: number;
  readonly programme: string;
  readonly what: "workings" | "report";
}

/** What there is to say about a programme. */
export interface AboutReply {
  readonly workings: Workings | null;
  /** The report as a page of HTML; "" when it was not asked for. */
  readonly report: string;
}

/** A finished plan with what was made from it. */
export interface Planned {
  /** Tells this plan from the next. */
  readonly id: number;
  readonly plan: Plan;
  /** The job the plan was made for. */
  readonly job: Job;
  /** What the ranges are and what they rest on, as sentences. */
  readonly certainty: readonly string[];
  /** What the data hold of the actives beside what was computed, with the sources of it. */
  readonly known: {
    readonly actives: readonly KnownOfActive[];
    readonly sources: readonly SourceUsed[];
  };
  /** Fill cards by programme id, each a page of HTML. Made by the engine, so that the page carries none of its data. */
  readonly cards: Readonly<Record<string, string>>;
}

/** A complaint answered, with the words that go with it. */
export interface Answered {
  readonly answer: ComplaintAnswer;
  readonly headline: string;
  /** How the weight was judged. */
  readonly limits: string;
  /** What is said of each active, line by line. */
  readonly actives: readonly (readonly string[])[];
  /** Where each cause stands. */
  readonly causes: readonly string[];
  /** The answer as a page of its own. */
  readonly html: string;
}

/** The answer to a document of one kind. */
export interface EngineAnswer<K extends keyof AnswerTo> {
  readonly type: K;
  readonly id: number;
  readonly issues: readonly WordedIssue[];
  /** null while an issue blocks the answer. */
  readonly answer: AnswerTo[K] | null;
  /** False for one without ranges, which is given at once; the whole one follows. */
  readonly isWhole: boolean;
  readonly elapsed_ms: number;
}

/** The first answer to a job: the tank as planned, without ways out and ranges. */
export interface FirstAnswer {
  readonly plan: Plan;
  readonly job: Job;
}

/** What the engine answers. */
export type EngineReply =
  | { readonly type: "catalogue"; readonly catalogue: Catalogue }
  | ({ readonly type: "first"; readonly id: number } & FirstAnswer)
  | EngineAnswer<"plan">
  | EngineAnswer<"complaint">
  | {
      readonly type: "about";
      readonly id: number;
      /** null when the plan asked about is no longer the one at hand. */
      readonly reply: AboutReply | null;
    }
  | { readonly type: "flasks"; readonly reply: FlasksReply }
  | { readonly type: "sheet"; readonly id: number; readonly view: SheetView };

/** The choice that a text of a document means, whatever its case; undefined when there is none. */
export function choiceOf<C extends Choice>(choices: readonly C[], text: string): C | undefined {
  const wanted = text.trim().toLowerCase();
  if (wanted === "") return undefined;
  return choices.find((choice) =>
    [choice.id, choice.name, ...(choice.also ?? [])].some((spelling) => spelling.toLowerCase() === wanted),
  );
}
