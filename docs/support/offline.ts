import { createHash } from "node:crypto";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { filesIn } from "./anywhere.js";

/**
 * Writes the service worker of a built site: it keeps every file of the site when it is first visited, serves them from there
 * ever after, and lets go of those of an older build.
 * @param folder the built site
 */
export function keptOffline(folder: string): void {
  const files = filesIn(folder).filter((file) => file !== "offline.js" && !file.endsWith(".map"));
  const hash = createHash("sha256");
  for (const file of files) hash.update(file).update(readFileSync(join(folder, file)));
  const name = `drawcord-${hash.digest("hex").slice(0, 16)}`;
  writeFileSync(join(folder, "offline.js"), worker(name, files));
}

function worker(name: string, files: readonly string[]): string {
  return `const name = ${JSON.stringify(name)};
const files = ${JSON.stringify(files)};
addEventListener("install", (event) => {
  event.waitUntil(caches.open(name).then((cache) => cache.addAll(files)).then(() => skipWaiting()));
});
addEventListener("activate", (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter((one) => one.startsWith("drawcord-") && one !== name).map((one) => caches.delete(one))))
      .then(() => clients.claim()),
  );
});
addEventListener("fetch", (event) => {
  if (event.request.method !== "GET" || !event.request.url.startsWith(registration.scope)) return;
  const url = new URL(event.request.url);
  if (url.pathname.endsWith("/")) url.pathname += "index.html";
  event.respondWith(
    caches
      .open(name)
      .then((cache) => cache.match(url.href, { ignoreSearch: true }))
      .then((kept) => kept ?? fetch(event.request)),
  );
});
`;
}
