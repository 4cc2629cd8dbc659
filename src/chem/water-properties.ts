import { HardstandError } from "../units/index.ts";

/** Elementary charge [C], exact by definition of the SI (2019). */
const ELEMENTARY_CHARGE_C = 1.602176634e-19;
/** Boltzmann constant [J/K], exact by definition of the SI (2019). */
const BOLTZMANN_J_PER_K = 1.380649e-23;
/** Avogadro constant [1/mol], exact by definition of the SI (2019). */
const AVOGADRO_PER_MOL = 6.02214076e23;
/** Vacuum permittivity [F/m], CODATA 2018. */
const VACUUM_PERMITTIVITY_F_PER_M = 8.8541878128e-12;

/** Molar mass of water [kg/mol] (IUPAC 2021 standard atomic weights, abridged: H 1.008, O 15.999). */
export const WATER_MOLAR_MASS_KG_PER_MOL = 0.018015;

/** Lowest and highest temperature [°C] for which the water properties are offered. */
export const WATER_PROPERTIES_RANGE_C = { low: 0, high: 100 } as const;

function kelvin(temperature_C: number, where: string): number {
  const { low, high } = WATER_PROPERTIES_RANGE_C;
  if (!(temperature_C >= low && temperature_C <= high)) {
    throw new HardstandError("temperature-out-of-range", where, { temperature_C, low, high });
  }
  return temperature_C + 273.15;
}

/**
 * Density of liquid water at saturation [kg/L].
 *
 * @param temperature_C temperature [°C]
 * @validity 0–100 °C; at 1 atm the true value is up to 0.00005 kg/L higher
 * @source Wagner & Pruss (2002) J. Phys. Chem. Ref. Data 31:387–535, eq. 2.6
 */
export function waterDensity_kgPerL(temperature_C: number): number {
  const theta = 1 - kelvin(temperature_C, "waterDensity_kgPerL") / 647.096;
  const cubeRoot = Math.cbrt(theta);
  const relative =
    1 +
    1.99274064 * cubeRoot +
    1.09965342 * cubeRoot ** 2 -
    0.510839303 * cubeRoot ** 5 -
    1.75493479 * cubeRoot ** 16 -
    45.5170352 * cubeRoot ** 43 -
    674694.45 * cubeRoot ** 110;
  return 0.322 * relative;
}

/**
 * Relative permittivity of liquid water at 1 bar [1].
 *
 * @param temperature_C temperature [°C]
 * @validity 0–100 °C
 * @source Bradley & Pitzer (1979) J. Phys. Chem. 83:1599–1603
 */
export function waterPermittivity(temperature_C: number): number {
  const T = kelvin(temperature_C, "waterPermittivity");
  const at1000bar = 342.79 * Math.exp(-0.0050866 * T + 9.469e-7 * T * T);
  const C = -2.0525 + 3115.9 / (-182.89 + T);
  const B = -8032.5 + 4214200 / T + 2.1417 * T;
  const pressure_bar = 1;
  return at1000bar + C * Math.log((B + pressure_bar) / (B + 1000));
}

/** Distance [m] at which two elementary charges in water have the energy kT. */
function bjerrumLength_m(temperature_C: number): number {
  const T = temperature_C + 273.15;
  const permittivity = VACUUM_PERMITTIVITY_F_PER_M * waterPermittivity(temperature_C);
  return ELEMENTARY_CHARGE_C ** 2 / (4 * Math.PI * permittivity * BOLTZMANN_J_PER_K * T);
}

/**
 * Debye–Hückel slope A of log10 γ = −A z² √I [(kg/mol)^½].
 *
 * Used with I in mol/L as well: below 45 °C and 0.5 mol/L the two scales differ by less than 1 % of A.
 *
 * @param temperature_C temperature [°C]
 * @validity 0–100 °C
 * @source limiting law with the SI constants, `waterDensity_kgPerL` and `waterPermittivity`
 */
export function debyeHuckelA(temperature_C: number): number {
  const density_kgPerM3 = 1000 * waterDensity_kgPerL(temperature_C);
  return (
    (Math.sqrt(2 * Math.PI * AVOGADRO_PER_MOL * density_kgPerM3) * bjerrumLength_m(temperature_C) ** 1.5) /
    Math.LN10
  );
}

/**
 * Debye–Hückel B of the ion-size term 1 + B a √I [(kg/mol)^½ per ångström].
 *
 * @param temperature_C temperature [°C]
 * @validity 0–100 °C
 * @source inverse Debye length with the SI constants, `waterDensity_kgPerL` and `waterPermittivity`
 */
export function debyeHuckelB_perAngstrom(temperature_C: number): number {
  const density_kgPerM3 = 1000 * waterDensity_kgPerL(temperature_C);
  return 1e-10 * Math.sqrt(8 * Math.PI * AVOGADRO_PER_MOL * density_kgPerM3 * bjerrumLength_m(temperature_C));
}

/**
 * log10 of the ion product of water at saturation pressure, molal scale [1].
 *
 * An independent formula: systems built from the data use the OH⁻ record there, which agrees within 0.01.
 *
 * @param temperature_C temperature [°C]
 * @validity 0–100 °C
 * @source Marshall & Franck (1981) J. Phys. Chem. Ref. Data 10:295–304
 */
export function log10Kw(temperature_C: number): number {
  const T = kelvin(temperature_C, "log10Kw");
  const logDensity = Math.log10(waterDensity_kgPerL(temperature_C));
  return (
    -4.098 -
    3245.2 / T +
    223620 / T ** 2 -
    3.984e7 / T ** 3 +
    (13.957 - 1262.3 / T + 856410 / T ** 2) * logDensity
  );
}
