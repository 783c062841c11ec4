// What is written shows what was read, and svgson, which our tree borrows its shape from, writes the same picture.
import fc from "fast-check";
import { stringify } from "svgson";
import { describe, expect, test } from "vitest";
import { renderSvg } from "../../src/regions/raster.ts";
import type { Drawing, SvgNode } from "../../src/svg/tree.ts";
import { describeDrawing, viewBoxText, writeDrawing, writeSized } from "../../src/svg/writesvg.ts";
import { draw, pixelsOf, read, render, renderOther, rulesOf, written } from "./drawing.ts";
import { drawings, steady } from "./generate.ts";

const awkward = draw(
  '<title>a &lt; b &amp; "c"</title><desc>g &gt; rect</desc><g data-note="1 &lt; 2 &quot;x&quot;&#10;y&#9;z"><rect width="9" height="9"/></g>',
);

/** The tree as svgson takes it: names, attributes, children and nothing of ours. */
function toSvgson(node: SvgNode): Parameters<typeof stringify>[0] {
  return {
    name: node.name,
    type: node.type,
    value: node.value,
    attributes: { ...node.attributes },
    children: node.children.map(toSvgson),
  };
}

function bySvgson(drawing: Drawing, width: number, height: number): string {
  const root = toSvgson(drawing.root);
  Object.assign(root.attributes, {
    xmlns: "http://www.w3.org/2000/svg",
    "xmlns:xlink": "http://www.w3.org/1999/xlink",
    viewBox: viewBoxText(drawing),
    width: String(width),
    height: String(height),
    preserveAspectRatio: "none",
  });
  return stringify(root);
}

describe("writeDrawing", () => {
  test("escapes what XML needs escaped", () => {
    const text = written(awkward);
    expect(text).toContain('<title>a &lt; b &amp; "c"</title>');
    expect(text).toContain("g &gt; rect");
    expect(text).toContain('data-note="1 &lt; 2 &quot;x&quot;&#10;y&#9;z"');
  });

  test("has no declaration, no DOCTYPE, no comment, no CDATA, and one namespace", () => {
    const text = written(
      `<?xml version="1.0"?><!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd"><!-- a -->${draw("<!-- b --><style><![CDATA[rect{fill:red}]]></style><rect/>")}`,
    );
    expect(text).not.toMatch(/<[!?]/);
    expect(text.match(/xmlns/g)).toHaveLength(1);
  });

  test("declares xlink only where it is used", () => {
    const text = draw('<defs><rect id="r"/></defs><use xmlns:k="http://www.w3.org/1999/xlink" k:href="#r"/>');
    expect(written(text)).toContain('xmlns:xlink="http://www.w3.org/1999/xlink"');
    expect(written(text)).toContain('xlink:href="#r"');
  });

  test("a size in pixels becomes a viewBox", () => {
    expect(
      written('<svg xmlns="http://www.w3.org/2000/svg" width="30px" height="20"><rect/></svg>'),
    ).toContain('viewBox="0 0 30 20"');
  });

  test("read again it is the same to the letter", () => {
    const once = written(awkward);
    expect(written(once)).toBe(once);
    expect(rulesOf(once)).toEqual([]);
  });
});

describe("writeSized", () => {
  test("fills the picture, whatever the proportions", async () => {
    const raster = await renderSvg(
      writeSized(read(draw('<rect width="30" height="20" fill="red"/>')), 17, 31),
    );
    expect(raster).toMatchObject({ width: 17, height: 31 });
    expect(new Set(pixelsOf(raster))).toEqual(new Set(["#ff0000"]));
  });
});

describe("describeDrawing", () => {
  test("puts a note into the file and changes nothing that shows", async () => {
    const drawing = read(draw('<rect width="9" height="9" fill="red"/>'));
    const noted = describeDrawing(drawing, "A proposal & no flag <in use>.");
    expect(writeDrawing(noted)).toContain("<metadata>A proposal &amp; no flag &lt;in use&gt;.</metadata>");
    expect(pixelsOf(await render(noted))).toEqual(pixelsOf(await render(drawing)));
    expect(rulesOf(writeDrawing(noted))).toEqual([]);
  });
});

describe("any drawing", { timeout: 60_000 }, () => {
  test("written, read and written is the same text; the picture is that of the source", async () => {
    await fc.assert(
      fc.asyncProperty(drawings, async (text) => {
        const once = written(text);
        expect(written(once)).toBe(once);
        expect(pixelsOf(await render(read(once)))).toEqual(
          pixelsOf(await renderSvg(text.replace("<svg ", '<svg width="30" height="20" '))),
        );
      }),
      { numRuns: 100, ...steady },
    );
  });

  test("svgson writes the same picture from the same tree", async () => {
    await fc.assert(
      fc.asyncProperty(drawings, async (text) => {
        const drawing = read(text);
        expect(pixelsOf(await renderSvg(bySvgson(drawing, 30, 20)))).toEqual(pixelsOf(await render(drawing)));
      }),
      { numRuns: 100, ...steady },
    );
  });

  test("svgson does not serve to write them: text may break what it writes, and line feeds become spaces", () => {
    const ended = read(draw("<title>a]]&gt;b]]&gt;c</title>"));
    expect(rulesOf(writeDrawing(ended))).toEqual([]);
    expect(rulesOf(bySvgson(ended, 30, 20))).toEqual(["svg/not-well-formed"]);
    const lined = read(draw('<g data-note="1&#10;2"><rect/></g>'));
    const noteIn = (text: string) => read(text).root.children[0]?.attributes["data-note"];
    expect(noteIn(writeDrawing(lined))).toBe("1\n2");
    expect(noteIn(bySvgson(lined, 30, 20))).toBe("1 2");
  });

  test("svgson writes the same picture of an awkward one", async () => {
    const drawing = read(awkward);
    expect(pixelsOf(await renderSvg(bySvgson(drawing, 30, 20)))).toEqual(pixelsOf(await render(drawing)));
    expect(pixelsOf(renderOther(writeDrawing(drawing)))).toEqual(pixelsOf(await render(drawing)));
  });
});
