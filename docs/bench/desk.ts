import type { Answer, Numbered, Question } from "./messages.js";

/** The workers at their desk. */
export interface Desk {
  /** Asks; of questions of one kind only the last counts, and answers to those before it are let go. */
  ask(question: Question): void;
  /** Lets go of all that was asked and is not answered yet. */
  halt(): void;
  /** Looks for the causes in a text, in place of what was looked for until now. */
  search(text: string): void;
  /** Stops looking for causes. */
  stop(): void;
  close(): void;
}

/** Work that is done sooner than this, in milliseconds, is not told of while it is done. */
const SOON = 300;

function openWorker(): Worker {
  return new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
}

/**
 * Opens the desk.
 * @param hear what to do with an answer that is still wanted
 * @param tell what is being done, where it takes a while; undefined when it is done
 */
export function openDesk(
  hear: (answer: Exclude<Answer, { readonly answer: "doing" }>) => void,
  tell: (doing: Extract<Answer, { readonly answer: "doing" }> | undefined) => void,
): Desk {
  const busy = new Map<Question["ask"], { readonly id: number; readonly since: number }>();
  // Of each kind one question waits while another is answered: what lies between is never asked.
  const waiting = new Map<Question["ask"], Question>();
  let count = 0;
  let telling: ReturnType<typeof setTimeout> | undefined;
  let worker = openWorker();
  worker.onmessage = listen;

  function send(question: Question): void {
    busy.set(question.ask, { id: ++count, since: performance.now() });
    worker.postMessage({ ...question, id: count });
  }

  function quiet(): void {
    clearTimeout(telling);
    tell(undefined);
  }

  function listen({ data }: MessageEvent<Numbered<Answer>>): void {
    const [ask, { since }] = [...busy].find(([, { id }]) => id === data.id) ?? [undefined, { since: 0 }];
    if (ask === undefined) return;
    if (data.answer === "doing") {
      clearTimeout(telling);
      telling = setTimeout(() => tell(data), Math.max(0, since + SOON - performance.now()));
      return;
    }
    // The cloth comes before what is found in it.
    if (data.answer === "drawn") {
      hear(data);
      return;
    }
    busy.delete(ask);
    const next = waiting.get(ask);
    waiting.delete(ask);
    if (next !== undefined) send(next);
    else if (busy.size === 0) quiet();
    // A cloth of a moment ago is still worth a look.
    if (next === undefined || data.answer === "looked") hear(data);
  }

  const searcher = openSearcher(hear);
  return {
    ask: (question) => {
      if (busy.has(question.ask)) waiting.set(question.ask, question);
      else send(question);
    },
    halt: () => {
      worker.terminate();
      worker = openWorker();
      worker.onmessage = listen;
      busy.clear();
      waiting.clear();
      quiet();
    },
    ...searcher,
    close: () => {
      quiet();
      worker.terminate();
      searcher.close();
    },
  };
}

/** A search cannot be asked to stop while it works, so its worker is ended, and another is opened when it is needed. */
function openSearcher(hear: Parameters<typeof openDesk>[0]): Pick<Desk, "close" | "search" | "stop"> {
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
        if (data.id !== id || data.answer === "doing") return;
        if (data.answer !== "searching") isBusy = data.answer === "causes" && !data.isAll;
        hear(data);
      };
      worker.postMessage({ ask: "search", text, id });
    },
  };
}
