import { expect, test } from "vitest";
import { formatScript } from "../../../src/publish/feeds/speakerscript.ts";
import { presentShow } from "../../../src/views/show/showpage.ts";
import { createFormat } from "../../../src/words/format.ts";
import { gallery, studyResult } from "../sample.ts";

test("a heading, a picture and a sentence for each step, and the notes where they are", () => {
  const study = { ...studyResult.study, show: { notes: { "the-price": "Wait." } } };
  const show = presentShow({ ...studyResult, study }, gallery, createFormat("en"));
  const script = formatScript(show, createFormat("en"));
  expect(script.match(/^## \d+\. /gm)).toHaveLength(show.steps.length);
  expect(script.match(/^Say: .+[.?]$/gm)).toHaveLength(show.steps.length);
  expect(script.match(/^Note: .*$/gm)).toEqual(["Note: Wait."]);
  expect(script).toContain("Picture: `01-the-flag.png`");
  expect(script).toContain("Unofficial study");
});

test("what an author typed is text, on one line", () => {
  const show = presentShow(studyResult, gallery, createFormat("en"));
  const [first] = show.steps;
  const steps = first === undefined ? [] : [{ ...first, note: "# <b>*Look*</b>\n\n## 9. [x](y)" }];
  expect(formatScript({ title: "A_b", steps }, createFormat("en"))).toMatch(
    /^# A\\_b\n[\s\S]*\nNote: \\# \\<b\\>\\\*Look\\\*\\<\/b\\> \\#\\# 9\. \\\[x\\\]\(y\)\n$/,
  );
});
