/** Serves a folder below a path of any depth, as a plain static host does. */

import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize, sep } from "node:path";

export interface StaticServer {
  /** With a slash at its end. */
  readonly url: string;
  close(): Promise<void>;
}

const types = new Map([
  [".html", "text/html"],
  [".css", "text/css"],
  [".js", "text/javascript"],
  [".json", "application/json"],
  [".webmanifest", "application/manifest+json"],
  [".svg", "image/svg+xml"],
  [".png", "image/png"],
  [".jpg", "image/jpeg"],
  [".woff2", "font/woff2"],
  [".txt", "text/plain"],
]);

/** `path` begins and ends with a slash; what is asked for outside it is not found. */
export async function serveFolder(folder: string, path: string): Promise<StaticServer> {
  const server = createServer(async (request, response) => {
    const file = fileFor(folder, path, new URL(request.url ?? "", "http://localhost").pathname);
    const body = file === undefined ? undefined : await readFile(file).catch(() => undefined);
    response.statusCode = body === undefined ? 404 : 200;
    response.setHeader("content-type", types.get(extname(file ?? "")) ?? "application/octet-stream");
    response.end(body);
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://localhost:${port}${path}`,
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}

function fileFor(folder: string, path: string, asked: string): string | undefined {
  if (!asked.startsWith(path)) return undefined;
  const below = decodeURIComponent(asked.slice(path.length));
  const file = normalize(join(folder, below === "" || below.endsWith("/") ? `${below}index.html` : below));
  return file.startsWith(folder + sep) ? file : undefined;
}
