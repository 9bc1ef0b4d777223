/** Sites in other languages, built of the German programme of the fixtures. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { projectDir } from "../../support/project.ts";
import { runTool } from "../../support/run-command.ts";
import { serveFolder } from "../../support/static-server.ts";

export const germanContent = join(projectDir, "tests/fixtures/werkstatt");

export interface BuiltSite {
  /** With a slash at its end. */
  readonly url: string;
  readonly folder: string;
  end(): Promise<void>;
}

/** Builds a content folder, which `prepare` may make first in a folder that it is given, and serves it. */
export async function builtSite(prepare: (folder: string) => string): Promise<BuiltSite> {
  const temporary = mkdtempSync(join(tmpdir(), "benchwright-language-"));
  const folder = join(temporary, "site");
  const { code, stdout, stderr } = await runTool(["build", "--content", prepare(temporary), "--to", folder]);
  if (code !== 0) throw new Error(`the site can't be built:\n${stdout}${stderr}`);
  const server = await serveFolder(folder, "/werkstatt/");
  return {
    ...{ url: server.url, folder },
    async end() {
      await server.close();
      rmSync(temporary, { recursive: true, force: true });
    },
  };
}
