// Every address that the site writes leads to a file of the site, wherever it is shown: under a path, or from a disk.
import path from "node:path";
import sharp from "sharp";
import { beforeAll, describe, expect, test } from "vitest";
import { analyseGallery } from "../../src/analysis/analysegallery.ts";
import type { GalleryResult } from "../../src/analysis/result.ts";
import { listSite } from "../../src/publish/publishgallery.ts";
import { presentSite } from "../../src/views/siteview.ts";
import { demoContent } from "../demo.ts";
import { openKept } from "../kept.ts";
import { readHtml, readXml } from "../publish/dom.ts";
import { checkOpenGraph, checkRecord } from "../publish/heads.ts";
import { makeFile } from "../publish/making.ts";
import { readCsv, readSchemas } from "../publish/schemas.ts";
import { checkAtom, checkJsonFeed, checkSitemap } from "../publish/standards.ts";
import { surveyedGallery } from "../publish/surveyed.ts";
import { sample } from "../sample.ts";
import { emptyGallery, oddGallery } from "./gallery.ts";

/** The files of a site: what each holds, undefined for pictures and fonts, which are there and are not made. */
type Site = ReadonlyMap<string, string | undefined>;

const made = new Map<string, Promise<Site>>();

/** The site of a gallery, made once for each base. */
function makeSite(name: string, result: () => GalleryResult, base?: string): Promise<Site> {
  const key = `${name} ${base}`;
  const site = made.get(key) ?? renderSite(result(), base);
  made.set(key, site);
  return site;
}

async function renderSite(result: GalleryResult, base: string | undefined): Promise<Site> {
  const { files: texts, drawn } = await listSite(result, base);
  const files = [...texts, ...drawn];
  const site = new Map<string, string | undefined>();
  for (const file of files) {
    const isText = /\.(?:html|css|js|json|xml|csv|svg)$|^_headers$/.test(file.path);
    expect(site.has(file.path), `${file.path} is there twice`).toBe(false);
    site.set(file.path, isText ? String(await makeFile(file)) : undefined);
  }
  return site;
}

/** An address as a file writes it. `must`: it loads something, so that it may never leave the site. */
interface Address {
  readonly file: string;
  readonly written: string;
  readonly must: boolean;
}

const attributes = ["href", "xlink:href", "src", "poster", "data", "action", "formaction", "data-words-file"];

function listHtml(file: string, text: string): readonly Address[] {
  const document = readHtml(text);
  const found: Address[] = [];
  for (const element of document.querySelectorAll("*")) {
    const isLink = element.localName === "a" || element.getAttribute("rel") === "canonical";
    for (const name of attributes) {
      const written = element.getAttribute(name);
      if (written !== null) found.push({ file, written, must: !isLink });
    }
    for (const one of element.getAttribute("srcset")?.split(",") ?? [])
      found.push({ file, written: one.trim().split(/\s/)[0] ?? "", must: true });
    const said = element.getAttribute("property") ?? "";
    if (/^og:(?:url|image)$/.test(said))
      found.push({ file, written: element.getAttribute("content") ?? "", must: false });
  }
  for (const record of document.querySelectorAll('script[type="application/ld+json"]'))
    found.push(...listJson(file, record.textContent ?? ""));
  return found;
}

/** Whatever in JSON is an address of the web or relative to the file; `$ref` and addresses by their key. */
function listJson(file: string, text: string): readonly Address[] {
  const found: Address[] = [];
  JSON.parse(text, (key, value) => {
    const isAddress = /^(?:address|data|schema|\$ref|url|image)$/.test(key) || /^https?:/.test(value);
    if (typeof value === "string" && isAddress && key !== "content_html")
      found.push({ file, written: value, must: key === "$ref" });
    if (key === "content_html") found.push(...listHtml(file, value));
    return value;
  });
  return found;
}

function listXml(file: string, text: string): readonly Address[] {
  const root = readXml(text).documentElement;
  return [...root.querySelectorAll("*")].flatMap((element) => {
    const { localName, textContent } = element;
    if (localName === "content") return listHtml(file, textContent ?? "");
    const written = [
      element.getAttribute("href"),
      element.getAttribute("scheme"),
      ["id", "loc", "uri", "icon"].includes(localName) ? textContent : null,
    ];
    return written.flatMap((one) => (one === null ? [] : [{ file, written: one, must: false }]));
  });
}

function listAddresses(file: string, text: string): readonly Address[] {
  if (file.endsWith(".html")) return listHtml(file, text);
  if (file.endsWith(".xml")) return listXml(file, text);
  if (/(?:study|studies|feed|schema)\.json$/.test(file)) return listJson(file, text);
  if (/\.(?:css|svg)$/.test(file)) {
    const urls = [...text.matchAll(/url\(\s*["']?([^"')]*)["']?\s*\)/g)].map(([, written = ""]) => written);
    const links = file.endsWith(".svg") ? [...text.matchAll(/ (?:xlink:)?href="([^"]*)"/g)] : [];
    return [...urls, ...links.map(([, written = ""]) => written)].map((written) => ({
      file,
      written,
      must: true,
    }));
  }
  return [];
}

const listed = new WeakMap<Site, readonly Address[]>();

/** Every address of every file, or of every `step`th, read once. */
function readSite(site: Site, step = 1): readonly Address[] {
  const known = listed.get(site);
  if (known !== undefined) return known;
  const found = sample([...site], step).flatMap(([file, text]) =>
    text === undefined ? [] : listAddresses(file, text),
  );
  listed.set(site, found);
  return found;
}

/** What is wrong with one address, seen from `home`, where the site stands; undefined where it is right. */
function findFault(
  site: Site,
  { file, written, must }: Address,
  home: string,
  own: string,
): string | undefined {
  const fault = (why: string) => `${file}: ${written.slice(0, 200)} ${why}`;
  // The figure of all changes holds its flags in itself, to be whole wherever it is taken.
  if (file.endsWith("/stills/matrix.svg") && written.startsWith("data:image/png;base64,")) return undefined;
  if (!URL.canParse(written, `${home}${file}`)) return fault("is no address");
  const { href } = new URL(written, `${home}${file}`);
  const isOwn = href.startsWith(own);
  if (!href.startsWith(home) && !isOwn) {
    const isOutside = new URL(href).origin !== new URL(home).origin || !home.startsWith("http");
    return !must && isOutside && /^(?:https?|mailto):/.test(href)
      ? undefined
      : fault("leads out of the site");
  }
  const [rest = "", fragment] = href.slice(isOwn ? own.length : home.length).split("#");
  const [inside = ""] = rest.split("?");
  const target = inside === "" || inside.endsWith("/") ? `${inside}index.html` : inside;
  if (!site.has(decodeURIComponent(target))) return fault("is not there");
  if (fragment === undefined || fragment === "" || target.endsWith(".json")) return undefined;
  return site.get(target)?.includes(` id="${decodeURIComponent(fragment)}"`)
    ? undefined
    : fault("has no such place");
}

const demoAddress = "https://example.org/counterchange/";
let demo: GalleryResult;
beforeAll(async () => {
  demo = await analyseGallery(demoContent, { drafts: false, store: await openKept() });
  expect(demo.gallery.address.replace(/\/?$/, "/")).toBe(demoAddress);
}, 120_000);

describe.each([
  ["demo", () => demo, demoAddress],
  ["odd", () => oddGallery, "https://flags.example/sound/"],
  ["empty", () => emptyGallery, "https://flags.example/sound/"],
  ["surveyed", () => surveyedGallery, "https://flags.example/sound/"],
  [
    "without an address",
    () => ({
      ...surveyedGallery,
      gallery: { ...surveyedGallery.gallery, address: "http://localhost:8080/" },
    }),
    "no address:",
  ],
] as const)("%s gallery", (name, result, own) => {
  test.each([
    ["with --base, under that path", "/some/where/", "https://host.example/some/where/"],
    ["with --base, from a disk", "/some/where/", "file:///home/ines/the%20site/"],
    ["without --base, at the top of a host", undefined, "https://host.example/"],
  ])(
    "%s",
    async (_how, base, home) => {
      const site = await makeSite(name, result, base);
      // The page of a missing address is shown by hosts alone, at any depth: it names whole paths.
      const isHosted = home === `https://host.example${base}`;
      // Under a path the same is written as at the top: every third file of the largest gallery shows it.
      const step = name === "demo" && base !== undefined ? 3 : 1;
      const addresses = readSite(site, step).filter(({ file }) => file !== "404.html" || isHosted);
      const faults = addresses.flatMap((address) => findFault(site, address, home, own) ?? []);
      expect([...new Set(faults)]).toEqual([]);
      expect(addresses.length).toBeGreaterThan(50);
    },
    60_000,
  );
});

test("every file of the demo is as its standard or schema says", async () => {
  const site = await makeSite("demo", () => demo);
  const text = (file: string) => site.get(file) ?? "";
  expect(checkAtom(text("feed.xml"))).toEqual([]);
  expect(checkJsonFeed(text("feed.json"))).toEqual([]);
  const { faults, urls } = checkSitemap(text("sitemap.xml"), `${demoAddress}sitemap.xml`);
  expect(faults).toEqual([]);
  // A page that only points to where a study went names the other address as its canonical one.
  const addresses = [...site].flatMap(([file, html]) => {
    const address = `${demoAddress}${file.replace(/index\.html$/, "")}`;
    return html?.includes(`<link rel="canonical" href="${address}"`) ? [address] : [];
  });
  expect(addresses.length).toBeGreaterThan(50);
  expect([...urls].sort()).toEqual(addresses.sort());
  const names = [...site.keys()].filter((file) => file.startsWith("schemas/"));
  const findFaults = readSchemas(new Map(names.map((file) => [path.basename(file), text(file)])));
  expect(findFaults("studies.schema.json", text("studies.json"))).toEqual([]);
  expect(findFaults("survey.schema.json", text("survey/survey.json"))).toEqual([]);
  for (const { study } of demo.studies) {
    expect(findFaults("study.schema.json", text(`studies/${study.slug}/study.json`))).toEqual([]);
    readCsv(text(`studies/${study.slug}/edges.csv`));
  }
  readCsv(text("survey/survey.csv"));
});

test("every page names both feeds and the icon, and _headers has a policy for every page and drawing", async () => {
  const site = await makeSite("demo", () => demo);
  const policies = (site.get("_headers") ?? "")
    .split("\n\n")
    .filter((block) => block.includes("Content-Security-Policy"))
    .map((block) => block.split("\n")[0] ?? "");
  // Source: how hosts that read such a file match: `:name` is one step of a path, `*` any rest. From memory.
  const patterns = policies.map(
    (rule) => new RegExp(`^${rule.replace(/\./g, "\\.").replace(/:\w+/g, "[^/]+").replace(/\*/g, ".*")}$`),
  );
  expect(policies.length).toBeGreaterThan(5);
  for (const [file, text] of site) {
    if (/\.svg$/.test(file) && file !== "assets/icon.svg")
      expect(
        patterns.some((pattern) => pattern.test(`/${file}`)),
        file,
      ).toBe(true);
    if (!file.endsWith(".html")) continue;
    const shown = `/${file.replace(/index\.html$/, "")}`;
    if (file !== "404.html")
      expect(
        patterns.some((pattern) => pattern.test(shown)),
        shown,
      ).toBe(true);
    const links = (text ?? "").match(/<link [^>]*>/g) ?? [];
    const types = (rel: string) =>
      links.flatMap((link) =>
        link.includes(` rel="${rel}"`) ? (/ type="([^"]*)"/.exec(link)?.[1] ?? "") : [],
      );
    expect(types("alternate"), file).toEqual(["application/atom+xml", "application/feed+json"]);
    expect(types("icon"), file).toEqual(["image/svg+xml", "image/png"]);
  }
});

test("pages, every second of them, tell sites that show links, and search, who made it and under which licence", async () => {
  const site = await makeSite("demo", () => demo);
  const records = new Map<string, number>();
  const pages = [...site].filter(([file]) => file.endsWith(".html") && file !== "404.html");
  for (const [file, text = ""] of sample(pages, 2)) {
    const document = readHtml(text);
    // What leads on to another page is not to be shown itself.
    if (document.querySelector("meta[http-equiv=refresh]") !== null) continue;
    expect(checkOpenGraph(document), file).toEqual([]);
    const isStudy = /^studies\//.test(file);
    const isWork = isStudy || /^(?:series|guide)\//.test(file);
    // A page of words has none, but for the study that it shows.
    const hasPicture = !/^(?:rules|guide|take-part)\//.test(file) || file === "guide/study/index.html";
    const picture = document.querySelector("meta[property='og:image']")?.getAttribute("content");
    expect(picture !== undefined, file).toBe(hasPicture);
    const type = document.querySelector("meta[property='og:type']")?.getAttribute("content");
    expect(type, file).toBe(isWork ? "article" : "website");
    for (const record of document.querySelectorAll('script[type="application/ld+json"]')) {
      expect(checkRecord(record.textContent ?? ""), file).toEqual([]);
      const { "@type": kind, image, isBasedOn } = JSON.parse(record.textContent ?? "");
      records.set(kind, (records.get(kind) ?? 0) + 1);
      expect(image, file).toBe(picture);
      // Source: content/LICENSE, and the canonical address of CC0 at creativecommons.org.
      if (isStudy) expect(isBasedOn.license, file).toBe("https://creativecommons.org/publicdomain/zero/1.0/");
    }
  }
  expect([...records.keys()].sort()).toEqual(["CollectionPage", "CreativeWork", "WebSite"]);
});

test("the picture that a page names has the size that it says", async () => {
  const view = presentSite(oddGallery, undefined);
  const { drawn } = await listSite(oddGallery);
  const named = view.edges[0]?.picture.file ?? "";
  const picture = drawn.find((file) => file.path === named);
  if (picture === undefined) throw new Error("no picture");
  const { width, height, format } = await sharp(
    Buffer.from((await makeFile(picture)) as Uint8Array),
  ).metadata();
  expect([format, width, height]).toEqual(["png", 1200, 630]);
});

test("the checks of heads can fail", () => {
  const record = { "@context": "https://schema.org", "@type": "CreativeWork", name: "A" };
  expect(checkRecord(JSON.stringify(record))).toEqual([]);
  for (const wrong of [
    { "@type": "Flag" },
    { colour: "red" },
    { license: "CC0-1.0" },
    { image: "/studies/a/link.png" },
    { author: { "@type": "Person", surname: "Valcourt" } },
    { "@context": "http://schema.example" },
  ])
    expect(checkRecord(JSON.stringify({ ...record, ...wrong })), JSON.stringify(wrong)).not.toEqual([]);
  const page = '<meta property="og:title" content="A"><meta property="og:image" content="link.png">';
  expect(checkOpenGraph(readHtml(page)).length).toBeGreaterThan(5);
});

describe("the check sees", () => {
  const site: Site = new Map([
    ["index.html", '<p id="here">'],
    ["studies/a/index.html", ""],
  ]);
  const find = (written: string, must = false, home = "https://host.example/some/where/") =>
    findFault(site, { file: "studies/a/index.html", written, must }, home, demoAddress);

  test.each([
    "../../",
    "../../#here",
    "./",
    "",
    "?stamp=1",
    "https://other.example/",
    `${demoAddress}studies/a/`,
  ])("nothing wrong with %s", (written) => {
    expect(find(written)).toBeUndefined();
  });

  test.each([
    "../b/",
    "../../../",
    "/studies/a/",
    "../../#there",
    "javascript:alert(1)",
    "https://host.example/studies/a/",
    `${demoAddress}studies/b/`,
    "http://",
  ])("what is wrong with %s", (written) => {
    expect(find(written)).toBeDefined();
  });

  test("a picture from another host, and a path that leaves a disk's folder", () => {
    expect(find("https://other.example/a.png", true)).toBeDefined();
    expect(find("/etc/passwd", false, "file:///home/ines/site/")).toBeDefined();
  });
});
