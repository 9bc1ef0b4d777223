/** How a job may end. */
import { t } from "../../src/engine/words.ts";
import type { Module } from "../../src/model/module.ts";
import { type Html, html } from "../html.ts";
import { box } from "./box.ts";
import { line, lines } from "./lines.ts";

const ways = [
  { key: "done", name: t`Done` },
  { key: "conserve", name: t`Conserved` },
  { key: "refer", name: t`Referred on` },
] as const;

export function ends({ ends }: Module): Html | undefined {
  const list = lines(
    ways.map(({ key, name }) => line(html`${box}${name}`, ends[key])),
    "long",
  );
  return list === undefined ? undefined : html`<h3>How the job may end</h3>\n${list}`;
}
