/** A small server for one's own machine: static files, and a line on which pages hear of a rebuild. */
import { createReadStream, existsSync, statSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import { extname, join, normalize, sep } from "node:path";
import { workerFile } from "../model/edition.ts";
import { leavingWorker } from "./leaving-worker.ts";
import { noSite, servedScript, withScript } from "./served-page.ts";

export interface SiteServer {
  readonly url: string;
  /** Tells every open page to load anew. */
  reload(): void;
  /** Shows a report of faults on every page, those opened later too, until the next reload. */
  show(report: string): void;
  close(): Promise<void>;
}

export interface ServerOptions {
  readonly port: number;
  /** False where the next free port will do. */
  readonly isFixed: boolean;
  readonly host: string;
  /** Ends when a file of the site is there that may still be being made. */
  readonly comes?: (file: string) => Promise<void>;
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

/** Starts listening. Throws where a fixed port is taken. */
export async function startServer(site: string, options: ServerOptions): Promise<SiteServer> {
  const pages: OpenPages = { listeners: new Set(), report: undefined };
  const server = createServer((request, response) => {
    const { comes = async () => undefined } = options;
    void comes((pathOf(request) ?? "/").slice(1)).then(() => respond(site, pages, request, response));
  });
  const port = await listen(server, options);
  return {
    url: `http://${options.host === "0.0.0.0" ? "localhost" : options.host}:${port}/`,
    reload() {
      pages.report = undefined;
      for (const listener of pages.listeners) listener.write("data: changed\n\n");
    },
    show(report) {
      pages.report = report;
      for (const listener of pages.listeners) listener.write(faultsEvent(report));
    },
    close() {
      for (const listener of pages.listeners) listener.end();
      return new Promise((done) => server.close(() => done()));
    },
  };
}

interface OpenPages {
  readonly listeners: Set<ServerResponse>;
  /** What is wrong with the content now. */
  report: string | undefined;
}

const faultsEvent = (report: string): string => `event: faults\ndata: ${JSON.stringify(report)}\n\n`;

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
  pages: OpenPages,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const path = pathOf(request);
  if (path === "/_changes") return listenFor(pages, response);
  if (path === "/_reload.js") return send(response, 200, ".js", servedScript);
  if (path === `/${workerFile}`) return send(response, 200, ".js", leavingWorker);
  const file = path === undefined ? undefined : fileFor(site, path);
  if (!existsSync(join(site, "index.html"))) return send(response, 503, ".html", noSite);
  if (file === undefined) return send(response, 404, ".txt", "There is no such page.\n");
  if (extname(file) !== ".html") return stream(response, file);
  const page = await readFile(file, "utf8").catch(() => undefined);
  if (page === undefined) return send(response, 404, ".txt", "There is no such page.\n");
  send(response, 200, ".html", withScript(page));
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

function listenFor({ listeners, report }: OpenPages, response: ServerResponse): void {
  response.writeHead(200, { "content-type": "text/event-stream", "cache-control": "no-store" });
  response.write(": listening\n\n");
  if (report !== undefined) response.write(faultsEvent(report));
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
