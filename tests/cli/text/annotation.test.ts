import { win32 } from "node:path";
import { expect, test } from "vitest";
import { formatAnnotations, guardText, isOnActions } from "../../../src/cli/text/annotation.ts";
import type { Problem } from "../../../src/problem/problem.ts";

const problem: Problem = {
  rule: "study/unknown-key",
  severity: "error",
  file: "content/studies/ferry/study.md",
  place: { line: 3, column: 1, length: 7 },
  sourceLine: "orignal: a.svg",
  reason: "A study has no key “orignal”.",
  hint: "Type “original”.",
};
const env = { GITHUB_ACTIONS: "true", GITHUB_WORKSPACE: "/repo/flags" };
const format = (change: Partial<Problem>, folder = "/repo/flags") =>
  formatAnnotations([{ ...problem, ...change }], env, folder);

// Escapes as actions/toolkit documents them: % CR LF in messages, and : , in properties as well.
test("a problem with its place", () => {
  expect(format({})).toBe(
    "::error file=content/studies/ferry/study.md,line=3,col=1,endColumn=7,title=study/unknown-key::A study has no key “orignal”.%0AType “original”.",
  );
});

test("paths are those of the workspace, wherever we are called", () => {
  expect(format({ file: "studies/a/study.md" }, "/repo/flags/content")).toContain(
    " file=content/studies/a/study.md,",
  );
  expect(format({ file: "/repo/flags/content/x.svg" }, "/tmp")).toContain(" file=content/x.svg,");
  expect(format({ file: "../other/x.svg" })).toContain(" file=/repo/other/x.svg,");
});

test("on Windows paths have slashes too, and those of another drive are whole", () => {
  const place = (file: string, folder: string) => {
    const onWindows = { ...env, GITHUB_WORKSPACE: "D:\\a\\flags" };
    return / file=(.*?),/.exec(formatAnnotations([{ ...problem, file }], onWindows, folder, win32))?.[1];
  };
  expect(place("studies/a/study.md", "D:\\a\\flags\\content")).toBe("content/studies/a/study.md");
  expect(place("d:\\a\\flags\\x.svg", "D:\\a\\flags")).toBe("x.svg");
  expect(place("C:\\x.svg", "D:\\a\\flags")).toBe("C%3A/x.svg");
});

test("what could end a value early is escaped", () => {
  const text = format({ file: "a,b:c%.md", reason: "50 %\r\n::error::x", hint: "one\ntwo" });
  expect(text).toContain("file=a%2Cb%3Ac%25.md,");
  expect(text.split("\n")).toHaveLength(1);
  expect(text).toMatch(/::50 %25\\u000d\\n::error::x%0Aone%0Atwo$/);
});

test("a problem without a place or a hint, and a warning", () => {
  const { place: _, hint: __, ...rest } = problem;
  expect(formatAnnotations([{ ...rest, severity: "warning" }], env, "/repo/flags")).toBe(
    "::warning file=content/studies/ferry/study.md,title=study/unknown-key::A study has no key “orignal”.",
  );
});

test("only where the runner says that it is one", () => {
  expect([isOnActions({}), isOnActions({ GITHUB_ACTIONS: "1" }), isOnActions(env)]).toEqual([
    false,
    false,
    true,
  ]);
});

test.each(["    ::add-mask::x", "::stop-commands::x", "a ##[error]x", "ok\n\t::debug::x"])(
  "%j runs no command",
  (text) => {
    expect(guardText(text, "word")).toBe(`::stop-commands::word\n${text}\n::word::`);
  },
);

test("JSON stays JSON, and says what it said", () => {
  const value = { file: "##[add-mask]x", reason: "::error::x" };
  const guarded = guardText(JSON.stringify(value, null, 2), "word");
  expect(guarded).not.toContain("##[");
  expect(guarded).not.toMatch(/^\s*::/m);
  expect(JSON.parse(guarded)).toEqual(value);
  expect(guardText("{ ##[x]", "word")).toContain("::stop-commands::");
});

test("text without a command is left alone", () => {
  expect(guardText('a ::figure{edge="a / b"}', "word")).toBe('a ::figure{edge="a / b"}');
});
