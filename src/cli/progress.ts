/** How far a build is, in one line that is written over: for a person at a terminal, and for nobody else. */
import type { Stage } from "../build.ts";

export interface Progress {
  /** `modules` is how many there are, where that is known yet. */
  tell(stage: Stage, modules?: number): void;
  /** Takes the line away. */
  end(): void;
}

/** Where a line can be written over. */
export interface Line {
  readonly isTTY?: boolean;
  readonly columns?: number;
  write(text: string): unknown;
}

const words: Readonly<Record<Stage, string>> = {
  reading: "Reading",
  checking: "Checking",
  writing: "Writing",
};

/** Says nothing where the stream is no terminal. */
export function progressOn(stream: Line): Progress {
  if (stream.isTTY !== true) return { tell: () => undefined, end: () => undefined };
  return {
    tell(stage, modules) {
      const count =
        modules === undefined
          ? ""
          : ` ${new Intl.NumberFormat("en-GB").format(modules)} module${modules === 1 ? "" : "s"}`;
      stream.write(`${clear}${`${words[stage]}${count} …`.slice(0, (stream.columns ?? 80) - 1)}`);
    },
    end: () => void stream.write(clear),
  };
}

/** To the beginning of the line, and the line emptied (ECMA-48: CR, EL 2). */
const clear = "\r\u001b[2K";
