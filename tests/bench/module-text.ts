/**
 * A module of a made-up programme. Parts lie one under the other; the way in undoes them from the outside, each is
 * cleaned, and the way back refits them from the inside. Which part covers the next is left to chance, so that graphs differ.
 */
import type { Random } from "./random.ts";
import type { SheetIds } from "./sheet-text.ts";
import { machines, partNames, qualities, sentence, threads, verbs } from "./words.ts";

/** How many words a module's prose has, its headings left out. */
export const wordsPerModule = 900;

export interface ModuleText {
  readonly text: string;
  /** Ids of the steps, in the written order. */
  readonly steps: readonly string[];
}

interface StepText {
  readonly id: string;
  readonly title: string;
  readonly lines: readonly string[];
}

interface Piece {
  readonly id: string;
  readonly name: string;
  readonly screws: string;
  readonly count: number;
  readonly thread: string;
  readonly coversNext: boolean;
}

export function moduleText(number: number, ids: SheetIds, random: Random): ModuleText {
  const pieces = piecesOf(random);
  const used = {
    tool: random.pick(ids.tools),
    cleaner: random.pick(ids.tools),
    substance: random.pick(ids.substances),
    hazard: random.pick(ids.hazards),
  };
  const steps = stepsOf(pieces, used);
  const prose = proseOf(steps.length, random);
  const text = `${frontMatter(number, pieces, used, random)}
${prose[0]}
${steps.map((step, i) => stepText(step, prose[i + 1]!)).join("")}`;
  return { text, steps: steps.map(({ id }) => id) };
}

function piecesOf(random: Random): Piece[] {
  const names = new Set<string>();
  while (names.size < 6) names.add(random.pick(partNames));
  return [...names].map((name) => {
    const id = name.replaceAll(" ", "-");
    return {
      id,
      name,
      screws: `${id}-screws`,
      count: random.whole(2, 6),
      thread: random.pick(threads),
      coversNext: random.next() < 0.7,
    };
  });
}

interface Used {
  readonly tool: string;
  readonly cleaner: string;
  readonly substance: string;
  readonly hazard: string;
}

function frontMatter(
  number: number,
  pieces: readonly Piece[],
  { tool, cleaner, substance, hazard }: Used,
  random: Random,
): string {
  const parts = pieces.map(({ id, name, screws, coversNext }, i) => {
    const next = pieces[i + 1];
    return `  ${id}: {name: ${name}, held-by: [${screws}]${coversNext && next !== undefined ? `, covers: [${next.id}]` : ""}}`;
  });
  const fasteners = pieces.map(
    ({ name, screws, count, thread }, i) =>
      `  ${screws}: {name: screws of the ${name}, count: ${count}, thread: ${thread}, keep: tray ${i + 1}}`,
  );
  return `---
title: ${random.pick(verbs)} the ${random.pick(qualities)} ${random.pick(machines)}, pattern ${number + 1}
summary: ${sentence(random.pick)}
revision: 1
tools: [${[...new Set([tool, cleaner])].join(", ")}]
substances: [{use: ${substance}, amount: 50 mL, place: outdoors}]
hazards: [${hazard}]
parts:
${parts.join("\n")}
fasteners:
${fasteners.join("\n")}
state:
  power: {name: power, values: [wound, let down], starts: wound, ends: wound}
phases: {way-in: The way in, cleaning: Cleaning, way-back: The way back, proof: Proof}
practices:
  - {id: way-in, title: The way in, phase: way-in, mixed-in: [wind]}
  - {id: way-back, title: The way back, phase: way-back, mixed-in: [wind, prove]}
---
`;
}

function stepsOf(pieces: readonly Piece[], { tool, cleaner, substance, hazard }: Used): StepText[] {
  const step = (id: string, title: string, phase: string, ...lines: string[]): StepText => ({
    id,
    title,
    lines: [`phase: ${phase}`, ...lines],
  });
  const inwards = pieces.map(({ id, name, screws }, i) =>
    step(
      `${id}-off`,
      `Take off the ${name}`,
      "way-in",
      `remove: [${screws}, ${id}]`,
      `tools: [${tool}]`,
      `time: ${3 + (i % 4)} min`,
      ...(i === 0 ? ["after: {let-down: the train can run once it is open}", "critical: true"] : []),
    ),
  );
  const cleaned = pieces.map(({ id, name }, i) =>
    step(
      `${id}-clean`,
      `Clean the ${name}`,
      "cleaning",
      `work: [${id}]`,
      `tools: [${cleaner}]`,
      `substances: [${substance}]`,
      "time: 8 min",
      "feel: It moves without a catch.",
      "mistakes: [{mistake: Too much on the brush, result: It runs where it should not.}]",
      ...(i === pieces.length - 1 ? ["wait: 2 h"] : []),
    ),
  );
  const outwards = pieces
    .toReversed()
    .map(({ id, name, screws }) =>
      step(
        `${id}-on`,
        `Refit the ${name}`,
        "way-back",
        `refit: [${id}, ${screws}]`,
        `tighten: [${screws}]`,
        "time: 4 min",
        "check: Nothing binds.",
        "stop: true",
      ),
    );
  return [
    step(
      "let-down",
      "Let the power down",
      "way-in",
      "makes: {power: let down}",
      `hazards: [${hazard}]`,
      "time: 5 min",
      "critical: true",
    ),
    ...inwards,
    ...cleaned,
    ...outwards,
    step(
      "wind",
      "Wind it again",
      "proof",
      "makes: {power: wound}",
      `after: {${pieces[0]!.id}-on: it runs only when it is closed}`,
      "time: 2 min",
    ),
    step(
      "prove",
      "Let it run",
      "proof",
      "while: {power: wound}",
      `work: [${pieces[0]!.id}]`,
      "time: 10 min",
      "wait: 1 h",
    ),
  ];
}

/** The introduction and what stands under each step, of `wordsPerModule` words together. */
function proseOf(steps: number, random: Random): string[] {
  const pieces = Array.from({ length: steps + 1 }, () => [] as string[]);
  let words = 0;
  for (let i = 0; words < wordsPerModule; i++) {
    const next = sentence(random.pick)
      .split(" ")
      .slice(0, wordsPerModule - words);
    words += next.length;
    pieces[i % pieces.length]!.push(next.join(" "));
  }
  return pieces.map((sentences) => sentences.join(" ").replace(/ a (\w+) (\w+) /, " a *$1* $2 "));
}

function stepText({ id, title, lines }: StepText, prose: string): string {
  return `
## ${title}

\`\`\`yaml step
id: ${id}
${lines.join("\n")}
\`\`\`

${prose}
`;
}
