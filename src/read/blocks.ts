/** Which blocks of code are steps, and which look as if they were meant to be. */
import type { Token } from "markdown-it";
import type { OtherBlock } from "../model/source.ts";
import { readYaml, type YamlFault } from "./yaml.ts";

const stepInfo = /^\s*ya?ml\s+step\s*$/;

/** A block at the margin that is marked as a step. */
export const isStepBlock = (token: Token): boolean =>
  token.type === "fence" && token.level === 0 && stepInfo.test(token.info);

const marks = /^ {0,3}(?:`{3,}|~{3,})/m;

/** Whether marks close a fenced block whose last line is given. One that swallows the next block's marks is not closed. */
export const isClosed = (token: Token, lastLine: string): boolean =>
  /^\s*(?:`{3,}|~{3,})\s*$/.test(lastLine) && !marks.test(token.content);

export const notClosed = (offset: number): YamlFault => ({
  code: "step-yaml",
  offset,
  message: "this block is not closed",
  mend: "Put a line with ``` below its last field.",
});

/** Where YAML may stand: under its own name, as a step that is marked otherwise, or under no name. */
const perhapsYaml = /^(?:ya?ml\b.*|steps?\b.*|)$/i;

const indentedStep = /^\s*(?:`{3,}|~{3,})\s*(ya?ml\s+step)\s*$/m;

/** A block of code that is no step, with what it holds where that may be YAML. */
export function otherBlock(token: Token, lines: readonly number[]): OtherBlock | undefined {
  const offset = lines[token.map?.[0] ?? 0] ?? 0;
  if (token.type === "code_block") {
    const info = indentedStep.exec(token.content)?.[1];
    return info === undefined ? undefined : { info, value: undefined, isInner: true, offset };
  }
  if (token.type !== "fence" || isStepBlock(token) || !perhapsYaml.test(token.info.trim())) return undefined;
  const { value } = readYaml(token.content, offset, "step-yaml").yaml;
  return { info: token.info.trim(), value, isInner: token.level > 0, offset };
}
