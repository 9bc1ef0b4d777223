import { moduleText } from "./module.ts";
import { quizText } from "./quiz.ts";
import { hazardText, toolText } from "./sheets.ts";
import type { StarterFiles } from "./starter.ts";

export const programmeText = `name: Our workshop
units: metric
session: 2 h 30 min
pass: 80 %
`;

const named = { tool: "slotted-screwdriver", hazard: "sharp-edges" };

/** A programme of one tool, one hazard and one module with a quiz. */
export const programmeFiles: StarterFiles = new Map([
  ["programme.yaml", programmeText],
  [`tools/${named.tool}.md`, toolText(named.tool, "slotted")],
  [`hazards/${named.hazard}.md`, hazardText(named.hazard)],
  ["modules/first-module/module.md", moduleText("first-module", named)],
  ["modules/first-module/quiz.yaml", quizText("#cover-off")],
]);
