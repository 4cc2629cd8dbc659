import { open, writeFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { installedBrowser } from "../../scripts/installed-browser.mjs";
import { servePage } from "../server/index.ts";
import type { BytesRead, CliIo, PdfPrinter } from "./io.ts";
import { printPdf } from "./print-pdf.ts";
import { runCli } from "./run.ts";

const DEFAULT_PORT = 4173;

async function readStdin(most_bytes: number): Promise<BytesRead> {
  const chunks: Buffer[] = [];
  let length = 0;
  for await (const chunk of process.stdin as AsyncIterable<Buffer>) {
    chunks.push(chunk);
    length += chunk.length;
    if (length > most_bytes) break;
  }
  const bytes = Buffer.concat(chunks);
  return { bytes: bytes.subarray(0, most_bytes), more: bytes.length > most_bytes };
}

async function readFile(path: string, most_bytes: number): Promise<BytesRead> {
  const file = await open(path);
  try {
    if ((await file.stat()).isDirectory()) throw Object.assign(new Error("a folder"), { code: "EISDIR" });
    const buffer = Buffer.alloc(most_bytes + 1);
    let length = 0;
    // A pipe or a device gives its bytes in pieces.
    while (length <= most_bytes) {
      const { bytesRead } = await file.read(buffer, length, buffer.length - length);
      if (bytesRead === 0) break;
      length += bytesRead;
    }
    return { bytes: buffer.subarray(0, Math.min(length, most_bytes)), more: length > most_bytes };
  } finally {
    await file.close();
  }
}

async function serve(port: number | null): Promise<void> {
  const root = fileURLToPath(new URL("../web", import.meta.url));
  // A port that was asked for is meant; only the usual one may give way to the next free one.
  const server = await servePage({ root, port: port ?? DEFAULT_PORT, furtherPorts: port === null ? 20 : 0 });
  process.stdout.write(`${server.address}\n`);
  await new Promise<void>((resolve) => {
    for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => resolve());
  });
  await server.close();
}

/** The day here and now, as an ISO date. */
function today(): string {
  const now = new Date();
  const two = (part: number): string => String(part).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

function findPrinter(): PdfPrinter | null {
  const browser = installedBrowser();
  return browser === null ? null : { name: browser, print: (html) => printPdf(browser, html) };
}

const io: CliIo = {
  stdout: (text) => void process.stdout.write(text),
  stderr: (text) => void process.stderr.write(text),
  readStdin,
  readFile,
  writeFile: (path, contents) => writeFile(path, contents),
  findPrinter,
  today,
  serve,
};

// A reader that has seen enough closes the pipe: that is its right, not a fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});
// Set rather than exited with, so that all output is written first.
process.exitCode = await runCli(process.argv.slice(2), io);
