import type { Draft } from "./programmes.ts";
import type { Programme } from "./types.ts";

/**
 * The draft behind each programme, for as long as the programme is in use. A plan is data that is written to files and
 * sent to a page; what it was worked out on is too large for that, and is only wanted when someone asks how.
 */
const drafts = new WeakMap<Programme, Draft>();

/** Keeps the draft a programme was judged from. */
export function keepDraft(programme: Programme, draft: Draft): void {
  drafts.set(programme, draft);
}

/** The draft behind a programme; undefined for one that was read from a file. */
export function draftBehind(programme: Programme): Draft | undefined {
  return drafts.get(programme);
}
