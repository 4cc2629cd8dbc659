import type { Language } from "../words/index.ts";
import { html, trusted } from "./html.ts";
import type { SafeHtml } from "./html.ts";

/** Paper a page is laid out for; "auto" follows what lies in the printer. */
export type Paper = "auto" | "A4" | "Letter";

/** One part of a page that starts on a new sheet of paper, with the style it needs. */
export interface Sheet {
  readonly style: string;
  readonly body: SafeHtml;
}

/** Margin of the paper [mm]: it leaves 186 × 255 mm on both A4 and Letter. */
const MARGIN_MM = 12;

/** How a page is set. */
export interface PageSetting {
  readonly paper: Paper;
  readonly language: Language;
}

/** A whole HTML page of one sheet or more. It needs nothing from outside itself: no script, font, picture or link. */
export function pageHtml(title: string, { paper, language }: PageSetting, sheets: readonly Sheet[]): string {
  const style = `
@page { size: ${paper === "auto" ? "auto" : `${paper} portrait`}; margin: ${String(MARGIN_MM)}mm; }
html { background: #fff; color: #000; }
body { margin: 0; }
.sheet + .sheet { break-before: page; }
${sheets.map((sheet) => sheet.style).join("")}`;
  const page = html`<!doctype html>
    <html lang="${language.tag}">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>${title}</title>
        <style>
          ${trusted(style)}
        </style>
      </head>
      <body>
        ${sheets.map((sheet) => html`<div class="sheet">${sheet.body}</div>`)}
      </body>
    </html> `;
  return page.html;
}
