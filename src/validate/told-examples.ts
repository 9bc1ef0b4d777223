/**
 * An example of each code as `check` tells it, for the page for authors. Not written by hand: it is made from the examples by
 * which codes are tested, by `npx vitest run --config tests/vitest.config.ts tests/validate/told-examples.test.ts -u`.
 */
// biome-ignore-all format: made by a test, which holds it to what check says.
import type { Code } from "../model/codes.ts";

export const toldExamples: ReadonlyMap<Code, string> = new Map<Code, string>([
  ["not-utf8", `tools/driver.md:1:1  error not-utf8
  the file holds bytes that are not UTF-8. Save it as UTF-8.`],
  ["too-large", `tools/driver.md:1:1  error too-large
  the file has 1048577 bytes; the limit is 1048576. Split it, or make the picture smaller.
  1 | xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx
    | ^`],
  ["leaves-content", `modules/box/module.md:21:24  error leaves-content
  "../../../tools/driver.md" leads out of the content folder. Copy what is needed into the content folder.
  21 | The box has a [driver](../../../tools/driver.md). See [the wheel](#wheel-off).
     |                        ^`],
  ["stray-file", `notes.txt:1:1  warning stray-file
  nothing reads this file. Move it where it belongs, or out of the content folder.
  1 | a note
    | ^`],
  ["folder-without-module", `modules/case:1:1  warning folder-without-module
  this folder has no module.md. Add module.md, correct its name, or take the folder out.`],
  ["bad-id", `tools/Driver_2.md:1:1  error bad-id
  "Driver_2" is not a good id. Use lower-case letters, digits and hyphens, beginning with a letter.
  1 | ---
    | ^`],
  ["front-matter-missing", `tools/driver.md:1:1  error front-matter-missing
  the file does not begin with ---. Begin the file with --- , the fields, and --- again.
  1 | # Driver
    | ^`],
  ["front-matter-language", `tools/driver.md:1:1  error front-matter-language
  the front matter is marked as "js". Write it as YAML between two --- lines: other kinds could run code.
  1 | ---js
    | ^`],
  ["front-matter-yaml", `tools/driver.md:2:8  error front-matter-yaml
  the bracket [ is not closed. Close it with ].
  2 | title: [Driver
    |        ^`],
  ["step-yaml", `modules/box/module.md:44:3  error step-yaml
  the line is indented as if it belonged to the field above, which has a value already. Begin it in the same column as the field above.
  44 |   oops: x
     |   ^`],
  ["file-yaml", `programme.yaml:1:7  error file-yaml
  the bracket [ is not closed. Close it with ].
  1 | name: [a
    |       ^`],
  ["yaml-alias", `tools/driver.md:2:8  error yaml-alias
  an alias stands here. Write the value out where it is used, or put the text in quotes.
  2 | title: &a Driver
    |        ^`],
  ["unknown-field", `modules/box/module.md:3:1  error unknown-field
  "sumary" is not a field here; the nearest known is "summary". Correct its name, or take it out.
  3 | sumary: Take the lid off, clean the wheel, close it again.
    | ^`],
  ["missing-field", `modules/box/module.md:2:1  error missing-field
  the field "revision" is missing; expected a whole number. Add it.
  2 | title: Open the box
    | ^`],
  ["no-programme", `programme.yaml:1:1  error no-programme
  there is no programme.yaml in the content folder. Give the folder that holds it with --content, or begin a programme: benchwright new programme.`],
  ["wrong-type", `modules/box/module.md:4:11  error wrong-type
  "revision" is "one". Write a whole number.
  4 | revision: one
    |           ^`],
  ["wrong-unit", `modules/box/module.md:32:7  error wrong-unit
  "time" must be a time such as 5 min or 2 h 30 min, not "5 mm". Write a number and a unit of the right kind.
  32 | time: 5 mm
     |       ^`],
  ["wrong-thread", `modules/box/module.md:13:52  error wrong-thread
  the thread reads "4 BX"; expected 4 BA; the nearest known is 4 BA. Write it as 4 BA, M3x0.5, 1/4-20 UNC or 1/4 in BSF, or set kind: makers own.
  13 |  lid-screws: {name: lid screws, count: 4, thread: 4 BX, length: 1/2 in, drive: slotted, keep: tray A
     |                                                   ^`],
  ["odd-drive", `modules/box/module.md:13:81  warning odd-drive
  the drive "slottd" is not a known one; the nearest is "slotted". Correct it, or say it in words that are not so near.
  13 | s, count: 4, thread: 4 BA, length: 1/2 in, drive: slottd, keep: tray A}
     |                                                   ^`],
  ["torque-source", `modules/box/module.md:13:112  error torque-source
  the torque of "lid-screws" is a figure, 0.9 N·m, without a source. Name where it comes from in torque-source:, or use words such as snug.
  13 | th: 1/2 in, drive: slotted, keep: tray A, torque: 0.9 N·m}
     |                                                   ^`],
  ["torque-words", `modules/box/module.md:13:112  error torque-words
  "lid-screws" has a figure of torque, 0.9 N·m, and nobody says what class its screws are. Write words, such as snug; or say class:, thread: and what it goes into.
  13 | th: 1/2 in, drive: slotted, keep: tray A, torque: 0.9 N·m, torque-source: the maker}
     |                                                   ^`],
  ["torque-too-high", `modules/box/module.md:13:110  error torque-too-high
  20 N·m pulls M6 of 8.8 to 200 % of its proof load at a friction of 0.1 (ISO 898-1:2013, Table 3 (from memory, checked by its published loads); VDI 2230-1). Take a lower figure from the maker or from the sum, or write words.
  13 | th: 1/2 in, drive: slotted, keep: tray A, torque: 20 N·m, torque-source: the maker, class: 8.8}
     |                                                   ^`],
  ["torque-high", `modules/box/module.md:13:110  warning torque-high
  8 N·m pulls M6 of 8.8 to 80 % of its proof load at a friction of 0.1 (ISO 898-1:2013, Table 3 (from memory, checked by its published loads); VDI 2230-1). Leave more room, unless the maker says so.
  13 | th: 1/2 in, drive: slotted, keep: tray A, torque: 8 N·m, torque-source: the maker, class: 8.8}
     |                                                   ^`],
  ["torque-strips", `modules/box/module.md:13:110  error torque-strips
  6 N·m is 135 % of what strips 3 mm of thread in cast aluminium 356.0, 4.43 N·m (FED-STD-H28/2B; shear strength: table of materials, 140 to 190 MPa). Take a lower figure or more thread, or write words.
  13 | th: 1/2 in, drive: slotted, keep: tray A, torque: 6 N·m, torque-source: the maker, class: 12.9, into
     |                                                   ^`],
  ["unknown-class", `modules/box/module.md:13:150  error unknown-class
  the class reads "8.7"; expected one of 4.6, 4.8, 5.6, 5.8, 6.8, 8.8, 9.8, 10.9, 12.9, A1-50, A1-70, A1-80, A2-50, A2-70, A2-80, A4-50, A4-70, A4-80, CU2, CU3 or brass; an unmarked screw has none, and no figure holds for it; the nearest known is 8.8. Write one of the list, or words for the torque.
  13 | , torque: 3 N·m, torque-source: the maker, class: 8.7}
     |                                                   ^`],
  ["unknown-material", `modules/box/module.md:13:172  error unknown-material
  the material reads "bras"; expected one of steel-mild, steel-free-cutting, steel-c45, cast-iron, brass, brass-hard, brass-c38500, brass-die-cast, zinc-2, zinc-3, zinc-5, zinc-za8, aluminium-a380, aluminium-356, aluminium-6061; the nearest known is brass. Write one of the list.
  13 | e-source: the maker, class: 8.8, into: {material: bras}}
     |                                                   ^`],
  ["engagement-missing", `modules/box/module.md:13:161  warning engagement-missing
  brass C36000 (CZ121), soft, O61 strips easily, and nobody says how much thread holds; it takes 6.39 mm for M6 of 8.8 to break first. Say engagement: under into:.
  13 |  N·m, torque-source: the maker, class: 8.8, into: {material: brass}}
     |                                                   ^`],
  ["no-driver", `modules/box/module.md:13:81  warning no-driver
  "lid-screws" is hexagon, and none of the tools: of this module has that drive. Declare the tool under tools:, or give the tool's sheet its drive:.
  13 | s, count: 4, thread: 4 BA, length: 1/2 in, drive: hexagon, keep: tray A}
     |                                                   ^`],
  ["vapour-unguarded", `modules/box/module.md:62:14  error vapour-unguarded
  "spirit" is used indoors: all of it as vapour in 30 m³ (assumed; say room: in programme.yaml) is 2.4 times its exposure limit (a limit, 100 ppm). This step names none of its hazards (vapour). Name its hazard at the step; use less of it, a milder one, or go outdoors. How bad and how likely it is, and so the signal word, is for you to judge. The supplier's safety data sheet and local rules decide; this sum is an estimate.
  62 | substances: [spirit]
     |              ^`],
  ["message-in-prose", `modules/box/module.md:38:1  warning message-in-prose
  a safety message stands in the prose of "Take the lid off": "WARNING: the lid is sharp.". Make it a hazard sheet and name it under hazards: of the step, so that it stands before it.
  38 | WARNING: the lid is sharp.
     | ^`],
  ["no-avoidance", `hazards/vapour.md:7:8  error no-avoidance
  "avoid" must be a list with at least one way to avoid the hazard. Say under avoid: what one does so that it does not happen.
  7 | avoid: []
    |        ^`],
  ["vague-avoidance", `hazards/vapour.md:7:9  warning vague-avoidance
  the signal word is danger, and "Be careful." is all that is said to avoid the hazard. Say what to do: let the spring down, wear glasses, work outdoors.
  7 | avoid: [Be careful.]
    |         ^`],
  ["late-caution", `modules/box/module.md:34:14  warning late-caution
  "spirit" is first taken here, and its hazard "skin" is named only at the later step "clean". Name it under hazards: of the first step that takes the substance.
  34 | substances: [spirit]
     |              ^
  modules/box/module.md:65:19  its message comes here, when the substance has been used already
  65 | hazards: [vapour, skin]
     |                   ^`],
  ["notice-injury", `hazards/vapour.md:4:9  warning notice-injury
  the signal word is notice, and the text speaks of harm to people ("Burn"). Take caution, warning or danger, by how bad and how likely it is.
  4 | signal: notice
    |         ^`],
  ["unknown-tool", `modules/box/module.md:5:9  error unknown-tool
  there is no tool "drivre"; the nearest known is "driver". Correct the id, or write the sheet.
  5 | tools: [drivre]
    |         ^`],
  ["unknown-substance", `modules/box/module.md:62:14  error unknown-substance
  there is no substance "spirits"; the nearest known is "spirit". Correct the id, or write the sheet.
  62 | substances: [spirits]
     |              ^`],
  ["unknown-hazard", `modules/box/module.md:7:11  error unknown-hazard
  there is no hazard "vapor"; the nearest known is "vapour". Correct the id, or write the sheet.
  7 | hazards: [vapor]
    |           ^`],
  ["unknown-module", `modules/box/module.md:5:9  error unknown-module
  there is no module "bx"; the nearest known is "box". Correct the id, or write the module.
  5 | needs: [bx]
    |         ^`],
  ["unknown-part", `modules/box/module.md:10:64  error unknown-part
  there is no part "whel"; the nearest known is "wheel". Correct the id, or add it under parts:.
  10 |  lid, held-by: [lid-screws], covers: [wheel], in: whel}
     |                                                   ^`],
  ["unknown-fastener", `modules/box/module.md:10:29  error unknown-fastener
  there is no fastener set "screws"; known: lid-screws. Correct the id, or add it under fasteners:.
  10 |   lid: {name: lid, held-by: [screws], covers: [wheel]}
     |                             ^`],
  ["unknown-target", `modules/box/module.md:10:59  error unknown-target
  "lid-screw" is neither a part nor a fastener set of this module; the nearest known is "lid-screws". Correct the id, or add it under parts: or fasteners:.
  10 | name: lid, held-by: [lid-screws], covers: [wheel, lid-screw]}
     |                                                   ^`],
  ["unknown-state", `modules/box/module.md:44:9  error unknown-state
  there is no state "break"; the nearest known is "brake". Correct the id, or add it under state:.
  44 | makes: {break: off}
     |         ^`],
  ["unknown-value", `modules/box/module.md:44:16  error unknown-value
  the brake can't be "half"; expected one of on, off. Use one of its values.
  44 | makes: {brake: half}
     |                ^`],
  ["unknown-condition", `modules/box/module.md:31:14  error unknown-condition
  there is no condition "spring"; the nearest known is "springs". Correct the id, or add it to programme.yaml.
  31 | conditions: [spring]
     |              ^`],
  ["practice-steps", `modules/box/module.md:18:5  error practice-steps
  it has neither phase: nor steps:. Give phase: or steps:, at least two steps, none of them under mixed-in: too.
  18 |   - {id: p, title: P}
     |     ^`],
  ["unknown-phase", `modules/box/module.md:18:30  error unknown-phase
  there is no phase "stripp"; the nearest known is "strip". Correct the id, or add it under phases:.
  18 |   - {id: p, title: P, phase: stripp}
     |                              ^`],
  ["unknown-step", `modules/box/module.md:18:39  error unknown-step
  there is no step "clena"; the nearest known is "clean". Correct the id.
  18 |   - {id: p, title: P, steps: [lid-on, clena]}
     |                                       ^`],
  ["duplicate-id", `modules/box/module.md:19:10  error duplicate-id
  there is a practice "p" already. Give one of them another id.
  19 |   - {id: p, title: Q, phase: build}
     |          ^
  modules/box/module.md:18:10  the first one stands here
  18 |   - {id: p, title: P, phase: strip}
     |          ^`],
  ["practice-easy", `modules/box/module.md:18:5  warning practice-easy
  "P" is put right by lot in 2 of 24 cases (8.3 %); more than 5 % shows little. Ask for more steps with it, or mix in 1 more that do not belong (mixed-in:).
  18 |   - {id: p, title: P, phase: strip}
     |     ^`],
  ["practice-cannot-fail", `modules/box/module.md:18:5  warning practice-cannot-fail
  "P": none of its 2 steps has to come before another. Ask for steps of which some must come before others, or mix in some that do not belong (mixed-in:).
  18 |   - {id: p, title: P, steps: [lid-off, brake-off]}
     |     ^`],
  ["practice-long", `modules/box/module.md:18:5  warning practice-long
  "P" asks for 9 steps; about 8 is what people hold in mind and can compare. Cut it before "brake-on".
  18 |   - {id: p, title: P, steps: [lid-off, brake-off, wheel-off, clean, wheel-on, brake-on, lid-on, swee
     |     ^`],
  ["unbound-step", `modules/box/module.md:100:5  warning unbound-step
  nothing has to come before "sweep", nor after it: it may be done first, last or anywhere among the 9 steps. Say what it works on, which state it needs or makes, or name an earlier step under after: with the reason.
  100 | id: sweep
      |     ^`],
  ["after-implied", `modules/box/module.md:90:9  warning after-implied
  "wheel-on" comes before "lid-on" already: wheel-on → brake-on → lid-on; so the operation sheet does not show this pair. Take it out; where its reason teaches, say it in the step's prose or at a pair on the way.
  90 | after: {wheel-on: the wheel lies under it, brake-on: the brake is out of reach under the lid}
     |         ^`],
  ["after-nothing", `modules/box/module.md:90:9  error after-nothing
  after: names "brake-onn", and no step has that id; the nearest known is "brake-on". Correct the id, or take it out.
  90 | after: {brake-onn: the brake is out of reach under the lid}
     |         ^`],
  ["step-without-heading", `modules/box/module.md:41:1  error step-without-heading
  this is the second step block under one heading. Put a heading above it; its text is the step's title.
  41 | id: brake-off
     | ^`],
  ["step-unmarked", `modules/box/module.md:59:1  error step-unmarked
  this block looks like a step, and is not marked as one. Write \`\`\`yaml step above it; where it is only to be shown, write \`\`\`text.
  59 | \`\`\`yaml
     | ^`],
  ["no-steps", `modules/box/module.md:5:1  warning no-steps
  the module lists parts, and no block of it is a step. Write the block of each step as \`\`\`yaml step below a heading.
  5 | parts: {lid: {name: lid}}
    | ^`],
  ["too-many-steps", `modules/box/module.md:1:1  error too-many-steps
  the module has 501 steps; the limit is 500. Split it into modules that need one another.
  1 | ---
    | ^`],
  ["act-count", `modules/box/module.md:29:22  error act-count
  "lid-screws" has 4, and this step counts 5. Counts belong to fastener sets and are whole numbers from 1; a part moves as a whole, with all its pieces.
  29 | remove: {lid-screws: 5, lid: 1}
     |                      ^`],
  ["impossible-act", `modules/box/module.md:53:10  error impossible-act
  "wheel" is a part, and this step would slacken it. Parts are removed, refitted and worked on; slackening and tightening are for fasteners.
  53 | slacken: wheel
     |          ^`],
  ["self-reference", `modules/box/module.md:90:9  error self-reference
  "lid-on" can't come after itself. Name another one, or take it out.
  90 | after: {lid-on: the brake is out of reach under the lid}
     |         ^`],
  ["loop", `modules/box/module.md:11:20  error loop
  in: goes round in a circle: a → b → a. Break the circle: a thing can't lie in itself.
  11 |   a: {name: a, in: b}
     |                    ^`],
  ["after-later", `modules/box/module.md:29:9  error after-later
  "lid-off" is to come after "brake-off", which is written later. Put the steps in a right order, or turn the pair round.
  29 | after: {brake-off: no reason}
     |         ^
  modules/box/module.md:44:5  "brake-off" stands here
  44 | id: brake-off
     |     ^`],
  ["cycle", `modules/box/module.md:29:9  error cycle
  "lid-off" is to come after "wheel-on", but "lid-off" comes before "wheel-on" (the lid is still on: it covers the wheel), and so before itself. Take out one of the pairs of the circle, or mend the acts behind it.
  29 | after: {wheel-on: no reason}
     |         ^
  modules/box/module.md:72:5  "wheel-on" stands here
  72 | id: wheel-on
     |     ^`],
  ["swap-unbound", `modules/box/module.md:44:12  warning swap-unbound
  "brake-off" may swap with "lid-off", but no rule binds these two steps. Take it out.
  44 | may-swap: {lid-off: either will do}
     |            ^`],
  ["swap-critical", `modules/box/module.md:54:12  error swap-critical
  "wheel-off" before "clean" is critical: the wheel is worked on after coming off. Take it out, or say why the pair is not critical by mending the steps.
  54 | may-swap: {clean: either will do}
     |            ^`],
  ["swap-changes-tray", `modules/box/module.md:52:21  error swap-changes-tray
  "wheel-off" and "lid-off" can't change places: one changes what the other needs. Take it out: if these two change places, the account no longer comes out.
  52 | may-swap: {lid-off: either will do}
     |                     ^`],
  ["cover-on", `modules/box/module.md:52:1  error cover-on
  "lid" (lid) is still on and covers "wheel" (wheel). Remove the cover first, or name it under through: if one works through it.
  52 | remove: wheel
     | ^`],
  ["cover-off", `modules/box/module.md:53:1  error cover-off
  "lid" (lid) is off, and this step works through it. Refit the cover first, or take it out of through:.
  53 | through: [lid]
     | ^`],
  ["still-held", `modules/box/module.md:29:1  error still-held
  "lid" (lid) is still held by "lid-screws" (lid screws): 4 tight. Undo the fasteners first.
  29 | remove: [lid]
     | ^`],
  ["in-the-way", `modules/box/module.md:88:1  error in-the-way
  "lid" (lid) can't go back while "lid-screws" (lid screws) are in: 4 slack. What stands first is refitted first: name "lid" before "lid-screws".
  88 | refit: [lid-screws, lid]
     | ^`],
  ["removes-what-is-off", `modules/box/module.md:61:1  error removes-what-is-off
  "wheel" (wheel) is off already. Mend the count, or take the act out.
  61 | remove: [wheel]
     | ^`],
  ["refits-what-is-on", `modules/box/module.md:80:1  error refits-what-is-on
  "wheel" (wheel) is on already. Mend the order, or take the act out.
  80 | refit: [wheel]
     | ^`],
  ["refits-too-many", `modules/box/module.md:99:1  error refits-too-many
  this step would refit 2 of "lid-screws" (lid screws), and 0 are out. Mend the count.
  99 | refit: {lid-screws: 2}
     | ^`],
  ["tightens-what-is-not-in", `modules/box/module.md:89:1  error tightens-what-is-not-in
  this step would tighten 4 of "lid-screws" (lid screws), and 0 are slack. Refit it first, or take the act out.
  89 | tighten: [lid-screws]
     | ^`],
  ["place-taken", `modules/box/module.md:74:1  error place-taken
  "wheel" (wheel) can't go where "spare" (spare wheel) still is. Remove the other one first.
  74 | refit: [wheel]
     | ^`],
  ["wrong-state", `modules/box/module.md:50:1  error wrong-state
  the brake must be "off" here, not "on" to move "wheel" (wheel). Bring the state about first with makes:.
  50 | id: wheel-off
     | ^`],
  ["ends-off", `modules/box/module.md:52:1  error ends-off
  "wheel" (wheel) is off at the end. Refit it, or list it under leaves:.
  52 | remove: wheel
     | ^
  modules/box/module.md:11:3  it is listed here
  11 |   wheel: {name: wheel, only-while: {brake: off}}
     |   ^`],
  ["ends-on", `modules/box/module.md:73:1  error ends-on
  "wheel" (wheel) is on at the end, and must stay off by what leaves: says. Do not refit it, or take it out of leaves:.
  73 | refit: [wheel]
     | ^
  modules/box/module.md:16:1  leaves: says so here
  16 | leaves: [wheel]
     | ^`],
  ["ends-state", `modules/box/module.md:44:9  error ends-state
  the brake must be "on" at the end, not "off". Bring it to "on" with makes:, or mend ends: of the state.
  44 | makes: {brake: off}
     |         ^
  modules/box/module.md:15:3  it is listed here
  15 |   brake: {name: brake, values: [on, off], starts: on, ends: on}
     |   ^`],
  ["unsafe-stop", `modules/box/module.md:65:1  error unsafe-stop
  not safe to stop here: nothing has dried "wheel" since "clean". Put stop: after the step that makes it safe, say with wait: or dries: where it dries, or mend never-left:.
  65 | stop: true
     | ^`],
  ["never-undone", `modules/box/module.md:13:3  warning never-undone
  no step undoes "feet" (feet). Name it in the step that undoes it, or say with stays: why it stays.
  13 |   feet: {name: feet, count: 4}
     |   ^`],
  ["stays-undone", `modules/box/module.md:13:104  error stays-undone
  "lid-screws" (lid screws) is to stay, and "lid-on" handles it. Take stays: out, or the act.
  13 | BA, length: 1/2 in, drive: slotted, keep: tray A, stays: nobody opens it}
     |                                                   ^`],
  ["oil-washed-off", `modules/box/module.md:54:13  warning oil-washed-off
  "wheel" (wheel) is lubricated here for the last time, and "clean" cleans it afterwards. Put the cleaning first, or lubricate once more after it; where the oil is to clean or loosen, say so under substances: {use: …, for: cleaning}.
  54 | substances: [oil]
     |             ^
  modules/box/module.md:64:13  this is the cleaning
  64 | substances: [spirit]
     |             ^`],
  ["oil-on-wet", `modules/box/module.md:74:13  warning oil-on-wet
  "wheel" (wheel) is lubricated here, and nothing has dried it since "clean" cleaned it. Let it dry first: say so with dries: or wait: of the cleaning, or in a step of its own; where the oil is to clean or loosen, say so under substances: {use: …, for: penetrating}.
  74 | substances: [oil]
     |             ^
  modules/box/module.md:62:13  this is the cleaning
  62 | substances: [spirit]
     |             ^`],
  ["kept-dry", `modules/box/module.md:74:13  error kept-dry
  "wheel" (wheel) is to be kept dry; this step brings oil on it, and no later step cleans and dries it. Take the part out of work: of this step, or clean and dry it afterwards.
  74 | substances: [oil]
     |             ^`],
  ["fire-unnamed", `modules/box/module.md:62:14  error fire-unnamed
  "spirit" can burn, and this step does not name its hazard "vapour". Name the hazard sheet: under hazards: of the step, and first under hazards: of the substance.
  62 | substances: [spirit]
     |              ^`],
  ["hot-work-vapour", `modules/box/module.md:65:11  error hot-work-vapour
  this is hot work, and it takes what can burn. Put a wait: or a step that dries: between the two, and nothing that can burn into hot work.
  65 | hot-work: true
     |           ^
  modules/box/module.md:62:13  what can burn is taken here
  62 | substances: [spirit]
     |             ^`],
  ["vapour-shut-in", `modules/box/module.md:91:1  error vapour-shut-in
  "lid" (lid) goes back over "wheel" (wheel), wet with what can burn since "brake-on". Put a wait: or a step that dries: before the cover goes back. As a lubricant that is to stay there, take one that is not labelled as flammable.
  91 | refit: [lid, lid-screws]
     | ^
  modules/box/module.md:81:13  what can burn is taken here
  81 | substances: [spirit]
     |             ^`],
  ["handed-on", `modules/build/module.md:5:14  error handed-on
  "strip" hands "works" on, which is not listed here. List it under parts: or fasteners:, or mend leaves: of the module that hands it on.
  5 | begins-from: strip
    |              ^`],
  ["handed-nowhere", `modules/strip/module.md:12:20  warning handed-nowhere
  "lid" is handed on to "build", which begins from "box". Give begins-from: in the module that goes on with it, or say off or discarded under leaves:.
  12 | leaves: {lid: {to: build}, lid-screws: {to: build}, wheel: {to: build}}
     |                    ^`],
  ["begins-otherwise", `modules/build/module.md:12:60  error begins-otherwise
  the spring starts "let down" here, and "strip" leaves it "wound". Mend starts: here, or ends: there.
  12 | {name: spring, values: [wound, let down], starts: let down}
     |                                                   ^`],
  ["draft-mark", `modules/box/module.md:5:9  error draft-mark
  not finished: the summary. Write what is missing, or see that nothing is, and take this line of draft: out.
  5 | draft: [the summary]
    |         ^`],
  ["unwritten", `modules/box/module.md:3:10  warning unwritten
  the module is still a draft in its title. Write your own in place of “still to be written” and of the sentences that something new begins with, and take “Draft:” out once all is.
  3 | summary: Take the lid off, clean the wheel, close it again.
    |          ^`],
  ["undeclared-use", `modules/box/module.md:61:14  error undeclared-use
  this step uses the substance "spirit", which substances: of the module does not list. Add it to the module's list.
  61 | substances: [spirit]
     |              ^`],
  ["unused-declaration", `modules/box/module.md:6:20  warning unused-declaration
  no step uses the substance "spirit". Name it in the step that uses it, or take it out.
  6 | substances: [{use: spirit, amount: 50 mL, place: outdoors}]
    |                    ^`],
  ["record-nowhere", `modules/box/module.md:34:1  warning record-nowhere
  "lid-off" records something for no step. Name the refitting step in record-for:.
  34 | record: which way round the lid was
     | ^`],
  ["figure-missing", `modules/box/module.md:23:10  error figure-missing
  there is no picture "modules/box/figures/bx.svg". Put the file there, or correct the path.
  23 | ![A box](figures/bx.svg)
     |          ^`],
  ["figure-alt", `modules/box/module.md:23:5  error figure-alt
  the picture "figures/box.svg" has no alt text. Say in words what it shows to someone who can't see it.
  23 | ![](figures/box.svg)
     |     ^`],
  ["item-unknown", `modules/box/module.md:61:61  error item-unknown
  item 1 is "whel"; the module has no such part or fastener set; the nearest known is "wheel". Correct the id in of:, or give what the module does not take apart a name: alone.
  61 | ile: figures/box.svg, alt: A box, items: {1: {of: whel, at: [50, 50]}}}
     |                                                   ^`],
  ["item-place", `modules/box/module.md:61:72  error item-place
  item 1 is at [50, 120]; expected percentages from 0 to 100. Mend at: percent of the figure's width, then of its height, from 0 to 100.
  61 | s/box.svg, alt: A box, items: {1: {of: wheel, at: [50, 120]}}}
     |                                                   ^`],
  ["item-twice", `modules/box/module.md:61:117  error item-twice
  items 1 and 3 are both "wheel". Leave one: equal items have one number (ISO 6433).
  61 |  at: [50, 50]}, 2: {of: lid, at: [9, 9]}, 3: {of: wheel, at: [1, 1]}}}
     |                                                   ^
  modules/box/module.md:61:61  item 1 stands here
  61 | ile: figures/box.svg, alt: A box, items: {1: {of: wheel, at: [50, 50]}, 2: {of: lid, at: [9, 9]}, 3:
     |                                                   ^`],
  ["picture-broken", `modules/box/figures/box.svg:1:1  error picture-broken
  the drawing is not well-formed: it begins with <svg>; expected <svg xmlns="http://www.w3.org/2000/svg">. Save it anew from the program that made it, as PNG, JPEG or WebP; a drawing as plain SVG.
  1 | <svg><g></svg>
    | ^`],
  ["picture-pixels", `modules/box/figures/lid.png:1:1  error picture-pixels
  the picture has 30000 × 30000 pixels; the limit is 100000000 in all. Make it smaller: a site shows no more than 1600 across.`],
  ["picture-unsafe", `modules/box/figures/box.svg:2:1  error picture-unsafe
  <script> may not stand in a drawing: it runs a script. Take it out, or save the drawing as plain SVG: a drawing of the site is lines, lettering and pictures within it.
  2 | <script/></svg>
    | ^`],
  ["picture-name", `modules/box/figures/box.png.480.webp:1:1  error picture-name
  "modules/box/figures/box.png.480.webp" is called as the build calls "modules/box/figures/box.png" made 480 pixels wide. Give it another name or folder, and mend the paths that lead to it.
  1 | any
    | ^`],
  ["figure-unused", `modules/box/figures/spare.svg:1:1  warning figure-unused
  no page shows "modules/box/figures/spare.svg". Use it, or take it out.
  1 | <svg xmlns='http://www.w3.org/2000/svg'/>
    | ^`],
  ["dead-link", `modules/box/module.md:21:24  error dead-link
  "../../tools/drivre.md" leads to no page; the nearest known is "tools/driver.md". Correct the path or the place after #.
  21 | The box has a [driver](../../tools/drivre.md). See [the wheel](#wheel-off).
     |                        ^`],
  ["raw-html", `modules/box/module.md:38:6  warning raw-html
  "<b>" looks like HTML. Write it in Markdown.
  38 | Some <b>bold</b> prose.
     |      ^`],
  ["quiz-no-right", `modules/box/quiz.yaml:6:7  error quiz-no-right
  found no right option; expected an option marked right: true. Mark the right option with right: true.
  6 |       - {text: The lid, why: No.}
    |       ^`],
  ["quiz-many-right", `modules/box/quiz.yaml:7:9  error quiz-many-right
  found 2 right options; expected one, or choose-several. Leave one, or make it choose-several.
  7 |       - {text: The wheel, right: true}
    |         ^`],
  ["quiz-equal-options", `modules/box/quiz.yaml:7:9  error quiz-equal-options
  found "the  LID" twice; expected options that differ. Make them different.
  7 |       - {text: the  LID, why: The same.}
    |         ^`],
  ["quiz-cannot-be-wrong", `modules/box/quiz.yaml:28:12  error quiz-cannot-be-wrong
  found steps that may stand in any order; expected two steps of which one must come before the other. Add a wrong option or place; choose steps of which some must come before others.
  28 |     steps: [lid-off, brake-off]
     |            ^`],
  ["quiz-tolerance", `modules/box/quiz.yaml:21:13  error quiz-tolerance
  found 50 mL; expected a tolerance: 5 %, or a size with its unit. Give a tolerance of the same dimension, or a share such as 5 %.
  21 |     answer: 50 mL
     |             ^`],
  ["quiz-size", `modules/box/quiz.yaml:28:12  error quiz-size
  found 2 steps; expected 4 to 8. Bring it to the number that the message says.
  28 |     steps: [lid-off, wheel-off]
     |            ^`],
  ["quiz-no-reason", `modules/box/quiz.yaml:7:9  error quiz-no-reason
  found "The wheel"; expected a why: that says what is wrong with it. Add why:, so that the mistake teaches something.
  7 |       - {text: The wheel}
    |         ^`],
  ["quiz-slips", `modules/box/quiz.yaml:46:12  error quiz-slips
  found 3 slips; expected a slip in every 4 letters of the shortest answer at most, which has 6. Lower slips:, or write other spellings under answers:.
  46 |     slips: 3
     |            ^`],
  ["quiz-place", `modules/box/quiz.yaml:56:9  error quiz-place
  found "in the middle" beyond the edge of the figure; expected percentages from 0 to 100. Mend its percentages of the figure's width and height.
  56 |       - {where: in the middle, circle: [95, 50, 10], right: true}
     |         ^`],
  ["quiz-unknown-group", `modules/box/quiz.yaml:67:36  error quiz-unknown-group
  there is no group "Stay"; the nearest known is "Stays". Correct its name, or add it under groups:.
  67 |       - {text: brake lever, group: Stay, why: It is only turned.}
     |                                    ^`],
  ["quiz-empty-group", `modules/box/quiz.yaml:63:19  error quiz-empty-group
  found no item in "Lost"; expected an item in each group: an empty one is found out by counting. Put an item into it, or take the group out.
  63 |     groups: [Off, Lost, Stays]
     |                   ^`],
  ["quiz-case", `modules/box/quiz.yaml:77:9  error quiz-case
  the case has no turns; expected a figure for each of thread, turns. Give exactly the figures that its sum takes, with their units, and name no others in ask:.
  77 |       - {thread: M3}
     |         ^`],
  ["quiz-unknown-objective", `modules/box/quiz.yaml:1:8  error quiz-unknown-objective
  found no question for "covers"; expected an objective of a question. Correct it, or write it under objective: of the questions meant.
  1 | paper: {objectives: {covers: 1}}
    |        ^`],
  ["quiz-never-drawn", `modules/box/quiz.yaml:12:9  warning quiz-never-drawn
  found a question that no paper draws; expected an objective that paper: names. Name its objective under paper:, or take the question out.
  12 |   - id: several
     |         ^`],
  ["quiz-guessable", `modules/box/quiz.yaml:2:1  warning quiz-guessable
  someone who guesses passes with a chance of 90 %; a pass mark of 70 % brings it to 0 %, or "amount" as a critical question brings it to 0 %. Ask more, make a question critical, or raise the mark.
  2 | questions:
    | ^`],
  ["bad-identifier", `programme.yaml:2:13  error bad-identifier
  "identifier" must be an https address such as https://workshop.example/bench or a tag such as tag:workshop.example,2026:bench, without / at its end, not "http://bench.example". Choose one that is yours and will not change: it stands in every sign-off.
  2 | identifier: http://bench.example
    |             ^`],
  ["unknown-time-zone", `programme.yaml:2:12  error unknown-time-zone
  "time-zone" must be a time zone of the IANA list, such as Europe/London or UTC, not "Europe/Sarnley". Write a name of the IANA list.
  2 | time-zone: Europe/Sarnley
    |            ^`],
  ["identifier-missing", `programme.yaml:2:1  error identifier-missing
  there are mentors and no identifier. Add identifier: with an https address or a tag of yours, or take mentors: out.
  2 | mentors:
    | ^`],
  ["bad-key", `programme.yaml:3:31  error bad-key
  "key" must be a public key such as did:key:z6Mk…, as key public prints it, not "did:key:z6MkNone". Copy the whole line that key public prints.
  3 |   - {id: ada, name: Ada, key: did:key:z6MkNone, from: 2026-01-01}
    |                               ^`],
  ["dates-reversed", `programme.yaml:4:113  error dates-reversed
  to: 2025-12-31 is before from: 2026-01-01. Mend one of the dates.
  4 | d2znGc59LU3K7mubaRcFbLfLX", from: 2026-01-01, to: 2025-12-31}
    |                                                   ^`],
  ["key-twice", `programme.yaml:5:31  error key-twice
  "bea" has the key of "ada". Each mentor makes a key of their own and lends it to nobody; for another time of office mend from: and to:.
  5 |   - {id: bea, name: Bea, key: "did:key:z6Mkon3Necd6NkkyfoGoHxid2znGc59LU3K7mubaRcFbLfLX", from: 2026
    |                               ^
  programme.yaml:4:31  the first one stands here
  4 |   - {id: ada, name: Ada, key: "did:key:z6Mkon3Necd6NkkyfoGoHxid2znGc59LU3K7mubaRcFbLfLX", from: 2026
    |                               ^`],
  ["rule-weaker", `modules/box/module.md:5:21  error rule-weaker
  unaided: is 1 here, and 2 in programme.yaml. Take it out, or ask for more than programme.yaml does.
  5 | sign-off: {unaided: 1}
    |                     ^`],
  ["reserved-id", `modules/programme/module.md:1:1  error reserved-id
  a module can't be called "programme". Give its folder another name.
  1 | ---
    | ^`],
  ["revision-order", `modules/box/revisions.yaml:2:16  error revision-order
  revision 2 was released, and the module is at 1. List each revision once, the lowest first, none above revision: of the module.
  2 |   - {revision: 2, content: [uEiCJU4jdx6eEEZMLG-nPFjrKFhTgmDn4QFs6haVqGap1IQ]}
    |                ^`],
  ["revision-unreleased", `modules/box/module.md:4:11  warning revision-unreleased
  revision 1 is not released. Run benchwright record release, which keeps it; raise revision: first where sign-offs of before should not carry over.
  4 | revision: 1
    |           ^`],
  ["release-altered", `modules/box/released/1-uEiCJU4jdx6eEEZMLG-nPFjrKFhTgmDn4QFs6haVqGap1IQ.json:1:1  error release-altered
  the digest of what it holds is uEiB2vpgRosiQo4diqPuw-vd5ugwi6aXpTyEnVDAi-SPnqw, not the one in its name. Bring the file back as it was, or take it out: old answers on it then can't be marked again.
  1 | {"module":"box"}
    | ^`],
  ["withdrawals-missing", `programme.yaml:4:10  warning withdrawals-missing
  there is no withdrawals/ada.json. The mentor runs benchwright record withdraw --key FILE once, naming nothing; it makes the list and signs it.
  4 |   - {id: ada, name: Ada, key: "did:key:z6Mkon3Necd6NkkyfoGoHxid2znGc59LU3K7mubaRcFbLfLX", from: 2026
    |          ^`],
  ["withdrawals-unreadable", `withdrawals/ada.json:1:1  error withdrawals-unreadable
  The file is not JSON, or not all of it is there: reading stopped at line 1. Take it again from the person who has it, as a file, not as text copied out of a message. Bring the file back as it was, or let the mentor make it anew with benchwright record withdraw.
  1 | {
    | ^`],
  ["withdrawals-unsigned", `withdrawals/ada.json:1:1  error withdrawals-unsigned
  Expected exactly ["https://www.w3.org/ns/credentials/v2"]: any other could change what the words mean; found nothing. Ask whoever signed it for the file as they signed it. Let the mentor sign it with benchwright record withdraw.
  1 | {}
    | ^`],
  ["withdrawals-key", `withdrawals/ada.json:1:1  error withdrawals-key
  it is signed by did:key:z6Mko9hTggMwjSTEaJaPUfE6tqcy2xvU6BnNq3e3o8qVBiyH, and the key of "ada" is did:key:z6Mkon3Necd6NkkyfoGoHxid2znGc59LU3K7mubaRcFbLfLX. Let the mentor named by the file sign it, with the key that programme.yaml lists.
  1 | {"@context":["https://www.w3.org/ns/credentials/v2"],"id":"tag:bench.example,2026:test/withdrawals/d
    | ^`],
  ["withdrawals-expired", `withdrawals/ada.json:1:1  warning withdrawals-expired
  it was good until 2026-02-01T00:00:00Z. Let the mentor renew it with benchwright record withdraw.
  1 | {"@context":["https://www.w3.org/ns/credentials/v2"],"id":"tag:bench.example,2026:test/withdrawals/d
    | ^`],
  ["unknown-mentor", `withdrawals/ida.json:1:1  error unknown-mentor
  there is no mentor "ida"; the nearest known is "ada". Correct the file's name: it is the mentor's id; or list the mentor under mentors:.
  1 | {"@context":["https://www.w3.org/ns/credentials/v2"],"id":"tag:bench.example,2026:test/withdrawals/d
    | ^`],
  ["quiz-without-module", `modules/other/quiz.yaml:1:1  error quiz-without-module
  there is no module.md beside this quiz. Add module.md beside it.
  1 | questions: []
    | ^`],
]);
