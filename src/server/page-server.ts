import { createReadStream } from "node:fs";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { createGzip } from "node:zlib";
import { contentType } from "./content-type.ts";
import { findFile } from "./find-file.ts";

const loopback = "127.0.0.1";

/** How the page is to be served. */
export interface ServeOptions {
  /** Absolute path of the folder with the built page. */
  readonly root: string;
  /** Port to listen on; 0 lets the system choose one. */
  readonly port: number;
  /** How many further ports to try, one after the other, when the port is taken. */
  readonly furtherPorts?: number;
}

/** A page that is being served. */
export interface RunningServer {
  /** Address to open in a browser. */
  readonly address: string;
  readonly port: number;
  /** Ends the server and every connection to it. */
  close(): Promise<void>;
}

/** A request reaches a loopback server under another name only when some other site has been pointed at it. */
function isLocalHost(host: string | undefined): boolean {
  return host !== undefined && /^(?:127\.0\.0\.1|localhost|\[::1\])(?::\d+)?$/i.test(host);
}

function refuse(
  response: ServerResponse,
  status: number,
  text: string,
  headers: Record<string, string> = {},
): void {
  response.writeHead(status, { "Content-Type": "text/plain; charset=utf-8", ...headers });
  response.end(`${text}\n`);
}

/** True for text to a client that takes it packed: a script is a third of its size then. */
function isPacked(request: IncomingMessage, type: string): boolean {
  const accepted = String(request.headers["accept-encoding"] ?? "");
  const takesGzip = /(?:^|,)\s*gzip\s*(?:;(?!\s*q=0(?:\.0*)?\s*(?:,|$))|,|$)/i.test(accepted);
  return takesGzip && /^text\/|javascript|json|svg/.test(type);
}

async function answer(root: string, request: IncomingMessage, response: ServerResponse): Promise<void> {
  response.setHeader("X-Content-Type-Options", "nosniff");
  response.setHeader("Referrer-Policy", "no-referrer");
  if (!isLocalHost(request.headers.host)) {
    refuse(response, 403, "This page is served to this computer only.");
    return;
  }
  if (request.method !== "GET" && request.method !== "HEAD") {
    refuse(response, 405, "Only GET and HEAD are answered.", { Allow: "GET, HEAD" });
    return;
  }
  const file = await findFile(root, request.url ?? "/");
  if (file === null) {
    refuse(response, 404, "Not found.");
    return;
  }
  const type = contentType(file.path);
  const packed = isPacked(request, type);
  response.writeHead(200, {
    "Content-Type": type,
    ...(packed ? { "Content-Encoding": "gzip" } : { "Content-Length": String(file.size_bytes) }),
    Vary: "Accept-Encoding",
    // A newer build must show at the next reload.
    "Cache-Control": "no-cache",
  });
  if (request.method === "HEAD") {
    response.end();
    return;
  }
  const stream = createReadStream(file.path);
  stream.on("error", () => response.destroy());
  response.on("close", () => stream.destroy());
  if (packed) stream.pipe(createGzip()).pipe(response);
  else stream.pipe(response);
}

function listen(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    const onError = (error: Error) => reject(error);
    server.once("error", onError);
    server.listen(port, loopback, () => {
      server.off("error", onError);
      resolve((server.address() as AddressInfo).port);
    });
  });
}

function isPortTaken(error: unknown): boolean {
  return error instanceof Error && "code" in error && error.code === "EADDRINUSE";
}

/**
 * Serves the built page to this computer only.
 *
 * @throws the system's error when the port, and every further port that may be tried, cannot be had.
 */
export async function servePage(options: ServeOptions): Promise<RunningServer> {
  const { root, port, furtherPorts = 0 } = options;
  const server = createServer((request, response) => {
    answer(root, request, response).catch(() => {
      if (response.headersSent) response.destroy();
      else refuse(response, 500, "The page could not be read.");
    });
  });
  for (let attempt = 0; ; attempt++) {
    try {
      const actualPort = await listen(server, port + attempt);
      return {
        address: `http://${loopback}:${actualPort}/`,
        port: actualPort,
        close: () =>
          new Promise((resolve) => {
            server.close(() => resolve());
            server.closeAllConnections();
          }),
      };
    } catch (error) {
      const mayGoOn = attempt < furtherPorts && port > 0 && port + attempt < 65_535;
      if (!isPortTaken(error) || !mayGoOn) throw error;
    }
  }
}
