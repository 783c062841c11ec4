import { expect, test } from "vitest";
import { formatCsv, formatRow } from "../../../src/analysis/survey/csv.ts";
import { survey } from "../surveyed.ts";

// RFC 4180: CR LF between records; fields with quotes or commas in quotes, a quote doubled.
test("CSV: numbers to four decimals, nothing that a spreadsheet would compute", () => {
  expect(formatCsv(survey)).toBe(
    [
      "file,clarity,clearEdgeShare,weakestEdge,weakestContrast,focus,focusClarity,lastsTo,changeFirst,bestReplace,bestWith,bestName,bestClarity,problem",
      "a.svg,12.3457,0.25,dark blue / dark red,6.3,found,98.5,320,#701c2b,#701c2b,#e6b436,yellow,98.7654,",
      "./=b.svg,,,,,none,,,,,,,,",
      '"c ""d"", e.svg",,,,,,,,,,,,,"It is empty, it is."',
    ].join("\r\n"),
  );
});

test("CSV: a focus that lasts to no step is told from none", () => {
  const [flag] = survey.flags;
  if (flag === undefined) throw new Error("the survey has flags");
  const lines = formatCsv({
    flags: [{ ...flag, focus: { source: "named", clarity: null, lastsTo: null } }],
    failed: [],
  }).split("\r\n");
  expect(lines[1]).toContain(",6.3,named,,under 10,");
});

test("CSV: no rounding that gives a whole number, at which a grade or the whole begins", () => {
  expect(formatRow([44.99996, 45.00004, 99.99998, 45, 2 / 3])).toBe("44.99996,45.00004,99.99998,45,0.6667");
});
