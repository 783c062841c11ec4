import { join } from "node:path";
import { expect, test, vi } from "vitest";
import { describeFile, formatManifest, manifestName } from "../../src/publish/folder/manifest.ts";
import { writeStudy } from "../analysis/fixture.ts";
import { drawing, harbour, makeFolder, settings } from "../content/folder.ts";
import { runHere, runShell } from "./run.ts";
import { findFaults } from "./schema.ts";

vi.setConfig({ testTimeout: 60_000 });

test("a right content folder", async () => {
  const root = await makeFolder(
    Object.fromEntries(Object.entries(harbour).map(([path, text]) => [`content/${path}`, text])),
  );
  expect(await runHere(root, "check")).toEqual({
    status: 0,
    data: "",
    messages: "0 errors, 0 warnings; 1 good study.\n",
  });
});

test("every problem of every study at once, drafts included", async () => {
  const root = await makeFolder({
    ...harbour,
    "studies/a/study.md": writeStudy("titel: x", "date: x"),
    "studies/a/original.svg": drawing,
    "studies/b/study.md": writeStudy("status: draft", 'change: { replace: "#123456", with: white }'),
    "studies/b/original.svg": drawing,
  });
  const { status, data, messages } = await runHere(root, "check", ".");
  expect(status).toBe(1);
  expect(data.match(/^\S+ {2}error {2}/gm)).toEqual([
    "./studies/a/study.md:5:1  error  ",
    "./studies/a/study.md:6:7  error  ",
    "./studies/b/study.md:4:20  error  ",
  ]);
  expect(messages).toBe("3 errors, 0 warnings; 1 good study.\n");
});

test("JSON fits the schema; what has no place has null", async () => {
  const root = await makeFolder({
    ...harbour,
    "studies/ferry/notes.txt": "x",
    "studies/a/study.md": writeStudy("status: x"),
  });
  const { status, data, messages } = await runHere(root, "check", root, "--json");
  expect([status, messages, findFaults("check", data)]).toEqual([1, "", []]);
  expect(JSON.parse(data).schemaVersion).toBe(1);
  expect(findFaults("check", '{ "problems": [] }')).toHaveLength(1);
  const { problems } = JSON.parse(data);
  expect(problems[0]).toEqual({
    rule: "study/unknown-word",
    severity: "error",
    file: `${root}/studies/a/study.md`,
    line: 5,
    column: 9,
    reason: "“status” is “x”; it must be one of: draft, open, adopted, declined, withdrawn.",
    hint: "Type one of them, for example: status: open",
  });
  expect(problems[1]).toMatchObject({ rule: "study/unexpected-file", line: null, column: null });
  expect(problems).toHaveLength(2);
});

test("a content folder that is not there is wrong use", async () => {
  const root = await makeFolder({});
  expect(await runHere(root, "check", "contnet")).toEqual({
    status: 2,
    data: `\
contnet  error  There is no such content folder.  study/content-missing
    Looked for ${root}/contnet
    Name the folder that holds gallery.yaml and studies/; or begin one: npm run -s cli -- begin SLUG --original FILE.svg
`,
    messages: "1 error, 0 warnings; 0 good studies.\n",
  });
});

test("what a page will leave out of the prose is said here already", async () => {
  const prose = '::figure{edge="white / pink"}\n\n![a bell](bell.png)\n';
  const root = await makeFolder({ ...harbour, "studies/ferry/study.md": `${writeStudy()}\n${prose}` });
  const { status, data, messages } = await runHere(root, "check", ".");
  expect([status, messages]).toEqual([0, "0 errors, 2 warnings; 1 good study.\n"]);
  expect(data).toBe(`\
./studies/ferry/study.md:8:1  warning  The figure asks for the edge “white / pink”, and the original has no such edge.  study/figure
    ::figure{edge="white / pink"}
    ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
    Its edges are: dark red / white.

./studies/ferry/study.md:10:1  warning  A picture stands in the prose; a study shows no pictures but the flags.  study/image
    ![a bell](bell.png)
    ^^^^^^^^^^^^^^^^^^^
    Leave it out; until then its text stands in its place.
`);
});

test("the author's other options are asked of the drawing too", async () => {
  const options =
    'options: [{ replace: "#999999", with: white }, { replace: white, with: "#000000", only: "#hub" }]';
  const root = await makeFolder({ ...harbour, "studies/ferry/study.md": writeStudy(options) });
  const { status, data } = await runHere(root, "check", ".");
  expect(status).toBe(1);
  expect(data).toContain(`\
./studies/ferry/study.md:5:22  error  The drawing has no colour “#999999”.  study/colour-absent`);
  expect(data).toContain("error  “#hub” matches nothing in the drawing.  study/selects-nothing");
  expect(data.match(/ error /g)).toHaveLength(2);
});

test("a drawing instead of a content folder is wrong use, and the command that takes one is named", async () => {
  const root = await makeFolder({ "ferry.svg": drawing });
  const { status, data } = await runHere(root, "check", "ferry.svg");
  expect([status, data]).toEqual([
    2,
    `\
ferry.svg  error  This is a file; a content folder belongs here.  study/content-missing
    For one drawing: npm run -s cli -- measure ferry.svg
`,
  ]);
});

const warned = {
  ...harbour,
  "studies/ferry/study.md": `${writeStudy()}\n![a bell](bell.png)\n`,
};

test("--strict: a warning fails", async () => {
  const root = await makeFolder(warned);
  expect((await runHere(root, "check")).status).toBe(0);
  const strict = await runHere(root, "check", "--strict");
  expect([strict.status, strict.messages]).toEqual([1, "0 errors, 1 warning; 1 good study.\n"]);
  expect((await runHere(await makeFolder(harbour), "check", "--strict")).status).toBe(0);
});

test("--markdown: a reply to paste, with what a stranger wrote as mere text", async () => {
  const root = await makeFolder({ ...harbour, "studies/ferry/study.md": writeStudy('"@ines|![x](//x)": 1') });
  const { status, data, messages } = await runHere(root, "check", "--markdown");
  expect([status, messages]).toEqual([1, ""]);
  const rule = "[`study/unknown-key`](https://flags.example/rules/#study-unknown-key) 1 error";
  expect(data.split("\n")).toEqual([
    "**1 error, 0 warnings; 0 studies; 1 cannot be built.**",
    "",
    "- `ferry` cannot be built until its errors are mended.",
    "",
    "| Rule | Where | What is wrong | What to type |",
    "| --- | --- | --- | --- |",
    expect.stringMatching(/ \| A study has no key “`@ines\\\|!\[x\]\(\/\/x\)`”\. \| `.*` \|$/),
    "",
  ]);
  expect(data).toContain(`\n| ${rule} | \`studies/ferry/study.md:5:1\` | `);
  const both = await runHere(root, "check", "--markdown", "--json");
  expect([both.status, both.data]).toEqual([2, ""]);
});

test("--markdown: a study that is new; links lead to the site that stands, and nowhere where its address is another", async () => {
  const site = (name: string, address: string) => {
    const file = JSON.stringify({ title: "Flags of the Sound", address });
    const manifest = formatManifest([describeFile("studies.json", file)]);
    return { [`${name}/studies.json`]: file, [`${name}/${manifestName}`]: manifest };
  };
  const root = await makeFolder({
    ...Object.fromEntries(Object.entries(harbour).map(([path, text]) => [`content/${path}`, text])),
    ...site("published", "https://flags.example/"),
    ...site("other", "https://other.example/"),
  });
  const reply = async (...words: readonly string[]) =>
    (await runHere(root, "check", "--markdown", ...words)).data.trimEnd().split("\n");
  const lines = await reply();
  expect(lines.slice(0, 4)).toEqual([
    "**0 errors, 0 warnings; 1 study changed against the site that stands.**",
    "",
    "- **`ferry`: Less clear.** Is new.",
    expect.stringMatching(/^ {2}- Marks: clarity \d+ % → \d+ %; of what has to be seen /),
  ]);
  expect(lines.filter((line) => line.includes("[page](https://flags.example/studies/ferry/)"))).toHaveLength(
    1,
  );
  expect(lines.at(-1)).toBe("No problem was found.");
  expect(await reply("--against", "other")).toEqual(lines.filter((line) => !line.includes("](")));
});

test("on GitHub Actions: the report, which steers nothing, and an annotation for each problem", async () => {
  const root = await makeFolder({
    "flags/gallery.yaml": settings,
    "flags/studies/ferry/study.md": `${writeStudy()}\n::add-mask::x ![](y)\n`,
    "flags/studies/gull/study.md": writeStudy("titel: x"),
    "flags/studies/gull/original.svg": drawing,
    "flags/studies/ferry/original.svg": drawing,
  });
  const line = `GITHUB_ACTIONS=true GITHUB_WORKSPACE="${root}" counterchange check`;
  const { status, data } = await runShell(join(root, "flags"), line);
  expect(status).toBe(1);
  const lines = data.trimEnd().split("\n");
  const [, token = ""] = /^::stop-commands::([\w-]{20,})$/.exec(lines[0] ?? "") ?? [];
  expect(token).not.toBe("");
  const end = lines.indexOf(`::${token}::`);
  expect(end).toBeGreaterThan(0);
  expect(lines.slice(1, end).join("\n")).toContain("./studies/gull/study.md:5:1  error  ");
  const annotations = lines.slice(end + 1);
  expect(annotations).toHaveLength(2);
  expect(lines.slice(1, end)).toContain("    ::add-mask::x ![](y)");
  expect(annotations[1]).toMatch(
    /^::error file=flags\/studies\/gull\/study\.md,line=5,col=1,endColumn=5,title=study\/unknown-key::/,
  );
  // JSON is for programs: nothing is added to it.
  const json = await runShell(join(root, "flags"), `${line} --json`);
  expect(JSON.parse(json.data).problems).toHaveLength(2);
});

test("without a folder named: the current one where it is a gallery, else content", async () => {
  const root = await makeFolder(harbour);
  expect((await runHere(root, "check")).messages).toBe("0 errors, 0 warnings; 1 good study.\n");
  const { status, data } = await runHere(await makeFolder({}), "check");
  expect([status, data.split("\n")[0]]).toEqual([
    2,
    "content  error  There is no such content folder.  study/content-missing",
  ]);
});
