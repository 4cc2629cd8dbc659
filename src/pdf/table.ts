import { gridOf } from "./columns.ts";
import { linesOf } from "./lines.ts";
import { parted } from "./parted.ts";
import { uprightPage } from "./placed-text.ts";
import type { DrawnText } from "./placed-text.ts";
import { rowsOf } from "./rows.ts";
import type { Row } from "./rows.ts";

/**
 * The text of pages as rows of cells, by where it stands: pieces on one baseline make a row, wide gaps part its cells,
 * cells above one another are a column. Rows come in the order of the pages; text that runs across a page comes after
 * the rows of that page.
 */
export function tableOf(pages: readonly (readonly DrawnText[])[]): readonly (readonly string[])[] {
  const rows: Row[] = [];
  for (const drawn of pages) {
    const { placed, aslant } = uprightPage(drawn);
    rows.push(...rowsOf(parted(linesOf(placed))));
    rows.push(...aslant.map((text): Row => [{ text, x: 0, right: 0, top: 0, bottom: 0, size: 0 }]));
  }
  return gridOf(rows);
}
