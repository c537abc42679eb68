import { soundRecipe } from "@drawcord/files";
import { whyCrossing, whyDocument, whyInWords } from "@drawcord/lesson";
import { chosenPiece, PIECE_OPTION } from "../chosen-piece.js";
import { defineCommand } from "../command.js";
import { CliError } from "../error.js";
import { input } from "../inputs.js";
import { numberOption } from "../number-option.js";
import { onlyRecipes } from "../only-recipes.js";
import { toJson } from "../printable.js";
import { textOrJson } from "../shared-options.js";
import { endingOf, sheetFiles, slideFiles } from "../sheet/sheet-files.js";
import { writeAll } from "../sheet/write-all.js";
import { wrapText } from "../text.js";

export const command = defineCommand({
  operands: "FILE",
  help: `Says how one crossing of a cloth comes about: the ground shaft of the end and its unit, the row and the treadle of the pick, whether the treadle raises the end, sinks it or leaves it to the pattern harness, whether that draws it, and so which thread lies on top.

With -o the same is a page with the drawdown about the crossing and with cuts through the cloth along its pick and its end. For FILE, - is standard input.`,
  examples: [
    ["drawcord why runner.recipe.yaml --end 41 --pick 77", "says it in words"],
    ["drawcord why runner.recipe.yaml --end 41 --pick 77 -o why.pdf", "draws it too"],
    ["drawcord why seasons.recipe.yaml --piece tulips --end 41 --pick 77", "asks a piece of several"],
  ],
  options: {
    end: { type: "string", value: "END", help: "the end, from 1, the left selvedge first" },
    pick: { type: "string", value: "PICK", help: "the pick, from 1, woven first" },
    piece: { ...PIECE_OPTION, help: "the piece that is asked about, by its name; the first if left out" },
    output: {
      type: "string",
      short: "o",
      value: "FILE",
      help: "a page to write; its ending says the format: .html, .pdf, .md, .svg or .png",
    },
    format: textOrJson("how to print it"),
    slides: {
      type: "boolean",
      help: "slides for a projector, one thing a slide, in one .html that steps with the arrows",
    },
    force: { type: "boolean", help: "replace files that are there" },
  },
  async run({ operands, options }, io) {
    const { force, format, output, slides } = options;
    const end = numberOption("why", "end", options.end, 1_000_000);
    const pick = numberOption("why", "pick", options.pick, 10_000_000);
    if (end === undefined || pick === undefined) {
      const option = end === undefined ? "end" : "pick";
      throw new CliError("missing-value", `drawcord why: name the crossing, as in --end 41 --pick 77`, {
        option,
      });
    }
    if (output !== undefined) endingOf(output);
    const source = input(operands[0]!, io);
    const bytes = await source.read();
    onlyRecipes(bytes, source.name, "only recipes have two harnesses to ask about");
    const { draft } = await chosenPiece(soundRecipe(bytes, source.name), options.piece);
    const crossing = whyCrossing(draft, end, pick);
    if (output !== undefined) {
      const document = whyDocument(draft, end, pick);
      const files = slides ? slideFiles(document, output) : sheetFiles(document, output, { paper: "a4" });
      await writeAll(files, io, force);
      return 0;
    }
    if (format === "json") {
      await io.stdout.write(`${toJson(crossing, 2)}\n`);
      return 0;
    }
    for (const sentence of whyInWords(crossing)) {
      await io.stdout.write(`${wrapText(sentence, Math.min(io.width, 80)).join("\n")}\n`);
    }
    return 0;
  },
});
