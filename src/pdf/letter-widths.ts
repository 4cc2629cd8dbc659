/**
 * Widths of letters in thousandths of their size, for telling where a word stands within a longer text of known length.
 * Only their proportions count: they are scaled to each font.
 *
 * @source Adobe Systems, Core 14 font metrics, Helvetica (from memory)
 */
const WIDTHS: Readonly<Record<number, string>> = {
  222: "ijl'",
  278: " .,:;!/\\ftI",
  333: "()-r`",
  400: "°",
  500: "cksvxyzJ",
  556: "0123456789abdeghnopquL$?_µ€§äöüáàâéèêóòôúùû",
  584: "+<>=~±≤≥",
  611: "FTZ",
  667: "ABEKPSVXY&",
  722: "CDHNRUw",
  778: "GOQ",
  833: "mM",
  889: "%",
  944: "W",
};

const WIDTH_OF: ReadonlyMap<string, number> = new Map(
  Object.entries(WIDTHS).flatMap(([width, letters]) => [...letters].map((letter) => [letter, Number(width)])),
);
const USUAL = 556;

/** Length of a text in letters of size 1, before scaling to its font. */
export function usualLength(text: string): number {
  return [...text].reduce((sum, letter) => sum + (WIDTH_OF.get(letter) ?? USUAL), 0) / 1000;
}
