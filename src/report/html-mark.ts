import type { Evidence } from "../agronomy/index.ts";
import { ENGLISH } from "../words/index.ts";
import type { Language } from "../words/index.ts";
import { html } from "./html.ts";
import type { SafeHtml } from "./html.ts";

/** The evidence class behind a statement. */
export function mark(evidence: Evidence, { words }: Language = ENGLISH): SafeHtml {
  return html`<span class="evidence">[${words.evidence[evidence]}]</span>`;
}
