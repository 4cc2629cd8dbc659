import type { JobDocument } from "../job/to-document.ts";
import type { EngineReply, EngineRequest, LanguageRequest } from "./messages.ts";
import { engineThread } from "./start-engine.ts";

/**
 * A second engine that gives first answers alone. The one at work on a whole plan cannot be asked while it is in the
 * middle of a step, and some steps take several times as long as a first answer: a keystroke would wait for them.
 */
export interface StandBy {
  /** @returns whether it gives the first answer: not before it has once answered, nor after it broke down */
  ask(question: { readonly id: number; readonly document: JobDocument }): boolean;
  speak(language: LanguageRequest): void;
  end(): void;
}

/**
 * Starts it. It reads all constants again, which takes as long as it did at the start of the page.
 *
 * @param listen told what it answers
 * @param language the language it speaks at first
 * @param question a question put to the first engine: with that it makes itself ready
 */
export function startStandBy(
  listen: (event: MessageEvent<unknown>) => void,
  language: LanguageRequest,
  question: { readonly id: number; readonly document: JobDocument },
): StandBy {
  const worker = engineThread();
  let isReady = false;
  const send = (request: EngineRequest): void => {
    worker.postMessage(request);
  };
  worker.onmessage = (event: MessageEvent<unknown>) => {
    const { type } = event.data as EngineReply;
    // What the form offers is known from the first engine.
    if (type === "catalogue") return;
    if (isReady) listen(event);
    isReady = true;
  };
  worker.onerror = (event) => {
    // The first engine answers without it.
    event.preventDefault();
    isReady = false;
    worker.onmessage = null;
  };
  send(language);
  send({ type: "first", id: question.id, document: question.document });
  return {
    ask: ({ id, document }) => {
      if (isReady) send({ type: "first", id, document });
      return isReady;
    },
    speak: send,
    end: () => {
      worker.terminate();
    },
  };
}
