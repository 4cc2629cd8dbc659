import { hydrolysisRate_perH, shareIntact } from "../chem/index.ts";
import { quantileOf } from "../numerics/index.ts";
import type { ActiveRecord, HalfLife } from "./data-types.ts";
import type { ClockRate, ClockShare } from "./types.ts";

const R_KJ_PER_MOL_K = 0.008314462618;

/** Formulation types whose active is mostly undissolved in the tank and so mostly out of reach of hydrolysis. */
const SUSPENDED = new Set(["SC", "WP", "WG", "OD", "CS", "EC", "EW", "SE", "ME"]);

/**
 * Share of an active still intact after the holding time, by hydrolysis at the tank's own pH and temperature.
 *
 * Uses the active's rate law where one is carried; else reads the published half-lives at the temperature of the
 * source, straight in log k against pH between them and never beyond them.
 */
export function byClock(
  active: ActiveRecord,
  formulation: string,
  pH: number,
  temperature_C: number,
  holdingTime_h: number | null,
): ClockShare {
  const sources = [
    ...new Set([
      ...active.halfLives.map((h) => h.source),
      ...(active.rateLaw ? [active.rateLaw.source] : []),
    ]),
  ];
  const unknown = (why: string): ClockShare => ({
    halfLife_h: null,
    stable: false,
    intact: null,
    low: null,
    high: null,
    evidence: "computed",
    why,
    sources,
    rate: null,
  });
  const stable = (said: string): ClockShare => ({
    halfLife_h: null,
    stable: true,
    intact: holdingTime_h === null ? null : 1,
    low: null,
    high: null,
    evidence: "published rule",
    why: `Sources say: ${said}.`,
    sources,
    rate: null,
  });

  const timed = active.halfLives.filter((h) => h.halfLife_h !== null);
  if (active.rateLaw === null && timed.length === 0) {
    if (active.halfLives.length === 0) return unknown("No hydrolysis data carried for this active.");
    return stable(active.halfLives[0]?.qualifier ?? "stable");
  }
  const rate_perH = rateAt(active, timed, pH, temperature_C);
  if (rate_perH === null) {
    const said = calledStableAt(active, timed, pH);
    return said === null ? unknown(`No hydrolysis data near pH ${pH.toFixed(1)}.`) : stable(said);
  }
  const intact = holdingTime_h === null ? null : shareIntact(rate_perH, holdingTime_h);
  const notes: string[] = [];
  if (SUSPENDED.has(formulation))
    notes.push("For dissolved active; suspended or emulsified active breaks down more slowly.");
  if (holdingTime_h === null) notes.push("No holding time given.");
  return {
    halfLife_h: rate_perH > 0 ? Math.LN2 / rate_perH : null,
    stable: rate_perH <= 0,
    intact,
    low: null,
    high: null,
    evidence: "computed",
    why: notes.length > 0 ? notes.join(" ") : null,
    sources,
    rate: rate_perH > 0 ? workingsOf(active, timed, pH, temperature_C) : null,
  };
}

/** Rates beyond these z are not drawn: half-lives are not normal in their tails. */
const FURTHEST_Z = 2.5;

/**
 * The share intact over draws of the tank's pH and of the rate: its 5th and 95th percentile. null ends where no share
 * is known.
 *
 * @param pH of each draw
 * @param z of the rate of each draw, a standard normal number
 * @param spread one standard uncertainty of ln of the rate
 */
export function clockRange(
  active: ActiveRecord,
  central: ClockShare,
  temperature_C: number,
  holdingTime_h: number | null,
  drawn: { readonly pH: Float64Array; readonly z: Float64Array; readonly spread: number },
): ClockShare {
  if (central.intact === null || central.stable || holdingTime_h === null) return central;
  const timed = active.halfLives.filter((h) => h.halfLife_h !== null);
  const intact: number[] = [];
  drawn.pH.forEach((pH, i) => {
    const rate = rateAt(active, timed, pH, temperature_C);
    if (rate === null) return;
    const factor = Math.exp(drawn.spread * Math.max(-FURTHEST_Z, Math.min(FURTHEST_Z, drawn.z[i]!)));
    intact.push(shareIntact(rate * factor, holdingTime_h));
  });
  if (intact.length === 0) return central;
  intact.sort((a, b) => a - b);
  return { ...central, low: quantileOf(intact, 0.05), high: quantileOf(intact, 0.95) };
}

/** What a source says of a pH outside the timed half-lives that lies beyond one it calls stable; null: nothing. */
function calledStableAt(active: ActiveRecord, timed: readonly HalfLife[], pH: number): string | null {
  const pHs = timed.map((h) => h.pH);
  const beyond = active.halfLives.find(
    (h) =>
      h.halfLife_h === null &&
      ((h.pH < Math.min(...pHs) && pH <= h.pH) || (h.pH > Math.max(...pHs) && pH >= h.pH)),
  );
  return beyond?.qualifier ?? null;
}

/** Hydrolysis rate [1/h], or null where the data do not reach. */
function rateAt(
  active: ActiveRecord,
  timed: readonly HalfLife[],
  pH: number,
  temperature_C: number,
): number | null {
  const energy_kJPerMol = active.activationEnergy_kJPerMol.value;
  if (active.rateLaw !== null) {
    const law = active.rateLaw;
    return hydrolysisRate_perH(
      {
        kA: law.kA_LPerMolH,
        kN: law.kN_perH,
        kB: law.kB_LPerMolH,
        pKaCap: law.pKaCap,
        temperature_C: law.temperature_C,
      },
      pH,
      temperature_C,
      energy_kJPerMol,
    );
  }
  const [a, b = a] = around(timed, pH);
  if (a === undefined || b === undefined) return null;
  const lnK = (h: HalfLife): number =>
    Math.log(Math.LN2 / (h.halfLife_h ?? 1)) + arrhenius(energy_kJPerMol, h.temperature_C, temperature_C);
  const t = b.pH === a.pH ? 0 : (pH - a.pH) / (b.pH - a.pH);
  return Math.exp(lnK(a) + t * (lnK(b) - lnK(a)));
}

/** How far beyond the half-lives of a source the nearest of them still stands for the rate. */
const REACH_PH = 0.5;

/** The half-lives on either side of a pH, the nearest one where it lies beyond them all, none where it lies far off. */
function around(timed: readonly HalfLife[], pH: number): readonly HalfLife[] {
  const points = [...timed].sort((a, b) => a.pH - b.pH);
  const first = points[0];
  const last = points.at(-1);
  if (first === undefined || last === undefined) return [];
  if (pH < first.pH - REACH_PH || pH > last.pH + REACH_PH) return [];
  if (pH <= first.pH) return [first];
  const next = points.findIndex((point) => pH <= point.pH);
  return next < 1 ? [last] : points.slice(next - 1, next + 1);
}

/** What the rate at a pH and temperature was worked out from. */
function workingsOf(
  active: ActiveRecord,
  timed: readonly HalfLife[],
  pH: number,
  temperature_C: number,
): ClockRate | null {
  const { rateLaw } = active;
  const near = rateLaw === null ? around(timed, pH) : [];
  const origin = rateLaw ?? near[0];
  if (origin === undefined) return null;
  return {
    pH,
    temperature_C,
    activationEnergy_kJPerMol: active.activationEnergy_kJPerMol.value,
    law:
      rateLaw === null
        ? null
        : {
            kA_LPerMolH: rateLaw.kA_LPerMolH,
            kN_perH: rateLaw.kN_perH,
            kB_LPerMolH: rateLaw.kB_LPerMolH,
            pKaCap: rateLaw.pKaCap,
            temperature_C: rateLaw.temperature_C,
          },
    between: near.flatMap(({ pH: at, temperature_C: of, halfLife_h }) =>
      halfLife_h === null ? [] : [{ pH: at, temperature_C: of, halfLife_h }],
    ),
    source: origin.source,
    locator: origin.locator,
  };
}

/** ln(k(T)/k(T0)) by Arrhenius. */
function arrhenius(energy_kJPerMol: number, from_C: number, to_C: number): number {
  return (-energy_kJPerMol / R_KJ_PER_MOL_K) * (1 / (to_C + 273.15) - 1 / (from_C + 273.15));
}
