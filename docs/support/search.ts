import { join } from "node:path";

/** A part of a page as the search knows it. */
interface Section {
  readonly anchor: string;
  readonly titles: readonly string[];
  readonly text: string;
}

/** What the builder of the site knows of the pages that are made of data. */
interface Made {
  readonly srcDir: string;
  readonly dynamicRoutes: {
    readonly routes: readonly { readonly path: string; readonly content?: string }[];
  };
}

/**
 * The sections of a page that is made of data: the search reads files, and such a page has none.
 * @param file where the page would stand
 * @returns undefined for a page that is a file
 */
export function madeSections(file: string): readonly Section[] | undefined {
  const { dynamicRoutes, srcDir } = (globalThis as unknown as { readonly VITEPRESS_CONFIG: Made })
    .VITEPRESS_CONFIG;
  const content = dynamicRoutes.routes.find(({ path }) => join(srcDir, path) === file)?.content;
  return content === undefined ? undefined : sectionsOf(content);
}

/**
 * A text in Markdown by its headings, without its marks.
 * @param markdown a page
 */
function sectionsOf(markdown: string): readonly Section[] {
  const titles: string[] = [];
  return markdown
    .split(/^(?=#{1,3} )/m)
    .filter((part) => part.startsWith("#"))
    .map((part) => {
      const [, marks = "", heading = "", own] = /^(#+) (.*?)(?: \{#(.*)\})?$/m.exec(part)!;
      titles.splice(marks.length - 1, titles.length, heading);
      const text = plain(part.slice(part.indexOf("\n") + 1));
      return { anchor: own ?? slugOf(heading), titles: titles.filter((title) => title !== undefined), text };
    });
}

function plain(markdown: string): string {
  return markdown
    .replace(/<[^>]*>/g, " ")
    .replace(/\[([^\]]*)\]\([^)]*\)/g, "$1")
    .replace(/^```.*$/gm, "")
    .replace(/[`*|]/g, " ")
    .replace(/&lt;/g, "<")
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, "&")
    .replace(/\s+/g, " ")
    .trim();
}

/** The anchor that a heading gets. */
function slugOf(heading: string): string {
  return heading
    .toLowerCase()
    .replace(/[\s~`!@#$%^&*()\-_+=[\]{}|\\;:"'<>,.?/]+/g, "-")
    .replace(/^-|-$/g, "");
}
