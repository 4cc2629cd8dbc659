/** The half of the library that reads files. It speaks by messages; what they hold is typed where they are sent. */
declare module "pdfjs-dist/legacy/build/pdf.worker.mjs" {
  export const WorkerMessageHandler: {
    /** Starts answering on a port. */
    initializeFromPort(port: {
      addEventListener(type: "message", listener: (event: { data: unknown }) => void): void;
      postMessage(message: unknown): void;
    }): void;
  };
}
