import type { PdfRead } from "../../pdf/index.ts";

/** What the thread that reads a PDF answers with. */
export interface PdfReply {
  readonly type: "pdf";
  readonly read: PdfRead;
}
