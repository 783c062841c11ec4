import { expect, test } from "vitest";
import { checkProse, createMarkdown } from "../../../src/content/study/prosecheck.ts";

const render = (body: string) => createMarkdown().render(body).trim();
const check = (body: string) => checkProse({ body, bodyLine: 7, file: "study.md" });

// What each name stands for: HTML, section 13.5, named character references.
test.each([
  "&#x202e;",
  "&#8238;",
  "&#X2066;",
  "&#xe0041;",
  "&InvisibleTimes;",
  "&NoBreak;&#x2062;",
  "&#xfeff;",
])("%s shows nothing, and is told where it stands", (entity) => {
  const hidden = entity.replace("&NoBreak;", "");
  expect(render(`The ${entity}ferry`)).toMatch(/^<p>The \u2060?ferry<\/p>$/);
  expect(check(`One.\n\nTwo\n*The ${entity}ferry*`)).toMatchObject([
    {
      rule: /2066|202e|8238/.test(entity) ? "study/direction-control" : "study/prose-invisible",
      severity: "warning",
      place: { line: 10, column: 6 + entity.length - hidden.length, length: hidden.length },
      reason: expect.stringContaining(`“${hidden}”`),
      hint: "Delete it.",
    },
  ]);
});

test("in the title of a link too", () => {
  const body = '[a](https://flags.example/ "x&#x202e;y")';
  expect(render(body)).toBe('<p><a href="https://flags.example/" title="xy">a</a></p>');
  expect(check(body)).toMatchObject([{ rule: "study/direction-control", place: { line: 7 } }]);
});

// U+200D between emoji: UTS 51, ED-16. U+00AD and U+200E are of use in prose.
test("entities of use stay, and so does what is shown letter for letter", () => {
  for (const [body, shown] of [
    ["👩&zwj;🚀", "👩\u200d🚀"],
    ["har&shy;bour &lrm;x", "har\u00adbour \u200ex"],
    ["&amp;#x202e; &lt; &copy;", "&amp;#x202e; &lt; ©"],
    ["`&#x202e;`", "<code>&amp;#x202e;</code>"],
  ] as const) {
    expect(render(body)).toBe(`<p>${shown}</p>`);
    expect(check(body)).toEqual([]);
  }
});
