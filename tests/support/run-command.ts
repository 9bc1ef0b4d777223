/** Runs a program to its end and keeps what it said. */
import { spawn } from "node:child_process";
import { projectDir } from "./project.ts";

export interface Ended {
  /** null where a signal ended it. */
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly stdout: string;
  readonly stderr: string;
  readonly ms: number;
}

export interface RunOptions {
  readonly cwd?: string;
  /** Added to the environment; undefined takes a variable out. */
  readonly env?: Readonly<Record<string, string | undefined>>;
  /** Milliseconds after which it is killed, with the processes that it started. */
  readonly timeout?: number;
  /** Called with what it says while it runs. */
  readonly heard?: (stream: "stdout" | "stderr", text: string) => void;
  /** Called with the process's id and a way to end it. */
  readonly started?: (child: { readonly pid: number; kill(signal: NodeJS.Signals): void }) => void;
}

/** Process groups that run now. They end with this process, whatever ends it. */
const running = new Set<number>();
process.on("exit", () => {
  for (const pid of running) killGroup(pid, "SIGKILL");
});

/** A program that can't be started rejects; whatever end it comes to otherwise is an answer. */
export function runCommand(
  command: string,
  args: readonly string[],
  options: RunOptions = {},
): Promise<Ended> {
  const began = performance.now();
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, {
      cwd: options.cwd ?? projectDir,
      env: { ...process.env, ...options.env },
      stdio: ["ignore", "pipe", "pipe"],
      // A group of its own, so that what it started ends with it.
      detached: true,
    });
    const kill = (signal: NodeJS.Signals) => killGroup(child.pid!, signal);
    const timer = options.timeout === undefined ? undefined : setTimeout(kill, options.timeout, "SIGKILL");
    const said = { stdout: "", stderr: "" };
    for (const stream of ["stdout", "stderr"] as const) {
      child[stream].setEncoding("utf8").on("data", (text: string) => {
        said[stream] += text;
        options.heard?.(stream, text);
      });
    }
    child.on("error", reject);
    child.on("close", (code, signal) => {
      clearTimeout(timer);
      running.delete(child.pid!);
      resolve({ code, signal, ...said, ms: performance.now() - began });
    });
    if (child.pid === undefined) return;
    running.add(child.pid);
    options.started?.({ pid: child.pid, kill });
  });
}

function killGroup(pid: number, signal: NodeJS.Signals): void {
  try {
    process.kill(-pid, signal);
  } catch {
    // It has ended already.
  }
}

/** A program that npm installed with the project. */
export function localBin(name: string): string {
  return `${projectDir}/node_modules/.bin/${name}`;
}

/** The tool's command line: what `node` is given to run it. */
export const toolEntry = `${projectDir}/src/cli/benchwright.js`;

/** Runs the tool's own command line. */
export function runTool(args: readonly string[], options: RunOptions = {}): Promise<Ended> {
  return runCommand(process.execPath, [toolEntry, ...args], options);
}
