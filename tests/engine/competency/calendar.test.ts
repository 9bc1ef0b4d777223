/**
 * Dates at the borders of time zones. When the clocks change: Europe/London and Europe/Berlin by directive 2000/84/EC (last Sundays of
 * March and October, 01:00 UTC); Pacific/Kiritimati is UTC+14 and Pacific/Pago_Pago UTC−11 all year; Beirut began summer time
 * at midnight of 2022-03-27, and Apia left out 2011-12-30: IANA time zone database, tzdata 2024a.
 */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  addDays,
  addMonths,
  dayOf,
  daysBetween,
  endOfDay,
  endOfMonths,
  isDate,
  lastDay,
} from "../../../src/engine/competency/calendar.ts";

describe("the end of a day is the first instant of the next", () => {
  test.each([
    ["2026-01-15", "Europe/London", "2026-01-16T00:00:00Z"],
    ["2026-07-15", "Europe/London", "2026-07-15T23:00:00Z"],
    ["2026-03-29", "Europe/Berlin", "2026-03-29T22:00:00Z"],
    ["2026-10-25", "Europe/Berlin", "2026-10-25T23:00:00Z"],
    ["2026-11-27", "Pacific/Kiritimati", "2026-11-27T10:00:00Z"],
    ["2026-11-27", "Pacific/Pago_Pago", "2026-11-28T11:00:00Z"],
    // The 27th has no midnight: it begins at 01:00 summer time, UTC+3.
    ["2022-03-26", "Asia/Beirut", "2022-03-26T22:00:00Z"],
    // After the 29th comes the 31st.
    ["2011-12-29", "Pacific/Apia", "2011-12-30T10:00:00Z"],
  ])("%s in %s ends at %s", (date, zone, end) => {
    expect(new Date(endOfDay(date, zone))).toEqual(new Date(end));
  });
});

test("every instant lies in its own day", () => {
  const zones = [
    "UTC",
    "Europe/London",
    "America/St_Johns",
    "Asia/Kathmandu",
    "Pacific/Chatham",
    "Asia/Beirut",
  ];
  const instants = fc.integer({ min: Date.UTC(2015, 0), max: Date.UTC(2035, 0) });
  fc.assert(
    fc.property(instants, fc.constantFrom(...zones), (instant, zone) => {
      const day = dayOf(instant, zone);
      expect(instant).toBeLessThan(endOfDay(day, zone));
      expect(instant).toBeGreaterThanOrEqual(endOfDay(addDays(day, -1), zone));
    }),
  );
});

test.each([
  ["2026-01-31", 1, "2026-02-28"],
  ["2028-01-31", 1, "2028-02-29"],
  ["2028-02-29", 12, "2029-02-28"],
  ["2026-11-27", 24, "2028-11-27"],
  ["2026-12-15", 1, "2027-01-15"],
])("%s and %i months is %s", (date, months, later) => {
  expect(addMonths(date, months)).toBe(later);
});

test("a sign-off of two years made late on a summer evening ends with the same day, in winter time", () => {
  // 23:30 on 31 October 2026 in London is after the clocks went back, 25 October.
  expect(endOfMonths(Date.parse("2026-10-31T23:30:00Z"), 5, "Europe/London")).toBe(
    "2027-03-31T23:00:00.000Z",
  );
  expect(endOfMonths(Date.parse("2026-07-01T23:30:00Z"), 1, "Europe/London")).toBe(
    "2026-08-02T23:00:00.000Z",
  );
});

test.each([
  ["2026-08-02T23:00:00Z", "2026-08-02"],
  ["2026-08-02T22:59:59Z", "2026-08-02"],
  ["2026-08-02T22:59:58Z", "2026-08-01"],
  ["2026-08-02T09:30:00Z", "2026-08-01"],
  ["9999-12-31T23:59:59Z", "9999-12-28"],
])("valid until %s holds in London to the end of %s", (until, day) => {
  expect(lastDay(Date.parse(until), "Europe/London")).toBe(day);
});

test("days are counted over changes of the clock", () => {
  expect(daysBetween("2026-03-01", "2026-04-01")).toBe(31);
  expect(daysBetween("2026-04-01", "2026-03-01")).toBe(-31);
});

test.each(["2026-02-30", "2026-13-01", "2026-1-1", "27.11.2026", "", "2026-11-27T00:00:00Z"])(
  "%j is no date",
  (text) => {
    expect(isDate(text)).toBe(false);
  },
);

test("a zone that nobody knows is refused", () => {
  expect(() => endOfDay("2026-01-01", "Europe/Atlantis")).toThrow(RangeError);
});
