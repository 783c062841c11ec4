import { expect, test } from "vitest";
import { formatCsv, formatRow } from "../../src/study/csv.ts";
import { survey } from "./surveyed.ts";

// RFC 4180: CR LF between records; fields with quotes or commas in quotes, a quote doubled.
test("CSV: numbers to four decimals, nothing that a spreadsheet would compute", () => {
  expect(formatCsv(survey)).toBe(
    [
      "file,clarity,clearEdgeShare,weakestEdge,weakestContrast,readsTo,changeFirst,bestReplace,bestWith,bestName,bestClarity,problem",
      "a.svg,12.3457,0.25,dark blue / dark red,6.3,320,#701c2b,#701c2b,#e6b436,yellow,98.7654,",
      "./=b.svg,,,,,,,,,,,",
      '"c ""d"", e.svg",,,,,,,,,,,"It is empty, it is."',
    ].join("\r\n"),
  );
});

test("CSV: no rounding that gives a whole number, at which a grade or the whole begins", () => {
  expect(formatRow([44.99996, 45.00004, 99.99998, 45, 2 / 3])).toBe("44.99996,45.00004,99.99998,45,0.6667");
});
