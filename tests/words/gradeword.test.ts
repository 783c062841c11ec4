import { expect, test } from "vitest";
import { gradeIds, outcomeIds } from "../../src/words/gradeword.ts";
import { createSay } from "../../src/words/say.ts";

test("in English grades and outcomes are called what they are in the files for machines", () => {
  const say = createSay("en");
  for (const [name, id] of Object.entries({ ...gradeIds, ...outcomeIds })) expect(say(id)).toBe(name);
});
