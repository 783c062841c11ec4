// A season of a society, from contributions in fifteen folders to a record: what each part does is tested beside the part.
import { readdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import { expect, test, vi } from "vitest";
import { runHere } from "../cli/run.ts";
import { makeFolder } from "../content/folder.ts";

vi.setConfig({ testTimeout: 240_000 });

const cloths = ["#15244a", "#3a2a20", "#1c6b3a", "#4a2350", "#1d4d4f", "#26302c", "#502d16", "#123c46"];
const drawFlag = (field: string, charge = "#701c2b", x = 1.5) =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"><path fill="${field}" d="M0 0h3v2H0z"/><circle cx="${x}" cy="1" r=".5" fill="${charge}"/></svg>`;

const write = (title: string, ...lines: readonly string[]) => {
  const keys = [
    `title: ${title}`,
    "authors: [Ode Marrick]",
    "date: 2026-03-02",
    "original: original.svg",
    'change: { replace: "#701c2b", with: white }',
  ];
  const keyOf = (line: string) => line.slice(0, line.indexOf(":"));
  const kept = keys.map((key) => lines.find((line) => keyOf(line) === keyOf(key)) ?? key);
  const all = [...kept, ...lines.filter((line) => !kept.includes(line))];
  return `---\n${all.filter((line) => !line.endsWith(": -")).join("\n")}\n---\nIt is seen from the pier now.\n`;
};

/** Ten that are right: of the first three each is about one flag. */
const right = ["quay", "pier", "mole", "lamp", "bell", "reed", "wrack", "sound", "holm", "ness"];
const contributions: Readonly<Record<string, string>> = {
  "gallery.yaml":
    "title: Flags of Lampholm\naddress: https://lampholm.example/\nanswer: flags@lampholm.example\n",
  ...Object.fromEntries(
    right.flatMap((slug, index) => [
      [`studies/${slug}/study.md`, write(`The ${slug}`, `flag: The ${index < 3 ? "quay" : slug} flag`)],
      [
        `studies/${slug}/original.svg`,
        drawFlag(cloths[Math.max(0, index - 2)] ?? "", "#701c2b", index < 3 ? 1.5 : 0.7 + index / 10),
      ],
    ]),
  ),
  "studies/pier/study.md": write(
    "The pier",
    "flag: The quay flag",
    'change: { replace: "#701c2b", with: gold }',
  ),
  "studies/mole/study.md": write(
    "The mole",
    "flag: The quay flag",
    'change: { replace: "#701c2b", with: "#9fc5e8" }',
  ),
  // Five as a new member would break them.
  "studies/away/study.md": write("A drawing left at home"),
  "studies/colour/study.md": write("A colour that is not there", "change: { replace: pink, with: white }"),
  "studies/colour/original.svg": drawFlag("#15244a"),
  "studies/quote/study.md": write("A mark: and no quotes"),
  "studies/quote/original.svg": drawFlag("#15244a"),
  "studies/Photo/study.md": write("A photograph"),
  "studies/Photo/original.svg":
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"><image href="photo.jpg" width="3" height="2"/></svg>',
  "studies/key/study.md": write("A word of their own", "author: Ode Marrick"),
  "studies/key/original.svg": drawFlag("#15244a"),
};

/** Every address of a page in the site. */
async function listAddresses(site: string): Promise<readonly string[]> {
  const files = await readdir(site, { recursive: true, encoding: "utf8" });
  return files
    .filter((file) => file.endsWith("index.html"))
    .map((file) => `/${file.slice(0, -"index.html".length)}`);
}

const readPage = (site: string, address: string) => readFile(path.join(site, address, "index.html"), "utf8");

/** The address to which a page leads on, at once or, where it is another thing, by a link; undefined of a page that is there. */
async function follow(site: string, address: string): Promise<string | undefined> {
  const page = await readPage(site, address);
  const [, to] = /<body class="missing">.*<main[^>]*>.*?<a href="([^"]*)"/s.exec(page) ?? [];
  return to === undefined ? undefined : new URL(to, `https://lampholm.example${address}`).pathname;
}

test("from fifteen folders to a published record", async () => {
  const root = await makeFolder(contributions);
  const site = path.join(root, "published");
  const study = (slug: string) => path.join(root, "studies", slug, "study.md");
  const edit = async (slug: string, change: (text: string) => string) =>
    writeFile(study(slug), change(await readFile(study(slug), "utf8")));

  // What is wrong is told in a reply that can be pasted, with its place and what to type.
  const checked = await runHere(root, "check", "--markdown");
  expect(checked.status).toBe(1);
  const told = [...checked.data.matchAll(/studies\/([\w]+)\/(?:study\.md|original\.svg):?(\d*)/g)].map(
    ([, slug, line]) => `${slug}:${line}`,
  );
  for (const place of ["away:5", "colour:6", "quote:2", "key:7"]) expect(told).toContain(place);
  for (const typed of [
    "“authors” is there already",
    "studies/away/original.svg",
    "#701c2b dark red",
    "Rename the folder to: photo",
  ])
    expect(checked.data).toContain(typed);

  const first = await runHere(root, "publish");
  expect([first.status, first.data + first.messages]).toEqual([1, expect.stringContaining("10 studies on")]);
  const before = await listAddresses(site);
  const rivals = await readPage(site, "/flags/the-quay-flag/");
  for (const slug of ["quay", "pier", "mole"]) expect(rivals).toContain(`studies/${slug}/`);
  expect(before.filter((address) => /^\/flags\/the-quay-flag\/\w+\/\w+\/$/.test(address))).toHaveLength(3);

  // The season: broken ones are mended, one is renamed, one repainted, one withdrawn, one decided.
  await writeFile(path.join(root, "studies/away/original.svg"), drawFlag("#26302c", "#701c2b", 0.8));
  await edit("colour", (text) => text.replace("pink", '"#701c2b"'));
  await edit("quote", (text) => text.replace("A mark: and no quotes", '"A mark: and quotes"'));
  await edit("key", (text) => text.replace("author: Ode Marrick\n", ""));
  await rename(path.join(root, "studies/Photo"), path.join(root, "studies/photo"));
  await writeFile(path.join(root, "studies/photo/original.svg"), drawFlag("#502d16", "#701c2b", 2));
  await rename(path.join(root, "studies/lamp"), path.join(root, "studies/lantern"));
  await edit("lantern", (text) => text.replace("\n---\n", "\nformerly: [lamp]\n---\n"));
  await edit("bell", (text) => text.replace("with: white", "with: gold"));
  await writeFile(path.join(root, "studies/bell/original.svg"), drawFlag("#16254b", "#701c2b", 1.1));
  await rm(path.join(root, "studies/reed"), { recursive: true });
  const decided =
    "{ date: 2026-05-02, by: the spring meeting, for: 11, against: 2, why: It is seen at dusk. }";
  await edit("pier", (text) => text.replace("\n---\n", `\nstatus: adopted\ndecided: ${decided}\n---\n`));
  const second = await runHere(root, "publish");
  expect([second.status, second.data]).toEqual([0, expect.stringContaining("lantern")]);

  // No address is dead, and each leads to what it was about.
  const after = await listAddresses(site);
  expect(before.filter((address) => !after.includes(address))).toEqual([]);
  expect(await follow(site, "/studies/lamp/")).toBe("/studies/lantern/");
  const edgesOf = (slug: string, all: readonly string[]) =>
    all.filter((address) => address.startsWith(`/studies/${slug}/edges/`));
  for (const edge of [...edgesOf("lamp", before), ...edgesOf("bell", before)]) {
    const to = await follow(site, edge);
    expect(to?.replace("lantern", "lamp").split("/").slice(0, 4)).toEqual(edge.split("/").slice(0, 4));
    expect([edge, (await follow(site, to ?? "")) ?? "a page"]).toEqual([edge, "a page"]);
  }
  expect(await readPage(site, "/studies/reed/")).toContain("withdrawn");
  expect(await readFile(path.join(root, "addresses.txt"), "utf8")).toMatch(/^\/studies\/reed\/ withdrawn/m);

  // The record of what was decided.
  expect(await readPage(site, "/decisions/")).toMatch(/11[^<]*2/);
  expect(await readFile(path.join(site, "decisions.xml"), "utf8")).toContain(
    "https://lampholm.example/studies/pier/",
  );
  expect(after).toContain("/studies/pier/maker/");
  expect(await readPage(site, "/flags/the-quay-flag/")).toMatch(/adopted/i);
});
