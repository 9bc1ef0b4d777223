import type { BuildResult } from "../build.ts";
import { reportText } from "../report/text.ts";
import { cacheFolder, picturesIn, refusable, siteFolder, toOption } from "./build.ts";
import { type Command, contentOption, type ExitCode, type Output, WrongCall } from "./command.ts";
import { contentFolder, hasErrors, printReport } from "./content.ts";
import { type SiteServer, startServer } from "./site-server.ts";
import { untilAsked, watchContent } from "./watch.ts";

export const serve: Command = {
  name: "serve",
  summary: "builds, serves, and rebuilds and reloads when the content changes",
  usage: "[--content DIR] [--to DIR] [--port N] [--host NAME]",
  options: {
    content: contentOption,
    to: toOption,
    port: { type: "string", value: "N", help: "the port (default: 8137, or the next that is free)" },
    host: {
      type: "string",
      value: "NAME",
      help: "the address to listen on (default: localhost; 0.0.0.0 lets phones in the workshop reach it)",
    },
  },
  async run(call, output): Promise<ExitCode> {
    const content = contentFolder(call);
    const site = siteFolder(call);
    const port = readPort(call.text("port"));
    const { buildWith } = await import("../build.ts");
    const { gather } = await import("../crew/crew.ts");
    const crew = gather(content);
    // What the crew remembers is quicker than what is kept in files, and tells what it was made from.
    const { LaterShop } = await import("../pictures/later-shop.ts");
    const pictures = new LaterShop({ contentDir: content, cacheDir: picturesIn(cacheFolder()) });
    const options = { contentDir: content, siteDir: site, cacheDir: undefined, pictures, offline: false };
    const build = () => refusable(buildWith(crew, options));
    const first = await build();
    const isBuilt = report(first, output);
    const server = await startServer(site, {
      port: port ?? 8137,
      isFixed: port !== undefined,
      host: call.text("host") ?? "localhost",
      comes: (file) => pictures.waitFor(file),
    });
    const beginPictures = () =>
      pictures.begin(site, (fault) => {
        printReport({ diagnostics: [fault], texts: new Map() }, output);
        server.show(reportText([fault], new Map()));
      });
    if (isBuilt) beginPictures();
    output.out(
      `${isBuilt ? "" : "The content has errors; the page is shown once they are mended.\n"}Serving ${server.url} (Ctrl+C ends it)\n`,
    );
    if (!isBuilt) server.show(reportText(first.diagnostics, first.texts));
    const rebuild = async () => {
      const result = await build();
      if (report(result, output)) {
        beginPictures();
        server.reload();
      } else server.show(reportText(result.diagnostics, result.texts));
    };
    watchContent(content, rebuild, output.err);
    await untilStopped(server);
    return 0;
  },
};

function readPort(written: string | undefined): number | undefined {
  if (written === undefined) return undefined;
  const port = Number(written);
  if (!/^\d+$/.test(written) || port > 65535)
    throw new WrongCall(`--port ${written}: a port is a whole number up to 65535.`);
  return port;
}

/** Says how a build went; true where there is a new site. */
function report(result: BuildResult, output: Output): boolean {
  if (result.diagnostics.length > 0) printReport(result, output);
  if (hasErrors(result.diagnostics)) return false;
  output.out(`${result.summary.pages} pages in ${result.summary.ms} ms\n`);
  return true;
}

async function untilStopped(server: SiteServer): Promise<void> {
  await untilAsked();
  await server.close();
  process.exit(0);
}
