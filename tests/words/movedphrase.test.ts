import { expect, test } from "vitest";
import { describeFate, lastGoodNote } from "../../src/words/movedphrase.ts";

test("what the society says of a withdrawal stands behind what it is, and nowhere else", () => {
  expect(describeFate("withdrawn", "2026-05-02, by its author.").text).toMatch(
    /^What stood .*\. 2026-05-02, by its author\.$/,
  );
  expect(describeFate("withdrawn").text).toMatch(/published\.$/);
  expect(describeFate("edge", "so").text).not.toContain("so ");
  // It is put into pages as it stands.
  expect(lastGoodNote).not.toMatch(/[<>&]/);
});
