import { measuresOf, readQuantity } from "../units/index.ts";
import { isMissing, openFields } from "./job-fields.ts";
import type { Fields, IssueList } from "./job-fields.ts";
import { readYesOrNo } from "./job-site.ts";
import type { Job } from "./types.ts";

/** Jar [L] taken when the job does not say. Common practice, no published source. */
export const USUAL_JAR_L = 1;

type Amount =
  "volume per area" | "volume" | "area" | "temperature" | "time" | "share" | "flow" | "solid rate";

/** What a key of the spray block holds, and beyond which bounds it is a slip. Common practice, no published source. */
interface SprayKey {
  readonly dimension: Amount;
  readonly needed: boolean;
  readonly example: string;
  readonly unit: string;
  /** Bounds no sprayer or field goes beyond. */
  readonly possible: readonly [number, number];
  /** Bounds it rarely goes beyond. */
  readonly likely: readonly [number, number];
  readonly slip: string;
}

const KEYS: Readonly<Record<string, SprayKey>> = {
  volume: {
    dimension: "volume per area",
    needed: true,
    example: "200 L/ha",
    unit: "L/ha",
    possible: [0.5, 20_000],
    likely: [20, 3000],
    slip: "Is it L/ha, and not the whole tank?",
  },
  "least volume": {
    dimension: "volume per area",
    needed: false,
    example: "100 L/ha",
    unit: "L/ha",
    possible: [0.5, 20_000],
    likely: [10, 3000],
    slip: "Is it L/ha?",
  },
  tank: {
    dimension: "volume",
    needed: true,
    example: "3000 L",
    unit: "L",
    possible: [0.5, 100_000],
    likely: [5, 20_000],
    slip: "Is it L, and not m³ or gallons?",
  },
  area: {
    dimension: "area",
    needed: true,
    example: "38 ha",
    unit: "ha",
    possible: [1e-4, 1e6],
    likely: [0.005, 20_000],
    slip: "Is it ha, and not m² or acres?",
  },
  temperature: {
    dimension: "temperature",
    needed: false,
    example: "12 °C",
    unit: "°C",
    possible: [-5, 60],
    likely: [0, 40],
    slip: "Is it °F?",
  },
  humidity: {
    dimension: "share",
    needed: false,
    example: "80 %",
    unit: "as a share",
    possible: [0.05, 0.995],
    likely: [0.4, 0.98],
    slip: "Is it the relative humidity of the air, in %?",
  },
  "holding time": {
    dimension: "time",
    needed: false,
    example: "3 h",
    unit: "h",
    possible: [0, 8760],
    likely: [0, 168],
    slip: "Is it minutes or hours?",
  },
  jar: {
    dimension: "volume",
    needed: false,
    example: "1 L",
    unit: "L",
    possible: [0.01, 100],
    likely: [0.05, 20],
    slip: "Is it mL or L?",
  },
  "season area": {
    dimension: "area",
    needed: false,
    example: "400 ha",
    unit: "ha",
    possible: [1e-4, 1e7],
    likely: [0.005, 100_000],
    slip: "Is it ha, summed over the passes of a season?",
  },
  "dead volume": {
    dimension: "volume",
    needed: false,
    example: "15 L",
    unit: "L",
    possible: [0.001, 5000],
    likely: [0.1, 200],
    slip: "Is it what stays in the machine when it runs dry, in L?",
  },
  hopper: {
    dimension: "volume",
    needed: false,
    example: "30 L",
    unit: "L",
    possible: [0.1, 2000],
    likely: [5, 200],
    slip: "Is it what the hopper holds, in L?",
  },
  "leaf calcium": {
    dimension: "solid rate",
    needed: false,
    example: "5 mg/m2",
    unit: "kg/ha of leaf",
    possible: [0, 100],
    likely: [0, 1],
    slip: "Is it calcium on the leaf surface, in mg/m2 of leaf?",
  },
  coverage: {
    dimension: "share",
    needed: false,
    example: "20 %",
    unit: "as a share",
    possible: [0.001, 1],
    likely: [0.02, 1],
    slip: "Is it the share of the leaf that the spray covers?",
  },
  output: {
    dimension: "flow",
    needed: false,
    example: "45 L/min",
    unit: "L/min",
    possible: [0.01, 2000],
    likely: [0.3, 400],
    slip: "Is it L/min of all nozzles together?",
  },
};

/** Reads the spray block; null when it cannot be used. */
export function readSpray(top: Fields, issues: IssueList): Job["spray"] | null {
  if (isMissing(top, "spray", "volume, tank and area", issues)) return null;
  const fields = openFields(top.get("spray"), "spray", [...Object.keys(KEYS), "aerated"], issues);
  if (fields === null) return null;
  const value = (key: string): number | null => readKey(fields, key, issues);
  const volume_LPerHa = value("volume");
  const leastVolume_LPerHa = value("least volume");
  const tank_L = value("tank");
  const area_ha = value("area");
  const temperature_C = value("temperature");
  const humidity = value("humidity");
  const holdingTime_h = value("holding time");
  const jar_L = value("jar") ?? USUAL_JAR_L;
  const seasonArea_ha = value("season area");
  const deadVolume_L = value("dead volume");
  const hopper_L = value("hopper");
  const output_LPerMin = value("output");
  const leafCalcium_kgPerHa = value("leaf calcium");
  const coverage = value("coverage");
  if (leafCalcium_kgPerHa !== null) isMissing(fields, "coverage", "20 %", issues);
  const aerated = readYesOrNo(fields, "aerated", issues);
  if (volume_LPerHa === null || tank_L === null || area_ha === null) return null;
  if (leastVolume_LPerHa !== null && leastVolume_LPerHa > volume_LPerHa) {
    issues.add("least-volume-above-volume", fields.at("least volume"), {
      received: `${String(fields.get("least volume"))} with a volume of ${String(fields.get("volume"))}`,
      expected: "at most the planned volume",
    });
  }
  return {
    volume_LPerHa,
    leastVolume_LPerHa,
    tank_L,
    area_ha,
    measures: measuresOf(fields.get("tank")),
    temperature_C,
    humidity,
    holdingTime_h,
    jar_L,
    seasonArea_ha,
    deadVolume_L,
    hopper_L,
    output_LPerMin,
    leafCalcium_kgPerHa,
    coverage,
    aerated,
  };
}

function readKey(fields: Fields, key: string, issues: IssueList): number | null {
  const rule = KEYS[key];
  if (rule === undefined) return null;
  if (fields.get(key) === undefined) {
    if (rule.needed) isMissing(fields, key, rule.example, issues);
    return null;
  }
  const value = issues.take(readQuantity(fields.get(key), rule.dimension, fields.at(key)));
  if (value === undefined) return null;
  const beyond = ([low, high]: readonly [number, number]): boolean => value < low || value > high;
  const parts = { received: String(fields.get(key)), hint: rule.slip };
  const within = ([low, high]: readonly [number, number]): string => `${low} to ${high} ${rule.unit}`;
  if (beyond(rule.possible)) {
    issues.add("value-out-of-range", fields.at(key), { ...parts, expected: within(rule.possible) });
  } else if (beyond(rule.likely)) {
    issues.add("value-unlikely", fields.at(key), {
      ...parts,
      expected: within(rule.likely),
      severity: "warning",
    });
  }
  return value;
}
