import { strToU8, zipSync } from "fflate";

/** The smallest workbook that holds these cells: numbers as numbers, text as text written in place. */
export function workbook(
  tables: Readonly<Record<string, readonly (readonly (string | number)[])[]>>,
): ArrayBuffer {
  const names = Object.keys(tables);
  const relation = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  const files: Record<string, Uint8Array> = {
    "xl/workbook.xml": strToU8(
      `<workbook xmlns="${main}" xmlns:r="${relation}"><sheets>${names
        .map((name, i) => `<sheet name="${name}" sheetId="${String(i + 1)}" r:id="r${String(i + 1)}"/>`)
        .join("")}</sheets></workbook>`,
    ),
    "xl/_rels/workbook.xml.rels": strToU8(
      `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${names
        .map(
          (_, i) =>
            `<Relationship Id="r${String(i + 1)}" Type="${relation}/worksheet" Target="worksheets/sheet${String(i + 1)}.xml"/>`,
        )
        .join("")}</Relationships>`,
    ),
  };
  Object.values(tables).forEach((rows, i) => {
    const xml = rows.map((row, r) => {
      const cells = row.map((cell, c) => {
        const at = `${String.fromCharCode(65 + c)}${String(r + 1)}`;
        return typeof cell === "number"
          ? `<c r="${at}"><v>${String(cell)}</v></c>`
          : `<c r="${at}" t="inlineStr"><is><t>${cell.replace("<", "&lt;")}</t></is></c>`;
      });
      return `<row r="${String(r + 1)}">${cells.join("")}</row>`;
    });
    files[`xl/worksheets/sheet${String(i + 1)}.xml`] = strToU8(
      `<worksheet xmlns="${main}"><sheetData>${xml.join("")}</sheetData></worksheet>`,
    );
  });
  return new Uint8Array(zipSync(files)).buffer;
}
