import type { CompiledInteractions } from "./interaction-model.ts";
import { refreshBeta, refreshLnC } from "./working-basis.ts";
import type { Workspace } from "./workspace.ts";

/** The interaction model of one system with the scratch memory of its Newton steps. */
export interface InteractionState {
  readonly terms: CompiledInteractions;
  /** Molalities of all species of the system [mol/kg]; zero for absent ones. */
  readonly molality: Float64Array;
  /** Rows whose response to each other is solved for, and how many. */
  readonly active: Int32Array;
  activeCount: number;
  readonly activeSpecies: Int32Array;
  /** Free unknowns that active rows depend on, and the place of each among them (-1: none). */
  readonly used: Int32Array;
  readonly usedAt: Int32Array;
  /** Water taken up per row, less that of the basis members it is written in. */
  readonly netWater: Float64Array;
  readonly inner: Float64Array;
  readonly innerPivots: Int32Array;
  readonly responses: Float64Array;
  readonly outer: Float64Array;
  readonly outerPivots: Int32Array;
  /** Place of each row among the active ones (-1: none); change of each row that no unknown makes; 1/√c per unknown. */
  readonly activeRow: Int32Array;
  readonly offsets: Float64Array;
  readonly half: Float64Array;
  /** Coefficient times c / √c of the basis member, by entry of the working basis. */
  readonly entryFactor: Float64Array;
}

/** Lays out the scratch memory for a number of right-hand sides. */
export function createInteractionState(
  terms: CompiledInteractions,
  components: number,
  species: number,
  columns: number,
): InteractionState {
  const width = components + columns;
  return {
    terms,
    molality: new Float64Array(species),
    active: new Int32Array(species),
    activeCount: 0,
    activeSpecies: new Int32Array(species),
    used: new Int32Array(components),
    usedAt: new Int32Array(components),
    netWater: new Float64Array(species),
    inner: new Float64Array(species * species),
    innerPivots: new Int32Array(species),
    responses: new Float64Array(species * width),
    outer: new Float64Array(components * components),
    outerPivots: new Int32Array(components),
    activeRow: new Int32Array(species),
    offsets: new Float64Array(species * columns),
    half: new Float64Array(components),
    entryFactor: new Float64Array(species * components),
  };
}

const NONE = new Int32Array(0);

/** Evaluates the model at the present concentrations, taken as molalities; with derivatives by the active rows. */
export function evaluateInteractions(w: Workspace, s: InteractionState, derivatives: boolean): void {
  s.molality.fill(0);
  for (let i = 0; i < w.n; i++) s.molality[w.speciesOf[i]!] = w.c[i]!;
  for (let a = 0; a < s.activeCount; a++) s.activeSpecies[a] = w.speciesOf[s.active[a]!]!;
  s.terms.evaluate(s.molality, derivatives ? s.activeSpecies.subarray(0, s.activeCount) : NONE);
}

/** ln K − ln γ (with the water taken up) and ln Ksp of all rows, from the coefficients now in the workspace. */
export function applyInteractions(w: Workspace): void {
  for (let i = 0; i < w.n; i++) w.b[i] = w.lnK[i]! - w.lnGamma[i]! + w.water[i]! * w.lnWater;
  for (let s = 0; s < w.q; s++) w.lnKsp[s] = w.lnKspInWater[s]! - w.solidWater[s]! * w.lnWater;
}

/** As `applyInteractions`, with everything in the working basis brought up to date at constant unknowns. */
export function refreshInteractions(w: Workspace): void {
  applyInteractions(w);
  refreshBeta(w);
  refreshLnC(w);
}

/** Takes the rows that make up at least `share` of all molality as active ones; all of them for 0. */
export function chooseActive(w: Workspace, s: InteractionState, share: number): void {
  let sum = 0;
  for (let i = 0; i < w.n; i++) sum += w.c[i]!;
  s.activeCount = 0;
  for (let i = 0; i < w.n; i++) if (w.c[i]! >= share * sum) s.active[s.activeCount++] = i;
}

/** Water taken up per row, less that of the members of the present basis it is written in. */
export function updateNetWater(w: Workspace, s: InteractionState): void {
  for (let i = 0; i < w.n; i++) {
    let water = w.water[i]!;
    for (let e = w.vStart[i]!; e < w.vStart[i + 1]!; e++) {
      const row = w.member[w.vIndex[e]!]!;
      water -= w.vValue[e]! * (row >= 0 ? w.water[row]! : w.solidWater[-1 - row]!);
    }
    s.netWater[i] = water;
  }
}
