/** The module that was asked for: its front matter from the answers, its steps from a cover off to the cover on again. */
import { stringify } from "yaml";
import { prompts } from "../../model/unwritten.ts";
import type { ModuleAnswers } from "../asked/module.ts";

/** A module that passes `check`: each tool and hazard is named by a step that has to do with it. */
export function askedModuleText(answers: ModuleAnswers): string {
  return answers.kind === "procedure" ? procedureText(answers) : knowledgeText(answers);
}

const head = ({ title, summary, needs, tools, hazards }: ModuleAnswers, more: object): string =>
  `---\n${yaml({
    ...{ title, summary, revision: 1 },
    ...(needs.length === 0 ? {} : { needs }),
    ...namedBy({ tools, hazards }),
    ...more,
  })}---\n`;

const knowledgeText = (answers: ModuleAnswers): string => `${head(answers, {})}
${prompts.about}

## What to know

${prompts.know}

## What to do

${prompts.do}
`;

function procedureText(answers: ModuleAnswers): string {
  const between = Array.from({ length: answers.steps - 2 }, (_, at) => ({
    title: answers.steps === 3 ? "Work on the works" : `Work on the works, part ${at + 1}`,
    step: { id: at === 0 ? "work" : `work-${at + 1}`, work: ["works"], time: "10 min" },
  }));
  const steps = [
    {
      title: "Take the cover off",
      step: {
        ...{ id: "cover-off", remove: ["cover-screws", "cover"] },
        ...namedBy(answers),
        ...{ time: "5 min", check: "the works can be seen" },
      },
    },
    ...between,
    {
      title: "Put the cover back",
      step: {
        ...{ id: "cover-on", refit: ["cover", "cover-screws"], tighten: ["cover-screws"] },
        ...namedBy({ tools: answers.tools, hazards: [] }),
        time: "5 min",
      },
    },
  ];
  return `${head(answers, things)}
${prompts.about}
${steps.map(({ title, step }) => `\n## ${title}\n\n\`\`\`yaml step\n${yaml(step)}\`\`\`\n\n${prompts.step}\n`).join("")}`;
}

const things = {
  parts: {
    cover: { name: "cover", "held-by": ["cover-screws"], covers: ["works"] },
    works: { name: "works" },
  },
  fasteners: { "cover-screws": { name: "cover screws", count: 2, keep: "tray A" } },
};

const namedBy = ({ tools, hazards }: Pick<ModuleAnswers, "tools" | "hazards">): object => ({
  ...(tools.length === 0 ? {} : { tools }),
  ...(hazards.length === 0 ? {} : { hazards }),
});

const yaml = (value: object): string => stringify(value, { lineWidth: 0, collectionStyle: "any" });
