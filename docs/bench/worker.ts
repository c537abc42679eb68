/** The worker of the bench: it reads, checks, draws and writes, so that the page stays free for the hand that types. */
import { DrawcordError } from "@drawcord/base";
import { type Drawing, draw } from "./draw.js";
import type { Answer, Numbered, Question } from "./messages.js";
import { type BenchReading, pieceOf, readBench, sentenceOf } from "./reading.js";
import { shedOf } from "./shed.js";

type Send = (answer: Answer, transfer?: readonly Transferable[]) => void;

/** What lies on the bench; of a text that cannot be drawn there is no cloth. */
let last: (Partial<Drawing> & { readonly bench: BenchReading; readonly piece: number }) | undefined;

addEventListener("message", async ({ data }: MessageEvent<Numbered<Question>>) => {
  const send: Send = (answer, transfer = []) =>
    postMessage({ ...answer, id: data.id }, { transfer: [...transfer] });
  try {
    await answered(data, send);
  } catch (error) {
    // The page is not left waiting for what went wrong in a way that nobody foresaw.
    if (!(error instanceof DrawcordError)) {
      send({ answer: "refused", sentence: `this cannot be done here: ${error}` });
      throw error;
    }
    send({ answer: "refused", sentence: sentenceOf(error) });
  }
});

async function answered(question: Question, send: Send): Promise<void> {
  switch (question.ask) {
    case "look": {
      const { piece, text } = question;
      const doing = (words: string, done: number) => send({ answer: "doing", words, done, of: 3 });
      doing("reading", 0);
      const bench = await readBench(text);
      last = { bench, piece };
      if (bench.reading !== undefined) {
        doing("drawing the cloth", 1);
        last = { ...last, ...(await drawnOrNot(bench.reading, piece)) };
        if (last.drawn !== undefined) {
          const { back, face } = last.drawn.cloth;
          send({ answer: "drawn", ...last.drawn }, [face, back]);
        }
      }
      doing("checking", 2);
      // What checks is loaded while the first cloth is looked at.
      const { look } = await import("./look.js");
      return send({ answer: "looked", ...look(text, bench, piece) });
    }
    case "search":
      return (await import("./causes.js")).search(question.text, send);
    case "why": {
      const { end, pick } = question;
      return send({ answer: "why", end, pick, sentences: await why(end, pick) });
    }
    case "shed": {
      const reading = last?.bench.reading;
      if (last?.drawdown === undefined || reading?.kind !== "recipe") {
        return send({ answer: "shed", up: "", picks: [], words: "" });
      }
      const { draft } = pieceOf(reading.recipe, last.piece);
      return send({ answer: "shed", ...shedOf(draft, last.drawdown, question.step, question.handles) });
    }
    case "save": {
      send({ answer: "doing", words: "writing the file", done: 0, of: 1 });
      const file = await (await import("./save.js")).saved(question.text, question.as);
      return send({ answer: "saved", ...file }, [file.bytes.buffer]);
    }
    case "open": {
      send({ answer: "doing", words: "opening the file", done: 0, of: 1 });
      const { opened } = await import("./open.js");
      return send({ answer: "opened", text: opened(question.bytes, question.name) });
    }
  }
}

/** The cloth; nothing of one that cannot be worked out, which the check then says. */
async function drawnOrNot(...of: Parameters<typeof draw>): Promise<Partial<Drawing>> {
  try {
    return await draw(...of);
  } catch (error) {
    sentenceOf(error);
    return {};
  }
}

/** How a crossing comes about; of a cloth without two harnesses, which thread lies on top. */
async function why(end: number, pick: number): Promise<readonly string[]> {
  const reading = last?.bench.reading;
  if (last?.drawdown === undefined || reading === undefined) return [];
  const { drawdown, piece } = last;
  if (end > drawdown.columns || pick > drawdown.rows) return [];
  if (reading.kind === "recipe") {
    const { whyCrossing, whyInWords } = await import("@drawcord/lesson");
    return whyInWords(whyCrossing(pieceOf(reading.recipe, piece).draft, end, pick));
  }
  return [`End ${end} lies ${drawdown.get(pick - 1, end - 1) ? "over" : "under"} pick ${pick}.`];
}
