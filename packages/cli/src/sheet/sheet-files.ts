import { extname } from "node:path";
import {
  type Bound,
  type Document,
  type Part,
  partToSvg,
  pictureToSvg,
  toHtml,
  toMarkdown,
  toSlides,
} from "@drawcord/page";
import { CliError } from "../error.js";

/** How a sheet is put on paper or screen. */
export interface SheetLook {
  readonly paper: "a4" | "letter";
}

/** A file to write; its content is made when it is asked for. */
export interface SheetFile {
  readonly name: string;
  make(): Promise<string | Uint8Array>;
}

const endings = [".html", ".pdf", ".svg", ".png", ".md"] as const;

/** The ending of a file's name, which says the format. */
type Ending = (typeof endings)[number];

/**
 * The format that a file's name asks for.
 * @throws {CliError} `unknown-format`
 */
export function endingOf(name: string): Ending {
  const ending = extname(name).toLowerCase();
  const found = endings.find((known) => known === ending);
  if (found === undefined) {
    const what = ending === "" ? "no ending" : `the ending ${ending}`;
    throw new CliError("unknown-format", `${name} has ${what}; a sheet is written as ${endings.join(", ")}`, {
      file: name,
    });
  }
  return found;
}

/**
 * The files that a sheet of that name takes: one, but for Markdown, which has its pictures beside it, and for SVG and PNG of
 * several parts, which have a file a part.
 */
export function sheetFiles(sheet: Document, name: string, { paper }: SheetLook): readonly SheetFile[] {
  const ending = endingOf(name);
  if (ending === ".html") return [{ name, make: async () => toHtml(sheet, { paper }) }];
  if (ending === ".pdf") {
    return [{ name, make: async () => (await import("@drawcord/page/print")).toPdf(sheet, paper) }];
  }
  if (ending === ".md") return markdownFiles(sheet, name);
  return sheet.parts.map((part) => ({
    name: sheet.parts.length === 1 ? name : beside(name, part.name, ending),
    make: () => partPicture(sheet, part, ending),
  }));
}

/** `runner.pdf` with a word more: `runner-key.pdf`. */
export function beside(name: string, word: string, ending = extname(name)): string {
  return `${name.slice(0, name.length - extname(name).length)}-${word}${ending}`;
}

async function partPicture(
  sheet: Document,
  part: Part,
  ending: ".svg" | ".png",
): Promise<string | Uint8Array> {
  const svg = partToSvg(sheet, part);
  return ending === ".svg" ? svg : (await import("@drawcord/page/print")).toPng(svg);
}

/**
 * The file of a document, or of several, as slides.
 * @throws {CliError} `unknown-format` for a name that does not end with .html
 */
export function slideFiles(document: Document | Bound, name: string): readonly SheetFile[] {
  if (endingOf(name) === ".html") return [{ name, make: async () => toSlides(document) }];
  throw new CliError("unknown-format", `${name} cannot hold slides; they are written as .html`, {
    file: name,
  });
}

/** The files of several documents bound as one: one file, but for Markdown's pictures; SVG and PNG are no books. */
export function boundFiles(bound: Bound, name: string, { paper }: SheetLook): readonly SheetFile[] {
  const ending = endingOf(name);
  if (ending === ".html") return [{ name, make: async () => toHtml(bound, { paper }) }];
  if (ending === ".pdf") {
    return [{ name, make: async () => (await import("@drawcord/page/print")).toPdf(bound, paper) }];
  }
  if (ending === ".md") return markdownFiles(bound, name);
  throw new CliError(
    "unknown-format",
    `${name} has the ending ${ending}, which holds one sheet; a class in one file is written as .html, .pdf or .md`,
    { file: name },
  );
}

function markdownFiles(sheet: Document | Bound, name: string): readonly SheetFile[] {
  const documents = "parts" in sheet ? [sheet] : sheet;
  const pictures = documents.flatMap(({ parts }) =>
    parts.flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.kind === "pictures" ? block.pictures : [])),
    ),
  );
  const fileOf = (id: string) => beside(name, id, ".svg");
  const page = () => toMarkdown(sheet, { fileOf: ({ id }) => fileOf(id).split(/[\\/]/).at(-1)! });
  return [
    ...pictures.map((picture) => ({ name: fileOf(picture.id), make: async () => pictureToSvg(picture) })),
    { name, make: async () => page() },
  ];
}
