import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import { expect, test } from "vitest";
import { compareSite, readSiteHead } from "../../src/publish/comparesite.ts";
import { describeFile, formatManifest, manifestName } from "../../src/publish/folder/manifest.ts";
import { listAddresses } from "../../src/views/pageaddress.ts";
import { makeRoom } from "./room.ts";
import { galleryResult, study, studyResult } from "./sample.ts";

const { verdict, clarity } = studyResult.comparison;
const { original, redesign } = studyResult.drawings;
const marks = { verdict, clarity: clarity.map((mark) => Math.round(mark ?? 0)) };

/** What a site of the gallery as it is holds, as far as it is compared. */
const same: Readonly<Record<string, string>> = {
  "studies.json": JSON.stringify({
    title: galleryResult.gallery.title,
    address: "https://flags.example/sound/",
  }),
  "studies/a-square/study.json": JSON.stringify({ verdict, clarity }),
  "studies/a-square/original.svg": original,
  "studies/a-square/redesign.svg": redesign,
  ...Object.fromEntries(
    listAddresses(galleryResult).map((address) => [`${address.slice(1)}index.html`, '<body class="study">']),
  ),
};

async function write(files: Readonly<Record<string, string>>): Promise<string> {
  const folder = await makeRoom();
  for (const [file, text] of Object.entries(files)) {
    await mkdir(path.dirname(path.join(folder, file)), { recursive: true });
    await writeFile(path.join(folder, file), text);
  }
  const entries = Object.entries(files).map(([file, text]) => describeFile(file, text));
  await writeFile(path.join(folder, manifestName), formatManifest(entries));
  return folder;
}

test("nothing moves where the site is of the same gallery; a folder that is no site is not compared", async () => {
  const folder = await write(same);
  expect(await compareSite(folder, galleryResult)).toEqual({ studies: [], gone: [] });
  expect(await compareSite(await makeRoom(), galleryResult)).toBeUndefined();
  const { title } = galleryResult.gallery;
  expect(await readSiteHead(folder)).toEqual({ title, address: "https://flags.example/sound/" });
  expect(await readSiteHead(await makeRoom())).toEqual({ title: undefined, address: undefined });
});

test("marks, pictures and addresses that move; what led on already, and what is no address, does not", async () => {
  const folder = await write({
    ...same,
    "studies/a-square/study.json": JSON.stringify({ verdict: "mixed", clarity: [1.4, null] }),
    "studies/a-square/original.svg": "<svg/>",
    "studies/a-square/edges/12235d-ffffff/index.html": '<body class="edge">',
    "studies/a-square/edges/000000-ffffff/index.html": '<body class="missing">',
    "studies/older/study.json": JSON.stringify({ verdict, clarity }),
    "studies/older/index.html": '<body class="study">',
    "studies/..%2f/index.html": '<body class="study">',
  });
  expect(await compareSite(folder, galleryResult)).toEqual({
    studies: [
      {
        study: "a-square",
        was: { verdict: "mixed", clarity: [1, null] },
        is: marks,
        isLeftOut: false,
        pictures: ["original"],
      },
      { study: "older", was: marks, is: null, isLeftOut: false, pictures: [] },
    ],
    gone: [
      { address: "/studies/a-square/edges/12235d-ffffff/", to: "/studies/a-square/edges/12235c-ffffff/" },
      { address: "/studies/older/", to: null },
    ],
  });
});

test("a study that is new, and one that cannot be built, whose pages stay", async () => {
  const isNew = { study: "a-square", was: null, is: marks, isLeftOut: false, pictures: [] };
  const others = Object.fromEntries(Object.entries(same).filter(([file]) => !file.startsWith("studies/")));
  expect(await compareSite(await write(others), galleryResult)).toEqual({ studies: [isNew], gone: [] });
  const broken = { ...galleryResult, studies: [], leftOut: [study.slug], folders: [study.slug] };
  const { studies, gone } = (await compareSite(await write(same), broken)) ?? {};
  expect(studies).toEqual([{ study: "a-square", was: marks, is: null, isLeftOut: true, pictures: [] }]);
  expect(gone?.filter(({ address }) => address.startsWith("/studies/"))).toEqual([]);
});

test.each(["[]", "7", "{", '{"verdict":"constructor","clarity":[1,2]}', '{"verdict":"mixed","clarity":1}'])(
  "data that say nothing, %s, are as none",
  async (text) => {
    const folder = await write({ ...same, "studies/a-square/study.json": text });
    expect((await compareSite(folder, galleryResult))?.studies).toMatchObject([
      { study: "a-square", was: null },
    ]);
  },
);
