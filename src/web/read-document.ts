import type { Say } from "./language/language-context.ts";

/** What a file's text holds; or why it cannot be had, in words. */
export type DocumentRead<Document> =
  { readonly ok: true; readonly document: Document } | { readonly ok: false; readonly problem: string };

/** A file that has keys: a job, a record of a complaint. */
export type KeyedDocument = Readonly<Record<string, unknown>>;

/**
 * Reads a file's text, JSON or YAML, beside the engine, so that a file opens while an answer is being worked out. What is
 * wrong with what it holds is said by who takes it.
 */
export async function readDocument(text: string, say: Say): Promise<DocumentRead<unknown>> {
  const { parse } = await import("yaml");
  try {
    return { ok: true, document: parse(text, { maxAliasCount: 50 }) };
  } catch (error) {
    const line = error instanceof Error ? (error.message.split("\n")[0] ?? "") : "";
    return { ok: false, problem: say("This file cannot be read as JSON or YAML. {line}", { line }) };
  }
}

/** Reads a file that must have keys; `otherwise` is said where it has none. */
export async function readKeyed(
  text: string,
  say: Say,
  otherwise: string,
): Promise<DocumentRead<KeyedDocument>> {
  const read = await readDocument(text, say);
  if (!read.ok) return read;
  const { document } = read;
  return typeof document === "object" && document !== null && !Array.isArray(document)
    ? { ok: true, document: document as KeyedDocument }
    : { ok: false, problem: otherwise };
}
