/** `build --single` as it is called: what it writes, says and refuses. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeEach, expect, test } from "vitest";
import { callCommand } from "../support/call-command.ts";
import { changed, soundFiles, temporaryFolder, writeFolder } from "../support/content-folder.ts";

let content: string;
let to: string;
const [path] = [...soundFiles.keys()].filter((file) => file.endsWith("/module.md"));
const module = path!.split("/")[1]!;
beforeEach(() => {
  content = writeFolder(soundFiles);
  to = join(temporaryFolder(), "one.html");
});

const single = (...args: string[]) =>
  callCommand("build", "--content", content, "--fresh", "--single", ...args);

test("it writes one file that names no other, and tells its size as one JSON value", async () => {
  const { code, out } = await single(module, "--to", to, "--json");
  const told = JSON.parse(out) as {
    file: string;
    module: string;
    pages: number;
    bytes: number;
    errors: number;
  };
  expect({ code, ...told }).toMatchObject({ code: 0, file: to, module, errors: 0 });
  const html = readFileSync(to);
  expect(told.bytes).toBe(html.length);
  expect(html.toString().match(/data-part>/g)?.length).toBe(told.pages);
  expect(html.toString()).not.toMatch(/<(?:link|script|img)[^>]* (?:src|href)="(?!data:)/);
  expect(html.toString()).toMatch(/script-src 'sha256-[^"]*'; img-src data:/);
  expect(readdirSync(join(to, ".."))).toEqual(["one.html"]);
});

test("for a module that there is not it names the nearest, and ends with 2", async () => {
  const { code, err } = await single(`${module}x`, "--to", `${to}.none`);
  expect(code).toBe(2);
  expect(err).toContain(`There is no module "${module}x". Did you mean ${module}?`);
  expect(existsSync(`${to}.none`)).toBe(false);
});

test("a folder as the file's place is a wrong call", async () => {
  const { code, err } = await single(module, "--to", join(to, ".."));
  expect(code).toBe(2);
  expect(err).toContain("it names a file");
});

test("a folder that is not there yet is made; below a file there can be none, which is a wrong call", async () => {
  const deep = join(to, "../carried/one.html");
  expect((await single(module, "--to", deep)).code).toBe(0);
  expect(readdirSync(join(deep, ".."))).toEqual(["one.html"]);
  const { code, err } = await single(module, "--to", join(deep, "other.html"));
  expect(code).toBe(2);
  expect(err).toMatch(/other\.html can't be written: .* Name another place with --to\./);
});

test("content with errors gives no file, and ends with 1", async () => {
  const bad = writeFolder(changed(path!, "revision: 1", "revision: none"));
  const file = `${to}.bad`;
  const { code, err } = await callCommand(
    "build",
    "--content",
    bad,
    "--fresh",
    "--single",
    module,
    "--to",
    file,
  );
  expect(code).toBe(1);
  expect(err).toContain("No file is written.");
  expect(existsSync(file)).toBe(false);
});
