import { expect, test } from "vitest";
import type { NearFlag } from "../../../src/analysis/likeness/likenessdata.ts";
import { linkFrom } from "../../../src/views/address.ts";
import { presentLikeness } from "../../../src/views/study/likenessfact.ts";
import { createFormat } from "../../../src/words/format.ts";
import { studyResult } from "../../publish/sample.ts";
import { surveyedGallery } from "../../publish/surveyed.ts";

const present = (nearest: readonly NearFlag[], compared = 12) =>
  presentLikeness(
    { ...studyResult, likeness: { nearest, compared } },
    surveyedGallery,
    linkFrom("/studies/a-square/"),
    createFormat("en"),
  );
const pilots = {
  file: "flags/harbour-pilots.svg",
  origin: "flag",
  deltaE00: 7.96,
  orientation: "mirrored",
} as const;
const old = { file: "old/B.svg", origin: "collection", deltaE00: 8, orientation: "as it is" } as const;

test("the nearest with their numbers and the way round; that it could be taken for what is under 8", () => {
  const view = present([pilots, old]);
  expect(view?.sentence).toBe(
    "It could. Of 12 other flags and redesigns, Harbour pilots is near: under 8 one flag is easily taken for another, and the nearest has mean colour difference ΔE00 7.96, seen from behind.",
  );
  expect(view?.isNear).toBe(true);
  expect(view?.own).toMatchObject({ label: "This redesign", src: "redesign.svg" });
  expect(view?.nearest).toMatchObject([
    {
      name: "Harbour pilots",
      figures: "Mean colour difference ΔE00 7.96, seen from behind",
      shown: { address: "../../survey/#flag-flags-harbour-pilots", plate: { label: "Harbour pilots" } },
    },
    { name: "B.svg", figures: "Mean colour difference ΔE00 8.0", shown: undefined },
  ]);
});

test("no section without a comparison, one line where nothing is near", () => {
  expect(presentLikeness(studyResult, surveyedGallery, linkFrom("/"), createFormat("en"))).toBeUndefined();
  expect(present([])).toBeUndefined();
  const gallery = { ...surveyedGallery.gallery, terms: { likeness: false } };
  expect(
    presentLikeness(
      { ...studyResult, likeness: { compared: 1, nearest: [old] } },
      { ...surveyedGallery, gallery },
      linkFrom("/"),
      createFormat("en"),
    ),
  ).toBeUndefined();
  const view = present([old], 1);
  expect(view?.isNear).toBe(false);
  expect(view?.sentence).toBe(
    "Hardly. Of 1 other flag or redesign, B.svg comes nearest: mean colour difference ΔE00 8.0; under 8 one flag is easily taken for another.",
  );
});
