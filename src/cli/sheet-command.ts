import { sheetText } from "../report/index.ts";
import { readingsOfSample, readSheet } from "../water/index.ts";
import { MOST_BYTES, shownName } from "./document.ts";
import { EXIT } from "./exit.ts";
import type { BytesRead, CliIo } from "./io.ts";

/** Reads a laboratory sheet and gives its readings, with everything that has to be asked. @returns the exit code */
export async function sheetCommand(name: string, json: boolean, io: CliIo): Promise<number> {
  const shown = shownName(name);
  let read: BytesRead;
  try {
    read = await (name === "-" ? io.readStdin(MOST_BYTES) : io.readFile(name, MOST_BYTES));
  } catch (error) {
    const code = error instanceof Error && "code" in error ? String(error.code) : String(error);
    io.stderr(`${shown}: the file cannot be read (${code}). Check its name.\n`);
    return EXIT.badInput;
  }
  const text = read.more ? null : decode(read.bytes, shown, io);
  if (text === null) {
    io.stderr(`${shown}: expected a text or CSV file of at most ${String(MOST_BYTES / 1e6)} MB.\n`);
    return EXIT.badInput;
  }
  const sheet = readSheet(text);
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
