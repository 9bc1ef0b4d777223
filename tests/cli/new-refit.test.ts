/** `new refit`: from what comes apart, the draft of how it goes together. */
import { cpSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { parse, stringify } from "yaml";
import { callCommand as call } from "../support/call-command.ts";
import { temporaryFolder, writeFolder } from "../support/content-folder.ts";
import { projectDir } from "../support/project.ts";
import { stripText, twoModules } from "../support/two-modules.ts";

/** The step blocks of a module. */
const blocksOf = (text: string) =>
  [...text.matchAll(/```yaml step\n([\s\S]*?)```/g)].map(
    ([, block]) => parse(block!) as Record<string, unknown>,
  );

interface Found {
  readonly code: string;
  readonly severity: string;
  readonly file: string;
  readonly message: string;
}

async function errorsIn(content: string): Promise<Found[]> {
  const { out } = await call("check", "--json", "--content", content);
  const { diagnostics } = JSON.parse(out) as { diagnostics: Found[] };
  return diagnostics.filter(({ severity }) => severity === "error");
}

interface FrontMatter {
  parts: Record<string, { replaces?: string }>;
  state: Record<string, { ends?: string }>;
  leaves?: Record<string, unknown>;
  practices?: unknown;
}

/** The demo with one module cut off before a heading; its states end where the cut leaves them. */
function cutDemo(id: string, heading: string, ends: Readonly<Record<string, string>>): string {
  const folder = join(temporaryFolder(), "content");
  cpSync(join(projectDir, "content"), folder, { recursive: true });
  const file = join(folder, "modules", id, "module.md");
  const text = readFileSync(file, "utf8");
  const [, front, body] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(text)!;
  const data = parse(front!) as FrontMatter;
  for (const [state, value] of Object.entries(ends)) data.state[state]!.ends = value;
  // Spare parts are for the way back; a figure that numbers one keeps its name.
  const spares = Object.keys(data.parts).filter((part) => data.parts[part]!.replaces !== undefined);
  for (const part of spares) delete data.parts[part];
  delete data.leaves;
  delete data.practices;
  const cut = body!
    .slice(0, body!.indexOf(`\n## ${heading}\n`))
    .replace(/^record-for:.*\n/gm, "")
    .replace(/\]\(#[\w-]+\)/g, "](module.md)")
    .replace(/\{of: ([\w-]+), name:/g, (of, part: string) => (spares.includes(part) ? "{name:" : of));
  writeFileSync(file, `---\n${stringify(data)}---\n${cut}\n`);
  rmSync(join(folder, "modules", id, "quiz.yaml"));
  return folder;
}

/** Says in the module's front matter what its draft has marked that it has to say. */
function handOn(folder: string, id: string, marks: readonly Found[]): void {
  const [said] = marks.flatMap(({ message }) => /has to say (\{.*\})/.exec(message)?.[1] ?? []);
  const file = join(folder, "modules", id, "module.md");
  writeFileSync(
    file,
    readFileSync(file, "utf8").replace(/^---\n/, () => `---\nleaves: ${said}\n`),
  );
}

/** Takes every mark out, as an author does who has gone through them. */
function goThrough(file: string): void {
  const text = readFileSync(file, "utf8");
  writeFileSync(file, text.replace(/^draft:\n(?: {2}.*\n)+/gm, ""));
}

describe.each([
  ["spring-motor", "Dig the old grease out dry", { power: "let down" }],
  ["hand-crank-sewing-machine", "Tilt the head back", { finish: "tested", works: "as found" }],
] as const)("the strip part of %s", (id, heading, ends) => {
  test("is put back by a draft that passes check once its marks are gone through", async () => {
    const folder = cutDemo(id, heading, ends);
    const file = join(folder, "modules", `${id}-refit`, "module.md");
    const made = await call("new", "refit", "--from", id, "--content", folder);
    expect(made).toMatchObject({ code: 0, err: "", out: expect.stringContaining(file) });
    const draft = (found: readonly Found[]) => found.filter((one) => one.file.includes(`${id}-refit`));
    handOn(folder, id, draft(await errorsIn(folder)));
    const marked = draft(await errorsIn(folder));
    expect(new Set(marked.map(({ code }) => code))).toEqual(new Set(["draft-mark"]));
    const messages = marked.map(({ message }) => message).join("\n");
    for (const kind of ["cleaning", "lubrication", "adjustment", "recorded setting"])
      expect(messages).toContain(`not finished: ${kind}: `);
    // Each text that was recorded while something came off is asked for again.
    const strip = blocksOf(readFileSync(join(folder, "modules", id, "module.md"), "utf8"));
    const recorded = strip.flatMap(({ remove, record }) =>
      remove === undefined ? [] : [record ?? []].flat(),
    );
    expect(recorded.length).toBeGreaterThan(5);
    for (const text of recorded) expect(messages).toContain(String(text).replace(/\.$/, ""));
    goThrough(file);
    // Sheets of the demo still link to steps that were cut off.
    expect((await errorsIn(folder)).filter((one) => one.file.startsWith("modules/"))).toEqual([]);
  });
});

describe("the draft", () => {
  const draftOf = async (text: string) => {
    const folder = writeFolder(new Map([...twoModules, ["modules/strip/module.md", text]]));
    const made = await call("new", "refit", "closing", "--from", "strip", "--content", folder);
    expect(made).toMatchObject({ code: 0, err: "" });
    return readFileSync(join(folder, "modules/closing/module.md"), "utf8");
  };
  test("undoes the steps in reverse, parts before what holds them, and tightens", async () => {
    expect(blocksOf(await draftOf(stripText))).toMatchObject([
      { id: "refit-wheel", refit: ["wheel"] },
      {
        id: "refit-lid",
        refit: ["lid", "lid-screws"],
        tighten: ["lid-screws"],
        while: { power: "let down" },
      },
    ]);
  });

  test("cuts a step in two where a cover would lie over what is still to be tightened", async () => {
    const one = stripText
      .replace("remove: [wheel]", "remove: [wheel-nut, wheel]")
      .replace(/^ {2}lid-screws: .*$/m, (line) => `${line}\n  wheel-nut: {name: wheel nut, count: 1}`);
    const held = one
      .replace("wheel: {name: wheel}", "wheel: {name: wheel, held-by: [wheel-nut]}")
      .replace("remove: [lid-screws, lid]", "remove: [lid-screws, lid, wheel-nut, wheel]")
      .replace(/\n## Take the wheel out[\s\S]*$/, "");
    expect(blocksOf(await draftOf(held)).map(({ refit, tighten }) => [refit, tighten])).toEqual([
      [["wheel", "wheel-nut"], ["wheel-nut"]],
      [["lid", "lid-screws"], ["lid-screws"]],
    ]);
  });

  test("counts where not all came out or was slack before", async () => {
    const some = stripText.replace(
      "## Take the lid off",
      "## Ease\n\n```yaml step\nid: ease\nslacken: {lid-screws: 1}\n```\n\n## Take the lid off",
    );
    expect(blocksOf(await draftOf(some)).map(({ refit, tighten }) => [refit, tighten])).toEqual([
      [["wheel"], undefined],
      [["lid", "lid-screws"], [{ "lid-screws": 3 }]],
      [undefined, ["lid-screws"]],
    ]);
  });

  test("brings a state about where the removal needed it and it holds no more", async () => {
    const wound = stripText
      .replace("lid: {name: lid,", "lid: {name: lid, only-while: {power: let down},")
      .replace("ends: let down}", "ends: wound}")
      .concat("\n## Wind it\n\n```yaml step\nid: wind\nmakes: {power: wound}\n```\n");
    const text = await draftOf(wound);
    expect(blocksOf(text)).toMatchObject([
      { id: "refit-wheel" },
      { id: "make-power", makes: { power: "let down" } },
      { id: "refit-lid" },
    ]);
    expect(text).toContain("adjustment: how the spring is brought to “let down”");
  });
});

describe("a call that can't be done", () => {
  const folder = () => writeFolder(twoModules);

  test.each([
    [["new", "refit"], 2, "benchwright new refit [ID] --from MODULE"],
    [["new", "refit", "x", "--from", "strap"], 2, 'no module "strap"'],
    [["new", "refit", "Bad", "--from", "strip"], 2, "not a good id"],
    [["new", "refit", "build", "--from", "strip"], 2, "exists already; nothing is written"],
    [["new", "module", "x", "--from", "strip"], 2, "benchwright new refit [ID] --from MODULE"],
    [["new", "refit", "--from", "build"], 1, "nothing to refit"],
    [["new", "refit", "--from", "../strip"], 2, "not a good id"],
  ] as const)("%j", async (args, code, says) => {
    expect(await call(...args, "--content", folder())).toMatchObject({
      code,
      out: "",
      err: expect.stringContaining(says),
    });
  });

  test("from a module with faults of its own", async () => {
    const broken = (text: string) => writeFolder(new Map([...twoModules, ["modules/strip/module.md", text]]));
    for (const text of [
      stripText.replace("revision: 1", "revision: one"),
      stripText.replace("remove: [lid-screws, lid]", "remove: [lid]"),
    ])
      expect(await call("new", "refit", "--from", "strip", "--content", broken(text))).toMatchObject({
        code: 1,
        out: "",
        err: expect.stringContaining("benchwright check"),
      });
  });
});
