import { readPdf } from "../../pdf/index.ts";
import type { PdfReply } from "./pdf-messages.ts";

// A thread of its own: a file that takes long is given up by ending it, and the page never stands still.
self.onmessage = (event: MessageEvent<unknown>) => {
  // The library listens here too and is sent messages of another kind.
  if (!(event.data instanceof Uint8Array)) return;
  void readPdf(event.data).then((read) => {
    self.postMessage({ type: "pdf", read } satisfies PdfReply);
  });
};
