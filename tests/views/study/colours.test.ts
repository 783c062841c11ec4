import { expect, test } from "vitest";
import { presentColours } from "../../../src/views/study/colours.ts";
import { createFormat } from "../../../src/words/format.ts";
import { comparison, studyResult } from "../../publish/sample.ts";

test("a row for each paint; the replaced one says what it becomes", () => {
  expect(
    presentColours(studyResult, createFormat("en")).map((row) => [
      row.name,
      row.share,
      row.reflectance,
      row.tincture,
      row.becomes?.hex,
    ]),
  ).toEqual([
    ["dark blue", "73%", "7%", "colour", undefined],
    ["red", "17%", "16%", "colour", "#f4c430"],
    ["white", "10%", "85%", "metal", undefined],
  ]);
});

test("a paint that is there is never shown as none, and an uneven one shows its ends", () => {
  const [first] = comparison.before.colours;
  if (first === undefined) throw new Error("the sample has colours");
  const odd = {
    ...first,
    share: 0.002,
    tincture: "unclassed" as const,
    uneven: { lightest: "#aaaaaa", darkest: "#333333" } as const,
  };
  const before = { ...comparison.before, colours: [odd] };
  const [row] = presentColours({ ...studyResult, comparison: { ...comparison, before } }, createFormat("en"));
  expect(row).toMatchObject({ share: "0.2%", tincture: "–", uneven: ["#aaaaaa", "#333333"] });
});
