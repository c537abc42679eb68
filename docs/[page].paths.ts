import { codesPage } from "./support/codes-page.js";
import { keysPage } from "./support/keys-page.js";
import { weavesPage } from "./support/weaves-page.js";

/** The pages that are made of what the packages know. */
export default {
  paths: () => [
    { params: { page: "codes" }, content: codesPage() },
    { params: { page: "recipe-keys" }, content: keysPage() },
    { params: { page: "weaves" }, content: weavesPage() },
  ],
};
