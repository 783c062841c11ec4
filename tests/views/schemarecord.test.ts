import { expect, test } from "vitest";
import { recordEdge, recordGallery, recordList, recordStudy } from "../../src/views/schemarecord.ts";
import { plainFormat } from "../../src/words/format.ts";
import { gallery, study } from "../publish/sample.ts";

test("a study says who, when, for whom, and whose drawing under which licence it builds on", () => {
  expect(recordStudy(study, gallery, "Told.", plainFormat)).toMatchObject({
    "@type": "CreativeWork",
    name: "A lighter square",
    creativeWorkStatus: "adopted",
    author: [
      { "@type": "Person", name: "Ines Valcourt" },
      { "@type": "Person", name: "Tobin Arkwell" },
    ],
    datePublished: "2026-04-02",
    publisher: { name: "Sound Flag Circle" },
    isBasedOn: { name: "The square", license: "https://creativecommons.org/publicdomain/zero/1.0/" },
  });
});

test("what is not known is absent, and an unknown licence keeps its name", () => {
  const { credit: _credit, date: _date, ...rest } = study;
  const bare = recordStudy({ ...rest, authors: [], tags: [] }, gallery, "Told.", plainFormat);
  for (const key of ["author", "datePublished", "keywords", "isBasedOn"])
    expect(bare).not.toHaveProperty(key);
  const named = recordStudy(
    { ...study, credit: { licence: "by arrangement" } },
    gallery,
    "Told.",
    plainFormat,
  );
  expect(named["isBasedOn"]).toEqual({
    "@type": "CreativeWork",
    license: { "@type": "CreativeWork", name: "by arrangement" },
  });
});

test("an edge is part of its study, and by the same authors", () => {
  const record = recordEdge(
    study,
    gallery,
    "White / red",
    "Told.",
    "https://flags.example/sound/studies/a-square/",
    plainFormat,
  );
  expect(record["author"]).toEqual([
    { "@type": "Person", name: "Ines Valcourt" },
    { "@type": "Person", name: "Tobin Arkwell" },
  ]);
  expect(record["isPartOf"]).toEqual({
    "@type": "CreativeWork",
    name: "A lighter square",
    url: "https://flags.example/sound/studies/a-square/",
  });
});

test("the gallery is a site, a list of studies a page of it; neither has an address where the gallery has none", () => {
  const site = { "@type": "WebSite", name: "Flags of the Sound", url: "https://flags.example/sound/" };
  expect(recordGallery(gallery)).toMatchObject({ ...site, publisher: { name: "Sound Flag Circle" } });
  expect(recordList("charge", "One study.", gallery)).toMatchObject({
    "@type": "CollectionPage",
    name: "charge",
    isPartOf: site,
  });
  expect(recordStudy(study, gallery, "Told.", plainFormat)["isPartOf"]).toEqual(site);
  expect(recordGallery({ ...gallery, address: "http://localhost:8080/" })).not.toHaveProperty("url");
});
