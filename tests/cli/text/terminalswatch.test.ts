import { expect, test } from "vitest";
import { addSwatches } from "../../../src/cli/text/terminalswatch.ts";

// ISO/IEC 8613-6: ESC [ 48 ; 2 ; r ; g ; b m sets the background, ESC [ 0 m ends it.
test("two columns of each colour before a row, room before the head and where a colour is missing", () => {
  const table = "  head\n  one\n  two";
  expect(addSwatches(table, [["#ff8000", "#000000"], []])).toBe(
    [
      "        head",
      "  \u001b[48;2;255;128;0m  \u001b[0m \u001b[48;2;0;0;0m  \u001b[0m one",
      "        two",
    ].join("\n"),
  );
});
