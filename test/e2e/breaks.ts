import type { Page } from "playwright-core";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

/** What must not be cut by the edge of a page: roles of a tagged PDF, with the elements of HTML they come from. */
const BLOCKS: Readonly<Record<string, string>> = {
  H1: "h1",
  H2: "h2",
  H3: "h3",
  P: "p",
  LI: "li",
  // A row of heads is drawn again on each page of its table.
  TR: "tr:has(td)",
  Caption: "caption",
  Figure: "svg[role=img]",
};
/** What must not stand last on a page: what it announces follows it. */
const ANNOUNCING = ["H1", "H2", "H3", "Caption", "TR of heads"];

interface Node {
  readonly role?: string;
  readonly type?: string;
  readonly children?: readonly Node[];
}

/** True where something of a part of the tree is on the page at hand; the tree of each page names the others' too. */
const isHere = (node: Node): boolean => node.type === "content" || (node.children ?? []).some(isHere);

/** The blocks that have something on a page, in their order. */
function blocksIn(node: Node): readonly string[] {
  if (!isHere(node)) return [];
  const inner = (node.children ?? []).flatMap(blocksIn);
  const { role = "" } = node;
  if (!(role in BLOCKS)) return inner;
  const cells = (node.children ?? []).map((cell) => cell.role);
  return [role === "TR" && cells.every((cell) => cell === "TH") ? "TR of heads" : role, ...inner];
}

/** What the edges of the pages do to a document as it is printed, in words: blocks they cut, and what stands alone. */
export async function badBreaks(
  page: Page,
): Promise<{ readonly pages: number; readonly faults: readonly string[] }> {
  const pdf = await page.pdf({ preferCSSPageSize: true, tagged: true });
  const document = await getDocument({ data: new Uint8Array(pdf), verbosity: 0 }).promise;
  const faults: string[] = [];
  const found: string[] = [];
  for (let i = 1; i <= document.numPages; i += 1) {
    const blocks = blocksIn((await (await document.getPage(i)).getStructTree()) as Node);
    found.push(...blocks);
    const last = blocks.at(-1) ?? "nothing";
    if (i < document.numPages && ANNOUNCING.includes(last))
      faults.push(`${last} is the last on page ${String(i)}`);
  }
  for (const [role, selector] of Object.entries(BLOCKS)) {
    // What stands on two pages was found on both.
    const parts = found.filter((one) => one === role).length;
    const whole = await page.locator(selector).count();
    if (parts !== whole) faults.push(`${String(whole)} × ${role} in ${String(parts)} parts`);
  }
  const pages = document.numPages;
  await document.destroy();
  return { pages, faults };
}
