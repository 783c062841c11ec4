import { expect, test } from "vitest";
import { defaultGallery } from "../../src/study/gallery.ts";
import { checkNoted } from "../../src/study/noted.ts";
import { parseText, writeStudy } from "./fixture.ts";
import { drawing } from "./folder.ts";

const bytes = new TextEncoder().encode(drawing);

async function check(...options: string[]) {
  const { value } = parseText(writeStudy(`options: [${options.join(", ")}]`));
  if (value === undefined) throw new Error("the study must be right");
  return checkNoted(value, bytes, defaultGallery);
}

test("options that the drawing can follow", async () => {
  expect(await check()).toEqual([]);
  expect(
    await check(
      '{ replace: dark red, with: "#000000" }',
      '{ replace: "#ffffff", with: "#123456", only: "#wheel" }',
    ),
  ).toEqual([]);
});

test.each([
  ['{ replace: "#999999", with: white }', "study/colour-absent", "error"],
  ['{ replace: dark red, with: "#000000", only: "#hub" }', "study/selects-nothing", "error"],
  ['{ replace: dark red, with: "#7a1020" }', "study/nothing-changes", "error"],
  ['{ replace: "#7b1020", with: "#000000" }', "study/colour-near", "warning"],
])("%s is %s, at its own place in study.md", async (option, rule, severity) => {
  const problems = await check('{ replace: white, with: "#000000" }', option);
  expect(problems).toMatchObject([{ rule, severity, file: "ferry/study.md", place: { line: 5 } }]);
  expect(problems[0]?.place?.column).toBeGreaterThan(45);
});
