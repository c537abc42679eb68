/** What an editor that knows YAML schemas makes of a recipe: it finds the schema by the starter's second line. */
import { existsSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { resolve } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { starterRecipe } from "@drawcord/files";
import { editorSchema } from "@drawcord/review";
import { describe, expect, it } from "vitest";
import { getLanguageService, type LanguageService, TextDocument } from "yaml-language-server";

const asked: string[] = [];

/** The language service of an editor, that reads schemas from files alone. */
function editor(): LanguageService {
  const quiet = {
    telemetry: { send: () => undefined, sendError: () => undefined, sendTrack: () => undefined },
  };
  const service = getLanguageService({
    schemaRequestService: (uri: string) => {
      asked.push(uri);
      return readFile(fileURLToPath(uri), "utf8");
    },
    workspaceContext: { resolveRelativePath: (path: string, from: string) => new URL(path, from).href },
    ...quiet,
  } as unknown as Parameters<typeof getLanguageService>[0]);
  service.configure({ completion: true, hover: true, validate: true, schemas: [] });
  return service;
}

let opened = 0;

/** A recipe in a folder that has the command installed, as an editor holds it; `|` is the place that is asked about. */
function open(text: string) {
  const at = text.indexOf("|");
  const uri = pathToFileURL(resolve("runner.recipe.yaml")).href;
  const document = TextDocument.create(uri, "yaml", ++opened, text.slice(0, at) + text.slice(at + 1));
  // The service's own declarations name two versions of one type.
  type Asked = Parameters<LanguageService["doComplete"]>[0];
  return { document: document as unknown as Asked, position: document.positionAt(at) };
}

const [first, second] = starterRecipe().split("\n");
const head = `${first}\n${second}\nrecipe: 1\n`;

describe("an editor", { timeout: 20_000 }, () => {
  const service = editor();
  const completions = async (text: string) => {
    const { document, position } = open(text);
    const { items } = await service.doComplete(document, position, false);
    return items.map(({ label }) => label);
  };

  it("finds the schema where the starter's second line says that it is", async () => {
    const path = /\$schema=(\S+)/.exec(second!)![1]!;
    expect(existsSync(resolve(path))).toBe(true);
    await completions(`${head}|`);
    expect(asked.map((uri) => fileURLToPath(uri))).toEqual([resolve(path)]);
    const shipped: unknown = JSON.parse(await readFile(resolve(path), "utf8"));
    expect(shipped).toEqual(JSON.parse(JSON.stringify(editorSchema())));
  });

  it("completes the sections of a recipe", async () => {
    const labels = await completions(`${head}|`);
    for (const key of Object.keys(editorSchema().properties!).filter((name) => name !== "recipe")) {
      expect(labels).toContain(key);
    }
  });

  it("completes the keys of a piece, and the names of rules", async () => {
    expect(await completions(`${head}pieces:\n  - name: moths\n    |`)).toEqual(
      expect.arrayContaining(["count", "length", "weft", "counterchange", "lifts"]),
    );
    expect(await completions(`${head}waive:\n  - rule: |`)).toContain("carried-weft");
  });

  it("says what a key is for", async () => {
    const { document, position } = open(`${head}pieces:\n  - na|me: moths\n    count: 4\n`);
    const hover = await service.doHover(document, position);
    expect(JSON.stringify(hover?.contents)).toContain("What it is called");
  });

  it("underlines what the schema refuses", async () => {
    const { document } = open(`${head}grounds: { weave: plain }\n|`);
    const messages = (await service.doValidation(document, false)).map(({ message }) => message);
    expect(messages.join("; ")).toContain('Missing property "ground"');
  });
});

it("the site serves the schema too", async () => {
  await expect(`${JSON.stringify(editorSchema(), null, 2)}\n`).toMatchFileSnapshot(
    "../docs/public/recipe.schema.json",
  );
});
