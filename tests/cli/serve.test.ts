/** `serve` as its users call it: it builds, says where, and pages hear of a change and of none that is faulty. */
import { readFileSync, writeFileSync } from "node:fs";
import { get, request } from "node:http";
import { join } from "node:path";
import { expect, test } from "vitest";
import { soundFiles, temporaryFolder, writeFolder } from "../support/content-folder.ts";
import { runTool } from "../support/run-command.ts";

async function until<Value>(look: () => Value | undefined | Promise<Value | undefined>): Promise<Value> {
  for (let tries = 0; tries < 300; tries++) {
    const found = await look();
    if (found !== undefined) return found;
    await new Promise((done) => setTimeout(done, 100));
  }
  throw new Error("it did not come about within half a minute");
}

/** Asks for a path as it is written, which fetch would tidy up first. */
function ask(url: string, path: string): Promise<{ status: number; body: string }> {
  return new Promise((done, fail) => {
    const asked = request(url, { path }, (response) => {
      let body = "";
      response.setEncoding("utf8").on("data", (text: string) => {
        body += text;
      });
      response.on("end", () => done({ status: response.statusCode!, body }));
    });
    asked.on("error", fail).end();
  });
}

test("a change is built and told to open pages, a fault is told to the author and changes nothing", {
  timeout: 90_000,
}, async () => {
  const content = writeFolder(soundFiles);
  const site = join(temporaryFolder(), "site");
  const module = join(content, "modules/box/module.md");
  const tool: { stop?: () => void; stdout: string; stderr: string } = { stdout: "", stderr: "" };
  const ended = runTool(["serve", "--content", content, "--to", site, "--port", "0"], {
    cwd: temporaryFolder(),
    started: ({ kill }) => {
      tool.stop = () => kill("SIGTERM");
    },
    heard: (stream, text) => {
      tool[stream] += text;
    },
  });
  const url = await until(() => /Serving (http:\S+)/.exec(tool.stdout)?.[1]);
  const page = "/modules/box/index.html";
  expect((await ask(url, page)).body).toContain("Open the box");
  expect((await ask(url, "/modules/box/")).body).toContain('src="/_reload.js"');
  expect((await ask(url, "/../programme.yaml")).status).toBe(404);
  expect((await ask(url, "/%2e%2e/%2e%2e/etc/passwd")).status).toBe(404);

  let changes = 0;
  let faults = "";
  const line = get(`${url}_changes`, (response) =>
    response.on("data", (text: Buffer) => {
      if (text.includes("data: changed")) changes++;
      if (text.includes("event: faults")) faults += text;
    }),
  );
  line.on("error", () => undefined);
  const sound = readFileSync(module, "utf8");
  writeFileSync(module, sound.replace("title: Open the box", "title: Open the chest"));
  await until(() => (changes > 0 ? true : undefined));
  expect((await ask(url, page)).body).toContain("Open the chest");

  const told = changes;
  writeFileSync(module, sound.replace("remove: wheel", "remove: whel"));
  await until(() => (tool.stderr.includes("unknown-target") ? true : undefined));
  expect((await ask(url, page)).body).toContain("Open the chest");
  expect(changes).toBe(told);
  await until(() => (faults.includes("unknown-target") ? true : undefined));
  line.destroy();
  tool.stop?.();
  expect((await ended).code).toBe(0);
});

test("while there is no good site every page says so, and is replaced once the faults are mended", {
  timeout: 90_000,
}, async () => {
  const content = writeFolder(soundFiles);
  const module = join(content, "modules/box/module.md");
  const sound = readFileSync(module, "utf8");
  writeFileSync(module, sound.replace("remove: wheel", "remove: whel"));
  const tool: { stop?: () => void; stdout: string } = { stdout: "" };
  const ended = runTool(
    ["serve", "--content", content, "--to", join(temporaryFolder(), "site"), "--port", "0"],
    {
      cwd: temporaryFolder(),
      started: ({ kill }) => {
        tool.stop = () => kill("SIGTERM");
      },
      heard: (stream, text) => {
        if (stream === "stdout") tool.stdout += text;
      },
    },
  );
  const url = await until(() => /Serving (http:\S+)/.exec(tool.stdout)?.[1]);
  const shown = await ask(url, "/");
  expect(shown.status).toBe(503);
  expect(shown.body).toContain("There is no site yet");
  expect(shown.body).toContain('src="/_reload.js"');
  let heard = "";
  const line = get(`${url}_changes`, (response) =>
    response.on("data", (text: Buffer) => {
      heard += text;
    }),
  );
  line.on("error", () => undefined);
  await until(() => (/event: faults\ndata: .*unknown-target/.test(heard) ? true : undefined));
  writeFileSync(module, sound);
  await until(() => (heard.includes("data: changed") ? true : undefined));
  expect(await ask(url, "/")).toMatchObject({ status: 200 });
  line.destroy();
  tool.stop?.();
  expect((await ended).code).toBe(0);
});
