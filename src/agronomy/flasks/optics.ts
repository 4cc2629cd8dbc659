import {
  absorptivityCurve,
  colourLook,
  labOfXyz,
  screenColour,
  transmittanceOf,
  xyzOfTransmittance,
} from "../../colour/index.ts";
import type { Absorber, Lab, Xyz } from "../../colour/index.ts";
import type { Equilibrium } from "../../chem/index.ts";
import type { FlaskChemistry } from "./flask-chemistry.ts";
import type { BandRecord, FlaskData, OpticalFigure, OpticsRecord, TailRecord } from "./flask-data.ts";
import type { FlaskColour, OpticsUsed } from "./types.ts";

/** Absorbance [1] below which a species changes no colour. */
const UNSEEN_ABSORBANCE = 1e-4;
/** No draw goes below this share of a figure that cannot be negative. */
const LEAST_SHARE = 0.1;

/** Place of an optical figure in its distribution [standard uncertainties], by its key; 0 is the central value. */
export type OpticalDraw = (key: string) => number;

/** The absorbing species of a system with their molar absorptivity curves. */
export interface Palette {
  /** Index of the species in the system, its curve, and the largest value of it. */
  readonly entries: readonly {
    readonly index: number;
    readonly curve: Float64Array;
    readonly most: number;
  }[];
}

/** Optical records of the species that a system can form. */
export function opticsOf(chemistry: FlaskChemistry, data: FlaskData): readonly OpticsRecord[] {
  const records = [...data.background, ...chemistry.indicators.flatMap((one) => one.optics)];
  return records.filter(
    ({ species, bands, tails }) =>
      chemistry.compiled.speciesIndex.has(species) && bands.length + tails.length > 0,
  );
}

/** Keys of all uncertain optical figures of some records. */
export function opticalKeys(records: readonly OpticsRecord[]): readonly string[] {
  return records.flatMap((record) => figuresOf(record).map(({ key }) => key));
}

/** Curves of the absorbing species, with the central figures or drawn ones. */
export function paletteOf(
  chemistry: FlaskChemistry,
  records: readonly OpticsRecord[],
  draw: OpticalDraw = () => 0,
): Palette {
  return {
    entries: records.map((record) => {
      const curve = absorptivityCurve(
        record.bands.map((band, i) => drawnBand(record.species, band, i, draw)),
        record.tails.map((tail, i) => drawnTail(record.species, tail, i, draw)),
      );
      const index = chemistry.compiled.speciesIndex.get(record.species)!;
      return { index, curve, most: curve.reduce((a, b) => Math.max(a, b), 0) };
    }),
  };
}

function drawnBand(
  species: string,
  band: BandRecord,
  i: number,
  draw: OpticalDraw,
): { peak_nm: number; absorptivity_LPerMolCm: number; width_nm: number } {
  const key = `${species} band ${i}`;
  return {
    peak_nm: band.peak_nm.value + draw(`${key} peak`) * band.peak_nm.uncertainty,
    absorptivity_LPerMolCm: scaled(band.absorptivity_LPerMolCm, draw(`${key} absorptivity`)),
    width_nm: scaled(band.width_nm, draw(`${key} width`)),
  };
}

function drawnTail(
  species: string,
  tail: TailRecord,
  i: number,
  draw: OpticalDraw,
): { at400_LPerMolCm: number; decay_nm: number } {
  const key = `${species} tail ${i}`;
  return {
    at400_LPerMolCm: scaled(tail.at400_LPerMolCm, draw(`${key} at 400`)),
    decay_nm: scaled(tail.decay_nm, draw(`${key} decay`)),
  };
}

/** A figure that cannot be negative, drawn by a factor. */
function scaled({ value, uncertainty }: OpticalFigure, z: number): number {
  return value === 0 ? 0 : Math.max(LEAST_SHARE * value, value * Math.exp((z * uncertainty) / value));
}

/** Tristimulus values of a clear liquid against white. */
export function xyzOf(equilibrium: Equilibrium, palette: Palette, path_cm: number): Xyz {
  const absorbers: Absorber[] = [];
  for (const { index, curve, most } of palette.entries) {
    const concentration_molPerL = equilibrium.concentrations[index]!;
    if (concentration_molPerL * most * path_cm > UNSEEN_ABSORBANCE) {
      absorbers.push({ curve_LPerMolCm: curve, concentration_molPerL });
    }
  }
  return xyzOfTransmittance(transmittanceOf(absorbers, path_cm));
}

/** A colour with all it is shown by. */
export function flaskColour(xyz: Xyz): FlaskColour {
  const lab: Lab = labOfXyz(xyz);
  return { ...screenColour(xyz), ...lab, look: colourLook(lab) };
}

interface KeyedFigure {
  readonly key: string;
  readonly what: string;
  readonly unit: string;
  readonly figure: OpticalFigure;
}

function figuresOf({ species, bands, tails }: OpticsRecord): readonly KeyedFigure[] {
  return [
    ...bands.flatMap((band, i): KeyedFigure[] => {
      const key = `${species} band ${i}`;
      return [
        { key: `${key} peak`, what: "peak", unit: "nm", figure: band.peak_nm },
        {
          key: `${key} absorptivity`,
          what: "molar absorptivity at the peak",
          unit: "L/(mol·cm)",
          figure: band.absorptivity_LPerMolCm,
        },
        { key: `${key} width`, what: "width at half height", unit: "nm", figure: band.width_nm },
      ];
    }),
    ...tails.flatMap((tail, i): KeyedFigure[] => {
      const key = `${species} tail ${i}`;
      return [
        {
          key: `${key} at 400`,
          what: "molar absorptivity at 400 nm",
          unit: "L/(mol·cm)",
          figure: tail.at400_LPerMolCm,
        },
        { key: `${key} decay`, what: "decay of the tail", unit: "nm", figure: tail.decay_nm },
      ];
    }),
  ];
}

/** Every optical figure of some records, with where it comes from. */
export function opticsUsed(records: readonly OpticsRecord[]): readonly OpticsUsed[] {
  return records.flatMap((record) =>
    figuresOf(record).map(({ what, unit, figure }) => ({
      species: record.species,
      what,
      value: figure.value,
      unit,
      source: figure.source,
      locator: figure.locator,
      estimate: figure.estimate,
      fromMemory: figure.fromMemory,
    })),
  );
}
