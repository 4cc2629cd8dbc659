import type { PdfProblem } from "./read-pdf.ts";

/** Why a PDF was not read, and what to do; the hole is the name of the file. */
export const PDF_PROBLEMS = {
  locked: "{name} is locked with a password. Open it, print it to a PDF without one, and take that.",
  broken: "{name} is a broken PDF. Fetch it anew, or open it, copy its text and take that.",
  "no text": "{name} holds pictures without text. Ask the laboratory for a file, or type the readings in.",
} as const satisfies Readonly<Record<PdfProblem, string>>;

/** Says in English why a PDF was not read, and what to do. */
export function pdfProblemWords(name: string, problem: PdfProblem): string {
  return PDF_PROBLEMS[problem].replace("{name}", () => name);
}
