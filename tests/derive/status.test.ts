/** What the title block says of how far a module has come (ISO 7200:2004 has a field for it, and leaves its words to the owner). */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { photographedModuleText } from "../../src/cli/starters/photographed-module.ts";
import { derive } from "../../src/derive/derive.ts";
import { read } from "../../src/read/read.ts";
import { validate } from "../../src/validate/validate.ts";
import { callCommand } from "../support/call-command.ts";
import { changed, type Files, soundFiles, withFile, writeFolder } from "../support/content-folder.ts";
import { didOf, identifier } from "../support/mentors.ts";

const module = "modules/box/module.md";
const named = changed(
  "programme.yaml",
  "name: Test bench\n",
  `name: Test bench\nidentifier: ${identifier}\n`,
);
const withMentor = changed(
  "programme.yaml",
  `identifier: ${identifier}\n`,
  `identifier: ${identifier}\nmentors:\n  - {id: ada, name: Ada, key: "${didOf(1)}", from: 2026-01-01}\n`,
  named,
);

function statusIn(folder: string, id = "box") {
  const { content } = validate(read(folder).reading);
  return derive(content).views.find((view) => view.module.id === id)!.status;
}

const statusOf = (files: Files) => statusIn(writeFolder(files));
const draft = (files: Files) =>
  changed(module, "\nProse.\n", "\nWhat is done here is still to be written.\n", files);

test("where nobody signs nothing is released, and nothing is said of it", () => {
  expect(statusOf(soundFiles)).toBeUndefined();
  expect(statusOf(named)).toBeUndefined();
});

test("with a mentor it is not released, then released, and after a change not any more", async () => {
  const folder = writeFolder(withMentor);
  expect(statusIn(folder)).toBe("not released");
  const { code, err } = await callCommand("record", "release", "--content", folder);
  expect(code, err).toBe(0);
  expect(statusIn(folder)).toBe("released");
  const kept = readFileSync(`${folder}/modules/box/revisions.yaml`, "utf8");
  const later = changed(
    module,
    "\nProse.\n",
    "\nOther prose.\n",
    withFile("modules/box/revisions.yaml", kept, withMentor),
  );
  expect(statusOf(later)).toBe("not released");
});

test("a draft is a draft, whoever signs", () => {
  expect(statusOf(draft(soundFiles))).toBe("draft");
  expect(statusOf(draft(withMentor))).toBe("draft");
});

test("what is begun with photographs is a draft", () => {
  const pictures = [{ figure: "figures/a.svg", photograph: "a.jpg", taken: null }];
  const begun = withFile("modules/mill/module.md", photographedModuleText("mill", pictures), withMentor);
  expect(statusIn(writeFolder(begun), "mill")).toBe("draft");
});
