/** Every code this layer can give, with what it means in one line. */
export const ISSUE_CODES_UNITS = {
  "number-expected": "something other than a number or a text was given where a number belongs",
  "number-unreadable": "the text is not a number",
  "number-ambiguous": "one mark with three digits after it: the number has two readings, a thousand apart",
  "number-mark-contradicts": "the decimal mark of the text is not the one said to be in use",
  "number-groups-malformed": "marks that should part groups of three digits do not",
  "number-too-large": "the number is beyond what can be computed with",
  "number-not-positive": "zero or less where only more than zero makes sense",
  "number-negative": "less than zero where that makes no sense",
  "limit-missing": "said to be not detected, without the detection limit",
  "range-reversed": "the lower end of a range is above the upper end",
  "range-not-allowed": "a range or a limit where one number is needed",
  "quantity-missing": "no quantity was given",
  "quantity-unreadable": "the text is not a number followed by a unit",
  "unit-missing": "a number without the unit it needs",
  "unit-unknown": "a unit that is not in the table",
  "unit-wrong-kind": "a unit of another kind of quantity",
  "unit-ambiguous": "a unit with two meanings",
  "unit-not-comparable": "a unit of another method, which has no conversion",
  "unit-needs-charge": "milliequivalents of something whose charge is not known",
  "unit-basis-assumed": "the unit does not say what it counts; the usual basis was taken",
  "unit-basis-unknown": "the unit counts as something this reading cannot be counted as",
  "parameter-unknown": "no such reading of a water test",
  "share-out-of-range": "a share that is not between 0 and 1",
} as const;

/** A code of `ISSUE_CODES_UNITS`. */
export type UnitsIssueCode = keyof typeof ISSUE_CODES_UNITS;
