import type { CompiledSystem, SparseRows } from "./compile.ts";
import type { Preparation } from "./prepare.ts";
import type { Workspace } from "./workspace.ts";

/**
 * Loads a prepared problem into the solver's workspace. Where the same components, species and solids take part as in
 * the problem before, the layout stands and the numbers alone are new.
 */
export function loadWorkspace(system: CompiledSystem, preparation: Preparation): void {
  const w = system.workspace;
  if (!takesPart(w, preparation)) layOut(system, preparation);
  w.lnWater = 0;
  for (let k = 0; k < w.m; k++) {
    const j = w.componentOf[k]!;
    w.totalHigh[k] = preparation.totalHigh[j]!;
    w.totalLow[k] = preparation.totalLow[j]!;
  }
  const { speciesRows, solidRows } = system;
  for (let n = 0; n < w.n; n++) {
    const i = w.speciesOf[n]!;
    w.lnK[n] = preparation.logK[i]! * Math.LN10 + fixedPart(w, preparation, speciesRows, i);
  }
  for (let q = 0; q < w.q; q++) {
    const s = w.solidOf[q]!;
    w.present[q] = 0;
    w.amount[q] = 0;
    w.lnKsp[q] = preparation.logKsp[s]! * Math.LN10 - fixedPart(w, preparation, solidRows, s);
    w.lnKspInWater[q] = w.lnKsp[q]!;
  }
  setLimits(w);
}

/** Whether the layout in the workspace is that of the prepared problem; notes what takes part in this one. */
function takesPart(w: Workspace, preparation: Preparation): boolean {
  const { absent, lnFixed, speciesAbsent, solidAbsent, solidAllowed } = preparation;
  const { takingPart } = w;
  let same = w.isLaidOut;
  let at = 0;
  const note = (value: number): void => {
    if (takingPart[at] !== value) same = false;
    takingPart[at++] = value;
  };
  w.fixedCount = 0;
  for (let j = 0; j < absent.length; j++) {
    const fixed = lnFixed[j] === lnFixed[j];
    if (fixed) w.fixedCount++;
    note(fixed ? 2 : absent[j]!);
  }
  for (let i = 0; i < speciesAbsent.length; i++) note(speciesAbsent[i]!);
  for (let s = 0; s < solidAbsent.length; s++) note(solidAbsent[s] === 1 || solidAllowed[s] === 0 ? 1 : 0);
  w.isLaidOut = true;
  return same;
}

function layOut(system: CompiledSystem, preparation: Preparation): void {
  const w = system.workspace;
  w.isBasisChosen = false;
  w.integerCoefficients = system.coefficientScale > 0;
  w.coefficientScale = w.integerCoefficients ? system.coefficientScale : 1;
  w.m = 0;
  for (let j = 0; j < system.componentNames.length; j++) {
    w.labelOf[j] = -1;
    if (preparation.absent[j] === 1 || preparation.lnFixed[j] === preparation.lnFixed[j]) continue;
    w.componentOf[w.m] = j;
    w.labelOf[j] = w.m++;
  }
  w.n = 0;
  let entry = 0;
  for (let i = 0; i < system.speciesNames.length; i++) {
    if (preparation.speciesAbsent[i] === 1) continue;
    const n = w.n++;
    w.speciesOf[n] = i;
    w.order[n] = n;
    w.charge[n] = system.speciesCharges[i]!;
    w.water[n] = system.definition.species[i]!.water ?? 0;
    w.halfZ2[n] = 0.5 * w.charge[n]! * w.charge[n]!;
    entry = addRow(w, system.speciesRows, i, w.aIndex, w.aValue, entry);
    w.aStart[n + 1] = entry;
  }
  w.q = 0;
  entry = 0;
  for (let s = 0; s < system.solidNames.length; s++) {
    if (preparation.solidAbsent[s] === 1 || preparation.solidAllowed[s] === 0) continue;
    const end = addRow(w, system.solidRows, s, w.sIndex, w.sValue, entry);
    // A solid made of fixed components alone has no balance to draw on: its saturation is given, it is not formed.
    if (end === entry) continue;
    const q = w.q++;
    w.solidOf[q] = s;
    w.solidWater[q] = system.definition.solids[s]!.water ?? 0;
    entry = end;
    w.sStart[q + 1] = entry;
  }
}

/** Copies the entries of one row that are labels; returns where the next row begins. */
function addRow(
  { labelOf, coefficientScale, integerCoefficients }: Workspace,
  rows: SparseRows,
  i: number,
  index: Int32Array,
  value: Float64Array,
  entry: number,
): number {
  let end = entry;
  for (let e = rows.start[i]!; e < rows.start[i + 1]!; e++) {
    const label = labelOf[rows.index[e]!]!;
    if (label < 0) continue;
    const scaled = rows.value[e]! * coefficientScale;
    index[end] = label;
    value[end] = integerCoefficients ? Math.round(scaled) : scaled;
    end++;
  }
  return end;
}

/** What the fixed components of a row add to ln of its constant. */
function fixedPart(w: Workspace, { lnFixed }: Preparation, rows: SparseRows, i: number): number {
  if (w.fixedCount === 0) return 0;
  let sum = 0;
  for (let e = rows.start[i]!; e < rows.start[i + 1]!; e++) {
    const j = rows.index[e]!;
    if (lnFixed[j] === lnFixed[j]) sum += rows.value[e]! * lnFixed[j]!;
  }
  return sum;
}

/** Twenty times the concentration each species can reach, from the totals of labels that nothing takes away. */
function setLimits(w: Workspace): void {
  const takes = w.scratch.fill(0, 0, w.m);
  for (let e = 0; e < w.aStart[w.n]!; e++) if (w.aValue[e]! < 0) takes[w.aIndex[e]!] = 1;
  for (let e = 0; e < w.sStart[w.q]!; e++) if (w.sValue[e]! < 0) takes[w.sIndex[e]!] = 1;
  for (let i = 0; i < w.n; i++) {
    let limit = Infinity;
    for (let e = w.aStart[i]!; e < w.aStart[i + 1]!; e++) {
      const j = w.aIndex[e]!;
      if (takes[j] === 0) limit = Math.min(limit, (w.totalHigh[j]! * w.coefficientScale) / w.aValue[e]!);
    }
    w.limit[i] = 20 * limit;
  }
}
