import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { servePage } from "./index.ts";

const USUAL_PORT = 4173;
const FURTHER_PORTS = 20;

/** The port asked for, null when none was, or a sentence that says what is wrong. */
function readPort(args: readonly string[]): number | null | string {
  let port: string | undefined;
  try {
    port = parseArgs({ args: [...args], options: { port: { type: "string" } } }).values.port;
  } catch {
    return `only --port N is understood, not “${args.join(" ")}”`;
  }
  if (port === undefined) return null;
  const isPort = /^\d{1,5}$/.test(port) && Number(port) <= 65_535;
  return isPort ? Number(port) : `not a port: “${port}”; a whole number up to 65535 is`;
}

async function main(): Promise<void> {
  const asked = readPort(process.argv.slice(2));
  if (typeof asked === "string") {
    console.error(asked);
    process.exitCode = 2;
    return;
  }
  const root = fileURLToPath(new URL("../web", import.meta.url));
  const port = asked ?? USUAL_PORT;
  try {
    // A port that was asked for is meant; only the usual one may give way to the next free one.
    const server = await servePage({ root, port, furtherPorts: asked === null ? FURTHER_PORTS : 0 });
    console.log(server.address);
    for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => void server.close());
  } catch (error) {
    const why = error instanceof Error ? error.message : "unknown reason";
    console.error(`the page could not be served on port ${port}: ${why}`);
    process.exitCode = 1;
  }
}

await main();
