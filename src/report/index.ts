export * from "./card.ts";
export * from "./card-html.ts";
export * from "./card-text.ts";
export * from "./complaint-html.ts";
export * from "./complaint-text.ts";
export { activeComplaintLines, causeText, complaintHeadline, limitsText } from "./complaint-words.ts";
export * from "./figures.ts";
export type { Paper } from "./html-page.ts";
export * from "./plan-page.ts";
export * from "./plan-text.ts";
export { jarStart, wayName } from "./sentences.ts";
export { PLAIN_DOTS, plainReport } from "./report-plain.ts";
export type { PlainLine, PlainPart, PlainReport } from "./report-plain.ts";
export { commonRemarks, ownRemarks } from "./said-once.ts";
export * from "./sheet-text.ts";
export { uncertaintySentences } from "./uncertainty-words.ts";
export * from "./water-text.ts";
export * from "./wording.ts";
export { flasksHtml } from "./flasks-html.ts";
export {
  addedText,
  cloudText,
  colourText,
  liquidText,
  mediumText,
  sameContentsText,
  withStrength,
} from "./flask-looks.ts";
export { flasksJson } from "./flasks-json.ts";
export { estimatesInWords, orderInWords, sharesInWords } from "./flask-words.ts";
export { checkText, designText, flasksText } from "./flasks-text.ts";
export type { DesignOutcome } from "./flasks-text.ts";
export { flasksDrawing, flasksSvg, stateAt } from "./flask-drawing.ts";
export type { DrawingOptions } from "./flask-drawing.ts";
