import { mkdir, symlink } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import {
  type Ground,
  listPieces,
  listTaken,
  readRequest,
  surveyPlace,
} from "../../../src/cli/begin/beginrequest.ts";
import { UsageError } from "../../../src/cli/command.ts";
import { defaultPalette } from "../../../src/content/gallery/palette.ts";
import { parseSeries } from "../../../src/content/series/seriesfile.ts";
import { makeFolder } from "../../content/folder.ts";

const read = (slug: string | undefined, values: Record<string, string> = { original: "a.svg" }) =>
  readRequest({ operands: slug === undefined ? [] : [slug], values, switches: new Set() }, "content");

/** What is printed for wrong use. */
async function complain(work: () => unknown): Promise<string> {
  try {
    await work();
  } catch (error) {
    if (error instanceof UsageError) return `${error.message}\n${error.hint}`;
    throw error;
  }
  return "";
}

test("what is asked for", () => {
  expect(read("ferry-wheel")).toEqual({
    slug: "ferry-wheel",
    title: "Ferry wheel",
    original: "a.svg",
    content: "content",
    isSplit: false,
    file: "study.md",
    given: expect.anything(),
  });
  expect(
    read("a", { original: "a.svg", title: " Café ", flag: " The old Café ", content: "mine" }),
  ).toMatchObject({
    title: "Café",
    flag: "The old Café",
    content: "mine",
  });
});

test.each<[string | undefined, Record<string, string>, string]>([
  [
    "Ferry Wheel",
    { original: "a.svg" },
    "“Ferry Wheel” cannot be an address: small letters a to z, digits and single hyphens only, 100 at most.\nType: counterchange begin ferry-wheel --original a.svg",
  ],
  [
    "nul",
    { original: "a.svg" },
    "“nul” is a name that Windows keeps for a device, so nothing called so can be copied to such a computer.\nType: counterchange begin nul-flag --original a.svg",
  ],
  [
    "a",
    { original: "a.svg", series: "com1" },
    "“com1” is a name that Windows keeps for a device, so nothing called so can be copied to such a computer.\nType, for example: --series com1-flag",
  ],
  [
    "../x",
    { original: "my flag.svg" },
    "“../x” cannot be an address: small letters a to z, digits and single hyphens only, 100 at most.\nType: counterchange begin x --original 'my flag.svg'",
  ],
  [
    "旗",
    { original: "a.svg", title: "The Old Light" },
    "“旗” cannot be an address: small letters a to z, digits and single hyphens only, 100 at most.\nType: counterchange begin the-old-light --original a.svg --title 'The Old Light'",
  ],
  [
    "旗",
    { original: "旗.svg" },
    "“旗” cannot be an address: small letters a to z, digits and single hyphens only, 100 at most.\nType: counterchange begin my-flag --original '旗.svg'",
  ],
  [
    undefined,
    { original: "../flags/Old Light.svg" },
    "begin needs a slug: the name of the study's folder, and of its address.\nType: counterchange begin old-light --original '../flags/Old Light.svg'",
  ],
  [
    "ferry",
    {},
    "begin needs a drawing: --original and the name of an SVG file.\nType: counterchange begin ferry --original FILE.svg",
  ],
  [
    "flags/Ferry.svg",
    {},
    "begin needs a drawing: --original and the name of an SVG file.\nType: counterchange begin ferry --original flags/Ferry.svg",
  ],
  [
    "x".repeat(81),
    { original: "a.svg" },
    `The slug has 81 characters; it may have 80.\nType: counterchange begin ${"x".repeat(40)} --original a.svg`,
  ],
  [
    "a",
    { original: "a.svg", title: "  " },
    '--title is empty.\nType, for example: --title "A lighter ferry wheel"',
  ],
  [
    "a",
    { original: "a.svg", title: "x".repeat(201) },
    '--title has 201 characters; it may have 200.\nType, for example: --title "A lighter ferry wheel"',
  ],
  [
    "a",
    { original: "a.svg", flag: "x".repeat(101) },
    '--flag has 101 characters; it may have 100.\nType, for example: --flag "The Harrowquay ferry flag"',
  ],
  [
    "A",
    { original: "a.svg", flag: "The old light" },
    "“A” cannot be an address: small letters a to z, digits and single hyphens only, 100 at most.\nType: counterchange begin a --original a.svg --flag 'The old light'",
  ],
  [
    "a",
    { original: "a.svg", title: "a\nb" },
    '--title holds a line end, or a character that is not to be seen.\nType, for example: --title "A lighter ferry wheel"',
  ],
])("wrong use: %s %j", async (slug, values, expected) => {
  expect(await complain(() => read(slug, values))).toBe(expected);
});

test("a name that is taken is not proposed", async () => {
  const root = await makeFolder({ "studies/grey-heron/study.md": "", "studies/Grey-Heron-2/study.md": "" });
  const given = {
    operands: ["Grey_Heron"],
    values: { original: "a.svg", content: root },
    switches: new Set<string>(),
  };
  const taken = await listTaken(given, "content");
  expect(await complain(() => readRequest(given, "content", taken))).toContain(
    "Type: counterchange begin grey-heron-3 --original a.svg",
  );
  expect(await listTaken({ ...given, values: { content: `${root}/nowhere` } }, "content")).toEqual([]);
});

const survey = (content: string, slug = "ferry") => surveyPlace({ ...read(slug), content });

test("what is there already", async () => {
  const root = await makeFolder({ "gallery.yaml": "", "studies/a/study.md": "" });
  expect(await survey(root)).toEqual({
    isNew: false,
    hasSchemas: false,
    schema: "../../.schemas/front-matter.schema.json",
  });
  await mkdir(join(root, ".schemas"));
  expect(await survey(root)).toMatchObject({ hasSchemas: true });
  expect(await survey(join(root, "nowhere"))).toMatchObject({ isNew: true, hasSchemas: false });
});

test("a study of that name, in whatever case, folder or not", async () => {
  const root = await makeFolder({
    "studies/ferry/study.md": "",
    "studies/ferry-2": "",
    "studies/Harbour/x": "",
  });
  expect(await complain(() => survey(root))).toBe(
    "There is a study “ferry” already, and nothing is overwritten.\nType: counterchange begin ferry-3 --original a.svg",
  );
  expect(await complain(() => survey(root, "harbour"))).toBe(
    "There is “Harbour” already, which is the same name on many computers.\nType: counterchange begin harbour-2 --original a.svg",
  );
});

test("nothing is written through a link", async () => {
  const other = await makeFolder({});
  const root = await makeFolder({});
  await symlink(other, join(root, "studies"));
  expect(await complain(() => survey(root))).toContain("nothing is written through links");
  const taken = await makeFolder({ "studies/a/study.md": "" });
  await symlink(join(other, "nowhere"), join(taken, "studies/ferry"));
  expect(await complain(() => survey(taken))).toContain("There is a study “ferry” already");
});

test("a file in place of the gallery or of its studies", async () => {
  const root = await makeFolder({ a: "", "b/studies": "" });
  expect(await complain(() => survey(join(root, "a")))).toContain("is a file; the gallery is a folder");
  expect(await complain(() => survey(join(root, "b")))).toContain("studies” is no folder of its own");
});

const text = { frontMatter: "title: x\n", prose: "Prose.\n", schema: "{}\n", hasChange: true };
const bytes = new Uint8Array([1, 2, 3]);

test("a study with all that a new gallery needs", async () => {
  const ground = { isNew: true, hasSchemas: false, schema: "x" };
  const pieces = await listPieces(read("ferry"), ground, text, bytes, defaultPalette);
  expect(pieces.map(({ path }) => path)).toEqual([
    ".schemas",
    "gallery.yaml",
    "README.md",
    join("..", ".gitignore"),
    join("studies", "ferry"),
  ]);
  const [schemas, , , , study] = pieces.map(({ content }) => content);
  expect([...(schemas as ReadonlyMap<string, Uint8Array>).keys()].sort()).toEqual([
    "front-matter.schema.json",
    "gallery.schema.json",
    "theme.schema.json",
    "words.schema.json",
  ]);
  expect([...(study as ReadonlyMap<string, unknown>)]).toEqual([
    ["study.md", "---\ntitle: x\n---\nProse.\n"],
    ["original.svg", bytes],
    [".schema.json", "{}\n"],
  ]);
});

test("a series that is there takes the study in, or is left to its author", async () => {
  const right = "---\ntitle: Six\nstudies: [a]\n---\n";
  const root = await makeFolder({ "series/six.md": right, "series/bad.md": "Words." });
  const look = (series: string) =>
    surveyPlace({ ...read("ferry", { original: "a.svg", series }), content: root });
  expect((await look("six")).series).toEqual({
    was: Buffer.from(right),
    text: right.replace("[a]", "[a, ferry]"),
  });
  expect((await look("bad")).series).toBe("left");
  expect((await look("new")).series).toBeUndefined();
});

test("a series is begun with its first study", async () => {
  const request = read("ferry", { original: "a.svg", series: "six-flags" });
  const pieces = async (series?: Ground["series"]) => {
    const ground = { isNew: false, hasSchemas: true, ...(series && { series }), schema: "x" };
    return (await listPieces(request, ground, text, bytes, defaultPalette)).map(({ path, content }) => [
      path,
      content,
    ]);
  };
  const [[path, written] = []] = await pieces();
  expect(path).toBe(join("series", "six-flags.md"));
  const { value, problems } = parseSeries("six-flags", "six-flags.md", Buffer.from(String(written)));
  expect(problems).toEqual([]);
  expect([value?.title, value?.entries]).toEqual(["Six flags", [{ study: "ferry" }]]);
  expect((await pieces("left")).map(([first]) => first)).toEqual([join("studies", "ferry")]);
  expect(await complain(() => read("ferry", { original: "a.svg", series: "Six Flags" }))).toBe(
    "“Six Flags” cannot be the name of a series: small letters a to z, digits and single hyphens only, 100 at most.\nType, for example: --series six-flags",
  );
});

test("a study alone, its keys and its prose apart", async () => {
  const ground = { isNew: false, hasSchemas: true, series: "left" as const, schema: "x" };
  const pieces = await listPieces({ ...read("ferry"), isSplit: true }, ground, text, bytes, defaultPalette);
  expect(pieces).toEqual([
    {
      path: join("studies", "ferry"),
      content: new Map<string, unknown>([
        ["study.yaml", "title: x\n"],
        ["prose.md", "Prose.\n"],
        ["original.svg", bytes],
        [".schema.json", "{}\n"],
      ]),
    },
  ]);
});
