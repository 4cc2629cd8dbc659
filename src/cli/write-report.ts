import { EXIT } from "./exit.ts";
import type { CliIo } from "./io.ts";

/** Writes a report to a file and says so, or why it could not be written. @returns the exit code */
export async function writeReport(file: string, contents: string | Uint8Array, io: CliIo): Promise<number> {
  try {
    await io.writeFile(file, contents);
  } catch (error) {
    const code = error instanceof Error && "code" in error ? String(error.code) : String(error);
    io.stderr(`${file}: could not be written (${code}). Check the folder and the right to write there.\n`);
    return EXIT.badInput;
  }
  io.stderr(`Report written to ${file}.\n`);
  return EXIT.done;
}
