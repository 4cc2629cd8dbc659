import { ENGLISH } from "../words/index.ts";

/** Numbers in English, for reports that are in English alone. */
export const { figure, amountText, measured, inHundred, perHundred, timeText, pHText, costText } =
  ENGLISH.figures;
