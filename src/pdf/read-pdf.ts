import { openCore } from "./core.ts";
import type { Core } from "./core.ts";
import type { DrawnText } from "./placed-text.ts";
import { tableOf } from "./table.ts";

/** Pages and pieces of text that are read at most: a laboratory sheet has far fewer. */
export const MOST_PAGES = 30;
const MOST_PIECES = 20_000;

/** Why a PDF could not be read. */
export type PdfProblem = "locked" | "broken" | "no text";

/** A PDF as rows of cells, with one sentence for each thing that was not read; or why it cannot be read. */
export type PdfRead =
  | { readonly ok: true; readonly cells: readonly (readonly string[])[]; readonly notes: readonly string[] }
  | { readonly ok: false; readonly problem: PdfProblem };

/** Reads the text of a PDF with its places, as rows of cells. Never throws for what a file may hold. */
export async function readPdf(bytes: Uint8Array): Promise<PdfRead> {
  try {
    // The library keeps the bytes it is given, and may change them.
    const { core, pages } = await openCore(new Uint8Array(bytes));
    try {
      return await readPages(core, pages);
    } finally {
      await core.close();
    }
  } catch (error) {
    const locked = error instanceof Error && error.name === "PasswordException";
    return { ok: false, problem: locked ? "locked" : "broken" };
  }
}

/** One page as it came out of the file. */
interface PageRead {
  readonly drawn: readonly DrawnText[];
  /** False when the page broke off. */
  readonly whole: boolean;
  /** Fields of a form that are filled in. */
  readonly fields: number;
}

async function readPages(core: Core, pages: number): Promise<PdfRead> {
  const read: PageRead[] = [];
  let pieces = 0;
  while (read.length < Math.min(pages, MOST_PAGES) && pieces <= MOST_PIECES) {
    const page = await readPage(core, read.length);
    pieces += page.drawn.length;
    read.push(page);
  }
  const cells = tableOf(read.map(({ drawn }) => drawn));
  const broken = read.flatMap(({ whole }, i) => (whole ? [] : [i + 1]));
  if (cells.length === 0) return { ok: false, problem: broken.length > 0 ? "broken" : "no text" };
  return { ok: true, cells, notes: notesOf(core, read, pages, broken, cells) };
}

function notesOf(
  core: Core,
  read: readonly PageRead[],
  pages: number,
  broken: readonly number[],
  cells: readonly (readonly string[])[],
): readonly string[] {
  const empty = read.flatMap(({ drawn, whole }, i) => (whole && drawn.length === 0 ? [i + 1] : []));
  const fields = read.reduce((sum, page) => sum + page.fields, 0);
  const unreadable = cells.some((row) => row.some((cell) => /[\uFFFD\uE000-\uF8FF]/.test(cell)));
  return [
    ...(read.length < pages
      ? [
          `Read: the first ${String(read.length)} of ${String(pages)} pages. Open the others as a file of their own.`,
        ]
      : []),
    ...(broken.length > 0 ? [`${pageWords(broken)} broke off and could not be read to the end.`] : []),
    ...(empty.length > 0 ? [`${pageWords(empty)} without text: a picture is not read.`] : []),
    ...(fields > 0
      ? [`Not read: ${String(fields)} filled-in form fields. Print the file to a PDF and open that.`]
      : []),
    ...(unreadable || core.missing().length > 0
      ? ["Some of its letters have no known meaning. Compare what was read with the sheet."]
      : []),
  ];
}

function pageWords(pages: readonly number[]): string {
  return `${pages.length === 1 ? "Page" : "Pages"} ${pages.join(", ")}`;
}

/** A piece of text as the library gives it, or where marked content begins or ends; `transform` maps letters of size 1 to the page. */
interface TextItem {
  readonly str?: string;
  readonly type?: string;
  /** Name of the content that begins, where the file gives it one: the parts of a page that belong apart have one each. */
  readonly id?: string;
  readonly fontName: string;
  readonly transform: readonly [number, number, number, number, number, number];
  readonly width: number;
  readonly height: number;
}

async function readPage(core: Core, pageIndex: number): Promise<PageRead> {
  const about = { pageId: pageIndex, pageIndex, includeMarkedContent: true, disableNormalization: false };
  const { chunks, failure } = await core.stream("GetTextContent", about);
  const items = chunks.flatMap((chunk) => (chunk as { readonly items: readonly TextItem[] }).items);
  // Marked content as it is nested; what has no name of its own, such as a blank, belongs to what it stands in.
  const open: string[] = [];
  const drawn: DrawnText[] = [];
  for (const { str, type, id, transform: place, width, height, fontName: font } of items) {
    if (type?.startsWith("begin") === true) open.push(id ?? open.at(-1) ?? "");
    else if (type === "endMarkedContent") open.pop();
    else if (str !== undefined && str.trim() !== "") {
      const [a, b, c, d, x, y] = place;
      const size = height > 0 ? height : Math.hypot(c, d);
      drawn.push({
        text: str,
        x,
        y,
        angle_rad: Math.atan2(b, a),
        width,
        size,
        font,
        mark: open.at(-1) ?? "",
      });
    }
  }
  return { drawn, whole: failure === null, fields: await filledFields(core, pageIndex) };
}

/** What was filled into a form is no text of the page. It is counted, so that nobody takes the page for all of it. */
async function filledFields(core: Core, pageIndex: number): Promise<number> {
  // Displayed annotations, by the library's number for that purpose.
  const found = await core.ask("GetAnnotations", { pageIndex, intent: 2 }).catch(() => []);
  return (found as readonly { readonly fieldType?: string; readonly fieldValue?: unknown }[]).filter(
    ({ fieldType, fieldValue }) =>
      fieldType === "Tx" && typeof fieldValue === "string" && fieldValue.trim() !== "",
  ).length;
}
