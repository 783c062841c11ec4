import { expect, test } from "vitest";
import { findLicenceAddress, findLicenceFault } from "../../../src/content/study/licence.ts";

// Identifiers of the SPDX licence list, https://spdx.org/licenses/
test.each([
  "CC0-1.0",
  "cc0-1.0",
  "CC-BY-SA-4.0",
  "CC-BY-3.0-DE",
  "MIT",
  "GPL-2.0+",
  "GPL-3.0",
  "MIT OR Apache-2.0",
  "(MIT AND CC-BY-4.0) OR GPL-2.0-only WITH Classpath-exception-2.0",
  "LicenseRef-Harbour",
  "public domain",
  "Public Domain",
  "All rights reserved",
  "by permission",
  "https://flags.example/licence",
])("%s is known", (text) => {
  expect(findLicenceFault(text)).toBeUndefined();
});

test.each([
  ["cc0", "CC0-1.0"],
  ["CC 0", "CC0-1.0"],
  ["CC0 1.0 Universal", "CC0-1.0"],
  ["Creative Commons Zero", "CC0-1.0"],
  ["CC BY", "CC-BY-4.0"],
  ["CC BY-SA 3.0", "CC-BY-SA-3.0"],
  ["BY-SA 4.0", "CC-BY-SA-4.0"],
  ["Creative Commons Attribution 4.0", "CC-BY-4.0"],
  ["Creative Commons Attribution-ShareAlike 4.0 International", "CC-BY-SA-4.0"],
  ["the MIT licence", "MIT"],
  ["GPLv3", "GPL-3.0-only"],
  ["OFL", "OFL-1.1"],
  ["pulic domain", "public domain"],
  ["CC-BY-5.0", "CC-BY-4.0"],
])("%s is most likely %s", (text, meant) => {
  expect(findLicenceFault(text)).toEqual({
    reason: `“${text}” is not a name by which a licence can be looked up.`,
    hint: `If that is meant, type: licence: ${meant}`,
  });
});

test.each(["CC", "free for schools", "own work", "yes", "MIT OR nothing"])(
  "for %s no licence is put into anyone's mouth",
  (text) => {
    expect(findLicenceFault(text)?.hint).toMatch(/^Type its short name, such as licence: CC0-1\.0/);
  },
);

test("the address of a licence, where it is known or is one", () => {
  // Source: creativecommons.org, canonical addresses of the licences.
  expect(findLicenceAddress("CC-BY-4.0")).toBe("https://creativecommons.org/licenses/by/4.0/");
  expect(findLicenceAddress("https://flags.example/terms")).toBe("https://flags.example/terms");
  expect(["MIT", "public domain", "constructor"].map(findLicenceAddress)).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
});
