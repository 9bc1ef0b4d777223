/** A sign-off: its level, words, and the score of a supervised quiz where the site can't mark it. */

import { type Level, levels } from "../../engine/competency/levels.ts";
import type { Granted } from "../../engine/competency/new-statement.ts";
import type { ReleaseCard } from "../../engine/competency/release.ts";
import { t } from "../../engine/words.ts";
import { element } from "../page/element.ts";
import { type Choice, form, lineField, radios, wordsField } from "./fields.ts";

export interface SignOffFormOptions {
  readonly card: ReleaseCard;
  /** The quiz is supervised and was not marked by anybody whom the record knows. */
  readonly asksScore: boolean;
  /** Why this mentor may not sign it at a level, as a sentence; undefined where they may. */
  readonly whyNot: (level: Level) => string | undefined;
  readonly say: (words: string) => void;
  readonly sign: (granted: Granted) => void;
}

const choicesWith = (whyNot: SignOffFormOptions["whyNot"]): readonly Choice<Level>[] =>
  levels.map((value) => ({ value, text: texts(value), whyNot: whyNot(value) }));

function texts(level: Level): string {
  if (level === "under eye") return t`under eye: may do it while a mentor looks on`;
  return level === "alone" ? t`alone: may do it alone` : t`may teach: may do it alone, and teach it`;
}

export function signOffForm({ card, asksScore, whyNot, say, sign }: SignOffFormOptions): HTMLFormElement {
  const level = radios("level", t`What they may do`, choicesWith(whyNot));
  const words = wordsField("sign-off-words", t`In words, where there is something to say`);
  const score = lineField("sign-off-score", t`Quiz, as marked with score, in percent`, {
    inputmode: "decimal",
  });
  const send = () => {
    const chosen = level.value();
    if (chosen === undefined) return say(t`Choose first what they may do.`);
    const percent = asksScore ? percentIn(score.input.value) : undefined;
    if (percent === "unreadable")
      return say(
        t`“${score.input.value}” is no figure from 0 to 100; write the percent that score has printed, such as 85.`,
      );
    sign({ level: chosen, words: words.input.value.trim(), marked: percent });
  };
  return form(
    send,
    element("p", {}, madeSure(card)),
    level.element,
    ...(asksScore ? [score.element] : []),
    words.element,
    element("p", { class: "actions" }, element("button", { type: "submit" }, t`Sign this sign-off`)),
  );
}

/** As a fraction. Empty is none, which the engine refuses where one is asked for. */
function percentIn(text: string): number | undefined | "unreadable" {
  const written = text.trim().replace(",", ".").replace(/\s*%$/, "");
  if (written === "") return undefined;
  const value = Number(written);
  return value >= 0 && value <= 100 ? value / 100 : "unreadable";
}

/** What nothing computes: the mentor makes sure of it. */
function madeSure({ rules }: ReleaseCard): string {
  const things = [
    ...(rules.minimumAge === undefined ? [] : [t`that they are at least ${rules.minimumAge} years old`]),
    ...(rules.induction === undefined ? [] : [t`of the induction: ${rules.induction}`]),
    t`that the person before you is the one whose key it is`,
  ];
  return t`With your signature you say that you have made sure ${things.join("; ")}.`;
}
