/** What the commands say of pictures that can't be used, and that a site stays as it was. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { run } from "../../src/cli/run.ts";
import { soundFiles, temporaryFolder, withFile, writeFolder } from "../support/content-folder.ts";
import { photograph } from "./photograph.ts";

async function call(...args: string[]): Promise<{ readonly code: number; readonly said: string }> {
  const said: string[] = [];
  const say = (text: string): void => void said.push(text);
  const code = await run(args, { out: say, err: say });
  return { code, said: said.join("") };
}

const picture = "modules/box/figures/box.svg";
const unsafe = withFile(
  picture,
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9">\n<script>go()</script>\n</svg>\n',
);

test("a drawing with a script is shown at its line, with what to do", async () => {
  const { code, said } = await call("check", "--content", writeFolder(unsafe));
  expect(code).toBe(1);
  expect(said).toContain(`${picture}:2:1`);
  expect(said).toContain("picture-unsafe");
  expect(said).toContain("<script> may not stand in a drawing: it runs a script. Take it out");
  expect(said).toMatch(/2 \| <script>go\(\)<\/script>/);
});

test("a photograph that is cut off is told by check and build, and the last good site stands", async () => {
  const photo = await photograph("jpeg", { width: 600, height: 400 });
  const broken = withFile("modules/box/figures/lid.jpg", photo.subarray(0, photo.length - 300));
  const content = writeFolder(broken);
  const checked = await call("check", "--content", content, "--json");
  expect(checked.code).toBe(1);
  const { diagnostics } = JSON.parse(checked.said) as { diagnostics: { code: string; file: string }[] };
  expect(diagnostics).toContainEqual(
    expect.objectContaining({
      code: "picture-broken",
      file: "modules/box/figures/lid.jpg",
      line: 1,
      column: 1,
    }),
  );
  const site = join(temporaryFolder(), "site");
  expect((await call("build", "--fresh", "--content", writeFolder(soundFiles), "--to", site)).code).toBe(0);
  const before = readFileSync(join(site, "index.html"), "utf8");
  const built = await call("build", "--fresh", "--content", content, "--to", site);
  expect(built).toMatchObject({ code: 1, said: expect.stringContaining("picture-broken") });
  expect(built.said).toContain("the last good site stands as it was");
  expect(readFileSync(join(site, "index.html"), "utf8")).toBe(before);
});
