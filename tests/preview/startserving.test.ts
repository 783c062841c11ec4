// A gallery that is edited while it is served, in all the ways that go wrong while somebody writes.
import { cp, mkdir, readFile, rename, rm, symlink, unlink, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test, vi } from "vitest";
import { openLine } from "../../src/preview/serverpool.ts";
import { findTemplates } from "../../src/preview/templates.ts";
import { listWorkers } from "../analysis/children.ts";
import { writeStudy } from "../analysis/fixture.ts";
import { drawing, harbour, makeFolder } from "../content/folder.ts";
import { markOf, openNews, serve } from "./serving.ts";

vi.setConfig({ testTimeout: 180_000 });

const page = "/studies/ferry/";

async function open(files: Readonly<Record<string, string>> = harbour) {
  const folder = await makeFolder(files);
  const served = await serve(folder);
  const study = join(folder, "studies/ferry/study.md");
  return { folder, study, served };
}

describe("an edit is shown", () => {
  test("of the prose, the change, the drawing, a setting; and the open page is told", async () => {
    const { folder, study, served } = await open();
    const { next } = await openNews(served.address, page, markOf(await served.text(page)));
    await writeFile(study, writeStudy().replace("The wheel is dark.", "One can hardly see the wheel."));
    expect(await next()).toEqual({ event: "changed", data: "" });
    await served.says(page, "One can hardly see the wheel.");
    await writeFile(study, writeStudy('change: { replace: "#7a1020", with: "#f4c431" }'));
    await served.says(page, "#f4c431");
    await writeFile(join(folder, "studies/ferry/original.svg"), drawing.replace("#ffffff", "#fffff0"));
    await served.says(page, "#fffff0");
    await writeFile(
      join(folder, "gallery.yaml"),
      "title: Flags of the Bay\naddress: https://flags.example/\n",
    );
    await served.says(page, "Flags of the Bay");
    // What is not on the page at once comes later: the ranked options.
    await served.says(page, 'id="options"');
  });

  test("of a study that is new, renamed and gone", async () => {
    const { folder, served } = await open();
    expect((await served.get("/studies/boat/")).status).toBe(404);
    await mkdir(join(folder, "studies/boat"));
    await writeFile(join(folder, "studies/boat/original.svg"), drawing);
    await writeFile(join(folder, "studies/boat/study.md"), writeStudy("title: A new boat"));
    await served.says("/", "A new boat");
    await rename(join(folder, "studies/boat"), join(folder, "studies/ship"));
    await served.says("/studies/ship/", "A new boat");
    await vi.waitUntil(async () => (await served.get("/studies/boat/")).status === 404, { timeout: 30_000 });
    await rm(join(folder, "studies/ship"), { recursive: true });
    await vi.waitUntil(async () => !(await served.text("/")).includes("A new boat"), { timeout: 30_000 });
  });

  test("of a template, a part of one, and a style sheet; a template that is broken changes nothing", async () => {
    const folder = await makeFolder(harbour);
    const templates = join(await makeFolder({}), "templates");
    const templatesDir = await findTemplates();
    await cp(templatesDir, templates, { recursive: true });
    await writeFile(join(templates, "../package.json"), '{ "type": "module" }');
    await symlink(join(templatesDir, "../node_modules"), join(templates, "../node_modules"));
    const served = await serve(folder, { templatesDir: templates });
    const template = join(templates, "pages/study.11ty.tsx");
    const text = await readFile(template, "utf8");
    const edges = "<Edges study={study} />";
    await writeFile(template, text.replace(edges, `<p>All edges</p>${edges}`));
    await served.says(page, ">All edges<");
    const part = join(templates, "parts/edges.tsx");
    const heading = await readFile(part, "utf8");
    await writeFile(part, heading.replace('<h2 id="edges">', '<h2 id="edges">What changed: '));
    await served.says(page, ">What changed: What got better and worse<");
    await writeFile(part, heading);
    await served.says(page, ">What got better and worse<");
    await writeFile(template, text.replace("return (", "return ( <<"));
    // A file that is being written may be read while it is empty.
    const isNamed = async (): Promise<boolean | undefined> =>
      (await served.hasProblems("site/template"))[0]?.reason.includes("study.11ty.tsx");
    await vi.waitUntil(isNamed, { timeout: 30_000 });
    expect(await served.text(page)).toContain(">All edges<");
    await writeFile(template, text);
    await served.hasProblems();
    await vi.waitUntil(async () => !(await served.text(page)).includes(">All edges<"), { timeout: 30_000 });
    const { next } = await openNews(served.address, page, markOf(await served.text(page)));
    await writeFile(join(templates, "styles/base.css"), "body { --edited: 1 }\n");
    expect(await next()).toMatchObject({ event: "changed" });
    expect(await served.text("/assets/site.css")).toContain("--edited");
  });
});

describe("a problem", () => {
  test("leaves the last good study in its place, is told to the page, and is taken back when it is mended", async () => {
    const { study, served } = await open();
    const html = await served.text(page);
    const { next } = await openNews(served.address, page, markOf(html));
    await writeFile(study, writeStudy("titel: x"));
    const [problem] = await served.hasProblems("study/unknown-key");
    expect(problem?.place?.line).toBe(5);
    const event = await next();
    expect(event).toMatchObject({ event: "problems", data: { hasError: true } });
    expect(JSON.stringify(event?.data)).toContain("A study has no key “titel”");
    expect(markOf(await served.text(page))).toBe(markOf(html));
    // A page that is opened now is told at once.
    const later = await openNews(served.address, page, markOf(html));
    expect(await later.next()).toMatchObject({ event: "problems" });
    await writeFile(study, writeStudy());
    await served.hasProblems();
    expect(await next()).toMatchObject({ event: "problems", data: { text: "" } });
  });

  test("of the settings, of a drawing, and a file that is gone leave the site as it was", async () => {
    const { folder, study, served } = await open();
    const original = join(folder, "studies/ferry/original.svg");
    await writeFile(join(folder, "gallery.yaml"), "titel: x\n");
    await vi.waitUntil(() => (served.told.at(-1) ?? []).length > 0, { timeout: 30_000 });
    expect(await served.text("/")).toContain("Flags of the Sound");
    await writeFile(join(folder, "gallery.yaml"), harbour["gallery.yaml"] ?? "");
    await served.hasProblems();
    await writeFile(original, "<svg");
    await served.hasProblems("svg/not-well-formed");
    await served.says(page, "A lighter ferry wheel");
    await unlink(original);
    await served.hasProblems("study/drawing-missing");
    await served.says(page, "A lighter ferry wheel");
    await writeFile(original, drawing);
    await unlink(study);
    await served.hasProblems("study/study-missing");
    await served.says(page, "A lighter ferry wheel");
    await writeFile(study, writeStudy("title: Back again"));
    await served.says(page, "Back again");
    await served.hasProblems();
  });

  test("the content folder deleted, and there again", async () => {
    const { folder, served } = await open();
    await rm(folder, { recursive: true });
    await served.hasProblems("study/content-missing");
    expect(await served.text(page)).toContain("A lighter ferry wheel");
    await mkdir(join(folder, "studies/ferry"), { recursive: true });
    await writeFile(join(folder, "gallery.yaml"), harbour["gallery.yaml"] ?? "");
    await writeFile(join(folder, "studies/ferry/original.svg"), drawing);
    await writeFile(join(folder, "studies/ferry/study.md"), writeStudy("title: Made anew"));
    await served.says(page, "Made anew");
    await served.hasProblems();
  });
});

describe("saving", () => {
  test("as editors do: swap files, locks, backups, a fresh copy put in place", async () => {
    const { folder, study, served } = await open();
    const beside = join(folder, "studies/ferry");
    for (const name of [".study.md.swp", "study.md~", "4913", "#study.md#", "study.md___jb_tmp___"])
      await writeFile(join(beside, name), "x");
    await symlink("somebody@here.1234:1", join(beside, ".#study.md"));
    await writeFile(join(beside, ".study.md.fresh~"), writeStudy("title: Saved by renaming"));
    await rename(join(beside, ".study.md.fresh~"), study);
    await served.says(page, "Saved by renaming");
    await unlink(join(beside, "4913"));
    await writeFile(study, writeStudy("title: Saved once more"));
    await served.says(page, "Saved once more");
    expect(served.told.flat()).toEqual([]);
  });

  test("a thousand times in a row: the last is shown, and nothing is left waiting", async () => {
    const { study, served } = await open();
    for (let turn = 1; turn <= 1000; turn += 1) await writeFile(study, writeStudy(`title: Save ${turn}`));
    await served.says(page, "Save 1000");
    expect(await served.text(page)).not.toContain("Save 999");
    // Far fewer versions than saves.
    expect(served.told.length).toBeLessThan(500);
    await served.hasProblems();
  });

  test("a file that is empty for a moment is no problem", async () => {
    const { study, served } = await open();
    for (let turn = 1; turn <= 20; turn += 1) {
      await writeFile(study, "");
      await new Promise((resolve) => setTimeout(resolve, 20));
      await writeFile(study, writeStudy(`title: Half saved ${turn}`));
    }
    await served.says(page, "Half saved 20");
    await served.hasProblems();
    expect(served.told.flat().filter(({ rule }) => rule !== "study/front-matter-missing")).toEqual([]);
  });
});

test("a draft is shown only where it is asked for", async () => {
  const drafted = { ...harbour, "studies/ferry/study.md": writeStudy("status: draft") };
  const folder = await makeFolder(drafted);
  expect((await (await serve(folder)).get(page)).status).toBe(404);
  expect((await (await serve(folder, { drafts: true })).get(page)).status).toBe(200);
});

test("closing ends every child and every open page", async () => {
  const { startServing } = await import("../../src/preview/startserving.ts");
  const contentDir = await makeFolder(harbour);
  const options = {
    contentDir,
    host: "127.0.0.1",
    port: 0,
    isFixed: true,
    drafts: false,
    pool: openLine(undefined),
    onVersion: () => undefined,
  };
  const serving = await startServing(options);
  const address = `http://127.0.0.1:${serving.port}`;
  const mark = markOf(await (await fetch(address + page)).text());
  const { next } = await openNews(address, page, mark);
  await serving.close();
  expect(await next().catch(() => undefined)).toBeUndefined();
  await vi.waitFor(() => expect(listWorkers()).toEqual([]), { timeout: 10_000 });
});
