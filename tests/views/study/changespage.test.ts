// The page with the other single changes, from a typed ranking: where it is, what its head says, the way back.
import { expect, test } from "vitest";
import { presentChanges } from "../../../src/views/study/changespage.ts";
import { createFormat } from "../../../src/words/format.ts";
import { matrix, ranked } from "../../publish/ranked.ts";
import { gallery, studyResult } from "../../publish/sample.ts";

const format = createFormat("en");
const whole = { ...gallery, address: "https://flags.example/sound/" };

test("has an address of its own below the study, and leads back to it", () => {
  const [page, ...others] = presentChanges([ranked({ matrix })], whole, format);
  expect(others).toEqual([]);
  expect(page).toMatchObject({
    folder: "studies/a-square/changes",
    slug: "a-square",
    study: { title: "A lighter square", address: "../" },
  });
  expect(page?.frame).toMatchObject({
    title: expect.stringMatching(/^Other changes of one colour, A lighter square – /),
    canonical: "https://flags.example/sound/studies/a-square/changes/",
    share: { picture: { address: "https://flags.example/sound/studies/a-square/link.png" } },
  });
  expect(page?.frame.description).toContain("None of the colours could be tried.");
  expect(page?.options.matrix?.src).toBe("../matrix.webp");
  expect(page?.plates.map(({ src }) => src)).toEqual(["../original.svg", "../redesign.svg"]);
  expect(page?.plates.map(({ clarity }) => clarity)).toEqual(
    studyResult.comparison.clarity.map((clarity) => format.percent(clarity)),
  );
});

test("is none where nothing could be ranked", () => {
  expect(presentChanges([studyResult, ranked({}, { clarity: null })], whole, format)).toEqual([]);
});
