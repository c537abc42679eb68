import type { Answer, Numbered, Question } from "./messages.js";

/** The workers at their desk. */
export interface Desk {
  /** Asks; of questions of one kind only the last counts, and answers to those before it are let go. */
  ask(question: Question): void;
  /** Looks for the causes in a text, in place of what was looked for until now. */
  search(text: string): void;
  /** Stops looking for causes. */
  stop(): void;
  close(): void;
}

function openWorker(): Worker {
  return new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
}

/**
 * Opens the desk.
 * @param hear what to do with an answer that is still wanted
 */
export function openDesk(hear: (answer: Answer) => void): Desk {
  const worker = openWorker();
  const busy = new Map<Question["ask"], number>();
  // Of each kind one question waits while another is answered: what lies between is never asked.
  const waiting = new Map<Question["ask"], Question>();
  let count = 0;
  const send = (question: Question) => {
    busy.set(question.ask, ++count);
    worker.postMessage({ ...question, id: count });
  };
  worker.onmessage = ({ data }: MessageEvent<Numbered<Answer>>) => {
    const [ask] = [...busy].find(([, id]) => id === data.id) ?? [];
    if (ask === undefined) return;
    // The cloth comes before what is found in it.
    if (data.answer === "drawn") {
      hear(data);
      return;
    }
    busy.delete(ask);
    const next = waiting.get(ask);
    waiting.delete(ask);
    if (next !== undefined) send(next);
    // A cloth of a moment ago is still worth a look.
    if (next === undefined || data.answer === "looked") hear(data);
  };
  const searcher = openSearcher(hear);
  return {
    ask: (question) => {
      if (busy.has(question.ask)) waiting.set(question.ask, question);
      else send(question);
    },
    ...searcher,
    close: () => {
      worker.terminate();
      searcher.close();
    },
  };
}

/** A search cannot be asked to stop while it works, so its worker is ended, and another is opened when it is needed. */
function openSearcher(hear: (answer: Answer) => void): Pick<Desk, "close" | "search" | "stop"> {
  let worker: Worker | undefined;
  let isBusy = false;
  let id = 0;
  const close = () => {
    worker?.terminate();
    worker = undefined;
    isBusy = false;
  };
  const stop = () => {
    if (isBusy) close();
  };
  return {
    close,
    stop,
    search: (text) => {
      stop();
      isBusy = true;
      id++;
      worker ??= openWorker();
      worker.onmessage = ({ data }: MessageEvent<Numbered<Answer>>) => {
        if (data.id !== id) return;
        if (data.answer !== "searching") isBusy = false;
        hear(data);
      };
      worker.postMessage({ ask: "search", text, id });
    },
  };
}
