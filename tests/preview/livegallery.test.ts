// What is shown when, while a gallery is edited. The work is done in this process, one job after another.
import { rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, onTestFinished, test, vi } from "vitest";
import { LiveGallery, type Shown } from "../../src/preview/livegallery.ts";
import { writeStudy } from "../analysis/fixture.ts";
import { here } from "../analysis/here.ts";
import { drawing, harbour, makeFolder } from "../content/folder.ts";

vi.setConfig({ testTimeout: 60_000 });

const three: Readonly<Record<string, string>> = {
  ...harbour,
  "studies/boat/study.md": writeStudy("title: Boat"),
  "studies/boat/original.svg": drawing,
  "studies/anchor/study.md": writeStudy("title: Anchor"),
  "studies/anchor/original.svg": drawing,
};

async function open(files: Readonly<Record<string, string>>, first?: string) {
  const folder = await makeFolder(files);
  const shown: Shown[] = [];
  const gallery = new LiveGallery({
    contentDir: folder,
    line: here,
    first: () => first,
    onShow: (one) => shown.push(one),
  });
  onTestFinished(() => gallery.close());
  const settle = async (): Promise<readonly Shown[]> => {
    const before = shown.length;
    gallery.refresh();
    await vi.waitUntil(() => shown.slice(before).some(({ isEarly }) => !isEarly), { timeout: 30_000 });
    return shown.slice(before);
  };
  return { folder, gallery, shown, settle };
}

const slugsOf = ({ result }: Shown): readonly string[] => result.studies.map(({ study }) => study.slug);
const errorsOf = ({ problems }: Shown): readonly string[] =>
  problems.filter(({ severity }) => severity === "error").map(({ rule }) => rule);
const titleOf = ({ result }: Shown, slug: string): string | undefined =>
  result.studies.find(({ study }) => study.slug === slug)?.study.title;

test("the study that somebody looks at is shown first, then all, then all with their options", async () => {
  const { settle } = await open(three, "ferry");
  const shown = await settle();
  expect(shown.map((one) => [one.isEarly, one.isWhole, slugsOf(one).length])).toEqual([
    [true, false, 1],
    [true, true, 3],
    [false, true, 3],
  ]);
  expect(slugsOf(shown[0] as Shown)).toEqual(["ferry"]);
  expect(shown[1]?.result.studies.some(({ ranking }) => ranking !== undefined)).toBe(false);
  expect(shown[2]?.result.studies.every(({ ranking }) => ranking !== undefined)).toBe(true);
});

test("options of a study whose figures are the same stay while it is shown early", async () => {
  const { folder, settle } = await open(three, "ferry");
  await settle();
  await writeFile(join(folder, "studies/ferry/study.md"), writeStudy("title: Another title"));
  const [early] = await settle();
  expect(early?.isEarly).toBe(true);
  const ferry = early?.result.studies.find(({ study }) => study.slug === "ferry");
  expect([ferry?.study.title, ferry?.ranking === undefined]).toEqual(["Another title", false]);
  await writeFile(
    join(folder, "studies/ferry/study.md"),
    writeStudy('change: { replace: "#7a1020", with: "#f4c431" }'),
  );
  const [changed] = await settle();
  const again = changed?.result.studies.find(({ study }) => study.slug === "ferry");
  expect([again?.change.with, again?.ranking]).toEqual(["#f4c431", undefined]);
});

test("settings that cannot be read change nothing, not for a moment; a study or a page with an error is as it was", async () => {
  const page = "---\ntitle: Who we are\n---\n";
  const { folder, settle } = await open({ ...three, "pages/a.md": page, "pages/b.md": page }, "ferry");
  await settle();
  await writeFile(join(folder, "gallery.yaml"), "title: [\n");
  await writeFile(join(folder, "studies/ferry/study.md"), writeStudy("title: Meanwhile"));
  const shown = await settle();
  expect(shown).toHaveLength(1);
  expect(shown[0]?.result.gallery.title).toBe("Flags of the Sound");
  expect(shown[0]?.problems.map(({ severity }) => severity)).toContain("error");
  await writeFile(join(folder, "gallery.yaml"), three["gallery.yaml"] ?? "");
  await writeFile(join(folder, "studies/ferry/study.md"), "");
  await writeFile(join(folder, "pages/a.md"), "---\ntitel: We\n---\n");
  await rm(join(folder, "pages/b.md"));
  const last = (await settle()).at(-1) as Shown;
  expect(titleOf(last, "ferry")).toBe("A lighter ferry wheel");
  expect(last.result.pages?.map(({ path }) => path)).toEqual(["a"]);
  expect(errorsOf(last)).toEqual(["study/unknown-key", "study/front-matter-missing"]);
});

test("a logo stays while it is half written and while the next one is judged, and goes with its file", async () => {
  const { folder, settle } = await open({ ...three, "logo.svg": drawing }, "ferry");
  const logoOf = (one: Shown | undefined) =>
    /#[0-9a-f]{6}/.exec(one?.result.gallery.logo?.drawing ?? "")?.[0];
  const logos = async () => {
    const shown = await settle();
    return [logoOf(shown[0]), logoOf(shown.at(-1)), errorsOf(shown.at(-1) as Shown)];
  };
  expect(await logos()).toEqual([undefined, "#7a1020", []]);
  await writeFile(join(folder, "logo.svg"), "<svg");
  expect(await logos()).toEqual(["#7a1020", "#7a1020", ["svg/not-well-formed"]]);
  await writeFile(join(folder, "logo.svg"), drawing.replace("#7a1020", "#123456"));
  expect(await logos()).toEqual(["#7a1020", "#123456", []]);
  await rm(join(folder, "logo.svg"));
  expect(await logos()).toEqual(["#123456", undefined, []]);
});

test("a theme that is half written changes nothing", async () => {
  const { folder, settle } = await open({ ...harbour, "theme.yaml": "mat: 55\n" }, "ferry");
  const theme = async () => (await settle()).at(-1)?.result.gallery.theme;
  expect(await theme()).toEqual({ mat: 55 });
  await writeFile(join(folder, "theme.yaml"), "mat: 5\n");
  expect(await theme()).toEqual({ mat: 55 });
  await writeFile(join(folder, "theme.yaml"), "mat: 56\n");
  expect(await theme()).toEqual({ mat: 56 });
  await rm(join(folder, "theme.yaml"));
  expect(await theme()).toBeUndefined();
});

test("a drawing that a page shows stays while it is half written, and goes with its file", async () => {
  const page = '---\ntitle: Who we are\n---\n::figure{drawing="a.svg"}\n';
  const { folder, settle } = await open({ ...harbour, "pages/a.md": page, "pages/a.svg": drawing }, "ferry");
  const shown = async () => [...((await settle()).at(-1)?.result.drawings?.keys() ?? [])];
  expect(await shown()).toEqual(["pages/a.svg"]);
  await writeFile(join(folder, "pages/a.svg"), "<svg");
  expect(await shown()).toEqual(["pages/a.svg"]);
  await rm(join(folder, "pages/a.svg"));
  expect(await shown()).toEqual([]);
});

test("a folder that never had settings is shown with the usual ones, and edits of it too", async () => {
  const { "gallery.yaml": _, ...bare } = three;
  const { folder, settle } = await open(bare, "ferry");
  const first = (await settle()).at(-1) as Shown;
  expect(first.problems[0]?.rule).toBe("study/gallery-missing");
  await writeFile(join(folder, "studies/ferry/study.md"), writeStudy("title: Edited"));
  expect(titleOf((await settle()).at(-1) as Shown, "ferry")).toBe("Edited");
});

test("changes that follow each other are one; what was begun before is given up", async () => {
  const { folder, gallery, shown } = await open(three, "ferry");
  for (let turn = 1; turn <= 30; turn += 1) {
    await writeFile(join(folder, "studies/ferry/study.md"), writeStudy(`title: Turn ${turn}`));
    gallery.touch();
  }
  await vi.waitUntil(() => shown.some((one) => !one.isEarly && titleOf(one, "ferry") === "Turn 30"), {
    timeout: 30_000,
  });
  expect(shown.filter(({ isEarly }) => !isEarly).length).toBeLessThan(15);
});
