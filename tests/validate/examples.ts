/** For every code of the catalogue, the sound programme with one thing wrong, and the place where that is reported. */
import type { Code } from "../../src/model/codes.ts";
import { changed, type Files, withFile, withoutFile } from "../support/content-folder.ts";
import { twoModules } from "../support/two-modules.ts";
import { recordExamples } from "./record-examples.ts";

export interface Example {
  readonly code: Code;
  readonly files: Files;
  readonly file: string;
  /** What stands at the place reported; "" for the beginning of a file. */
  readonly at: string;
  /** What the message must say. */
  readonly says?: string;
}

const module = "modules/box/module.md";
const strip = "modules/strip/module.md";
const quiz = "modules/box/quiz.yaml";
const tool = "tools/driver.md";
const programme = "programme.yaml";

const inModule = (code: Code, from: string, to: string, at: string, says?: string): Example =>
  example(code, module, from, to, at, says);
const inQuiz = (code: Code, from: string, to: string, at: string, says?: string): Example =>
  example(code, quiz, from, to, at, says);

function example(code: Code, file: string, from: string, to: string, at: string, says?: string): Example {
  return { code, files: changed(file, from, to), file, at, ...(says === undefined ? {} : { says }) };
}

const whole = (code: Code, file: string, text: string | Uint8Array, at = ""): Example => ({
  code,
  files: withFile(file, text),
  file,
  at,
});

/** What the sound module asks for under practices:, to be put in another way. */
const wholePractice =
  "{id: whole, title: The whole box, steps: [lid-off, clean, wheel-on, brake-on, lid-on]}";

/** The lid covers two nuts as well. */
const nutsUnderLid = changed(
  module,
  "fasteners:\n",
  "fasteners:\n  nuts: {name: nuts, count: 2}\n",
  changed(module, "covers: [wheel]", "covers: [wheel, nuts]"),
);

const longPractice =
  "{id: p, title: P, steps: [lid-off, brake-off, wheel-off, clean, wheel-on, brake-on, lid-on, sweep, dust]}";

/** A figure with one item reference, which may be followed by others. */
const numbered = (of: string, at: string): string =>
  `figure: {file: figures/box.svg, alt: A box, items: {1: {of: ${of}, at: [${at}]}}}\n`;

const svgSpace = "http://www.w3.org/2000/svg";

/** PNG, ISO/IEC 15948, 5.2 and 11.2.2: a head that says 30,000 by 30,000 pixels, and the data of 10 by 10. */
const hugePicture = Buffer.from(
  "iVBORw0KGgoAAAANSUhEUgAAdTAAAHUwCAIAAAACUFjqAAAACXBIWXMAAAPoAAAD6AG1e1JrAAAAEUlEQVQYlWP4jxcwjEr/xwIA+h4q5HxTIAQAAAAASUVORK5CYII=",
  "base64",
);

/** The lid screws with a figure of torque that has its source. */
function torqued(
  code: Code,
  thread: string,
  torque: string,
  more: string,
  at: string,
  says: string,
): Example {
  const fields = [`torque: ${torque}`, "torque-source: the maker", ...(more === "" ? [] : [more])];
  const files = changed(
    module,
    "thread: 4 BA",
    thread,
    changed(module, "keep: tray A}", `keep: tray A, ${fields.join(", ")}}`),
  );
  return { code, files, file: module, at, says };
}

/** The lid screws without a figure of torque. */
const screws = (code: Code, more: string, at: string, says: string): Example =>
  inModule(code, "keep: tray A}", `keep: tray A, ${more}}`, at, says);

/** Spirit taken at the bench by a step that names no hazard, with figures of its own; `step` is added to that step. */
function unguarded(amount: string, air: string, says: string, step = "", room = ""): Example {
  const files = changed(
    module,
    "substances: [spirit]\nhazards: [vapour]",
    `substances: [spirit]${step}`,
    changed(
      module,
      "amount: 50 mL, place: outdoors",
      `${amount}place: at the bench`,
      changed(
        "substances/spirit.md",
        "data-sheet:",
        `air: {${air}, source: a data sheet}\ndata-sheet:`,
        changed(programme, "name: Test bench\n", `name: Test bench\n${room}`),
      ),
    ),
  );
  return { code: "vapour-unguarded", files, file: module, at: `spirit]${step}\nphase`, says };
}

const spiritAir = "molar-mass: 128, gravity: 0.78, lower-limit: 0.8 %";

/** The hazard's sheet with another signal word and other ways to avoid it. */
const avoided = (code: Code, signal: string, avoid: string, at: string, says: string): Example => ({
  code,
  files: changed(
    "hazards/vapour.md",
    "avoid: [Work outdoors.]",
    `avoid: ${avoid}`,
    changed("hazards/vapour.md", "signal: warning", `signal: ${signal}`),
  ),
  file: "hazards/vapour.md",
  at,
  says,
});

/** The sound module with two steps more, bound to nothing. */
const nineSteps = changed(
  module,
  "A heading without a step.",
  ["sweep", "dust"].map((id) => `## ${id}\n\n\`\`\`yaml step\nid: ${id}\n\`\`\`\n\n`).join(""),
);

/** The sound programme with oil, one thing changed, and where `oiled` says the wheel oiled there, with `taken`. */
function withOil(
  code: Code,
  from: string,
  to: string,
  at: string,
  says: string,
  oiled?: string,
  taken = "oil",
): Example {
  const oil = withFile(
    "substances/oil.md",
    "---\ntitle: Oil\nsummary: Oils.\nuse: [lubricating]\nflammable: false\nsignal: none\ndata-sheet: By the door.\n---\n",
  );
  const known = changed(module, "[{use: spirit,", "[{use: oil}, {use: spirit,", oil);
  const done =
    oiled === undefined
      ? known
      : changed(module, oiled, `${oiled}work: [wheel]\nsubstances: [${taken}]\n`, known);
  return { code, files: changed(module, from, to, done), file: module, at, says };
}

/** A module that lists, and hands on, one thing more. */
const handing = changed(
  strip,
  "  wheel: {name: wheel}",
  "  wheel: {name: wheel}\n  works: {name: works}",
  twoModules,
);

/** A stop once the wheel is out, where the lid is off with its screws and the brake is off. */
const stopped = (from: string, to: string, says: string): Example => ({
  code: "unsafe-stop",
  files: changed(module, "wait: 1 h", "wait: 1 h\nstop: true", changed(module, from, to)),
  file: module,
  at: "stop: true",
  says,
});

export const examples: readonly Example[] = [
  // Reading files
  whole("not-utf8", tool, new Uint8Array([0x2d, 0x2d, 0x2d, 0x0a, 0xff, 0xfe])),
  whole("too-large", tool, "x".repeat(1024 * 1024 + 1)),
  inModule("leaves-content", "../../tools/driver.md", "../../../tools/driver.md", "../../../tools/driver.md"),
  inModule("leaves-content", "figures/box.svg", "../../../box.svg", "../../../box.svg"),
  whole("stray-file", "notes.txt", "a note"),
  {
    code: "folder-without-module",
    files: withFile("modules/case/figures/case.svg", "<svg/>"),
    file: "modules/case",
    at: "",
  },
  whole("bad-id", "tools/Driver_2.md", "---\ntitle: Driver\nsummary: Turns.\n---\n"),
  inModule("bad-id", "  lid: {name", "  Lid: {name: lid}\n  lid: {name", "Lid:"),
  // YAML
  whole("front-matter-missing", tool, "# Driver\n"),
  whole("front-matter-missing", tool, "---\ntitle: Driver\n"),
  whole("front-matter-language", tool, "---js\n{title: process.exit(7)}\n---\n"),
  whole("front-matter-language", tool, "---json\n{}\n---\n"),
  example("front-matter-yaml", tool, "title: Driver", "title: [Driver", "[Driver", "Close it with ]"),
  inModule("step-yaml", "id: brake-off\n", "id: brake-off\n  oops: x\n", "oops: x", "same column"),
  example("file-yaml", programme, "name: Test bench", "name: [a\nplace: b", "[a", "bracket [ is not closed"),
  inModule(
    "step-yaml",
    "remove: [lid-screws, lid]",
    "remove: [lid-screws, lid",
    "[lid-screws, lid\n",
    "Close it with ]",
  ),
  inModule(
    "step-yaml",
    "record: which way round the lid was",
    "record: mind: which way round",
    "mind: which",
    "in quotes",
  ),
  inModule(
    "step-yaml",
    "time: 5 min\nphase: strip",
    "time: 5 min\ntime: 6 min\nphase: strip",
    "time: 6",
    '"time" stands here a second time',
  ),
  inModule("step-yaml", "record: which way", "record:\n\t- which way", "\t- which", "Use spaces"),
  inModule("step-yaml", "id: clean\n", "id: clean\ncheck: 'it's clean\n", "s clean", "double ones"),
  inModule("step-yaml", "id: clean\n", 'id: clean\ncheck: "it is clean\n', '"it is clean', "not closed"),
  inModule("step-yaml", "id: clean\n", "id: clean\ncheck:it is clean\n", "check:it", "after the colon"),
  inModule("step-yaml", "id: clean\n", "id: clean\ncheck: @home\n", "@home", "in quotes"),
  inModule("step-yaml", "work: [wheel]", "work: [wheel]]", "]\nsub", "closes nothing"),
  inModule("step-yaml", "work: [wheel]", 'work: ["wheel" "lid"]', '"lid"]', "Put a comma"),
  inModule(
    "step-yaml",
    "record-for: lid-on\n```",
    "record-for: lid-on",
    "```yaml step\nid: lid-off",
    "this block is not closed",
  ),
  example("yaml-alias", tool, "title: Driver\nsummary: Turns screws.", "title: &a Driver\nsummary: *a", "&a"),
  // Fields
  inModule("unknown-field", "summary: Take", "sumary: Take", "sumary", 'the nearest known is "summary"'),
  inModule("unknown-field", "time: 5 min", "tiem: 5 min", "tiem", 'the nearest known is "time"'),
  inQuiz("unknown-field", "    ask: What comes off first?", "    hint: x\n    ask: What comes", "hint"),
  inModule("missing-field", "revision: 1\n", "", "title"),
  example(
    "missing-field",
    "substances/spirit.md",
    "data-sheet: In the folder by the door; it decides.\n",
    "",
    "title",
    '"data-sheet" is missing',
  ),
  example("missing-field", programme, "name: Test bench\n", "", "conditions"),
  inModule("missing-field", "id: clean\n", "", "work: [wheel]", "expected an id of lower-case letters"),
  inQuiz(
    "missing-field",
    "    kind: number\n",
    "",
    "id: amount",
    "one of choose-one, choose-several, number, arrange",
  ),
  { code: "no-programme", files: withoutFile(programme), file: programme, at: "" },
  inModule("wrong-type", "revision: 1", "revision: one", "one", '"revision" is "one". Write a whole number.'),
  inQuiz("wrong-type", "kind: number", "kind: order", "order", '"kind" is "order". Write one of choose-one'),
  inQuiz("wrong-type", "kind: number", "kind: numbr", "numbr", 'the nearest known is "number"'),
  inQuiz("wrong-type", 'see: "#clean"', "see: #clean", "#clean", 'Put the text in quotes: "#clean"'),
  example("wrong-type", programme, "name: Test bench", "name: Test bench\npass: 80", "80", "such as 80 %"),
  example("wrong-type", programme, "name: Test bench", "name: Test bench\npass: 0.8", "0.8", "such as 80 %"),
  inModule("wrong-type", "time: 5 min", "time: 5", "5", "such as 5 min"),
  inModule("wrong-type", "length: 1/2 in", "length: 12", "12", "such as 12 mm"),
  inModule(
    "wrong-type",
    "length: 1/2 in",
    "length: [6 mm, 8 mm]",
    "[6 mm",
    "list what differs as a thing of its own",
  ),
  inModule("wrong-type", "remove: wheel", "remove: {wheel: many}", "many"),
  inModule("wrong-type", "count: 4", "count: four", "four"),
  inModule("wrong-unit", "time: 5 min", "time: 5 mm", "5 mm", "such as 5 min"),
  // 1 mil is 0.0254 mm (NIST SP 811): whoever says "mil" for millimetre is 40 times too short.
  inModule("wrong-unit", "length: 1/2 in", "length: 10 mil", "10 mil", '"10 mil" is 0.254 mm'),
  inModule("wrong-unit", "length: 1/2 in", "length: 3 m", "3 m", '"3 m" is 3000 mm'),
  inModule("wrong-unit", "amount: 50 mL", "amount: 50 min", "50 min"),
  inModule("wrong-unit", "length: 1/2 in", "length: 1/2 N", "1/2 N"),
  inQuiz("wrong-unit", "answer: 50 mL", "answer: fifty", "fifty"),
  inQuiz("wrong-unit", "tolerance: 10 %", "tolerance: 10 N", "10 N"),
  example("wrong-unit", programme, "name: Test bench", "name: Test bench\npass: 80 mm", "80 mm"),
  inModule("wrong-thread", "thread: 4 BA", "thread: 4 BX", "4 BX"),
  inModule("odd-drive", "drive: slotted", "drive: slottd", "slottd", 'the nearest is "slotted"'),
  example("odd-drive", tool, "drive: slotted", "drive: sloted", "sloted", 'the nearest is "slotted"'),
  example("odd-drive", tool, "drive: slotted", "drive: [slotted, hexgon]", "hexgon", '"hexagon"'),
  inModule("torque-source", "keep: tray A}", "keep: tray A, torque: 0.9 N·m}", "0.9 N·m"),
  torqued("torque-words", "thread: 4 BA", "0.9 N·m", "", "0.9 N·m", "what class"),
  torqued(
    "torque-words",
    "thread: M6",
    "5 N·m",
    "class: 8.8, into: {material: brass, sound: false}",
    "5 N·m",
    "not sound",
  ),
  // ISO 898-1: proof load of M6 8.8 is 11.6 kN; by VDI 2230 some 12 N·m reach it when it is greased.
  torqued("torque-too-high", "thread: M6", "20 N·m", "class: 8.8", "20 N·m", "of its proof load"),
  torqued("torque-high", "thread: M6", "8 N·m", "class: 8.8", "8 N·m", "of its proof load"),
  // 85 % of 4.43 N·m, which the message of the example below it names.
  torqued(
    "torque-high",
    "thread: M6",
    "3.77 N·m",
    "class: 12.9, into: {material: aluminium-356, engagement: 3 mm}",
    "3.77 N·m",
    "strips 3 mm",
  ),
  torqued(
    "torque-strips",
    "thread: M6",
    "6 N·m",
    "class: 12.9, into: {material: aluminium-356, engagement: 3 mm}",
    "6 N·m",
    "strips 3 mm",
  ),
  torqued("unknown-class", "thread: M6", "3 N·m", "class: 8.7", "8.7", "8.8"),
  torqued("unknown-material", "thread: M6", "3 N·m", "class: 8.8, into: {material: bras}", "bras}", "brass"),
  torqued(
    "engagement-missing",
    "thread: M6",
    "3 N·m",
    "class: 8.8, into: {material: brass}",
    "{material: brass}",
    "mm for M6 of 8.8 to break first",
  ),
  screws("unknown-class", "torque: snug, class: 8.7", "8.7", "the nearest known is 8.8"),
  screws("unknown-material", "into: {material: bras}", "bras}", "the nearest known is brass"),
  inModule("no-driver", "drive: slotted", "drive: hexagon", "hexagon", "none of the tools"),
  {
    code: "no-driver",
    files: changed(tool, "drive: slotted", "drive: [square, hexagon]"),
    file: module,
    at: "slotted",
    says: "none of the tools",
  },
  // 50 mL · 0.78 · 1000 / 128 · 24.06 L = 7.3 L of vapour; in 30 m³ 244 ppm, 2.4 times 100 ppm and 3.1 % of 0.8 %.
  unguarded(
    "amount: 50 mL, ",
    `${spiritAir}, exposure-limit: 100 ppm (a limit)`,
    "2.4 times its exposure limit",
  ),
  unguarded("amount: 50 mL, ", `${spiritAir}, exposure-limit: 100 ppm (a limit)`, "(a limit, 100 ppm)"),
  // Ten times as much.
  unguarded("amount: 500 mL, ", spiritAir, "31 % of its lower flammable limit (0.8 %)"),
  unguarded(
    "amount: 50 mL, ",
    `${spiritAir}, flash-point: 12 °C`,
    "its flash point, 12 °C, is not above the 20 °C",
  ),
  unguarded("", "flash-point: 12 °C", "from which no ignition is excluded"),
  unguarded(
    "",
    "flash-point: 12 °C",
    "this is hot work",
    "\nhot-work: true",
    "room: {volume: 200 m³, no-ignition: true}\n",
  ),
  inModule("message-in-prose", "\nProse.\n", "\nWARNING: the lid is sharp.\n", "WARNING", "before it"),
  inModule("message-in-prose", "\nProse.\n", "\n**Caution** the lid is sharp.\n", "**Caution", "before it"),
  inModule("message-in-prose", "## Notes", "## Danger", "## Danger", "a heading begins"),
  inModule(
    "message-in-prose",
    "record: which way",
    'check: "CAUTION: the lid is sharp"\nrecord: which way',
    '"CAUTION',
    "read when the step is done",
  ),
  inModule(
    "message-in-prose",
    "record: which way",
    "mistakes: [{mistake: Pulling, result: 'Danger! It flies out.'}]\nrecord: which way",
    "'Danger",
    "read when the step is done",
  ),
  avoided("no-avoidance", "danger", "[]", "[]", "at least one way to avoid"),
  avoided("vague-avoidance", "danger", "[Be careful.]", "Be careful", "the signal word is danger"),
  avoided(
    "vague-avoidance",
    "warning",
    "[Take great care, Stay alert at all times!]",
    "Take great",
    "is all",
  ),
  example(
    "missing-field",
    "hazards/vapour.md",
    "avoid: [Work outdoors.]\n",
    "",
    "title",
    "what one does to avoid it",
  ),
  {
    code: "late-caution",
    files: changed(
      module,
      "record: which way",
      "substances: [spirit]\nhazards: [vapour]\nrecord: which way",
      changed(
        "substances/spirit.md",
        "hazards: [vapour]",
        "hazards: [vapour, skin]",
        withFile(
          "hazards/skin.md",
          "---\ntitle: Skin\nsummary: Rash.\nsignal: caution\nhazard: Spirit dries skin.\nconsequence: A rash.\navoid: [Wear gloves.]\n---\n",
          changed(
            module,
            "substances: [spirit]\nhazards: [vapour]",
            "substances: [spirit]\nhazards: [vapour, skin]",
          ),
        ),
      ),
    ),
    file: module,
    at: "spirit]\nhazards: [vapour]\nrecord",
    says: 'hazard "skin" is named only at the later step "clean"',
  },
  example(
    "notice-injury",
    "hazards/vapour.md",
    "signal: warning",
    "signal: notice",
    "notice",
    "harm to people",
  ),
  // Names
  inModule(
    "unknown-tool",
    "tools: [driver]\nsubstances",
    "tools: [drivre]\nsubstances",
    "drivre",
    'the nearest known is "driver"',
  ),
  inModule(
    "unknown-substance",
    "substances: [spirit]",
    "substances: [spirits]",
    "spirits",
    'the nearest known is "spirit"',
  ),
  inModule(
    "unknown-hazard",
    "hazards: [vapour]\nconditions",
    "hazards: [vapor]\nconditions",
    "vapor",
    'the nearest known is "vapour"',
  ),
  example("unknown-hazard", "substances/spirit.md", "hazards: [vapour]", "hazards: [fire]", "fire"),
  inModule(
    "unknown-module",
    "revision: 1\n",
    "revision: 1\nneeds: [bx]\n",
    "bx",
    'the nearest known is "box"',
  ),
  inModule("unknown-part", "covers: [wheel]}", "covers: [wheel], in: whel}", "whel", 'is "wheel"'),
  inModule("unknown-part", "name: wheel,", "name: wheel, in: bix,", "bix"),
  inModule("unknown-fastener", "held-by: [lid-screws]", "held-by: [screws]", "[screws]"),
  inModule(
    "unknown-target",
    "covers: [wheel]",
    "covers: [wheel, lid-screw]",
    "lid-screw]",
    'is "lid-screws"',
  ),
  inModule("unknown-target", "remove: wheel", "remove: whel", "whel", 'the nearest known is "wheel"'),
  inModule(
    "unknown-state",
    "makes: {brake: off}",
    "makes: {break: off}",
    "break",
    'the nearest known is "brake"',
  ),
  inModule("unknown-value", "makes: {brake: off}", "makes: {brake: half}", "half", "one of on, off"),
  inModule("unknown-value", "starts: on", "starts: up", "up"),
  inModule("unknown-value", "ends: on}", "ends: on, never-left: [half]}", "[half]", "one of on, off"),
  inModule(
    "unknown-condition",
    "conditions: [springs]\ntime",
    "conditions: [spring]\ntime",
    "spring",
    'the nearest known is "springs"',
  ),
  ...[
    ["practice-steps", "{id: p, title: P}", "{id: p, title: P}", "neither phase: nor steps:"],
    [
      "practice-steps",
      "{id: p, title: P, phase: strip, steps: [lid-on, clean]}",
      "[lid-on, clean]",
      "has both",
    ],
    ["practice-steps", "{id: p, title: P, steps: [lid-on]}", "[lid-on]", "asks for 1 of the steps"],
    ["practice-steps", "{id: p, title: P, steps: [lid-on, clean, lid-on]}", "lid-on]", "asked for twice"],
    ["practice-steps", "{id: p, title: P, phase: strip, mixed-in: [lid-on, lid-on]}", "lid-on]", "already"],
    [
      "practice-steps",
      "{id: p, title: P, phase: strip, mixed-in: [clean]}",
      "clean]",
      "asked for or mixed in",
    ],
    ["unknown-phase", "{id: p, title: P, phase: stripp}", "stripp", 'nearest known is "strip"'],
    ["unknown-step", "{id: p, title: P, steps: [lid-on, clena]}", "clena", 'nearest known is "clean"'],
    [
      "unknown-step",
      "{id: p, title: P, phase: strip, mixed-in: [lidon]}",
      "lidon",
      'nearest known is "lid-on"',
    ],
    [
      "duplicate-id",
      "{id: p, title: P, phase: strip}\n  - {id: p, title: Q, phase: build}",
      "p, title: Q",
      "already",
    ],
    ["practice-easy", "{id: p, title: P, phase: strip}", "{id: p", "2 of 24 cases (8.3 %)"],
    ["practice-easy", "{id: p, title: P, phase: strip}", "{id: p", "or mix in 1 more"],
    [
      "practice-cannot-fail",
      "{id: p, title: P, steps: [lid-off, brake-off]}",
      "{id: p",
      "none of its 2 steps",
    ],
  ].map(([code, written, at, says]) => inModule(code as Code, wholePractice, written!, at!, says)),
  {
    code: "practice-long",
    files: changed(module, wholePractice, longPractice, nineSteps),
    file: module,
    at: "{id: p",
    says: 'asks for 9 steps; about 8 is what people hold in mind and can compare. Cut it before "brake-on"',
  },
  { code: "unbound-step", files: nineSteps, file: module, at: "sweep", says: "among the 9 steps" },
  inModule(
    "after-implied",
    "after: {brake-on: the brake",
    "after: {wheel-on: the wheel lies under it, brake-on: the brake",
    "wheel-on: the wheel lies",
    "wheel-on → brake-on → lid-on",
  ),
  inModule("unknown-phase", "time: 5 min\nphase: strip", "time: 5 min\nphase: stripp", "stripp"),
  inModule(
    "unknown-step",
    "record-for: lid-on",
    "record-for: lid-in",
    "lid-in",
    'the nearest known is "lid-on"',
  ),
  inQuiz("unknown-step", "wheel-off, wheel-on", "wheel-of, wheel-on", "wheel-of"),
  inModule(
    "after-nothing",
    "after: {brake-on:",
    "after: {brake-onn:",
    "brake-onn",
    'the nearest known is "brake-on"',
  ),
  inModule("duplicate-id", "id: brake-on\n", "id: brake-off\n", "brake-off"),
  inModule(
    "duplicate-id",
    "  lid-screws: {name",
    "  wheel: {name: wheel, count: 1}\n  lid-screws: {name",
    "wheel: {name: wheel, count",
  ),
  inModule("duplicate-id", "## Notes", "## Clean", "## Clean\n\nA heading"),
  inQuiz("duplicate-id", "id: several", "id: first", "first\n    kind: choose-several"),
  // Steps
  inModule("step-without-heading", "## Release the brake\n\n", "", "id: brake-off"),
  inModule("step-without-heading", "The box has", "```yaml step\nid: early\n```\n\nThe box has", "id: early"),
  inModule(
    "step-unmarked",
    "```yaml step\nid: clean",
    "```yaml\nid: clean",
    "```yaml\nid: clean",
    "```yaml step",
  ),
  inModule("step-unmarked", "```yaml step\nid: clean", "```step\nid: clean", "```step"),
  inModule("step-unmarked", "```yaml step\nid: clean", "```yaml steps\nid: clean", "```yaml steps"),
  inModule("step-unmarked", "```yaml step\nid: clean", "```YAML step\nid: clean", "```YAML"),
  inModule("step-unmarked", "```yaml step\nid: clean", "```\nid: clean", "```\nid: clean"),
  inModule("step-unmarked", "Prose.\n", "```yaml\ntime: 5 min\n```\n", "```yaml\ntime"),
  inModule(
    "step-unmarked",
    "Prose.\n",
    "- ```yaml step\n  id: inner\n  ```\n",
    "- ```yaml step",
    "at the margin",
  ),
  inModule(
    "step-unmarked",
    "Prose.\n",
    "    ```yaml step\n    id: inner\n    ```\n",
    "    ```",
    "at the margin",
  ),
  {
    ...whole(
      "no-steps",
      module,
      "---\ntitle: T\nsummary: S.\nrevision: 1\nparts: {lid: {name: lid}}\n---\n\n## Open\n",
    ),
    at: "parts",
  },
  whole("too-many-steps", module, manySteps(501)),
  inModule("act-count", "remove: [lid-screws, lid]", "remove: {lid-screws: 5, lid: 1}", "5"),
  inModule("act-count", "remove: wheel", "remove: {wheel: 2}", "2"),
  {
    code: "act-count",
    files: changed(
      module,
      "remove: wheel",
      "remove: {wheel: 2}",
      changed(module, "{name: wheel,", "{name: wheels, count: 3,"),
    ),
    file: module,
    at: "2}",
    says: "one part of 3 pieces",
  },
  inModule("act-count", "held-by: [lid-screws]", "held-by: {lid-screws: {out: 5}}", "{out: 5}"),
  inModule("impossible-act", "remove: wheel", "remove: wheel\nslacken: wheel", "wheel\nphase"),
  inModule("self-reference", "after: {brake-on:", "after: {lid-on:", "lid-on: the brake"),
  inModule("self-reference", "record-for: lid-on", "record-for: lid-off", "lid-off\n```"),
  inModule("self-reference", "covers: [wheel]", "covers: [wheel, lid]", "lid]"),
  inModule("self-reference", "covers: [wheel]", "covers: [wheel, lid-screws]", "lid-screws]", "hold it"),
  inModule(
    "loop",
    "  wheel: {name: wheel,",
    "  a: {name: a, in: b}\n  b: {name: b, in: a}\n  wheel: {name: wheel,",
    "b}",
    "a → b → a",
  ),
  inModule("loop", "revision: 1\n", "revision: 1\nneeds: [box]\n", "[box]", "box → box"),
  // Precedence
  inModule(
    "after-later",
    "id: lid-off\n",
    "id: lid-off\nafter: {brake-off: no reason}\n",
    "brake-off: no reason",
  ),
  inModule(
    "cycle",
    "id: lid-off\n",
    "id: lid-off\nafter: {wheel-on: no reason}\n",
    "wheel-on: no reason",
    'before "wheel-on"',
  ),
  inModule(
    "swap-unbound",
    "id: brake-off\n",
    "id: brake-off\nmay-swap: {lid-off: either will do}\n",
    "lid-off: either",
  ),
  inModule(
    "swap-critical",
    "id: wheel-off\nremove: wheel\n",
    "id: wheel-off\nremove: wheel\ncritical: true\nmay-swap: {clean: either will do}\n",
    "clean: either",
  ),
  inModule(
    "swap-changes-tray",
    "id: wheel-off\n",
    "id: wheel-off\nmay-swap: {lid-off: either will do}\n",
    "either will do",
  ),
  // The tray
  inModule("cover-on", "remove: [lid-screws, lid]\ntools", "remove: [lid-screws]\ntools", "remove: wheel"),
  // Work on what is covered: before its cover comes off, and where no step takes it off at all.
  inModule(
    "cover-on",
    "## Take the lid off",
    "## Try it\n\n```yaml step\nid: try\nwork: [wheel]\n```\n\n## Take the lid off",
    "work: [wheel]",
    '"lid" (lid) is still on and covers "wheel"',
  ),
  inModule(
    "cover-on",
    "  wheel: {name",
    "  hood: {name: hood, covers: [wheel]}\n  wheel: {name",
    "remove: wheel",
    '"hood" (hood) is still on',
  ),
  // The order of acts within a step: slacken, remove, work, refit, tighten, then states.
  {
    code: "cover-on",
    files: changed(
      module,
      "tighten: [lid-screws]",
      "tighten: [nuts, lid-screws]",
      changed(module, "id: brake-off\n", "id: brake-off\nslacken: nuts\n", nutsUnderLid),
    ),
    file: module,
    at: "tighten: [nuts",
    says: 'tighten "nuts" in a step of its own',
  },
  {
    code: "cover-on",
    files: changed(module, "id: lid-off\n", "id: lid-off\nslacken: nuts\n", nutsUnderLid),
    file: module,
    at: "slacken: nuts",
    says: 'remove "lid" in a step of its own',
  },
  {
    code: "cover-on",
    files: changed(
      module,
      "refit: [lid, lid-screws]",
      "refit: [lid, wheel, lid-screws]",
      changed(module, "id: wheel-on\nrefit: [wheel]", "id: wheel-on"),
    ),
    file: module,
    at: "refit: [lid, wheel",
    says: 'name "wheel" before "lid"',
  },
  inModule(
    "cover-on",
    "remove: [lid-screws, lid]",
    "remove: [wheel, lid-screws, lid]",
    "remove: [wheel",
    'name "lid" before "wheel"',
  ),
  inModule("cover-off", "remove: wheel\n", "remove: wheel\nthrough: [lid]\n", "through"),
  inModule("still-held", "remove: [lid-screws, lid]", "remove: [lid]", "remove: [lid]"),
  inModule("in-the-way", "refit: [lid, lid-screws]", "refit: [lid-screws, lid]", "refit: [lid-screws"),
  inModule(
    "still-held",
    "remove: [lid-screws, lid]",
    "remove: [lid, lid-screws]",
    "remove: [lid",
    'name "lid-screws" before "lid"',
  ),
  inModule(
    "in-the-way",
    "refit: [lid, lid-screws]",
    "refit: [lid-screws, lid]",
    "refit: [lid-screws",
    'name "lid" before "lid-screws"',
  ),
  inModule("removes-what-is-off", "work: [wheel]", "remove: [wheel]", "remove: [wheel]"),
  inModule("removes-what-is-off", "work: [wheel]", "remove: [lid-screws]", "remove: [lid-screws]\nsub"),
  inModule("refits-what-is-on", "id: brake-on\n", "id: brake-on\nrefit: [wheel]\n", "refit: [wheel]\nmakes"),
  inModule(
    "refits-too-many",
    "## Notes",
    "## Again\n\n```yaml step\nid: again\nrefit: {lid-screws: 2}\n```\n\n## Notes",
    "refit: {lid-screws: 2}",
    "would refit 2 of",
  ),
  inModule(
    "tightens-what-is-not-in",
    "id: lid-on\nrefit: [lid, lid-screws]",
    "id: lid-on\nrefit: [lid]",
    "tighten",
  ),
  {
    code: "place-taken",
    files: changed(
      module,
      "work: [wheel]",
      "refit: spare\nwork: [wheel]",
      changed(module, "  wheel: {name", "  spare: {name: spare wheel, replaces: wheel}\n  wheel: {name"),
    ),
    file: module,
    at: "refit: [wheel]",
  },
  inModule("wrong-state", "id: brake-off\nmakes: {brake: off}", "id: brake-off", "id: wheel-off"),
  {
    code: "wrong-state",
    files: changed(
      module,
      "remove: wheel\n",
      "remove: wheel\nmakes: {brake: off}\n",
      changed(module, "id: brake-off\nmakes: {brake: off}", "id: brake-off"),
    ),
    file: module,
    at: "id: wheel-off",
    says: 'bring "off" about in a step before this one',
  },
  inModule(
    "ends-off",
    "id: wheel-on\nrefit: [wheel]",
    "id: wheel-on",
    "remove: wheel",
    "is off at the end. Refit it, or list",
  ),
  {
    code: "ends-off",
    files: changed(
      module,
      "id: wheel-on\nrefit: [wheel]",
      "id: wheel-on",
      changed(module, "{name: wheel,", "{name: wheels, count: 3,"),
    ),
    file: module,
    at: "remove: wheel",
    says: "(wheels) are off at the end. Refit them, or list them",
  },
  inModule(
    "ends-off",
    "tighten: [lid-screws]\n",
    "",
    "refit: [lid, lid-screws]",
    "4 are slack at the end. Tighten them, or list",
  ),
  inModule(
    "ends-off",
    "tighten: [lid-screws]\n",
    "tighten: {lid-screws: 3}\n",
    "tighten: {lid-screws: 3}",
    "1 is slack at the end. Tighten it, or list",
  ),
  inModule(
    "ends-off",
    "phases: {",
    "leaves: {lid-screws: {out: 1}}\nphases: {",
    "tighten: [lid-screws]",
    "none is out or slack at the end, and leaves: says 1 out and 0 slack",
  ),
  inModule("ends-on", "phases: {", "leaves: [wheel]\nphases: {", "refit: [wheel]", "Do not refit it"),
  {
    code: "ends-on",
    files: changed(
      module,
      "id: wheel-off\nremove: wheel\n",
      "id: wheel-off\n",
      changed(
        module,
        "id: wheel-on\nrefit: [wheel]\n",
        "id: wheel-on\n",
        changed(module, "phases: {", "leaves: [wheel]\nphases: {"),
      ),
    ),
    file: module,
    at: "leaves",
    says: "Take it off in a step",
  },
  inModule(
    "ends-state",
    "id: brake-on\nmakes: {brake: on}",
    "id: brake-on",
    "brake: off}",
    'Bring it to "on"',
  ),
  inModule("unsafe-stop", "wait: 1 h", "stop: true", "stop: true", 'nothing has dried "wheel" since "clean"'),
  stopped("ends: on}", "ends: on, never-left: [off]}", 'the brake must never be left "off"'),
  stopped("keep: tray A}", "keep: tray A, never-left: [slack, out]}", "4 are out"),
  stopped("covers: [wheel]}", "covers: [wheel], never-left: off}", '"lid" (lid) is off'),
  inModule("unsafe-stop", "ends: on}", "ends: on, never-left: on}", "never-left: on}", "at the end"),
  inModule("never-undone", "fasteners:\n", "fasteners:\n  feet: {name: feet, count: 4}\n", "feet: {"),
  inModule(
    "stays-undone",
    "keep: tray A}",
    "keep: tray A, stays: nobody opens it}",
    "stays: nobody",
    "handles it",
  ),
  // Oil and vapour
  withOil(
    "oil-washed-off",
    "remove: wheel\n",
    "remove: wheel\nwork: [wheel]\nsubstances: [oil]\n",
    "[oil]",
    '"clean" cleans',
  ),
  withOil("oil-on-wet", "wait: 1 h", "feel: Cold.", "[oil]", 'since "clean" cleaned it', "refit: [wheel]\n"),
  withOil(
    "kept-dry",
    "{name: wheel,",
    "{name: wheel, keep-dry: true,",
    "[oil]",
    "kept dry",
    "refit: [wheel]\n",
  ),
  // Oil for cleaning is oil on a brake all the same.
  withOil(
    "kept-dry",
    "{name: wheel,",
    "{name: wheel, keep-dry: true,",
    "[{use: oil",
    "kept dry",
    "refit: [wheel]\n",
    "{use: oil, for: cleaning}",
  ),
  inModule("wrong-type", "makes: {brake: on}", "makes: {brake: [off, on]}", "[off, on]", "in two steps"),
  inModule(
    "wrong-type",
    "substances: [spirit]",
    "substances: [{use: spirit, for: wiping}]",
    "wiping",
    "one of cleaning",
  ),
  inModule(
    "fire-unnamed",
    "[spirit]\nhazards: [vapour]",
    "[spirit]",
    "spirit]\nphase",
    'its hazard "vapour"',
  ),
  {
    code: "fire-unnamed",
    files: changed("substances/spirit.md", "hazards: [vapour]", "hazards: []"),
    file: module,
    at: "spirit]",
    says: "its sheet names no hazard",
  },
  inModule(
    "hot-work-vapour",
    "wait: 1 h",
    "hot-work: true\nwait: 1 h",
    "true\nwait",
    "it takes what can burn",
  ),
  {
    code: "hot-work-vapour",
    files: changed(
      module,
      "id: wheel-on\n",
      "id: wheel-on\nhot-work: true\n",
      changed(module, "wait: 1 h", "feel: Cold."),
    ),
    file: module,
    at: "true",
    says: 'what "clean" wetted',
  },
  {
    code: "vapour-shut-in",
    files: changed(
      module,
      "id: brake-on\n",
      "id: brake-on\nwork: [wheel]\nsubstances: [spirit]\nhazards: [vapour]\n",
    ),
    file: module,
    at: "refit: [lid, lid-screws]",
    says: '"lid" (lid) goes back over "wheel" (wheel)',
  },
  {
    code: "handed-on",
    files: changed(strip, "wheel: {to: build}", "wheel: {to: build}, works: {to: build}", handing),
    file: "modules/build/module.md",
    at: "strip",
    says: 'hands "works" on',
  },
  {
    code: "handed-nowhere",
    files: changed("modules/build/module.md", "begins-from: strip", "begins-from: box", twoModules),
    file: strip,
    at: "build}, lid-screws",
    says: 'which begins from "box"',
  },
  {
    code: "begins-otherwise",
    files: changed(strip, "ends: let down", "ends: wound", twoModules),
    file: "modules/build/module.md",
    at: "let down",
    says: '"strip" leaves it "wound"',
  },
  {
    code: "unknown-module",
    files: changed("modules/build/module.md", "begins-from: strip", "begins-from: stripp", twoModules),
    file: "modules/build/module.md",
    at: "stripp",
  },
  inModule(
    "draft-mark",
    "revision: 1\n",
    "revision: 1\ndraft: [the summary]\n",
    "the summary",
    "not finished: the",
  ),
  inModule(
    "draft-mark",
    "id: clean\n",
    "id: clean\ndraft: how it is dried\n",
    "how it is dried",
    "how it is dried.",
  ),
  inModule(
    "unwritten",
    "title: Open the box\n",
    'title: "Draft: Open the box"\n',
    "Take the lid off, clean",
    "a draft in its title.",
  ),
  inModule(
    "unwritten",
    "Take the lid off, clean the wheel, close it again.",
    "Draft; what this is for is still to be written.",
    "Draft; what",
    "a draft in its summary.",
  ),
  example(
    "unwritten",
    tool,
    "summary: Turns screws.",
    "summary: What it is, in one sentence.",
    "What it is",
    "a draft in its summary.",
  ),
  example(
    "unwritten",
    "hazards/vapour.md",
    "consequence: Burns.",
    "consequence: What it does to them.",
    "Burns.",
    "this hazard is still a draft in its consequence",
  ),
  inModule(
    "unwritten",
    "The box has a",
    "Why, is Still to\nbe written. The box has a",
    "Take the lid",
    "in its text.",
  ),
  inModule(
    "unwritten",
    "## Take the lid off\n",
    "## What is done is still to be written\n",
    "lid-off\n",
    'step "lid-off" is still a draft in its title.',
  ),
  inModule("unwritten", "\nProse.\n", "\nHow, is still\nto be written.\n", "lid-off\n", "in its text."),
  inModule(
    "unwritten",
    "id: clean\n",
    "id: clean\nfigure: {file: figures/box.svg, alt: What is seen is still to be written}\n",
    "clean\n",
    "in its alt text.",
  ),
  // Declared and used
  inModule("undeclared-use", "substances: [{use: spirit, amount: 50 mL, place: outdoors}]\n", "", "spirit"),
  inModule("unused-declaration", "substances: [spirit]\n", "", "spirit"),
  inModule("record-nowhere", "record-for: lid-on\n", "", "record"),
  // Pictures and links
  inModule("figure-missing", "figures/box.svg", "figures/bx.svg", "figures/bx.svg"),
  inModule(
    "figure-missing",
    "id: clean\n",
    "id: clean\nfigure: {file: figures/no.svg, alt: None}\n",
    "{file",
  ),
  inModule("figure-alt", "![A box]", "![]", "figures/box.svg"),
  inModule("figure-alt", "id: clean\n", "id: clean\nfigure: {file: figures/box.svg}\n", "{file"),
  inModule("item-unknown", "id: clean\n", `id: clean\n${numbered("whel", "50, 50")}`, "whel", '"wheel"'),
  inModule("item-place", "id: clean\n", `id: clean\n${numbered("wheel", "50, 120")}`, "[50, 120]", "120"),
  inModule(
    "item-twice",
    "id: clean\n",
    `id: clean\n${numbered("wheel", "50, 50]}, 2: {of: lid, at: [9, 9]}, 3: {of: wheel, at: [1, 1")}`,
    "wheel, at: [1, 1]",
    "1 and 3",
  ),
  inModule(
    "item-unknown",
    "state:\n",
    "figure: {file: figures/box.svg, alt: A box, items: {7: {of: lod, at: [1, 2]}}}\nstate:\n",
    "lod",
    "item 7",
  ),
  { ...whole("picture-broken", "modules/box/figures/box.svg", "<svg><g></svg>", "<svg>"), says: "xmlns" },
  { ...whole("picture-broken", "modules/box/figures/lid.jpg", "no picture"), says: "unsupported" },
  { ...whole("picture-pixels", "modules/box/figures/lid.png", hugePicture), says: "30000 × 30000" },
  {
    ...whole(
      "picture-unsafe",
      "modules/box/figures/box.svg",
      `<svg xmlns="${svgSpace}">\n<script/></svg>`,
      "<script/>",
    ),
    says: "runs a script",
  },
  {
    ...whole(
      "picture-unsafe",
      "modules/box/figures/box.svg",
      `<svg xmlns="${svgSpace}"><use href="a.svg#b"/></svg>`,
      "href=",
    ),
    says: '"a.svg#b"',
  },
  {
    ...whole("picture-name", "modules/box/figures/box.png.480.webp", "any"),
    files: withFile(
      "modules/box/figures/box.png.480.webp",
      "any",
      withFile("modules/box/figures/box.png", "any"),
    ),
    says: 'as the build calls "modules/box/figures/box.png" made 480 pixels wide',
  },
  {
    ...whole("picture-name", "assets/ghs02.svg", "<svg xmlns='http://www.w3.org/2000/svg'/>"),
    says: "assets",
  },
  { ...whole("figure-unused", "modules/box/figures/spare.svg", "<svg xmlns='http://www.w3.org/2000/svg'/>") },
  inModule(
    "dead-link",
    "../../tools/driver.md",
    "../../tools/drivre.md",
    "../../tools/drivre.md",
    'the nearest known is "tools/driver.md"',
  ),
  inModule("dead-link", "#wheel-off)", "#wheel-of)", "#wheel-of", 'the nearest known is "wheel-off"'),
  inQuiz("dead-link", 'see: "#clean"', 'see: "#clena"', '"#clena"'),
  inModule("raw-html", "Prose.", "Some <b>bold</b> prose.", "<b>"),
  // Quizzes
  inQuiz(
    "quiz-no-right",
    "{text: The lid, right: true}",
    "{text: The lid, why: No.}",
    "- {text: The lid, why: No.}",
  ),
  inQuiz(
    "quiz-many-right",
    "{text: The wheel, why: The lid covers it.}",
    "{text: The wheel, right: true}",
    "{text: The wheel, right: true}\n    why: The lid",
  ),
  inQuiz(
    "quiz-equal-options",
    "{text: The wheel, why: The lid covers it.}",
    "{text: the  LID, why: The same.}",
    "{text: the  LID",
  ),
  inQuiz(
    "quiz-cannot-be-wrong",
    "[lid-off, wheel-off, wheel-on, lid-on]",
    "[lid-off, brake-off]",
    "[lid-off, brake-off]",
  ),
  inQuiz(
    "quiz-cannot-be-wrong",
    "{text: The lid, why: It stays as it is.}",
    "{text: The lid, right: true}",
    "- {text: The wheel, right: true}\n      - {text: The lid, right: true}",
  ),
  inQuiz("quiz-tolerance", "    tolerance: 10 %\n", "", "50 mL"),
  inQuiz(
    "quiz-size",
    "[lid-off, wheel-off, wheel-on, lid-on]",
    "[lid-off, wheel-off]",
    "[lid-off, wheel-off]",
  ),
  inQuiz(
    "quiz-no-reason",
    "{text: The wheel, why: The lid covers it.}",
    "{text: The wheel}",
    "{text: The wheel}",
  ),
  inQuiz("quiz-size", "      - {item: The brake, with: two states}\n", "", "- {item: The lid", "3 to 8"),
  inQuiz("quiz-equal-options", "with: two states", "with: Spirit", "{item: The brake", '"Spirit" twice'),
  inQuiz("quiz-equal-options", "text: a spring", "text: spirit", "{text: spirit", '"spirit" twice'),
  inQuiz("quiz-equal-options", "[screws, lid screws]", "[screws, Screws]", "Screws", '"Screws" twice'),
  inQuiz("quiz-equal-options", "{text: clews", "{text: SCREWS", "{text: SCREWS", "a mistake"),
  inQuiz("quiz-slips", "slips: 1", "slips: 3", "3", "shortest answer"),
  inQuiz("quiz-no-right", "10], right: true}", "10], why: x}", "- {where: in the middle", "no right option"),
  inQuiz("quiz-no-reason", ", why: A screw sits there.}", "}", "{where: in a corner"),
  inQuiz("quiz-place", "[50, 50, 10]", "[95, 50, 10]", "{where: in the middle", "beyond the edge"),
  inQuiz("quiz-place", "[5, 5, 20, 20]", "[45, 45, 20, 20]", "{where: in the middle", "within"),
  inQuiz("wrong-type", "circle: [50, 50, 10], ", "", "{where: in the middle", "either circle"),
  inQuiz("figure-missing", "file: figures/box.svg", "file: figures/bux.svg", "figures/bux.svg"),
  inQuiz(
    "quiz-unknown-group",
    "lever, group: Stays",
    "lever, group: Stay",
    "Stay,",
    'nearest known is "Stays"',
  ),
  inQuiz("quiz-empty-group", "[Off, Stays]", "[Off, Lost, Stays]", "Lost", 'no item in "Lost"'),
  inQuiz("quiz-equal-options", "text: lid screws, group", "text: Lid, group", "{text: Lid,", '"Lid" twice'),
  inQuiz("quiz-case", "{thread: M3, turns: 6}", "{thread: M3}", "{thread: M3}", "no turns"),
  inQuiz(
    "quiz-case",
    "{thread: M3, turns: 6}",
    "{thread: M99, turns: 6}",
    "{thread: M99",
    '"M99"'.slice(1, -1),
  ),
  inQuiz("quiz-case", "How far do {turns}", "How far do {turn}", "{thread: 4 BA", "{turn}"),
  inQuiz("wrong-type", "sum: advance", "sum: eval(1)", "eval(1)"),
  inQuiz(
    "quiz-size",
    "questions:\n  - id: first",
    "paper: 99\nquestions:\n  - id: first",
    "99",
    "99 or more",
  ),
  inQuiz(
    "quiz-unknown-objective",
    "questions:\n  - id: first",
    "paper: {objectives: {covers: 1}}\nquestions:\n  - id: first",
    "{objectives",
    'no question for "covers"',
  ),
  inQuiz(
    "quiz-never-drawn",
    "questions:\n  - id: first\n    kind: choose-one",
    "paper: {objectives: {covers: 1}}\nquestions:\n  - id: first\n    objective: covers\n    kind: choose-one",
    "several",
  ),
  inQuiz("quiz-guessable", "questions:\n  - id: first", "pass: 10 %\nquestions:\n  - id: first", "questions"),
  ...recordExamples,
  whole("quiz-without-module", "modules/other/quiz.yaml", "questions: []\n"),
];

function manySteps(count: number): string {
  const steps = Array.from(
    { length: count },
    (_, i) => `## Step ${i}\n\n\`\`\`yaml step\nid: s${i}\n\`\`\`\n`,
  );
  return `---\ntitle: Long\nsummary: Long.\nrevision: 1\n---\n\n${steps.join("\n")}`;
}
