/** Calls the tool's command line within this process, and keeps what it prints. */
import { run } from "../../src/cli/run.ts";

export interface Called {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

export async function callCommand(...args: readonly string[]): Promise<Called> {
  const heard = { out: "", err: "" };
  const code = await run(args, {
    out: (text) => {
      heard.out += text;
    },
    err: (text) => {
      heard.err += text;
    },
  });
  return { code, ...heard };
}
