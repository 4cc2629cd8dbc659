import { formatNumber } from "../units/index.ts";
import type { MeasuredText, Parameter } from "../units/index.ts";
import { ASSUMED, WATER_CHECKS } from "./check-data.ts";
import { drawnReading } from "./drawn.ts";
import { assume, say } from "./ledger.ts";
import type { Ledger } from "./ledger.ts";
import { slipBetween } from "./slips.ts";
import type { Reading, TestMethod, WaterTest } from "./types.ts";

/** What the readings of one parameter come to, in its internal unit. */
export interface Known {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly kind: "value" | "below" | "above" | "range";
  readonly reading: Reading;
  readonly method: TestMethod;
}

/** Known parameters; a parameter that was not measured is absent. */
export type KnownReadings = ReadonlyMap<Parameter, Known>;

/** Internal unit of a parameter, as written in an assumption. */
export function internalUnit(parameter: Parameter): string {
  switch (parameter) {
    case "pH":
      return "";
    case "conductivity":
      return "µS/cm";
    case "temperature":
      return "°C";
    case "turbidity":
      return "NTU";
    case "dissolved solids":
    case "suspended solids":
      return "mg/L";
    case "alkalinity":
    case "phenolphthalein alkalinity":
      return "eq/L";
    default:
      return "mol/L";
  }
}

/**
 * Brings the readings of a test together, one value per parameter. Of several readings of one thing the first plain
 * value counts; readings that disagree are said. A limit or a range becomes a value with the range it stands for.
 */
export function gatherReadings(test: WaterTest, ledger: Ledger): KnownReadings {
  const byParameter = new Map<Parameter, Reading[]>();
  for (const reading of test.readings) {
    if (reading.measured.kind === "not measured") continue;
    byParameter.set(reading.parameter, [...(byParameter.get(reading.parameter) ?? []), reading]);
  }
  const known = new Map<Parameter, Known>();
  for (const [parameter, readings] of byParameter) {
    const ordered = [...readings].sort((a, b) => rank(a.measured) - rank(b.measured));
    const first = ordered[0]!;
    const entry = drawnReading(knownOf(first, test.method), ledger.draw);
    for (const other of ordered.slice(1)) compareRepeats(entry, knownOf(other, test.method), ledger);
    if (entry.kind !== "value") assumeWithin(parameter, entry, ledger);
    known.set(parameter, entry);
  }
  return known;
}

function rank(measured: MeasuredText): number {
  return ["value", "range", "above", "below", "not measured"].indexOf(measured.kind);
}

function knownOf(reading: Reading, method: TestMethod): Known {
  const { measured } = reading;
  switch (measured.kind) {
    case "value":
      return {
        value: measured.value,
        low: measured.value,
        high: measured.value,
        kind: "value",
        reading,
        method,
      };
    case "below": {
      const { central, low, high } = ASSUMED.limitShare;
      const { limit } = measured;
      return { value: limit * central, low: limit * low, high: limit * high, kind: "below", reading, method };
    }
    case "above": {
      const { central, low, high } = ASSUMED.topStepFactor;
      const { limit } = measured;
      return { value: limit * central, low: limit * low, high: limit * high, kind: "above", reading, method };
    }
    case "range":
      return {
        value: (measured.low + measured.high) / 2,
        low: measured.low,
        high: measured.high,
        kind: "range",
        reading,
        method,
      };
    case "not measured":
      return { value: 0, low: 0, high: 0, kind: "below", reading, method };
  }
}

const WHY = {
  below: [
    "below-limit",
    "Below the detection limit: half the limit is taken, with nothing to the whole limit as range.",
  ],
  above: ["at-least", "The top step of the test: at least this much is there, perhaps twice as much."],
  range: ["within-step", "The test gives a step: its middle is taken, with the step as range."],
} as const;

function assumeWithin(parameter: Parameter, known: Known, ledger: Ledger): void {
  if (known.kind === "value") return;
  const [code, why] = WHY[known.kind];
  const { value, low, high } = known;
  assume(ledger, { code, about: parameter, value, low, high, unit: internalUnit(parameter), why });
}

function compareRepeats(first: Known, second: Known, ledger: Ledger): void {
  if (second.low <= first.high && first.low <= second.high) return;
  // pH and temperature have no natural zero: a tenth of a unit and a degree are what meters agree to.
  const { parameter } = first.reading;
  const apart = Math.abs(first.value - second.value);
  const largest = Math.max(Math.abs(first.value), Math.abs(second.value));
  const limit = parameter === "pH" ? 0.2 : parameter === "temperature" ? 1 : null;
  const share = (apart / largest) * 100;
  if (limit === null ? share <= WATER_CHECKS.criteria.repeatAgreement.warning : apart <= limit) return;
  const slip = limit === null ? slipBetween(parameter, first.value, second.value) : null;
  say(ledger, "readings-disagree", "warning", `${second.reading.path}.value`, {
    received: `${asTyped(first)} and ${asTyped(second)}`,
    expected:
      limit === null
        ? `within ${formatNumber(WATER_CHECKS.criteria.repeatAgreement.warning)} %`
        : `within ${limit}`,
    hint: slip ?? `The first, ${asTyped(first)}, is used.`,
  });
}

/** A reading as it was typed, with its unit. */
export function asTyped(known: Known): string {
  const { value, unit } = known.reading.typed;
  return unit === "" ? value : `${value} ${unit}`;
}
