import { describe, expect, test } from "vitest";
import { checkInvisible } from "../../../src/content/study/invisiblevalue.ts";

const told = (raw: Record<string, unknown>) =>
  checkInvisible(raw).map(({ rule, path, on, reason }) => [rule, path, on, reason]);

describe("checkInvisible", () => {
  test("says the code point and where it stands, at any depth", () => {
    expect(told({ title: "A ligh\u200bter wheel", options: [{ note: "\u{E0041}hidden" }] })).toEqual([
      [
        "study/invisible",
        "title",
        "value",
        "“title” holds a character that cannot be seen (U+200B), after “A ligh”.",
      ],
      [
        "study/invisible",
        "options.0.note",
        "value",
        "“note” holds a character that cannot be seen (U+E0041), at its beginning.",
      ],
    ]);
  });

  test("a letter has five marks at most", () => {
    const marked = (count: number) => told({ title: `Z${"\u0301".repeat(count)}` }).map(([rule]) => rule);
    expect([marked(4), marked(8)]).toEqual([[], ["study/stacked-marks"]]);
  });

  test("what shows nothing is empty", () => {
    expect(told({ title: "\u00ad\u200e", authors: ["Ines", "\u3164"], decision: "\u0301" })).toEqual([
      ["study/no-value", "title", "value", "“title” is empty: it holds U+00AD, which cannot be seen."],
      [
        "study/no-value",
        "authors.1",
        "value",
        "Item 2 of “authors” is empty: it holds U+3164, which cannot be seen.",
      ],
      ["study/no-value", "decision", "value", "“decision” is empty."],
    ]);
  });

  test("names of a palette are texts too; other keys are not ours to judge", () => {
    expect(told({ palette: { "sea\u200c green": "#2e8b70" }, "ti\u200btle": "x" })).toEqual([
      [
        "study/invisible",
        "palette.sea\u200c green",
        "key",
        "A name of “palette” holds a character that cannot be seen (U+200C), after “sea”.",
      ],
    ]);
  });

  test("right to left, joiners and emoji are texts as any other; the schema sees to what is not there", () => {
    expect(
      told({
        title: "دگرگونی می\u200cخواهم 🏳\ufe0f\u200d🌈",
        authors: ["שרה\u200f"],
        tags: [],
        date: "",
        n: 1,
        x: null,
      }),
    ).toEqual([]);
  });
});
