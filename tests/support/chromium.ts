/** Finds the Chromium that the browser tests drive, or installs it where that is one command. */
import { accessSync, constants, existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { runCommand } from "./run-command.ts";

/**
 * Debian's packages, the best first. The shell is Chromium without the windows around the page: a new context takes a fourth of
 * the time.
 */
const packages = ["chromium-headless-shell", "chromium"];

const names = [...packages, "chromium-browser", "google-chrome"];

/** Its path, from CHROMIUM_PATH or the usual places; undefined where there is none. */
export function findChromium(env: NodeJS.ProcessEnv = process.env): string | undefined {
  if (env.CHROMIUM_PATH) return runnable(env.CHROMIUM_PATH) ? env.CHROMIUM_PATH : undefined;
  const folders = ["/usr/bin", ...(env.PATH ?? "").split(delimiter)];
  return names.flatMap((name) => folders.map((folder) => join(folder, name))).find(runnable);
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

/** The first of the packages that this Debian has. */
async function install(): Promise<void> {
  const refusals = [await aptGet("update")];
  for (const name of packages) {
    const refusal = await aptGet("install", "-y", "--no-install-recommends", name);
    if (refusal === undefined) return;
    refusals.push(refusal);
  }
  throw new Error(refusals.filter(Boolean).join("\n"));
}

/** Undefined where it went well, otherwise what it said. */
async function aptGet(...args: string[]): Promise<string | undefined> {
  const env = { DEBIAN_FRONTEND: "noninteractive" };
  const { code, stdout, stderr } = await runCommand("apt-get", args, { env, timeout: 240_000 });
  return code === 0 ? undefined : `apt-get ${args.join(" ")} failed:\n${stdout}${stderr}`;
}
