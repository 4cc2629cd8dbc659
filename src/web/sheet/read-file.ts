import type { SheetInput } from "../engine/messages.ts";

/** Largest sheet file read [bytes]. */
const MOST_BYTES = 5_000_000;

/** A sheet file as text or cells, or why it cannot be read. */
export type FileRead =
  | { readonly ok: true; readonly input: SheetInput; readonly note: string | null }
  | { readonly ok: false; readonly problem: string };

/** How files begin that are not text but still known. */
const ZIP = [0x50, 0x4b, 0x03, 0x04] as const;
const PDF = [0x25, 0x50, 0x44, 0x46] as const;

const beginsWith = (bytes: Uint8Array, start: readonly number[]): boolean =>
  start.every((byte, i) => bytes[i] === byte);

/** Reads a laboratory sheet from a file: text, a table parted by signs, or a spreadsheet (.xlsx). */
export async function readSheetFile(file: File): Promise<FileRead> {
  if (file.size > MOST_BYTES) {
    const size_MB = (file.size / 1e6).toFixed(1);
    return { ok: false, problem: `${file.name} is ${size_MB} MB; a sheet is at most 5 MB.` };
  }
  const bytes = new Uint8Array(await file.arrayBuffer());
  if (beginsWith(bytes, ZIP)) return workbookInput(file.name, bytes.buffer);
  if (beginsWith(bytes, PDF)) {
    return { ok: false, problem: `${file.name} is a PDF. Open it, copy its text and paste it here.` };
  }
  const text = decodedText(bytes);
  if (text === null) {
    return {
      ok: false,
      problem: `${file.name} is not text. Save it as CSV, or copy its cells and paste them.`,
    };
  }
  return { ok: true, input: { text }, note: null };
}

async function workbookInput(name: string, bytes: ArrayBuffer): Promise<FileRead> {
  // Loaded only when someone opens a spreadsheet.
  const { readWorkbook } = await import("./read-workbook.ts");
  try {
    const read = await readWorkbook(bytes);
    if (read === null) return { ok: false, problem: `${name} holds no filled cell.` };
    const note =
      read.others.length === 0
        ? null
        : `Read: table “${read.name}”. Not read: ${read.others.map((other) => `“${other}”`).join(", ")}.`;
    return { ok: true, input: { cells: read.cells }, note };
  } catch {
    return { ok: false, problem: `${name} is no spreadsheet of the kind .xlsx. Save it as .xlsx or CSV.` };
  }
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
