import { LineCounter, parseDocument, visit } from "yaml";
import type { Issue, Read } from "../units/index.ts";
import { lineAndColumn, repeatedKeys } from "./json-scan.ts";
import type { BytesRead, CliIo } from "./io.ts";

/** Largest file read [bytes]. A job is a few thousand; anything near this is the wrong file. */
export const MOST_BYTES = 1_000_000;
/** Largest YAML text read [bytes]: reading YAML takes far longer per byte than JSON. */
export const MOST_YAML_BYTES = 250_000;
/** Deepest nesting read. A job needs five levels. */
const MOST_LEVELS = 64;
/** Aliases resolved in one YAML document; more is an attempt to blow it up. */
const MOST_ALIASES = 100;
/** Problems of spelling listed at once; the rest usually follow from the first. */
const MOST_SYNTAX_ISSUES = 5;

/** Codes of the issues this file can give. */
export const ISSUE_CODES_FILE = {
  "file-missing": "no such file",
  "file-is-folder": "a folder where a file belongs",
  "file-unreadable": "the system refuses to open the file",
  "file-empty": "nothing in the file",
  "file-too-large": "a file far too large for a job",
  "file-not-text": "bytes that are not text in UTF-8",
  "file-too-deep": "brackets or lists nested without end",
  "file-syntax": "text that is neither JSON nor YAML",
  "file-several-documents": "more than one YAML document in the file",
  "file-alias": "a YAML alias that cannot be resolved, or too many",
  "file-tag": "a YAML tag with no meaning here",
  "key-repeated": "a key twice in one object",
  "number-not-finite": "a number without an end",
} as const;
type FileIssueCode = keyof typeof ISSUE_CODES_FILE;

function issue(code: FileIssueCode, path: string, parts: Partial<Issue> = {}): Issue {
  return { code, path, severity: "error", ...parts };
}

/**
 * Reads a JSON or YAML document, told apart by its content.
 *
 * @param name file name, or "-" for standard input
 * @returns the document as plain data, or every reason it could not be read
 */
export async function readDocument(name: string, io: CliIo): Promise<Read<unknown>> {
  const shown = shownName(name);
  let read: BytesRead;
  try {
    read = await (name === "-" ? io.readStdin(MOST_BYTES) : io.readFile(name, MOST_BYTES));
  } catch (error) {
    return { ok: false, issues: [openIssue(shown, error)] };
  }
  if (read.more) {
    const parts = { received: `more than ${MOST_BYTES / 1e6} MB`, expected: "a job of a few kB" };
    return { ok: false, issues: [issue("file-too-large", shown, parts)] };
  }
  const text = decode(read.bytes);
  if (text === null) return { ok: false, issues: [issue("file-not-text", shown, describeBytes(read.bytes))] };
  return parseText(text, shown);
}

/** The name of a document as shown to a person. */
export function shownName(name: string): string {
  return name === "-" ? "standard input" : name;
}

function openIssue(shown: string, error: unknown): Issue {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  if (code === "ENOENT" || code === "ENOTDIR") return issue("file-missing", shown);
  if (code === "EISDIR") return issue("file-is-folder", shown);
  return issue("file-unreadable", shown, { received: code || String(error) });
}

function decode(bytes: Uint8Array): string | null {
  if (bytes.includes(0)) return null;
  try {
    // A byte order mark is dropped by the decoder.
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

function describeBytes(bytes: Uint8Array): Partial<Issue> {
  const first = [...bytes.subarray(0, 4)].map((byte) => byte.toString(16).padStart(2, "0")).join(" ");
  const wide = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
  const hint = wide ? "It looks like UTF-16: save it as UTF-8." : "Check that the name is that of the job.";
  return { received: `bytes starting ${first}`, expected: "text in UTF-8", hint };
}

/** Reads a JSON or YAML text. @param shown name to put into issues */
export function parseText(text: string, shown: string): Read<unknown> {
  if (text.trim() === "") return { ok: false, issues: [issue("file-empty", shown)] };
  const depth = depthProblem(text);
  if (depth !== null) return { ok: false, issues: [issue("file-too-deep", shown, depth)] };
  const json = parseJson(text);
  const read = json ?? parseYaml(text, shown);
  if (!read.ok) return read;
  if (read.value === null || read.value === undefined) {
    return { ok: false, issues: [issue("file-empty", shown)] };
  }
  const strange = notFinite(read.value, "");
  return strange.length > 0 ? { ok: false, issues: strange } : read;
}

function parseJson(text: string): Read<unknown> | null {
  if (!/^\s*[{["]/.test(text)) return null;
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    // YAML in flow style starts the same way, and its reader names the line of a slip.
    return null;
  }
  const repeated = repeatedKeys(text);
  if (repeated.length === 0) return { ok: true, value, issues: [] };
  return { ok: false, issues: repeated.map((one) => repeatedIssue(one.key, one.line, one.column)) };
}

function repeatedIssue(key: string, line: number, column: number): Issue {
  return issue("key-repeated", key, {
    received: `“${key}” again in line ${line}, column ${column}`,
    expected: "each key once",
  });
}

function parseYaml(text: string, shown: string): Read<unknown> {
  if (text.length > MOST_YAML_BYTES) {
    const parts = {
      received: `YAML of ${(text.length / 1e6).toFixed(2)} MB`,
      expected: `at most ${MOST_YAML_BYTES / 1e6} MB of YAML`,
    };
    return { ok: false, issues: [issue("file-too-large", shown, parts)] };
  }
  const lines = new LineCounter();
  // Pretty errors and the library's own check for unique keys take time that grows with the square of the length.
  const document = parseDocument(text, {
    strict: true,
    prettyErrors: false,
    uniqueKeys: false,
    lineCounter: lines,
    logLevel: "error",
  });
  const issues: Issue[] = document.errors.slice(0, MOST_SYNTAX_ISSUES).map((error) => {
    const { line, col } = lines.linePos(error.pos[0]);
    return syntaxIssue(error.code, error.message, shown, text, line, col);
  });
  if (issues.length > 0) return { ok: false, issues };
  for (const warning of document.warnings.slice(0, MOST_SYNTAX_ISSUES)) {
    const { line } = lines.linePos(warning.pos[0]);
    issues.push(issue("file-tag", shown, { received: `line ${line}: ${lineOf(text, line)}` }));
  }
  visit(document, {
    Map(_, map) {
      const seen = new Set<string>();
      for (const pair of map.items) {
        const key = String(pair.key);
        if (seen.has(key)) {
          const { line, col } = lines.linePos((pair.key as { range?: [number] }).range?.[0] ?? 0);
          issues.push(repeatedIssue(key, line, col));
        }
        seen.add(key);
      }
    },
  });
  if (issues.length > 0) return { ok: false, issues };
  try {
    return { ok: true, value: document.toJS({ maxAliasCount: MOST_ALIASES }) as unknown, issues: [] };
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return { ok: false, issues: [issue("file-alias", shown, { received: why })] };
  }
}

function syntaxIssue(
  code: string,
  message: string,
  shown: string,
  text: string,
  line: number,
  column: number,
): Issue {
  const received = `line ${line}, column ${column}: ${lineOf(text, line)}`;
  if (code === "MULTIPLE_DOCS") return issue("file-several-documents", shown, { received });
  const hint =
    code === "TAB_AS_INDENT"
      ? "Use spaces to indent: YAML does not accept tabs there."
      : code === "BLOCK_AS_IMPLICIT_KEY"
        ? "Put a text with “: ” in it between quotes."
        : `The reader says: ${message.replace(/\.$/, "")}.`;
  return issue("file-syntax", shown, { received, expected: "JSON or YAML", hint });
}

function lineOf(text: string, line: number): string {
  const found = (text.split("\n", line)[line - 1] ?? "").trim();
  return found.length > 60 ? `${found.slice(0, 59)}…` : found;
}

/**
 * Refuses texts that nest without end, before the YAML reader sees them: its recursion would end the process, not
 * just the reading. Counts brackets without regard to quotes, which is why the limit is far above a real job.
 */
function depthProblem(text: string): Partial<Issue> | null {
  let level = 0;
  let unmatched = 0;
  const open: string[] = [];
  for (let at = 0; at < text.length; at += 1) {
    const sign = text[at];
    if (sign === "{" || sign === "[") {
      open.push(sign === "{" ? "}" : "]");
      level = Math.max(level, open.length);
    } else if (sign === "}" || sign === "]") {
      if (open.at(-1) === sign) open.pop();
      else unmatched += 1;
    }
    if (level > MOST_LEVELS || unmatched > MOST_LEVELS) {
      const { line } = lineAndColumn(text, at);
      const received =
        level > MOST_LEVELS ? "brackets inside brackets" : "closing brackets without an opening one";
      return { received: `${received} up to line ${line}`, expected: `at most ${MOST_LEVELS} levels` };
    }
  }
  return indentProblem(text);
}

/** Leading blanks and list signs of one line are levels of YAML too. */
function indentProblem(text: string): Partial<Issue> | null {
  let line = 0;
  for (const content of text.split("\n")) {
    line += 1;
    const lead = /^[\s\-?:]*/.exec(content)?.[0] ?? "";
    if (lead.length > 4 * MOST_LEVELS && lead.trim() !== "") {
      return { received: `list in list in line ${line}`, expected: `at most ${MOST_LEVELS} levels` };
    }
    if (lead.length > 4 * MOST_LEVELS && lead.length < content.trimEnd().length) {
      return {
        received: `line ${line} indented by ${lead.length}`,
        expected: `at most ${MOST_LEVELS} levels`,
      };
    }
  }
  return null;
}

/** Numbers such as .inf, .nan and 1e999, with their paths. */
function notFinite(value: unknown, path: string, level = 0): Issue[] {
  // An alias may point at its own parent, which makes plain data without an end.
  if (level > MOST_LEVELS)
    return [issue("file-too-deep", path, { expected: `at most ${MOST_LEVELS} levels` })];
  if (typeof value === "number" && !Number.isFinite(value)) {
    return [issue("number-not-finite", path, { received: String(value), expected: "a finite number" })];
  }
  if (Array.isArray(value))
    return value.flatMap((item, index) => notFinite(item, `${path}[${index}]`, level + 1));
  if (value !== null && typeof value === "object") {
    return Object.entries(value).flatMap(([key, item]) =>
      notFinite(item, path === "" ? key : `${path}.${key}`, level + 1),
    );
  }
  return [];
}
