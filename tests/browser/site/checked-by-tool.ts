/** `record check`, as the coordinator calls it on the built site. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { runTool } from "../../support/run-command.ts";
import type { RecordSite } from "./record-site.ts";

export interface Checked {
  readonly ok: boolean;
  readonly files: readonly {
    readonly what?: string;
    readonly problems: readonly { readonly code: string; readonly message: string }[];
  }[];
}

/** The file lies beside the site, and goes with it. */
export async function checkedByTool(site: RecordSite, name: string, text: string): Promise<Checked> {
  const file = join(site.dir, "..", name);
  writeFileSync(file, text);
  const { stdout } = await runTool(["record", "check", file, "--site", site.dir, "--json"]);
  return JSON.parse(stdout) as Checked;
}
