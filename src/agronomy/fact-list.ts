/** A value of a fact: a list holds names; null means not known or not said, never "no". */
export type FactValue = string | number | boolean | readonly string[] | null;

/** Facts a rule may ask for, by name (see `FACTS`). An absent key is the same as null: not known. */
export type RuleFacts = Readonly<Record<string, FactValue>>;

/** Kind of value a fact holds. */
export type FactKind = "text" | "number" | "boolean" | "list";

/** What a fact means. */
export interface FactMeaning {
  readonly kind: FactKind;
  /** Unit of a number, as written in the data; null otherwise. */
  readonly unit: string | null;
  readonly means: string;
}

function fact(kind: FactKind, unit: string | null, means: string): FactMeaning {
  return { kind, unit, means };
}

/** Every fact that rules and cautions may use: the one list of them. */
export const FACTS: Readonly<Record<string, FactMeaning>> = {
  "water.hardness_mgPerL_asCaCO3": fact("number", "mg/L as CaCO3", "calcium and magnesium of the water"),
  "water.calcium_mgPerL": fact("number", "mg/L", "calcium of the water, as the element"),
  "water.magnesium_mgPerL": fact("number", "mg/L", "magnesium of the water, as the element"),
  "water.bicarbonate_mgPerL": fact("number", "mg/L", "bicarbonate of the water, as HCO3"),
  "water.sodium_mgPerL": fact("number", "mg/L", "sodium of the water"),
  "water.iron_mgPerL": fact("number", "mg/L", "dissolved iron of the water"),
  "water.manganese_mgPerL": fact("number", "mg/L", "manganese of the water"),
  "water.pH": fact("number", null, "pH of the water as measured"),
  "water.conductivity_uSPerCm": fact("number", "µS/cm", "conductivity of the water at 25 °C"),
  "water.turbidity_NTU": fact("number", "NTU", "turbidity of the water"),
  "water.temperature_C": fact("number", "°C", "temperature of the spray water"),
  "water.treatments": fact("list", null, 'what was done to the water: "alum", "softener", "chlorinated"'),
  "active.id": fact("text", null, "active under judgement"),
  "active.form": fact("text", null, "its salt or ester; null when not stated"),
  "active.mixingGroup": fact("text", null, "mixing group of its formulation"),
  "mix.actives": fact("list", null, "ids of all actives in the tank"),
  "mix.releases": fact("list", null, "components the products bring besides the actives, e.g. NH4+"),
  "mix.mixingGroups": fact("list", null, "mixing groups of all products in the tank"),
  "mix.products": fact("number", null, "number of products in the tank"),
  "mix.feeds": fact(
    "list",
    null,
    'leaf feeds in the tank by metal: "manganese", "chelated zinc", "calcium", …',
  ),
  "mix.partners": fact("list", null, 'other partners in the tank: "lime", "mineral oil", "bleach", …'),
  "sprayer.metals": fact("list", null, 'metals the spray touches: "galvanised steel", "brass", …'),
  "conditioner.id": fact("text", null, 'conditioner of the programme; "none" when there is none'),
  "conditioner.modes": fact("list", null, "what it does: empty when there is none"),
  "conditioner.releases": fact("list", null, "components it releases: empty when there is none"),
  "conditioner.dose_gPerL": fact("number", "g/L", "its substance per litre of spray; 0 when there is none"),
  "conditioner.isDry": fact(
    "boolean",
    null,
    "true when the form bought is weighed; false when there is none",
  ),
  "tank.pH": fact("number", null, "computed pH of the tank"),
  "tank.ionicStrength_molPerL": fact("number", "mol/L", "computed ionic strength of the tank"),
  "holding.time_h": fact("number", "h", "from mixed to last sprayed"),
  "rate.active_gPerHa": fact("number", "g a.e./ha", "active per area, on the basis of its record"),
  "rate.volume_LPerHa": fact("number", "L/ha", "spray volume per area"),
  "site.airTemperature_C": fact("number", "°C", "air temperature while spraying"),
  "site.volatilityRules": fact("boolean", null, "whether rules on dicamba volatility apply here"),
};
