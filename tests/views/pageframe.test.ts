import { expect, test } from "vitest";
import { presentFrame } from "../../src/views/pageframe.ts";
import { createFormat } from "../../src/words/format.ts";
import { gallery } from "../publish/sample.ts";

test("titles end with the gallery's, links are relative, the canonical address is not", () => {
  const frame = presentFrame(
    { path: "/method/", title: "Method", description: "How.", section: "method" },
    gallery,
    createFormat("he"),
  );
  expect(frame).toMatchObject({
    language: "he",
    direction: "rtl",
    title: "Method – Flags of the Sound",
    canonical: "https://flags.example/sound/method/",
    links: { home: "../", styles: "../assets/site.css", cautions: "./#cautions" },
  });
});

test("the page for missing addresses has whole paths and no address of its own", () => {
  const frame = presentFrame(
    { path: "/404.html", title: "No page here", description: "", section: undefined, base: "/sound/" },
    gallery,
    createFormat("en"),
  );
  expect(frame.canonical).toBeUndefined();
  for (const link of [frame.links.home, frame.links.styles, ...frame.links.fonts]) {
    expect(link).toMatch(/^\/sound\//);
  }
});

test("the front page is called as the gallery is", () => {
  const facts = { path: "/", title: undefined, description: "", section: "studies" as const };
  expect(presentFrame(facts, gallery, createFormat("en")).title).toBe("Flags of the Sound");
});

test("what goes into a script element cannot end it, whatever the study is called", () => {
  const frame = presentFrame(
    {
      path: "/studies/a/",
      title: "A",
      description: "d",
      section: "studies",
      picture: { path: "/studies/a/link.png", alt: "words" },
      record: { name: "</script><!--<script>" },
    },
    gallery,
    createFormat("en"),
  );
  expect(frame.share?.record).not.toContain("<");
  expect(JSON.parse(frame.share?.record ?? "")).toMatchObject({
    url: "https://flags.example/sound/studies/a/",
    image: "https://flags.example/sound/studies/a/link.png",
    name: "</script><!--<script>",
  });
  expect(frame.share?.picture?.address).toBe("https://flags.example/sound/studies/a/link.png");
});

test("a logo is as high on every page, and as wide as its drawing has it", () => {
  const facts = { path: "/method/", title: "Method", description: "", section: undefined };
  const logoOf = (width: number, height: number) =>
    presentFrame(facts, { ...gallery, logo: { drawing: "", width, height } }, createFormat("en")).logo;
  expect(logoOf(120, 80)).toEqual({ src: "../assets/logo.svg", width: 54, height: 36 });
  expect(logoOf(1, 1000)?.width).toBe(1);
  expect(presentFrame(facts, gallery, createFormat("en")).logo).toBeUndefined();
});

test("a page fetches the fonts at once that its theme sets it in", () => {
  const facts = { path: "/", title: undefined, description: "", section: undefined };
  const fontsOf = (theme: NonNullable<typeof gallery.theme>) =>
    presentFrame(facts, { ...gallery, theme }, createFormat("en")).links.fonts.map((font) =>
      font.slice(13, 25),
    );
  expect(fontsOf({})).toEqual(["source-serif", "source-sans-"]);
  expect(fontsOf({ text: "Source Sans 3" })).toEqual(["source-sans-"]);
  expect(fontsOf({ text: "Source Sans 3", headings: "Source Serif 4" })).toHaveLength(2);
});

test("the foot has what the gallery says, and the address of its licence where that is known", () => {
  const facts = { path: "/", title: undefined, description: "", section: undefined };
  const feet = ["CC-BY-4.0", "by permission"].map((licence) =>
    presentFrame(facts, { ...gallery, footer: "We meet on Tuesdays.", licence }, createFormat("en")),
  );
  expect(feet.map(({ footer, licence }) => [footer, licence?.name, licence?.address])).toEqual([
    ["We meet on Tuesdays.", "CC-BY-4.0", "https://creativecommons.org/licenses/by/4.0/"],
    ["We meet on Tuesdays.", "by permission", undefined],
  ]);
});
