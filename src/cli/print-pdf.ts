import { spawn } from "node:child_process";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

/** A browser that has not printed by then hangs. */
const TIMEOUT_MS = 60_000;

/** What the browser is started with: no profile of the person, no talk with anyone, no line of its own on the page. */
const ARGUMENTS = [
  "--headless",
  // Chromium refuses its sandbox to root, as in a container; everyone else keeps it.
  ...(process.getuid?.() === 0 ? ["--no-sandbox"] : []),
  "--disable-gpu",
  "--no-first-run",
  "--no-default-browser-check",
  "--disable-background-networking",
  "--disable-sync",
  "--no-pdf-header-footer",
];

/**
 * Prints a self-contained page of HTML to a PDF, on the paper that its style names.
 *
 * @param browser path of a Chromium-like browser
 * @throws Error with the reason when the browser makes no PDF
 */
export async function printPdf(browser: string, html: string): Promise<Uint8Array> {
  const folder = await mkdtemp(join(tmpdir(), "hardstand-print-"));
  try {
    const page = join(folder, "page.html");
    const pdf = join(folder, "page.pdf");
    await writeFile(page, html);
    await runBrowser(browser, [
      ...ARGUMENTS,
      `--user-data-dir=${join(folder, "profile")}`,
      `--print-to-pdf=${pdf}`,
      pathToFileURL(page).href,
    ]);
    const bytes = await readFile(pdf).catch(() => null);
    if (bytes === null || bytes.subarray(0, 5).toString("latin1") !== "%PDF-")
      throw new Error("it ended without a PDF");
    return bytes;
  } finally {
    // Parts of a browser that has ended may write for a moment longer.
    await rm(folder, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
  }
}

function runBrowser(browser: string, args: readonly string[]): Promise<void> {
  return new Promise((resolve, reject) => {
    const child = spawn(browser, args, { stdio: "ignore" });
    const timer = setTimeout(() => {
      child.kill("SIGKILL");
      reject(new Error(`it did not end within ${String(TIMEOUT_MS / 1000)} s`));
    }, TIMEOUT_MS);
    child.on("error", (error) => {
      clearTimeout(timer);
      reject(error);
    });
    child.on("close", (code) => {
      clearTimeout(timer);
      if (code === 0) resolve();
      else reject(new Error(`it ended with ${String(code ?? "a signal")}`));
    });
  });
}
