import type { BinaryRecord, PitzerData } from "./pitzer-data.ts";

/** Parameters of one pair of cation and anion at one temperature. */
export interface PairParameters {
  readonly beta0: number;
  readonly beta1: number;
  readonly beta2: number;
  /** C = C-phi / (2 √|z₊ z₋|) [(kg/mol)²] */
  readonly c: number;
  readonly alpha1: number;
  readonly alpha2: number;
  /** Ionic strength of the most concentrated solution of the fit [mol/kg]; Infinity: not known. */
  readonly fittedTo: number;
  /** True when values at 25 °C are used at another temperature. */
  readonly at25only: boolean;
  /** Pair whose parameters these are, or "charge type", when they are not the pair's own; else null. */
  readonly estimate: string | null;
  /** True for parameters carried from memory, the pair's own or those of ions that stand in. */
  readonly fromMemory: boolean;
}

const REFERENCE_K = 298.15;
/** Charge numbers a charge type can be estimated for. */
const LARGEST_CATION = 2;
const LARGEST_ANION = 3;
/**
 * Molality [mol/kg] a fit must reach for its cubic term to be borrowed by an analogue. Our judgement: that of tripotassium
 * phosphate, fitted to 0.7 mol/kg, would drive a droplet to a water activity above 1.
 */
const CUBIC_BORROWED_FROM = 3;

/** P(T) − P(25 °C) from the coefficients a1…a5 of the parameter file. */
function temperatureChange(coefficients: readonly number[] | undefined, T: number): number {
  if (coefficients === undefined) return 0;
  const [a1 = 0, a2 = 0, a3 = 0, a4 = 0, a5 = 0] = coefficients;
  const R = REFERENCE_K;
  return (
    a1 * (1 / T - 1 / R) +
    a2 * Math.log(T / R) +
    a3 * (T - R) +
    a4 * (T * T - R * R) +
    a5 * (1 / (T * T) - 1 / (R * R))
  );
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length / 2;
  return sorted.length % 2 === 1 ? sorted[Math.floor(half)]! : (sorted[half - 1]! + sorted[half]!) / 2;
}

/** Charge number written at the end of an ion's name ("SO4-2"); 0 if there is none. */
export function chargeInName(name: string): number {
  const found = /([+-])(\d*)$/.exec(name);
  if (found === null) return 0;
  return (found[1] === "+" ? 1 : -1) * Number(found[2] === "" ? 1 : found[2]);
}

/** Looks up and estimates pair parameters at one temperature; each is worked out once. */
export class PairLookup {
  private readonly data: PitzerData;
  private readonly temperature_C: number;
  private readonly byPair: ReadonlyMap<string, BinaryRecord>;
  private readonly ions: ReadonlySet<string>;
  private readonly analogues: ReadonlyMap<string, string>;
  private readonly found = new Map<string, PairParameters>();

  constructor(data: PitzerData, temperature_C: number) {
    this.data = data;
    this.temperature_C = temperature_C;
    this.byPair = new Map(data.binaries.map((record) => [`${record.cation} ${record.anion}`, record]));
    this.ions = new Set(data.binaries.flatMap((record) => [record.cation, record.anion]));
    this.analogues = new Map(data.analogies.map(({ species, as }) => [species, as]));
  }

  /** True when at least one salt of the ion itself has parameters. */
  has(species: string): boolean {
    return this.ions.has(species);
  }

  /** Ions of equal charge in the order in which they may stand in: the ion itself, its analogue, the analogue's own. */
  private standIns(species: string): readonly string[] {
    const chain = [species];
    for (;;) {
      const next = this.analogues.get(chain.at(-1)!);
      if (next === undefined || chain.includes(next)) return chain;
      chain.push(next);
    }
  }

  /** True when the ion or one that stands in for it has parameters, or its charge type has a median. */
  covers(species: string, charge: number): boolean {
    if (charge > 0) return charge <= LARGEST_CATION;
    return -charge <= LARGEST_ANION || this.standIns(species).some((name) => this.has(name));
  }

  /** Ion that stands in for one without parameters of its own; null if it has some. */
  standIn(species: string): string | null {
    if (this.has(species)) return null;
    return this.standIns(species).find((name) => this.has(name)) ?? "charge type";
  }

  /** Parameters of a pair: its own, those of ions that stand in, or the median of its charge type. */
  pair(cation: string, anion: string, zc: number, za: number): PairParameters {
    const key = `${cation} ${String(zc)} ${anion} ${String(za)}`;
    let parameters = this.found.get(key);
    if (parameters === undefined) {
      parameters = this.best(cation, anion, zc, za);
      this.found.set(key, parameters);
    }
    return parameters;
  }

  private best(cation: string, anion: string, zc: number, za: number): PairParameters {
    for (const c of this.standIns(cation)) {
      for (const a of this.standIns(anion)) {
        const record = this.byPair.get(`${c} ${a}`);
        if (record === undefined) continue;
        const own = c === cation && a === anion;
        return this.at(record, zc, za, own ? null : `${c} ${a}`);
      }
    }
    return this.byChargeType(zc, za);
  }

  private at(record: BinaryRecord, zc: number, za: number, estimate: string | null): PairParameters {
    const T = this.temperature_C + 273.15;
    const change = (name: "beta0" | "beta1" | "beta2" | "cphi"): number =>
      record[name] + temperatureChange(record.temperature?.coefficients[name], T);
    const max = record.maxMolality_molPerKg;
    const reaches = estimate === null || (max ?? Infinity) >= CUBIC_BORROWED_FROM;
    // Ionic strength per mole of salt: ½ (|z₋| z₊² + z₊ z₋²) over the common divisor of the charges.
    const common = Math.abs(zc) === Math.abs(za) ? Math.abs(zc) : 1;
    const perMole = (0.5 * Math.abs(zc * za) * (Math.abs(zc) + Math.abs(za))) / common;
    return {
      beta0: change("beta0"),
      beta1: change("beta1"),
      // Pairing by analogy is left to explicit complexes.
      beta2: estimate === null ? change("beta2") : 0,
      c: reaches ? change("cphi") / (2 * Math.sqrt(Math.abs(zc * za))) : 0,
      alpha1: record.alpha[0]!,
      alpha2: record.alpha[1]!,
      fittedTo: max === null ? Infinity : max * perMole,
      at25only: record.temperature === null && this.temperature_C !== 25,
      estimate,
      fromMemory: record.fromMemory,
    };
  }

  private byChargeType(zc: number, za: number): PairParameters {
    const alike = this.data.binaries.filter(
      (record) => chargeInName(record.cation) === zc && chargeInName(record.anion) === za,
    );
    const none = alike.length === 0;
    return {
      beta0: none ? 0 : median(alike.map((record) => record.beta0)),
      beta1: none ? 0 : median(alike.map((record) => record.beta1)),
      beta2: 0,
      c: 0,
      alpha1: zc === 2 && za === -2 ? 1.4 : 2,
      alpha2: 12,
      fittedTo: Infinity,
      at25only: this.temperature_C !== 25,
      estimate: "charge type",
      fromMemory: false,
    };
  }
}
