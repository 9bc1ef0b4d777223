/** Trainees' files, chosen or dropped, taken onto the desk. */
import { t } from "../../engine/words.ts";
import { fileField, takeDropped } from "../opened/file-field.ts";
import { textOf } from "../opened/given-file.ts";
import { problemList } from "../opened/problem-list.ts";
import { element } from "../page/element.ts";
import type { Desk } from "./desk.ts";

/** The box in which files are chosen, or onto which they are dropped. */
export function filesBox(id: string, take: (files: readonly File[]) => void): HTMLElement {
  const field = fileField({ id, label: t`Open trainees’ files`, several: true, take });
  const box = element("div", { class: "desk-files" }, element("div", { class: "actions" }, field));
  takeDropped(box, take);
  return box;
}

export interface TakenFiles {
  /** Why some were not taken. */
  readonly told: readonly HTMLElement[];
  /** Whose file was taken last. */
  readonly last: string | undefined;
}

export async function takeFiles(desk: Desk, files: readonly File[]): Promise<TakenFiles> {
  const told: HTMLElement[] = [];
  let last: string | undefined;
  for (const file of files) {
    const text = await textOf(file);
    const taken = text.ok ? await desk.takeIn(text.text) : { ok: false as const, problems: [text.problem] };
    if (taken.ok) last = taken.owner;
    else
      told.push(
        element("p", { class: "warning" }, t`${file.name} was not taken:`),
        problemList(taken.problems),
      );
  }
  return { told, last };
}
