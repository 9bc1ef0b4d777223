/** Finds the Chromium that the browser tests drive, or installs it where that is one command. */
import { accessSync, constants, existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { runCommand } from "./run-command.ts";

const names = ["chromium", "chromium-browser", "google-chrome"];

/** Its path, from CHROMIUM_PATH or the usual places; undefined where there is none. */
export function findChromium(env: NodeJS.ProcessEnv = process.env): string | undefined {
  if (env.CHROMIUM_PATH) return runnable(env.CHROMIUM_PATH) ? env.CHROMIUM_PATH : undefined;
  const folders = ["/usr/bin", ...(env.PATH ?? "").split(delimiter)];
  return folders.flatMap((folder) => names.map((name) => join(folder, name))).find(runnable);
}

function runnable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** Finds Chromium, or installs Debian's as root. Throws with what to do where neither can be done. */
export async function needChromium(tell: (line: string) => void): Promise<string> {
  const found = findChromium();
  if (found !== undefined) return found;
  if (process.env.CHROMIUM_PATH)
    throw new Error(`CHROMIUM_PATH is no program that can be run: ${process.env.CHROMIUM_PATH}`);
  if (process.getuid?.() === 0 && existsSync("/etc/debian_version")) {
    tell("installing Chromium from Debian");
    await install();
    const installed = findChromium();
    if (installed !== undefined) return installed;
  }
  throw new Error(
    "No Chromium: install it, or set CHROMIUM_PATH to its program. The browser tests can't run without it.",
  );
}

async function install(): Promise<void> {
  const env = { DEBIAN_FRONTEND: "noninteractive" };
  for (const args of [["update"], ["install", "-y", "--no-install-recommends", "chromium"]]) {
    const { code, stdout, stderr } = await runCommand("apt-get", args, { env, timeout: 240_000 });
    if (code !== 0) throw new Error(`apt-get ${args.join(" ")} failed:\n${stdout}${stderr}`);
  }
}
