import { acts } from "./acts.ts";
import { begins } from "./begins.ts";
import { draftMarks } from "./draft-marks.ts";
import { drivers } from "./drivers.ts";
import { driveNames } from "./drives.ts";
import { duplicates } from "./duplicates.ts";
import { fasteners } from "./fasteners.ts";
import { figures } from "./figures.ts";
import { guessing } from "./guessing.ts";
import { headings } from "./headings.ts";
import { impliedAfter } from "./implied-after.ts";
import { items } from "./items.ts";
import { lateCautions } from "./late-cautions.ts";
import { links } from "./links.ts";
import { loops } from "./loops.ts";
import { mentors } from "./mentors.ts";
import { messages } from "./messages.ts";
import { noSteps } from "./no-steps.ts";
import { oiling } from "./oiling.ts";
import { pictureNames } from "./picture-names.ts";
import { practiceCannotFail } from "./practice-cannot-fail.ts";
import { practiceEasy } from "./practice-easy.ts";
import { practiceLong } from "./practice-long.ts";
import { practices } from "./practices.ts";
import { precedence } from "./precedence.ts";
import { quizzes } from "./quizzes.ts";
import { records } from "./records.ts";
import { references } from "./references.ts";
import { reservedIds } from "./reserved-ids.ts";
import { revisions } from "./revisions.ts";
import { roomAir } from "./room-air.ts";
import type { Rule } from "./rule.ts";
import { signalWords } from "./signal-words.ts";
import { stays } from "./stays.ts";
import { stops } from "./stops.ts";
import { targets } from "./targets.ts";
import { torques } from "./torques.ts";
import { tray } from "./tray.ts";
import { unboundSteps } from "./unbound-steps.ts";
import { unwrittenSheets, unwrittenWords } from "./unwritten.ts";
import { used } from "./used.ts";
import { vapour } from "./vapour.ts";
import { weakerSignOff } from "./weaker-sign-off.ts";
import { withdrawals } from "./withdrawals.ts";

/** Every rule, in the order in which it looks; output is sorted by place, so the order matters to the reader of this file only. */
export const rules: readonly Rule[] = [
  references,
  targets,
  duplicates,
  reservedIds,
  headings,
  loops,
  acts,
  fasteners,
  torques,
  drivers,
  roomAir,
  messages,
  signalWords,
  lateCautions,
  driveNames,
  noSteps,
  records,
  used,
  precedence,
  practices,
  begins,
  tray,
  draftMarks,
  unwrittenWords,
  unwrittenSheets,
  stops,
  stays,
  oiling,
  vapour,
  figures,
  pictureNames,
  items,
  links,
  quizzes,
  mentors,
  weakerSignOff,
  withdrawals,
  guessing,
  practiceCannotFail,
  practiceEasy,
  practiceLong,
  unboundSteps,
  impliedAfter,
  revisions,
];
