import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { projectDir, projectFiles } from "../support/project.ts";
import { arrow, checkLaws } from "./check-laws.ts";
import { findImports } from "./imports.ts";
import { exceptions, knownArrows, laws } from "./laws.ts";

describe("the project keeps its import laws", async () => {
  const files = projectFiles().filter(
    (path) => /^(src|layouts)\/.*\.ts$/.test(path) && !path.endsWith(".d.ts"),
  );
  const found = await findImports(projectDir, files);
  const verdict = checkLaws(found, laws, exceptions);

  test("every file was read", () => {
    expect(found.files.toSorted()).toEqual(files.toSorted());
    expect(files.length).toBeGreaterThan(50);
  });

  test("no import is against a law", () => {
    expect(verdict.violations).toEqual([]);
  });

  test.each(knownArrows)("the arrow %s -> %s was seen", (from, to) => {
    expect(verdict.arrows).toContain(arrow(from, to));
  });

  test("every exception is needed", () => {
    expect(verdict.unused).toEqual([]);
  });

  test("every law gives its reason and has files", () => {
    expect(laws.filter(({ why }) => why.length < 20)).toEqual([]);
    expect(
      laws.filter(({ from }) => !files.some((path) => path === from || path.startsWith(`${from}/`))),
    ).toEqual([]);
  });
});

/** Files that break a law, each with what must be said about it; and some that keep them. */
const planted: readonly { file: string; text: string; says: string | undefined }[] = [
  { file: "src/engine/a.ts", text: 'import { readFile } from "node:fs";', says: "imports node:" },
  { file: "src/engine/b.ts", text: 'import type { Stats } from "node:fs";', says: "imports types of node:" },
  { file: "src/engine/c.ts", text: 'import { z } from "zod";', says: "imports zod" },
  { file: "src/engine/d.ts", text: 'export * from "../model/m.ts";', says: "imports src/model" },
  {
    file: "src/engine/e.ts",
    text: 'export const x = (y: import("../read/r.ts").R) => y;',
    says: "imports types of src/read",
  },
  {
    file: "src/model/a.ts",
    text: 'import { f } from "../engine/x.ts"; export const g = f;',
    says: "imports src/engine",
  },
  {
    file: "src/model/b.ts",
    text: 'import type { F } from "../engine/x.ts"; export type G = F;',
    says: undefined,
  },
  {
    file: "src/model/c.ts",
    text: 'import { type F } from "../engine/x.ts"; export type G = F;',
    says: "imports src/engine",
  },
  { file: "src/validate/a.ts", text: 'export { r } from "../read/r.ts";', says: "imports src/read" },
  {
    file: "src/validate/b.ts",
    text: 'export type { R } from "../read/r.ts";',
    says: "imports types of src/read",
  },
  {
    file: "src/validate/c.ts",
    text: 'export type * from "../derive/d.ts";',
    says: "imports types of src/derive",
  },
  {
    file: "src/derive/a.ts",
    text: 'const r = await import("../render/r.ts"); export default r;',
    says: "imports src/render",
  },
  { file: "src/derive/b.ts", text: 'import "../bundle/b.ts";', says: "imports src/bundle" },
  {
    file: "src/derive/c.ts",
    text: '// import "../read/r.ts"\nexport const text = `import "../read/r.ts"`;',
    says: undefined,
  },
  {
    file: "src/browser/a.ts",
    text: 'import {\n  codes,\n} from "../model/codes.ts";\nexport { codes };',
    says: "imports src/model",
  },
  {
    file: "src/browser/b.ts",
    text: 'import Graph, { type X } from "@scope/graph/lib"; export type Y = X;',
    says: "imports @scope/graph",
  },
  {
    file: "src/report/a.ts",
    text: 'import type { Tray } from "../engine/tray.ts";',
    says: "imports types of src/engine",
  },
  {
    file: "layouts/a.ts",
    text: 'import { s } from "../src/derive/s.ts"; export { s };',
    says: "imports src/derive",
  },
  {
    file: "src/cli/a.ts",
    text: 'import { s } from "../derive/s.ts"; import "lunr"; export { s };',
    says: undefined,
  },
  { file: "src/cli/b.ts", text: 'import "../../tests/support/project.ts";', says: "outside the laws" },
  { file: "src/new/a.ts", text: "export {};", says: "no law covers it" },
];

describe("a planted violation is found", () => {
  let root = "";
  let violations: readonly string[] = [];

  beforeAll(async () => {
    root = await mkdtemp(join(tmpdir(), "laws-"));
    for (const { file, text } of planted) {
      await mkdir(dirname(join(root, file)), { recursive: true });
      await writeFile(join(root, file), text);
    }
    const found = await findImports(
      root,
      planted.map(({ file }) => file),
    );
    violations = checkLaws(found, laws, []).violations;
  });
  afterAll(() => rm(root, { recursive: true }));

  test.each(planted)("$file: $text", ({ file, says }) => {
    const said = violations.filter((violation) => violation.startsWith(file));
    expect(said).toHaveLength(says === undefined ? 0 : 1);
    expect(said.join()).toContain(says ?? "");
  });

  test("an exception lets one import pass, and is told when nothing needs it", async () => {
    const exception = { from: "src/derive/b.ts", to: "src/bundle/b.ts", why: "planted" };
    const found = await findImports(root, ["src/derive/b.ts"]);
    expect(checkLaws(found, laws, [exception])).toMatchObject({ violations: [], unused: [] });
    expect(checkLaws({ ...found, imports: [] }, laws, [exception]).unused).toEqual([exception]);
  });
});
