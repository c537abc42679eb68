import { extname } from "node:path";
import { type Colour, DrawError, drawSvg } from "@drawcord/draw";
import {
  type ClothPictureOptions,
  coloursIn,
  drawdownIn,
  FileError,
  type Reading,
  read,
  titleIn,
  writePbm,
  writePng,
} from "@drawcord/files";
import { chosenPiece, PIECE_OPTION } from "../chosen-piece.js";
import { defineCommand } from "../command.js";
import { textDrawing } from "../drawing.js";
import { CliError } from "../error.js";
import { expandedJson } from "../expand/json.js";
import { expandedWif } from "../expand/wif.js";
import { input } from "../inputs.js";
import { numberOption } from "../number-option.js";
import { sayIgnored } from "../plain/ignored.js";
import { writeWhole } from "../write-whole.js";

const FORMATS = ["text", "pbm", "png", "svg", "wif", "json"] as const;

type Format = (typeof FORMATS)[number];

export const command = defineCommand({
  operands: "FILE",
  help: `Works a recipe out to every end and pick and draws the cloth as it looks from the face: # where the end lies over the pick, . where it lies under. The last pick is on top, as the cloth lies on the loom; end 1 is on the left.

FILE is a recipe, a plain draft (WIF), a chart of interlacements (text, PBM or PNG), or - for standard input; which it is, is known by what is in it.

As png or svg it has the colours of its threads where the draft, or each yarn of the recipe, gives them as #rrggbb and they are not all one; else the warp is black and the weft white.

As wif it is the draft for a loom with shafts alone: as many shafts as there are ends that weave differently, moved by a lift plan or by treadles. A draft that is read keeps its own shafts.

Of a recipe with several pieces all are drawn, one after another, or the one that --piece names.`,
  examples: [
    ["drawcord expand runner.recipe.yaml", "draws the runner in text"],
    [
      "drawcord expand runner.recipe.yaml --format png --scale 4 -o runner.png",
      "writes it as a picture, four pixels along each interlacement",
    ],
    [
      "drawcord expand towel.wif --format png --warp=#000000 --weft=#ffffff -o t.png",
      "draws a draft in black and white, whatever its colours",
    ],
    [
      "drawcord expand band.recipe.yaml --format wif --most-shafts 16 -o band.wif",
      "writes a draft for shafts, if 16 are enough",
    ],
  ],
  options: {
    format: {
      type: "string",
      value: "FORMAT",
      choices: FORMATS,
      help: "how to draw it; when not given, as the ending of the file says that is written, and else as text",
    },
    scale: {
      type: "string",
      value: "N",
      help: "pixels along the side of an interlacement, up to 256 (png, svg)",
    },
    warp: {
      type: "string",
      value: "COLOUR",
      help: "the colour of the warp, such as #2f4f7f; the file's own when not given, else black (png, svg)",
    },
    weft: {
      type: "string",
      value: "COLOUR",
      help: "the colour of the weft; the file's own when not given, else white (png, svg)",
    },
    shedding: {
      type: "string",
      value: "KIND",
      choices: ["lift-plan", "tie-up"],
      help: "what moves the shafts (wif)",
    },
    "most-shafts": {
      type: "string",
      value: "N",
      help: "the most shafts there may be, up to 4096; with more it takes nothing is written (wif)",
    },
    output: { type: "string", short: "o", value: "FILE", help: "write to this file, whole or not at all" },
    piece: PIECE_OPTION,
    force: { type: "boolean", help: "replace the file if there is one" },
  },
  async run({ operands, options }, io) {
    const { output } = options;
    const format = options.format ?? formatOf(output);
    onlyWith(["png", "svg"], ["scale", "warp", "weft"], { ...options, format });
    onlyWith(["wif"], ["shedding", "most-shafts"], { ...options, format });
    if ((format === "pbm" || format === "png") && output === undefined && io.isTerminal) {
      throw new CliError(
        "unwritable",
        `a ${format} picture is not for a terminal; name a file for it with -o`,
      );
    }
    const picture = pictureOptions(options);
    const means = {
      mostShafts: numberOption("expand", "most-shafts", options["most-shafts"], 4096),
      shedding: options.shedding,
    };
    const source = input(operands[0]!, io);
    const found = read(await source.read(), source.name);
    const reading = await ofPiece(found, options.piece);
    await sayIgnored(reading, source.name, io);
    const chunks = drawn(reading);
    if (output !== undefined) await writeWhole(output, io.cwd, chunks, { force: options.force });
    else for (const chunk of chunks) await io.stdout.write(chunk);
    return 0;

    function drawn(found: Reading): Iterable<string | Uint8Array> {
      switch (format) {
        case "text":
          return textDrawing(drawdownIn(found));
        case "pbm":
          return [writePbm(drawdownIn(found))];
        case "png":
          return [png(found, source.name, picture)];
        case "svg":
          return [svg(found, source.name, picture)];
        case "wif":
          return [expandedWif(found, source.name, means)];
        case "json":
          return expandedJson(found, source.name);
      }
    }
  },
});

/** The format that the ending of a file's name says; text where it says none. */
function formatOf(output: string | undefined): Format {
  const ending = extname(output ?? "")
    .slice(1)
    .toLowerCase();
  return FORMATS.find((format) => format === ending) ?? "text";
}

/** What was read, of a recipe the piece that is asked for. */
async function ofPiece(reading: Reading, piece: string | undefined): Promise<Reading> {
  if (piece === undefined) return reading;
  if (reading.kind === "recipe") return { kind: "recipe", recipe: await chosenPiece(reading.recipe, piece) };
  throw new CliError("unwanted-option", "drawcord expand: --piece goes with a recipe", { option: "piece" });
}

/** @throws {CliError} `unwanted-option` for an option that the format has no use for */
function onlyWith(
  formats: readonly string[],
  names: readonly string[],
  options: { readonly format: string } & Readonly<Record<string, unknown>>,
): void {
  const given = names.find((name) => options[name] !== undefined);
  if (given === undefined || formats.includes(options.format)) return;
  const sentence = `drawcord expand: --${given} goes with --format ${formats.join(" or ")}, not with ${options.format}`;
  throw new CliError("unwanted-option", sentence, { option: given });
}

/** What a picture is asked to look like. */
type PictureAsked = Pick<ClothPictureOptions, "scale"> & { readonly warp?: Colour; readonly weft?: Colour };

function pictureOptions(options: {
  readonly scale: string | undefined;
  readonly warp: string | undefined;
  readonly weft: string | undefined;
}): PictureAsked {
  const scale = numberOption("expand", "scale", options.scale, 256);
  return {
    ...(scale !== undefined && { scale }),
    ...(options.warp !== undefined && { warp: options.warp as Colour }),
    ...(options.weft !== undefined && { weft: options.weft as Colour }),
  };
}

/**
 * The picture with the title of the file, for those who hear it read.
 * @throws {CliError} `no-picture` for colours that cannot be
 */
function svg(reading: Reading, file: string, asked: PictureAsked): string {
  const title = titleIn(reading);
  try {
    return drawSvg(drawdownIn(reading), {
      ...coloursIn(reading),
      ...asked,
      ...(title !== undefined && { title }),
    });
  } catch (error) {
    if (!(error instanceof DrawError)) throw error;
    throw new CliError("no-picture", `drawcord expand: ${error.message}`, { file });
  }
}

/** @throws {CliError} `no-picture` for colours that cannot be, and for too large a picture */
function png(reading: Reading, file: string, asked: PictureAsked): Uint8Array {
  const drawdown = drawdownIn(reading);
  try {
    return writePng(drawdown, { ...coloursIn(reading), ...asked });
  } catch (error) {
    if (!(error instanceof FileError)) throw error;
    throw new CliError("no-picture", `drawcord expand: ${error.sentence}`, { file });
  }
}
