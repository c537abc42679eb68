import type { Recipe } from "@drawcord/files";
import { toMetric } from "@drawcord/yarn";
import { type Board, boardOf } from "../board.js";
import type { Dice } from "../random.js";
import { type Answer, type Level, sayTask, type TaskKind } from "../task.js";

/** Ends, units, widths and lengths of a project like the recipe's. */
export const numbersTask: TaskKind = {
  summary: "units, ends, width, sley, picks, warp, pieces and yarn, with the working",
  make(recipe, dice, level) {
    const given = thrown(recipe, dice, level);
    const board = boardOf();
    const answers: Answer[] = [];
    const ask = (question: string, within = "") => {
      const { result, unit } = board.steps.at(-1)!;
      answers.push({ question, answer: `${result} ${unit}`, ...(within === "" ? {} : { within }) });
    };
    const { ends, long } = workCloth(given, board, ask);
    if (level >= 2) workWarp(given, { ends, long, level }, board, ask, answers);
    return {
      title: "The numbers of a project",
      minutes: 8 + 6 * level,
      points: answers.length * 2,
      ask: [
        sayTask(`Given are ${factsOf(given, level).join("; ")}.`),
        sayTask(
          "Write the working of each line: the formula, the numbers put in, the result with its unit. Round where the table says so, and go on from the rounded number.",
        ),
      ],
      answers,
      steps: board.steps,
      given,
      room: 40 - 6 * level,
    };
  },
};

type Ask = (question: string, within?: string) => void;
type Given = ReturnType<typeof thrown>;

/** Reeds by their dents in 10 cm. */
const REEDS = [40, 50, 60, 70, 80, 100];

function thrown({ cloth, draft }: Recipe, dice: Dice, level: Level) {
  const { picksPerRow, unitEnds } = draft;
  const near = cloth.sett ? toMetric(cloth.sett).value : 10;
  const sleys = REEDS.flatMap((reed) =>
    [1, 2, 3, 4].map((each) => ({ reed, each, sett: (reed * each) / 10 })),
  );
  const alike = sleys.filter(({ sett }) => Math.abs(sett - near) <= 4);
  const ofUnit = unitEnds[0]!;
  return {
    unitEnds: ofUnit,
    ends: (dice.whole(12, 40) * 2 + 1) * ofUnit,
    selvedge: dice.one([4, 8, 12]),
    ...dice.one(alike.length === 0 ? sleys : alike),
    drawIn: dice.whole(3, 8),
    rows: dice.whole(20, 60) * 4,
    perRow: picksPerRow[0]!,
    pickSett: Math.max(4, Math.round(cloth.picks ? toMetric(cloth.picks).value : 10) + dice.whole(-2, 2)),
    pieces: dice.whole(2, 6),
    takeUp: dice.whole(4, 10),
    waste: dice.whole(6, 12) * 10,
    tex: dice.one([25, 30, 37, 50, 74, 100]),
    /** Pieces that a warp at hand has room for, and what is over, in tenths of one. */
    room: level === 1 ? 0 : dice.whole(2, 7) + dice.whole(3, 7) / 10,
  };
}

function factsOf(given: Given, level: Level): readonly string[] {
  const { drawIn, ends, perRow, pickSett, pieces, reed, rows, selvedge, sett, takeUp, tex, unitEnds, waste } =
    given;
  return [
    `${ends} ends in units of ${unitEnds} ends, and ${selvedge} ends of selvedge, both sides together`,
    `${sett} ends and ${pickSett} picks in a cm, a reed of ${reed} dents in 10 cm, draw-in ${drawIn} %`,
    `${rows} rows of ${perRow} picks in a piece`,
    ...(level >= 2 ? [`${pieces} pieces, take-up ${takeUp} %, loom waste ${waste} cm`] : []),
    ...(level === 3 ? [`warp yarn of ${tex} tex`] : []),
  ];
}

/** What one piece is on the loom. */
function workCloth(given: Given, { line }: Board, ask: Ask) {
  const { drawIn, perRow, pickSett, reed, rows, selvedge, sett, unitEnds } = given;
  line({
    words: "units = ends of the units ÷ ends in a unit",
    symbols: "u = f ÷ n",
    sum: `${given.ends} ÷ ${unitEnds}`,
    value: given.ends / unitEnds,
    decimals: 0,
    unit: "units",
  });
  ask("How many units are there?");
  const ends = line({
    words: "ends = ends of the units + ends of the selvedges",
    symbols: "e = f + s",
    sum: `${given.ends} + ${selvedge}`,
    value: given.ends + selvedge,
    decimals: 0,
    unit: "ends",
  });
  ask("How many ends are there in all?");
  const inTen = line({
    words: "ends in 10 cm = ends in a cm × 10",
    symbols: "t = d × 10",
    sum: `${sett} × 10`,
    value: sett * 10,
    decimals: 0,
    unit: "ends",
  });
  line({
    words: "sley = ends in 10 cm ÷ dents in 10 cm",
    symbols: "k = t ÷ r",
    sum: `${inTen} ÷ ${reed}`,
    value: inTen / reed,
    decimals: 0,
    unit: "in a dent",
  });
  ask("How many ends go in a dent?");
  const wide = line({
    words: "width in the reed = ends ÷ ends in a cm",
    symbols: "w = e ÷ d",
    sum: `${ends} ÷ ${sett}`,
    value: ends / sett,
    decimals: 1,
    unit: "cm",
  });
  ask("How wide do they lie in the reed? (1 decimal)", "0.1 cm");
  const stays = line({
    words: "share of the width that stays = (100 − draw-in) ÷ 100",
    symbols: "q = (100 − i) ÷ 100",
    sum: `(100 − ${drawIn}) ÷ 100`,
    value: (100 - drawIn) / 100,
    decimals: 2,
    unit: "",
  });
  line({
    words: "width of the cloth = width in the reed × that share",
    symbols: "c = w × q",
    sum: `${wide.toFixed(1)} × ${stays.toFixed(2)}`,
    value: wide * stays,
    decimals: 1,
    unit: "cm",
  });
  ask("How wide is the cloth on the loom? (1 decimal)", "0.2 cm");
  const picks = line({
    words: "picks = rows × picks in a row",
    symbols: "p = r × h",
    sum: `${rows} × ${perRow}`,
    value: rows * perRow,
    decimals: 0,
    unit: "picks",
  });
  ask("How many picks has a piece?");
  const long = line({
    words: "length woven = picks ÷ picks in a cm",
    symbols: "l = p ÷ b",
    sum: `${picks} ÷ ${pickSett}`,
    value: picks / pickSett,
    decimals: 1,
    unit: "cm",
  });
  ask("How long is a piece on the loom? (1 decimal)", "0.1 cm");
  return { ends, long };
}

/** What all pieces take, and how many a warp at hand gives. */
function workWarp(
  { pieces, room, takeUp, tex, waste }: Given,
  { ends, level, long }: { readonly ends: number; readonly long: number; readonly level: Level },
  { line }: Board,
  ask: Ask,
  answers: Answer[],
): void {
  const grows = line({
    words: "warp for a length of cloth = (100 + take-up) ÷ 100",
    symbols: "g = (100 + a) ÷ 100",
    sum: `(100 + ${takeUp}) ÷ 100`,
    value: (100 + takeUp) / 100,
    decimals: 2,
    unit: "",
  });
  const each = line({
    words: "warp of a piece = length woven × that",
    symbols: "m = l × g",
    sum: `${long.toFixed(1)} × ${grows.toFixed(2)}`,
    value: long * grows,
    decimals: 1,
    unit: "cm",
  });
  const warp = line({
    words: "warp = pieces × warp of a piece + loom waste",
    symbols: "W = z × m + v",
    sum: `${pieces} × ${each.toFixed(1)} + ${waste}`,
    value: pieces * each + waste,
    decimals: 0,
    unit: "cm",
  });
  ask(`How long is the warp for ${pieces} pieces? (whole cm)`, "2 cm");
  const atHand = Math.round(room * each + waste);
  const gives = line({
    words: "pieces = (warp at hand − loom waste) ÷ warp of a piece",
    symbols: "z = (A − v) ÷ m",
    sum: `(${atHand} − ${waste}) ÷ ${each.toFixed(1)}`,
    value: (atHand - waste) / each,
    decimals: 1,
    unit: "pieces",
  });
  answers.push({
    question: `Another warp is ${atHand} cm long. How many whole pieces does it give?`,
    answer: `${Math.floor(gives)} pieces`,
  });
  if (level < 3) return;
  const yarn = line({
    words: "yarn = ends × warp ÷ 100",
    symbols: "y = e × W ÷ 100",
    sum: `${ends} × ${warp} ÷ 100`,
    value: (ends * warp) / 100,
    decimals: 0,
    unit: "m",
  });
  ask("How much yarn is in the first warp? (whole m)", "10 m");
  line({
    words: "weight = yarn × tex ÷ 1000",
    symbols: "g = y × x ÷ 1000",
    sum: `${yarn} × ${tex} ÷ 1000`,
    value: (yarn * tex) / 1000,
    decimals: 0,
    unit: "g",
  });
  ask("What does it weigh? (whole g)", "2 g");
}
