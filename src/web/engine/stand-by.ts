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

/** No question has this number: nobody waits for its answer. */
const PRACTICE = -1;
/**
 * How often the first question is answered for practice: code is slow until it was compiled, which takes some answers.
 * On one machine they took 290, 50, 30 and then 20 ms.
 */
const PRACTICES = 6;

/**
 * Starts it. It reads all constants again, which takes as long as it did at the start of the page.
 *
 * @param listen told what it answers
 * @param language the language it speaks at first
 * @param question a question put to the first engine: with that it practises
 */
export function startStandBy(
  listen: (event: MessageEvent<unknown>) => void,
  language: LanguageRequest,
  question: { readonly id: number; readonly document: JobDocument },
): StandBy {
  const worker = engineThread();
  let practised = 0;
  const send = (request: EngineRequest): void => {
    worker.postMessage(request);
  };
  const practise = (): void => {
    send({ type: "first", id: PRACTICE, document: question.document });
  };
  worker.onmessage = (event: MessageEvent<unknown>) => {
    const reply = event.data as EngineReply;
    // What the form offers is known from the first engine.
    if (reply.type === "catalogue") return;
    if (!("id" in reply) || reply.id !== PRACTICE) {
      listen(event);
      return;
    }
    practised += 1;
    if (practised < PRACTICES) practise();
  };
  worker.onerror = (event) => {
    // The first engine answers without it.
    event.preventDefault();
    practised = 0;
    worker.onmessage = null;
  };
  send(language);
  practise();
  return {
    ask: ({ id, document }) => {
      const isReady = practised > 0;
      if (isReady) send({ type: "first", id, document });
      return isReady;
    },
    speak: send,
    end: () => {
      worker.terminate();
    },
  };
}
