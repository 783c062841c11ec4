import { expect, test } from "vitest";
import { plainFormat } from "../../src/words/format.ts";
import { describeFate } from "../../src/words/movedphrase.ts";

test("what the society says of a withdrawal stands behind what it is, and nowhere else", () => {
  expect(describeFate("withdrawn", plainFormat, "2026-05-02, by its author.").text).toMatch(
    /^What stood .*\. 2026-05-02, by its author\.$/,
  );
  expect(describeFate("withdrawn", plainFormat).text).toMatch(/published\.$/);
  expect(describeFate("edge", plainFormat, "so").text).not.toContain("so ");
  // It is put into pages as it stands.
  expect(plainFormat.say("moved.lastGood")).not.toMatch(/[<>&]/);
});
