/** Times how long `serve` takes from a saved module to the rebuilt site. */
import { spawn } from "node:child_process";
import { once } from "node:events";
import { appendFileSync } from "node:fs";
import { createInterface } from "node:readline";
import { toolEntry } from "../support/run-command.ts";
import { moduleId } from "./generate.ts";
import { median } from "./row.ts";

/** Milliseconds, the median of three; the scratch folder holds `content` of at least three modules. */
export async function rebuildTime(scratch: string): Promise<number> {
  const args = [toolEntry, "serve", "--content", "content", "--to", "site", "--port", "0"];
  const server = spawn(process.execPath, args, { cwd: scratch, stdio: ["ignore", "pipe", "inherit"] });
  const lines = createInterface(server.stdout)[Symbol.asyncIterator]();
  try {
    await lineWith(lines, "Serving");
    const times: number[] = [];
    for (const number of [0, 1, 2]) {
      // Changes are watched for only once the line is out.
      await new Promise((resolve) => setTimeout(resolve, 500));
      const began = performance.now();
      appendFileSync(`${scratch}/content/modules/${moduleId(number)}/module.md`, "\nOne more sentence.\n");
      await lineWith(lines, " pages in ");
      times.push(performance.now() - began);
    }
    return median(times);
  } finally {
    server.kill("SIGTERM");
    await once(server, "exit");
  }
}

async function lineWith(lines: AsyncIterator<string>, text: string): Promise<void> {
  for (;;) {
    const { value, done } = await lines.next();
    if (done === true) throw new Error(`the server ended before it said "${text}"`);
    if (value.includes(text)) return;
  }
}
