import fc from "fast-check";
import { expect, test } from "vitest";
import { escapeMarkup } from "../../../src/publish/feeds/markup.ts";
import { readHtml, readXml } from "../dom.ts";

// The outside check: what a parser reads is what was written, of any text that XML can hold.
const isHoldable = (text: string) =>
  [...text].every((letter) => {
    const code = letter.codePointAt(0) ?? 0;
    return (
      code === 9 || code === 10 || (code >= 0x20 && !(code >= 0xd800 && code <= 0xdfff) && code < 0xfffe)
    );
  });
const anyText = fc.string({ unit: "grapheme", maxLength: 40 }).filter(isHoldable);
const nasty = fc
  .array(fc.constantFrom("<", ">", "&", '"', "'", "]]>", "<!--", "&lt;", "&#0;", "a", "é"))
  .map((pieces) => pieces.join(""));

test("stands for itself in XML, between tags and in an attribute", () => {
  fc.assert(
    fc.property(fc.oneof(anyText, nasty), (text) => {
      const root = readXml(`<a b="${escapeMarkup(text)}">${escapeMarkup(text)}</a>`).documentElement;
      expect(root.textContent).toBe(text);
      // Source: XML 1.0, section 3.3.3: breaks and tabs in attributes are read as spaces.
      expect(root.getAttribute("b")).toBe(text.replace(/[\t\n]/g, " "));
    }),
    { numRuns: 100 },
  );
});

test("stands for itself in HTML", () => {
  for (const text of fc.sample(nasty, 100)) {
    const { body } = readHtml(`<p title="${escapeMarkup(text)}">${escapeMarkup(text)}</p>`);
    expect(body.textContent).toBe(text);
    expect(body.firstElementChild?.getAttribute("title")).toBe(text);
  }
});

test.each(["\u0000", "\u0008", "\u000b", "\u001f", "\ufffe", "\uffff", "\ud800", "\udc00"])(
  "%j, which XML cannot hold, is left out",
  (letter) => {
    expect(escapeMarkup(`a${letter}b`)).toBe("ab");
  },
);

test("what XML can hold stays: tab, breaks, the next plane, marks of direction", () => {
  const text = "\t\n\r 🏴 \u202e\u200f\u0085\u007f";
  expect(escapeMarkup(text)).toBe(text);
});
