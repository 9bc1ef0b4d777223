/** What is right at the bench, and was once complained of: no fault and no warning. */
import { expect, test } from "vitest";
import { read } from "../../src/read/read.ts";
import { validate } from "../../src/validate/validate.ts";
import { changed, type Files, withFile, writeFolder } from "../support/content-folder.ts";

const module = "modules/box/module.md";

const oil = withFile(
  "substances/oil.md",
  "---\ntitle: Oil\nsummary: Oils.\nuse: [lubricating]\nflammable: false\nsignal: none\ndata-sheet: By the door.\n---\n",
);

/** The wheel, which is cleaned with spirit in the step after it comes out, with oil on it before. */
const oiledFirst = (taken: string): Files =>
  changed(
    module,
    "[{use: spirit,",
    "[{use: oil}, {use: spirit,",
    changed(module, "remove: wheel\n", `remove: wheel\nwork: [wheel]\nsubstances: [${taken}]\n`, oil),
  );

const hoodOff = changed(
  module,
  "remove: [lid-screws, lid]",
  "remove: [hood, lid-screws, lid]",
  changed(
    module,
    "## Notes",
    "## Put the hood on\n\n```yaml step\nid: hood-on\nrefit: hood\nphase: build\n```\n\n## Notes",
  ),
);

const cases: readonly (readonly [string, Files])[] = [
  [
    "a set of bits fits several drives",
    changed("tools/driver.md", "drive: slotted", "drive: [hexagon socket, slotted]"),
  ],
  [
    "a part of three pieces is counted as three",
    changed(
      module,
      "remove: wheel\n",
      "remove: {wheel: 3}\n",
      changed(module, "{name: wheel,", "{name: wheels, count: 3,"),
    ),
  ],
  [
    "a long cover hides fasteners alone",
    changed(module, "  wheel: {name", "  hood: {name: hood, covers: [lid-screws]}\n  wheel: {name", hoodOff),
  ],
  ["oil loosens what is then washed off", oiledFirst("{use: oil, for: penetrating}")],
  ["oil cleans before spirit does", oiledFirst("{use: oil, for: cleaning}")],
];

test.each(cases)("%s", (_, files) => {
  const { reading, diagnostics } = read(writeFolder(files));
  expect([...diagnostics, ...validate(reading).diagnostics]).toEqual([]);
});
