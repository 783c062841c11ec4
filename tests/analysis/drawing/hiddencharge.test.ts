import { expect, test } from "vitest";
import { askForFocus, findHiddenCharge, proposeFocus } from "../../../src/analysis/drawing/hiddencharge.ts";
import { openDrawing } from "../../../src/analysis/drawing/opendrawing.ts";
import { disc, drawing, field, stripes } from "../drawing.ts";
import { parseText, writeStudy } from "../fixture.ts";

const band = (colour: string): string => `<rect y="14" width="30" height="6" fill="${colour}"/>`;

async function find(inside: string) {
  const { value } = await openDrawing("a.svg", drawing(inside), { distance: 40 });
  if (value === undefined) throw new Error("the drawing opens");
  return findHiddenCharge(value);
}

test("a disc that runs into a band of its own colour", async () => {
  const found = await find(`${field("#1b2a5c")}${band("#ffffff")}${disc("#ffffff")}`);
  expect(found?.element.name).toBe("circle");
});

test("of two charges the one that runs into a band, though the other is found", async () => {
  const found = await find(
    `${field("#1b2a5c")}${band("#ffffff")}${disc("#ffffff")}<circle cx="26" cy="5" r="2.5" fill="#e0b020"/>`,
  );
  expect(found?.element.attributes["cx"]).toBe("15");
});

test("a group with an id that holds all of a charge is named", async () => {
  const wheel = `<g id="wheel">${disc("#ffffff")}${disc("#e0b020", 2)}</g>`;
  const found = await find(`${field("#1b2a5c")}${band("#ffffff")}${wheel}`);
  expect(found?.element.attributes["id"]).toBe("wheel");
});

test.each([
  ["a charge that stands free is found as it is", `${field("#1b2a5c")}${band("#ffffff")}${disc("#7a1020")}`],
  ["one of another colour that only touches", `${field("#1b2a5c")}${band("#ffffff")}${disc("#7a1020", 9)}`],
  ["stripes", stripes("#1b2a5c", "#ffffff", "#1b2a5c")],
  [
    "a cross of two bars",
    `${field("#1b2a5c")}<rect x="10" width="4" height="20" fill="#ffffff"/><rect y="8" width="30" height="4" fill="#ffffff"/>`,
  ],
  [
    "a patch of the field's own colour, which nobody sees",
    `${field("#1b2a5c")}${disc("#1b2a5c", 3)}${band("#ffffff")}`,
  ],
  [
    "a crescent cut out by a disc of the field's colour",
    `${field("#1b2a5c")}${band("#7a1020")}<circle cx="12" cy="7" r="5" fill="#ffffff"/><circle cx="14" cy="7" r="5" fill="#1b2a5c"/>`,
  ],
  [
    "a figure in outline, through which the field is seen",
    `${field("#ffffff")}${band("#1b2a5c")}<circle cx="15" cy="7" r="5" fill="#ffffff" stroke="#1b2a5c"/>`,
  ],
  [
    "a canton with a cross",
    `${field("#7a1020")}<rect width="14" height="10" fill="#1b2a5c"/><rect x="6" width="2" height="10" fill="#7a1020"/><rect y="4" width="14" height="2" fill="#7a1020"/>`,
  ],
  ["a disc far too large for a charge", `${field("#1b2a5c")}${band("#ffffff")}${disc("#ffffff", 9.9)}`],
])("none: %s", async (_, inside) => {
  expect(await find(inside)).toBeUndefined();
});

test("the warning says what to type: an id where there is one, else the colour", async () => {
  const { value: study } = parseText(writeStudy());
  const [plain, named] = await Promise.all(
    ["", ' id="wheel"'].map((id) =>
      find(`${field("#1b2a5c")}${band("#ffffff")}<circle${id} cx="15" cy="10" r="6" fill="#ffffff"/>`),
    ),
  );
  if (study === undefined || plain === undefined || named === undefined) throw new Error("both are found");
  expect(askForFocus(named)).toMatchObject({
    rule: "study/focus-hidden",
    severity: "warning",
    at: "original",
    hint: 'Name it: focus: { select: "#wheel" }',
  });
  expect(proposeFocus(named)).toBe('focus: { select: "#wheel" }');
  expect(askForFocus(plain).hint).toBe(
    'Name it: focus: { colour: "#ffffff" }\nBetter, give the charge an id in the drawing and select that.',
  );
});
