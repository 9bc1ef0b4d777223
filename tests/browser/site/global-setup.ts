/** Before all browser tests: finds Chromium, builds the demo where that is not done, and serves it below a path. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { TestProject } from "vitest/node";
import { needChromium } from "../../support/chromium.ts";
import { projectDir } from "../../support/project.ts";
import { runTool } from "../../support/run-command.ts";
import { serveFolder } from "../../support/static-server.ts";

declare module "vitest" {
  interface ProvidedContext {
    /** Path of the browser's program. */
    chromium: string;
    /** Folder of the built demo. */
    siteDir: string;
    /** Where it is served, with a slash at its end. */
    siteUrl: string;
  }
}

export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const chromium = await needChromium(console.log);
  const temporary = await mkdtemp(join(tmpdir(), "benchwright-site-"));
  const siteDir = process.env.BENCHWRIGHT_SITE ?? (await buildDemo(join(temporary, "site")));
  const server = await serveFolder(siteDir, "/any/path/");
  project.provide("chromium", chromium);
  project.provide("siteDir", siteDir);
  project.provide("siteUrl", server.url);
  return async () => {
    await server.close();
    await rm(temporary, { recursive: true, force: true });
  };
}

async function buildDemo(to: string): Promise<string> {
  const { code, stdout, stderr } = await runTool([
    "build",
    "--content",
    join(projectDir, "content"),
    "--to",
    to,
  ]);
  if (code !== 0) throw new Error(`the demo can't be built:\n${stdout}${stderr}`);
  return to;
}
