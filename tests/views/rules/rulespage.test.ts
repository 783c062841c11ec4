import { expect, test } from "vitest";
import { presentRules } from "../../../src/views/rules/rulespage.ts";
import { createFormat } from "../../../src/words/format.ts";
import { gallery } from "../../publish/sample.ts";

const page = presentRules(gallery, createFormat("en"));
const rules = page.chapters.flatMap((chapter) => chapter.rules);
const find = (id: string) => rules.find((rule) => rule.id === id);

test("says how many rules there are, and shows as many", () => {
  expect(page.lede).toContain(`all ${rules.length} rules`);
  expect([page.count, page.found]).toEqual([`${rules.length} rules`, `# of ${rules.length} rules`]);
  expect(page.frame.title).toContain("Rules for studies and drawings");
});

test("a rule with both sides of its example", () => {
  expect(find("study/quote-hash")).toEqual({
    id: "study/quote-hash",
    anchor: "study-quote-hash",
    means: "A value begins with # and has no quotes.",
    why: "In YAML a # begins a comment, so that the value would be lost without a word.",
    isError: true,
    wrong: { label: "Wrong, in study.md", isCode: true, isOurs: false, lines: ["  replace: #7a1020"] },
    right: { label: "Right, in study.md", isCode: true, isOurs: false, lines: ['  replace: "#7a1020"'] },
  });
});

test("where nothing stands in its place, it says so; folders and what is told say what they are", () => {
  expect(find("study/image")?.right).toEqual({
    label: "Right, in study.md",
    isCode: false,
    isOurs: true,
    lines: ["Leave it out."],
  });
  expect(find("study/slug")?.wrong.label).toBe("Wrong, in the content folder");
  expect(find("study/drawing-size")?.wrong).toMatchObject({ label: "Wrong", isCode: false });
});

test("what cannot be seen in a file is seen on the page", () => {
  expect(find("study/yaml-tab")?.wrong.lines).toEqual(['⇥ with: "#f4c430"']);
  const text = JSON.stringify(rules);
  expect(text).not.toMatch(/(?<!\\)\\u00(?:0[0-9a-f]|1[0-9a-f])|[\u202a-\u202e]/);
  expect(find("study/yaml-control")?.wrong.lines).toEqual(["title: A lighter\\u0008 ferry wheel"]);
});

test("what is English in every language says so where the page is in another", () => {
  expect(page.english).toEqual({});
  expect(presentRules(gallery, createFormat("en-GB")).english).toEqual({});
  expect(presentRules(gallery, createFormat("ar")).english).toEqual({ lang: "en", dir: "ltr" });
});
