import { describe, expect, test } from "vitest";
import { resolveSelector } from "../../src/analysis/resolveselector.ts";
import { draw, resolve } from "../svg/drawing.ts";

const at = { file: "study.md" };
const flag = resolve(
  draw(
    '<rect id="sea" width="30" height="20" fill="#1b2a5c"/><circle id="wheel" class="charge round" r="4" fill="#7a1020"/><circle id="hub" r="1" fill="#7a1020"/><path d="M0 0h1v1z" fill="#ffffff"/>',
  ),
);
const say = (selector: string, replace?: "#7a1020" | "#ffffff" | "#123456") => {
  const { problem } = resolveSelector(flag, selector, at, replace);
  return problem && [problem.rule, problem.reason, problem.hint];
};

test("what is there is found", () => {
  const { instances, problem } = resolveSelector(flag, ".charge", at, "#7a1020");
  expect(problem).toBeUndefined();
  expect([...(instances ?? [])].map(({ element }) => element.attributes["id"])).toEqual(["wheel"]);
});

describe("a selector that matches nothing", () => {
  const list = "The drawing has: #sea, #wheel, #hub, .charge, .round.";
  test.each([
    ["#whel", `Type "#wheel", if that is meant.\n${list}`],
    ["wheel", `Type "#wheel", if that is meant.\n${list}`],
    ["#charge", `Type ".charge", if that is meant.\n${list}`],
    ["#anchor", list],
    ["g.star path", list],
  ])("%s", (selector, hint) => {
    expect(say(selector)).toEqual([
      "study/selects-nothing",
      `“${selector}” matches nothing in the drawing.`,
      hint,
    ]);
  });

  test("in a drawing without ids", () => {
    const { problem } = resolveSelector(resolve(draw('<rect width="3" height="2"/>')), "#a", at);
    expect(problem?.hint).toBe(
      'The drawing has no ids: give the element one in the SVG file, such as id="wheel".',
    );
  });
});

test("a selector of another kind than is supported", () => {
  expect(say("circle:first-of-type")?.[1]).toBe(
    "“circle:first-of-type” uses :first-of-type, which is not supported.",
  );
});

test("a selector that cannot be read", () => {
  expect(say("circle[")).toEqual([
    "study/wrong-selector",
    "“circle[” is not a CSS selector.",
    'Type a selector such as "#wheel", "g.star path", "use:nth-child(2)" or "path:not(.ground)".',
  ]);
});

test("elements without the colour: those that have it are named", () => {
  expect(say("#sea", "#7a1020")).toEqual([
    "study/selects-nothing",
    "“#sea” matches nothing that has the colour #7a1020.",
    'These have it: #wheel, #hub. Type, for example, "#wheel", or leave “only” out to change the colour everywhere.',
  ]);
  expect(say("#sea", "#ffffff")?.[2]).toBe(
    "Select the elements that have it, or leave “only” out to change the colour everywhere.",
  );
});
