// Test support. A gallery that is edited at random for years: every address that it ever published is followed in every later
// site. It has to lead to the study that stood there, or say what became of it.
import { mkdir, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import { analyseGallery } from "../../src/analysis/analysegallery.ts";
import type { Store } from "../../src/analysis/store/resultstore.ts";
import { keepAddresses } from "../../src/publish/keepaddresses.ts";
import { findLastGood } from "../../src/publish/lastgood.ts";
import { makeTexts } from "../../src/publish/pagetext.ts";
import { drawFlag, writeSettings, writeStudy } from "./gallery.ts";
import { makeRandom, pick, type Tally } from "./tally.ts";

/** A study as its author thinks of it; `id` is the same whatever it is called. `claims` are addresses of others. */
interface Kept {
  readonly id: number;
  readonly slug: string;
  readonly former: readonly string[];
  readonly claims: readonly string[];
  readonly field: string;
  readonly charge: string;
  readonly flag: string;
  readonly tag: string;
  readonly state: "open" | "draft" | "broken";
}

interface Season {
  readonly studies: readonly Kept[];
  readonly hasSeries: boolean;
  /** Number of the next study, of the next name. */
  readonly next: number;
}

type Site = ReadonlyMap<string, string>;

const fields = ["#15244a", "#3a2a20", "#1c6b3a", "#16254b", "#7a1020"];
const charges = ["#8a3020", "#2b4a72", "#6d8740", "#2c4b73", "#553311"];

const begin: Season = {
  studies: [1, 2, 3].map((id) => makeStudy(id)),
  hasSeries: true,
  next: 4,
};

function makeStudy(id: number, claims: readonly string[] = []): Kept {
  const [field = "", charge = ""] = [fields[id % 5], charges[id % 3]];
  const flag = `The flag of ${id % 2 === 0 ? "noon" : "dusk"}`;
  return { id, slug: `study-${id}`, former: [], claims, field, charge, flag, tag: "disc", state: "open" };
}

type Edit = (season: Season, random: () => number, known: readonly string[]) => Season;

const change =
  (edit: (one: Kept, random: () => number, next: number) => Partial<Kept>): Edit =>
  ({ studies, next, ...season }, random) => {
    const chosen = pick(random, studies);
    const edited = studies.map((one) => (one === chosen ? { ...one, ...edit(one, random, next) } : one));
    return { ...season, studies: edited, next: next + 1 };
  };

const edits: readonly Edit[] = [
  change((_, random) => ({ field: pick(random, fields) })),
  change((_, random) => ({ charge: pick(random, charges) })),
  // Of a study that is broken nobody can read what it was called.
  change(({ slug, former, state }, _, next) =>
    state === "broken" ? {} : { slug: `study-${next}`, former: [...former, slug] },
  ),
  change(({ slug, state }, _, next) => (state === "open" ? { slug: `study-${next}`, former: [slug] } : {})),
  change(({ state }) => ({ state: state === "broken" ? "open" : "broken" })),
  change(({ state }) => ({ state: state === "draft" ? "open" : "draft" })),
  change((_, random) => ({ flag: `The flag of ${pick(random, ["noon", "dusk", "dawn"])}` })),
  change((_, random) => ({ tag: pick(random, ["disc", "dark on dark", "night"]) })),
  ({ studies, ...season }, random) => {
    const gone = pick(random, studies);
    return { ...season, studies: studies.length < 3 ? studies : studies.filter((one) => one !== gone) };
  },
  // A stranger's study, which says that it had the addresses of others.
  ({ studies, next, ...season }, random, known) => {
    const claims = [pick(random, known), pick(random, known)];
    return {
      ...season,
      studies: studies.length > 5 ? studies : [...studies, makeStudy(next, claims)],
      next: next + 1,
    };
  },
  ({ hasSeries, ...season }) => ({ ...season, hasSeries: !hasSeries }),
];

async function write(folder: string, { studies, hasSeries }: Season): Promise<void> {
  const put = async (file: string, text: string) => {
    await mkdir(path.dirname(path.join(folder, file)), { recursive: true });
    await writeFile(path.join(folder, file), text);
  };
  for (const name of ["studies", "series"])
    await rm(path.join(folder, name), { recursive: true, force: true });
  await put("gallery.yaml", writeSettings("Discs of the lagoon"));
  for (const { id, slug, former, claims, field, charge, flag, tag, state } of studies) {
    const text = writeStudy({ title: `Study ${id}`, replace: charge, change: "#f4e7a0", status: state });
    const formerly = [...new Set([...former, ...claims])].join(", ");
    const keys = `flag: ${flag}\nformerly: [${formerly}]\ntags: [${tag}]`;
    await put(`studies/${slug}/study.md`, text.replace("tags: [disc]", keys));
    await put(`studies/${slug}/original.svg`, drawFlag({ field, charge }));
  }
  const shown = studies.filter(({ state }) => state === "open").map(({ slug }) => slug);
  if (hasSeries && shown.length > 0)
    await put(
      "series/season.md",
      `---\ntitle: The season\nauthors: [Wenna Ostrow]\nstudies: [${shown.join(", ")}]\n---\nLook.\n`,
    );
}

/** Publishes all texts as the command does, without pictures and without a disk to publish to. */
async function publish(content: string, before: Site, store: Store | undefined): Promise<Site> {
  const result = await analyseGallery(content, { store });
  const site = new Map<string, string>();
  const standing = {
    paths: [...before.keys()],
    read: async (file: string) => Buffer.from(before.get(file) ?? ""),
  };
  const { addresses } = await makeTexts(
    result,
    "/",
    undefined,
    async (files) => {
      for (const file of files)
        if (/\.html$|study\.json$/.test(file.path))
          site.set(file.path, Buffer.from(await file.make()).toString());
    },
    findLastGood(standing, result.leftOut),
  );
  await keepAddresses(content, addresses);
  return site;
}

const fileAt = (address: string): string => `${address.slice(1)}index.html`;

/** Returns where a reader who comes to `address` ends, and what stands there; undefined for an address that is dead. */
function follow(site: Site, address: string): { readonly at: string; readonly html: string } | undefined {
  let at = address;
  for (let step = 0; step < 4; step += 1) {
    const html = site.get(fileAt(at));
    if (html === undefined) return undefined;
    const isWork = !html.includes('<body class="missing">');
    if (isWork || /This was withdrawn|not shown at present/.test(html) || isClaimed(html))
      return { at, html };
    const [, link] = /<h1>.*?<a href="([^"]+)"/.exec(html) ?? [];
    if (link === undefined) return undefined;
    const next = new URL(link, `https://flags.example${at}`);
    if (next.origin !== "https://flags.example") return undefined;
    at = next.pathname;
  }
  return undefined;
}

/** Whether a page leads to each of several studies that may have stood there. */
function isClaimed(html: string): boolean {
  return html.includes("More than one study says that it stood here");
}

/** Returns what is wrong with where an address of the study `owner` leads, or undefined. */
function judge(site: Site, address: string, owner: number | undefined, season: Season): string | undefined {
  const end = follow(site, address);
  if (end === undefined) return "is dead";
  if (owner === undefined) return undefined;
  const now = season.studies.find(({ id }) => id === owner);
  const isThere =
    now !== undefined &&
    (end.at.startsWith(`/studies/${now.slug}/`) ||
      (isClaimed(end.html) && end.html.includes(`/${now.slug}/"`)));
  if (now === undefined)
    return end.html.includes("This was withdrawn") ? undefined : `leads to ${end.at}, and was withdrawn`;
  // Who claims what another one had may lose an address of its own, and never gets that one.
  const isDoubted = now.claims.length > 0 && end.html.includes("This was withdrawn");
  if (now.state === "open")
    return isThere || isDoubted ? undefined : `leads to ${end.at}, and is /studies/${now.slug}/`;
  // What is not shown says so, or has its last good page; where it was renamed meanwhile nobody could know that it was it.
  return isThere || /not shown at present|This was withdrawn/.test(end.html)
    ? undefined
    : `leads to ${end.at}, and is not shown`;
}

/** Edits a gallery so many times, publishes it after each edit, and follows every address that any site before had. */
export async function runFollowed(
  room: string,
  times: number,
  seed: number,
  store?: Store,
  onEdit?: (done: number) => void,
): Promise<Tally> {
  const random = makeRandom(seed);
  const content = path.join(room, "followed");
  const owners = new Map<string, number | undefined>();
  const lost: string[] = [];
  let [season, site, followed]: [Season, Site, number] = [begin, new Map(), 0];
  for (let done = 0; done <= times; done += 1) {
    const known = [
      ...new Set([...owners.keys()].flatMap((address) => /^\/studies\/([^/]+)\/$/.exec(address)?.[1] ?? [])),
    ];
    if (done > 0) season = pick(random, edits)(season, random, known);
    await write(content, season);
    site = await publish(content, site, store);
    for (const [address, owner] of owners) {
      const wrong = judge(site, address, owner, season);
      if (wrong !== undefined) lost.push(`edit ${done}: ${address} ${wrong}`);
      followed += 1;
    }
    for (const { id, slug, state } of season.studies)
      for (const file of site.keys())
        if (state === "open" && file.startsWith(`studies/${slug}/`) && file.endsWith("/index.html"))
          owners.set(`/${file.slice(0, -"index.html".length)}`, id);
    for (const file of site.keys())
      if (/^(?:series|flags|tags|authors)\/.*index\.html$/.test(file))
        owners.set(`/${file.slice(0, -"index.html".length)}`, undefined);
    onEdit?.(done);
  }
  const note = `${owners.size} addresses, followed ${followed} times; ${season.studies.length} studies in the end`;
  return { name: "addresses after random edits", tried: times, lost, note };
}
