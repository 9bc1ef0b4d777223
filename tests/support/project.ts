/** Where the project lies, and which files it has. */
import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** Absolute, without a slash at its end. */
export const projectDir = fileURLToPath(new URL("../..", import.meta.url)).replace(/[\\/]$/, "");

/** Paths of all files that are, or would be, under version control, relative to the project. */
export function projectFiles(): string[] {
  const listing = execFileSync("git", ["ls-files", "-z", "--cached", "--others", "--exclude-standard"], {
    cwd: projectDir,
    encoding: "utf8",
  });
  return listing.split("\0").filter((path) => path !== "" && existsSync(`${projectDir}/${path}`));
}
