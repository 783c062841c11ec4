import { win32 } from "node:path";
import { expect, test } from "vitest";
import { nameInvocation, quoteWord, spellCommands } from "../../../src/cli/text/invocation.ts";

const start = "/home/ines/counterchange/src/cli/start.mjs";

test.each([
  [
    "in a checkout, by its script",
    start,
    { npm_command: "run-script", npm_lifecycle_event: "cli" },
    "npm run -s cli --",
  ],
  ["the same by npm 11", start, { npm_command: "run", npm_lifecycle_event: "cli" }, "npm run -s cli --"],
  [
    "in a checkout, by npm run build",
    start,
    { npm_command: "run-script", npm_lifecycle_event: "build" },
    "node ../counterchange/src/cli/start.mjs",
  ],
  [
    "by npx",
    "/home/ines/flags/node_modules/.bin/counterchange",
    { npm_command: "exec" },
    "npx counterchange",
  ],
  [
    "in the packages of a folder",
    "/home/ines/flags/node_modules/.bin/counterchange",
    {},
    "npx counterchange",
  ],
  [
    "by Node, under npx of something else",
    start,
    { npm_command: "exec" },
    "node ../counterchange/src/cli/start.mjs",
  ],
  ["installed for all", "/usr/local/bin/counterchange", {}, "counterchange"],
  ["by Node", start, {}, "node ../counterchange/src/cli/start.mjs"],
])("%s", (_, script, env, expected) => {
  expect(nameInvocation({ script, env, folder: "/home/ines/flags" })).toBe(expected);
});

const windows = "C:\\Users\\Ines\\counterchange\\src\\cli\\start.mjs";

test.each([
  ["in a checkout", windows, { npm_command: "run-script", npm_lifecycle_event: "cli" }, "npm run -s cli --"],
  ["by Node", windows, {}, "node ..\\counterchange\\src\\cli\\start.mjs"],
  ["from another drive", windows.replace("C:", "D:"), {}, `node ${windows.replace("C:", "D:")}`],
  [
    "in the packages of a folder",
    "C:\\Users\\Ines\\flags\\node_modules\\counterchange\\src\\cli\\start.mjs",
    {},
    "npx counterchange",
  ],
])("on Windows, %s", (_, script, env, expected) => {
  expect(nameInvocation({ script, env, folder: "C:\\Users\\Ines\\flags" }, win32)).toBe(expected);
});

// cmd.exe knows no single quotes. Two double quotes are one inside, and a backslash before the last would take it along.
test.each([
  ["my-gallery\\a.svg", "my-gallery\\a.svg"],
  ["C:\\flags\\a.svg", "C:\\flags\\a.svg"],
  ["my gallery", '"my gallery"'],
  ['the "b"', '"the ""b"""'],
  ["my gallery\\", '"my gallery\\\\"'],
  ["it's", '"it\'s"'],
])("on Windows %s is typed %s", (word, quoted) => {
  expect(quoteWord(word, win32)).toBe(quoted);
});

test.each([
  ["my-gallery/a.svg", "my-gallery/a.svg"],
  ["my gallery", "'my gallery'"],
  ["it's", "'it'\\''s'"],
  ["$(id)", "'$(id)'"],
  ["~/flags", "'~/flags'"],
])("%s is typed %s", (word, quoted) => {
  expect(quoteWord(word)).toBe(quoted);
});

test.each([
  ["Type: counterchange begin a --original a.svg", "Type: npx counterchange begin a --original a.svg"],
  ["Type: counterchange --help", "Type: npx counterchange --help"],
  ["For one:\n    x: counterchange measure a.svg", "For one:\n    x: npx counterchange measure a.svg"],
  ["counterchange COMMAND --help tells more", "counterchange COMMAND --help tells more"],
  ["It is called counterchange here", "It is called counterchange here"],
])("in “%s” what is to be typed begins as the command line did", (text, spelt) => {
  expect(spellCommands(text, "npx counterchange")).toBe(spelt);
});
