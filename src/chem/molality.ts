import { HardstandError } from "../units/index.ts";

/**
 * Water in a litre of solution [kg/L]: mol/L divided by this is mol per kg of water, which interaction models work in.
 *
 * A spray tank needs no conversion: 2 % of ammonium sulfate leaves 0.990 kg of water in a litre, so taking mol/L for
 * mol/kg moves every concentration by 1 % and log10 of it by 0.004. A saturated solution of the salt holds 0.70 kg/L.
 * @param density_kgPerL density of the solution [kg/L]
 * @param solutes_gPerL everything dissolved [g/L]
 * @throws HardstandError "solution-impossible" when the solutes leave no water
 * @source definition of the two scales; densities for the two examples: CRC Handbook, from memory (1.010 and 1.245 kg/L)
 */
export function waterInLitre_kgPerL(density_kgPerL: number, solutes_gPerL: number): number {
  const water = density_kgPerL - solutes_gPerL / 1000;
  if (!(water > 0) || !(solutes_gPerL >= 0) || water === Infinity) {
    throw new HardstandError("solution-impossible", "waterInLitre_kgPerL", { density_kgPerL, solutes_gPerL });
  }
  return water;
}
