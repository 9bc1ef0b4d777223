/** A terminal as the place where questions are put. */
import { createInterface } from "node:readline";
import type { Asker } from "./ask.ts";

export interface Streams {
  readonly input: NodeJS.ReadableStream;
  readonly output: NodeJS.WritableStream;
  /** Whether the input is a person's; Ctrl+C is then heard here, and ends the questions, not the program. */
  readonly isTerminal: boolean;
}

/** What `work` makes of an asker over the streams. The input is let go of afterwards. */
export async function withAsker<Made>(
  { input, output, isTerminal }: Streams,
  work: (asker: Asker) => Promise<Made>,
): Promise<Made> {
  const lines = createInterface({ input, output, terminal: isTerminal });
  const kept: string[] = [];
  const waiting: ((line: string | undefined) => void)[] = [];
  let isOver = false;
  // Lines that come before they are asked for, as when someone pastes, are kept for the next question.
  lines.on("line", (line) => {
    const next = waiting.shift();
    if (next === undefined) kept.push(line);
    else next(line);
  });
  lines.on("SIGINT", () => lines.close());
  lines.on("close", () => {
    isOver = true;
    for (const next of waiting.splice(0)) next(undefined);
  });
  try {
    return await work({
      ask(question) {
        lines.setPrompt(question);
        const line = kept.shift();
        if (line !== undefined || isOver) return Promise.resolve(line);
        lines.prompt();
        return new Promise((answered) => waiting.push(answered));
      },
      say: (text) => void output.write(text),
    });
  } finally {
    lines.close();
  }
}
