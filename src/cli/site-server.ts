/** A small server for one's own machine: static files, and a line on which pages hear of a rebuild. */
import { createReadStream, statSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import { extname, join, normalize, sep } from "node:path";

export interface SiteServer {
  readonly url: string;
  /** Tells every open page to load anew. */
  reload(): void;
  close(): Promise<void>;
}

export interface ServerOptions {
  readonly port: number;
  /** False where the next free port will do. */
  readonly isFixed: boolean;
  readonly host: string;
}

const types = new Map([
  [".html", "text/html; charset=utf-8"],
  [".css", "text/css; charset=utf-8"],
  [".js", "text/javascript; charset=utf-8"],
  [".json", "application/json; charset=utf-8"],
  [".svg", "image/svg+xml"],
  [".png", "image/png"],
  [".jpg", "image/jpeg"],
  [".jpeg", "image/jpeg"],
  [".webp", "image/webp"],
  [".gif", "image/gif"],
  [".woff2", "font/woff2"],
  [".txt", "text/plain; charset=utf-8"],
]);

/** Pages load this as a file of the site's own origin, as the policy of the pages demands. */
const reloadScript = 'new EventSource("/_changes").onmessage = () => location.reload();\n';

/** Starts listening. Throws where a fixed port is taken. */
export async function startServer(site: string, options: ServerOptions): Promise<SiteServer> {
  const listeners = new Set<ServerResponse>();
  const server = createServer((request, response) => void respond(site, listeners, request, response));
  const port = await listen(server, options);
  return {
    url: `http://${options.host === "0.0.0.0" ? "localhost" : options.host}:${port}/`,
    reload() {
      for (const listener of listeners) listener.write("data: changed\n\n");
    },
    close() {
      for (const listener of listeners) listener.end();
      return new Promise((done) => server.close(() => done()));
    },
  };
}

/** How many ports are tried after the wanted one. */
const portsTried = 20;

async function listen(server: Server, { port, isFixed, host }: ServerOptions): Promise<number> {
  for (let tried = port; ; tried++) {
    try {
      await new Promise<void>((done, fail) => {
        server.once("error", fail);
        server.listen(tried, host, () => {
          server.off("error", fail);
          done();
        });
      });
      const address = server.address();
      return typeof address === "object" && address !== null ? address.port : tried;
    } catch (cause) {
      const isTaken = (cause as NodeJS.ErrnoException).code === "EADDRINUSE";
      if (!isTaken || isFixed || tried >= port + portsTried) throw cause;
    }
  }
}

async function respond(
  site: string,
  listeners: Set<ServerResponse>,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const path = pathOf(request);
  if (path === "/_changes") return listenFor(listeners, response);
  if (path === "/_reload.js") return send(response, 200, ".js", reloadScript);
  const file = path === undefined ? undefined : fileFor(site, path);
  if (file === undefined) return send(response, 404, ".txt", "There is no such page.\n");
  if (extname(file) !== ".html") return stream(response, file);
  const page = await readFile(file, "utf8").catch(() => undefined);
  if (page === undefined) return send(response, 404, ".txt", "There is no such page.\n");
  send(response, 200, ".html", page.replace("</body>", '<script src="/_reload.js"></script></body>'));
}

function pathOf(request: IncomingMessage): string | undefined {
  try {
    return decodeURIComponent(new URL(request.url ?? "/", "http://site").pathname);
  } catch {
    return undefined;
  }
}

/** The file for a path, never one outside the site. */
function fileFor(site: string, path: string): string | undefined {
  const file = normalize(join(site, path));
  if (file !== site && !file.startsWith(site + sep) && file !== site + sep) return undefined;
  const full = path.endsWith("/") ? join(file, "index.html") : file;
  return statSync(full, { throwIfNoEntry: false })?.isFile() === true ? full : undefined;
}

function listenFor(listeners: Set<ServerResponse>, response: ServerResponse): void {
  response.writeHead(200, { "content-type": "text/event-stream", "cache-control": "no-store" });
  response.write(": listening\n\n");
  listeners.add(response);
  response.on("close", () => listeners.delete(response));
}

const headers = (extension: string) => ({
  "content-type": types.get(extension.toLowerCase()) ?? "application/octet-stream",
  "cache-control": "no-store",
  "x-content-type-options": "nosniff",
});

function send(response: ServerResponse, status: number, extension: string, body: string): void {
  response.writeHead(status, headers(extension));
  response.end(body);
}

function stream(response: ServerResponse, file: string): void {
  response.writeHead(200, headers(extname(file)));
  createReadStream(file)
    .on("error", () => response.destroy())
    .pipe(response);
}
