import { readdir, readFile } from "node:fs/promises";
import path from "node:path";
import { describe, expect, test } from "vitest";
import {
  bold,
  boldOnUpright,
  collectLettering,
  lettersOf,
  slanted,
} from "../../../src/publish/fonts/lettering.ts";
import { type Cut, type Face, faces } from "../../../src/views/fontface.ts";

const basicLatin =
  " !\"#$%&'()*+,-./0123456789:;<=>?@ABCDEFGHIJKLMNOPQRSTUVWXYZ[\\]^_`abcdefghijklmnopqrstuvwxyz{|}~";

function read(html: string, written: readonly string[] = []) {
  const lettering = collectLettering(
    [`<!DOCTYPE html>\n<html lang="en"><body>${html}</body></html>`],
    written,
  );
  return (family: Face["family"], cut: Cut, script: Face["script"] = "latin") => {
    const face = faces.find((one) => one.family === family && one.cut === cut && one.script === script);
    return face && lettersOf(face, lettering);
  };
}

const [serif, sans] = ["source-serif-4", "source-sans-3"] as const;

test("the upright faces have Basic Latin and every letter of every page, in order", () => {
  const of = read('<p>Übermut – ½</p><img alt="Ærø"><input placeholder="ñ">');
  for (const family of [serif, sans]) {
    const letters = of(family, "400 normal") ?? "";
    for (const letter of `${basicLatin}Ü–½Æøñ`) expect(letters, letter).toContain(letter);
    expect(letters).not.toContain("ß");
    expect([...letters]).toEqual([...new Set(letters)].sort());
  }
});

test("nothing is in a face whose script or cut no page has", () => {
  const of = read("<p>Plain ΔE00</p>");
  for (const cut of ["400 italic", "600 normal", "600 italic"] as const)
    expect(of(serif, cut)).toBeUndefined();
  expect(of(serif, "400 normal", "latin-ext")).toBeUndefined();
  expect(of(serif, "400 normal", "greek")).toBeUndefined();
});

test("other scripts have the letters of the pages alone", () => {
  const of = read("<p>Łódź ő, Ψάρι</p>");
  expect(of(sans, "400 normal", "latin-ext")?.replace(/\p{M}/gu, "")).toBe(" Łőź");
  expect([...(of(sans, "400 normal", "greek") ?? "")]).toEqual(expect.arrayContaining([..."Ψάρι"]));
});

test("Δ is for Greek pages: on others ΔE00 would fetch a font for it", () => {
  const page = (lang: string) =>
    collectLettering([`<!DOCTYPE html>\n<html lang="${lang}"><p>Δ</p></html>`], []);
  const greek = faces.find(({ script, cut }) => script === "greek" && cut === "400 normal");
  if (greek === undefined) throw new Error("there is a Greek face");
  expect(lettersOf(greek, page("el"))).toBe(" Δ");
  expect(lettersOf(greek, page("el-CY"))).toBe(" Δ");
  expect(lettersOf(greek, page("de"))).toBeUndefined();
});

describe("stressed words", () => {
  test("on a page from the right nothing slants, and emphasis is bold", () => {
    const page = `<!DOCTYPE html>\n<html lang="ar" dir="rtl"><p><em>abc</em> <cite>d</cite> <b>e <em>f</em></b></p></html>`;
    const lettering = collectLettering([page], []);
    expect([...lettering[serif]["600 normal"]].sort().join("")).toBe("abcef");
    expect(lettering[serif]["400 italic"].size + lettering[serif]["600 italic"].size).toBe(0);
  });

  test.each(slanted)("<%s> slants", (name) => {
    const of = read(`<p>abc <${name} class="x">d <b>e</b> <${name}>f</${name}>g</${name}> h</p>`);
    expect(of(serif, "400 italic")).toBe(" defg");
    expect(of(serif, "600 normal")).toBe(" e");
    expect(of(serif, "600 italic")).toBe(" e");
  });

  test.each(bold)("<%s> is bold", (name) => {
    const of = read(`<p>abc <${name}>d<em>e</em>&amp;&#xe9;&#8211;</${name}> <body>h</p>`);
    expect(of(sans, "600 normal")).toMatch(/^ &de\u00e9\p{M}?–/u);
    expect(of(sans, "600 italic")).toBe(" e");
  });

  test("a name that only begins alike is no such element", () => {
    const of = read("<embed><basefont><body><image>text</image>");
    expect([of(serif, "400 italic"), of(serif, "600 normal")]).toEqual([undefined, undefined]);
  });

  test("that nothing closes go on to the end: too much, never too little", () => {
    expect(read("<p><em>ab</p>cd")(serif, "400 italic")).toBe(" abcd");
  });

  test("letters are those of one family where the place is set in one alone", () => {
    const of = read(
      '<div class="prose-run"><p><em>ab</em></p><div></div><i>c</i></div><p class="margin source"><i>de</i></p><i>f</i>',
    );
    expect(of(serif, "400 italic")).toBe(" abcf");
    expect(of(sans, "400 italic")).toBe(" def");
  });

  test("bold words of a caption are not bold", () => {
    expect(read("<figcaption><strong>ab</strong></figcaption><b>c</b>")(sans, "600 normal")).toBe(" c");
  });

  test("a list in them has marks set like them", () => {
    const styles = '.a { list-style: "–  "; } .b::after { content: "\\2191"; }';
    const of = read("<blockquote><ol><li>a</li></ol></blockquote><em>b</em><b>c</b>", [styles]);
    for (const letter of "–0123456789.ab") expect(of(serif, "400 italic")).toContain(letter);
    expect(of(serif, "600 normal")).toBe(" c");
    expect(of(sans, "400 normal")).toContain("↑");
  });
});

test("letters in parts, and what browsers show for others, are there in every form", () => {
  const of = read("<b>e\u0304\u0301 o\u0308 soft\u00adly non\u2011stop</b>");
  for (const letter of "ö\u0308o-\u2010") expect(of(serif, "600 normal"), letter).toContain(letter);
  for (const letter of "ēḗ") expect(of(serif, "600 normal", "latin-ext"), letter).toContain(letter);
});

test("scripts that write letters of their own have them", () => {
  const of = read("", ['said.textContent = "Fertig – größer";', 'const more = "\\u2026\\u00bd";']);
  for (const letter of "–öß…½") expect(of(sans, "400 normal"), letter).toContain(letter);
});

test("in the styles nothing slants or is bold but what is known here, and no letter changes its form", async () => {
  const folder = path.resolve(import.meta.dirname, "../../../templates/styles");
  const sheets = await Promise.all(
    (await readdir(folder)).map((file) => readFile(path.join(folder, file), "utf8")),
  );
  const rules = [
    ...sheets
      .join("\n")
      .replace(/\/\*[\s\S]*?\*\//g, "")
      .matchAll(/([^{};]+)\{([^{}]*)\}/g),
  ];
  expect(rules.length).toBeGreaterThan(300);
  for (const [, selector = "", body = ""] of rules) {
    const last =
      selector
        .trim()
        .split(/[\s>+~]+/)
        .at(-1) ?? "";
    if (/font-style:\s*(?:italic|oblique)|font:[^;]*italic/.test(body))
      expect(slanted, selector).toContain(last);
    // Code is set in a font of the machine.
    if (/font-weight:\s*(?:[5-9]00|bold)|font:[^;]*(?:[5-9]00|bold)/.test(body))
      expect(
        [...bold, "code", ...(/^\s*\[dir="rtl"\]/.test(selector) ? boldOnUpright : [])],
        selector,
      ).toContain(last);
    expect(body, selector).not.toMatch(
      /text-transform|font-variant(?!-numeric)|font-feature|::?first-l|quotes:|hyphens:/,
    );
    for (const [, value = ""] of body.matchAll(/font-variant-numeric:\s*([^;]+)/g))
      expect(
        value.split(/\s+/).filter((word) => !["tabular-nums", "lining-nums", "normal"].includes(word)),
      ).toEqual([]);
  }
});

test("where text or headings are of another family, the stressed words of prose are in what sets them", () => {
  const page = '<html lang="en"><div class="prose-run"><em>ab</em></div></html>';
  const italicOf = (text: Face["family"], headings: Face["family"]) => {
    const lettering = collectLettering([page], [], { text, headings });
    return [serif, sans].map((family) => [...lettering[family]["400 italic"]].join(""));
  };
  expect(italicOf(serif, serif)).toEqual(["ab", ""]);
  expect(italicOf(sans, sans)).toEqual(["", "ab"]);
  expect(italicOf(sans, serif)).toEqual(["ab", "ab"]);
});
