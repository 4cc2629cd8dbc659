import { builtInThermo } from "../chem/index.ts";
import type { ThermoData } from "../chem/index.ts";
import { builtInTrade, readJob } from "../agronomy/index.ts";
import type { TitledJob, TradeData } from "../agronomy/index.ts";
import { readDocument } from "./document.ts";
import { sayIssues } from "./exit.ts";
import type { CliIo } from "./io.ts";

/** The data sets of this version. */
export function loadData(): { readonly thermo: ThermoData; readonly trade: TradeData } {
  return { thermo: builtInThermo(), trade: builtInTrade() };
}

/** Opens and reads a job; says every issue on the talk channel. @returns null when it cannot be used */
export async function openJob(
  name: string,
  trade: TradeData,
  io: CliIo,
): Promise<{ readonly value: TitledJob } | null> {
  const document = await readDocument(name, io);
  const read = document.ok ? readJob(document.value, { trade }) : document;
  sayIssues(read.issues, name, io);
  return read.ok ? { value: read.value } : null;
}
