import readXlsxFile from "read-excel-file/universal";
import type { CellValue } from "read-excel-file/universal";

/** The cells of the first table of a workbook that holds anything, and the names of the other tables. */
export interface WorkbookRead {
  readonly cells: readonly (readonly string[])[];
  readonly name: string;
  readonly others: readonly string[];
}

/**
 * Reads a spreadsheet file (.xlsx).
 *
 * @returns null when no table of it holds anything
 * @throws when the bytes are not a spreadsheet file
 */
export async function readWorkbook(bytes: ArrayBuffer): Promise<WorkbookRead | null> {
  const tables = await readXlsxFile<string>(bytes, { parseNumber: unmistakable });
  const filled = tables.filter(({ data }) => data.some((row) => row.some((cell) => cell !== null)));
  const [first, ...others] = filled;
  if (first === undefined) return null;
  return {
    cells: first.data.map((row) => row.map(cellText)),
    name: first.sheet,
    others: others.map((table) => table.sheet),
  };
}

/**
 * A number of a cell as text with one reading. A cell knows its number and always writes a point, but as plain text
 * "1.125" could also be a thousand and more: a zero behind it leaves no doubt.
 */
export function unmistakable(text: string): string {
  return /^-?[1-9]\d{0,2}\.\d{3}$/.test(text) ? `${text}0` : text;
}

function cellText(cell: CellValue<string> | null): string {
  if (cell === null) return "";
  return cell instanceof Date ? cell.toISOString().slice(0, 10) : String(cell);
}
