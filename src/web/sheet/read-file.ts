import { PDF_PROBLEMS } from "../../pdf/index.ts";
import { isPdf } from "../../water/index.ts";
import type { SheetInput } from "../engine/messages.ts";
import type { Say } from "../language/language-context.ts";
import { askPdf } from "./ask-pdf.ts";

/** Largest sheet file read [bytes]. */
const MOST_BYTES = 5_000_000;

/** A sheet file as text or cells, or why it cannot be read. */
export type FileRead =
  | { readonly ok: true; readonly input: SheetInput; readonly note: string | null }
  | { readonly ok: false; readonly problem: string };

/** How a spreadsheet file begins. */
const ZIP = [0x50, 0x4b, 0x03, 0x04] as const;

const beginsWith = (bytes: Uint8Array, start: readonly number[]): boolean =>
  start.every((byte, i) => bytes[i] === byte);

/**
 * Reads a laboratory sheet from a file: text, a table parted by signs, a spreadsheet (.xlsx) or a PDF.
 *
 * @param say puts what cannot be read into the language of the page
 */
export async function readSheetFile(file: File, say: Say): Promise<FileRead> {
  if (file.size > MOST_BYTES) {
    const size = (file.size / 1e6).toFixed(1);
    return {
      ok: false,
      problem: say("{name} is {size} MB; a sheet is at most 5 MB.", { name: file.name, size }),
    };
  }
  const bytes = new Uint8Array(await file.arrayBuffer());
  if (beginsWith(bytes, ZIP)) return workbookInput(file.name, bytes.buffer, say);
  if (isPdf(bytes)) return pdfInput(file.name, bytes, say);
  const text = decodedText(bytes);
  if (text === null) {
    return {
      ok: false,
      problem: say("{name} is not text. Save it as CSV, or copy its cells and paste them.", {
        name: file.name,
      }),
    };
  }
  return { ok: true, input: { text }, note: null };
}

async function workbookInput(name: string, bytes: ArrayBuffer, say: Say): Promise<FileRead> {
  // Loaded only when someone opens a spreadsheet.
  const { readWorkbook } = await import("./read-workbook.ts");
  try {
    const read = await readWorkbook(bytes);
    if (read === null) return { ok: false, problem: say("{name} holds no filled cell.", { name }) };
    const note =
      read.others.length === 0
        ? null
        : say("Read: table “{table}”. Not read: {others}.", {
            table: read.name,
            others: read.others.map((other) => `“${other}”`).join(", "),
          });
    return { ok: true, input: { cells: read.cells }, note };
  } catch {
    return {
      ok: false,
      problem: say("{name} is no spreadsheet of the kind .xlsx. Save it as .xlsx or CSV.", { name }),
    };
  }
}

/** The reader of PDFs is large: its thread is started only when someone opens one. */
async function pdfInput(name: string, bytes: Uint8Array<ArrayBuffer>, say: Say): Promise<FileRead> {
  const read = await askPdf(bytes);
  if (read === null) {
    return {
      ok: false,
      problem: say("{name} could not be read here. Open it, copy its text and paste it here.", { name }),
    };
  }
  if (!read.ok) return { ok: false, problem: say(PDF_PROBLEMS[read.problem], { name }) };
  return {
    ok: true,
    input: { cells: read.cells },
    note: read.notes.map((note) => say(note)).join(" ") || null,
  };
}

/** UTF-8, else Windows-1252 as office programs write it; null for bytes that are no text. */
export function decodedText(bytes: Uint8Array): string | null {
  if (bytes.includes(0)) return null;
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}
