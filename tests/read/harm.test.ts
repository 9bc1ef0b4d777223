/** Input that would harm: code in front matter, links out of the folder, bombs, sheer size. A clear fault, no hang. */
import { mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { Code } from "../../src/model/codes.ts";
import { read } from "../../src/read/read.ts";
import { validate } from "../../src/validate/validate.ts";
import { soundFiles, temporaryFolder, withFile, writeFolder } from "../support/content-folder.ts";

function diagnose(folder: string): { code: Code; file: string; message: string }[] {
  const { reading, diagnostics } = read(folder);
  return [...diagnostics, ...validate(reading).diagnostics];
}

const tool = "tools/driver.md";

describe("front matter that would run code", () => {
  test.each(["js", "javascript", " js", "coffee", "json", "toml", "JS"])(
    "---%s is refused and runs nothing",
    (language) => {
      const text = `---${language}\n{ title: (globalThis.ran = true) }\n---\n`;
      expect(diagnose(writeFolder(withFile(tool, text)))).toContainEqual(
        expect.objectContaining({ code: "front-matter-language", file: tool }),
      );
      expect((globalThis as { ran?: boolean }).ran).toBeUndefined();
    },
  );

  test("a YAML tag for code is data at most", () => {
    const text = "---\ntitle: !!js/function 'function () { globalThis.ran = true }'\nsummary: x\n---\n";
    diagnose(writeFolder(withFile(tool, text)));
    expect((globalThis as { ran?: boolean }).ran).toBeUndefined();
  });
});

describe("links out of the content folder", () => {
  test("a symbolic link to a file or folder outside is refused", () => {
    const outside = temporaryFolder();
    writeFileSync(join(outside, "secret.md"), "---\ntitle: Secret\nsummary: Secret.\n---\n");
    const folder = writeFolder(soundFiles);
    symlinkSync(join(outside, "secret.md"), join(folder, "tools", "secret.md"));
    symlinkSync(outside, join(folder, "hazards", "more"));
    const found = diagnose(folder);
    expect(found.map(({ code, file }) => [code, file]).sort()).toEqual([
      ["leaves-content", "hazards/more"],
      ["leaves-content", "tools/secret.md"],
    ]);
    expect(read(folder).reading.sources.map(({ path }) => path)).not.toContain("tools/secret.md");
  });

  test("a symbolic link to a file inside is read, one to a folder inside is not followed round", () => {
    const folder = writeFolder(soundFiles);
    symlinkSync(join(folder, tool), join(folder, "tools", "same.md"));
    symlinkSync(folder, join(folder, "tools", "round"));
    const found = diagnose(folder);
    expect(found).toEqual([expect.objectContaining({ code: "leaves-content", file: "tools/round" })]);
    expect(read(folder).reading.sources.map(({ path }) => path)).toContain("tools/same.md");
  });
});

describe("bombs and sheer size", () => {
  test("aliases that multiply are refused", () => {
    const levels = Array.from(
      { length: 12 },
      (_, i) =>
        `${"abcdefghijkl"[i]}: &${"abcdefghijkl"[i]} [${
          i === 0
            ? "x"
            : Array(10)
                .fill(`*${"abcdefghijkl"[i - 1]}`)
                .join(", ")
        }]`,
    );
    expect(diagnose(writeFolder(withFile("programme.yaml", levels.join("\n"))))).toContainEqual(
      expect.objectContaining({ code: "yaml-alias", file: "programme.yaml" }),
    );
  });

  test.each(["[", "{a: ", "- ", "? "])("nesting as deep as a file can hold is refused: %j", (opening) => {
    const text = `name: ${opening.startsWith("[") || opening.startsWith("{") ? "" : "\n  "}${opening.repeat(1_000_000 / opening.length)}`;
    expect(diagnose(writeFolder(withFile("programme.yaml", text)))).toContainEqual(
      expect.objectContaining({ code: "file-yaml", file: "programme.yaml" }),
    );
  });

  test("a file of 50 MB is not read", () => {
    const found = diagnose(writeFolder(withFile(tool, Buffer.alloc(50 * 1024 * 1024, "x"))));
    expect(found).toContainEqual(expect.objectContaining({ code: "too-large", file: tool }));
  });

  test("10,000 steps are refused", () => {
    const steps = Array.from({ length: 10_000 }, (_, i) => `## S${i}\n\`\`\`yaml step\nid: s${i}\n\`\`\`\n`);
    const text = `---\ntitle: Long\nsummary: Long.\nrevision: 1\n---\n${steps.join("")}`;
    expect(diagnose(writeFolder(withFile("modules/long/module.md", text)))).toContainEqual(
      expect.objectContaining({ code: "too-many-steps" }),
    );
  });

  test("names that JavaScript objects have are names like any other", () => {
    const text =
      "---\ntitle: T\nsummary: S.\nrevision: 1\nparts: {constructor: {name: body}}\n---\n\n## Open\n\n```yaml step\nid: constructor\nwork: constructor\n```\n";
    expect(diagnose(writeFolder(withFile("modules/constructor/module.md", text)))).toEqual([]);
    const bad = "title: T\n__proto__: {polluted: true}\nname: N\n";
    expect(diagnose(writeFolder(withFile("programme.yaml", bad)))).toContainEqual(
      expect.objectContaining({ code: "unknown-field" }),
    );
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });
});

describe("folders that can't be read", () => {
  test("no such folder, or a file in its place", () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, "file"), "");
    expect(diagnose(join(folder, "none")).map(({ code }) => code)).toContain("no-content");
    expect(diagnose(join(folder, "file")).map(({ code }) => code)).toContain("no-content");
  });

  test("an entry that is neither file nor folder", () => {
    const folder = writeFolder(soundFiles);
    mkdirSync(join(folder, "modules", "link"));
    symlinkSync(join(folder, "nowhere"), join(folder, "modules", "link", "module.md"));
    expect(diagnose(folder)).toContainEqual(
      expect.objectContaining({ code: "unreadable", file: "modules/link/module.md" }),
    );
  });
});
