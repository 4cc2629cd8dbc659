import type { SpeciesRecord } from "../../chem/index.ts";
import type { OpticsRecord } from "./flask-data.ts";

/** Metals an indicator typed in by hand may show, and their components. */
export const METALS: Readonly<Record<string, string>> = {
  "iron(III)": "Fe+3",
  "iron(II)": "Fe+2",
  calcium: "Ca+2",
  magnesium: "Mg+2",
  copper: "Cu+2",
  zinc: "Zn+2",
  manganese: "Mn+2",
  aluminium: "Al+3",
};

/** Where a figure typed by hand comes from. */
export const TYPED = { source: "from-memory", locator: "typed in by hand", fromMemory: true } as const;

/** Gathers the species of an indicator and their colours. */
export class IndicatorBuilder {
  readonly species: Omit<SpeciesRecord, "deltaZ2">[] = [];
  readonly optics: OpticsRecord[] = [];
  readonly #metals = new Set<string>();
  readonly #protonation: number[] = [];
  readonly #component: string;
  readonly #charge: number;
  readonly #ionicStrength: number;

  constructor(component: string, charge: number, ionicStrength: number) {
    this.#component = component;
    this.#charge = charge;
    this.#ionicStrength = ionicStrength;
  }

  get metals(): readonly string[] {
    return [...this.#metals];
  }

  addProton(logK: number): void {
    this.#protonation.push(logK);
    const protons = this.#protonation.length;
    const total = this.#protonation.reduce((sum, one) => sum + one, 0);
    this.#add(this.#freeId(protons), this.#charge + protons, { "H+": protons }, 1, total, 0.1);
  }

  addComplex(
    metal: string,
    parts: { readonly ligands: number; readonly protons: number },
    logK: number,
    uncertainty: number,
    band: OpticsRecord["bands"] | null,
  ): void {
    const component = METALS[metal]!;
    this.#metals.add(metal);
    const ion = Number(component.slice(-1)) || 1;
    const { ligands, protons } = parts;
    const id = `${component.replace(/[+-].*$/, "")}(${this.#component})${ligands}H${protons}`;
    const formation: Record<string, number> = { [component]: 1 };
    if (protons !== 0) formation["H+"] = protons;
    this.#add(id, ion + ligands * this.#charge + protons, formation, ligands, logK, uncertainty);
    if (band !== null) this.optics.push({ species: id, bands: band, tails: [], note: null });
  }

  colourFree(protons: number, bands: OpticsRecord["bands"]): boolean {
    if (protons > this.#protonation.length) return false;
    this.optics.push({ species: this.#freeId(protons), bands, tails: [], note: null });
    return true;
  }

  #freeId(protons: number): string {
    return protons === 0 ? this.#component : `H${protons}(${this.#component})`;
  }

  #add(
    id: string,
    charge: number,
    others: Readonly<Record<string, number>>,
    ligands: number,
    logK: number,
    uncertainty: number,
  ): void {
    this.species.push({
      id,
      name: id,
      charge,
      formation: { ...others, [this.#component]: ligands },
      logK: {
        value: logK,
        uncertainty: { kind: "standard", value: uncertainty },
        conditions: { T_C: 25, I_molPerL: this.#ionicStrength, medium: null },
      },
      dH_kJPerMol: null,
      analytic: null,
      group: "",
      alkaliPair: false,
      analogyOf: null,
      chain: null,
      ionSize: null,
      note: null,
      ...TYPED,
    });
  }
}
