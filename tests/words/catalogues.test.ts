/** The tool's own catalogues: whole, and up to date with the sources. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { lookUp, readCatalogue } from "../../src/words/catalogue.ts";
import { allMessages } from "../../src/words/extract.ts";
import { potOf } from "../../src/words/pot.ts";
import { projectDir } from "../support/project.ts";

const folder = join(projectDir, "words");
const text = (name: string): string => readFileSync(join(folder, name), "utf8");
const messages = allMessages();

test("the list of messages is that of the sources; if not, run: npx tsx src/words/update.ts", () => {
  expect(messages.length).toBeGreaterThan(1000);
  expect(text("en.pot") === potOf(messages), "words/en.pot is behind: npx tsx src/words/update.ts").toBe(
    true,
  );
});

test("no message holds what a catalogue could take for a placeholder or tag that it is not", () => {
  for (const { id } of messages) expect(id.replace(/\{\d+\}|<\/?\d+\/?>/g, "")).not.toMatch(/[{}]|<\/?\d/);
});

describe.each(readdirSync(folder).filter((name) => name.endsWith(".po")))("%s", (name) => {
  test("has every message", () => {
    const translate = lookUp([readCatalogue(text(name))]);
    expect(messages.filter((message) => translate(message) === undefined).map(({ id }) => id)).toEqual([]);
  });
});

test("the statements of hazard are worded as the regulation words them (CLP, Annex III; three that any label bears)", () => {
  const german = lookUp([readCatalogue(text("de.po"))]);
  const words = (id: string) => german({ context: "", id, plural: "" })?.[0];
  expect(words("Highly flammable liquid and vapour")).toBe("Flüssigkeit und Dampf leicht entzündbar");
  expect(words("Causes serious eye irritation")).toBe("Verursacht schwere Augenreizung");
  expect(words("Keep out of reach of children.")).toBe("Darf nicht in die Hände von Kindern gelangen.");
  // CLP, Article 20: the signal words of labels are Gefahr and Achtung, which is not the Warnung of a safety message.
  const label = "signal word of a label under GHS";
  expect(["danger", "warning"].map((id) => german({ context: label, id, plural: "" })?.[0])).toEqual([
    "Gefahr",
    "Achtung",
  ]);
});
