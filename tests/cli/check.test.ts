import { expect, test, vi } from "vitest";
import { writeStudy } from "../study/fixture.ts";
import { drawing, harbour, makeFolder } from "../study/folder.ts";
import { run } from "./run.ts";
import { findFaults } from "./schema.ts";

vi.setConfig({ testTimeout: 60_000 });

test("a right content folder", async () => {
  const root = await makeFolder(
    Object.fromEntries(Object.entries(harbour).map(([path, text]) => [`content/${path}`, text])),
  );
  expect(await run(root, "check")).toEqual({
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
  const { status, data, messages } = await run(root, "check", ".");
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
  const { status, data, messages } = await run(root, "check", root, "--json");
  expect([status, messages, findFaults("check", data)]).toEqual([1, "", []]);
  const { problems } = JSON.parse(data);
  expect(problems[0]).toEqual({
    rule: "study/unknown-word",
    severity: "error",
    file: `${root}/studies/a/study.md`,
    line: 5,
    column: 9,
    reason: "“status” is “x”; it must be one of: draft, open, adopted, declined, withdrawn.",
    hint: null,
  });
  expect(problems[1]).toMatchObject({ rule: "study/unexpected-file", line: null, column: null });
  expect(problems).toHaveLength(2);
});

test("a content folder that is not there is wrong use", async () => {
  const root = await makeFolder({});
  expect(await run(root, "check", "contnet")).toEqual({
    status: 2,
    data: `\
contnet  error  There is no such content folder.  study/content-missing
    Looked for ${root}/contnet
    Name the folder that holds gallery.yaml and studies/, for example: content
`,
    messages: "1 error, 0 warnings; 0 good studies.\n",
  });
});

test("what a page will leave out of the prose is said here already", async () => {
  const prose = '::figure{edge="white / pink"}\n\n![a bell](bell.png)\n';
  const root = await makeFolder({ ...harbour, "studies/ferry/study.md": `${writeStudy()}\n${prose}` });
  const { status, data, messages } = await run(root, "check", ".");
  expect([status, messages]).toEqual([0, "0 errors, 2 warnings; 1 good study.\n"]);
  expect(data).toBe(`\
./studies/ferry/study.md:8:1  warning  The figure asks for the edge “white / pink”, and the original has no such edge.  study/figure
    ::figure{edge="white / pink"}
    ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
    Its edges are: dark red / white.

./studies/ferry/study.md:10:1  warning  An image stands in the prose; studies show no pictures but the flags.  study/image
    ![a bell](bell.png)
    ^^^^^^^^^^^^^^^^^^^
    Leave it out. Its text is shown in its place.
`);
});

test("the author's other options are asked of the drawing too", async () => {
  const options =
    'options: [{ replace: "#999999", with: white }, { replace: white, with: "#000000", only: "#hub" }]';
  const root = await makeFolder({ ...harbour, "studies/ferry/study.md": writeStudy(options) });
  const { status, data } = await run(root, "check", ".");
  expect(status).toBe(1);
  expect(data).toContain(`\
./studies/ferry/study.md:5:22  error  The drawing has no colour “#999999”.  study/colour-absent`);
  expect(data).toContain("error  “#hub” matches nothing in the drawing.  study/selects-nothing");
  expect(data.match(/ error /g)).toHaveLength(2);
});

test("a drawing instead of a content folder is wrong use, and the command that takes one is named", async () => {
  const root = await makeFolder({ "ferry.svg": drawing });
  const { status, data } = await run(root, "check", "ferry.svg");
  expect([status, data]).toEqual([
    2,
    `\
ferry.svg  error  This is a file; a content folder belongs here.  study/content-missing
    For one drawing: counterchange measure ferry.svg
`,
  ]);
});
