import type { Read } from "../../units/index.ts";
import { benchList } from "./bench-list.ts";
import type { BenchList } from "./bench-list.ts";
import { farmBeside } from "./farm.ts";
import type { FarmBeside } from "./farm.ts";
import { flaskCautions } from "./flask-cautions.ts";
import { slipEffects, visibleSlips } from "./slips.ts";
import type { SlipSeen } from "./slips.ts";
import type { Caution } from "../types.ts";
import type { Demo, FlaskContext, FlaskShow } from "./types.ts";

/** Everything that the printed script of a demonstration says. */
export interface FlaskScript {
  readonly show: FlaskShow;
  readonly bench: BenchList;
  readonly cautions: readonly Caution[];
  /** Slips that would be seen, with what each makes of the flasks. */
  readonly slips: readonly SlipSeen[];
  /** null when the demonstration brings no job along. */
  readonly farm: FarmBeside | null;
}

/** Puts a script together: what to have, what to beware of, what may go wrong, and what it means on the farm. */
export function flaskScript(demo: Demo, show: FlaskShow, context: FlaskContext): Read<FlaskScript> {
  const farm = farmBeside(demo, context);
  if (!farm.ok) return farm;
  return {
    ok: true,
    issues: farm.issues,
    value: {
      show,
      bench: benchList(demo),
      cautions: flaskCautions(demo, context),
      slips: visibleSlips(slipEffects(demo, show, context)),
      farm: farm.value,
    },
  };
}
