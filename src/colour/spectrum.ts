import table from "../../data/colour-observer.json" with { type: "json" };
import { HardstandError } from "../units/index.ts";

/** Tristimulus values X, Y, Z, scaled so that a clear liquid has Y = 100. */
export type Xyz = readonly [number, number, number];

/** Wavelengths [nm] at which spectra are given here: 380–780 nm in steps of 5 nm. */
export const WAVELENGTHS_NM: readonly number[] = table.wavelength_nm;

const COUNT = WAVELENGTHS_NM.length;
const { xbar, ybar, zbar } = table.observer;
const light = table.illuminant.D65;
const SCALE = 100 / WAVELENGTHS_NM.reduce((sum, _, i) => sum + light[i]! * ybar[i]!, 0);

/** Weight of every wavelength in X, Y and Z under D65 for the CIE 1931 2° observer. */
const WEIGHTS = [xbar, ybar, zbar].map((matching) =>
  Float64Array.from(matching, (value, i) => SCALE * light[i]! * value),
);

/**
 * Tristimulus values of light from D65 that has passed a liquid, for the CIE 1931 2° observer.
 *
 * @param transmittance share of the light [1] at each of `WAVELENGTHS_NM`
 * @throws HardstandError "spectrum-length"
 * @source CIE 15:2004, 7.1 (sum at 5 nm)
 */
export function xyzOfTransmittance(transmittance: ArrayLike<number>): Xyz {
  if (transmittance.length !== COUNT) {
    throw new HardstandError("spectrum-length", "xyzOfTransmittance", { length: transmittance.length });
  }
  const sum = (weights: Float64Array): number =>
    weights.reduce((total, weight, i) => total + weight * transmittance[i]!, 0);
  return [sum(WEIGHTS[0]!), sum(WEIGHTS[1]!), sum(WEIGHTS[2]!)];
}

/** Tristimulus values of the light itself, by the same sums; clear water comes out as exactly this. */
export const WHITE: Xyz = xyzOfTransmittance(new Float64Array(COUNT).fill(1));

/** One absorption band: a bell curve over wavenumber. */
export interface Band {
  /** Wavelength of the maximum [nm]. */
  readonly peak_nm: number;
  /** Molar absorptivity at the maximum [L/(mol·cm)]. */
  readonly absorptivity_LPerMolCm: number;
  /** Full width at half maximum [nm]. */
  readonly width_nm: number;
}

/** The foot of a band in the ultraviolet, which alone reaches into the visible: falls exponentially. */
export interface Tail {
  /** Molar absorptivity at 400 nm [L/(mol·cm)]. */
  readonly at400_LPerMolCm: number;
  /** Wavelengths over which it falls by a factor e [nm]. */
  readonly decay_nm: number;
}

/** Molar absorptivity [L/(mol·cm)] at each of `WAVELENGTHS_NM` of a species with these bands and tails. */
export function absorptivityCurve(bands: readonly Band[], tails: readonly Tail[] = []): Float64Array {
  const curve = new Float64Array(COUNT);
  for (const band of bands) addBand(curve, band);
  for (const { at400_LPerMolCm, decay_nm } of tails) {
    if (!(at400_LPerMolCm >= 0) || !(decay_nm > 0)) {
      throw new HardstandError("band-invalid", "absorptivityCurve", { at400_LPerMolCm, decay_nm });
    }
    for (let i = 0; i < COUNT; i += 1) {
      curve[i]! += at400_LPerMolCm * Math.exp(-(WAVELENGTHS_NM[i]! - 400) / decay_nm);
    }
  }
  return curve;
}

function addBand(curve: Float64Array, { peak_nm, absorptivity_LPerMolCm, width_nm }: Band): void {
  if (!(peak_nm > 0) || !(absorptivity_LPerMolCm >= 0) || !(width_nm > 0)) {
    throw new HardstandError("band-invalid", "absorptivityCurve", {
      peak_nm,
      absorptivity_LPerMolCm,
      width_nm,
    });
  }
  // A band is symmetric in energy, which goes with 1/λ. Its half-heights at 1/λ ± h are to be width_nm apart:
  // 1/(ν − h) − 1/(ν + h) = w with ν = 1/peak.
  const halfWidth = (Math.hypot(1, width_nm / peak_nm) - 1) / width_nm;
  for (let i = 0; i < COUNT; i += 1) {
    const away = (1 / WAVELENGTHS_NM[i]! - 1 / peak_nm) / halfWidth;
    curve[i]! += absorptivity_LPerMolCm * 2 ** -(away * away);
  }
}

/** What absorbs in a liquid: a molar absorptivity curve and how much of it there is. */
export interface Absorber {
  readonly curve_LPerMolCm: ArrayLike<number>;
  readonly concentration_molPerL: number;
}

/**
 * Share of light [1] that passes a clear liquid at each of `WAVELENGTHS_NM`, by the Beer–Lambert law.
 *
 * @param path_cm way of the light through the liquid [cm]
 */
export function transmittanceOf(absorbers: readonly Absorber[], path_cm: number): Float64Array {
  const absorbance = new Float64Array(COUNT);
  for (const { curve_LPerMolCm, concentration_molPerL } of absorbers) {
    for (let i = 0; i < COUNT; i += 1)
      absorbance[i]! += curve_LPerMolCm[i]! * concentration_molPerL * path_cm;
  }
  return absorbance.map((value) => 10 ** -value);
}
