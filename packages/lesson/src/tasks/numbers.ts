import { toMetric } from "@drawcord/yarn";
import { boardOf } from "../board.js";
import { type Answer, sayTask, type TaskKind } from "../task.js";

/** Ends, widths and lengths of a project like the recipe's. */
export const numbersTask: TaskKind = {
  summary: "ends, widths, picks, warp and yarn, with the working",
  levels: [1, 2, 3],
  make(recipe, dice, level) {
    const { cloth, draft } = recipe;
    const unitEnds = typeof draft.unitEnds === "number" ? draft.unitEnds : draft.unitEnds[0]!;
    const perRow = typeof draft.picksPerRow === "number" ? draft.picksPerRow : draft.picksPerRow[0]!;
    const given = {
      units: dice.whole(12, 40) * 2 + 1,
      unitEnds,
      selvedge: dice.one([0, 4, 8, 12]),
      sett: Math.max(4, Math.round(cloth.sett ? toMetric(cloth.sett).value : 10) + dice.whole(-2, 2)),
      drawIn: dice.whole(3, 8),
      rows: dice.whole(20, 60) * 4,
      perRow,
      pickSett: Math.max(4, Math.round(cloth.picks ? toMetric(cloth.picks).value : 10) + dice.whole(-2, 2)),
      pieces: dice.whole(2, 6),
      takeUp: dice.whole(4, 10),
      waste: dice.whole(6, 12) * 10,
      tex: dice.one([25, 30, 37, 50, 74, 100]),
    };
    const board = boardOf();
    const answers: Answer[] = [];
    const ask = (question: string, within: string) => {
      const { result, unit } = board.steps.at(-1)!;
      answers.push({ question, answer: `${result} ${unit}`, ...(within === "" ? {} : { within }) });
    };
    const { drawIn, pickSett, pieces, rows, selvedge, sett, takeUp, tex, units, waste } = given;
    const ends = board.line(
      "ends = units × ends in a unit + ends of both selvedges",
      `${units} × ${unitEnds} + ${selvedge}`,
      units * unitEnds + selvedge,
      0,
      "ends",
    );
    ask("How many ends are there?", "");
    const wide = board.line("width in the reed = ends ÷ sett", `${ends} ÷ ${sett}`, ends / sett, 1, "cm");
    ask("How wide do they lie in the reed?", "0.1 cm");
    const stays = board.line(
      "share of the width that stays = (100 − draw-in) ÷ 100",
      `(100 − ${drawIn}) ÷ 100`,
      (100 - drawIn) / 100,
      2,
      "",
    );
    board.line(
      "width of the cloth = width in the reed × that share",
      `${wide} × ${stays}`,
      wide * stays,
      1,
      "cm",
    );
    ask("How wide is the cloth on the loom?", "0.2 cm");
    const picks = board.line(
      "picks = rows × picks in a row",
      `${rows} × ${perRow}`,
      rows * perRow,
      0,
      "picks",
    );
    ask("How many picks has a piece?", "");
    const long = board.line(
      "length woven = picks ÷ picks in a cm",
      `${picks} ÷ ${pickSett}`,
      picks / pickSett,
      1,
      "cm",
    );
    ask("How long is a piece on the loom?", "0.1 cm");
    if (level >= 2) {
      const grows = board.line(
        "warp for a length of cloth = (100 + take-up) ÷ 100",
        `(100 + ${takeUp}) ÷ 100`,
        (100 + takeUp) / 100,
        2,
        "",
      );
      const each = board.line(
        "warp of a piece = length woven × that",
        `${long} × ${grows}`,
        long * grows,
        1,
        "cm",
      );
      const warp = board.line(
        "warp = pieces × warp of a piece + loom waste",
        `${pieces} × ${each} + ${waste}`,
        pieces * each + waste,
        0,
        "cm",
      );
      ask(`How long is the warp for ${pieces} pieces?`, "2 cm");
      if (level === 3) {
        const yarn = board.line(
          "yarn = ends × warp ÷ 100",
          `${ends} × ${warp} ÷ 100`,
          (ends * warp) / 100,
          0,
          "m",
        );
        ask("How much yarn is in the warp?", "10 m");
        board.line("weight = yarn × tex ÷ 1000", `${yarn} × ${tex} ÷ 1000`, (yarn * tex) / 1000, 0, "g");
        ask("What does it weigh?", "2 g");
      }
    }
    const facts = [
      `${units} units of ${unitEnds} ends${selvedge === 0 ? "" : `, and ${selvedge} ends of selvedge, both sides together`}`,
      `${sett} ends and ${pickSett} picks in a cm, draw-in ${drawIn} %`,
      `${rows} rows of ${perRow} picks in a piece`,
      ...(level >= 2 ? [`${pieces} pieces, take-up ${takeUp} %, loom waste ${waste} cm`] : []),
      ...(level === 3 ? [`warp yarn of ${tex} tex`] : []),
    ];
    return {
      title: "The numbers of a project",
      minutes: 8 + 6 * level,
      points: answers.length * 2,
      ask: [
        sayTask(`Given are ${facts.join("; ")}.`),
        sayTask(
          "Write the working beside each answer. Round each line to the digits that you need, and go on from there.",
        ),
      ],
      answers,
      steps: board.steps,
      given,
      room: 30 + 8 * level,
    };
  },
};
