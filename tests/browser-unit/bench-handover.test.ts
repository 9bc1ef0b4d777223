import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { Reader, sumOf, writeNumber } from "../../src/browser/bench/handover/bytes.ts";
import { isRefused, packPlace, type Sheet, unpackPlace } from "../../src/browser/bench/handover/code.ts";
import { linkOf, packedIn } from "../../src/browser/bench/handover/link.ts";
import { beginning, type Place } from "../../src/browser/bench/place.ts";
import { fromText, toText } from "../../src/browser/page/base64url.ts";

const sheetOf = (steps: readonly string[], module = "spring-motor", revision = 3): Sheet => ({
  module,
  revision,
  steps,
  cards: ["s_before", ...steps, "s_after"],
});
const steps = ["let-down", "board-off", "wash", "dry", "oil", "board-on", "test", "constructor", "last"];
const sheet = sheetOf(steps);
const taken = Date.UTC(2027, 2, 4, 14, 5, 0);
const place: Place = {
  card: "oil",
  done: new Set(["let-down", "board-off", "wash", "last"]),
  checked: new Set(["wash", "constructor"]),
  timers: [{ step: "wash", ends: taken + 7_200_000, isTold: false }],
};

/** Any place on a sheet of up to 500 steps, with its sheet. */
const places = fc.integer({ min: 1, max: 500 }).chain((count) => {
  const own = Array.from({ length: count }, (_, i) => `step-${i}`);
  const its = sheetOf(own);
  const some = fc.subarray(own).map((ids) => new Set(ids));
  const seconds = fc.integer({ min: 0, max: 4_000_000_000 });
  const timers = fc
    .uniqueArray(fc.record({ step: fc.constantFrom(...own), seconds }), {
      selector: ({ step }) => step,
      maxLength: 6,
    })
    .map((list) =>
      list
        .map(({ step, seconds: end }) => ({ step, ends: end * 1000, isTold: false }))
        .sort((one, other) => one.ends - other.ends),
    );
  return fc.record({
    its: fc.constant(its),
    place: fc.record({ card: fc.constantFrom(...its.cards), done: some, checked: some, timers }),
    now: seconds.map((each) => each * 1000),
  });
});

describe("a place handed over", () => {
  test("comes back as it was, with the time at which it was taken", () => {
    expect(unpackPlace(packPlace(place, sheet, taken), sheet)).toEqual({ place, takenAt: taken });
  });

  test("whatever it is", () => {
    fc.assert(
      fc.property(places, ({ its, place: any, now }) => {
        const answer = unpackPlace(packPlace(any, its, now), its);
        if (isRefused(answer)) throw new Error(answer.refused);
        expect(answer.takenAt).toBe(now);
        expect(answer.place.card).toBe(any.card);
        expect([...answer.place.done].sort()).toEqual([...any.done].sort());
        expect([...answer.place.checked].sort()).toEqual([...any.checked].sort());
        const bySteps = (timers: Place["timers"]) => new Map(timers.map((each) => [each.step, each]));
        expect(bySteps(answer.place.timers)).toEqual(bySteps(any.timers));
      }),
    );
  });

  test("names format, module and revision, and is short: 32 steps all ticked with three waits", () => {
    const many = Array.from({ length: 32 }, (_, i) => `step-${i}`);
    const full: Place = {
      ...beginning("step-31"),
      done: new Set(many),
      checked: new Set(many),
      timers: ["step-1", "step-2", "step-3"].map((step) => ({ step, ends: taken, isTold: true })),
    };
    const packed = packPlace(full, sheetOf(many), taken);
    expect(packed).toMatch(/^1\.spring-motor\.3\.[\w-]+$/);
    expect(packed.length).toBeLessThan(90);
  });

  test("stands behind the # of an address", () => {
    const link = linkOf("https://club.example/m/bench/?a=b#oil", place, sheet, taken);
    expect(link.startsWith("https://club.example/m/bench/?a=b#s_place=1.spring-motor.3.")).toBe(true);
    expect(unpackPlace(packedIn(new URL(link).hash.slice(1))!, sheet)).toEqual({ place, takenAt: taken });
    expect(packedIn("oil")).toBeUndefined();
  });
});

describe("a place that is not taken", () => {
  const packed = packPlace(place, sheet, taken);

  test("of another format, module or revision, or with other steps, says which", () => {
    expect(unpackPlace(packed.replace(/^1/, "2"), sheet)).toEqual({ refused: "version", found: "2" });
    expect(unpackPlace(packed, sheetOf(steps, "drill"))).toEqual({
      refused: "module",
      found: "spring-motor",
    });
    expect(unpackPlace(packed, sheetOf(steps, "spring-motor", 4))).toEqual({
      refused: "revision",
      found: "3",
    });
    expect(unpackPlace(packed, sheetOf([...steps].reverse()))).toEqual({ refused: "steps", found: "" });
    expect(unpackPlace(packed, sheetOf(steps.slice(1)))).toEqual({ refused: "steps", found: "" });
  });

  test("cut short anywhere", () => {
    for (let length = 0; length < packed.length; length++)
      expect(unpackPlace(packed.slice(0, length), sheet)).toMatchObject({ refused: "damaged" });
  });

  test("with any one sign changed", () => {
    const at = fc.integer({ min: packed.lastIndexOf(".") + 1, max: packed.length - 1 });
    fc.assert(
      fc.property(at, fc.constantFrom(..."ABCXYZabcxyz0189-_ .%"), (where, sign) => {
        fc.pre(packed[where] !== sign);
        expect(unpackPlace(packed.slice(0, where) + sign + packed.slice(where + 1), sheet)).toMatchObject({
          refused: "damaged",
        });
      }),
    );
  });

  test("nothing that is written makes it fail", () => {
    const base64 = fc.uint8Array({ maxLength: 80 }).map((bytes) => toText([...bytes]));
    const texts = fc.oneof(
      fc.string(),
      fc.string({ unit: "binary" }),
      base64.map((body) => `1.spring-motor.3.${body}`),
    );
    fc.assert(
      fc.property(texts, (text) => {
        expect(isRefused(unpackPlace(text, sheet))).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  test("nor do bytes under a right sum", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 60 }), (body) => {
        const head = "1.spring-motor.3.";
        const sum = sumOf([...new TextEncoder().encode(head), ...body]);
        const bytes = [...body, sum >>> 24, (sum >>> 16) & 255, (sum >>> 8) & 255, sum & 255];
        const answer = unpackPlace(head + toText(bytes), sheet);
        if (!isRefused(answer)) expect(sheet.cards).toContain(answer.place.card);
        else expect(["damaged", "steps"]).toContain(answer.refused);
      }),
      { numRuns: 1000 },
    );
  });
});

describe("bytes", () => {
  // Source: DWARF 5, section 7.6, examples of unsigned LEB128.
  test.each([
    [2, [2]],
    [127, [127]],
    [128, [0x80, 1]],
    [129, [0x81, 1]],
    [12857, [0xb9, 0x64]],
  ])("%d is written as the standard writes it", (value, bytes) => {
    const written: number[] = [];
    writeNumber(written, value);
    expect(written).toEqual(bytes);
    expect(new Reader(bytes).number()).toBe(value);
  });

  // Source: RFC 4648, section 10, in the alphabet of section 5 and without padding.
  test.each([
    ["", ""],
    ["f", "Zg"],
    ["fo", "Zm8"],
    ["foobar", "Zm9vYmFy"],
  ])("%s as base64url", (text, coded) => {
    const bytes = [...new TextEncoder().encode(text)];
    expect(toText(bytes)).toBe(coded);
    expect(fromText(coded)).toEqual(bytes);
  });

  // Source: draft-eastlake-fnv, appendix "A Few Test Vectors", 32-bit FNV-1a.
  test.each([
    ["", 0x811c9dc5],
    ["a", 0xe40c292c],
    ["foobar", 0xbf9cf968],
  ])("the sum of %s", (text, sum) => {
    expect(sumOf([...new TextEncoder().encode(text)])).toBe(sum);
  });

  test("a number that does not end, or is too large, is none", () => {
    for (const bytes of [[0x80], [], Array(9).fill(0xff), [...Array(8).fill(0xff), 1]]) {
      const reader = new Reader(bytes);
      reader.number();
      expect(reader.ok).toBe(false);
    }
  });
});
