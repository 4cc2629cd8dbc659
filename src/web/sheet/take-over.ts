import type { SheetEntryView, SheetSampleView } from "../engine/messages.ts";
import type { Draft, ReadingRow } from "../job/draft.ts";
import { newKey } from "../job/typed.ts";

/** What a person said about an entry that is asked: one of its choices, or as it stands, to be mended on the form. */
export type Answer = number | "as it stands";

/** Answers by place of the entry in its sample. */
export type Answers = Readonly<Record<number, Answer>>;

/** A reading ready for the form. */
export interface Taken {
  readonly parameter: string;
  readonly value: string;
  readonly unit: string;
}

/** The reading an entry comes to; null when it is left out. */
export function takenFrom(entry: SheetEntryView, answer: Answer | undefined): Taken | null {
  const { status, parameter, value, unit, choices } = entry;
  if (status === "understood" && parameter !== null) return { parameter, value, unit };
  if (status !== "asked" || answer === undefined) return null;
  if (answer === "as it stands") return parameter === null ? null : { parameter, value, unit };
  return choices[answer] ?? null;
}

/** The readings of a sample as answered so far, each parameter once: what is clear comes before what was answered. */
export function readingsTaken(sample: SheetSampleView, answers: Answers): readonly Taken[] {
  const taken = new Map<string, Taken>();
  const inOrder = [...sample.entries.entries()].sort(
    ([, a], [, b]) => Number(a.status === "asked") - Number(b.status === "asked"),
  );
  for (const [index, entry] of inOrder) {
    const reading = takenFrom(entry, answers[index]);
    if (reading !== null && !taken.has(reading.parameter)) taken.set(reading.parameter, reading);
  }
  return [...taken.values()];
}

/** Entries asked about that nobody has answered yet. */
export function openQuestions(sample: SheetSampleView, answers: Answers): number {
  return sample.entries.filter((entry, index) => entry.status === "asked" && answers[index] === undefined)
    .length;
}

/** The draft with the water test of the sheet in the place of its own. */
export function withSheet(draft: Draft, sample: SheetSampleView, answers: Answers): Draft {
  const readings = readingsTaken(sample, answers).map(({ parameter, value, unit }): ReadingRow => ({
    key: newKey(),
    parameter,
    value: { text: value, unit },
    rest: {},
  }));
  return {
    ...draft,
    origin: "own",
    water: {
      source: sample.label ?? "",
      sampled: sample.sampled ?? "",
      method: "laboratory",
      ironForm: "",
      readings,
      rest: {},
    },
  };
}
