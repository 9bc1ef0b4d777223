import { describe, expect, test } from "vitest";
import { calendarFile, escaped, folded } from "../../../src/browser/record/calendar-file.ts";

const options = {
  programme: "Workshop, north",
  owner: "did:key:z6MkhaXgBZDvotDkL5257faiztiGiC2QtKLGpbnnEGta2doK",
  soonDays: 60,
  now: "2026-11-27T19:30:00.000Z",
};
const lapses = [{ module: "spring-motor", title: "Strip a spring motor; oil it", until: "2027-05-12" }];

describe("an iCalendar file (RFC 5545)", () => {
  test("has the properties that sections 3.4, 3.6 and 3.6.1 require, and a reminder (3.6.6)", () => {
    const lines = calendarFile({ ...options, lapses })
      .replaceAll("\r\n ", "")
      .split("\r\n");
    // 3.6: PRODID and VERSION are required, once each. 3.7.4: "2.0".
    expect(lines.filter((line) => line === "VERSION:2.0")).toHaveLength(1);
    expect(lines.filter((line) => line.startsWith("PRODID:"))).toHaveLength(1);
    // 3.6.1: UID and DTSTAMP are required; 3.8.7.2: DTSTAMP in UTC.
    expect(lines.filter((line) => line.startsWith("UID:"))).toHaveLength(1);
    expect(lines).toContain("DTSTAMP:20261127T193000Z");
    // 3.8.2.4 with 3.3.4: a date is eight figures, said to be one.
    expect(lines).toContain("DTSTART;VALUE=DATE:20270512");
    // 3.8.6.3 with 3.3.6: a duration before the start.
    expect(lines).toContain("TRIGGER:-P60D");
    expect(lines).toContain("SUMMARY:Sign-off lapses: Strip a spring motor\\; oil it");
    expect(lines[0]).toBe("BEGIN:VCALENDAR");
    expect(lines.slice(-2)).toEqual(["END:VCALENDAR", ""]);
    const begun = lines.filter((line) => line.startsWith("BEGIN:")).map((line) => line.slice(6));
    const ended = lines.filter((line) => line.startsWith("END:")).map((line) => line.slice(4));
    expect(ended.toSorted()).toEqual(begun.toSorted());
  });

  test("entries of two people, and of one that was renewed, have names of their own", () => {
    const uid = (text: string) => /^UID:(.*)\r$/m.exec(text)?.[1];
    const mine = uid(calendarFile({ ...options, lapses }));
    expect(mine).toBe(uid(calendarFile({ ...options, lapses, now: "2026-12-01T00:00:00.000Z" })));
    expect(mine).not.toBe(
      uid(calendarFile({ ...options, lapses, owner: options.owner.replace("2doK", "2doL") })),
    );
    expect(mine).not.toBe(
      uid(calendarFile({ ...options, lapses: [{ ...lapses[0]!, until: "2028-05-12" }] })),
    );
  });

  test("text is escaped as in section 3.3.11", () => {
    // The example of that section, whose lines are one value.
    expect(escaped("Project XYZ Final Review\nConference Room - 3B\nCome Prepared.")).toBe(
      "Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.",
    );
    expect(escaped("a, b; c\\d\r\ne")).toBe("a\\, b\\; c\\\\d\\ne");
  });

  test("no line has more than 75 octets, and characters stay whole (section 3.1)", () => {
    for (const sign of ["x", "ö", "軸", "🔧"]) {
      const text = `SUMMARY:${sign.repeat(100)}`;
      const lines = folded(text).split("\r\n");
      for (const line of lines) expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
      expect(lines.slice(1).every((line) => line.startsWith(" "))).toBe(true);
      expect(lines.map((line, at) => (at === 0 ? line : line.slice(1))).join("")).toBe(text);
    }
  });
});
