import { shareLeftAfterRinsing } from "./loads.ts";
import type { Job, Loads, Remark } from "./types.ts";

/** Clean water against what stays in the machine, for the rinsing example; in three parts. Common practice. */
const RINSE_FACTOR = 10;
const RINSE_PARTS = 3;
/** Dry product in a hopper [kg/L], loosely poured. Common practice, no published source. */
const POURED_KG_PER_L = 0.8;

/**
 * Time from mixed to last sprayed [h]: as the job says, else the time all nozzles need for one load. null when neither
 * is known.
 */
export function holdingTimeOf(spray: Job["spray"], volume_LPerHa: number): number | null {
  return spray.holdingTime_h ?? sprayingTime_h(spray, loadOf(spray, volume_LPerHa));
}

function sprayingTime_h({ output_LPerMin }: Job["spray"], load_L: number): number | null {
  return output_LPerMin === null ? null : load_L / output_LPerMin / 60;
}

function loadOf({ tank_L, area_ha }: Job["spray"], volume_LPerHa: number): number {
  return Math.min(tank_L, volume_LPerHa * area_ha);
}

/** What this sprayer means for the loads: time on the ground, what stays in the machine, what the hopper takes. */
export function sprayerFacts(spray: Job["spray"], volume_LPerHa: number, loads: Loads): readonly Remark[] {
  return [
    ...timeFact(spray, loads.full.volume_L),
    ...deadVolumeFacts(spray, volume_LPerHa),
    ...hopperFacts(spray, loads),
  ];
}

function fact(code: string, text: string, evidence: Remark["evidence"]): Remark {
  return { code, text, evidence, source: evidence === "common practice" ? "common-practice" : null };
}

function timeFact(spray: Job["spray"], load_L: number): readonly Remark[] {
  const hours = sprayingTime_h(spray, load_L);
  if (hours === null) return [];
  const taken =
    spray.holdingTime_h === null
      ? "It is taken as the holding time; add filling, turning and travel."
      : `The holding time of the job is ${shown(spray.holdingTime_h)} h.`;
  const text = `${shown(load_L)} L at ${shown(spray.output_LPerMin ?? 0)} L/min are sprayed in ${shown(hours)} h. ${taken}`;
  return [fact("spraying-time", text, "computed")];
}

function deadVolumeFacts(spray: Job["spray"], volume_LPerHa: number): readonly Remark[] {
  const dead = spray.deadVolume_L;
  if (dead === null) return [];
  const rinse_L = RINSE_FACTOR * dead;
  const left = shareLeftAfterRinsing(dead, rinse_L, RINSE_PARTS);
  return [
    fact(
      "dead-volume",
      `${shown(dead)} L stay in the machine: they do not reach ${shown(dead / volume_LPerHa)} ha of the last load. ` +
        "Spray them out diluted, on the same crop, as the label allows.",
      "computed",
    ),
    fact(
      "rinsing",
      `Rinsed with ${shown(rinse_L)} L in three parts, one part in ${shown(Math.round(1 / left))} of the spray is left.`,
      "computed",
    ),
  ];
}

function hopperFacts(spray: Job["spray"], loads: Loads): readonly Remark[] {
  const hopper = spray.hopper_L;
  if (hopper === null) return [];
  return loads.full.amounts.flatMap(({ label, amount, unit }): readonly Remark[] => {
    const volume_L = unit === "L" ? amount : amount / POURED_KG_PER_L;
    const portions = Math.ceil(volume_L / hopper - 1e-9);
    if (portions <= 1) return [];
    const text =
      `${label}: ${shown(amount)} ${unit} go through a hopper of ${shown(hopper)} L in ${String(portions)} portions. ` +
      "Rinse each in before the next.";
    return [fact("hopper-portions", text, "common practice")];
  });
}

function shown(value: number): string {
  return String(Number(value.toPrecision(value >= 100 ? 4 : 2)));
}
