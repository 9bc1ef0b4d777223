/**
 * The catalogue of diagnostics: every code, how bad it is, what it means and what to do about it. The documentation of
 * codes is made from it, and a test holds that each one has an example that brings it about.
 */

export type Severity = "error" | "warning";

export interface CodeEntry {
  readonly severity: Severity;
  /** What is wrong, for the list of codes. */
  readonly means: string;
  /** What to do. */
  readonly mend: string;
}

const error = (means: string, mend: string) => ({ severity: "error" as const, means, mend });
const warning = (means: string, mend: string) => ({ severity: "warning" as const, means, mend });

export const codes = {
  // Reading files
  "no-content": error(
    "the content folder does not exist or can't be read",
    "Give the folder that holds programme.yaml with --content, or begin one: benchwright new programme.",
  ),
  "no-programme": error(
    "the content folder has no programme.yaml",
    "Give the folder that holds it with --content, or begin a programme: benchwright new programme.",
  ),
  "not-utf8": error("a file is not UTF-8 text", "Save it as UTF-8."),
  "too-large": error("a file is larger than the limit", "Split it, or make the picture smaller."),
  "leaves-content": error(
    "a link or path leads out of the content folder",
    "Copy what is needed into the content folder.",
  ),
  unreadable: error(
    "a file can't be read",
    "Look at its permissions, or whether it is a folder or a device.",
  ),
  "stray-file": warning(
    "a file stands where nothing reads it",
    "Move it where it belongs, or out of the content folder.",
  ),
  "folder-without-module": warning(
    "a folder below modules/ holds no module",
    "Add module.md, correct its name, or take the folder out.",
  ),
  "bad-id": error(
    "a file or folder name is not a good id",
    "Use lower-case letters, digits and hyphens, beginning with a letter.",
  ),
  // YAML
  "front-matter-missing": error(
    "a Markdown file does not begin with front matter",
    "Begin the file with --- , the fields, and --- again.",
  ),
  "front-matter-language": error(
    "front matter is written in another language than YAML",
    "Write it as YAML between two --- lines: other kinds could run code.",
  ),
  "front-matter-yaml": error("front matter is not valid YAML", "Mend the YAML at the place shown."),
  "step-yaml": error("a step block is not valid YAML", "Mend the YAML at the place shown."),
  "file-yaml": error("a YAML file is not valid YAML", "Mend the YAML at the place shown."),
  "yaml-alias": error(
    "YAML uses an anchor or alias",
    "Write the value out where it is used, or put the text in quotes.",
  ),
  // Fields
  "unknown-field": error("a field is not known", "Correct its name, or take it out."),
  "missing-field": error("a required field is missing", "Add it."),
  "wrong-type": error("a value has the wrong type", "Write what is expected there."),
  "wrong-unit": error(
    "a quantity can't be read or has the wrong unit",
    "Write a number and a unit of the right kind.",
  ),
  "wrong-thread": error(
    "a thread is written in a way that is not known",
    "Write it as 4 BA, M3x0.5, 1/4-20 UNC or 1/4 in BSF, or set kind: makers own.",
  ),
  "torque-source": error(
    "a torque figure has no source",
    "Name where it comes from in torque-source:, or use words such as snug.",
  ),
  // Names
  "duplicate-id": error("an id is used twice", "Give one of them another id."),
  "unknown-tool": error("a tool is named that has no sheet", "Correct the id, or write the sheet."),
  "unknown-substance": error("a substance is named that has no sheet", "Correct the id, or write the sheet."),
  "unknown-hazard": error("a hazard is named that has no sheet", "Correct the id, or write the sheet."),
  "unknown-module": error("a module is named that does not exist", "Correct the id, or write the module."),
  "unknown-part": error(
    "a part is named that the module does not list",
    "Correct the id, or add it under parts:.",
  ),
  "unknown-fastener": error(
    "a fastener set is named that the module does not list",
    "Correct the id, or add it under fasteners:.",
  ),
  "unknown-target": error(
    "an act, or what a part covers, is neither a part nor a fastener set",
    "Correct the id, or add it under parts: or fasteners:.",
  ),
  "unknown-state": error(
    "a state is named that the module does not list",
    "Correct the id, or add it under state:.",
  ),
  "unknown-value": error("a state is given a value that it can't have", "Use one of its values."),
  "unknown-condition": error(
    "a condition is named that programme.yaml does not list",
    "Correct the id, or add it to programme.yaml.",
  ),
  "unknown-phase": error(
    "a step names a phase that the module does not list",
    "Correct the id, or add it under phases:.",
  ),
  "unknown-step": error("a step is named that the module does not have", "Correct the id."),
  "after-nothing": error("an after: names a step that does not exist", "Correct the id, or take it out."),
  "draft-mark": error(
    "a draft is marked as not finished",
    "Write what is missing, or see that nothing is, and take this line of draft: out.",
  ),
  unwritten: warning(
    "words of a draft still stand where the author's own belong",
    "Write your own in place of “still to be written” and of the sentences that something new begins with, and take “Draft:” out once all is.",
  ),
  // Steps
  "step-without-heading": error(
    "a step block has no heading of its own",
    "Put a heading above it; its text is the step's title.",
  ),
  "step-unmarked": error(
    "a block looks like a step and is not read as one",
    "Write ```yaml step above it; where it is only to be shown, write ```text.",
  ),
  "no-steps": warning(
    "a module lists parts or fasteners and has no step",
    "Write its steps, or take the parts and fasteners out.",
  ),
  "too-many-steps": error(
    "a module has more steps than the limit",
    "Split it into modules that need one another.",
  ),
  "act-count": error(
    "an act has a count that makes no sense",
    "Counts belong to fastener sets and are whole numbers from 1; a part moves as a whole, with all its pieces.",
  ),
  "impossible-act": error(
    "an act can't be done to such a thing",
    "Parts are removed, refitted and worked on; slackening and tightening are for fasteners.",
  ),
  "self-reference": error("a thing refers to itself", "Name another one, or take it out."),
  loop: error(
    "parts lie in, or replace, one another in a circle",
    "Break the circle: a thing can't lie in itself.",
  ),
  // Practices
  "practice-steps": error(
    "a practice does not say which steps are to be put in order, or says it twice",
    "Give phase: or steps:, at least two steps, none of them under mixed-in: too.",
  ),
  "practice-easy": warning(
    "a practice is put right by lot too often to show anything",
    "Ask for more steps with it, or mix in some that do not belong (mixed-in:).",
  ),
  "practice-cannot-fail": warning(
    "a practice can't be put wrong, since any order of its steps is right",
    "Ask for steps of which some must come before others, or mix in some that do not belong (mixed-in:).",
  ),
  "practice-long": warning(
    "a practice has more steps than people can hold in mind",
    "Cut it by phases, or at the steps that the message names.",
  ),
  // Precedence
  "unbound-step": warning(
    "a step is bound to no other, so that it may be done at any time",
    "Say what it works on, which state it needs or makes, or name an earlier step under after: with the reason.",
  ),
  "after-implied": warning(
    "an after: says what follows from other pairs already",
    "Take it out; where its reason teaches, say it in the step's prose or at a pair on the way.",
  ),
  "after-later": error(
    "an after: names a step that is written later",
    "Put the steps in a right order, or turn the pair round.",
  ),
  cycle: error(
    "steps must each come before the other",
    "Take out one of the pairs of the circle, or mend the acts behind it.",
  ),
  "swap-unbound": warning("a may-swap: names a step that is free already", "Take it out."),
  "swap-critical": error(
    "a may-swap: would lift a critical pair",
    "Take it out, or say why the pair is not critical by mending the steps.",
  ),
  "swap-changes-tray": error(
    "a may-swap: lifts a pair on which the tray depends",
    "Take it out: if these two change places, the account no longer comes out.",
  ),
  // The tray
  "cover-on": error(
    "a step touches what is still covered",
    "Remove the cover first, or name it under through: if one works through it.",
  ),
  "cover-off": error(
    "a step works through a cover that is off",
    "Refit the cover first, or take it out of through:.",
  ),
  "still-held": error("a part is removed that fasteners still hold", "Undo the fasteners first."),
  "in-the-way": error(
    "a part is refitted while its fasteners fill their holes",
    "Take the fasteners out first.",
  ),
  "removes-what-is-off": error(
    "a step removes, slackens or takes out what is off already",
    "Mend the count, or take the act out.",
  ),
  "refits-what-is-on": error(
    "a step refits a part that is on already",
    "Mend the order, or take the act out.",
  ),
  "refits-too-many": error("a step refits more than came out", "Mend the count."),
  "tightens-what-is-not-in": error(
    "a step tightens what is not in or not slack",
    "Refit it first, or take the act out.",
  ),
  "place-taken": error("a part is refitted where another one still is", "Remove the other one first."),
  "wrong-state": error("a step is done in the wrong state", "Bring the state about first with makes:."),
  "ends-off": error(
    "something is off or slack at the end that the module does not say is left so",
    "Refit and tighten it, or list it under leaves:.",
  ),
  "ends-on": error(
    "something is on at the end that leaves: says stays off",
    "Take it out of leaves:, or do not refit it.",
  ),
  "ends-state": error(
    "a state at the end is not the one that the module says",
    "Bring it about, or mend ends: of the state.",
  ),
  "unsafe-stop": error(
    "work may be left where something is wet, or in a state in which it must never be left",
    "Put stop: after the step that makes it safe, say with wait: or dries: where it dries, or mend never-left:.",
  ),
  "never-undone": warning(
    "a fastener set of the table is undone by no step",
    "Name it in the step that undoes it, or say with stays: why it stays.",
  ),
  "stays-undone": error(
    "a fastener set that is said to stay is handled by a step",
    "Take stays: out, or the act.",
  ),
  // Oil and vapour
  "oil-washed-off": warning(
    "a part is lubricated and then cleaned, and not lubricated again",
    "Put the cleaning first, or lubricate once more after it; where the oil is to clean or loosen, say so under substances: {use: …, for: cleaning}.",
  ),
  "oil-on-wet": warning(
    "a part is lubricated while it is still wet from cleaning",
    "Let it dry first: say so with dries: or wait: of the cleaning, or in a step of its own; where the oil is to clean or loosen, say so under substances: {use: …, for: penetrating}.",
  ),
  "kept-dry": error(
    "oil comes on a part that is to be kept dry",
    "Take the part out of work: of this step, or clean and dry it afterwards.",
  ),
  "fire-unnamed": error(
    "something that can burn is used without its hazard",
    "Name the hazard sheet: under hazards: of the step, and first under hazards: of the substance.",
  ),
  "hot-work-vapour": error(
    "hot work comes before vapour that can burn has gone",
    "Put a wait: or a step that dries: between the two, and nothing that can burn into hot work.",
  ),
  "vapour-shut-in": error(
    "a cover goes back over what is wet with something that can burn",
    "Put a wait: or a step that dries: before the cover goes back. As a lubricant that is to stay there, take one that is not labelled as flammable.",
  ),
  "handed-on": error(
    "a module is handed something that it does not list",
    "List it under parts: or fasteners:, or mend leaves: of the module that hands it on.",
  ),
  "handed-nowhere": warning(
    "something is handed on to a module that begins from elsewhere",
    "Give begins-from: in the module that goes on with it, or say off or discarded under leaves:.",
  ),
  "begins-otherwise": error(
    "a state starts with another value than the module before it ends with",
    "Mend starts: here, or ends: there.",
  ),
  // Declared and used
  "undeclared-use": error("a step uses what the module does not declare", "Add it to the module's list."),
  "odd-drive": warning(
    "a drive is written almost like a known one",
    "Correct it, or say it in words that are not so near.",
  ),
  "unused-declaration": warning(
    "the module declares what no step uses",
    "Name it in the step that uses it, or take it out.",
  ),
  "record-nowhere": warning(
    "a record: does not say beside which step it is printed again",
    "Name the refitting step in record-for:.",
  ),
  // Pictures and links
  "figure-missing": error("a picture does not exist", "Put the file there, or correct the path."),
  "figure-alt": error("a picture has no alt text", "Say in words what it shows to someone who can't see it."),
  "figure-unused": warning("a picture is not used", "Use it, or take it out."),
  "picture-name": error(
    "a picture lies where the build puts a file of its own",
    "Give it another name or folder, and mend the paths that lead to it.",
  ),
  "picture-broken": error(
    "a picture can't be opened, or not to its end",
    "Save it anew from the program that made it, as PNG, JPEG or WebP; a drawing as plain SVG.",
  ),
  "picture-pixels": error(
    "a picture has more pixels than the limit",
    "Make it smaller: a site shows no more than 1600 across.",
  ),
  "picture-unsafe": error(
    "a drawing holds what could run, or ask for something elsewhere",
    "Take it out, or save the drawing as plain SVG: a drawing of the site is lines, lettering and pictures within it.",
  ),
  "item-unknown": error(
    "an item reference names no part or fastener set of the module",
    "Correct the id in of:, or give what the module does not take apart a name: alone.",
  ),
  "item-twice": error(
    "two item references of a figure name the same thing",
    "Leave one: equal items have one number (ISO 6433).",
  ),
  "item-place": error(
    "an item reference leads to a place beside the figure",
    "Mend at: percent of the figure's width, then of its height, from 0 to 100.",
  ),
  "dead-link": error("a link leads nowhere", "Correct the path or the place after #."),
  "raw-html": warning("raw HTML in Markdown is shown as text, not passed through", "Write it in Markdown."),
  // Quizzes
  "quiz-no-right": error("a question has no right answer", "Mark the right option with right: true."),
  "quiz-many-right": error(
    "a choose-one question has more than one right answer",
    "Leave one, or make it choose-several.",
  ),
  "quiz-equal-options": error("two options are the same", "Make them different."),
  "quiz-cannot-be-wrong": error(
    "a question can't be answered wrong",
    "Add a wrong option or place; choose steps of which some must come before others.",
  ),
  "quiz-tolerance": error(
    "a number question has a tolerance that makes no sense",
    "Give a tolerance of the same dimension, or a share such as 5 %.",
  ),
  "quiz-size": error(
    "a quiz or question has too few or too many of something",
    "Bring it to the number that the message says.",
  ),
  "quiz-no-reason": error(
    "a wrong option does not say what is wrong with it",
    "Add why:, so that the mistake teaches something.",
  ),
  "torque-words": error(
    "a figure of torque stands where nobody knows what screw or hole can bear",
    "Write words, such as snug; or say class:, thread: and what it goes into.",
  ),
  "torque-too-high": error(
    "a torque pulls a screw to more than 90 % of its proof load",
    "Take a lower figure from the maker or from the sum, or write words.",
  ),
  "torque-strips": error(
    "a torque strips the hole that the screw goes into",
    "Take a lower figure or more thread, or write words.",
  ),
  "torque-high": warning(
    "a torque takes more than 75 % of what screw or hole can bear",
    "Leave more room, unless the maker says so.",
  ),
  "unknown-class": error("a strength class is not known", "Write one of the list, or words for the torque."),
  "unknown-material": error("the material of a tapped hole is not known", "Write one of the list."),
  "engagement-missing": warning(
    "a figure of torque goes into soft metal and nobody says how much thread holds",
    "Say engagement: under into:.",
  ),
  "no-driver": warning(
    "no tool of the module fits a fastener that a step turns",
    "Declare the tool under tools:, or give the tool's sheet its drive:.",
  ),
  "vapour-unguarded": error(
    "a substance whose vapour can hurt is used indoors without a safety message",
    "Name its hazard at the step; use less of it, a milder one, or go outdoors. How bad and how likely it is, and so the signal word, is for you to judge. The supplier's safety data sheet and local rules decide; this sum is an estimate.",
  ),
  "message-in-prose": warning(
    "a safety message stands in prose, where it can come too late",
    "Make it a hazard sheet and name it under hazards: of the step, so that it stands before it.",
  ),
  "no-avoidance": error(
    "a safety message says no way to avoid the hazard",
    "Say under avoid: what one does so that it does not happen.",
  ),
  "vague-avoidance": warning(
    "a danger or warning says nothing that one could do to avoid the hazard",
    "Say what to do: let the spring down, wear glasses, work outdoors.",
  ),
  "late-caution": warning(
    "a hazard of a substance is named only after a step that uses it",
    "Name it under hazards: of the first step that takes the substance.",
  ),
  "notice-injury": warning(
    "the signal word notice is used for harm to people; it is for damage only",
    "Take caution, warning or danger, by how bad and how likely it is.",
  ),
  "quiz-guessable": warning(
    "someone who guesses passes a quiz more than one time in twenty",
    "Ask more, make a question critical, or raise the mark.",
  ),
  "quiz-unknown-objective": error(
    "a paper draws questions for an objective that no question has",
    "Correct it, or write it under objective: of the questions meant.",
  ),
  "quiz-never-drawn": warning(
    "a question is never drawn, since no paper asks for its objective",
    "Name its objective under paper:, or take the question out.",
  ),
  "quiz-unknown-group": error(
    "an item is sorted into a group that the question does not list",
    "Correct its name, or add it under groups:.",
  ),
  "quiz-empty-group": error(
    "no item belongs to a group of a sort question",
    "Put an item into it, or take the group out.",
  ),
  "quiz-slips": error(
    "a text question takes answers that are too far from the right one",
    "Lower slips:, or write other spellings under answers:.",
  ),
  "quiz-place": error(
    "a place of a point question lies beyond the figure or over another place",
    "Mend its percentages of the figure's width and height.",
  ),
  "quiz-case": error(
    "a case of a worked question can't be worked out",
    "Give exactly the figures that its sum takes, with their units, and name no others in ask:.",
  ),
  // The competency record
  "bad-identifier": error(
    "the programme's identifier is neither an https address nor a tag",
    "Choose one that is yours and will not change: it stands in every sign-off.",
  ),
  "identifier-missing": error(
    "mentors are listed, and nothing names the programme in what they sign",
    "Add identifier: with an https address or a tag of yours, or take mentors: out.",
  ),
  "unknown-time-zone": error("a time zone is not known", "Write a name of the IANA list."),
  "bad-key": error("a public key can't be read", "Copy the whole line that key public prints."),
  "key-twice": error(
    "two mentors have the same key",
    "Each mentor makes a key of their own and lends it to nobody; for another time of office mend from: and to:.",
  ),
  "dates-reversed": error("something ends before it begins", "Mend one of the dates."),
  "rule-weaker": error(
    "a module asks for less than its programme, which has no effect",
    "Take it out, or ask for more than programme.yaml does.",
  ),
  "reserved-id": error("a module has an id that the site needs for itself", "Give its folder another name."),
  "revision-order": error(
    "the revisions of a module do not rise",
    "List each revision once, the lowest first, none above revision: of the module.",
  ),
  "revision-unreleased": warning(
    "what mentors would sign for is not released",
    "Run benchwright record release, which keeps it; raise revision: first where sign-offs of before should not carry over.",
  ),
  "release-altered": error(
    "a release that is kept is not what it was",
    "Bring the file back as it was, or take it out: old answers on it then can't be marked again.",
  ),
  "withdrawals-missing": warning(
    "a mentor has no list of withdrawals, so that nothing that they sign can be confirmed",
    "The mentor runs benchwright record withdraw --key FILE once, naming nothing; it makes the list and signs it.",
  ),
  "withdrawals-unreadable": error(
    "a list of withdrawals can't be read",
    "Bring the file back as it was, or let the mentor make it anew with benchwright record withdraw.",
  ),
  "withdrawals-unsigned": error(
    "a list of withdrawals is not signed, or was changed after signing",
    "Let the mentor sign it with benchwright record withdraw.",
  ),
  "withdrawals-key": error(
    "a list of withdrawals is another one than the mentor's",
    "Let the mentor named by the file sign it, with the key that programme.yaml lists.",
  ),
  "withdrawals-expired": warning(
    "a list of withdrawals is out of date, so that nothing that the mentor signed can be confirmed",
    "Let the mentor renew it with benchwright record withdraw.",
  ),
  "unknown-mentor": error(
    "a list of withdrawals belongs to nobody whom programme.yaml lists",
    "Correct the file's name: it is the mentor's id; or list the mentor under mentors:.",
  ),
  "quiz-without-module": error("a quiz stands in a folder without a module", "Add module.md beside it."),
  // Words of the site
  "unknown-language": error(
    "a programme speaks a language that nobody has words of",
    "Take one of those, or bring its words as words/<language>.po, made from words/en.pot of the tool.",
  ),
  "words-unreadable": error(
    "a catalogue of words can't be read",
    "Save it as a gettext PO file in UTF-8; a program for translators checks it.",
  ),
  "word-missing": error(
    "a text of the site has no translation",
    "Translate it in the catalogue, or, of a programme's own, in words/<language>.po of the content.",
  ),
  "word-placeholders": error(
    "a translation has other placeholders, tags or forms than the English text",
    "Bring each {0} and each <0>…</0> of the English text, once, wherever the sentence wants it.",
  ),
} satisfies Record<string, CodeEntry>;

export type Code = keyof typeof codes;
