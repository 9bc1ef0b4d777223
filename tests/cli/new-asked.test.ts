/** `new module` on a terminal asks what is needed, and writes a module that passes `check`. */
import { spawn } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { PassThrough } from "node:stream";
import { describe, expect, test } from "vitest";
import { readCall } from "../../src/cli/command.ts";
import { begin, newCommand } from "../../src/cli/new.ts";
import { callCommand } from "../support/call-command.ts";
import { soundFiles, temporaryFolder, writeFolder } from "../support/content-folder.ts";
import { toolEntry } from "../support/run-command.ts";

/** Calls `new module ID` with lines typed in; input ends after them. */
async function typed(lines: readonly string[], content: string, ...more: string[]) {
  const input = new PassThrough();
  const output = new PassThrough();
  const heard = { questions: "", out: "" };
  output.on("data", (text: Buffer) => {
    heard.questions += text;
  });
  input.end(lines.map((line) => `${line}\n`).join(""));
  const call = readCall(newCommand, ["module", "gear", "--content", content, ...more]);
  const print = (text: string) => {
    heard.out += text;
  };
  const ending = begin(call, { out: print, err: print }, { input, output, isTerminal: false }).catch(
    (cause: unknown) => cause,
  );
  return { ended: await ending, ...heard };
}

const moduleIn = (content: string): string => join(content, "modules/gear/module.md");

/** No error, and no warning of the new module. */
/** Nothing is amiss; what its author has still to write is told. */
async function expectSound(content: string): Promise<void> {
  const { code, out } = await callCommand("check", "--json", "--content", content);
  const found = (JSON.parse(out).diagnostics as { code: string }[]).map((one) => one.code);
  expect({ code, found: [...new Set(found)] }).toEqual({ code: 0, found: ["unwritten"] });
}

describe("the answers come to a module that passes check", () => {
  test.each<[name: string, lines: string[], says: RegExp[]]>([
    ["nothing but the defaults", Array(8).fill(""), [/^title: Gear$/m, /id: cover-off/]],
    [
      "a procedure of five steps",
      ["1", "Clean a gear", "Made: clean #1", "box", "driver", "vapour", "5"],
      [/title: Clean a gear/, /- box/, /- driver/, /id: work-3/],
    ],
    ["by number", ["2", "", "", "1", "1", "1"], [/## What to know/, /- vapour/]],
    ["bench knowledge without anything", ["bench knowledge", "", "", "none", "", ""], [/## What to do/]],
    [
      "with what YAML would take for something else",
      ["", "yes", "- no: {", "", "", "", "3"],
      [/title: "yes"|title: yes/],
    ],
  ])("%s", async (_, lines, says) => {
    const content = writeFolder(soundFiles);
    expect(await typed(lines, content)).toMatchObject({ ended: 0 });
    const written = readFileSync(moduleIn(content), "utf8");
    for (const what of says) expect(written).toMatch(what);
    await expectSound(content);
  });

  test("where there is no programme yet, it is begun", async () => {
    const content = join(temporaryFolder(), "content");
    expect(await typed(["", "", "", "4"], content)).toMatchObject({ ended: 0 });
    expect(readFileSync(moduleIn(content), "utf8")).toContain("id: work-2");
    await expectSound(content);
  });
});

test("an answer that is not understood is asked for again, with the nearest name", async () => {
  const content = writeFolder(soundFiles);
  const { ended, questions } = await typed(
    ["procedur", "1", "", "", "bx", "box", "9", "driver", "vapuor", "vapour", "2", "x", "3"],
    content,
  );
  expect(ended).toBe(0);
  expect(questions).toContain('There is no "procedur" in the list. Did you mean procedure?');
  expect(questions).toContain("Did you mean box?");
  expect(questions).toContain("Give a name or a number from 1 to 1.");
  expect(questions).toContain("Did you mean vapour?");
  expect(questions).toContain('"2" is no whole number from 3 to 60.');
  await expectSound(content);
});

test.each([0, 1, 2, 5, 6])("where input ends after %d answers, nothing is written", async (answered) => {
  const content = writeFolder(soundFiles);
  const { ended } = await typed(Array(answered).fill(""), content);
  expect(String(ended)).toContain("nothing is written");
  expect(existsSync(moduleIn(content))).toBe(false);
});

test.each(["--yes", "--json"])("with %s nothing is asked", async (option) => {
  const content = writeFolder(soundFiles);
  expect(await typed([], content, option)).toMatchObject({ ended: 0, questions: "" });
  expect(existsSync(moduleIn(content))).toBe(true);
});

/** `script` (util-linux) gives the tool a terminal; each answer is typed once its question stands there. */
function onTerminal(
  content: string,
  answers: readonly string[],
): Promise<{ code: number | null; shown: string }> {
  const words = [process.execPath, toolEntry, "new", "module", "gear", "--content", content];
  const child = spawn("script", ["-qec", words.join(" "), "/dev/null"]);
  let shown = "";
  let answered = 0;
  child.stdout.on("data", (text: Buffer) => {
    shown += text;
    const questions = shown.split(/\[[^\n\]]+\] /).length - 1;
    while (answered < Math.min(questions, answers.length)) child.stdin.write(answers[answered++]!);
  });
  return new Promise((done, fail) => {
    child.on("error", fail).on("close", (code) => done({ code, shown }));
  });
}

describe("on a pseudo terminal", { timeout: 90_000 }, () => {
  test("asks, and writes", async () => {
    const content = writeFolder(soundFiles);
    const { shown, code } = await onTerminal(content, Array(7).fill("\r"));
    expect(shown).toContain("Which kind?");
    expect(shown).toContain("Written: ");
    expect(code).toBe(0);
    await expectSound(content);
  });

  test("Ctrl+C leaves nothing written", async () => {
    const content = writeFolder(soundFiles);
    const { shown, code } = await onTerminal(content, ["\r", "\r", "\u0003"]);
    expect(shown).toContain("Stopped; nothing is written.");
    expect(code).toBe(1);
    expect(existsSync(moduleIn(content))).toBe(false);
  });
});
