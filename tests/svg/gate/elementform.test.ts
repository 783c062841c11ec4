// That the rest is drawn in two ways is shown where a browser draws it; here is what is on the list.
import { expect, test } from "vitest";
import { draw, rulesOf } from "../drawing.ts";

const circle = '<circle r="5"/>';
const knife = `<clipPath id="d">${circle}</clipPath>`;

test.each([
  ["a clip path of a shape", `<clipPath id="c">${circle}</clipPath>`, true],
  ["with a title", `<clipPath id="c"><title>Half</title>${circle}</clipPath>`, true],
  ["of a use of a shape", '<circle id="a" r="5"/><clipPath id="c"><use href="#a"/></clipPath>', true],
  ["of two shapes", `<clipPath id="c">${circle}${circle}</clipPath>`, false],
  ["of a group", `<clipPath id="c"><g>${circle}</g></clipPath>`, false],
  ["of a use of a group", `<g id="a">${circle}</g><clipPath id="c"><use href="#a"/></clipPath>`, false],
  [
    "of a use of a use",
    '<circle id="a" r="5"/><use id="b" href="#a"/><clipPath id="c"><use href="#b"/></clipPath>',
    false,
  ],
  [
    "of a use of a shape that is clipped",
    `${knife}<circle id="a" r="5" clip-path="url(#d)"/><clipPath id="c"><use href="#a"/></clipPath>`,
    false,
  ],
  ["of boxes", `<clipPath id="c" clipPathUnits="objectBoundingBox">${circle}</clipPath>`, false],
  ["of user space, said", `<clipPath id="c" clipPathUnits="userSpaceOnUse">${circle}</clipPath>`, true],
  ["what is inherited", '<clipPath id="c" fill="red" clip-rule="evenodd"/>', true],
  ["what is no more than usual", '<symbol id="c" opacity="1" mask="none" display="inline"/>', true],
  ["an opacity", '<symbol id="c" opacity=".9"/>', false],
  ["words for readers", '<symbol id="c" role="img" data-a="b"/>', true],
  ["a transform of a symbol", '<symbol id="c" transform="scale(2)"/>', false],
  ["a slice", '<symbol id="c" viewBox="0 0 9 9" preserveAspectRatio="xMidYMid slice"/>', false],
  ["what is cut anyway", '<svg width="9" height="9" overflow="hidden"/>', true],
  ["what is not cut", '<svg width="9" height="9" overflow="visible"/>', false],
  ["a gradient that repeats", '<linearGradient id="c" spreadMethod="repeat"/>', false],
  ["one that does not", '<linearGradient id="c" spreadMethod="pad"/>', true],
])("%s", (_, body, isAdmitted) => {
  expect(rulesOf(draw(body))).toEqual(isAdmitted ? [] : ["svg/unlike"]);
});
