/** A piece of text to be put on a page: baseline from the lower left corner, size, and angle [points, degrees]. */
export interface Put {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size?: number;
  readonly angle?: number;
  /** Written as marked content of its own, as a browser writes the cells of a table. */
  readonly marked?: boolean;
}

/** A4 upright. */
const BOX = "[0 0 595 842]";

const escaped = (text: string): string =>
  [...text].map((sign) => (/[()\\]/.test(sign) ? `\\${sign}` : sign)).join("");

function drawn({ text, x, y, size = 10, angle = 0, marked = false }: Put, number: number): string {
  const turn = (angle * Math.PI) / 180;
  const matrix = [Math.cos(turn), Math.sin(turn), -Math.sin(turn), Math.cos(turn), x, y];
  const [begin, end] = marked ? [`/NonStruct << /MCID ${String(number)} >> BDC `, " EMC"] : ["", ""];
  return `${begin}BT /F1 ${String(size)} Tf ${matrix.map((n) => n.toFixed(4)).join(" ")} Tm (${escaped(text)}) Tj ET${end}`;
}

/**
 * Writes a PDF by hand, with Helvetica and its Latin letters.
 *
 * @param pages text of each page
 * @param rotate how far [degrees, clockwise] a viewer turns the pages
 * @source ISO 32000-1:2008, 7.5 (structure of a file) and 9.4 (text)
 */
export function writePdf(pages: readonly (readonly Put[])[], rotate = 0): Uint8Array<ArrayBuffer> {
  const kids = pages.map((_, i) => `${String(4 + 2 * i)} 0 R`).join(" ");
  const objects = [
    "<< /Type /Catalog /Pages 2 0 R >>",
    `<< /Type /Pages /Kids [${kids}] /Count ${String(pages.length)} >>`,
    "<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Encoding /WinAnsiEncoding >>",
    ...pages.flatMap((puts, i) => {
      const content = puts.map(drawn).join("\n");
      return [
        `<< /Type /Page /Parent 2 0 R /MediaBox ${BOX} /Rotate ${String(rotate)} /Contents ${String(5 + 2 * i)} 0 R ` +
          `/Resources << /Font << /F1 3 0 R >> >> >>`,
        `<< /Length ${String(content.length)} >>\nstream\n${content}\nendstream`,
      ];
    }),
  ];
  let text = "%PDF-1.4\n";
  const starts = objects.map((object, i) => {
    const start = text.length;
    text += `${String(i + 1)} 0 obj\n${object}\nendobj\n`;
    return start;
  });
  const table = text.length;
  const entries = starts.map((start) => `${String(start).padStart(10, "0")} 00000 n \n`).join("");
  const size = String(objects.length + 1);
  text += `xref\n0 ${size}\n0000000000 65535 f \n${entries}trailer\n<< /Size ${size} /Root 1 0 R >>\n`;
  text += `startxref\n${String(table)}\n%%EOF\n`;
  // Every sign is one byte: the letters of the font reach no further.
  return Uint8Array.from(text, (sign) => sign.charCodeAt(0));
}

/** Rows of a table as text on a page: columns begin at the places given, rows stand one step below another. */
export function tablePuts(
  rows: readonly (readonly string[])[],
  columns: readonly number[],
  { top = 780, step = 16 }: { readonly top?: number; readonly step?: number } = {},
): readonly Put[] {
  return rows.flatMap((row, i) =>
    row.flatMap((text, j): readonly Put[] =>
      text === "" ? [] : [{ text, x: columns[j] ?? 0, y: top - i * step }],
    ),
  );
}
