import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { expect, test } from "vitest";
import { parseAnswerFile } from "../../../src/content/study/answerfile.ts";
import type { StudyAnswer } from "../../../src/content/study/study.ts";
import { presentAnswer } from "../../../src/views/study/answerview.ts";
import { presentSaid, presentSaidOf, presentSaidOfChanges } from "../../../src/views/study/saidview.ts";
import { createFormat } from "../../../src/words/format.ts";
import { readHtml } from "../../publish/dom.ts";
import { matrix, ranked } from "../../publish/ranked.ts";
import { study, studyResult } from "../../publish/sample.ts";

const format = createFormat("en-GB");
const said = (key: string, changed: Partial<StudyAnswer>): StudyAnswer => ({
  key,
  by: "Dunstan",
  says: "doubt",
  text: "Why?",
  at: { file: "a.md" },
  ...changed,
});
const result = (...answers: StudyAnswer[]) => ({ ...studyResult, study: { ...study, answers } });
const address = ({ a, b }: { readonly a: string; readonly b: string }) => `edges/${a}-${b}/`;

test("the oldest first, each with an address that stays, and the edge it is about", () => {
  const all = result(
    said("new", { date: "2026-05-02", edge: "red / dark blue" }),
    said("undated", {}),
    said("old", { date: "2026-05-01", edge: "pink / white", reply: { text: "*So.*" } }),
  );
  expect(presentSaid(all, address, "changes/", format)).toMatchObject([
    {
      anchor: "answer-old",
      about: [],
      reply: { lead: "The author replies", html: ["<p><em>So.</em></p>"] },
    },
    {
      anchor: "answer-new",
      about: [{ name: "dark blue / red", address: "edges/p1-p2/" }],
      date: { text: "2 May 2026" },
    },
    { anchor: "answer-undated", lead: "Dunstan doubts", date: undefined },
  ]);
  const edge = studyResult.comparison.edges.find(({ a, b }) => a === "p1" && b === "p2");
  if (edge === undefined) throw new Error("the sample has edges");
  expect(presentSaidOf(all, edge, format).map(({ anchor }) => anchor)).toEqual(["answer-new"]);
});

test("an answer about another single change leads to its place, and stands on the page of the changes", () => {
  const all = {
    ...ranked({ matrix }),
    study: {
      ...study,
      answers: [said("1", { option: "red to straw" }), said("2", { option: "pink to red" })],
    },
  };
  const place = "#change-c8202f-f4c430";
  expect(presentSaid(all, address, "changes/", format).map(({ about }) => about)).toEqual([
    [{ name: "red to straw", address: `changes/${place}` }],
    [],
  ]);
  expect(presentSaidOfChanges(all, format)).toMatchObject([
    { anchor: "answer-1", about: [{ name: "red to straw", address: place }] },
  ]);
});

test("HTML in an answer is text, and a figure is not shown", () => {
  const text = '<img src=x onerror="alert(1)">\n\n::figure{kind="edge map"}\n\n[a](javascript:alert(1))';
  const [one] = presentSaid(result(said("1", { text })), address, "changes/", format);
  expect(one?.html.join("")).toBe("<p>&lt;img src=x onerror=&quot;alert(1)&quot;&gt;</p>\n<p>a</p>");
});

test.each([undefined, "Dark blue / red"])(
  "what a letter ends with is a good answer as it is (%s)",
  (edge) => {
    const about = {
      title: "A square",
      edge,
      stamped: "https://flags.example/",
      isFiled: true,
      numbers: ["Contrast: 5% → 63%"],
    };
    const { href } = presentAnswer({ way: "mail", address: "editor@flags.example" }, about, format) ?? {
      href: "",
    };
    const letter = decodeURIComponent(/body=(.*)$/.exec(href)?.[1] ?? "");
    const block = letter.slice(letter.indexOf("---"));
    const { value, problems } = parseAnswerFile("a-reader", "answers/a-reader.md", Buffer.from(block));
    expect(problems).toEqual([]);
    expect(value).toMatchObject({ by: "A reader", says: "ask", ...(edge && { edge }) });
  },
);

const hostile = path.join(import.meta.dirname, "../../hostile/md");
/** The prose of every hostile study: some have nothing hostile but their keys. */
const proses = readdirSync(hostile).map((file): [string, string] => {
  const text = readFileSync(path.join(hostile, file), "utf8");
  return [file, text.replace(/^---\n[\s\S]*?^---\n?/m, "")];
});

test.each(proses.filter(([, prose]) => prose.trim() !== ""))(
  "%s as an answer and as its reply: nothing runs, loads or leads but to where links may",
  (_file, prose) => {
    const reply = `reply: { text: ${JSON.stringify(prose)} }`;
    const { value, problems } = parseAnswerFile(
      "a",
      "answers/a.md",
      Buffer.from(`---\nby: Dunstan\nsays: ask\n${reply}\n---\n${prose}`),
    );
    if (value === undefined) return expect(problems.length).toBeGreaterThan(0);
    const [shown] = presentSaid(result(value), address, "changes/", format);
    const html = [...(shown?.html ?? []), ...(shown?.reply?.html ?? [])].join("");
    expect(html).not.toBe("");
    for (const element of readHtml(html).body.querySelectorAll("*")) {
      expect(element.localName).toMatch(/^(?:p|em|strong|code|pre|a|ul|ol|li|blockquote|br|h[2-6]|hr|q)$/);
      const attributes = [...element.attributes].map(({ name }) => name);
      expect(attributes.filter((name) => !/^(?:href|rel|dir|lang|start|id)$/.test(name))).toEqual([]);
      expect(element.getAttribute("href") ?? "").not.toMatch(/^\s*(?!https?:|mailto:)[a-z][a-z\d+.-]*:/i);
    }
  },
);
