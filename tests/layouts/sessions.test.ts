/** The sessions on a module's page, from the mill of the page tests: 9 minutes, a stop with a wait of 12 h, and the rest without times. */
import { describe, expect, test } from "vitest";
import { sessions } from "../../layouts/components/sessions.ts";
import { read } from "../../src/read/read.ts";
import { validate } from "../../src/validate/validate.ts";
import { millFiles } from "../render/fixture.ts";
import { changed, type Files, writeFolder } from "../support/content-folder.ts";
import { wholeSite } from "../support/whole-site.ts";

const contentOf = (files: Files) => validate(read(writeFolder(files)).reading).content;

function panelOf(files: Files): string | undefined {
  const site = wholeSite(contentOf(files));
  return sessions(site.modules[0]!, site.programme.session)?.toString();
}

const words = (panel: string | undefined) => panel?.replace(/<[^>]*>/g, " ").replace(/\s+/g, " ");

describe("the sessions of a module", () => {
  test("from where to where, how long, and what to wait for", () => {
    const panel = panelOf(millFiles);
    expect(words(panel)).toContain("Reckoned for sessions of 2 h 30 min");
    expect(words(panel)).toContain("1 1 Let it down to 3 Take the shaft out 9 min at least 12 h");
    expect(words(panel)).toContain("2 4 Change the felt to 6 Put the guard on 0 min —");
    expect([...panel!.matchAll(/href="#([^"]+)"/g)].map(([, id]) => id)).toEqual([
      "main",
      "constructor",
      "felt-on",
      "guard-on",
    ]);
  });

  test("a session of the programme's own length; a stretch that is longer is said", () => {
    const files = changed("programme.yaml", "place: The shed", "place: The shed\nsession: 8 min", millFiles);
    expect(words(panelOf(files))).toContain(
      "1 Let it down to 3 Take the shaft out takes 9 min with no safe place to leave off before its end: longer than a session of 8 min.",
    );
  });

  test("nothing where no step has a time", () => {
    const timeless = changed("modules/mill/module.md", "time: 5 min\n", "", millFiles);
    const waitless = changed("modules/mill/module.md", "wait: 12 h\n", "", timeless);
    expect(panelOf(changed("modules/mill/module.md", "time: 4 min\n", "", waitless))).toBeUndefined();
  });

  test("they are made anew when the length of a session alone has changed", () => {
    const content = contentOf(millFiles);
    const before = wholeSite(content).modules[0]!;
    const shorter = wholeSite({ ...content, programme: { ...content.programme, session: 8 } }).modules[0]!;
    expect(before.sessions!.tooLong).toBeNull();
    expect(shorter.sessions!.tooLong).toEqual({ from: "main", to: "constructor", minutes: 9 });
  });
});
