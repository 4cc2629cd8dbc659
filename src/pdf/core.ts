import { WorkerMessageHandler } from "pdfjs-dist/legacy/build/pdf.worker.mjs";

/** Version of the library whose messages are spoken here. Another version refuses to answer. */
const VERSION = "5.4.624";

/** A message of the library, either way. */
interface Message {
  readonly sourceName: string;
  readonly targetName: string;
  /** What is asked or told. */
  readonly action?: string;
  readonly data?: unknown;
  /** Number under which an answer is expected, and whether this is one: 1 the answer, 2 a failure. */
  readonly callbackId?: number;
  readonly callback?: 1 | 2;
  readonly reason?: unknown;
  /** Number of a stream, and which turn it takes. */
  readonly streamId?: number;
  readonly stream?: number;
  readonly chunk?: unknown;
  readonly success?: boolean;
  readonly desiredSize?: number;
}

/** Turns of a stream, by the numbers that the library gives them. */
const STREAM = { close: 3, enqueue: 4, error: 5, started: 8 } as const;

/** What came through a stream, and the failure that ended it; null when it came to its end. */
export interface Streamed {
  readonly chunks: readonly unknown[];
  readonly failure: Error | null;
}

/** An opened file. */
export interface Core {
  ask(action: string, data: unknown): Promise<unknown>;
  stream(action: string, data: unknown): Promise<Streamed>;
  /** Character tables of fonts that the file names but does not hold. They are not at hand. */
  missing(): readonly string[];
  close(): Promise<void>;
}

/** No pictures, no scripts, nothing fetched: text is all that is asked for. */
const EVALUATOR_OPTIONS = {
  maxImageSize: -1,
  disableFontFace: true,
  ignoreErrors: false,
  isEvalSupported: false,
  isOffscreenCanvasSupported: false,
  isImageDecoderSupported: false,
  canvasMaxAreaInBytes: -1,
  fontExtraProperties: false,
  useSystemFonts: true,
  useWasm: false,
  useWorkerFetch: false,
  cMapUrl: null,
  iccUrl: null,
  standardFontDataUrl: null,
  wasmUrl: null,
};

const DOCUMENT = "sheet";

function errorOf(reason: unknown): Error {
  const { name = "Error", message = "" } = (reason ?? {}) as { name?: string; message?: string };
  return Object.assign(new Error(String(message)), { name: String(name) });
}

interface Waiting {
  readonly resolve: (value: unknown) => void;
  readonly reject: (reason: Error) => void;
}

/** Both ends of a line to the library, which runs in this same thread and is spoken to as if it were in another. */
function openLine(): {
  readonly send: (message: Message) => void;
  readonly onMessage: (listener: (message: Message) => void) => void;
} {
  const theirs: ((event: { data: unknown }) => void)[] = [];
  let ours: (message: Message) => void = () => undefined;
  WorkerMessageHandler.initializeFromPort({
    addEventListener: (_type, listener) => void theirs.push(listener),
    postMessage: (message) => {
      const { chunk, ...rest } = message as Message;
      // The library empties a chunk once it is sent, since another thread would have its own copy.
      const sent = typeof chunk === "object" && chunk !== null ? { ...rest, chunk: { ...chunk } } : rest;
      void Promise.resolve().then(() => {
        ours(sent);
      });
    },
  });
  return {
    send: (message) => {
      void Promise.resolve().then(() => {
        for (const listener of theirs) listener({ data: message });
      });
    },
    onMessage: (listener) => {
      ours = listener;
    },
  };
}

/** Keeps what was asked until it is answered. */
class Asked {
  private readonly answers = new Map<number, Waiting>();
  private readonly streams = new Map<
    number,
    { readonly chunks: unknown[]; readonly end: (streamed: Streamed) => void }
  >();
  private last = 0;

  answer(): { readonly callbackId: number; readonly done: Promise<unknown> } {
    this.last += 1;
    const callbackId = this.last;
    const done = new Promise<unknown>((resolve, reject) => this.answers.set(callbackId, { resolve, reject }));
    return { callbackId, done };
  }

  stream(): { readonly streamId: number; readonly done: Promise<Streamed> } {
    this.last += 1;
    const streamId = this.last;
    const done = new Promise<Streamed>((end) => this.streams.set(streamId, { chunks: [], end }));
    return { streamId, done };
  }

  answered({ callback, callbackId = 0, data, reason }: Message): void {
    const waiting = this.answers.get(callbackId);
    this.answers.delete(callbackId);
    if (callback === 1) waiting?.resolve(data);
    else waiting?.reject(errorOf(reason));
  }

  streamed({ stream: turn, streamId = 0, success, chunk, reason }: Message): void {
    const stream = this.streams.get(streamId);
    if (stream === undefined) return;
    const { chunks, end } = stream;
    if (turn === STREAM.enqueue) chunks.push(chunk);
    else if (turn === STREAM.close) end({ chunks, failure: null });
    else if (turn === STREAM.error || (turn === STREAM.started && success !== true))
      end({ chunks, failure: errorOf(reason) });
  }
}

const READER = `${DOCUMENT}_worker`;
const TO_READER = { sourceName: DOCUMENT, targetName: READER };
const TO_LIBRARY = { sourceName: "main", targetName: "worker" };

/**
 * Opens a PDF.
 *
 * The library comes in two halves. The one used here reads files; the other draws them and asks the first by messages.
 * Those few messages are sent from here, because the half that draws is not worth its size for text alone.
 *
 * @returns the opened file and the number of its pages
 * @throws an error named as the library names it: `PasswordException`, `InvalidPDFException`, ...
 */
export async function openCore(bytes: Uint8Array): Promise<{ readonly core: Core; readonly pages: number }> {
  const { send, onMessage } = openLine();
  const asked = new Asked();
  const missing = new Set<string>();
  const ask = (action: string, data: unknown, address = TO_READER): Promise<unknown> => {
    const { callbackId, done } = asked.answer();
    send({ ...address, action, data, callbackId });
    return done;
  };
  const document = new Promise<unknown>((resolve, reject) => {
    onMessage((message) => {
      const { action, data, callbackId = 0, sourceName, targetName } = message;
      if (message.callback !== undefined) asked.answered(message);
      else if (message.streamId !== undefined) asked.streamed(message);
      else if (message.callbackId !== undefined) {
        // The library asks for a password or for tables: there are none at hand.
        const { name } = (data ?? {}) as { name?: string };
        if (action === "FetchBinaryData" && name !== undefined) missing.add(name);
        const back = { sourceName: targetName, targetName: sourceName };
        send({ ...back, callback: 2, callbackId, reason: new Error("not at hand") });
      } else if (action === "GetDoc") resolve(data);
      else if (action === "DocException") reject(errorOf(data));
    });
  });
  send({ ...TO_LIBRARY, action: "configure", data: { verbosity: 0 } });
  await ask("GetDocRequest", requestFor(bytes), TO_LIBRARY);
  send({ ...TO_READER, action: "Ready", data: null });
  const { pdfInfo } = (await document) as { readonly pdfInfo: { readonly numPages: number } };
  const core: Core = {
    ask,
    stream: (action, data) => {
      const { streamId, done } = asked.stream();
      // As much at once as there is: everything is kept anyway.
      send({ ...TO_READER, action, data, streamId, desiredSize: Infinity });
      return done;
    },
    missing: () => [...missing],
    close: async () => void (await ask("Terminate", null)),
  };
  return { core, pages: pdfInfo.numPages };
}

function requestFor(bytes: Uint8Array): object {
  return {
    docId: DOCUMENT,
    apiVersion: VERSION,
    data: bytes,
    password: null,
    disableAutoFetch: true,
    rangeChunkSize: 65_536,
    length: bytes.length,
    docBaseUrl: null,
    enableXfa: false,
    evaluatorOptions: EVALUATOR_OPTIONS,
  };
}
