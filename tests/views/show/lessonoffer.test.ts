import { expect, test } from "vitest";
import { presentLesson } from "../../../src/views/show/lessonoffer.ts";
import { createFormat } from "../../../src/words/format.ts";
import { gallery, studyResult } from "../../publish/sample.ts";

const offer = (downloads: boolean) =>
  presentLesson({ ...studyResult, study: { ...studyResult.study, downloads } }, gallery, createFormat("en"));

test("a page offers the stills by number and heading, and what goes with them, where its author says so", () => {
  const files = offer(true);
  expect(files[0]).toEqual({
    address: "stills/01-the-flag.png",
    file: "a-square-01-the-flag.png",
    text: "1. A lighter square",
  });
  expect(files.at(-1)).toMatchObject({ address: "stills/script.md", text: "What to say, Markdown" });
  expect(offer(false)).toEqual([]);
});
