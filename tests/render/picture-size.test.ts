/** Sizes of pictures whose bytes are written here after the standards. */
import { expect, test } from "vitest";
import { pictureSizes, sizeOfBytes } from "../../src/render/picture-size.ts";
import { writeFolder } from "../support/content-folder.ts";

const hex = (text: string) => Buffer.from(text.replace(/\s/g, ""), "hex");

// PNG, ISO/IEC 15948, 5.2 signature, 11.2.2 IHDR: 640 × 480.
const png = hex("89504e470d0a1a0a 0000000d 49484452 00000280 000001e0 08 02 00 00 00 00000000");
// JPEG, ITU-T T.81, annex B: SOI, APP0 of 16 bytes, DHT of 6 bytes (which is no frame), SOF0 with 300 lines of 400.
const jpeg = hex(
  `ffd8 ffe0 0010 ${"00".repeat(14)} ffc4 0006 00000000 ffc0 0011 08 012c 0190 03 ${"00".repeat(9)}`,
);
const svg = (attributes: string) =>
  Buffer.from(`<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg" ${attributes}></svg>`);

test.each([
  ["PNG", png, { width: 640, height: 480 }],
  ["JPEG", jpeg, { width: 400, height: 300 }],
  ["SVG with a size", svg('width="120" height="80.4px" viewBox="0 0 1 1"'), { width: 120, height: 80 }],
  ["SVG with a view box only", svg('viewBox="0 0 320,180"'), { width: 320, height: 180 }],
  [
    "SVG with a size in other units",
    svg('width="10cm" height="5cm" viewBox="0 0 200 100"'),
    { width: 200, height: 100 },
  ],
  ["SVG without any", svg('fill="none"'), undefined],
  ["PNG cut off", png.subarray(0, 20), undefined],
  ["JPEG cut off", jpeg.subarray(0, 24), undefined],
  ["something else", Buffer.from("GIF89a"), undefined],
  ["nothing", Buffer.alloc(0), undefined],
] as const)("%s", (_, bytes, size) => {
  expect(sizeOfBytes(bytes)).toEqual(size);
});

test("a file that is missing has no size", () => {
  const sizeOf = pictureSizes(writeFolder(new Map([["a.png", png]])));
  expect([sizeOf("a.png"), sizeOf("b.png")]).toEqual([{ width: 640, height: 480 }, undefined]);
});
