import { execFile } from "node:child_process";
import { readdir, readFile, rm, symlink, writeFile } from "node:fs/promises";
import path from "node:path";
import { promisify } from "node:util";
import { expect, test, vi } from "vitest";
import { openStore } from "../../src/analysis/store/resultstore.ts";
import { findHome } from "../../src/analysis/store/signature.ts";
import { buildSite } from "../../src/publish/buildsite.ts";
import { makeFolder } from "../content/folder.ts";
import { flag } from "../package/consumer.ts";

vi.setConfig({ testTimeout: 240_000 });

const home = path.join(import.meta.dirname, "../..");
const plugin = path.join(home, "dist/src/publish/eleventyplugin.js");
const study = `---
title: A paler lamp & <more>
flag: The Lampholm light
authors: [Ode Marrick]
date: 2026-04-02
original: original.svg
change: { replace: "#701c2b", with: white }
status: open
---
The lamp is seen from the pier now.
`;

/** A site of somebody's own, with a layout and a page, and a gallery in it. */
const site = (options: string) => ({
  "package.json": '{ "type": "module" }',
  "eleventy.config.js": `import counterchange from ${JSON.stringify(plugin)};
export default (config) => {
  config.addPlugin(counterchange, { content: "gallery", ${options} });
};`,
  "_includes/base.njk":
    "<!doctype html><title>{{ title | safe }}</title>{{ counterchangePage.head | safe }}<h1>Our club</h1>{{ content | safe }}",
  "notes/first.md": `---
layout: base.njk
title: First
---
::flag{lamp}

::flag{lamp edge 15244a-701c2b}

::flag{lamp ruler}

::flag{broken}

{% flag "lamp", "ruler" %}{% flag "lamp", "edge", "15244a-701c2b" %}{% flag "lamp" %} {{ counterchange.studies[0].verdict }} of {{ collections.counterchange.length }} pages
`,
  "all.njk": `---
layout: base.njk
title: All flags
---
{% for flag in counterchange.survey %}<a href="{{ flag.page | url }}" title="{{ flag.file }}"><img src="{{ flag.drawing | url }}" alt="{{ flag.name }}"></a> {{ flag.clarity | round }} %
{% endfor %}
{% for series in counterchange.series %}<b>{{ series.title }}</b>{% endfor %}
{% for study in counterchange.studies %}<i>{{ study.title }}</i>{% endfor %}
`,
  "gallery/series/six.md": "---\ntitle: Six lamps\nstudies: [lamp]\n---\nLook.\n",
  "gallery/flags/old-quay.svg": flag.replace("#701c2b", "#ffffff"),
  "gallery/gallery.yaml": "title: Flags of Lampholm\naddress: https://lampholm.example/club/flags/\n",
  "gallery/studies/lamp/study.md": study,
  "gallery/studies/lamp/original.svg": flag,
  "gallery/studies/broken/study.md": study.replace("replace:", "replaced:"),
});

/** Runs Eleventy's own command. Returns what it said, and its status. */
async function runEleventy(folder: string, ...words: string[]): Promise<{ status: number; said: string }> {
  const command = path.join(home, "node_modules/@11ty/eleventy/cmd.cjs");
  const run = promisify(execFile)(process.execPath, [command, "--quiet", ...words], { cwd: folder });
  return run.then(
    ({ stdout, stderr }) => ({ status: 0, said: stdout + stderr }),
    ({ code, stdout, stderr }) => ({ status: code, said: stdout + stderr }),
  );
}

const list = async (folder: string) =>
  (await readdir(folder, { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile() && !entry.name.startsWith("."))
    .map(({ parentPath, name }) => path.relative(folder, path.join(parentPath, name)))
    .sort();

test("in a layout of the site, under a path of the host", async () => {
  const folder = await makeFolder(site('at: "/flags/", layout: "base.njk"'));
  const { status, said } = await runEleventy(folder, "--pathprefix=/club/");
  // A broken study is told with its place, and costs nobody else.
  expect(status).toBe(1);
  expect(said).toContain("gallery/studies/broken/study.md:7:");
  expect(said).toContain("flag: the study “broken” is not shown, and its figure is left out.");
  const written = await list(path.join(folder, "_site"));
  // Eleventy never reads what contributors write.
  expect(written.filter((file) => /broken|^gallery|^studies/.test(file))).toEqual([]);
  const read = (file: string) => readFile(path.join(folder, "_site", file), "utf8");
  const page = await read("flags/studies/lamp/index.html");
  expect(page).toMatch(/^<!doctype html><title>The Lampholm light: A paler lamp &amp; &lt;more>/);
  expect(page.match(/<h1/g)).toHaveLength(2);
  expect(page).toContain("The lamp is seen from the pier now.");
  expect(page).toContain('@import url("../../assets/site.css") layer(counterchange);');
  expect(await read("flags/studies/lamp/show/index.html")).not.toContain("Our club");
  expect(await read("flags/404.html")).toContain('href="/club/flags/"');
  // Shortcode, Markdown line, data and collection on a page of the site.
  const note = await read("notes/first/index.html");
  const from = "../../flags/studies/lamp/";
  const shown = [...note.matchAll(/<img src="([^"]*)"/g)].map(([, src = ""]) => src);
  const pair = [`${from}original.svg`, `${from}redesign.svg`];
  const edge = pair.map((file) => file.replace("lamp/", "lamp/edges/15244a-701c2b/"));
  const ruler = `${from}ruler.svg`;
  expect(shown).toEqual([...pair, ...edge, ruler, ruler, ...edge, ...pair]);
  for (const src of shown) expect(written).toContain(path.join("notes/first", src));
  // The study offers no downloads, and the ruler is there all the same: a drawing of its own, with nothing to take away.
  expect(written.filter((file) => file.includes("stills/"))).toEqual([]);
  const drawn = await read("flags/studies/lamp/ruler.svg");
  expect(drawn).toMatch(/^<svg [^>]*><title>[^<]*The Lampholm light: A paler lamp &amp; &lt;more/);
  expect(drawn).not.toMatch(/<a |href=/);
  expect(note.match(/counterchange-ruler.*?<\/figure>/)?.[0]).not.toContain("download");
  // What templates of the site find, at the addresses of the host.
  const all = await read("all/index.html");
  const found = [
    ...all.matchAll(/<a href="([^"]*)" title="([^"]*)"><img src="([^"]*)" alt="([^"]*)"><\/a> (\d+) %/g),
  ];
  expect(found.map(([, ...words]) => words.slice(0, 4))).toEqual([
    [
      "/club/flags/studies/lamp/",
      "studies/lamp/original.svg",
      "/club/flags/studies/lamp/original.svg",
      "The Lampholm light",
    ],
    [
      "/club/flags/survey/#flag-flags-old-quay",
      "flags/old-quay.svg",
      "/club/flags/survey/flags/old-quay.svg",
      "Old quay",
    ],
  ]);
  // By the formula of contrast, worked out apart: 6.32 is 14 % of 45; white is clear on that blue.
  expect(found.map(([, , , , , clarity]) => Number(clarity))).toEqual([14, 100]);
  for (const [, , , src = ""] of found) expect(written).toContain(src.replace("/club/", ""));
  expect(await read("flags/survey/index.html")).toContain('id="flag-flags-old-quay"');
  expect([...all.matchAll(/<([bi])>([^<]*)</g)].map(([, tag, text]) => [tag, text])).toEqual([
    ["b", "Six lamps"],
    ["i", "A paler lamp &amp; &lt;more&gt;"],
  ]);
  const pages = written.filter((file) => file.startsWith("flags/") && file.endsWith(".html"));
  expect(note).toContain(`clearer of ${pages.length} pages`);
});

// What a contributor leaves in the gallery runs nowhere, whatever the folder is called and however it is named.
test.each<[string, string, (folder: string) => string]>([
  ["a whole path", "gallery", (folder) => path.join(folder, "gallery")],
  ["signs of a pattern", "!flags (old) [1]{a,b}*", () => "!flags (old) [1]{a,b}*"],
  ["a way round", "gallery", () => "./_includes/../gallery/"],
  ["a link", "gallery", () => "linked"],
])("nothing in a gallery is a template: %s", async (_, name, nameContent) => {
  const entries = Object.entries(site(""));
  const moved = entries.map(([file, text]) => [file.replace(/^gallery/, name), text]);
  const folder = await makeFolder({
    ...Object.fromEntries(moved),
    "all.njk": "all",
    [`${name}/studies/lamp/x.11ty.js`]: "throw new Error('it ran')",
    [`${name}/studies/lamp/lamp.11tydata.js`]: "throw new Error('it ran')",
  });
  const content = JSON.stringify(nameContent(folder));
  const config = `import counterchange from ${JSON.stringify(plugin)};
export default (config) => config.addPlugin(counterchange, { content: ${content} });`;
  await writeFile(path.join(folder, "eleventy.config.js"), config);
  await rm(path.join(folder, "notes"), { recursive: true });
  if (content === '"linked"') await symlink("gallery", path.join(folder, "linked"));
  const { said } = await runEleventy(folder);
  expect(said).toContain("x.11ty.js” does not belong in a study's folder");
  expect(said).not.toContain("it ran");
  const written = await list(path.join(folder, "_site"));
  expect(written).toContain(path.join("all", "index.html"));
  expect(written.filter((file) => !/^(?:all|flags)\b/.test(file))).toEqual([]);
});

test.each(["/../x/", "/a/../../b/", "/./"])("the gallery stays in the site: %s", async (at) => {
  const { status, said } = await runEleventy(await makeFolder(site(`at: "${at}"`)));
  expect(status).toBe(1);
  expect(said).toContain(`at is “${at}”`);
});

test("at the top and without a layout every file has the bytes that publish writes", async () => {
  const { "notes/first.md": _, "all.njk": __, ...alone } = site('at: "/"');
  const folder = await makeFolder(alone);
  await runEleventy(folder);
  const published = path.join(folder, "published");
  const store = await openStore({
    folder: path.join(folder, ".cache/counterchange"),
    secretFile: path.join(findHome(), "key"),
  });
  await buildSite(path.join(folder, "gallery"), published, { base: "/", store });
  await store?.close();
  const names = await list(published);
  expect(await list(path.join(folder, "_site"))).toEqual(names);
  for (const name of names)
    expect([name, await readFile(path.join(folder, "_site", name))]).toEqual([
      name,
      await readFile(path.join(published, name)),
    ]);
});
