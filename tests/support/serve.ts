import { readFile } from "node:fs/promises";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join } from "node:path";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
  ".json": "application/json",
  ".ttf": "font/ttf",
  ".svg": "image/svg+xml",
};

/** A folder that is served, and where. */
export interface Served {
  readonly url: string;
  close(): Promise<void>;
}

/**
 * Serves a folder as any static server does, beneath a path of its own.
 * @param folder what is served
 * @param under the path, with a slash at both ends
 */
export async function serve(folder: string, under: string): Promise<Served> {
  const server: Server = createServer(async ({ url = "/" }, answer) => {
    const { pathname } = new URL(url, "http://here");
    const file = pathname.startsWith(under) ? decodeURIComponent(pathname.slice(under.length)) : "..";
    const path = file === "" || file.endsWith("/") ? `${file}index.html` : file;
    const bytes = path.includes("..") ? undefined : await readFile(join(folder, path)).catch(() => undefined);
    answer.writeHead(bytes === undefined ? 404 : 200, {
      "content-type": TYPES[extname(path)] ?? "application/octet-stream",
    });
    answer.end(bytes);
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${port}${under}`,
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}
