import { DrawError } from "@drawcord/draw";
import { kindOf, ownNumbers, soundRecipe, soundWif } from "@drawcord/files";
import {
  type ClothSpot,
  type Corner,
  makeDraftSheet,
  makeSheet,
  partNames,
  type Sheet,
  SheetError,
  type SheetOptions,
} from "@drawcord/sheet";
import { YarnError } from "@drawcord/yarn";
import { chosenPiece, PIECE_OPTION } from "../chosen-piece.js";
import { defineCommand } from "../command.js";
import { CliError } from "../error.js";
import { input } from "../inputs.js";
import type { Io } from "../io.js";
import { namedOutput } from "../named-output.js";
import { onlyRecipes } from "../only-recipes.js";
import { notUsed } from "../plain/ignored.js";
import { PAPER_OPTION, PRINTED_OPTION } from "../shared-options.js";
import { sayMissingLetters } from "../sheet/missing-letters.js";
import { endingOf, sheetFiles, slideFiles } from "../sheet/sheet-files.js";
import { writeAll } from "../sheet/write-all.js";

export const command = defineCommand({
  operands: "FILE",
  help: `Writes a recipe or a draft out as a sheet to weave from, in the order in which a weaver needs it: the cloth as it will look, what to buy, the warping with its chains, one list of threading for all ends, the sley, the tie-up as it hangs, the chart, the lift card, the finishing, and whether it was checked. Further parts are there when asked for: corner (the drawdown thread by thread), sections (the cloth cut through in ground, figure and border), sticks and pick-up (the lifts for weaving without a draw, as half-heddle sticks and by counting), working (the working of every number), findings (what the checker finds) and glossary (what the terms mean). A draft (WIF) has a sheet too: the cloth, its yarns, the warping, the threading, the tie-up, the treadling card and whether it was checked, with corner and findings when asked for.

The ending of the file says the format: .html (one page that needs nothing else), .pdf, .md (with its pictures beside it), .svg or .png (a file a part).

For FILE, - is standard input.`,
  examples: [
    ["drawcord sheet runner.recipe.yaml -o runner.pdf", "prints the whole sheet on A4"],
    ["drawcord sheet runner.recipe.yaml -o lifts.pdf --part lifts", "prints the lift card alone"],
    ["drawcord sheet towel.wif -o towel.html", "writes a draft out to weave from"],
  ],
  options: {
    output: PRINTED_OPTION,
    part: {
      type: "string",
      value: "PART",
      choices: partNames,
      multiple: true,
      help: "this part alone; may be given several times",
    },
    paper: PAPER_OPTION,
    units: {
      type: "string",
      value: "UNITS",
      choices: ["metric", "imperial", "both"],
      default: "metric",
      help: "in what lengths, weights and setts are printed",
    },
    from: {
      type: "string",
      value: "SIDE",
      choices: ["right", "left"],
      default: "right",
      help: "the side at which the unit threading begins",
    },
    corner: {
      type: "string",
      value: "PLACE",
      help: "what the drawdown of the part corner shows: bottom-left, bottom-right, top-left, top-right, or a unit and a row as in 12,143 (where figure and ground meet when not given)",
    },
    piece: PIECE_OPTION,
    slides: {
      type: "boolean",
      help: "slides for a projector, one thing a slide, in one .html that steps with the arrows",
    },
    force: { type: "boolean", help: "replace files that are there" },
  },
  async run({ operands, options }, io) {
    const { part, paper, force } = options;
    const output = namedOutput("sheet", options.output, "runner.pdf");
    endingOf(output);
    const source = input(operands[0]!, io);
    const bytes = await source.read();
    const whole = await sheetOf(bytes, source.name, options.piece, io, {
      ...(part.length > 0 && { parts: part }),
      units: options.units,
      reading: options.from === "right" ? "right-to-left" : "left-to-right",
      ...(options.corner === undefined ? {} : { corner: cornerOf(options.corner) }),
    });
    const sheet = part.length === 0 ? whole : withParts(whole, part, source.name);
    await writeAll(
      options.slides ? slideFiles(sheet, output) : sheetFiles(sheet, output, { paper }),
      io,
      force,
    );
    await sayMissingLetters(sheet, output, io);
    return 0;
  },
});

const corners = ["bottom-left", "bottom-right", "top-left", "top-right"] as const;

/** @throws {CliError} `unknown-choice` for what is neither a corner nor a unit and a row */
function cornerOf(text: string): Corner | ClothSpot {
  const corner = corners.find((one) => one === text);
  if (corner !== undefined) return corner;
  const [, unit, row] = /^([1-9]\d{0,6}),([1-9]\d{0,6})$/.exec(text) ?? [];
  if (unit !== undefined) return { unit: Number(unit), row: Number(row) };
  throw new CliError(
    "unknown-choice",
    `drawcord sheet: --corner takes one of ${corners.join(", ")}, or a unit and a row as in 12,143, not "${text}"`,
    { option: "corner", value: text },
  );
}

/** The sheet of a recipe or a draft; a sheet that cannot be is told with the name of the file. */
async function sheetOf(
  bytes: Uint8Array,
  file: string,
  piece: string | undefined,
  io: Pick<Io, "stderr">,
  options: SheetOptions,
): Promise<Sheet> {
  try {
    if (kindOf(bytes) !== "wif") {
      onlyRecipes(bytes, file, "only recipes and drafts have a sheet");
      const recipe = await chosenPiece(soundRecipe(bytes, file), piece);
      return makeSheet(recipe, { ...options, own: await ownNumbers(recipe) });
    }
    if (piece !== undefined) {
      throw new CliError("unknown-piece", `${file}: this is a draft; only recipes have pieces`, { file });
    }
    const { draft, ignored } = soundWif(bytes, file);
    if (ignored.length > 0) await io.stderr.write(`${notUsed(file, ignored)}\n`);
    return makeDraftSheet(draft, options);
  } catch (error) {
    const isKnown = error instanceof SheetError || error instanceof YarnError || error instanceof DrawError;
    if (!isKnown) throw error;
    throw new CliError("no-sheet", `${file}: ${error.message}`, { file });
  }
}

function withParts(sheet: Sheet, names: readonly string[], file: string): Sheet {
  const missing = names.find((name) => sheet.parts.every((part) => part.name !== name));
  if (missing !== undefined) {
    const there = sheet.parts.map(({ name }) => name).join(", ");
    throw new CliError(
      "no-sheet",
      `${file}: the sheet of this recipe has no part "${missing}"; it has ${there}`,
      {
        file,
        part: missing,
      },
    );
  }
  return { ...sheet, parts: sheet.parts.filter(({ name }) => names.includes(name)) };
}
