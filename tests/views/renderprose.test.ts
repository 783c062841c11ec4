import { expect, test } from "vitest";
import { firstSentence, firstSentences, readProse, renderProse } from "../../src/views/renderprose.ts";
import { startClock } from "../clock.ts";

const render = (body: string) =>
  renderProse(body, ({ edge }) => (edge === "white / red" ? "the figure" : undefined));
const htmlOf = (body: string) =>
  render(body)
    .map((block) => (block.kind === "html" ? block.html : `[${block.figure}]`))
    .join("\n");

test("HTML in the prose is shown as text", () => {
  const html = htmlOf('<script>alert(1)</script>\n\nAnd <img src=x onerror="alert(1)"> here.');
  expect(html).not.toMatch(/<script|<img/);
  expect(html).toContain("&lt;script&gt;");
});

test.each([
  "javascript:alert(1)",
  "JaVaScRiPt:alert(1)",
  "javascript&colon;alert(1)",
  "vbscript:x",
  "data:text/html,x",
  "data:image/png;base64,AAAA",
  "file:///etc/passwd",
  "ftp://flags.example/",
  "tel:+15550100",
  "intent:x",
  "//flags.example/",
])("no link leads to %s: its text stays", (address) => {
  expect(htmlOf(`See [the **old** one](${address}).`)).toBe("<p>See the <strong>old</strong> one.</p>");
  expect(htmlOf(`See [the one][1].\n\n[1]: ${address}`)).toBe("<p>See the one.</p>");
  expect(htmlOf(`<${address}>`)).not.toContain("<a");
});

test("links to other sites are marked, links inside the site are not", () => {
  expect(htmlOf("[a](https://flags.example/)")).toContain('rel="nofollow noopener"');
  expect(htmlOf("[a](MAILTO:sec@flags.example)")).toContain('rel="nofollow noopener"');
  expect(htmlOf("[a](../b/)")).toBe('<p><a href="../b/">a</a></p>');
});

test("bare addresses stay text", () => {
  expect(htmlOf("See https://flags.example/ for more.")).not.toContain("<a");
});

test("template syntax is nothing special", () => {
  expect(htmlOf("{{ 7 * 7 }} {% raw %} #{x}")).toBe("<p>{{ 7 * 7 }} {% raw %} #{x}</p>");
});

test("an image is left out: its words stay", () => {
  expect(render("One.\n\n![a bell](https://flags.example/bell.png)\n")).toEqual([
    { kind: "html", html: "<p>One.</p>\n<p>a bell</p>" },
  ]);
});

test("a figure on a line of its own stands between the pieces of prose", () => {
  expect(htmlOf('One.\n\n::figure{edge="white / red"}\n\nTwo.')).toBe(
    "<p>One.</p>\n[the figure]\n<p>Two.</p>",
  );
  expect(htmlOf('One.\n::figure{edge="white / red"}\nTwo.')).toBe("<p>One.</p>\n[the figure]\n<p>Two.</p>");
});

test("a figure of an edge that is not there, or that cannot be read, is left out", () => {
  expect(render('One.\n\n::figure{edge="white / pink"}\n\nTwo.')).toEqual([
    { kind: "html", html: "<p>One.</p>\n<p>Two.</p>" },
  ]);
  expect(render("::figure{edge=white}\n")).toEqual([]);
});

test("beyond twenty no figure is shown", () => {
  const blocks = render('::figure{edge="white / red"}\n\n'.repeat(30));
  expect(blocks.filter(({ kind }) => kind === "figure")).toHaveLength(20);
});

test("a figure in code is code", () => {
  expect(render('```\n::figure{edge="white / red"}\n```\n')).toMatchObject([{ kind: "html" }]);
});

test("headings go below the section's own, and no level is skipped", () => {
  expect(htmlOf("# A\n\n#### B\n\n##### C\n\n## D\n\n# E")).toBe(
    "<h3>A</h3>\n<h4>B</h4>\n<h5>C</h5>\n<h4>D</h4>\n<h3>E</h3>",
  );
  expect(htmlOf("### A\n\n# B")).toBe("<h3>A</h3>\n<h3>B</h3>");
});

test("a link defined at the end works on both sides of a figure", () => {
  expect(htmlOf('[a][1]\n\n::figure{edge="white / red"}\n\n[b][1]\n\n[1]: ../c/')).toBe(
    '<p><a href="../c/">a</a></p>\n[the figure]\n<p><a href="../c/">b</a></p>',
  );
});

test("deep quotes and long runs of brackets come back soon", () => {
  const spent = startClock();
  htmlOf(`${"> ".repeat(5000)}x`);
  htmlOf("[".repeat(20000));
  htmlOf("*a ".repeat(20000));
  expect(spent()).toBeLessThan(5000);
});

test("an option in lines to type is one piece, and what is typed stays as it is", () => {
  const html = htmlOf('```sh\nsurvey --json -- "<b>"\n---\n```\n');
  expect(html).toBe(
    '<pre><code class="language-sh">survey <span class="option">--json</span> -- &quot;&lt;b&gt;&quot;\n---\n</code></pre>',
  );
  expect(htmlOf("``` --x\na\n```")).toBe('<pre><code class="language---x">a\n</code></pre>');
});

test("the first sentence is that of the first paragraph, without marks", () => {
  expect(
    firstSentence("# Why\n\nThe *gull* is [lost](https://flags.example/)\nin the sea. Look again.", "en"),
  ).toBe("The gull is lost in the sea.");
  expect(firstSentence('> Said.\n\n::figure{kind="edge map"}', "en")).toBeUndefined();
});

test("an opening is whole sentences of the first paragraph, and prose in full is plain text", () => {
  const body = "One *two*. Three\nfour. Five six seven.\n\n## Head\n\n- Item\n\nLast.";
  expect(firstSentences(body, "en", 21)).toBe("One two. Three four.");
  expect(firstSentences(body, "en", 3)).toBe("One two.");
  expect(firstSentences("", "en", 200)).toBeUndefined();
  expect(readProse(body)).toBe("One two. Three four. Five six seven. Head Item Last.");
});

test("a drawing is shown where drawings are, and nowhere else", () => {
  const body = '::figure{drawing="a.svg" caption="A"}';
  const findDrawing = ({ drawing, caption }: { drawing: string; caption?: string }) =>
    `${drawing} ${caption}`;
  expect(renderProse(body, () => "none", { findDrawing })).toEqual([{ kind: "figure", figure: "a.svg A" }]);
  expect(renderProse(body, () => "none")).toEqual([]);
});

test("typed text that no line of a phone has room for may be broken", () => {
  const typed = (letters: number) => "x".repeat(letters);
  expect(htmlOf(`Type \`${typed(32)}\`, then \`${typed(33)}\`.`)).toBe(
    `<p>Type <code>${typed(32)}</code>, then <code class="long">${typed(33)}</code>.</p>`,
  );
});
