import { expect, test } from "vitest";
import { findKeySlip } from "../../../src/content/yaml/brokenkey.ts";

test.each<[string, string, string, string, string]>([
  [
    'change: { replace "#7a1020", with "#f4c430" }',
    'replace "#7a1020"',
    "replace",
    "Behind “replace” comes a colon.",
    'change: { replace: "#7a1020", with: "#f4c430" }',
  ],
  [
    "change: { replace = red, with = blue }",
    "replace = red",
    "replace",
    "Behind “replace” comes a colon.",
    "change: { replace: red, with: blue }",
  ],
  [
    "change: { replace red, with blue }",
    "with blue",
    "with",
    "Behind “with” comes a colon.",
    "change: { replace: red, with: blue }",
  ],
  [
    "change: {replace:#7a1020, with:red}",
    "replace:#7a1020",
    "replace",
    "After the colon of a key comes a space.",
    'change: {replace: "#7a1020", with: red}',
  ],
  [
    'focus: { select:\u00a0"#wheel" }',
    'select:\u00a0"#wheel"',
    "select",
    "The space after select: is a no-break space (U+00A0).",
    'focus: { select: "#wheel" }',
  ],
])("%j: %s", (line, name, key, reason, typed) => {
  expect(findKeySlip(line, name, true)).toMatchObject({ key, reason, hint: `Type: ${typed}` });
});

test("a key that has its value, with a space of another kind", () => {
  expect(findKeySlip("status\u00a0: open", "status\u00a0", false)).toMatchObject({ key: "status" });
});

test.each<[string, string, boolean]>([
  ["status: open", "status", false],
  ["status:", "status", true],
  ["palette: { sea green: red }", "sea green", false],
  ["tags: { charge, dark on dark }", "dark on dark", true],
  ["formerly: { https://flags.example/ }", "https://flags.example/", true],
  ["change: { rgb(1, 2) }", "2)", true],
])("%j: %j is as it is", (line, name, isAlone) => {
  expect(findKeySlip(line, name, isAlone)).toBeUndefined();
});
