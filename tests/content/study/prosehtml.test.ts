import { expect, test } from "vitest";
import { findHtml } from "../../../src/content/study/prosehtml.ts";

test.each([
  ["is <b>not</b> there", "<b>", "Write **like this** for bold."],
  ["is <EM class='x'>not</EM>", "<EM class='x'>", "Write *like this* for italics."],
  ["one<br/>two", "<br/>", "Leave an empty line to begin a paragraph."],
  [
    '<a href="https://flags.example/">',
    '<a href="https://flags.example/">',
    "Write a link as [its text](https://flags.example/).",
  ],
  ["<h2>Why</h2>", "<h2>", "Begin a heading with ## and a space."],
  ["</div>", "</div>", "Leave the tag out."],
  ["<script>", "<script>", "Leave the tag out."],
  ["text <!-- to do -->", "<!--", "Delete the comment: what is not for readers has no place in a study."],
])("%s", (text, tag, hint) => {
  expect(findHtml(text)).toEqual({ tag, hint });
});

test.each(["2 < 3 and 4 > 3", "a <- b", "<sea green>", "<3", "x<y>z", "<bold>"])("%s is no HTML", (text) => {
  expect(findHtml(text)).toBeUndefined();
});
