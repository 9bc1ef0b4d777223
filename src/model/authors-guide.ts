/** What the page for authors shows of the schemas. Its words are English in every programme, as the fields are. */

/** A field of a file that authors write. */
export interface FieldRow {
  /** Where it stands, with ID for an id of the author's own and [] for each entry of a list: "parts.ID.held-by". */
  readonly path: string;
  readonly isRequired: boolean;
  /** What may stand there: "text", "a list of ids". */
  readonly kind: string;
  readonly description: string;
  /** The field with a value, as it is written. */
  readonly example: string;
}

export interface FieldTable {
  readonly id: string;
  readonly title: string;
  readonly fields: readonly FieldRow[];
}

/** A question of each kind, whole, as it is written in quiz.yaml. */
export interface KindExample {
  readonly kind: string;
  readonly text: string;
}

export interface AuthorsGuide {
  readonly tables: readonly FieldTable[];
  readonly questions: readonly KindExample[];
  /** Of each code that a content folder can bring about, what `check` says to an example of it. */
  readonly told: ReadonlyMap<string, string>;
}

/** A module to learn the writing of steps from. A test checks that it is sound. */
export const exampleModule = `---
title: Clean a governor
summary: Take the guard off, clean the governor, put the guard back.
revision: 1
parts:
  guard: {name: guard, held-by: [guard-screws], covers: [governor]}
  governor: {name: governor}
fasteners:
  guard-screws: {name: guard screws, count: 2, keep: tray A}
---

What the governor does, and why it is cleaned.

## Take the guard off

\`\`\`yaml step
id: guard-off
remove: [guard-screws, guard]
time: 5 min
check: the governor can be seen
\`\`\`

Turn each screw a quarter, listen, then take all out. Lift the guard straight up.

## Clean the governor

\`\`\`yaml step
id: clean
work: [governor]
time: 10 min
\`\`\`

Brush the dust away from the springs, never along them.

## Spin it by hand

\`\`\`yaml step
id: try
work: [governor]
after: {clean: dust in the springs would be pressed in}
time: 2 min
check: it runs down freely
\`\`\`

Flick it with a finger, and listen.

## Put the guard back

\`\`\`yaml step
id: guard-on
refit: [guard, guard-screws]
tighten: [guard-screws]
time: 5 min
\`\`\`

Start all screws by hand before you tighten any.
`;
