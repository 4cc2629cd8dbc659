import { parseArgs } from "node:util";
import { fileURLToPath } from "node:url";
import { servePage } from "./index.ts";

const defaultPort = 4173;

/** The port asked for on the command line, or null when it is not a port. */
function readPort(text: string): number | null {
  return /^\d{1,5}$/.test(text) && Number(text) <= 65_535 ? Number(text) : null;
}

const { values } = parseArgs({ options: { port: { type: "string" } } });
const port = values.port === undefined ? defaultPort : readPort(values.port);
if (port === null) {
  console.error(`not a port: ${values.port ?? ""}`);
  process.exit(2);
}
// A port that was asked for is meant; only the usual one may give way to the next free one.
const furtherPorts = values.port === undefined ? 20 : 0;
try {
  const root = fileURLToPath(new URL("../web", import.meta.url));
  const server = await servePage({ root, port, furtherPorts });
  console.log(server.address);
  for (const signal of ["SIGINT", "SIGTERM"] as const) {
    process.once(signal, () => void server.close().then(() => process.exit(0)));
  }
} catch (error) {
  console.error(
    `the page could not be served on port ${port}: ${error instanceof Error ? error.message : "unknown"}`,
  );
  process.exit(1);
}
