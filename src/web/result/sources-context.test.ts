import { describe, expect, it } from "vitest";
import { shortCitation } from "./sources-context.ts";

describe("the short name of a source", () => {
  it.each([
    ["Curtin, D. & Smillie, G.W. (1983) Soil Sci. Soc. Am. J. 47:701", "Curtin, D. & Smillie, G.W. (1983)"],
    ["Common practice, no published source", "Common practice"],
    ["From memory: no published document was seen for this figure", "From memory"],
    [
      "Michigan State University Extension, Tips to avoid weed control antagonism",
      "Michigan State University Extension",
    ],
  ])("%s", (citation, name) => {
    expect(shortCitation(citation)).toBe(name);
  });

  it("keeps the year where the names are too many", () => {
    const citation =
      "US Environmental Protection Agency, HydroGeoLogic & Allison Geoscience Consultants (1999) Manual";
    expect(shortCitation(citation)).toBe("US Environmental Protection Agency (1999)");
  });
});
