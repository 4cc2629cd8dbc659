import { realpath, stat } from "node:fs/promises";
import { join, sep } from "node:path";

/** A file that may be served. */
export interface ServedFile {
  /** Absolute path with all links resolved. */
  readonly path: string;
  readonly size_bytes: number;
}

/** Splits the path of a request into names, or null when any of them could lead out of the folder. */
function namesOf(target: string): string[] | null {
  const path = target.split(/[?#]/, 1)[0] ?? "";
  if (!path.startsWith("/")) return null;
  let decoded: string;
  try {
    decoded = decodeURIComponent(path);
  } catch {
    return null;
  }
  const names = decoded.split("/").filter((name) => name !== "");
  // A name that begins with a dot is hidden or leads upwards; a backslash or a colon means something on Windows.
  const isUnsafe = (name: string) => name.startsWith(".") || /[\\:\0]/.test(name);
  return names.some(isUnsafe) ? null : names;
}

/**
 * The file that a request asks for, or null when there is none to be had inside the folder.
 *
 * A folder stands for its `index.html`. Nothing outside the folder is ever returned, whether it is asked for by
 * `..`, by an encoded form of it, or through a link.
 *
 * @param root absolute path of the folder that is served
 * @param target path of the request as it came, with or without a query
 */
export async function findFile(root: string, target: string): Promise<ServedFile | null> {
  const names = namesOf(target);
  if (names === null) return null;
  try {
    const realRoot = await realpath(root);
    let path = await realpath(join(realRoot, ...names));
    let status = await stat(path);
    if (status.isDirectory()) {
      path = await realpath(join(path, "index.html"));
      status = await stat(path);
    }
    return status.isFile() && path.startsWith(realRoot + sep) ? { path, size_bytes: status.size } : null;
  } catch {
    return null;
  }
}
