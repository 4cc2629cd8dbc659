import type { Parameter } from "../units/index.ts";
import { shown } from "./check-readings.ts";
import type { KnownReadings } from "./known.ts";
import { assumed, ironDissolvedShare } from "./drawn.ts";
import { assume, assumeFigure, say } from "./ledger.ts";
import type { Ledger } from "./ledger.ts";
import type { IronForm } from "./types.ts";

const MINOR: readonly (readonly [Parameter, string])[] = [
  ["ammonium", "NH4+"],
  ["manganese", "Mn+2"],
  ["aluminium", "Al+3"],
  ["zinc", "Zn+2"],
  ["copper", "Cu+2"],
  ["nitrate", "NO3-"],
  ["phosphate", "PO4-3"],
  ["fluoride", "F-"],
  ["boron", "H3BO3"],
  ["silica", "H4SiO4"],
];

/**
 * Minor components [mol/L] as measured. Those that were not are left out and said, since no figure stands for them;
 * iron is completed, because it binds some actives far more strongly than calcium does.
 */
export function completeMinor(
  known: KnownReadings,
  ironForm: IronForm | null,
  path: string,
  ledger: Ledger,
): Readonly<Record<string, number>> {
  const totals: Record<string, number> = {};
  const leftOut: string[] = [];
  for (const [parameter, component] of MINOR) {
    const entry = known.get(parameter);
    if (entry === undefined) leftOut.push(parameter);
    else totals[component] = entry.value;
  }
  const nitrite = known.get("nitrite");
  if (nitrite !== undefined) {
    totals["NO3-"] = (totals["NO3-"] ?? 0) + nitrite.value;
    say(ledger, "nitrite-counted-as-nitrate", "note", nitrite.reading.path, {});
  }
  if (leftOut.length > 0) {
    say(ledger, "minor-readings-left-out", "note", path, {
      received: leftOut.join(", "),
      hint: "Not measured and left out: they are usually small beside calcium and magnesium.",
    });
  }
  return { ...totals, ...completeIron(known, ironForm, path, ledger) };
}

/** Iron as Fe+3 and Fe+2 [mol/L]. */
function completeIron(
  known: KnownReadings,
  ironForm: IronForm | null,
  path: string,
  ledger: Ledger,
): Readonly<Record<string, number>> {
  const all = known.get("iron");
  const ferrous = known.get("ferrous iron");
  const ferric = known.get("ferric iron");
  if (all === undefined && ferrous === undefined && ferric === undefined) return assumedIron(path, ledger);
  if (all !== undefined && ferrous === undefined && ferric === undefined && ironForm !== null) {
    return { [ironForm === "ferrous" ? "Fe+2" : "Fe+3"]: all.value };
  }
  const measured = (ferrous?.value ?? 0) + (ferric?.value ?? 0);
  if (all !== undefined && measured > all.value * 1.1 && measured > all.high) {
    say(ledger, "iron-forms-disagree", "warning", `${all.reading.path}.value`, {
      received: `iron ${shown("iron", all.value, "mg/L")}, its forms ${shown("iron", measured, "mg/L")}`,
      expected: "the forms no more than the iron in all",
    });
  }
  // Without an iron in all, the form that was not measured stays unknown and is left out.
  const rest = all === undefined ? 0 : Math.max(0, all.value - measured);
  if (all !== undefined && ferrous === undefined && ferric === undefined && all.value > 0) {
    say(ledger, "iron-form-assumed", "note", all.reading.path, {
      hint: "Ask the laboratory whether it is total or dissolved, and whether it is iron(II).",
    });
    // Below the detection limit the range from nothing to the limit is put down already.
    if (all.kind === "below") return { "Fe+3": all.value };
    assume(ledger, {
      code: "iron-form",
      about: "Fe+3",
      value: all.value,
      low: 0,
      high: all.high,
      unit: "mol/L",
      why: "The report does not say what form the iron is in: all of it is taken as dissolved iron(III), which binds most.",
    });
  }
  const totals: Record<string, number> = {};
  const unknownForm = ferrous === undefined && ferric === undefined;
  const dissolved = unknownForm ? ironDissolvedShare(ledger.draw) : 1;
  const ferricTotal = (ferric?.value ?? 0) + (ferric === undefined ? rest * dissolved : 0);
  const ferrousTotal = (ferrous?.value ?? 0) + (ferric !== undefined && ferrous === undefined ? rest : 0);
  if (ferricTotal > 0) totals["Fe+3"] = ferricTotal;
  if (ferrousTotal > 0) totals["Fe+2"] = ferrousTotal;
  return totals;
}

function assumedIron(path: string, ledger: Ledger): Readonly<Record<string, number>> {
  say(ledger, "iron-not-measured", "note", path, {
    hint: "If the water stains or tastes of metal, have the iron tested.",
  });
  const value = assumeFigure(
    ledger,
    {
      code: "iron-not-measured",
      about: "Fe+3",
      unit: "mol/L",
      why: "Iron was not measured: the trace usual in clear water is taken. A bore with iron can hold far more.",
    },
    assumed(ledger.draw, "iron_molPerL"),
  );
  return { "Fe+3": value };
}
