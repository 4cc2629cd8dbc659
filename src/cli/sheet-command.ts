import { sheetText } from "../report/index.ts";
import { isPdf, readingsOfSample, readSheet, readSheetCells } from "../water/index.ts";
import type { SheetRead } from "../water/index.ts";
import { MOST_BYTES, shownName } from "./document.ts";
import { EXIT } from "./exit.ts";
import type { BytesRead, CliIo } from "./io.ts";

/** Largest PDF read [bytes]: its letters and pictures come along. */
const MOST_PDF_BYTES = 5_000_000;

/** Reads a laboratory sheet and gives its readings, with everything that has to be asked. @returns the exit code */
export async function sheetCommand(name: string, json: boolean, io: CliIo): Promise<number> {
  const shown = shownName(name);
  let read: BytesRead;
  try {
    read = await (name === "-" ? io.readStdin(MOST_PDF_BYTES) : io.readFile(name, MOST_PDF_BYTES));
  } catch (error) {
    const code = error instanceof Error && "code" in error ? String(error.code) : String(error);
    io.stderr(`${shown}: the file cannot be read (${code}). Check its name.\n`);
    return EXIT.badInput;
  }
  const sheet = await (isPdf(read.bytes) ? sheetOfPdf(read, shown, io) : sheetOfText(read, shown, io));
  if (sheet === null) return EXIT.badInput;
  const asked = sheet.samples
    .flatMap((sample) => sample.entries)
    .filter((entry) => entry.status === "asked").length;
  if (sheet.samples.every((sample) => readingsOfSample(sample).length === 0) && asked === 0) {
    io.stderr(
      `${shown}: no reading found. Expected lines such as “Calcium 92 mg/L”, or a table with headings.\n`,
    );
    return EXIT.badInput;
  }
  const samples = sheet.samples.map((sample) => ({ ...sample, readings: readingsOfSample(sample) }));
  io.stdout(json ? `${JSON.stringify({ hardstand: 1, ...sheet, samples }, null, 2)}\n` : sheetText(sheet));
  if (asked > 0)
    io.stderr(`${asked === 1 ? "1 reading has" : `${String(asked)} readings have`} to be asked about.\n`);
  return EXIT.done;
}

/** Null when the file is no text; the reason has been said then. */
function sheetOfText({ bytes, more }: BytesRead, shown: string, io: CliIo): SheetRead | null {
  const text = more || bytes.length > MOST_BYTES ? null : decode(bytes, shown, io);
  if (text !== null) return readSheet(text);
  const size_MB = String(MOST_BYTES / 1e6);
  io.stderr(`${shown}: expected a text or CSV file of at most ${size_MB} MB, or a PDF.\n`);
  return null;
}

/** Null when the PDF gives no text; the reason has been said then. What of it was not read is said as well. */
async function sheetOfPdf({ bytes, more }: BytesRead, shown: string, io: CliIo): Promise<SheetRead | null> {
  if (more) {
    io.stderr(`${shown}: expected a PDF of at most ${String(MOST_PDF_BYTES / 1e6)} MB.\n`);
    return null;
  }
  // The reader of PDFs is large and is loaded for them alone.
  const { pdfProblemWords, readPdf } = await import("../pdf/index.ts");
  const read = await readPdf(bytes);
  if (!read.ok) {
    io.stderr(`${pdfProblemWords(shown, read.problem)}\n`);
    return null;
  }
  for (const note of read.notes) io.stderr(`${shown}: ${note}\n`);
  return readSheetCells(read.cells);
}

/** UTF-8, else Windows-1252, which is said; null for bytes that are no text. */
function decode(bytes: Uint8Array, shown: string, io: CliIo): string | null {
  if (bytes.includes(0)) return null;
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    io.stderr(`${shown}: not UTF-8, so it was read as Windows-1252. Check names with accents.\n`);
    return new TextDecoder("windows-1252").decode(bytes);
  }
}
