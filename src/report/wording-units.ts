import type { Wording } from "./wording.ts";

/** Sentences for numbers, units and quantities. */
export const UNITS_WORDING: Readonly<Record<string, Wording>> = {
  "number-expected": { say: "A number belongs here.", mend: "Write a number, or leave the entry out." },
  "number-unreadable": { say: "This is not a number.", mend: "Write a number such as 12.5." },
  "number-ambiguous": {
    say: "This number can be read two ways, a thousand apart.",
    mend: "Write it without the mark.",
  },
  "number-mark-contradicts": {
    say: "The decimal mark differs from the one in use.",
    mend: "Use the same decimal mark throughout.",
  },
  "number-groups-malformed": {
    say: "The marks between groups of digits do not fit.",
    mend: "Write the number without marks between groups.",
  },
  "number-too-large": { say: "This number is too large to compute with.", mend: "Check the power of ten." },
  "number-not-positive": { say: "This must be more than zero.", mend: "Check the sign and the number." },
  "number-negative": {
    say: "This cannot be less than zero.",
    mend: "Take the minus away, or check the report.",
  },
  "limit-missing": {
    say: "Not detected, but without the detection limit.",
    mend: "Write the limit with a < in front.",
  },
  "range-reversed": { say: "The range runs from high to low.", mend: "Write the lower end first." },
  "range-not-allowed": {
    say: "One number is needed here, not a range.",
    mend: "Write the number to plan with.",
  },
  "quantity-missing": { say: "A quantity is missing.", mend: "Write a number with its unit." },
  "quantity-unreadable": {
    say: "This is not a number followed by a unit.",
    mend: "Write the number first, then the unit.",
  },
  "unit-missing": { say: "The unit is missing.", mend: "Write the unit behind the number." },
  "unit-unknown": { say: "This unit is not known.", mend: "Use one of the units named." },
  "unit-wrong-kind": {
    say: "This unit measures something else.",
    mend: "Check whether the entry is in the right place.",
  },
  "unit-ambiguous": { say: "This unit has two meanings.", mend: "Write which of the two is meant." },
  "unit-not-comparable": {
    say: "This unit belongs to another method and cannot be converted.",
    mend: "Ask the laboratory for one of the units named.",
  },
  "unit-needs-charge": {
    say: "Milliequivalents need a charge, and that of this reading is not known.",
    mend: "Give the reading in mg/L.",
  },
  "unit-basis-assumed": {
    say: "The unit does not say what it counts; the usual basis was taken.",
    mend: "Write the basis, such as “mg/L as CaCO3”.",
  },
  "unit-basis-unknown": {
    say: "This reading cannot be counted on that basis.",
    mend: "Check what the report counts it as.",
  },
  "parameter-unknown": {
    say: "No reading of a water test has this name.",
    mend: "Use one of the names known.",
  },
  "share-out-of-range": {
    say: "A share lies between 0 and 1.",
    mend: "Write 0.95 or 95 % for ninety-five in a hundred.",
  },
};
