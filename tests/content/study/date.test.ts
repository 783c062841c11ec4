import { describe, expect, test } from "vitest";
import { findDateFault } from "../../../src/content/study/date.ts";

test.each(["2026-04-02", "2024-02-29", "1000-01-01"])("%s is a date", (text) => {
  expect(findDateFault(text)).toBeUndefined();
});

// 2023 is no leap year, 1900 neither (Gregorian calendar: hundreds are only where 400 divides them).
test.each([
  ["2026-02-30", "February 2026 has 28 days: the month is the number in the middle."],
  ["2023-02-29", "February 2023 has 28 days: the month is the number in the middle."],
  ["1900-02-29", "February 1900 has 28 days: the month is the number in the middle."],
  ["2026-04-31", "April 2026 has 30 days: the month is the number in the middle."],
  ["2026-13-02", "Type year, month and day, for example: date: 2026-04-02"],
  ["0999-01-01", "Type year, month and day, for example: date: 2026-04-02"],
])("%s is no day of the calendar", (text, hint) => {
  expect(findDateFault(text)).toEqual({
    reason: `“date” is “${text}”, and the calendar has no such day.`,
    hint,
  });
});

test.each([
  ["02.04.2026", "Type: date: 2026-04-02"],
  ["2.4.2026", "Type: date: 2026-04-02"],
  ["4/2/2026", "Type: date: 2026-04-02 or date: 2026-02-04"],
  ["4/4/2026", "Type: date: 2026-04-04"],
  ["4/25/2026", "Type: date: 2026-04-25"],
  ["25/4/2026", "Type: date: 2026-04-25"],
  ["2026-4-2", "Type: date: 2026-04-02"],
  ["2026/04/02", "Type: date: 2026-04-02"],
  ["2 April 2026", "Type: date: 2026-04-02"],
  ["2nd april 2026", "Type: date: 2026-04-02"],
  ["Apr 2, 2026", "Type: date: 2026-04-02"],
  ["31.02.2026", "Type, for example: date: 2026-04-02"],
  ["April 2026", "Type, for example: date: 2026-04-02"],
  ["2 Aprilis 2026", "Type, for example: date: 2026-04-02"],
  ["02.04.26", "Type, for example: date: 2026-04-02"],
  ["2026", "Type, for example: date: 2026-04-02"],
  ["yesterday", "Type, for example: date: 2026-04-02"],
])("%s is turned round where it says enough", (text, hint) => {
  expect(findDateFault(text)?.hint).toBe(hint);
});

describe("a date that is more than a year ahead", () => {
  const now = Date.UTC(2030, 5, 15, 12);

  test.each(["2030-06-15", "2031-06-15", "2031-06-16", "2026-01-01"])(
    "%s is none, in the middle of June 2030",
    (text) => {
      expect(findDateFault(text, now)).toBeUndefined();
    },
  );

  test.each(["2031-06-17", "2032-01-01", "9999-12-31"])("%s is one", (text) => {
    expect(findDateFault(text, now)?.reason).toBe(`“date” is “${text}”, which is more than a year ahead.`);
  });

  test("by the clock of the machine, unless that was never set", () => {
    expect(findDateFault("9999-12-31")).toBeDefined();
    expect(findDateFault("2026-11-01", 0)).toBeUndefined();
    expect(findDateFault("2028-01-01", 0)).toBeDefined();
  });
});
