import { builtInThermo } from "../chem/index.ts";
import type { ThermoData } from "../chem/index.ts";
import { builtInTrade, isWaterAlone, readJob, readWaterAlone } from "../agronomy/index.ts";
import type { TitledJob, TradeData } from "../agronomy/index.ts";
import type { WaterTest } from "../water/index.ts";
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

/** A water test and the temperature it is asked about; null when that was not said. */
export interface AskedWater {
  readonly water: WaterTest;
  readonly temperature_C: number | null;
}

/**
 * Opens and reads the water test of a job, or one that stands alone; says every issue on the talk channel.
 *
 * @returns null when it cannot be used
 */
export async function openWater(name: string, trade: TradeData, io: CliIo): Promise<AskedWater | null> {
  const document = await readDocument(name, io);
  if (document.ok && isWaterAlone(document.value)) {
    const read = readWaterAlone(document.value);
    sayIssues(read.issues, name, io);
    return read.ok ? { water: read.value, temperature_C: null } : null;
  }
  const read = document.ok ? readJob(document.value, { trade }) : document;
  sayIssues(read.issues, name, io);
  return read.ok ? { water: read.value.water, temperature_C: read.value.spray.temperature_C } : null;
}
