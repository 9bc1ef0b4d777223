/** Values that each schema takes, between them one for every field: the reference of fields shows them. Invented throughout. */
import type { schemas } from "./index.ts";

const signOff = {
  ...{ pass: "80 %", practice: true, "dry-run": true, watched: 1, unaided: 2, occasions: 2, mentors: 1 },
  ...{ months: 24, "new-revision": "again", "minimum-age": 16, induction: "safety of the workshop" },
  ...{ "mentor-present": true, "trainees-per-mentor": 3 },
};

const safe = {
  wear: ["safety glasses"],
  "never-wear": ["rings"],
  waste: ["rags into the metal bin, lid shut"],
  draft: ["a figure of the pulled spring"],
};

const asked = {
  ask: "What comes off first?",
  why: "What covers comes off before what it covers.",
  see: "#guard-off",
};

/** A digest and a key in their written forms; neither belongs to anyone. */
const digest = `uEi${"A".repeat(44)}`;
const key = "did:key:z6MkiTBz1ymuepAQ4HEHYSF1H8quG5GLVVQR3djdX3mDooWp";

export const questionExamples: readonly (Readonly<Record<string, unknown>> & { readonly kind: string })[] = [
  {
    ...{ id: "first", kind: "choose-one", ...asked, objective: "order", critical: true, points: 2 },
    "keep-order": true,
    options: [
      { text: "The guard", right: true },
      { text: "The governor", why: "The guard covers it." },
    ],
  },
  {
    ...{ id: "screws", kind: "choose-several", ...asked, ask: "What is true of the guard screws?" },
    options: [
      { text: "There are two.", right: true },
      { text: "They go into tray A.", right: true },
      { text: "They stay in.", why: "The guard does not come off then." },
    ],
  },
  { id: "length", kind: "number", ...asked, ask: "How long is the screw?", answer: "6 mm", tolerance: "5 %" },
  {
    id: "order",
    kind: "arrange",
    ...asked,
    ask: "Put these in order.",
    steps: ["guard-off", "clean", "try", "guard-on"],
  },
  {
    ...{ id: "places", kind: "match", ...asked, ask: "What goes where?" },
    pairs: [
      { item: "Guard screws", with: "tray A", why: "They are the first to come out." },
      { item: "Guard", with: "tray B" },
      { item: "Oily rag", with: "metal bin" },
    ],
    others: [{ text: "the floor", why: "Nothing is ever put there." }],
  },
  {
    ...{ id: "name", kind: "text", ...asked, ask: "What holds the speed?", answers: ["governor"], slips: 1 },
    mistakes: [{ text: "brake", why: "The brake stops it altogether." }],
  },
  {
    ...{ id: "point", kind: "point", ...asked, ask: "Point at the governor." },
    figure: { file: "figures/guard.svg", alt: "The machine with its guard off" },
    places: [
      { where: "the governor", circle: [50, 40, 10], right: true },
      { where: "the guard", rectangle: [0, 0, 20, 30], why: "That is what covers it." },
    ],
  },
  {
    ...{ id: "bins", kind: "sort", ...asked, ask: "Where does it go?", groups: ["tray", "metal bin"] },
    items: [
      { text: "Screws", group: "tray" },
      { text: "Oily rags", group: "metal bin", why: "They can catch fire by themselves." },
      { text: "Guard", group: "tray" },
      { text: "Paper wipes with oil on them", group: "metal bin" },
    ],
  },
  {
    ...{ id: "turns", kind: "worked", ...asked, ask: "How many millimetres are {from}?", sum: "convert" },
    ...{ cases: [{ from: "1/2 in" }, { from: "3/8 in" }], in: "mm", tolerance: "1 %" },
  },
];

export const examples: Readonly<Record<keyof typeof schemas, readonly Readonly<Record<string, unknown>>[]>> =
  {
    programme: [
      {
        ...{ name: "Our workshop", place: "Mill Lane", summary: "Overhaul of hand-operated machines." },
        ...{ language: "en", units: "metric", session: "2 h 30 min", pass: "80 %", "sit-again": "1 day" },
        conditions: {
          "lead-paint": {
            name: "Lead in paint",
            "look-for": "Thick, chalky or flaking paint.",
            "if-unknown": "Treat it as lead and ask your mentor.",
          },
        },
        emergency: "Ring the number on the door.",
        room: { volume: "60 m³", temperature: "20 °C", "no-ignition": true },
        ...{ identifier: "tag:workshop.example,2026:programme", "time-zone": "Europe/London" },
        "sign-off": { ...signOff, "lapsed-needs": "suspend" },
        mentors: [
          {
            ...{
              id: "mentor-a",
              name: "Mentor A",
              key,
              "may-sign": ["spring-motor"],
              "highest-level": "alone",
            },
            ...{ from: "2026-01-01", to: "2027-12-31", compromised: "2027-06-01" },
            ...{ keep: [digest], "own-records": [key] },
          },
        ],
        "soon-days": 60,
        words: [["mainspring", "motor spring"]],
      },
    ],
    module: [
      {
        ...{ title: "Clean a governor", summary: "Guard off, clean, guard on.", revision: 1 },
        ...{ issued: "2026-11-20", "written-by": "tool bench", "approved-by": "safety and stores" },
        ...{ needs: ["slotted-screws"], "begins-from": "strip-motor", tools: ["brass-brush"] },
        substances: [{ use: "white-spirit", amount: "50 mL", place: "outdoors" }],
        ...{ hazards: ["sharp-edges"], conditions: ["lead-paint"] },
        figure: {
          file: "figures/machine.svg",
          alt: "The machine from the front",
          caption: "The guard is on.",
          items: { 1: { of: "guard", at: [30, 40] }, 2: { name: "frame", at: [80, 90] } },
        },
        parts: {
          guard: {
            ...{
              name: "guards",
              count: 2,
              "held-by": { "guard-screws": { out: 2, slack: 1 } },
              covers: ["governor", "lock-screw"],
            },
            ...{
              in: "motor",
              replaces: "old-guard",
              "only-while": { power: "let down" },
              "never-left": "off",
            },
            ...{ "keep-dry": true, keep: "tray B", note: "thin brass" },
          },
        },
        fasteners: {
          "guard-screws": {
            ...{ name: "guard screws", count: 2, kind: "machine screw", thread: "4 BA", length: "6 mm" },
            ...{
              drive: "slotted",
              keep: "tray A",
              matched: true,
              stays: "they hold what is never opened here",
            },
            ...{
              "never-left": ["slack", "out"],
              torque: "1 N·m",
              "torque-source": "the maker’s sheet",
              class: "8.8",
            },
            into: { material: "brass", engagement: "5 mm", sound: true },
            note: "two alike",
          },
        },
        state: {
          power: {
            ...{ name: "mainspring", values: ["wound", "let down"], starts: "wound", ends: "let down" },
            "never-left": ["wound"],
          },
        },
        leaves: { guard: "off", "guard-screws": { out: 2, slack: 0 }, motor: { to: "refit-motor" } },
        phases: { strip: "Taking apart" },
        practices: [
          {
            ...{ id: "whole", title: "The whole job", phase: "strip", steps: ["guard-off", "clean"] },
            "mixed-in": ["polish"],
          },
        ],
        "as-found": [{ check: "play of the spindle", limit: "0.1 mm" }],
        "as-left": [{ check: "it runs", limit: "one minute without a stop" }],
        ends: { done: "It runs evenly.", conserve: "A part is missing.", refer: "The spring is cracked." },
        ...{ sources: ["common practice"], "sign-off": signOff, ...safe },
      },
    ],
    step: [
      {
        ...{ id: "guard-off", slacken: "side-screw", remove: ["guard-screws", "guard"], work: ["governor"] },
        ...{ refit: "guard", tighten: { "guard-screws": 2 }, makes: { power: "let down" } },
        ...{ through: ["mesh"], while: { power: "let down" } },
        after: {
          "let-down": { because: "The spring would throw the wheel.", critical: true },
          clean: "Dirt would fall in.",
        },
        ...{ "may-swap": { oil: "neither touches the other" }, critical: true, time: "5 min", wait: "1 h" },
        ...{
          stop: true,
          dries: true,
          "hot-work": false,
          tools: ["brass-brush"],
          substances: ["white-spirit", { use: "light-machine-oil", for: "cleaning" }],
        },
        ...{ hazards: ["sharp-edges"], conditions: ["lead-paint"], check: "the governor can be seen" },
        ...{ phase: "strip", record: ["which way round the guard was"], "record-for": "guard-on" },
        figure: {
          file: "figures/guard.svg",
          alt: "The guard and its two screws",
          caption: "The guard.",
          items: { 1: { of: "guard", at: [40, 55] }, 2: { name: "frame", at: [80, 90] } },
        },
        feel: "A soft click as it seats.",
        mistakes: [{ mistake: "Levering it off.", result: "It bends." }],
        "if-not": [{ sign: "It sticks.", cause: "Old varnish.", do: "Warm it by hand and wait." }],
        ...safe,
      },
    ],
    quiz: [
      { pass: "80 %", paper: 5, supervised: true, questions: questionExamples },
      { paper: { objectives: { order: 1 } }, questions: questionExamples },
    ],
    tool: [
      {
        ...{
          title: "Brass brush",
          summary: "Takes dirt off and leaves the metal.",
          drive: ["slotted", "hexagon"],
        },
        ...{ use: ["cleaning threads"], care: "Knock the dirt out after work." },
      },
    ],
    substance: [
      {
        ...{ title: "Cleaning spirit", summary: "Takes old oil off.", use: ["cleaning"], flammable: true },
        ...{ signal: "danger", pictograms: ["GHS02"], statements: ["H226"], precautions: ["P210"] },
        "data-sheet": "In the folder by the door. What it says decides.",
        air: {
          ...{ "molar-mass": 140, gravity: 0.78, "lower-limit": "0.6 %", "exposure-limit": "100 ppm" },
          ...{ "flash-point": "40 °C", source: "its safety data sheet" },
        },
        ...{ hazards: ["vapour"], instead: "Warm water with a little soap." },
      },
    ],
    hazard: [
      {
        ...{ title: "Sharp edges", summary: "Sheet metal cuts.", signal: "warning", hazard: "Sharp edges." },
        ...{ consequence: "Deep cuts.", avoid: ["Hold it by the flat sides."] },
      },
    ],
    revisions: [
      {
        revisions: [
          {
            revision: 1,
            content: [digest],
            withdrawn: { from: "2026-12-01", because: "A step was missing." },
          },
        ],
      },
    ],
  };
