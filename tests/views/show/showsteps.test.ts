import { expect, test } from "vitest";
import type { ShowPlan } from "../../../src/content/study/showstep.ts";
import { listSteps } from "../../../src/views/show/showsteps.ts";
import { createFormat } from "../../../src/words/format.ts";
import { nameStudy } from "../../../src/words/namedresult.ts";
import { gallery, studyResult } from "../../publish/sample.ts";

const steps = (show?: ShowPlan) =>
  listSteps(
    { ...studyResult, study: { ...studyResult.study, ...(show && { show }) } },
    gallery,
    "/studies/a-square/show/",
    createFormat("en"),
  );
const names = (show: ShowPlan) => steps(show).map(({ name }) => name);

test("the author orders steps and leaves some out", () => {
  expect(names({ steps: ["after", "the-flag", "the-price"] })).toEqual(["after", "the-flag", "the-price"]);
  expect(names({ steps: ["after", "the-flag"], without: ["the-flag"] })).toEqual(["after"]);
  expect(names({ without: ["from-afar", "the-question"] })).toEqual(
    steps()
      .map(({ name }) => name)
      .filter((name) => name !== "from-afar" && name !== "the-question"),
  );
});

test("a note stands at its step and at no other", () => {
  const noted = steps({ notes: { "the-price": "Wait." } }).filter(({ note }) => note !== undefined);
  expect(noted.map(({ name, note }) => [name, note])).toEqual([["the-price", "Wait."]]);
});

test("every step has something to say, with exact numbers beside the words", () => {
  for (const { name, speech } of steps()) expect(speech, name).toMatch(/^\p{Lu}.*[.?]$/u);
  const price = steps().find(({ name }) => name === "the-price");
  expect(price?.speech).toMatch(/The clarity of the original is \d+ of 100 points/);
});

test("the author begins the flag's step, and a flag that stands there already is not announced again", () => {
  const told = steps({ without: ["the-weakest-edge", "from-afar"] });
  expect(told.map(({ speech }) => speech).slice(0, 2)).toEqual([
    expect.stringMatching(/^The flag as it is: .*\. First words\.$/),
    "Keep it in mind as it is.",
  ]);
  expect(steps().find(({ name }) => name === "before")?.speech).toMatch(/^Here once more/);
});

test("addresses begin with the prefix, names do not", () => {
  const [first] = listSteps(studyResult, gallery, "/series/quay/show/", createFormat("en"), "a-square-");
  expect([first?.anchor, first?.name]).toEqual(["a-square-the-flag", "the-flag"]);
  expect(first?.picture).toMatchObject({ plate: { src: "../../../studies/a-square/original.svg" } });
});

test("a change behind a colon has the small letter of English, and the capital of a German noun", () => {
  const said = (language: string) => {
    const format = createFormat(language);
    const told = listSteps(nameStudy(studyResult, format), gallery, "/studies/a-square/show/", format);
    return told.find(({ name }) => name === "after")?.speech;
  };
  expect(said("en")).toMatch(/^And now: red becomes yellow\./);
  expect(said("de")).toMatch(/^Und jetzt: Gelb statt Rot\./);
});
