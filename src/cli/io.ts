/** Bytes of a file or of standard input, read up to a limit. */
export interface BytesRead {
  /** At most the number of bytes asked for. */
  readonly bytes: Uint8Array;
  /** True when there was more than the number of bytes asked for. */
  readonly more: boolean;
}

/** A browser that prints pages to PDF. */
export interface PdfPrinter {
  /** Path of the browser. */
  readonly name: string;
  /** Prints a self-contained page of HTML, on the paper its style names; rejects with the reason when it cannot. */
  print(html: string): Promise<Uint8Array>;
}

/** Everything the command line touches outside itself, so that it can be run without a process. */
export interface CliIo {
  /** Writes to the result channel. */
  stdout(text: string): void;
  /** Writes to the talk channel. */
  stderr(text: string): void;
  /** Reads at most `most_bytes` of standard input. */
  readStdin(most_bytes: number): Promise<BytesRead>;
  /** Reads at most `most_bytes` of a file; rejects with an error that carries the system's `code`. */
  readFile(path: string, most_bytes: number): Promise<BytesRead>;
  /** Writes a whole file; rejects with an error that carries the system's `code`. */
  writeFile(path: string, contents: string | Uint8Array): Promise<void>;
  /** What makes PDFs here; null when there is no browser to do it. */
  findPrinter(): PdfPrinter | null;
  /** The day to print on a card, as an ISO date. */
  today(): string;
  /** Serves the page on a port, null for the usual one, and resolves when it has stopped. */
  serve(port: number | null): Promise<void>;
}
