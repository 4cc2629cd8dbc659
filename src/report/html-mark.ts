import type { Evidence } from "../agronomy/index.ts";
import { html } from "./html.ts";
import type { SafeHtml } from "./html.ts";

/** The evidence class behind a statement. */
export function mark(evidence: Evidence): SafeHtml {
  return html`<span class="evidence">[${evidence}]</span>`;
}
