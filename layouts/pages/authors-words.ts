/** What the page for authors says besides fields and codes. English in every programme, so these are not marked as words of the site. */
export const authorsWords = {
  summary:
    "A site is made of text files: a programme, sheets of tools, substances and hazards, and modules with their quizzes. This page is made from what the tool itself reads them by, so it says what holds for this edition.",
  parts: "Parts of this page",
  required: "must be there",
  steps: "How steps are written",
  ofSteps: [
    "A module begins with its fields between two lines of three hyphens. Parts and fastener sets are named there once, with what holds them and what they cover. Each step is a heading, a block that says what is taken off, worked on or put back, and prose that says how.",
    "One step is one thing that a trainee does before looking up again. Say in the heading what is done, in the block to what, and in check: how one sees that it is done. What comes before what is worked out from the acts: add after: only for what they do not show, and give the reason.",
    "Run benchwright check --watch while you write. It tells at each save what is mended and what is new.",
  ],
  questions: "Kinds of question",
  ofQuestions:
    "An example of each kind, as it stands under questions: in quiz.yaml. Each wrong option says why it is wrong, and see: leads back to where it is told.",
  fields: "Every field, file by file",
  ofFields:
    "ID stands for an id that you choose: lower-case letters, digits and hyphens. [] stands for each entry of a list. Below each field an example of it.",
  codes: "What check reports",
  ofCodes:
    "Of each code: what is wrong, how it is mended, and an example as check tells it. Errors keep the site from being built; warnings do not.",
  example: "Example",
  lines: "Lines of the file",
} as const;
