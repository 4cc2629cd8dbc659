import { expect, test } from "vitest";
import { ISSUE_CODES_FILE, MOST_BYTES, parseText, readDocument } from "./document.ts";
import type { BytesRead, CliIo } from "./io.ts";

const text = (content: string): BytesRead => ({ bytes: new TextEncoder().encode(content), more: false });
const failing = (code: string): Error => Object.assign(new Error(code), { code });

function ioWith(files: Readonly<Record<string, BytesRead | Error>>): CliIo {
  return {
    stdout: () => undefined,
    stderr: () => undefined,
    readStdin: () => Promise.resolve(text("hardstand: 1")),
    readFile: (path) => {
      const found = files[path] ?? failing("ENOENT");
      return found instanceof Error ? Promise.reject(found) : Promise.resolve(found);
    },
    writeFile: () => Promise.resolve(),
    today: () => "2026-01-01",
    findPrinter: () => null,
    serve: () => Promise.resolve(),
  };
}

const codes = (read: ReturnType<typeof parseText>): string[] => read.issues.map((issue) => issue.code);

test("JSON and YAML are told apart by content, and both give the same data", () => {
  const json = parseText('{"hardstand": 1, "spray": {"volume": "200 L/ha"}}', "a");
  const yaml = parseText("hardstand: 1\nspray: {volume: 200 L/ha}\n", "a");
  expect(json).toEqual(yaml);
  expect(json.ok).toBe(true);
  // JSON is read although a flow mapping of YAML starts the same way, and the other way round.
  expect(parseText("{hardstand: 1}", "a")).toEqual({ ok: true, value: { hardstand: 1 }, issues: [] });
});

test("dates stay text, and limits need no quotes", () => {
  const read = parseText("sampled: 2026-03-02\nvalue: <0.05\n", "a");
  expect(read.ok && read.value).toEqual({ sampled: "2026-03-02", value: "<0.05" });
});

test.each([
  ["a: 1\nb: 2\na: 3\n", "a", "line 3"],
  ['{"a": {"b": 1, "c": 2, "b": 3}}', "b", "line 1"],
  ['{"a": [{"x\\"y": 1}, {"x\\"y": 2, "x\\"y": 3}]}', 'x"y', "line 1"],
])("a key that stands twice is named with its line: %s", (content, key, line) => {
  const read = parseText(content, "job");
  expect(codes(read)).toEqual(["key-repeated"]);
  expect(read.issues[0]?.path).toBe(key);
  expect(read.issues[0]?.received).toContain(line);
});

test("the same key in two objects, and a key that is also a value, are no repetition", () => {
  expect(parseText('{"a": {"x": 1}, "b": {"x": "x"}, "c": ["x", "x"]}', "job").ok).toBe(true);
});

test("slips of spelling name the line", () => {
  const read = parseText("a: 1\nb: [1, 2\nc: 3\n", "job");
  expect(codes(read)[0]).toBe("file-syntax");
  expect(read.issues[0]?.received).toContain("line 3");
  expect(codes(parseText("a:\n\tb: 1\n", "job"))[0]).toBe("file-syntax");
  expect(codes(parseText("a: 1\n---\nb: 2\n", "job"))).toEqual(["file-several-documents"]);
  expect(codes(parseText("a: !!js/function x\n", "job"))).toEqual(["file-tag"]);
});

test("nothing, a comment alone and null are empty", () => {
  for (const content of ["", "  \n", "# nothing yet\n", "null", "~"]) {
    expect(codes(parseText(content, "job")), JSON.stringify(content)).toEqual(["file-empty"]);
  }
});

test("numbers without an end are refused with their path", () => {
  const read = parseText("a:\n  - {b: .inf}\n  - {b: .nan}\n", "job");
  expect(read.issues.map((issue) => issue.path)).toEqual(["a[0].b", "a[1].b"]);
  expect(codes(parseText('{"a": 1e999}', "job"))).toEqual(["number-not-finite"]);
});

test("files that cannot be opened say which way", async () => {
  const io = ioWith({ folder: failing("EISDIR"), locked: failing("EACCES") });
  expect(codes(await readDocument("gone.yaml", io))).toEqual(["file-missing"]);
  expect(codes(await readDocument("folder", io))).toEqual(["file-is-folder"]);
  expect(codes(await readDocument("locked", io))).toEqual(["file-unreadable"]);
  expect((await readDocument("-", io)).ok).toBe(true);
});

test("bytes that are no text are refused", async () => {
  const bytes = (...values: number[]): BytesRead => ({ bytes: Uint8Array.from(values), more: false });
  const io = ioWith({
    zero: bytes(0x61, 0, 0x62),
    latin: bytes(0x66, 0xfc, 0x72),
    wide: bytes(0xff, 0xfe, 0x61, 0x00),
    marked: bytes(0xef, 0xbb, 0xbf, 0x61, 0x3a, 0x20, 0x31),
  });
  for (const name of ["zero", "latin", "wide"]) {
    expect(codes(await readDocument(name, io)), name).toEqual(["file-not-text"]);
  }
  expect((await readDocument("wide", io)).issues[0]?.hint).toContain("UTF-16");
  expect(await readDocument("marked", io)).toEqual({ ok: true, value: { a: 1 }, issues: [] });
});

/** Texts that make a reader of YAML slow, or end its process, when they reach it as they are. */
const HOSTILE: readonly (readonly [string, string])[] = [
  ["brackets that never close", "[".repeat(240_000)],
  ["brackets that only close", `[${"}".repeat(240_000)}`],
  ["objects in objects", "{a: ".repeat(60_000)],
  ["lists in lists", "- ".repeat(120_000)],
  ["keys in keys", "? ".repeat(120_000)],
  ["quotes", '"'.repeat(240_000)],
  ["anchors", "&a ".repeat(80_000)],
  ["aliases", "*a ".repeat(80_000)],
  ["keys without names", ": - ".repeat(60_000)],
  ["many keys", Array.from({ length: 15_000 }, (_, i) => `k${i}: ${i}`).join("\n")],
  [
    "aliases of aliases",
    "a: &a [1,2,3,4,5,6,7,8]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a]\nc: &c [*b,*b,*b,*b,*b,*b,*b,*b]\nd: [*c,*c,*c,*c,*c,*c,*c,*c]\n",
  ],
  ["an alias of its own parent", "a: &a [1, *a]\n"],
  ["a deep indent", `a:\n${" ".repeat(1000)}b: 1\n`],
];

test.each(HOSTILE)("answers within seconds on %s", (_, content) => {
  const started = performance.now();
  const read = parseText(content, "job");
  expect(performance.now() - started).toBeLessThan(10_000);
  for (const issue of read.issues) expect(Object.keys(ISSUE_CODES_FILE)).toContain(issue.code);
  if (_ !== "many keys" && _ !== "a deep indent") expect(read.ok).toBe(false);
});

test("a file above the limit is refused unread, and large YAML before it is parsed", async () => {
  const io = ioWith({ big: { bytes: new Uint8Array(MOST_BYTES).fill(0x61), more: true } });
  expect(codes(await readDocument("big", io))).toEqual(["file-too-large"]);
  expect(codes(parseText("- a\n".repeat(100_000), "job"))).toEqual(["file-too-large"]);
  // The same amount as JSON is read.
  expect(parseText(JSON.stringify(Array.from({ length: 100_000 }, () => "a")), "job").ok).toBe(true);
});
