/** Photographs lose all but the picture, and stand upright in colours that every screen knows. */
import sharp from "sharp";
import { expect, test } from "vitest";
import { filesOf } from "../../src/model/picture-files.ts";
import { makePicture } from "../../src/pictures/make.ts";
import { PictureFault, rasterSize } from "../../src/pictures/raster.ts";
import { photograph, tracesIn, withText } from "./photograph.ts";

const source = async (kind: "jpeg" | "png" | "webp"): Promise<Buffer> => {
  const bytes = await photograph(kind, { orientation: 6 });
  return kind === "png" ? withText(bytes, "secret words") : bytes;
};

test.each(["jpeg", "png", "webp"] as const)(
  "a %s carries its place and time, and what is made of it does not",
  async (kind) => {
    const bytes = await source(kind);
    expect(tracesIn(bytes)).toContain("Phone of Invention");
    expect(tracesIn(bytes).length).toBeGreaterThan(3);
    const made = await makePicture(`figures/photo.${kind}`, bytes);
    expect(made.map(({ file }) => file)).toEqual([
      `figures/photo.${kind}`,
      ...[480, 800].map((width) => `figures/photo.${kind}.${width}.webp`),
    ]);
    for (const each of made) {
      expect(tracesIn(each.bytes), each.file).toEqual([]);
      const { exif, xmp, iptc, comments, orientation } = await sharp(each.bytes).metadata();
      expect([exif, xmp, iptc, comments, orientation], each.file).toEqual(Array(5).fill(undefined));
    }
  },
);

test("a photograph taken sideways is turned upright: Exif 2.32, orientation 6 has its first row at the right", async () => {
  const bytes = await photograph("jpeg", { width: 1200, height: 800, orientation: 6 });
  expect(await rasterSize(bytes)).toEqual({ width: 800, height: 1200 });
  const [main, ...sizes] = await makePicture("photo.jpg", bytes);
  for (const { bytes: made } of [main!, ...sizes]) {
    const { data, info } = await sharp(made).raw().toBuffer({ resolveWithObject: true });
    expect(info.height / info.width).toBeCloseTo(1.5, 2);
    // The left half, red, is the upper one now.
    expect([...data.subarray(0, 3)].map((value) => Math.round(value / 255))).toEqual([1, 0, 0]);
    expect([...data.subarray(-3)].map((value) => Math.round(value / 255))).toEqual([0, 0, 1]);
  }
});

test("colours of another space are brought into sRGB, not only robbed of their profile", async () => {
  const plain = {
    create: { width: 60, height: 40, channels: 3 as const, background: { r: 128, g: 64, b: 64 } },
  };
  const inP3 = await sharp(plain).withIccProfile("p3").png().toBuffer();
  const before = await sharp(inP3, { ignoreIcc: true }).raw().toBuffer();
  const [made] = await makePicture("p3.png", inP3);
  const { hasProfile } = await sharp(made!.bytes).metadata();
  const after = await sharp(made!.bytes).raw().toBuffer();
  // What was written as P3 by the library is the same colour again, within rounding; its numbers in P3 are others.
  expect(hasProfile).toBe(false);
  expect([...before.subarray(0, 3)]).not.toEqual([128, 64, 64]);
  for (const [at, value] of [128, 64, 64].entries())
    expect(Math.abs(after[at]! - value)).toBeLessThanOrEqual(2);
});

test("widths go down in steps, are never enlarged, and keep the proportions", () => {
  expect(filesOf("a.jpg", { width: 4000, height: 3000 })).toEqual({
    main: { file: "a.jpg", width: 1600, height: 1200 },
    sizes: [
      { file: "a.jpg.480.webp", width: 480, height: 360 },
      { file: "a.jpg.960.webp", width: 960, height: 720 },
      { file: "a.jpg.1600.webp", width: 1600, height: 1200 },
    ],
  });
  expect(filesOf("a.png", { width: 960, height: 10 }).sizes.map(({ width }) => width)).toEqual([480, 960]);
  expect(filesOf("a.png", { width: 300, height: 200 })).toEqual({
    main: { file: "a.png", width: 300, height: 200 },
    sizes: [],
  });
  expect(filesOf("a.svg", { width: 3000, height: 2000 }).sizes).toEqual([]);
});

test("the files that are made have the sizes that pages were told", async () => {
  const bytes = await photograph("jpeg", { width: 1778, height: 998, orientation: 8 });
  const { main, sizes } = filesOf("x.jpeg", await rasterSize(bytes));
  const made = await makePicture("x.jpeg", bytes);
  const measured = await Promise.all(
    made.map(async ({ file, bytes: each }) => {
      const { width, height } = await sharp(each).metadata();
      return { file, width, height };
    }),
  );
  expect(measured).toEqual([main, ...sizes]);
});

test("what is cut off, too large or no picture at all is refused in words", async () => {
  const whole = await photograph("jpeg");
  const refused = async (work: Promise<unknown>): Promise<[string, string]> => {
    const fault = await work.then(
      () => undefined,
      (cause: unknown) => cause,
    );
    expect(fault).toBeInstanceOf(PictureFault);
    return [(fault as PictureFault).code, (fault as PictureFault).message];
  };
  expect(await refused(makePicture("a.jpg", whole.subarray(0, whole.length - 400)))).toEqual([
    "picture-broken",
    expect.stringContaining("premature end"),
  ]);
  expect(await refused(rasterSize(Buffer.from("hello")))).toEqual(["picture-broken", expect.anything()]);
  expect(await refused(rasterSize(Buffer.alloc(0)))).toEqual(["picture-broken", expect.anything()]);
  expect(
    await refused(rasterSize(Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>'))),
  ).toEqual(["picture-broken", expect.stringContaining('"svg"')]);
  // A header that claims 40,000 × 40,000 pixels: nothing of that size is ever made.
  const huge = await sharp({ create: { width: 10, height: 10, channels: 3, background: "#fff" } })
    .png()
    .toBuffer();
  huge.writeUInt32BE(40_000, 16);
  huge.writeUInt32BE(40_000, 20);
  expect(await refused(rasterSize(huge))).toEqual([
    "picture-pixels",
    "the picture has 40000 × 40000 pixels; the limit is 100000000 in all",
  ]);
});

test("a picture that moves goes on moving, without what was written into it", async () => {
  const frames = await sharp(Buffer.concat([Buffer.alloc(20 * 10 * 3, 0), Buffer.alloc(20 * 10 * 3, 255)]), {
    raw: { width: 20, height: 20, channels: 3 },
  })
    .gif({ loop: 0 })
    .toBuffer();
  const moving = await sharp([frames, frames], { join: { animated: true } })
    .gif({ delay: [100, 100] })
    .toBuffer();
  // GIF89a, 24: a comment extension before the trailer.
  const words = Buffer.from("secret words");
  const told = Buffer.concat([
    moving.subarray(0, -1),
    Buffer.from([0x21, 0xfe, words.length]),
    words,
    Buffer.from([0, 0x3b]),
  ]);
  expect(tracesIn(told)).toEqual(["secret words"]);
  const [made, ...others] = await makePicture("a.gif", told);
  expect(others).toEqual([]);
  expect(tracesIn(made!.bytes)).toEqual([]);
  expect((await sharp(made!.bytes).metadata()).pages).toBe((await sharp(moving).metadata()).pages);
});
