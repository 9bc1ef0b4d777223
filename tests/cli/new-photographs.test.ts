/** `new module --photos`: photographs in order of time become a draft that passes `check`, and keep nothing but the picture. */
import { existsSync, mkdirSync, readdirSync, readFileSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import readExif from "exif-reader";
import sharp from "sharp";
import { describe, expect, test } from "vitest";
import { mostPictures } from "../../src/cli/photographs/in-folder.ts";
import { inOrder } from "../../src/cli/photographs/in-order.ts";
import { takenIn } from "../../src/cli/photographs/taken.ts";
import { callCommand as call } from "../support/call-command.ts";
import { soundFiles, temporaryFolder, writeFolder } from "../support/content-folder.ts";

interface Shot {
  readonly at?: string;
  readonly fraction?: string;
  readonly offset?: string;
  /** A grey by which the picture is known again. */
  readonly grey?: number;
  readonly orientation?: number;
  readonly width?: number;
  readonly height?: number;
}

/** As a telephone makes it, with a position. Tag names and forms: Exif 2.32, 4.6.5; sharp calls the Exif IFD "IFD2", GPS "IFD3". */
function shoot({
  at,
  fraction,
  offset,
  grey = 128,
  orientation = 1,
  width = 60,
  height = 40,
}: Shot): Promise<Buffer> {
  const photo = {
    ...(at === undefined ? {} : { DateTimeOriginal: at }),
    ...(fraction === undefined ? {} : { SubSecTimeOriginal: fraction }),
    ...(offset === undefined ? {} : { OffsetTimeOriginal: offset }),
  };
  const background = { r: grey, g: grey, b: grey };
  return sharp({ create: { width, height, channels: 3, background } })
    .jpeg()
    .withExif({
      IFD0: { Make: "Invented", Model: "Phone of Invention" },
      IFD2: photo,
      IFD3: {
        GPSLatitudeRef: "N",
        GPSLatitude: "51/1 28/1 40/1",
        GPSLongitudeRef: "W",
        GPSLongitude: "0/1 0/1 5/1",
      },
    })
    .withMetadata({ orientation })
    .toBuffer();
}

async function folderOf(shots: Readonly<Record<string, Shot | Uint8Array>>): Promise<string> {
  const folder = temporaryFolder();
  mkdirSync(folder, { recursive: true });
  for (const [name, shot] of Object.entries(shots))
    writeFileSync(join(folder, name), shot instanceof Uint8Array ? shot : await shoot(shot));
  return folder;
}

interface Result {
  readonly order: string;
  readonly files: string[];
  readonly photographs: { photograph: string; taken: string | null; figure: string }[];
  readonly leftOut: string[];
}

async function begun(folder: string, content = writeFolder(soundFiles)) {
  const { code, out, err } = await call(
    "new",
    "module",
    "strip",
    "--photos",
    folder,
    "--content",
    content,
    "--json",
  );
  expect({ code, err }).toEqual({ code: 0, err: "" });
  return { content, module: join(content, "modules/strip"), ...(JSON.parse(out) as Result) };
}

const names = ({ photographs }: Result) => photographs.map(({ photograph }) => photograph);

/** The grey in the middle of a figure. */
async function greyOf(file: string): Promise<number> {
  const { channels } = await sharp(file).stats();
  return channels[0]!.mean;
}

/** Names and times of files are against the order in which the pictures were taken. */
const jumbled = {
  "a.jpg": { at: "2026:11:28 19:04:05", grey: 200 },
  "b.jpeg": { at: "2026:11:28 19:04:05", fraction: "5", grey: 240 },
  "c.JPG": { at: "2026:11:28 18:00:00", grey: 40 },
  "d.jpg": { at: "2026:11:27 23:59:59", grey: 10 },
};

describe("photographs with times", () => {
  test("a step a picture, in the order in which they were taken, whatever names and files say", async () => {
    const folder = await folderOf(jumbled);
    for (const [at, name] of Object.keys(jumbled).entries())
      utimesSync(join(folder, name), 1_000_000 + at, 1_000_000 + at);
    const result = await begun(folder);
    expect(names(result)).toEqual(["d.jpg", "c.JPG", "a.jpg", "b.jpeg"]);
    expect(result.order).toBe("time");
    expect(result.photographs.at(-1)).toEqual({
      photograph: "b.jpeg",
      taken: "2026-11-28T19:04:05.500",
      figure: "figures/step-04.jpg",
    });
    const figures = readdirSync(join(result.module, "figures")).sort();
    expect(figures).toEqual(["step-01.jpg", "step-02.jpg", "step-03.jpg", "step-04.jpg"]);
    const greys = await Promise.all(figures.map((file) => greyOf(join(result.module, "figures", file))));
    // JPEG may be a shade off.
    for (const [at, grey] of [10, 40, 200, 240].entries())
      expect(Math.abs(greys[at]! - grey)).toBeLessThan(3);
    const text = readFileSync(join(result.module, "module.md"), "utf8");
    expect([...text.matchAll(/^figure: \{file: (\S+),/gm)].map(([, file]) => file)).toEqual(
      figures.map((file) => `figures/${file}`),
    );
    expect([...text.matchAll(/^## (.*)$/gm)].map(([, title]) => title)).toContain(
      "What is done here is still to be written (photograph 3)",
    );
  });

  test("the draft passes check, says that it is one, and builds; no figure holds a position or a time", async () => {
    const { content, module } = await begun(await folderOf(jumbled));
    const { code, out } = await call("check", "--json", "--content", content);
    const { errors, diagnostics } = JSON.parse(out) as {
      errors: number;
      diagnostics: { file: string; code: string }[];
    };
    expect({ code, errors }).toEqual({ code: 0, errors: 0 });
    // What the author has still to say: of the module, and of each step.
    const ofDraft = diagnostics.filter(({ file }) => file.includes("strip"));
    expect(ofDraft.map(({ code: each }) => each).sort()).toEqual([
      ...Array(4).fill("unbound-step"),
      ...Array(5).fill("unwritten"),
    ]);
    const site = join(temporaryFolder(), "site");
    expect((await call("build", "--content", content, "--to", site)).code).toBe(0);
    const page = readFileSync(join(site, "modules/strip/index.html"), "utf8");
    expect(page).toMatch(/<h1[^>]*>Draft: Strip<\/h1>/);
    expect(page).toContain("Draft: what this module is for");
    expect(page).toContain("Photograph: <code>c.JPG</code>, taken 2026-11-28 18:00</p>");
    // The sheet counts the steps itself.
    expect(page).not.toMatch(/Step \d: what/);
    expect(
      page.match(/What is to be seen here is still to be written \(photograph \d\)/g)?.length,
    ).toBeGreaterThanOrEqual(4);
    for (const file of readdirSync(join(module, "figures"))) {
      const bytes = readFileSync(join(module, "figures", file));
      const { exif, xmp, iptc, gps } = (await sharp(bytes).metadata()) as unknown as Record<string, unknown>;
      expect({ exif, xmp, iptc, gps }).toEqual({});
      for (const trace of ["Exif", "GPS", "Phone of Invention", "2026:11:2"])
        expect(bytes.includes(trace), trace).toBe(false);
    }
    // The photographs themselves had them, or the lines above would say nothing.
    const before = await shoot(jumbled["a.jpg"]);
    expect(["Exif", "Phone of Invention", "2026:11:2"].filter((trace) => !before.includes(trace))).toEqual(
      [],
    );
    expect(readExif((await sharp(before).metadata()).exif!).GPSInfo?.GPSLatitude).toEqual([51, 28, 40]);
  });

  test("upright and no longer than 2000 px; a small one stays as small as it is", async () => {
    const { module } = await begun(
      await folderOf({
        "1.jpg": { at: "2026:01:01 10:00:00", width: 3000, height: 1500, orientation: 6 },
        "2.jpg": { at: "2026:01:01 10:01:00", width: 90, height: 50 },
      }),
    );
    const sizes = await Promise.all(
      ["step-01.jpg", "step-02.jpg"].map(async (file) => {
        const { width, height, orientation } = await sharp(join(module, "figures", file)).metadata();
        return [width, height, orientation];
      }),
    );
    expect(sizes).toEqual([
      [1000, 2000, undefined],
      [90, 50, undefined],
    ]);
  });
});

describe("what is still to be written", () => {
  const bound = (text: string, step: number) =>
    text.replace(`id: step-${step}\n`, `id: step-${step}\nwork: [works]\n`);
  const written = (text: string) =>
    text
      .replace("revision: 1", "revision: 1\nparts: {works: {name: works}}")
      .replace(/"Draft: Strip"/, "Strip")
      .replace(/"Draft: what[^"]*"/, "Clean the works.")
      .replace(/This is a draft[\s\S]*?(?=## )/, "");
  const titled = (text: string) => text.replace(/^## What is done here.*/gm, "## Clean the works");
  const told = (text: string) => text.replace(/^What is done here is.*/gm, "Brush them.");
  const seen = (text: string) => text.replace(/alt: ".*"/g, 'alt: "The works"');

  test("check tells of it until it is written, whether a step names a part or not", async () => {
    const { content, module } = await begun(await folderOf({ "1.jpg": {}, "2.jpg": {} }));
    const file = join(module, "module.md");
    const draft = readFileSync(file, "utf8");
    const left = async (text: string) => {
      writeFileSync(file, text);
      const { out } = await call("check", "--json", "--content", content);
      const { diagnostics } = JSON.parse(out) as { diagnostics: { code: string; message: string }[] };
      expect(diagnostics.filter(({ code }) => code !== "unwritten")).toEqual([]);
      return diagnostics.map(({ message }) => message.split(". ")[0]);
    };
    const all = bound(bound(draft, 1), 2).replace(
      "revision: 1",
      "revision: 1\nparts: {works: {name: works}}",
    );
    const step = (number: number, what: string) => `step "step-${number}" is still a draft in its ${what}`;
    expect(await left(all)).toEqual([
      "the module is still a draft in its title, summary and text",
      step(1, "title, alt text and text"),
      step(2, "title, alt text and text"),
    ]);
    const named = written(bound(bound(draft, 1), 2));
    expect(await left(titled(named))).toEqual([step(1, "alt text and text"), step(2, "alt text and text")]);
    expect(await left(told(titled(named)))).toEqual([step(1, "alt text"), step(2, "alt text")]);
    expect(await left(seen(told(titled(named))))).toEqual([]);
  });

  test("the names of the photographs stay, whatever they are made of", async () => {
    const shots = { "_a_ <b>.jpg": {}, "`x``y.jpg": { at: "2026:03:01 14:02:59" } };
    const { content, module } = await begun(await folderOf(shots));
    const text = readFileSync(join(module, "module.md"), "utf8");
    expect([...text.matchAll(/^Photograph: .*$/gm)].map(([line]) => line)).toEqual([
      "Photograph: `_a_ <b>.jpg`",
      "Photograph: ``` `x``y.jpg ```, taken 2026-03-01 14:02",
    ]);
    const { out } = await call("check", "--json", "--content", content);
    expect(out).not.toContain("raw-html");
  });
});

describe("photographs without times", () => {
  test("are taken by name, as people count, and which have none is said", async () => {
    const folder = await folderOf({
      "IMG_10.jpg": { at: "2026:01:01 10:00:00" },
      "IMG_9.jpg": {},
      "IMG_2.jpg": { at: "0000:00:00 00:00:00" },
      "notes.txt": Buffer.from("no picture"),
    });
    const result = await begun(folder);
    expect(names(result)).toEqual(["IMG_2.jpg", "IMG_9.jpg", "IMG_10.jpg"]);
    expect(result).toMatchObject({ order: "name", leftOut: ["notes.txt"] });
    const { out } = await call(
      "new",
      "module",
      "strip",
      "--photos",
      folder,
      "--content",
      writeFolder(soundFiles),
    );
    expect(out).toContain(
      "by the names of the files, because no time of taking (EXIF) is in IMG_2.jpg, IMG_9.jpg:",
    );
    expect(out).toContain("no pictures: notes.txt");
  });

  test("a single picture is said once", async () => {
    const folder = await folderOf({ "IMG_3.jpg": {} });
    const content = writeFolder(soundFiles);
    const { out } = await call("new", "module", "strip", "--photos", folder, "--content", content);
    expect(out.match(/IMG_3\.jpg/g)).toEqual(["IMG_3.jpg"]);
    expect(out).toContain("\nStep 1 is IMG_3.jpg\n");
  });

  test("a single picture, and where there is no programme yet", async () => {
    const content = join(temporaryFolder(), "content");
    await begun(
      await folderOf({
        "one.png": await sharp(await shoot({}))
          .png()
          .toBuffer(),
      }),
      content,
    );
    const { code, out } = await call("check", "--json", "--content", content);
    expect({ code, errors: JSON.parse(out).errors }).toEqual({ code: 0, errors: 0 });
  });
});

describe("the time of a photograph", () => {
  const exifOf = async (shot: Shot) => takenIn((await sharp(await shoot(shot)).metadata()).exif);
  const noon = Date.UTC(2026, 10, 28, 12);

  test.each<[Shot, ReturnType<typeof takenIn>]>([
    [{ at: "2026:11:28 12:00:00" }, { clock: noon, ahead: undefined }],
    [
      { at: "2026:11:28 12:00:00", fraction: "07", offset: "-03:30" },
      { clock: noon + 70, ahead: -210 },
    ],
    [
      { at: "2026:11:28 12:00:00", fraction: "  ", offset: "   :  " },
      { clock: noon, ahead: undefined },
    ],
    [{ at: "0000:00:00 00:00:00" }, undefined],
    [{ at: "    :  :     :  :  " }, undefined],
    [{}, undefined],
  ])("%o", async (shot, taken) => {
    expect(await exifOf(shot)).toEqual(taken);
  });

  test("a block that is cut off, and one that is none, hold no time", async () => {
    const { exif } = await sharp(await shoot({ at: "2026:11:28 12:00:00" })).metadata();
    for (let length = 0; length < exif!.length; length += 7)
      expect(() => takenIn(exif!.subarray(0, length))).not.toThrow();
    expect(takenIn(Buffer.from("nothing of the kind"))).toBeUndefined();
    expect(takenIn(undefined)).toBeUndefined();
  });

  test("moments are compared where all say how far ahead they are, else what the clocks showed", () => {
    const at = (name: string, hour: number, ahead?: number) => ({
      name,
      taken: { clock: hour * 3_600_000, ahead },
    });
    const order = (...pictures: ReturnType<typeof at>[]) =>
      inOrder(pictures)
        .pictures.map(({ name }) => name)
        .join("");
    expect(order(at("a", 12, 120), at("b", 11, 0), at("c", 11.5, 0))).toBe("abc");
    expect(order(at("a", 12, 120), at("b", 11, 0), at("c", 11.5))).toBe("bca");
    expect(order(at("p10", 1), at("p9", 1))).toBe("p9p10");
  });
});

describe("what can't be used is refused, and nothing is written", () => {
  const refused = async (folder: string, ...more: string[]) => {
    const content = writeFolder(soundFiles);
    const result = await call("new", "module", "strip", "--photos", folder, "--content", content, ...more);
    expect(existsSync(join(content, "modules/strip"))).toBe(false);
    return result;
  };

  test("a folder that is not there, one that is a file, one without pictures", async () => {
    const folder = await folderOf({ "clip.mov": Buffer.from("x"), ".hidden.jpg": Buffer.from("x") });
    expect(await refused(join(folder, "gone"))).toMatchObject({
      code: 1,
      err: expect.stringContaining("no such folder"),
    });
    expect(await refused(join(folder, "clip.mov"))).toMatchObject({
      code: 1,
      err: `${join(folder, "clip.mov")}: this is a file, not a folder. --photos takes the folder in which the photographs are.\n`,
    });
    expect(await refused(folder)).toMatchObject({
      code: 1,
      err: expect.stringContaining("no picture in it; expected .jpg"),
    });
  });

  test("HEIC, by its name, with how to convert it", async () => {
    const { code, err } = await refused(await folderOf({ "1.jpg": {}, "IMG_2.HEIC": Buffer.from("x") }));
    expect({ code, err }).toEqual({
      code: 1,
      err: expect.stringContaining("heif-convert IMG_2.HEIC IMG_2.jpg"),
    });
  });

  test("broken pictures, all of them named", async () => {
    const whole = await shoot({ width: 400, height: 400 });
    const { code, err } = await refused(
      await folderOf({
        "1.jpg": {},
        "cut.jpg": whole.subarray(0, whole.length - 300),
        "words.jpg": Buffer.from("words"),
      }),
    );
    expect(code).toBe(1);
    expect(err).toMatch(/can't be read as pictures: cut\.jpg \(.+\), words\.jpg \(.+\)\. Copy them/);
  });

  test("more than the most", async () => {
    const small = await shoot({});
    const shots = Object.fromEntries(
      Array.from({ length: mostPictures + 1 }, (_, at) => [`${at}.jpg`, small]),
    );
    expect(await refused(await folderOf(shots))).toMatchObject({
      code: 1,
      err: expect.stringMatching(/^.*: 201 pictures; .* 200 at most/),
    });
  });

  test("a module that exists, and what is no module", async () => {
    const folder = await folderOf({ "1.jpg": {} });
    const content = writeFolder(soundFiles);
    const before = readdirSync(join(content, "modules/box"));
    const taken = await call("new", "module", "box", "--photos", folder, "--content", content);
    expect(taken).toMatchObject({
      code: 2,
      err: `${join(content, "modules/box/module.md")} exists already; nothing is written. Take another id, or remove the folder ${join(content, "modules/box")} where nothing in it is needed.\n`,
    });
    expect(readdirSync(join(content, "modules/box"))).toEqual(before);
    const tool = await call("new", "tool", "awl", "--photos", folder, "--content", content);
    expect(tool).toMatchObject({ code: 2, err: expect.stringContaining("--photos goes with module") });
    expect(existsSync(join(content, "tools/awl.md"))).toBe(false);
    expect(await refused(folder, "--from", "box")).toMatchObject({
      code: 2,
      err: expect.stringMatching(/^--photos and --from can't be had together: .* Leave one of them out\.\n$/),
    });
    expect(await refused("")).toMatchObject({ code: 2, err: expect.stringContaining("Name the folder") });
  });

  test("a module without an id, and the help, say how it is called", async () => {
    const way = "benchwright new module ID --photos DIR\n";
    const content = writeFolder(soundFiles);
    const { code, err } = await call("new", "module", "--photos", "x", "--content", content);
    expect({ code, err }).toEqual({ code: 2, err: expect.stringContaining(way) });
    expect((await call("help", "new")).out).toContain("\n  module ID --photos DIR\n");
  });
});
