import { marksAlike } from "../../derive/record-data.ts";
import { digestOfText } from "../../engine/competency/digest.ts";
import type { Json } from "../../engine/competency/json.ts";
import { canonicalText } from "../../engine/competency/libraries.ts";
import type { AcceptedRevision, Release } from "../../engine/competency/release.ts";
import type { Content } from "../../model/content.ts";
import { isDraft } from "../../model/draft.ts";
import { releasePath } from "../../model/released.ts";
import type { Action } from "../actions.ts";
import { BadInput, contentOption, jsonOption, printJson } from "../command.ts";
import { contentFolder, soundContent } from "../content.ts";
import { noSuchModule } from "../no-such-module.ts";
import { nodePrimitives } from "../primitives.ts";
import { writeWhole } from "../write-whole.ts";
import { presentReleases } from "./releases.ts";
import { writeRevisions } from "./revisions-file.ts";

interface Done {
  readonly module: string;
  readonly revision: number;
  readonly content: string;
  /**
   * "released": a revision that was not there; "accepted": other content under the same revision; "kept": nothing to do;
   * "draft": not released, because words of a draft stand in it.
   */
  readonly change: "released" | "accepted" | "kept" | "draft";
  /** Files written, relative to the content folder. */
  readonly files: readonly string[];
}

export const release: Action = {
  name: "release",
  summary: "keeps modules as they stand, so that sign-offs can name them and old answers be marked again",
  usage: "[MODULE…] [--content DIR] [--json]",
  options: { content: contentOption, json: jsonOption },
  words: 10_000,
  run(call, modules, output) {
    const content = soundContent(call);
    const folder = contentFolder(call);
    if (content.programme.identifier === undefined)
      throw new BadInput(
        "programme.yaml has no identifier:, so that no sign-off could name what is released.",
      );
    const stranger = modules.find((id) => !content.modules.has(id));
    if (stranger !== undefined) throw noSuchModule(stranger, content.modules.keys());
    const chosen = presentReleases(content).filter(
      ({ module }) => modules.length === 0 || modules.includes(module),
    );
    const done = chosen.map((each) => releaseOne(each, content, folder));
    if (call.flag("json")) printJson(output, { modules: done });
    else output.out(done.map(words).join(""));
    return modules.length > 0 && done.some(({ change }) => change === "draft") ? 1 : 0;
  },
};

function releaseOne(present: Release, content: Content, folder: string): Done {
  const { module, revision, content: digest } = present;
  const rows = content.revisions.get(module)?.revisions ?? [];
  const row = rows.find((one) => one.revision === revision);
  const isListed = row?.content.includes(digest) === true;
  if (!isListed && isDraft(content.modules.get(module)!))
    return { module, revision, content: digest, change: "draft", files: [] };
  const kept = content.released.get(module) ?? [];
  const isKept = kept.some((each) => marksAlike(each.release, present));
  const files = [
    ...(isListed ? [] : [writeRevisions(folder, module, withContent(rows, present))]),
    ...(isKept ? [] : [keep(folder, present)]),
  ];
  const change = row === undefined ? "released" : isListed ? "kept" : "accepted";
  return { module, revision, content: digest, change, files };
}

function withContent(rows: readonly AcceptedRevision[], { revision, content }: Release): AcceptedRevision[] {
  const row = rows.find((one) => one.revision === revision) ?? { revision, content: [] };
  const others = rows.filter((one) => one.revision !== revision);
  return [...others, { ...row, content: [...row.content, content] }].sort((a, b) => a.revision - b.revision);
}

function keep(folder: string, present: Release): string {
  const text = canonicalText(present as unknown as Json);
  const digest = digestOfText(text, nodePrimitives);
  return writeWhole(folder, releasePath(present.module, present.revision, digest), `${text}\n`);
}

const changes: Readonly<Record<Done["change"], string>> = {
  released: "released",
  accepted:
    "other content accepted under the same revision; sign-offs of before carry over. Where they should not, raise revision: and release again",
  kept: "released already",
  draft: "not released: it is still a draft. benchwright check tells what is to be written",
};

const words = ({ module, revision, change, files }: Done): string =>
  `${module}: revision ${revision}, ${changes[change]}.${files.map((file) => `\n  written: ${file}`).join("")}\n`;
