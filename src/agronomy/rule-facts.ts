import { componentInfo } from "../chem/index.ts";
import { hardness_mgPerL_asCaCO3 } from "../water/index.ts";
import { conditionerFacts } from "./cautions.ts";
import type { ConditionerRecord, RuleRecord } from "./data-types.ts";
import type { RuleFacts } from "./fact-list.ts";
import { findFormulation } from "./find.ts";
import { FEEDS, OTHER_PARTNERS } from "./job-site.ts";
import type { Setting } from "./programmes.ts";
import { holdingTimeOf } from "./sprayer.ts";
import { factsAskedBy, isAboutActive, judgeRules } from "./rules.ts";
import type { DosedConditioner, MixProduct, TankActive } from "./tank.ts";
import type { TradeData } from "./trade-data.ts";
import type { RuleVerdict, TankState } from "./types.ts";
import { activeConcentration_molPerL } from "./tank.ts";

/** g of HCO3 per mol of alkalinity. */
const BICARBONATE_G_PER_EQ = 61.017;

/**
 * Facts that hold for the whole tank, whichever active is judged; null where nobody has said.
 *
 * @returns one set of facts, or one for each conditioner where there are two: each with its own name and dose, and with
 * what both do and release
 */
export function tankFacts(
  setting: Setting,
  trade: TradeData,
  volume_LPerHa: number,
  conditioners: readonly DosedConditioner[],
  state: TankState,
): readonly RuleFacts[] {
  const { water, mix, feeds, job, chemistry } = setting;
  const mg = (component: string): number =>
    (water.totals_molPerL[component] ?? 0) *
    componentInfo(chemistry.thermo, component).molarMass_gPerMol *
    1000;
  const groups = [
    ...mix.map((product) => mixingGroupOf(product, trade)).filter((group) => group !== null),
    ...feeds.map(({ record }) => record.mixingGroup),
  ];
  const whole: RuleFacts = {
    "water.hardness_mgPerL_asCaCO3": hardness_mgPerL_asCaCO3(water),
    "water.calcium_mgPerL": mg("Ca+2"),
    "water.magnesium_mgPerL": mg("Mg+2"),
    "water.sodium_mgPerL": mg("Na+"),
    "water.iron_mgPerL": mg("Fe+3") + mg("Fe+2"),
    "water.manganese_mgPerL": mg("Mn+2"),
    "water.bicarbonate_mgPerL": Math.max(0, water.alkalinity_molPerL) * BICARBONATE_G_PER_EQ * 1000,
    "water.pH": water.pH,
    "water.conductivity_uSPerCm": water.conductivity_uSPerCm,
    "water.turbidity_NTU": water.turbidity_NTU,
    "water.temperature_C": setting.temperature_C,
    "water.treatments": job.site.waterTreatments,
    "mix.actives": mix.map((product) => product.active.id),
    "mix.releases": [
      ...mix.flatMap((product) => Object.keys(product.form?.counterIons ?? {})),
      ...feeds.flatMap(({ record }) => Object.keys(record.released)),
    ],
    "mix.mixingGroups": groups,
    "mix.products": mix.length + feeds.length,
    // Leaf feeds are counted from the mix; beside them a person may name partners without an amount.
    "mix.feeds": feedsOf(setting),
    "mix.partners": job.partners?.filter((word) => OTHER_PARTNERS.includes(word)) ?? null,
    "sprayer.metals": job.site.metals,
    "site.airTemperature_C": job.site.airTemperature_C,
    "holding.time_h": holdingTimeOf(job.spray, volume_LPerHa),
    "rate.volume_LPerHa": volume_LPerHa,
    "site.volatilityRules": job.site.volatilityRules,
    "tank.pH": state.pH,
    "tank.ionicStrength_molPerL": state.ionicStrength_molPerL,
    "conditioner.modes": [...new Set(conditioners.flatMap(({ record }) => record.modes))],
    "conditioner.releases": [...new Set(conditioners.flatMap(({ record }) => Object.keys(record.released)))],
  };
  if (conditioners.length === 0) return [{ ...whole, ...NO_CONDITIONER }];
  return conditioners.map((conditioner) => ({ ...whole, ...factsOfConditioner(conditioner) }));
}

/** Feeds of the mix and those named as partners; null when neither is known. */
function feedsOf({ feeds, job }: Setting): readonly string[] | null {
  const named = job.partners?.filter((word) => FEEDS.includes(word)) ?? null;
  const added = feeds.flatMap(({ record }) => record.facts);
  return named === null && added.length === 0 ? null : [...new Set([...added, ...(named ?? [])])];
}

const NO_CONDITIONER: RuleFacts = {
  "conditioner.id": "none",
  "conditioner.dose_gPerL": 0,
  "conditioner.isDry": false,
};

function factsOfConditioner(conditioner: DosedConditioner): RuleFacts {
  const { record, formId, dose_gPerL } = conditioner;
  const { "conditioner.id": id, "conditioner.isDry": isDry } = conditionerFacts(record, formId);
  const form = record.forms.find((f) => f.id === formId);
  const substance_gPerL = (dose_gPerL * (form?.assay_percent ?? 100)) / 100;
  return {
    "conditioner.id": id ?? null,
    "conditioner.isDry": isDry ?? null,
    "conditioner.dose_gPerL": doseForRules(record, substance_gPerL),
  };
}

/** Rules count the one chemistry they name; in a product of several its dose is not one figure, hence not known. */
function doseForRules({ madeOf }: ConditionerRecord, substance_gPerL: number): number | null {
  if (madeOf === undefined) return substance_gPerL;
  const [only, ...more] = madeOf;
  return only === undefined || more.length > 0 ? null : substance_gPerL * only.massShare;
}

function mixingGroupOf(product: MixProduct, trade: TradeData): string | null {
  const found = findFormulation(trade, product.item.formulation);
  return found.ok ? found.value.mixingGroup : null;
}

/** The tank's facts with those of one active. */
export function activeFacts(
  facts: RuleFacts,
  product: MixProduct,
  volume_LPerHa: number,
  trade: TradeData,
): RuleFacts {
  const { active, form } = product;
  return {
    ...facts,
    "active.id": active.id,
    "active.form": form?.id ?? null,
    "active.mixingGroup": mixingGroupOf(product, trade),
    "rate.active_gPerHa":
      activeConcentration_molPerL(product, volume_LPerHa) * active.molarMass_gPerMol * volume_LPerHa,
  };
}

/** Rules about one active on these facts that do not hang on a conditioner: what is said of the water and the mix. */
export function rulesOnActive(
  trade: TradeData,
  facts: readonly RuleFacts[],
  active: TankActive,
  volume_LPerHa: number,
): readonly RuleVerdict[] {
  const rules = trade.rules.filter((rule) => isAboutActive(rule) && !isAboutConditioner(rule));
  return judgeRules(rules, activeFacts(facts[0] ?? {}, active.product, volume_LPerHa, trade)).fired;
}

/** Reasons for and against a programme: rules that hang on its conditioner, and rules about the whole tank. */
export function rulesOnProgramme(
  trade: TradeData,
  facts: readonly RuleFacts[],
  mix: readonly MixProduct[],
  volume_LPerHa: number,
): readonly RuleVerdict[] {
  const fired = new Map<string, RuleVerdict>();
  const keep = (rules: readonly RuleRecord[], factsOf: (whole: RuleFacts) => RuleFacts): void => {
    for (const whole of facts)
      for (const verdict of judgeRules(rules, factsOf(whole)).fired) fired.set(verdict.id, verdict);
  };
  keep(
    trade.rules.filter((rule) => !isAboutActive(rule)),
    (whole) => whole,
  );
  for (const product of mix) {
    keep(
      trade.rules.filter(
        (rule) => isAboutActive(rule) && (isAboutConditioner(rule) || rule.level === "block"),
      ),
      (whole) => activeFacts(whole, product, volume_LPerHa, trade),
    );
  }
  const order = { block: 0, warn: 1, note: 2 };
  return [...fired.values()].sort((a, b) => order[a.level] - order[b.level]);
}

/** True when a rule hangs on the conditioner of a programme. */
function isAboutConditioner(rule: RuleRecord): boolean {
  return factsAskedBy(rule.if).some((fact) => fact.startsWith("conditioner."));
}
