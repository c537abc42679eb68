import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative, sep } from "node:path";

/** What stands for the folder that the site is served from until it is known where that is. */
export const BASE = "/__drawcord__/";

/** Where scripts find that folder: a page says it before anything else runs, a worker finds it by its own address. */
const FOUND = '(globalThis.drawcordBase??=new URL("..",location.href).pathname)';

/**
 * Makes a built site that can be served from any folder: in pages the addresses become relative, in scripts they begin with
 * the folder that the page says it is in.
 * @param folder the built site
 */
export function servedAnywhere(folder: string): void {
  for (const file of filesIn(folder)) {
    const path = join(folder, file);
    if (file.endsWith(".html")) writeFileSync(path, pageOf(readFileSync(path, "utf8"), file));
    else if (file.includes("localSearchIndex")) writeFileSync(path, indexOf(readFileSync(path, "utf8")));
    else if (file.endsWith(".js")) writeFileSync(path, scriptOf(readFileSync(path, "utf8")));
    else if (file.endsWith(".css"))
      writeFileSync(path, readFileSync(path, "utf8").replaceAll(`${BASE}assets/`, ""));
  }
}

/** Every file of a folder, with forward slashes. */
export function filesIn(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .sort();
}

function pageOf(html: string, file: string): string {
  const up = "../".repeat(file.split("/").length - 1) || "./";
  const says = `<script>globalThis.drawcordBase=new URL("${up}",location.href).pathname</script>`;
  return (
    html
      .replace("<head>", `<head>\n    ${says}`)
      .replace(/(__VP_SITE_DATA__=JSON\.parse\("[\s\S]*?"\))/, (data) =>
        data.replace(`\\"base\\":\\"${BASE}\\"`, '\\"base\\":\\""+globalThis.drawcordBase+"\\"'),
      )
      .replaceAll(BASE, up)
      // Where no server looks for it, the page of a folder is named.
      .replace(/(<a [^>]*?href="(?:\.{1,2}\/)+(?:[\w-]+\/)*)(?=["#])/g, "$1index.html")
      .replace(LATER, "")
  );
}

/** Scripts that are fetched when they are asked for, and are not to come before the first cloth. */
const LATER = /\n *<link rel="modulepreload" href="[^"]*chunks\/(?:editor|share|[\w-]+\.recipe)\.[^"]*">/g;

/** A text of a script that begins with the folder becomes the folder and the rest of the text. */
function scriptOf(script: string): string {
  return script
    .replaceAll(`"${BASE}"`, FOUND)
    .replaceAll(`"${BASE}`, `${FOUND}+"`)
    .replaceAll(`\`${BASE}`, `\`\${${FOUND}}`)
    .replaceAll(`'${BASE}`, `${FOUND}+'`);
}

/** The index of the search is one long text with addresses in it: it is parted where the folder stands. */
function indexOf(script: string): string {
  const [quote] = /['"`]/.exec(script)!;
  return script.replaceAll(BASE, `${quote}+${FOUND}+${quote}`);
}
