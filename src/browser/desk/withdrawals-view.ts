/** The mentor's list of withdrawals: renewed, and added to, by the key that is here. */

import { readJson } from "../../engine/competency/strict-json.ts";
import { t } from "../../engine/words.ts";
import { fileField } from "../opened/file-field.ts";
import { textOf } from "../opened/given-file.ts";
import { button, element } from "../page/element.ts";
import { saveFile } from "../page/save-file.ts";
import { counted, sentence } from "../page/words.ts";
import type { Naming } from "../record/next-words.ts";
import type { Desk } from "./desk.ts";
import { ownList, placesToWithdraw, renewedList } from "./withdrawals.ts";

/** Nothing where no key is here, or the programme does not list it. */
export function withdrawalsView(desk: Desk, { day }: Naming): HTMLElement | undefined {
  const { key } = desk;
  const { programme, now } = desk.options;
  const { rules } = programme;
  const mentor = rules.mentors.find((each) => each.key === key?.did);
  if (key === undefined || mentor === undefined) return undefined;
  const onSite = programme.withdrawals.find(([id]) => id === mentor.id)?.[1];
  const given: Awaited<ReturnType<typeof ownList>>[] = [];
  const places: number[] = [];
  const said = element("p", { role: "status" });
  const say = (words: string): void => {
    said.textContent = words;
  };
  const present = async () => (onSite === undefined ? undefined : ownList(onSite, key, rules));
  const takeList = async ([file]: readonly File[]): Promise<void> => {
    const text = await textOf(file!);
    const json = text.ok ? readJson(text.text) : text;
    const list = json.ok ? await ownList(json.value, key, rules) : undefined;
    if (list === undefined)
      return say(t`${file!.name} is no list of your key’s, or not a whole one. Nothing was taken from it.`);
    given.push(list);
    say(t`${file!.name} was taken up: what it withdraws stays withdrawn.`);
  };
  const takeStatement = async ([file]: readonly File[]): Promise<void> => {
    const text = await textOf(file!);
    if (!text.ok) return say(text.problem.message);
    const read = placesToWithdraw(text.text, key, rules);
    if (!read.ok) return say(read.message);
    places.push(...read.places);
    say(sentence(t`To be withdrawn with the next list that you save: ${read.what.join("; ")}`));
  };
  const save = async (): Promise<void> => {
    const site = await present();
    if (onSite !== undefined && site === undefined && given.length === 0)
      return say(
        t`The list that the site has can’t be relied on. Give the last good one first: what it withdraws would be lost.`,
      );
    const lists = [site, ...given].filter((list) => list !== undefined);
    const made = await renewedList({ lists, places, key, rules, now: now() });
    saveFile(`${mentor.id}.json`, made.text);
    say(
      t`Saved as ${mentor.id}.json: ${counted(made.count, "withdrawal")}, good until ${day(made.until)}. Hand it to the coordinator, who puts it into content/withdrawals and builds the site.`,
    );
  };
  return element(
    "section",
    { class: "group desk-withdrawals", "aria-labelledby": "s_withdrawals" },
    element("h2", { id: "s_withdrawals" }, t`What you have withdrawn`),
    element("p", {}, about),
    element(
      "p",
      {},
      onSite === undefined
        ? t`The site has no list of yours yet.`
        : t`The site has a list of yours, from which the next one goes on.`,
    ),
    element(
      "div",
      { class: "actions" },
      fileField({
        id: "withdraw-statement",
        label: t`Withdraw what is in a file`,
        take: (files) => void takeStatement(files),
      }),
      fileField({
        id: "withdraw-list",
        label: t`Take up a newer list`,
        take: (files) => void takeList(files),
      }),
      button(t`Save the list, renewed`, () => void save()),
    ),
    said,
  );
}

const about = t`What you sign counts only while your list of withdrawals is published with the site and in date, even where nothing is withdrawn. Renew it before it runs out. Nothing can be taken back from the list: who was withdrawn is signed off anew. For a key in a file, benchwright record withdraw does the same.`;
