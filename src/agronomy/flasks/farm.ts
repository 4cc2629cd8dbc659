import type { Read } from "../../units/index.ts";
import { findConditioner } from "../find.ts";
import type { TitledJob } from "../job.ts";
import { planJob } from "../plan.ts";
import type { TradeData } from "../trade-data.ts";
import type { ConditionerChoice } from "../types.ts";
import type { Demo, FlaskContext } from "./types.ts";

/** One active under one programme: what the tank and the leaf leave free. */
export interface FarmShare {
  readonly active: string;
  readonly inTank: number | null;
  readonly onLeaf: number | null;
  /** The two ends of the leaf answer: a solid of the active forms at once, or never; null: not known. */
  readonly onLeafWithSolid: number | null;
  readonly onLeafWithoutSolid: number | null;
}

/** One way out in the audience's own water. */
export interface FarmProgramme {
  readonly name: string;
  readonly conditioner: string;
  readonly dose_gPerL: number;
  readonly tankPh: number;
  /** True when a conditioner of the flasks is in it, or none at all. */
  readonly shown: boolean;
  readonly shares: readonly FarmShare[];
}

/** The same conditioners with real actives at real rates, beside the flasks. */
export interface FarmBeside {
  readonly title: string | null;
  readonly water: string;
  readonly hardness_mgPerL_asCaCO3: number;
  readonly waterPh: number;
  readonly programmes: readonly FarmProgramme[];
  /** What the flasks do not show about it. */
  readonly notShown: readonly string[];
}

/**
 * The audience's own job with the conditioners of the flasks as the only ones, so that the same chemistries are seen in
 * its water with its actives at their rates. What the job says of one of them, such as its price, is kept.
 */
export function farmJob(demo: Demo, job: TitledJob, trade: TradeData): TitledJob {
  const ids = new Set(
    demo.flasks.flatMap(({ steps }) =>
      steps.flatMap((step) =>
        step.kind === "add" && step.substance.kind === "conditioner" ? [step.substance.id] : [],
      ),
    ),
  );
  const said = (id: string): ConditionerChoice | undefined =>
    job.conditioners?.find(({ chemistry }) => {
      const found = findConditioner(trade, chemistry);
      return found.ok && found.value.record.id === id;
    });
  const conditioners = [...ids].map(
    (id): ConditionerChoice =>
      said(id) ?? {
        chemistry: id,
        form: null,
        price: null,
        leastDose_gPerL: null,
        mostDose_gPerL: null,
        own: null,
        path: "conditioners",
      },
  );
  return { ...job, otherWaters: [], conditioners };
}

/** Plans the job that a demonstration brings along; null when it brings none. */
export function farmBeside(demo: Demo, context: FlaskContext): Read<FarmBeside | null> {
  if (demo.farm === null) return { ok: true, value: null, issues: [] };
  const read = planJob(demo.farm, context);
  if (!read.ok) return read;
  const plan = read.value;
  const inFlasks = new Set(
    demo.flasks.flatMap(({ steps }) =>
      steps.flatMap((step) => (step.kind === "add" ? [step.substance.id] : [])),
    ),
  );
  const programmes = plan.programmes.map((programme): FarmProgramme => ({
    name: programme.name,
    conditioner: programme.conditioner,
    dose_gPerL: programme.dose_gPerL,
    tankPh: programme.tank.pH,
    shown: programme.kind !== "conditioner" || inFlasks.has(programme.conditioner),
    shares: programme.actives.map((active): FarmShare => ({
      active: active.name,
      inTank: active.inTank.free,
      onLeaf: active.onLeaf.free,
      onLeafWithSolid: active.onLeaf.withSolid?.free ?? null,
      onLeafWithoutSolid: active.onLeaf.withoutSolid?.free ?? null,
    })),
  }));
  return {
    ok: true,
    issues: read.issues,
    value: {
      title: demo.farm.title,
      water: plan.water.source,
      hardness_mgPerL_asCaCO3: plan.water.hardness_mgPerL_asCaCO3,
      waterPh: plan.water.pH,
      programmes,
      notShown: notShown(demo),
    },
  };
}

/** Sentences on what the flasks leave out, so that the show never claims more than the chemistry does. */
function notShown(demo: Demo): readonly string[] {
  const released = demo.flasks.flatMap(({ steps }) =>
    steps.flatMap((step) => (step.kind === "add" ? Object.keys(step.substance.released) : [])),
  );
  return [
    ...(released.includes("Fe+3")
      ? [
          "The flasks show iron in acid. A tank holds calcium and magnesium near pH 5: another metal, another strength.",
        ]
      : [
          "The flasks stand at pH 10. A spray tank stands near pH 5, where an active holds calcium far less.",
        ]),
    "A flask shows the liquid as mixed. On the leaf the drop dries, and solids may form that no flask shows.",
    "A coloured stand-in shows that a metal is held, not what that does to a weed.",
  ];
}
