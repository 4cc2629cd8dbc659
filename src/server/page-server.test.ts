import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import type { IncomingMessage } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gunzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type RunningServer, servePage } from "./index.ts";

const folder = mkdtempSync(join(tmpdir(), "hardstand-server-"));
const root = join(folder, "web");
let server: RunningServer;

interface Answer {
  readonly status: number;
  readonly headers: Record<string, string | string[] | undefined>;
  readonly body: string;
}

/** Sends the path exactly as given; `fetch` would tidy up `..` before it is sent. */
function ask(path: string, options: { method?: string; host?: string } = {}): Promise<Answer> {
  const { method = "GET", host = `127.0.0.1:${server.port}` } = options;
  return new Promise((resolve, reject) => {
    const asked = request(
      { port: server.port, host: "127.0.0.1", path, method, headers: { host } },
      (response) => {
        let body = "";
        response.setEncoding("utf8");
        response.on("data", (chunk: string) => (body += chunk));
        response.on("end", () =>
          resolve({ status: response.statusCode ?? 0, headers: response.headers, body }),
        );
      },
    );
    asked.on("error", reject);
    asked.end();
  });
}

beforeAll(async () => {
  mkdirSync(join(root, "assets"), { recursive: true });
  mkdirSync(join(folder, "web-beside"));
  writeFileSync(join(root, "index.html"), "<!doctype html><title>page</title>");
  writeFileSync(join(root, "assets", "main-1a2b.js"), "export {};");
  writeFileSync(join(root, "assets", "water test µ.csv"), "a,b");
  writeFileSync(join(root, ".hidden"), "hidden");
  writeFileSync(join(folder, "secret.txt"), "secret");
  writeFileSync(join(folder, "web-beside", "index.html"), "beside");
  symlinkSync(join(folder, "secret.txt"), join(root, "link.txt"));
  symlinkSync(join(folder, "web-beside"), join(root, "link"));
  server = await servePage({ root, port: 0 });
});

afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

describe("servePage", () => {
  it("serves the page at the root, on loopback", async () => {
    expect(server.address).toBe(`http://127.0.0.1:${server.port}/`);
    const { status, headers, body } = await ask("/");
    expect(status).toBe(200);
    expect(body).toContain("<title>page</title>");
    expect(headers["content-type"]).toBe("text/html; charset=utf-8");
    expect(headers["x-content-type-options"]).toBe("nosniff");
  });

  it("gives scripts and encoded names their content type and length", async () => {
    const script = await ask("/assets/main-1a2b.js?v=1");
    expect([script.status, script.headers["content-type"], script.headers["content-length"]]).toEqual([
      200,
      "text/javascript; charset=utf-8",
      "10",
    ]);
    const table = await ask("/assets/water%20test%20%C2%B5.csv");
    expect([table.status, table.headers["content-type"], table.body]).toEqual([
      200,
      "text/csv; charset=utf-8",
      "a,b",
    ]);
  });

  it.each([
    ["gzip, deflate, br", true],
    ["br;q=1.0, gzip;q=0.8", true],
    ["gzip;q=0", false],
    ["br", false],
  ])("packs text for who takes it packed: %s", async (accepted, packed) => {
    const chunks: Buffer[] = [];
    const headers = { host: `127.0.0.1:${server.port}`, "accept-encoding": accepted };
    const response = await new Promise<IncomingMessage>((resolve, reject) => {
      const path = "/assets/main-1a2b.js";
      const asked = request({ port: server.port, host: "127.0.0.1", path, headers }, resolve);
      asked.on("error", reject);
      asked.end();
    });
    for await (const chunk of response) chunks.push(chunk as Buffer);
    const body = Buffer.concat(chunks);
    expect(response.headers["content-encoding"]).toBe(packed ? "gzip" : undefined);
    expect(response.headers["vary"]).toBe("Accept-Encoding");
    expect((packed ? gunzipSync(body) : body).toString()).toBe("export {};");
  });

  it("answers HEAD without a body", async () => {
    const { status, headers, body } = await ask("/", { method: "HEAD" });
    expect([status, headers["content-length"], body]).toEqual([200, "34", ""]);
  });

  it.each([
    "/../secret.txt",
    "/assets/../../secret.txt",
    "/%2e%2e/secret.txt",
    "/..%2fsecret.txt",
    "/%2e%2e%2fsecret.txt",
    "/..%5csecret.txt",
    "/../web-beside/index.html",
    "//../secret.txt",
    "/link.txt",
    "/link",
    "/link/index.html",
    "/.hidden",
    "/assets",
    "/missing.js",
    "/index.html%00.js",
    "/%E0%A4%A",
    "http://127.0.0.1/secret.txt",
  ])("has nothing at %s", async (path) => {
    const { status, body } = await ask(path);
    expect(status).toBe(404);
    expect(body).not.toMatch(/secret|beside|hidden/);
  });

  it("changes nothing and says which methods it answers", async () => {
    const { status, headers } = await ask("/", { method: "POST" });
    expect([status, headers["allow"]]).toEqual([405, "GET, HEAD"]);
  });

  it("refuses a request that came by another name", async () => {
    expect((await ask("/", { host: "example.org" })).status).toBe(403);
    expect((await ask("/", { host: "127.0.0.1.example.org" })).status).toBe(403);
    expect((await ask("/", { host: `localhost:${server.port}` })).status).toBe(200);
  });

  it("takes the next free port only when it may", async () => {
    const next = await servePage({ root, port: server.port, furtherPorts: 20 });
    expect(next.port).toBeGreaterThan(server.port);
    await next.close();
    await expect(servePage({ root, port: server.port })).rejects.toMatchObject({ code: "EADDRINUSE" });
  });
});
