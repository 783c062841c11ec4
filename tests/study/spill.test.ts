import { existsSync } from "node:fs";
import { dirname } from "node:path";
import { expect, test } from "vitest";
import { addLikeness, closeSpilled, openSpilled, Spill } from "../../src/study/spill.ts";
import { studyResult } from "../site/sample.ts";

const likeness = { nearest: [], compared: 3 };

test("a spilled result says what it said, and its bulk is in no memory", async () => {
  const spill = new Spill();
  try {
    const spilled = await spill.put(studyResult);
    expect({ ...spilled }).toEqual({ ...studyResult });
    const closed = closeSpilled(spilled);
    expect(closed).toBeDefined();
    expect(Object.keys(closed?.slim ?? {})).not.toContain("drawings");
    expect(closed && openSpilled(closed).drawings).toEqual(studyResult.drawings);
    const file = closed?.file ?? "";
    expect(existsSync(file)).toBe(true);
    await spill.remove();
    expect(existsSync(dirname(file))).toBe(false);
  } finally {
    await spill.remove();
  }
});

test("likeness comes to a result as it is held", async () => {
  expect(addLikeness(studyResult, likeness)).toEqual({ ...studyResult, likeness });
  expect(closeSpilled(studyResult)).toBeUndefined();
  const spill = new Spill();
  try {
    const added = addLikeness(await spill.put(studyResult), likeness);
    expect(closeSpilled(added)?.slim.likeness).toEqual(likeness);
    expect(added.drawings).toEqual(studyResult.drawings);
  } finally {
    await spill.remove();
  }
});
