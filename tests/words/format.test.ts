import { expect, test } from "vitest";
import { createFormat } from "../../src/words/format.ts";

test("a contrast is never rounded across a grade", () => {
  const format = createFormat("en");
  const contrast = (value: number) => format.contrast(value);
  expect([12.4, 44.4, 45, 67.2, 100].map(contrast)).toEqual(["12%", "44%", "45%", "67%", "100%"]);
  // Soft, not a clear 45; weak, not a soft 30; clear, not a strong 60.
  expect([44.7, 29.96, 59.9999, 44.999].map(contrast)).toEqual(["44.7%", "29.96%", "59.99%", "44.99%"]);
});

test("shares are fractions, percentages are percent, and where there is nothing it is said", () => {
  const { share, percent } = createFormat("en");
  expect([share(0.4286), share(1), share(null)]).toEqual(["43%", "100%", "no edges"]);
  expect([percent(74.1), percent(0), percent(null)]).toEqual(["74%", "0%", "no edges"]);
});

test("the gallery's language writes numbers, dates and lists", () => {
  // Source: Unicode CLDR, de: comma, day before month, no-break space before the percent sign.
  const german = createFormat("de");
  expect(german.number(1.5, 2)).toBe("1,50");
  expect(german.date("2026-04-02")).toBe("2. April 2026");
  expect(german.share(0.5)).toBe("50\u00a0%");
  expect([german.percent(1.16, 1), german.percent(99.6)]).toEqual(["1,2\u00a0%", "99,6\u00a0%"]);
  expect(german.list(["a", "b", "c"])).toBe("a, b und c");
  expect(createFormat("en-GB").date("2026-04-02")).toBe("2 April 2026");
});

test("a date is the day that is written, in every time zone", () => {
  const before = process.env.TZ;
  for (const zone of ["Pacific/Kiritimati", "Pacific/Midway"]) {
    process.env.TZ = zone;
    expect(createFormat("en-GB").date("2026-01-01")).toBe("1 January 2026");
  }
  if (before === undefined) delete process.env.TZ;
  else process.env.TZ = before;
});

test("the direction follows the script of the language", () => {
  expect(["ar", "he", "fa", "ur", "az-Arab"].map((tag) => createFormat(tag).direction)).toEqual(
    Array(5).fill("rtl"),
  );
  expect(["en", "de-AT", "ja", "az", "ru"].map((tag) => createFormat(tag).direction)).toEqual(
    Array(5).fill("ltr"),
  );
});

test("no minus before nought", () => {
  expect(createFormat("en").number(-0.2, 0)).toBe("0");
});
