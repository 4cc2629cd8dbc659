import type { PdfRead } from "../../pdf/index.ts";
import type { PdfReply } from "./pdf-messages.ts";

/** How long [ms] a PDF may take: a sheet takes under a second. */
const MOST_MS = 30_000;

/** Reads a PDF in a thread of its own; null when that thread fails or takes too long. */
export function askPdf(bytes: Uint8Array<ArrayBuffer>): Promise<PdfRead | null> {
  const worker = new Worker(new URL("./pdf.worker.ts", import.meta.url), { type: "module" });
  return new Promise<PdfRead | null>((resolve) => {
    const timer = setTimeout(() => {
      resolve(null);
    }, MOST_MS);
    worker.onmessage = ({ data }: MessageEvent<PdfReply | { readonly type?: undefined }>) => {
      if (data.type !== "pdf") return;
      clearTimeout(timer);
      resolve(data.read);
    };
    worker.onerror = () => {
      clearTimeout(timer);
      resolve(null);
    };
    worker.postMessage(bytes, [bytes.buffer]);
  }).finally(() => {
    worker.terminate();
  });
}
