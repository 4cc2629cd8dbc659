/** Marks a fragment that holds a job, with the version of how it is packed: JSON, deflated, in base64url. */
const MARK = "#job1=";

/** Longest job taken out of a link [bytes]; the same limit as for a file. */
const MOST_BYTES = 1_000_000;

type Plain = Readonly<Record<string, unknown>>;

/** What a link holds: a JOB document; or why it cannot be had, in words. */
export type LinkedJob =
  { readonly ok: true; readonly document: Plain } | { readonly ok: false; readonly problem: string };

/**
 * A link that holds a whole job after its `#`. That part of an address stays in the browser: no server sees it.
 *
 * @param address of the page, with or without a fragment of its own
 */
export async function jobLink(document: Plain, address: string): Promise<string> {
  const packed = await through(
    new TextEncoder().encode(JSON.stringify(document)),
    new CompressionStream("deflate-raw"),
    Infinity,
  );
  return `${address.replace(/#.*$/s, "")}${MARK}${base64Url(packed)}`;
}

/** True when a text holds a link to a job, of this or another version. */
export function holdsJob(text: string): boolean {
  return /#job\d+=/.test(text);
}

/** The job in a link, or in any text with a link in it. */
export async function readJobLink(text: string): Promise<LinkedJob> {
  const [, version, packed = ""] = /#job(\d+)=([\w-]*)/.exec(text) ?? [];
  if (version === undefined) return refused("There is no job in this link.");
  if (version !== "1") return refused("This link was made by a newer Hardstand. Bring this one up to date.");
  try {
    const bytes = await through(bytesOf(packed), new DecompressionStream("deflate-raw"), MOST_BYTES);
    const document: unknown = JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(bytes));
    if (typeof document === "object" && document !== null && !Array.isArray(document))
      return { ok: true, document: document as Plain };
    return refused("There is no job in this link.");
  } catch {
    return refused("This link was cut short or changed on its way. Ask for it again.");
  }
}

function refused(problem: string): LinkedJob {
  return { ok: false, problem };
}

/** Sends bytes through a stream. @throws RangeError when more than `most` bytes come out */
async function through(
  bytes: Uint8Array<ArrayBuffer>,
  stream: CompressionStream | DecompressionStream,
  most: number,
): Promise<Uint8Array> {
  const reader = new Blob([bytes]).stream().pipeThrough(stream).getReader();
  const parts: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    length += value.length;
    if (length > most) {
      await reader.cancel();
      throw new RangeError("too long");
    }
    parts.push(value);
  }
  const all = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

function base64Url(bytes: Uint8Array): string {
  const text = Array.from(bytes, (byte) => String.fromCharCode(byte)).join("");
  return btoa(text).replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
}

function bytesOf(text: string): Uint8Array<ArrayBuffer> {
  const decoded = atob(text.replaceAll("-", "+").replaceAll("_", "/"));
  return Uint8Array.from(decoded, (letter) => letter.charCodeAt(0));
}
