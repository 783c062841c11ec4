import { describe, expect, test } from "vitest";
import { draw, elementOf, read, rulesOf, written } from "../drawing.ts";

describe("settle", () => {
  test("the size of the picture is that of the viewBox alone", () => {
    const text = written(
      draw("<rect/>", 'viewBox="0 0 30 20" x="1" width="60mm" height="40mm" preserveAspectRatio="none"'),
    );
    expect(text).toMatch(/^<svg xmlns="[^"]*" viewBox="0 0 30 20">/);
  });

  test("a size may be rounded, and is of the same shape", () => {
    expect(rulesOf(draw("<rect/>", 'viewBox="0 0 30 20" width="100" height="67"'))).toEqual([]);
    expect(rulesOf(draw("<rect/>", 'viewBox="0 0 30 20" width="100" height="70"'))).toEqual(["svg/root"]);
    expect(rulesOf(draw("<rect/>", 'viewBox="0 0 30 20" width="100%" height="70"'))).toEqual([]);
  });

  test.each(['transform="scale(2)"', 'opacity=".5"', 'display="none"', 'style="background:red"'])(
    "refuses %s on the root",
    (attribute) => {
      expect(rulesOf(draw("<rect/>", `viewBox="0 0 30 20" ${attribute}`))).toContain("svg/root");
      expect(rulesOf(draw(`<g ${attribute}/>`))).not.toContain("svg/root");
    },
  );

  test.each(['opacity="1"', 'clip-path="none"', 'display="block"', 'style="width:100%"'])(
    "%s on the root does nothing",
    (attribute) => {
      expect(rulesOf(draw("<rect/>", `viewBox="0 0 30 20" ${attribute}`))).toEqual([]);
    },
  );

  test("a size in a style counts where the element has one", () => {
    expect(rulesOf(draw('<rect style="width:9px"/>'))).toEqual(["svg/unsupported"]);
    expect(rulesOf(draw(`<path style='d:path("M0 0")'/>`))).toEqual(["svg/unsupported"]);
    expect(rulesOf(draw('<path style="width:9px"/>'))).toEqual([]);
  });

  test("a viewBox inside has four numbers", () => {
    expect(rulesOf(draw('<svg viewBox="0 0 3"/>'))).toEqual(["svg/number"]);
  });

  test("a stop has a colour of its own, by the elements around it in the file", () => {
    const drawing = read(
      draw(
        '<g color="red"><linearGradient id="l"><stop id="a" stop-color="currentColor"/><stop id="b"/><stop id="c" color="blue" stop-color="currentColor"/></linearGradient></g>',
      ),
    );
    expect(["a", "b", "c"].map((id) => elementOf(drawing, id).attributes["stop-color"])).toEqual([
      "#ff0000",
      "#000000",
      "#0000ff",
    ]);
  });
});
