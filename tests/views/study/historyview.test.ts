import { expect, test } from "vitest";
import type { Study } from "../../../src/content/study/study.ts";
import { linkFrom } from "../../../src/views/address.ts";
import { presentHistory } from "../../../src/views/study/historyview.ts";
import { createFormat } from "../../../src/words/format.ts";
import { study, studyResult } from "../../publish/sample.ts";

const format = createFormat("en-GB");
const link = linkFrom("/studies/b/");
const of = (slug: string, changed: Partial<Study> = {}): Study => ({
  ...study,
  slug,
  title: slug.toUpperCase(),
  ...changed,
});
const all = (...studies: Study[]) => studies.map((one) => ({ ...studyResult, study: one }));

test("the study before it, those after it, and what was changed, the oldest first", () => {
  const revised = [
    { date: "2026-05-02", what: "Second." },
    { date: "2026-05-01", what: "First." },
  ];
  const own = of("b", { follows: "a", revised });
  expect(presentHistory(own, all(of("a"), own, of("c", { follows: "b" })), link, format)).toEqual({
    revised: [
      { iso: "2026-05-01", date: "1 May 2026", what: "First." },
      { iso: "2026-05-02", date: "2 May 2026", what: "Second." },
    ],
    kin: [
      { lead: "Takes the place of", title: "A", address: "../a/" },
      { lead: "Followed by", title: "C", address: "../c/" },
    ],
  });
});

test("nothing where nothing is known, and where the study before it is not published", () => {
  expect(presentHistory(of("b"), all(of("a")), link, format)).toBeUndefined();
  expect(presentHistory(of("b", { follows: "gone" }), all(of("a")), link, format)).toBeUndefined();
});

test("a stranger does not follow a study on its page", () => {
  const own = of("b", { authors: ["Ines"] });
  const [stranger, author] = ["Marit", "Ines"].map((name) => of("c", { follows: "b", authors: [name] }));
  expect(presentHistory(own, all(stranger as Study), link, format)).toBeUndefined();
  expect(presentHistory(own, all(author as Study), link, format)?.kin).toHaveLength(1);
  const both = of("c", { follows: "b", authors: ["Marit", "Ines"] });
  expect(presentHistory(own, all(both), link, format)).toBeUndefined();
});
