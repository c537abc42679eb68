import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import { extname, join } from "node:path";
import { gzipSync } from "node:zlib";

/** @type {Readonly<Record<string, string>>} */
const TYPES = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
  ".json": "application/json",
  ".ttf": "font/ttf",
  ".svg": "image/svg+xml",
};

/**
 * Serves a folder as any static server does, beneath a path of its own.
 * @param {string} folder what is served
 * @param {string} under the path, with a slash at both ends
 * @param {{ readonly packed?: boolean }} [options] `packed` sends files compressed, as servers in the open do
 * @returns {Promise<{ readonly url: string, close(): Promise<void> }>} where it is served
 */
export async function serve(folder, under, { packed = false } = {}) {
  /** @type {Map<string, Buffer>} */
  const kept = new Map();
  const server = createServer(async ({ url = "/" }, answer) => {
    const { pathname } = new URL(url, "http://here");
    const file = pathname.startsWith(under) ? decodeURIComponent(pathname.slice(under.length)) : "..";
    const path = file === "" || file.endsWith("/") ? `${file}index.html` : file;
    const bytes = path.includes("..") ? undefined : await readFile(join(folder, path)).catch(() => undefined);
    const isPacked = packed && bytes !== undefined;
    const sent = isPacked ? (kept.get(path) ?? gzipSync(bytes)) : bytes;
    if (isPacked && sent !== undefined) kept.set(path, sent);
    answer.writeHead(bytes === undefined ? 404 : 200, {
      "content-type": TYPES[extname(path)] ?? "application/octet-stream",
      ...(isPacked && { "content-encoding": "gzip" }),
    });
    answer.end(sent);
  });
  await new Promise((resolve) => server.listen(0, "127.0.0.1", () => resolve(undefined)));
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("the server has no port");
  return {
    url: `http://127.0.0.1:${address.port}${under}`,
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}
