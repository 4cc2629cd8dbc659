import type { Wording } from "./wording.ts";

/** Sentences for the water test and its checks. */
export const WATER_WORDING: Readonly<Record<string, Wording>> = {
  "block-expected": { say: "Keys with values belong here.", mend: "See the example jobs for the form." },
  "source-missing": {
    say: "The water has no name.",
    mend: "Name it, so that the card can say which water it is for.",
  },
  "method-missing": {
    say: "How the water was tested is not said.",
    mend: "A laboratory was taken; say strip if it was one.",
  },
  "method-unknown": { say: "This way of testing is not in the list.", mend: "Use one of the words named." },
  "iron-form-unknown": {
    say: "This form of iron is not in the list.",
    mend: "Write ferrous or ferric, or leave it out.",
  },
  "date-unreadable": { say: "This is not a day that can be read.", mend: "Write it as year-month-day." },
  "readings-missing": { say: "No reading was given.", mend: "Add at least the hardness." },
  "parameter-missing": {
    say: "This reading has no name.",
    mend: "Write what was measured, such as calcium.",
  },
  "unit-given-twice": {
    say: "The value has one unit, the unit entry another.",
    mend: "Keep the one on the report.",
  },
  "reading-negative": {
    say: "No water has less than nothing of this.",
    mend: "Write <0.05 for below the limit.",
  },
  "reading-impossible": {
    say: "No water has this value.",
    mend: "Check the number and the unit against the report.",
  },
  "reading-unusual": {
    say: "This value is far from what waters have.",
    mend: "Check the unit against the report.",
  },
  "readings-disagree": {
    say: "The same thing was reported twice, and the two differ.",
    mend: "Keep the better one.",
  },
  "hardness-against-metals": {
    say: "Hardness and the sum of calcium and magnesium do not fit.",
    mend: "Check whether calcium is in mg/L as Ca or as CaCO3.",
  },
  "hardness-below-metal": {
    say: "The hardness is less than the calcium or magnesium in it.",
    mend: "Check the units of both; one of them is wrong.",
  },
  "hardness-unknown": {
    say: "Nothing measured tells the hardness.",
    mend: "Measure hardness with a strip or a drop test.",
  },
  "alkalinity-against-hydrogen-carbonate": {
    say: "Alkalinity and bicarbonate plus carbonate do not fit.",
    mend: "Check whether the report counts as CaCO3 or as bicarbonate.",
  },
  "alkalinity-forms-impossible": {
    say: "The phenolphthalein alkalinity is above the total.",
    mend: "Check whether the two were swapped.",
  },
  "ph-against-hydrogen-carbonate": {
    say: "Bicarbonate cannot exist at so high a pH.",
    mend: "Check the pH and the bicarbonate.",
  },
  "ph-below-alkalinity": {
    say: "The pH is too low for the alkalinity.",
    mend: "Measure the pH again at the tap.",
  },
  "ph-above-alkalinity": {
    say: "The pH is too high for the alkalinity.",
    mend: "Measure the pH again at the tap.",
  },
  "iron-forms-disagree": {
    say: "Ferrous or ferric iron is more than the iron in all.",
    mend: "Check the three readings of iron.",
  },
  "iron-not-measured": {
    say: "Iron was not measured.",
    mend: "An iron strip would tell whether it matters.",
  },
  "iron-form-assumed": {
    say: "The report does not say what form the iron is in.",
    mend: "Ask the laboratory whether it is total or dissolved.",
  },
  "charge-balance-off": {
    say: "Cations and anions differ by more than the published limit.",
    mend: "An ion is missing or a unit is wrong.",
  },
  "conductivity-against-ions": {
    say: "The conductivity does not fit the ions.",
    mend: "An ion is missing, or the conductivity is in another unit.",
  },
  "dissolved-solids-against-conductivity": {
    say: "The dissolved solids do not fit the conductivity.",
    mend: "Check the units of both.",
  },
  "minor-readings-left-out": {
    say: "Some readings were not measured and are left out of the composition.",
    mend: "They seldom matter for a spray.",
  },
  "nitrite-counted-as-nitrate": {
    say: "Nitrite is counted as nitrate.",
    mend: "It makes no difference for a spray.",
  },
  "balance-closed": {
    say: "An ion was added so that the charges balance.",
    mend: "Measure sodium, chloride and sulfate for a surer figure.",
  },
  "temperature-out-of-range": {
    say: "The constants do not reach this temperature.",
    mend: "The nearest temperature they reach was used.",
  },
  "water-not-solved": {
    say: "No composition fits these readings.",
    mend: "Check the pH and the alkalinity first.",
  },
  "blend-of-waters": {
    say: "The composition is a calculated blend; what might settle was left in solution.",
    mend: "Test the blend itself.",
  },
};
