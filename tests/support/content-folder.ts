/** Content folders for tests: a small sound programme, and copies of it with one thing changed. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach } from "vitest";

export type Files = ReadonlyMap<string, string | Uint8Array>;

const picture =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><title>Box</title><path d="M1 1h8v8H1z"/></svg>\n';

const moduleText = `---
title: Open the box
summary: Take the lid off, clean the wheel, close it again.
revision: 1
tools: [driver]
substances: [{use: spirit, amount: 50 mL, place: outdoors}]
hazards: [vapour]
conditions: [springs]
parts:
  lid: {name: lid, held-by: [lid-screws], covers: [wheel]}
  wheel: {name: wheel, only-while: {brake: off}}
fasteners:
  lid-screws: {name: lid screws, count: 4, thread: 4 BA, length: 1/2 in, drive: slotted, keep: tray A}
state:
  brake: {name: brake, values: [on, off], starts: on, ends: on}
phases: {strip: Taking apart, build: Putting together}
practices:
  - {id: whole, title: The whole box, steps: [lid-off, clean, wheel-on, brake-on, lid-on]}
---

The box has a [driver](../../tools/driver.md). See [the wheel](#wheel-off).

![A box](figures/box.svg)

## Take the lid off

\`\`\`yaml step
id: lid-off
remove: [lid-screws, lid]
tools: [driver]
conditions: [springs]
time: 5 min
phase: strip
record: which way round the lid was
record-for: lid-on
\`\`\`

Prose.

## Release the brake

\`\`\`yaml step
id: brake-off
makes: {brake: off}
phase: strip
\`\`\`

## Take the wheel out

\`\`\`yaml step
id: wheel-off
remove: wheel
phase: strip
hazards: [vapour]
\`\`\`

## Clean the wheel

\`\`\`yaml step
id: clean
work: [wheel]
substances: [spirit]
hazards: [vapour]
phase: strip
wait: 1 h
\`\`\`

## Put the wheel back

\`\`\`yaml step
id: wheel-on
refit: [wheel]
phase: build
\`\`\`

## Set the brake

\`\`\`yaml step
id: brake-on
makes: {brake: on}
phase: build
\`\`\`

## Put the lid on

\`\`\`yaml step
id: lid-on
refit: [lid, lid-screws]
tighten: [lid-screws]
after: {brake-on: the brake is out of reach under the lid}
tools: [driver]
phase: build
\`\`\`

## Notes

A heading without a step.
`;

const quizText = `questions:
  - id: first
    kind: choose-one
    ask: What comes off first?
    options:
      - {text: The lid, right: true}
      - {text: The wheel, why: The lid covers it.}
    why: The lid covers the wheel.
    see: "#lid-off"
  - id: several
    kind: choose-several
    ask: What is cleaned?
    options:
      - {text: The wheel, right: true}
      - {text: The lid, why: It stays as it is.}
    why: Only the wheel is.
    see: ../../substances/spirit.md
  - id: amount
    kind: number
    ask: How much spirit?
    answer: 50 mL
    tolerance: 10 %
    why: As little as will do.
    see: "#clean"
  - id: order
    kind: arrange
    ask: Put these in order.
    steps: [lid-off, wheel-off, wheel-on, lid-on]
    why: What covers comes off first.
    see: "#lid-off"
  - id: pairs
    kind: match
    ask: What belongs to what?
    pairs:
      - {item: The lid, with: four screws}
      - {item: The wheel, with: spirit}
      - {item: The brake, with: two states}
    others:
      - {text: a spring, why: There is none.}
    why: The list of parts says so.
    see: ../../tools/driver.md
  - id: word
    kind: text
    ask: What holds the lid?
    answers: [screws, lid screws]
    slips: 1
    mistakes:
      - {text: clews, why: There are none here.}
    why: The lid has four of them.
    see: "#lid-off"
  - id: where
    kind: point
    ask: Where is the wheel?
    figure: {file: figures/box.svg, alt: The box from above}
    places:
      - {where: in the middle, circle: [50, 50, 10], right: true}
      - {where: in a corner, rectangle: [5, 5, 20, 20], why: A screw sits there.}
    why: It lies under the middle of the lid.
    see: "#wheel-off"
  - id: groups
    kind: sort
    ask: Sort these.
    groups: [Off, Stays]
    items:
      - {text: lid, group: Off}
      - {text: lid screws, group: Off}
      - {text: brake lever, group: Stays, why: It is only turned.}
      - {text: box itself, group: Stays}
    why: What is in the way comes off.
    see: "#lid-off"
  - id: advance
    kind: worked
    ask: How far do {turns} turns bring a {thread} screw out?
    sum: advance
    cases:
      - {thread: 4 BA, turns: 5}
      - {thread: M3, turns: 6}
    tolerance: 2 %
    why: One pitch a turn.
    see: "#lid-off"
`;

/** A programme without a fault or a warning. */
export const soundFiles: Files = new Map([
  [
    "programme.yaml",
    "name: Test bench\nconditions:\n  springs: {name: Springs, look-for: coils, if-unknown: Ask.}\n",
  ],
  ["tools/driver.md", "---\ntitle: Driver\nsummary: Turns screws.\ndrive: slotted\n---\n\nProse.\n"],
  [
    "substances/spirit.md",
    "---\ntitle: Spirit\nsummary: Cleans.\nuse: [cleaning]\nflammable: true\nsignal: danger\npictograms: [GHS02]\nstatements: [H226]\ndata-sheet: In the folder by the door; it decides.\nhazards: [vapour]\n---\n\nProse.\n",
  ],
  [
    "hazards/vapour.md",
    "---\ntitle: Vapour\nsummary: Burns.\nsignal: warning\nhazard: Vapour can catch fire.\nconsequence: Burns.\navoid: [Work outdoors.]\n---\n\nProse.\n",
  ],
  ["modules/box/module.md", moduleText],
  ["modules/box/quiz.yaml", quizText],
  ["modules/box/figures/box.svg", picture],
]);

/** The sound programme with `from` replaced by `to` in one file. Throws where `from` does not stand there exactly once. */
export function changed(path: string, from: string, to: string, files: Files = soundFiles): Files {
  const text = files.get(path);
  if (typeof text !== "string" || text.split(from).length !== 2)
    throw new Error(`"${from}" does not stand once in ${path}`);
  return new Map([...files, [path, text.replace(from, () => to)]]);
}

export function withFile(path: string, text: string | Uint8Array, files: Files = soundFiles): Files {
  return new Map([...files, [path, text]]);
}

export function withoutFile(path: string): Files {
  return new Map([...soundFiles].filter(([name]) => name !== path));
}

const made: string[] = [];

/** A fresh folder that goes after the test. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "benchwright-"));
  made.push(folder);
  return folder;
}

afterEach(() => {
  for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true });
});

/** Writes files to a fresh folder that goes after the test. */
export function writeFolder(files: Files): string {
  const folder = temporaryFolder();
  for (const [path, text] of files) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}
