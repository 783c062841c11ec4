import { expect, test } from "vitest";
import { writeFlagFigure } from "../../src/publish/flagfigure.ts";
import { createFormat } from "../../src/words/format.ts";

const published = {
  format: createFormat("en"),
  studies: [
    { slug: "lamp", title: "A <paler> lamp", flag: 'The "Lampholm" light', verdict: "clearer" as const },
  ],
  files: new Set(["original.svg", "redesign.svg", "ruler.svg"].map((file) => `studies/lamp/${file}`)),
};
const ask = { from: "/notes/first/", at: "/flags/", slug: "lamp" };

test("a pair leads to its study, and nothing in a title is markup", () => {
  expect(writeFlagFigure(published, ask)).toBe(
    '<figure class="counterchange-pair"><img src="../../flags/studies/lamp/original.svg" alt="The &quot;Lampholm&quot; light today"><img src="../../flags/studies/lamp/redesign.svg" alt="The &quot;Lampholm&quot; light, redesign"><figcaption><a href="../../flags/studies/lamp/">The &quot;Lampholm&quot; light: A &lt;paler> lamp</a>: clearer. Unofficial study.</figcaption></figure>',
  );
  expect(writeFlagFigure(published, { ...ask, what: "ruler" })).toContain(
    'src="../../flags/studies/lamp/ruler.svg"',
  );
});

test("a study that names no flag is told by its title", () => {
  const studies = [{ slug: "lamp", title: "A paler lamp", verdict: "clearer" as const }];
  const figure = writeFlagFigure({ ...published, studies }, ask);
  expect([...figure.matchAll(/alt="([^"]*)"/g)].map(([, alt]) => alt)).toEqual([
    "A paler lamp today",
    "A paler lamp, redesign",
  ]);
});

test.each([
  [{ slug: "lamb" }, "no study “lamb” was published; those that were: lamp"],
  [
    { what: "edge", edge: "000000-ffffff" },
    "“studies/lamp/edges/000000-ffffff/original.svg” was not published",
  ],
  [{ what: "pear" }, "“pear” is none of pair, ruler, edge"],
  [{ what: "edge" }, "“edge” is none of"],
])("what is not there is told: %j", (asked, said) => {
  expect(() => writeFlagFigure(published, { ...ask, ...asked })).toThrow(said);
});

test("a flag without edges has no ruler", () => {
  const without = { ...published, files: new Set<string>() };
  expect(() => writeFlagFigure(without, { ...ask, what: "ruler" })).toThrow("without edges has none");
});
