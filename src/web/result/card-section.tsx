import { useLayoutEffect, useRef } from "react";
import type { ReactElement } from "react";
import { useSay } from "../language/language-context.ts";
import { Section } from "../form/section.tsx";

/** The one page for the operator. Printing the page prints this card and nothing else. */
export function CardSection({ card }: { card: string | null }): ReactElement {
  const place = useRef<HTMLDivElement>(null);
  const say = useSay();
  useLayoutEffect(() => {
    const host = place.current;
    if (host === null || card === null) return;
    const root = host.shadowRoot ?? host.attachShadow({ mode: "open" });
    root.innerHTML = shadowOf(card);
  }, [card]);
  return (
    <Section id="section-card" title="Fill card" lead="For the operator. Prints on one page, A4 or Letter.">
      <button
        type="button"
        onClick={() => {
          window.print();
        }}
      >
        {say("Print the card")}
      </button>
      {card === null && <p>{say("No card: pick a way out.")}</p>}
      <div ref={place} className="card-sheet" data-testid="card" />
    </Section>
  );
}

/** On a screen the card is as wide as its place, and keeps to the least text and stroke of bright light. */
const ON_SCREEN = `@media screen {
  .card { width: auto; padding: 0; }
  .card > * { font-size: max(1em, var(--least-text, 0px)); }
  .card .small, .card .evidence { font-size: max(0.85em, var(--least-text, 0px)); }
  .card .amount small { font-size: max(0.5em, var(--least-text, 0px)); }
  .card li.step { border-bottom-width: max(1px, var(--stroke, 1px)); }
}`;

/** The card's own style and body, without the page around it; its text is escaped where it is made. */
function shadowOf(page: string): string {
  const parsed = new DOMParser().parseFromString(page, "text/html");
  const style = parsed.querySelector("style")?.textContent ?? "";
  const card = parsed.querySelector(".card");
  // One page has one main part, and its first heading stands under those of the page around it.
  const body =
    card === null ? "" : card.innerHTML.replace(/<(\/?)h1/g, "<$1h4").replace(/<(\/?)h2/g, "<$1h5");
  const scoped = style
    .replace(/@page[^}]*}/, "")
    .replace(/\bbody\b/g, ":host")
    .replace(/\bh1\b/g, "h4")
    .replace(/\bh2\b/g, "h5");
  return `<style>${scoped}${ON_SCREEN}</style><div class="card">${body}</div>`;
}
