import { expect, test } from "vitest";
import { countColours, presentFacts } from "../../../src/views/study/facts.ts";
import { createFormat } from "../../../src/words/format.ts";
import { compared, type Edge, type Paint } from "../../publish/compared.ts";

const format = createFormat("en-GB");
const field: Paint = { name: "dark blue", hex: "#12235c", more: { share: 0.6 } };
const charge: Paint = { name: "dark red", hex: "#701c2b", more: { share: 0.2, touchesBorder: false } };
const panel: Paint = { name: "red", hex: "#c8202f", more: { share: 0.2 } };
const edge = (between: Edge["between"], more: Edge["more"], focus = 0): Edge => ({
  between,
  length: 2,
  focus,
  contrast: [10, 10],
  outcome: "same",
  more: more ?? {},
});
const rowOf = (view: ReturnType<typeof presentFacts>, id: string) => view.rows.find((row) => row.id === id);

test("edges told apart by hue alone are named, or none is", () => {
  const view = presentFacts(compared([field, charge], [edge(["p1", "p2"], { hueOnly: true })]), format);
  expect(rowOf(view, "hue")?.before).toEqual(["dark blue / dark red"]);
  expect(rowOf(presentFacts(compared([field, charge], []), format), "hue")?.after).toEqual(["none"]);
});

test("a charge on its field counts for the rule of tincture, two parts of the field do not, and the page says so", () => {
  const against = { tincture: "both colours" } as const;
  const view = presentFacts(
    compared([field, charge, panel], [edge(["p1", "p2"], against, 2), edge(["p1", "p3"], against)]),
    format,
  );
  expect(rowOf(view, "tincture")?.before).toEqual(["dark blue / dark red, both colours"]);
  expect(view.exempt).toEqual(["Exempt, parts of the field: dark blue / red."]);
});

test("a charge that reaches the border is still one where the author named it", () => {
  const against = { tincture: "both colours" } as const;
  const view = presentFacts(
    compared([field, panel], [edge(["p1", "p2"], against, 2)], { lastsTo: 40, clarity: [50, 50] }),
    format,
  );
  expect(rowOf(view, "tincture")?.before).toEqual(["dark blue / red, both colours"]);
});

test("colours are counted from half a percent, near-equal shades together", () => {
  const count = (...paints: readonly Paint[]) => countColours(compared(paints, []).before);
  expect(count(field, charge, panel)).toBe(3);
  expect(count(field, { ...charge, more: { share: 0.005 } })).toBe(1);
  expect(count(field, { ...charge, more: { share: 0.0051 } })).toBe(2);
  // One step in one channel is no colour of its own.
  expect(count(field, { ...field, hex: "#12245c" })).toBe(1);
});

test("warnings of the measure and uneven paints are passed on", () => {
  const uneven = { ...panel, more: { uneven: { lightest: "#ff0000", darkest: "#800000" } as const } };
  const made = compared([field, uneven], []);
  const warned = {
    ...made,
    before: { ...made.before, warnings: [{ about: "nearLimit" as const, names: ["red"] }] },
  };
  expect(presentFacts(warned, format).warnings).toEqual([
    "Near the limit of sight: parts in red.",
    "An uneven colour: red runs from #ff0000 to #800000; an edge of it is clear only if both ends are.",
  ]);
});

test("leaves out the facts of taste that the gallery does not speak of", () => {
  const view = presentFacts(compared([field, charge], []), format, { tincture: false, colours: false });
  expect([view.tincture, view.exempt, view.rows.map(({ id }) => id)]).toEqual([
    undefined,
    [],
    ["share", "near", "hue"],
  ]);
});
