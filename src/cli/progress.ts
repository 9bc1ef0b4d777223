/** How far a build is, in one line that is written over: for a person at a terminal, and for nobody else. */
import type { Stage } from "../build.ts";
import { type PageCount, readCount } from "../render/page-count.ts";

export interface Progress {
  /** `modules` is how many there are, where that is known yet; `count` is read on until the next stage or the end. */
  tell(stage: Stage, modules?: number, count?: PageCount): void;
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

/** How often the line is written anew while pages are made, in ms. */
const beat = 100;

const number = new Intl.NumberFormat("en-GB");

/** Says nothing where the stream is no terminal. */
export function progressOn(stream: Line): Progress {
  if (stream.isTTY !== true) return { tell: () => undefined, end: () => undefined };
  let timer: NodeJS.Timeout | undefined;
  let shown = "";
  const show = (text: string): void => {
    const line = text.slice(0, (stream.columns ?? 80) - 1);
    if (line !== shown) stream.write(`${clear}${line}`);
    shown = line;
  };
  const rest = (): void => clearInterval(timer);
  return {
    tell(stage, modules, count) {
      rest();
      const doing = `${words[stage]}${modules === undefined ? "" : ` ${counted(modules, "module")}`}`;
      show(`${doing} …`);
      if (count === undefined) return;
      timer = setInterval(() => show(`${doing}${pagesWords(count)} …`), beat);
      timer.unref();
    },
    end() {
      rest();
      stream.write(clear);
    },
  };
}

function pagesWords(count: PageCount): string {
  const known = readCount(count);
  return known === undefined ? "" : `: ${number.format(known.made)} of ${counted(known.wanted, "page")}`;
}

const counted = (count: number, noun: string): string =>
  `${number.format(count)} ${noun}${count === 1 ? "" : "s"}`;

/** To the beginning of the line, and the line emptied (ECMA-48: CR, EL 2). */
const clear = "\r\u001b[2K";
