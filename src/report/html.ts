import { messageParts } from "../words/index.ts";
import type { Message, Said } from "../words/index.ts";

/** Text made safe to stand in HTML, in an element or between the quotes of an attribute. */
export function escapeHtml(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;")
    .replaceAll("'", "&#39;");
}

/** HTML that is already safe, told apart from text so that nothing is put in unescaped by mistake. */
export interface SafeHtml {
  readonly html: string;
}

type Piece = string | number | SafeHtml | readonly SafeHtml[];

/** Builds HTML from a template: text put in is escaped, safe HTML is kept. */
export function html(parts: TemplateStringsArray, ...pieces: readonly Piece[]): SafeHtml {
  let text = parts[0] ?? "";
  pieces.forEach((piece, index) => {
    text += pieceHtml(piece) + (parts[index + 1] ?? "");
  });
  return { html: text };
}

function pieceHtml(piece: Piece): string {
  if (typeof piece === "string") return escapeHtml(piece);
  if (typeof piece === "number") return String(piece);
  if ("html" in piece) return piece.html;
  return piece.map((one) => one.html).join("");
}

/** Nothing. */
export const nothing: SafeHtml = { html: "" };

/** HTML that was written by hand in this project, such as a style sheet. */
export function trusted(text: string): SafeHtml {
  return { html: text };
}

/** A message with its holes filled by text, which is escaped, or by safe HTML. */
export function filled<Name extends string>(
  message: Message<Name>,
  values: Readonly<Record<NoInfer<Name>, Piece>>,
): SafeHtml {
  const parts = messageParts(message).map((part) =>
    pieceHtml("hole" in part ? values[part.hole] : part.text),
  );
  return { html: parts.join("") };
}

/** A text of the data; one that stayed English in another language is marked so, for those who listen. */
export function said({ text, isEnglish }: Said): SafeHtml {
  return isEnglish ? html`<span lang="en">${text}</span>` : html`${text}`;
}
