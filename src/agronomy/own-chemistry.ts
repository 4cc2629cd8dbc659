import type { ThermoData } from "../chem/index.ts";
import { chemistryOn } from "./chemistry.ts";
import type { Chemistry } from "./chemistry.ts";
import type { OwnActive } from "./own-active.ts";
import { withOwnLigands } from "./own-ligands.ts";
import type { TradeData } from "./trade-data.ts";
import type { MixItem } from "./types.ts";

/** Data sets kept with the actives of recent jobs, so that a page that plans again finds its systems compiled. */
const kept = new WeakMap<ThermoData, Map<string, ThermoData>>();
const MOST_KEPT = 8;

/** The equilibrium answers for a job: on the data set, or on it and the actives entered by hand. */
export function chemistryFor(
  job: { readonly mix: readonly MixItem[] },
  data: { readonly thermo: ThermoData; readonly trade: TradeData },
  humidity: number,
): Chemistry {
  const owns = ownActivesOf(job.mix);
  if (owns.length === 0) return chemistryOn(data.thermo, humidity);
  const ofThermo = kept.get(data.thermo) ?? new Map<string, ThermoData>();
  kept.set(data.thermo, ofThermo);
  const key = JSON.stringify(owns);
  let thermo = ofThermo.get(key);
  if (thermo === undefined) {
    if (ofThermo.size >= MOST_KEPT) ofThermo.clear();
    thermo = withOwnLigands(data.thermo, owns, data.trade);
    ofThermo.set(key, thermo);
  }
  return chemistryOn(thermo, humidity);
}

/** The actives of a mix that were entered by hand, each once. */
function ownActivesOf(mix: readonly MixItem[]): readonly OwnActive[] {
  const byId = new Map<string, OwnActive>();
  for (const { own } of mix) if (own !== null) byId.set(own.id, own);
  return [...byId.values()];
}
