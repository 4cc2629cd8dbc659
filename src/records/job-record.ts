/** A plain JSON object whose keys are not this layer's business. */
export type PlainObject = Readonly<Record<string, unknown>>;

/** The answer a job had when it was last computed: enough to recognise it in a list, never a source of figures. */
export interface ResultSnapshot {
  /** Instant of the calculation, ISO 8601 in UTC. */
  readonly computed: string;
  /** Versions of the program and of its data. */
  readonly hardstand: string;
  readonly data: string;
  /** The answer in one sentence. */
  readonly words: string;
}

/** A step of typing that can be taken back: what it was called, and the form before it. */
export interface FormStep {
  readonly what: string;
  readonly before: PlainObject;
}

/** One job of an adviser's book. */
export interface JobRecord {
  readonly id: string;
  /** As typed; may be empty. */
  readonly title: string;
  /** Instants, ISO 8601 in UTC. */
  readonly created: string;
  readonly changed: string;
  /** True until something is typed: a sample or a blank that nobody needs kept. */
  readonly untouched: boolean;
  /** The JOB document, exactly as typed: it may be unfinished or wrong. */
  readonly document: PlainObject;
  /** The page's form with every text and unit as typed; null when the job was never on a page. */
  readonly form: PlainObject | null;
  /** Latest last. Kept on this device only. */
  readonly formSteps: readonly FormStep[];
  readonly result: ResultSnapshot | null;
}

/** What typing changes in a job. */
export type JobContent = Pick<JobRecord, "title" | "document" | "form" | "formSteps">;

/** True when two jobs say the same, whatever their ids and times. */
export function sameContent(a: JobContent, b: JobContent): boolean {
  return a.title === b.title && samePlain(a.document, b.document) && samePlain(a.form, b.form);
}

/** True when two plain JSON values are equal; the order of keys does not count, that of a list does. */
export function samePlain(a: unknown, b: unknown): boolean {
  // JSON knows no minus zero.
  if (a === b || Object.is(a, b)) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  if (Array.isArray(a) || Array.isArray(b)) {
    if (!Array.isArray(a) || !Array.isArray(b) || a.length !== b.length) return false;
    return a.every((entry, i) => samePlain(entry, b[i]));
  }
  const [left, right] = [Object.entries(a), new Map(Object.entries(b))];
  return (
    left.length === right.size &&
    left.every(([key, value]) => right.has(key) && samePlain(value, right.get(key)))
  );
}
