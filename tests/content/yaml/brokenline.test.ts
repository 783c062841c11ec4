import { expect, test } from "vitest";
import { findHyphen, findSlip, writeItem } from "../../../src/content/yaml/brokenline.ts";

test.each([
  "status: open",
  "  with: white",
  "  - Ines Valcourt",
  "---",
  "title: Le h\u00e9ron\u00a0: bleu",
  "title: “Heron”：dusk",
  'change: { replace: "#7a1020", with: white }',
  "",
])("%j has no slip", (line) => {
  expect(findSlip(line)).toBeUndefined();
});

test.each<[string, number, string, string]>([
  ["status:\u00a0open", 8, "The space after status: is a no-break space (U+00A0).", "status: open"],
  ["status:\u202fopen", 8, "The space after status: is a narrow no-break space (U+202F).", "status: open"],
  ["status:\u3000open", 8, "The space after status: is a full-width space (U+3000).", "status: open"],
  ["status:\u2003open", 8, "The space after status: is no plain space (U+2003).", "status: open"],
  ["status\u00a0: open", 7, "The space after status is a no-break space (U+00A0).", "status: open"],
  ["\u00a0 with: white", 1, "The space before with is a no-break space (U+00A0).", "with: white"],
  ["  -\u00a0Ines", 4, "The space after the hyphen is a no-break space (U+00A0).", "- Ines"],
  [
    "change: { replace:\u00a0red, with:\u00a0blue }",
    19,
    "The space after replace: is a no-break space (U+00A0).",
    "change: { replace: red, with: blue }",
  ],
  ["status：open", 7, "“：” is not a colon.", "status: open"],
  ["  - name： open", 9, "“：” is not a colon.", "- name: open"],
  [
    "change: { replace：red, with： blue }",
    18,
    "“：” is not a colon.",
    "change: { replace: red, with: blue }",
  ],
  ["  -Tobin", 3, "After the hyphen comes a space.", "- Tobin"],
  ["-#charge", 1, "After the hyphen comes a space.", '- "#charge"'],
  ["  – Tobin", 3, "“–” is not a hyphen, with which an item of a list begins.", "- Tobin"],
])("%j", (line, column, reason, typed) => {
  expect(findSlip(line)).toMatchObject({ column, reason, hint: `Type: ${typed}` });
});

test("a line that only looks empty", () => {
  expect(findSlip("  \u00a0")).toMatchObject({
    reason: "The line looks empty and holds a no-break space (U+00A0).",
    hint: "Delete the line.",
  });
});

test("items", () => {
  expect(findHyphen("- Tobin")).toBeUndefined();
  expect([writeItem(" Tobin "), writeItem("#charge")]).toEqual(["- Tobin", '- "#charge"']);
});
