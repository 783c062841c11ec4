import { describe, expect, test } from "vitest";
import { inspectDrawing } from "../../src/analysis/drawing/inspect.ts";
import { listColours, planChange, planFocus } from "../../src/analysis/planchange.ts";
import { readDrawing } from "../../src/svg/gate/sanitise.ts";
import { resolveDrawing } from "../../src/svg/instance.ts";

const text = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 30 20"><linearGradient id="l"><stop stop-color="#ff8000"/><stop offset="1" stop-color="#ffff00"/></linearGradient>
<rect width="30" height="20" fill="white"/><rect id="a" width="10" height="20" fill="red"/><rect id="b" x="20" width="10" height="20" fill="url(#l)"/></svg>`;
const { value } = readDrawing("a.svg", new TextEncoder().encode(text));
if (value === undefined) throw new Error("the drawing must be right");
const resolved = resolveDrawing(value);
const colours = listColours(resolved, await inspectDrawing(resolved, { distance: 0 }));
const palette = new Map([["sun", "#f4c430"]]);

const rulesOf = (change: Parameters<typeof planChange>[2]): readonly string[] =>
  planChange(resolved, colours, change, { palette }).problems.map(({ rule, at }) => `${rule} ${at}`);

test("listColours: paints by their names, then the stops of gradients", () => {
  expect(colours).toEqual([
    { hex: "#ffffff", name: "white" },
    { hex: "#ff0000", name: "red" },
    { hex: "#ff8000", name: "in a gradient or pattern" },
    { hex: "#ffff00", name: "in a gradient or pattern" },
  ]);
});

test("a colour that is drawn translucent too has both names, and each of them is read", async () => {
  const half = text.replace('fill="url(#l)"', 'fill="red" fill-opacity="0.6"');
  const drawing = readDrawing("b.svg", new TextEncoder().encode(half)).value;
  if (drawing === undefined) throw new Error("the drawing must be right");
  const whole = resolveDrawing(drawing);
  const listed = listColours(whole, await inspectDrawing(whole, { distance: 0 }));
  expect(listed.slice(0, 3).map(({ hex }) => hex)).toEqual(["#ffffff", "#ff0000", "#ff0000"]);
  for (const { name } of listed.slice(1, 3)) {
    const planned = planChange(whole, listed, { replace: name, with: "sun" }, { palette });
    expect(planned.value?.replace).toBe("#ff0000");
  }
});

describe("planChange", () => {
  test("both colours resolved, and the shapes that only names", () => {
    const planned = planChange(resolved, colours, { replace: "red", with: "sun", only: "#a" }, { palette });
    expect(planned.problems).toEqual([]);
    expect(planned.value).toMatchObject({
      replace: "#ff0000",
      with: "#f4c430",
      called: "sun",
    });
    expect([...(planned.value?.only ?? [])].map(({ element }) => element.attributes["id"])).toEqual(["a"]);
  });

  test("only may name what a gradient fills, and a stop itself", () => {
    expect(rulesOf({ replace: "#ff8000", with: "sun", only: "stop" })).toEqual([]);
    expect(rulesOf({ replace: "#ff8000", with: "sun", only: "#b" })).toEqual([]);
  });

  test.each([
    [{ replace: "green", with: "sun" }, "study/colour-absent change.replace"],
    [{ replace: "red", with: "son" }, "study/wrong-colour change.with"],
    [{ replace: "red", with: "red" }, "study/nothing-changes change.with"],
    [{ replace: "red", with: "sun", only: "a[" }, "study/wrong-selector change.only"],
    [{ replace: "red", with: "sun", only: "#z" }, "study/selects-nothing change.only"],
    [{ replace: "white", with: "sun", only: "#a" }, "study/selects-nothing change.only"],
  ])("%j", (change, problem) => {
    expect(rulesOf(change)).toEqual([problem]);
  });

  test("what a selector could have named is listed", () => {
    expect(
      planChange(resolved, colours, { replace: "red", with: "sun", only: "#z" }, { palette }).problems[0]
        ?.hint,
    ).toContain("#l, #a, #b");
  });
});

describe("planFocus", () => {
  test("a colour of the drawing", () => {
    expect(planFocus(resolved, colours, { colour: "red" }, palette).value).toEqual({
      colour: "#ff0000",
    });
    expect(planFocus(resolved, colours, { colour: "green" }, palette).problems[0]).toMatchObject({
      rule: "study/colour-absent",
      at: "focus.colour",
    });
  });

  test("shapes", () => {
    const focus = planFocus(resolved, colours, { select: "#a" }, palette).value;
    expect(focus !== undefined && "select" in focus && focus.select.size).toBe(1);
    expect(planFocus(resolved, colours, { select: "#z" }, palette).problems[0]).toMatchObject({
      rule: "study/selects-nothing",
      at: "focus.select",
    });
  });
});
