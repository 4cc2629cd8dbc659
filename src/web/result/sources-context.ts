import { createContext, useContext } from "react";

/** Short names of the sources of the result shown, by key. */
export const SourcesContext = createContext<ReadonlyMap<string, string>>(new Map());

/** The short name of a source: "Author (year)" where its citation has one. */
export function useSourceName(key: string): string {
  return useContext(SourcesContext).get(key) ?? key.replaceAll("-", " ");
}

/** Longest name that still reads as a name [signs]. */
const LONGEST_NAME = 48;

/** "Author (year)" of a citation; else its first words, up to a comma. */
export function shortCitation(citation: string): string {
  const dated = /^(.*?\(\d{4}[a-z]?\))/.exec(citation)?.[1];
  if (dated !== undefined && dated.length <= LONGEST_NAME) return dated;
  const year = /\((\d{4}[a-z]?)\)/.exec(citation)?.[1];
  const first = citation.split(/[,:(]/)[0]?.trim() ?? citation;
  const name = first.length <= LONGEST_NAME ? first : `${first.slice(0, LONGEST_NAME - 1)}…`;
  return year === undefined ? name : `${name} (${year})`;
}
