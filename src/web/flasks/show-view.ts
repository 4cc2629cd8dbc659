import type { FlaskShow, FlaskShown } from "../../agronomy/index.ts";
import {
  addedText,
  estimatesInWords,
  flasksDrawing,
  liquidText,
  orderInWords,
  sharesInWords,
  stateAt,
} from "../../report/index.ts";
import type { Language } from "../../words/index.ts";
import type { FlaskStepView, ShowView } from "./messages.ts";

/** A demonstration as the screen shows it: every step drawn and in words, so that the screen needs no engine. */
export function showView(show: FlaskShow, language: Language): ShowView {
  const most = Math.max(...show.flasks.map(({ steps }) => steps.length));
  return {
    show,
    steps: Array.from({ length: most + 1 }, (_, step) => ({
      drawing: flasksDrawing(show, { step, id: "screen", language }).html,
      flasks: show.flasks.map((flask) => stepView(flask, step, language)),
    })),
    order: orderInWords(show, language),
    estimates: estimatesInWords(show, language),
  };
}

function stepView(flask: FlaskShown, step: number, language: Language): FlaskStepView {
  const state = stateAt(flask, step);
  return {
    flask: flask.name,
    added: step > flask.steps.length ? null : addedText(state.added, language),
    look: liquidText(state, language),
    say: state.say,
    held: Object.entries(state.heldBy).map(
      ([metal, shares]) => `${language.phrases.name(metal)}: ${sharesInWords(shares, language)}`,
    ),
    remarks: state.remarks.map(({ text }) => text),
  };
}
