import { waterText } from "../report/index.ts";
import { alkalinity_mgPerL_asCaCO3, completeWater, hardness_mgPerL_asCaCO3 } from "../water/index.ts";
import type { Water } from "../water/index.ts";
import { EXIT, sayIssues } from "./exit.ts";
import type { CliIo } from "./io.ts";
import { loadData, openWater } from "./open-job.ts";

/** Checks and completes the water test of a job, or one that stands alone, and gives it. @returns the exit code */
export async function waterCommand(name: string, json: boolean, strict: boolean, io: CliIo): Promise<number> {
  const { thermo, trade } = loadData();
  const asked = await openWater(name, trade, io);
  if (asked === null) return EXIT.badInput;
  const read = completeWater(asked.water, { thermo, temperature_C: asked.temperature_C });
  if (!read.ok) {
    sayIssues(read.issues, name, io);
    return EXIT.badInput;
  }
  const water = read.value;
  io.stdout(json ? `${JSON.stringify(waterAsData(water), null, 2)}\n` : waterText(water, thermo));
  const beyond = water.issues.some((issue) => issue.code === "temperature-out-of-range");
  if (!beyond || !strict) return EXIT.done;
  io.stderr("Strict: the constants do not reach the temperature of this water.\n");
  return EXIT.outsideRange;
}

/** A water as data: the water block of a plan, with what else is known of it. */
function waterAsData(water: Water): Record<string, unknown> {
  return {
    hardstand: 1,
    source: water.source,
    temperature_C: water.temperature_C,
    pH: water.pH,
    hardness_mgPerL_asCaCO3: hardness_mgPerL_asCaCO3(water),
    alkalinity_mgPerL_asCaCO3: alkalinity_mgPerL_asCaCO3(water),
    ions_molPerL: water.totals_molPerL,
    chargeBalance_percent: water.chargeBalance_percent,
    conductivity_uSPerCm: water.conductivity_uSPerCm,
    turbidity_NTU: water.turbidity_NTU,
    suspendedSolids_mgPerL: water.suspendedSolids_mgPerL,
    assumptions: water.assumptions,
    issues: water.issues,
  };
}
