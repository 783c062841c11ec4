import { expect, test } from "vitest";
import { checkStudyFiles, checkStudyFolders, type Entry } from "../../../src/content/folder/listing.ts";
import { formatProblems } from "../../../src/problem/problemtext.ts";

const file = (name: string): Entry => ({ name, kind: "file" });
const folder = (name: string): Entry => ({ name, kind: "folder" });
const studies = (...entries: Entry[]) => formatProblems(checkStudyFolders("studies", entries).problems);
const study = (...entries: Entry[]) => formatProblems(checkStudyFiles("ferry", entries));

test("good folders, sorted; what an operating system leaves behind does not count", () => {
  expect(checkStudyFolders("studies", [folder("b"), file(".DS_Store"), folder("a-2")])).toEqual({
    slugs: ["a-2", "b"],
    problems: [],
  });
});

test("what Windows keeps for a device is no study, and no drawing", () => {
  expect(checkStudyFolders("studies", [folder("aux"), folder("Con"), folder("ferry")])).toMatchObject({
    slugs: ["ferry"],
    problems: [
      {
        rule: "study/slug",
        severity: "error",
        file: "studies/Con",
        hint: expect.stringMatching(/con-flag$/),
      },
      {
        rule: "study/slug",
        severity: "error",
        file: "studies/aux",
        hint: expect.stringMatching(/aux-flag$/),
      },
    ],
  });
  expect(study(file("study.md"), file("nul.svg"))).toBe(`\
ferry/nul.svg  error  “nul.svg” is a name that Windows keeps for a device, so nothing called so can be copied to such a computer.  study/drawing-name
    Rename it, for example: nul-flag.svg`);
});

test.each<[string, Entry[], string]>([
  [
    "a space, a capital, an accent",
    [folder("Café du Port")],
    `\
studies/Café du Port  error  The folder “Café du Port” cannot be an address: small letters, digits and single hyphens only, 100 at most.  study/slug
    Rename the folder to: cafe-du-port`,
  ],
  [
    "a name whose slug is taken",
    [folder("ferry wheel"), folder("ferry-wheel")],
    `\
studies/ferry wheel  error  The folder “ferry wheel” cannot be an address: small letters, digits and single hyphens only, 100 at most.  study/slug
    Rename the folder, for example: lighter-ferry-wheel`,
  ],
  [
    "two names that differ in capitals only: the one that is fit for an address stays",
    [folder("ferry"), folder("Ferry")],
    `\
studies/Ferry  error  On many computers “Ferry” is the same name as “ferry”, which is here too.  study/same-name
    Rename or remove “Ferry”; until then it is left out.`,
  ],
  [
    "two spellings of one accent",
    [folder("cafe\u0301"), folder("caf\u00e9")],
    `\
studies/cafe\u0301  error  On many computers “cafe\u0301” is the same name as “caf\u00e9”, which is here too.  study/same-name
    Rename or remove all but one of them; until then none of them is published.

studies/caf\u00e9  error  On many computers “caf\u00e9” is the same name as “cafe\u0301”, which is here too.  study/same-name
    Rename or remove all but one of them; until then none of them is published.`,
  ],
  [
    "a link",
    [{ name: "ferry", kind: "link" }],
    `\
studies/ferry  error  This is a symbolic link, and links are not followed.  study/link
    Put the file or folder itself in its place.`,
  ],
  [
    "a study without a folder",
    [file("Ferry wheel.md")],
    `\
studies/Ferry wheel.md  error  A file lies where only the folders of studies belong.  study/unexpected-file
    Every study has a folder of its own: studies/ferry-wheel/study.md with its drawing beside it.`,
  ],
  [
    "another file",
    [file("notes.txt")],
    `\
studies/notes.txt  error  A file lies where only the folders of studies belong.  study/unexpected-file
    Remove it; this folder holds a folder for each study and nothing else.`,
  ],
])("in studies: %s", (_, entries, report) => {
  expect(studies(...entries)).toBe(report);
});

test("study.md and drawings are what belongs in a study's folder", () => {
  expect(study(file("study.md"), file("original.svg"), file("wheel-2.svg"))).toBe("");
});

test.each<[string, Entry[], string]>([
  [
    "a template",
    [file("study.md"), file("page.njk")],
    `\
ferry/page.njk  error  “page.njk” does not belong in a study's folder.  study/unexpected-file
    Remove it; a study's folder holds study.md and SVG drawings, nothing else.`,
  ],
  [
    "a mistyped study.md",
    [file("Study.MD")],
    `\
ferry/Study.MD  error  “Study.MD” is not read: the file of a study is called study.md.  study/study-name
    Rename it to: study.md`,
  ],
  [
    "a drawing with a space and a capital",
    [file("study.md"), file("Ferry Wheel.SVG")],
    `\
ferry/Ferry Wheel.SVG  error  “Ferry Wheel.SVG” is no file name for a drawing: small letters, digits and hyphens only.  study/drawing-name
    Rename the file to: ferry-wheel.svg`,
  ],
  [
    "a drawing whose accent is a character of its own",
    [file("cafe\u0301.svg")],
    `\
ferry/cafe\u0301.svg  error  “cafe\u0301.svg” is no file name for a drawing: small letters, digits and hyphens only.  study/drawing-name
    Rename the file to: cafe.svg`,
  ],
  [
    "two drawings that differ in capitals only",
    [file("Flag.svg"), file("flag.svg")],
    `\
ferry/Flag.svg  error  On many computers “Flag.svg” is the same name as “flag.svg”, which is here too.  study/same-name
    Rename or remove “Flag.svg”; until then the study is left out.

ferry/flag.svg  error  On many computers “flag.svg” is the same name as “Flag.svg”, which is here too.  study/same-name
    Rename or remove “Flag.svg”; until then the study is left out.`,
  ],
  [
    "two drawings whose letters are of two forms",
    [file("caf\u00e9.svg"), file("cafe\u0301.svg")],
    `\
ferry/cafe\u0301.svg  error  On many computers “cafe\u0301.svg” is the same name as “caf\u00e9.svg”, which is here too.  study/same-name
    Rename or remove all but one of them; until then the study is left out.

ferry/caf\u00e9.svg  error  On many computers “caf\u00e9.svg” is the same name as “cafe\u0301.svg”, which is here too.  study/same-name
    Rename or remove all but one of them; until then the study is left out.`,
  ],
  ["study.yaml with prose.md", [file("study.yaml"), file("prose.md"), file("original.svg")], ""],
  ["study.yaml alone", [file("study.yaml")], ""],
  ["what editors read", [file("study.yaml"), file(".schema.json")], ""],
  [
    "study.md and study.yaml",
    [file("study.md"), file("study.yaml")],
    `\
ferry/study.yaml  error  study.yaml and study.md are both here, and a study has one of them.  study/two-files
    Delete study.md if study.yaml holds what you want to say. If study.md does, delete study.yaml.`,
  ],
  [
    "study.md, study.yaml and prose.md",
    [file("study.md"), file("study.yaml"), file("prose.md")],
    `\
ferry/study.yaml  error  study.yaml and study.md are both here, and a study has one of them.  study/two-files
    Delete study.md if study.yaml and prose.md hold what you want to say. If study.md does, delete the other two.`,
  ],
  [
    "prose.md beside study.md",
    [file("study.md"), file("prose.md")],
    `\
ferry/prose.md  error  prose.md belongs to a study.yaml; here the prose is in study.md.  study/prose-alone
    Move its text into study.md, below the second ---, and delete it.`,
  ],
  [
    "prose.md alone",
    [file("prose.md")],
    `\
ferry/prose.md  error  prose.md belongs to a study.yaml, and there is none.  study/prose-alone
    Write the keys of the study in study.yaml, beside it.`,
  ],
  [
    "study.yml",
    [file("study.yml")],
    `\
ferry/study.yml  error  “study.yml” is not read: the file of a study is called study.yaml.  study/study-name
    Rename it to: study.yaml`,
  ],
  [
    "a link called prose.md",
    [file("study.yaml"), { name: "prose.md", kind: "link" }],
    `\
ferry/prose.md  error  This is a symbolic link, and links are not followed.  study/link
    Put the file or folder itself in its place.`,
  ],
  [
    "a folder called study.md",
    [folder("study.md")],
    `\
ferry/study.md  error  This is a folder; a file of that name belongs here.  study/not-a-file
    Rename or remove it, and put the file in its place.`,
  ],
  [
    "a link to a drawing",
    [{ name: "original.svg", kind: "link" }],
    `\
ferry/original.svg  error  This is a symbolic link, and links are not followed.  study/link
    Put the file or folder itself in its place.`,
  ],
  [
    "a pipe",
    [{ name: "original.svg", kind: "other" }],
    `\
ferry/original.svg  error  This is not a regular file; a file of that name belongs here.  study/not-a-file
    Rename or remove it, and put the file in its place.`,
  ],
  [
    "what an operating system leaves behind",
    [file(".DS_Store")],
    `\
ferry/.DS_Store  warning  Your operating system left this file here; it is passed over.  study/leftover-file`,
  ],
])("in a study's folder: %s", (_, entries, report) => {
  expect(study(...entries)).toBe(report);
});

test.each<Entry["kind"]>(["file", "link", "other", "folder"])(
  "a study stays, whatever stands beside it under its name in capitals: %s",
  (kind) => {
    const { slugs, problems } = checkStudyFolders("studies", [folder("honest"), { name: "HONEST", kind }]);
    expect(slugs).toEqual(["honest"]);
    expect(problems.map(({ file }) => file)).toEqual(["studies/HONEST"]);
  },
);
