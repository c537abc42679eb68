import { fileURLToPath } from "node:url";
import { rules } from "@drawcord/check";
import { formulas } from "@drawcord/yarn";
import { defineConfig } from "vitepress";
import { BASE, servedAnywhere } from "../support/anywhere.js";
import { keptOffline } from "../support/offline.js";
import { practiceWritten } from "../support/practice.js";
import { madeSections } from "../support/search.js";
import typedoc from "../support/typedoc.json" with { type: "json" };
import { isWhole } from "../support/whole.js";

const NOTHING = fileURLToPath(new URL("./theme/Nothing.vue", import.meta.url));

const guide = [
  ["First cloth in ten minutes", "first-cloth"],
  ["From a picture to a cloth", "from-a-picture"],
  ["Many pieces on one warp", "many-pieces"],
  ["Ground weaves and clean cuts", "ground-weaves"],
  ["Sett and reed", "sett-and-reed"],
  ["Reading the report", "report"],
  ["From a script and in CI", "scripts"],
  ["For the class", "class"],
  ["For the app developer", "apps"],
] as const;

/** Pages of the reference: packages in the order in which they build on one another, each before its other entries. */
const PACKAGES = typedoc.packagesRequiringDocumentation
  .filter((name) => name.startsWith("@drawcord/"))
  .map((name) => name.replace("@drawcord/", ""))
  .flatMap((name) => [name, ...entriesOf(name)]);

/** The entries of a package beside its first, as their pages are called. */
function entriesOf(name: string): string[] {
  const source = `../../packages/${name}/src/`;
  return typedoc.entryPoints
    .filter((file) => file.startsWith(source))
    .map((file) => `${name}-${file.slice(source.length, -".ts".length)}`);
}

/** Pages that stand by themselves. */
const more = [
  { text: "Glossary", link: "/glossary" },
  { text: "The recipe's language", link: "/recipe-language" },
  { text: "Keys of a recipe", link: "/recipe-keys" },
  { text: "File formats", link: "/file-formats" },
  { text: "Codes of errors", link: "/codes" },
  { text: "Versions", link: "/versions" },
];

export default defineConfig({
  title: "Drawcord",
  description: "Check a drawloom recipe before the warp is wound",
  lang: "en",
  base: BASE,
  cleanUrls: false,
  lastUpdated: false,
  srcExclude: ["rules.md", "formulas.md", "node_modules/**", ...(isWhole ? [] : ["reference/**"])],
  head: [
    ["link", { rel: "icon", href: "data:," }],
    // A link that holds a recipe, and a page from a file share, are known before anything is drawn.
    [
      "script",
      {},
      'document.documentElement.classList.toggle("linked",location.hash.startsWith("#recipe="));document.documentElement.classList.toggle("opened-from-file",location.protocol==="file:")',
    ],
  ],
  // Pages of the guide, the rules and the formulas are short, and what commands print is wide.
  transformPageData: ({ relativePath }) =>
    /^(?:guide|rules|formulas|reference)\//.test(relativePath) ? { frontmatter: { aside: false } } : {},
  // A page may hold another with a head of its own; each says whose it is.
  transformHtml: (html) =>
    html
      .replace('<header class="VPNav"', '<header aria-label="the site" class="VPNav"')
      .replace('<main class="main"', '<main aria-label="the page" class="main"'),
  buildEnd: ({ outDir }) => {
    servedAnywhere(outDir);
    practiceWritten(outDir);
    keptOffline(outDir);
  },
  markdown: { theme: { light: "github-light-high-contrast", dark: "github-dark-high-contrast" } },
  vite: {
    worker: { format: "es" },
    build: { target: "es2022" },
    resolve: {
      alias: [{ find: /^\.\/(?:VPHome|VPDocAsideCarbonAds|VPSponsors)\.vue$/, replacement: NOTHING }],
    },
  },
  themeConfig: {
    nav: [
      { text: "Start", link: "/" },
      { text: "Guide", link: "/guide/first-cloth" },
      { text: "Rules", link: "/rules/" },
      { text: "Formulas", link: "/formulas/" },
      { text: "Weaves", link: "/weaves" },
      ...(isWhole ? [{ text: "Reference", link: "/reference/" }] : []),
      {
        text: "More",
        items: more,
      },
    ],
    sidebar: {
      "/": [{ text: "More", items: [{ text: "Weaves", link: "/weaves" }, ...more] }],
      "/guide/": [{ text: "Guide", items: guide.map(([text, name]) => ({ text, link: `/guide/${name}` })) }],
      "/rules/": [
        { text: "Rules", items: rules.map(({ name }) => ({ text: name, link: `/rules/${name}` })) },
      ],
      "/reference/": [
        {
          text: "Packages",
          items: PACKAGES.map((name) => ({ text: name.replace("-", "/"), link: `/reference/${name}` })),
        },
      ],
      "/formulas/": [
        {
          text: "Formulas",
          items: Object.entries(formulas).map(([id, { title }]) => ({
            text: title,
            link: `/formulas/${id}`,
          })),
        },
      ],
    },
    search: {
      provider: "local",
      options: { miniSearch: { _splitIntoSections: (file) => madeSections(file) as never } },
    },
    outline: { level: [2, 3] },
  },
});
