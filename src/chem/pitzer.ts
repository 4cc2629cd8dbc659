import { HardstandError } from "../units/index.ts";
import { davies } from "./activity.ts";
import type { ActivityModel } from "./activity.ts";
import type { CompiledInteractions, InteractionModel } from "./interaction-model.ts";
import type { PitzerData } from "./pitzer-data.ts";
import { PairLookup } from "./pitzer-parameters.ts";
import { layOutPitzer } from "./pitzer-layout.ts";
import { PitzerTerms } from "./pitzer-terms.ts";
import { debyeHuckelA } from "./water-properties.ts";

/** Settings of Pitzer's equations. */
export interface PitzerOptions {
  /** Temperature [°C]; default 25. */
  readonly temperature_C?: number;
  /** Ionic strength [mol/kg] above which coefficients keep the value of the same mixture at that strength; default 40. */
  readonly holdAbove_molPerKg?: number;
}

/**
 * Ionic strength [mol/kg] at which the terms are held: beyond saturated ammonium nitrate (26) and calcium chloride
 * (22), where no data reach. Our choice; it keeps coefficients finite for any composition.
 */
export const PITZER_HELD_AT_MOL_PER_KG = 40;
/** Ionic strength [mol/kg] at which Davies' formula is held for ions that have no parameters at all. */
const DAVIES_HELD_AT = 0.5;

/**
 * Pitzer's ion-interaction model: activity coefficients, osmotic coefficient and water activity on the molal scale,
 * with unsymmetrical mixing. Totals and concentrations of a system solved with it are mol per kg of water.
 *
 * Species are matched to parameters by name ("Ca+2", "SO4-2"); the others take those of a stated analogue, else the
 * median of their charge type, else (|z| ≥ 4, +3) Davies' formula held at 0.5 mol/kg. The answer names them.
 * @validity per salt as in the data; 0–45 °C; beyond, the answer is marked as extrapolated with the reason
 * @throws HardstandError "activity-option-invalid"
 * @source Harvie, Møller & Weare (1984) Geochim. Cosmochim. Acta 48:723–751; Pitzer (1975) J. Solution Chem. 4:249–265
 */
export function pitzer(data: PitzerData, options: PitzerOptions = {}): InteractionModel {
  const temperature_C = options.temperature_C ?? 25;
  const hold = options.holdAbove_molPerKg ?? PITZER_HELD_AT_MOL_PER_KG;
  if (!(hold > 0)) throw new HardstandError("activity-option-invalid", "pitzer", { ...options });
  const A = debyeHuckelA(temperature_C);
  const held: ActivityModel = davies({ A, holdAbove_molPerL: DAVIES_HELD_AT });
  const lookup = new PairLookup(data, temperature_C);
  return {
    name: "pitzer",
    kind: "interaction",
    ideal: false,
    contained: data.contained,
    startModel: held,
    compile(speciesNames, charges): CompiledInteractions {
      const layout = layOutPitzer(data, lookup, speciesNames, charges);
      return new PitzerTerms(layout, { Aphi: (A * Math.LN10) / 3, hold, temperature_C, unknown: held });
    },
  };
}
