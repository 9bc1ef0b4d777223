import { expect, test } from "vitest";
import { trueSize } from "../../../src/engine/workshop/true-size.ts";

/** Diameters: BS 93 for 4 BA (3.6 mm); ISO 261 for M6; ASME B1.1 for 1/4-20 UNC (1/4 in). 1 in is 25.4 mm by definition. */
test.each<[thread: string | undefined, length: string | undefined, diameter?: number, lengthMm?: number]>([
  ["4 BA", "1/2 in", 3.6, 12.7],
  ["M6", "20 mm", 6, 20],
  ["1/4-20 UNC", "3/4 in", 6.35, 19.05],
  ["M6", undefined, 6, undefined],
  [undefined, "1 cm", undefined, 10],
  [undefined, undefined, undefined, undefined],
])("%s, %s", (thread, length, diameter, lengthMm) => {
  const size = trueSize(thread, length);
  if (diameter === undefined) expect(size.thread).toBeUndefined();
  else expect(size.thread!.diameterMm).toBeCloseTo(diameter, 9);
  if (lengthMm === undefined) expect(size.lengthMm).toBeUndefined();
  else expect(size.lengthMm).toBeCloseTo(lengthMm, 9);
});

test("the root is that of the screw by its standard: M6 has d3 = 4.773 mm (ISO 724 with ISO 68-1)", () => {
  expect(trueSize("M6", undefined).thread!.rootMm).toBeCloseTo(4.773, 3);
});

test.each(["maker's own", "1/4 in", ""])("a thread written as %j is not known", (thread) => {
  expect(trueSize(thread, "5 mm").thread).toBeUndefined();
});

test.each(["5", "long", "5 g", "-5 mm", "0 mm"])("%j is no length", (length) => {
  expect(trueSize("M6", length).lengthMm).toBeUndefined();
});
