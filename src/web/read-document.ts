import type { Say } from "./language/language-context.ts";

/** What a file's text holds: plain data; or why it cannot be had, in words. */
export type DocumentRead =
  | { readonly ok: true; readonly document: Readonly<Record<string, unknown>> }
  | { readonly ok: false; readonly problem: string };

/**
 * Reads a file's text, JSON or YAML, beside the engine, so that a file opens while an answer is being worked out. What is
 * wrong with what it holds is said once it is on the form.
 */
export async function readDocument(text: string, say: Say): Promise<DocumentRead> {
  const { parse } = await import("yaml");
  try {
    const document: unknown = parse(text, { maxAliasCount: 50 });
    if (typeof document === "object" && document !== null && !Array.isArray(document))
      return { ok: true, document: document as Readonly<Record<string, unknown>> };
    return {
      ok: false,
      problem: say("This file holds no job. A job is a JSON or YAML file with water, spray and mix."),
    };
  } catch (error) {
    const line = error instanceof Error ? (error.message.split("\n")[0] ?? "") : "";
    return { ok: false, problem: say("This file cannot be read as JSON or YAML. {line}", { line }) };
  }
}
