import { expect, test } from "vitest";
import { checkAnswered, checkAnswerLink } from "../../../src/content/study/answerkey.ts";
import type { StudyAnswer } from "../../../src/content/study/study.ts";
import { comparison } from "../../publish/sample.ts";

const about = (edge: string): StudyAnswer => ({
  key: "1",
  by: "A",
  says: "ask",
  text: "?",
  edge,
  at: { file: "a.md" },
});
const check = (edge: string) =>
  checkAnswered({ answers: [about(edge)] }, comparison.edges).map(({ rule, severity, file, hint }) => [
    rule,
    severity,
    file,
    hint,
  ]);

test("an answer is about an edge of the flag, its colours in either order", () => {
  expect(check("dark blue / red")).toEqual([]);
  expect(check("Red / dark blue")).toEqual([]);
  const [found] = check("pink / dark blue");
  expect(found?.slice(0, 3)).toEqual(["study/answer-edge", "warning", "a.md"]);
  expect(found?.[3]).toContain("dark blue / red");
});

test("only a page of the web is linked", () => {
  expect(checkAnswerLink("link", "https://forum.example/77")).toEqual([]);
  for (const link of [
    "http://forum.example/",
    "javascript:alert(1)",
    "https://",
    "https://a b",
    'https://a.example/"x',
  ])
    expect(
      checkAnswerLink("link", link).map(({ rule }) => rule),
      link,
    ).toEqual(["study/answer-link"]);
});
