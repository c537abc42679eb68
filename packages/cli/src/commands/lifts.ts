import { soundRecipe } from "@drawcord/files";
import { handleOrder, liftWork } from "@drawcord/units";
import { toMetric } from "@drawcord/yarn";
import { chosenPiece, PIECE_OPTION } from "../chosen-piece.js";
import { defineCommand } from "../command.js";
import { input } from "../inputs.js";
import { drawnByIn, liftCsv, liftJson, liftText } from "../loom/lift-list.js";
import { onWarp } from "../loom/on-warp.js";
import { joinsPlace, parsePlace, whereabouts, whereaboutsText } from "../loom/whereabouts.js";
import { numberOption } from "../number-option.js";
import { both } from "../plan/measures.js";
import { toJson } from "../printable.js";

/** Past this many shafts their order is not weighed. */
const MOST_ORDERED = 200;

import { onlyRecipes } from "../only-recipes.js";

export const command = defineCommand({
  operands: "FILE",
  help: `Lists the lifts of a recipe for use at the loom: each row with its picks, the handles drawn, those to pull and to let go, the units they draw and what these weigh. The last row is on top, so that you weave from the bottom up; rows alike are one line. Of a recipe with blocks each line names the block that it begins, with its repeat; of one with several pieces each is listed, or the one that --piece names.

With --at it answers where you are: piece, block, repeat and row of the block, treadle, handles to draw and to let go, weft, the rows before and after, the pieces done and the warp used so far. With --piece the place is counted from the beginning of that piece, else from the first pick on the warp, through all pieces as they are woven.

The weight of a lingo is the recipe's loom: lingo-weight, or --lingo. For FILE, - is standard input.`,
  examples: [
    ["drawcord lifts runner.recipe.yaml", "prints the list"],
    ["drawcord lifts seasons.recipe.yaml --piece acorns --at 'row 43'", "says where in the acorns row 43 is"],
    ["drawcord lifts seasons.recipe.yaml --at pick 577", "says what the 577th pick on the warp is"],
    ["drawcord lifts runner.recipe.yaml --lingo 25 --format csv", "makes a table of it, with lingos of 25 g"],
  ],
  options: {
    at: {
      type: "string",
      value: "PLACE",
      joins: joinsPlace,
      help: "say what is woven there, and what comes before and after: row 143, pick 577 or 31 cm",
    },
    piece: PIECE_OPTION,
    lingo: { type: "string", value: "GRAMS", help: "the weight of one lingo in grams" },
    format: {
      type: "string",
      value: "FORMAT",
      choices: ["text", "json", "csv"],
      default: "text",
      help: "how to print the list",
    },
  },
  async run({ operands, options }, io) {
    const lingo = numberOption("lifts", "lingo", options.lingo, 100_000);
    const source = input(operands[0]!, io);
    const bytes = await source.read();
    onlyRecipes(bytes, source.name, "only recipes have lifts of pattern shafts");
    const whole = soundRecipe(bytes, source.name);
    const recipe = await chosenPiece(whole, options.piece);
    if (options.at !== undefined) {
      const asked = parsePlace(options.at);
      const { piece, nth, within } =
        options.piece === undefined
          ? onWarp(whole, asked)
          : { piece: recipe.pieces[0]!, nth: 0, within: asked };
      const place = whereabouts(whole, piece, within, nth);
      const lines =
        options.format === "json"
          ? [`${toJson({ file: source.name, ...place }, 2)}\n`]
          : whereaboutsText(place, both, drawnByIn(piece.draft));
      for (const line of lines) await io.stdout.write(line);
      return 0;
    }
    const lingoGrams = lingo ?? (recipe.loom.lingoWeight && toMetric(recipe.loom.lingoWeight).value);
    const lists = recipe.pieces.map((piece) => {
      const { lifts } = piece.draft;
      const highest = lifts.reduce((most, lift) => Math.max(most, lift.at(-1) ?? 0), 0);
      return {
        file: source.name,
        title: recipe.title,
        piece,
        isOnly: recipe.pieces.length === 1,
        work: liftWork(piece.draft, lingoGrams === undefined ? {} : { lingoGrams }),
        order: highest <= MOST_ORDERED ? handleOrder(lifts) : undefined,
      };
    });
    if (options.format === "json") {
      const pieces = lists.map((list) => liftJson(list));
      const found =
        lists.length === 1
          ? pieces[0]
          : {
              file: source.name,
              title: recipe.title,
              pieces: pieces.map(({ file: _f, title: _t, ...rest }) => rest),
            };
      await io.stdout.write(`${toJson(found, 2)}\n`);
      return 0;
    }
    for (const [i, list] of lists.entries()) {
      const text = options.format === "csv" ? liftCsv(list, i === 0) : liftText(list, io.width);
      if (i > 0 && options.format === "text") await io.stdout.write("\n");
      for (const line of text) await io.stdout.write(line);
    }
    return 0;
  },
});
