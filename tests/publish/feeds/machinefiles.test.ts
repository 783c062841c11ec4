import path from "node:path";
import sharp from "sharp";
import { describe, expect, test } from "vitest";
import type { GalleryResult } from "../../../src/analysis/result.ts";
import { defaultGallery } from "../../../src/content/gallery/galleryfile.ts";
import { listMachineFiles, listStudyFiles } from "../../../src/publish/feeds/machinefiles.ts";
import { listSite } from "../../../src/publish/publishgallery.ts";
import { presentSite } from "../../../src/views/siteview.ts";
import { oddGallery } from "../../browser/gallery.ts";
import { makeAll } from "../making.ts";
import { galleryResult } from "../sample.ts";
import { readCsv, readSchemas } from "../schemas.ts";
import { checkAtom, checkJsonFeed, checkSitemap } from "../standards.ts";

const root = path.resolve(import.meta.dirname, "../../..");
const schemaDirs = ["cli", "publish", "content"].map((floor) => path.join(root, "src", floor, "schema"));

async function make(result: GalleryResult): Promise<ReadonlyMap<string, Buffer>> {
  const { gallery, studies } = result;
  return makeAll([
    ...(await listMachineFiles(result, presentSite(result, undefined), schemaDirs)),
    ...studies.flatMap((study) => listStudyFiles(study, gallery)),
  ]);
}

const nowhere: GalleryResult = {
  ...galleryResult,
  gallery: { ...galleryResult.gallery, address: defaultGallery.address },
};

test.each([
  ["sample", galleryResult],
  ["odd", oddGallery],
] as const)("%s gallery: every file is as its standard or schema says", async (_name, result) => {
  const files = await make(result);
  const text = (file: string) => files.get(file)?.toString("utf8") ?? "";
  expect(checkAtom(text("feed.xml"))).toEqual([]);
  expect(checkJsonFeed(text("feed.json"))).toEqual([]);
  const sitemap = checkSitemap(text("sitemap.xml"), "https://flags.example/sound/sitemap.xml");
  expect(sitemap.faults).toEqual([]);
  const view = presentSite(result, undefined);
  const folders = [...view.edges, ...view.shelves].map(({ folder }) => `/${folder}/`);
  for (const page of ["/", "/survey/", "/method/", ...folders])
    expect(sitemap.urls).toContain(`https://flags.example/sound${page}`);
  const findFaults = readSchemas(schemasOf(files));
  expect(findFaults("studies.schema.json", text("studies.json"))).toEqual([]);
  for (const { study } of result.studies) {
    expect(findFaults("study.schema.json", text(`studies/${study.slug}/study.json`))).toEqual([]);
    expect(readCsv(text(`studies/${study.slug}/edges.csv`)).length).toBeGreaterThan(0);
  }
});

function schemasOf(files: ReadonlyMap<string, Buffer>): ReadonlyMap<string, string> {
  return new Map(
    [...files].flatMap(([file, bytes]) =>
      file.startsWith("schemas/") ? [[path.basename(file), bytes.toString("utf8")] as const] : [],
    ),
  );
}

test("a published schema has its own address as $id; without an address, its name", async () => {
  for (const [name, text] of schemasOf(await make(galleryResult)))
    expect(JSON.parse(text).$id).toBe(`https://flags.example/sound/schemas/${name}`);
  for (const [name, text] of schemasOf(await make(nowhere))) expect(JSON.parse(text).$id).toBe(name);
});

describe("a gallery without an address of its own", () => {
  test("has no feeds and no sitemap, and its pages name none", async () => {
    const files = await make(nowhere);
    const names = [...files.keys()].filter((file) => /feed|sitemap/.test(file));
    expect(names).toEqual([]);
    const { front, studies } = presentSite(nowhere, undefined);
    for (const { frame } of [front, ...studies])
      expect([frame.links.feeds, frame.canonical, frame.share]).toEqual([[], undefined, undefined]);
  });

  test("its data lead to files beside them, wherever the site stands", async () => {
    const files = await make(nowhere);
    const findFaults = readSchemas(schemasOf(files));
    const text = files.get("studies/a-square/study.json")?.toString("utf8") ?? "";
    expect(findFaults("study.schema.json", text)).toEqual([]);
    expect(text).not.toContain("localhost");
    const data = JSON.parse(text);
    const from = "https://anywhere.example/deep/studies/a-square/study.json";
    const to = (address: string) => new URL(address, from).pathname;
    expect(to(data.address)).toBe("/deep/studies/a-square/");
    expect(to(data.files.edges)).toBe("/deep/studies/a-square/edges.csv");
    expect(to(data.schema)).toBe("/deep/schemas/study.schema.json");
    const list = JSON.parse(files.get("studies.json")?.toString("utf8") ?? "");
    expect(new URL(list.studies[0].data, "https://anywhere.example/deep/studies.json").pathname).toBe(
      "/deep/studies/a-square/study.json",
    );
  });
});

test("icon and pictures have the size that pages say", async () => {
  const files = await makeAll((await listSite(galleryResult)).drawn);
  const sizeOf = async (file: string) => {
    const { format, width, height } = await sharp(files.get(file)).metadata();
    return [format, width, height];
  };
  expect(await sizeOf("assets/icon.png")).toEqual(["png", 96, 96]);
  expect(await sizeOf("studies/a-square/original-2000.png")).toEqual(["png", 2000, 1333]);
});

test("the same input gives the same bytes", async () => {
  expect(await make(structuredClone(galleryResult))).toEqual(await make(galleryResult));
});

test("robots are welcome, and are told of the sitemap where there is one", async () => {
  const read = async (result: GalleryResult) => (await make(result)).get("robots.txt")?.toString("utf8");
  expect(await read(galleryResult)).toBe(
    "User-agent: *\nAllow: /\n\nSitemap: https://flags.example/sound/sitemap.xml\n",
  );
  expect(await read(nowhere)).toBe("User-agent: *\nAllow: /\n");
});
