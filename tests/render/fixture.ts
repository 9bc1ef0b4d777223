/** A small hand mill, invented, that has one of everything an operation sheet can show; names are meant to be awkward. */
import { type Book, bookOf } from "../../layouts/book.ts";
import { raw } from "../../layouts/html.ts";
import type { Assets, ModuleView, Site } from "../../src/model/site.ts";
import { read } from "../../src/read/read.ts";
import { validate } from "../../src/validate/validate.ts";
import { type Files, writeFolder } from "../support/content-folder.ts";
import { wholeSite } from "../support/whole-site.ts";

const programme = `name: Mill & <club>
place: The shed
emergency: Ring the number by the door.
conditions:
  lead: {name: Lead paint, look-for: thick red paint, if-unknown: treat it as lead}
`;

const tool = `---
title: Slotted screwdriver
summary: Turns screws.
drive: slotted
use: [screws that fit it]
---
See [the mill](../modules/mill/module.md#constructor), [its screws](../modules/mill/module.md#f_guard-screws) and [spirit](../substances/spirit.md).
`;

const substance = `---
title: Spirit
summary: Lifts oil.
use: [cleaning]
flammable: true
signal: danger
pictograms: [GHS02, GHS08]
statements: [H226, H999]
data-sheet: In the red binder; it decides.
hazards: [vapour]
---
Prose.
`;

const hazard = (title: string, signal: string) => `---
title: ${title}
summary: What it is.
signal: ${signal}
hazard: ${title} is here.
consequence: You are hurt
avoid: [Keep away.]
---
Prose.
`;

const mill = `---
title: Strip <b>the</b> mill
summary: Off & on again.
revision: 2
issued: 2026-11-20
written-by: mill bench
tools: [driver]
substances: [{use: spirit, amount: 20 mL, place: outdoors}]
hazards: [vapour, pinch]
conditions: [lead]
wear: [glasses]
never-wear: [gloves]
parts:
  guard: {name: guard, held-by: {guard-screws: {out: 2, slack: 1}}, covers: [shaft], keep: "shelf, face up"}
  shaft: {name: shaft, held-by: [pin], only-while: {power: let down}, keep: tray 2}
  old-felt: {name: old felt, keep: bag}
  felt: {name: new felt, replaces: old-felt}
fasteners:
  guard-screws: {name: guard screws, count: 3, thread: 4 BA, length: 1/2 in, drive: slotted, keep: "tray 1, on a card", matched: true, torque: snug}
  pin: {name: pin, count: 1, kind: taper pin, keep: tray 2}
state:
  power: {name: mainspring, values: [wound, let down], starts: wound, ends: let down}
leaves: [old-felt]
as-found: [{check: Turns freely, limit: by hand}]
as-left: [{check: Turns freely}]
ends: {done: It turns., refer: Ask the mentor.}
phases: {down: Taking down, up: Building up}
sources: [common practice]
---
About the mill. ![The mill](figures/mill.svg)

## Let it down

\`\`\`yaml step
id: main
makes: {power: let down}
through: [guard]
hazards: [pinch]
critical: true
time: 5 min
phase: down
check: the shaft is limp
mistakes: [{mistake: letting go, result: it spins}]
if-not: [{sign: it pulls, cause: still wound, do: go on}]
\`\`\`

Prose of the first step.

## Take the guard off

\`\`\`yaml step
id: guard-off
slacken: {guard-screws: 1}
remove: {guard-screws: 2, guard: 1}
tools: [driver]
conditions: [lead]
record: turns of each screw
record-for: guard-on
time: 4 min
phase: down
\`\`\`

## Take the shaft out

\`\`\`yaml step
id: constructor
remove: [pin, shaft]
after: {guard-off: "because <i>I</i> say so"}
hazards: [vapour, pinch]
substances: [spirit]
wait: 12 h
stop: true
phase: down
\`\`\`

## Change the felt

\`\`\`yaml step
id: felt-on
remove: [old-felt]
refit: [felt]
phase: up
\`\`\`

### A note

Plain prose among steps.

## Put the shaft in

\`\`\`yaml step
id: shaft-in
refit: [shaft, pin]
tighten: [pin]
phase: up
\`\`\`

## Put the guard on

\`\`\`yaml step
id: guard-on
refit: [guard, guard-screws]
tighten: [guard-screws]
phase: up
\`\`\`

## Afterwards

See [the felt](#felt-on) and [elsewhere](https://example.org/).
`;

const picture =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 180"><title>Mill</title><path d="M0 0h9"/></svg>\n';

export const millFiles: Files = new Map([
  ["programme.yaml", programme],
  ["tools/driver.md", tool],
  ["substances/spirit.md", substance],
  ["hazards/vapour.md", hazard("Vapour", "warning")],
  ["hazards/pinch.md", hazard("Pinch point", "danger")],
  ["modules/mill/module.md", mill],
  ["modules/mill/figures/mill.svg", picture],
]);

export interface Fixture {
  readonly contentDir: string;
  readonly site: Site;
  readonly mill: ModuleView;
}

/** Reads, validates and derives the mill from a folder that goes after the test. */
export function millSite(): Fixture {
  const contentDir = writeFolder(millFiles);
  const { reading, diagnostics } = read(contentDir);
  const { content, diagnostics: more } = validate(reading);
  const errors = [...diagnostics, ...more].filter(({ severity }) => severity === "error");
  if (errors.length > 0)
    throw new Error(errors.map(({ file, line, message }) => `${file}:${line} ${message}`).join("\n"));
  const site = wholeSite(content);
  return { contentDir, site, mill: site.modules[0]! };
}

/** What layouts make pages of a site with, where neither prose nor sizes of pictures matter. */
export const plainBook = (site: Site, assets: Assets = plainAssets): Book =>
  bookOf(
    site,
    assets,
    () => raw(""),
    () => undefined,
  );

const plainAssets: Assets = { style: "main.css", furtherStyle: "further.css", scripts: new Map() };
