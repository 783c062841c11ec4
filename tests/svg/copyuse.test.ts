// One showing of a shared drawing, copied: it looks as before but for the new colour, and nothing else changes.
import { describe, expect, test } from "vitest";
import { changed, draw, pixelAt, read, render } from "./drawing.ts";

const next = "#123456";

async function thirds(text: string): Promise<readonly string[]> {
  const picture = await render(read(text));
  return [5, 15, 25].map((x) => pixelAt(picture, x, 10));
}

describe("one showing of three changes", () => {
  const third = '<rect id="r" width="10" height="20" style="fill: red"/>';
  test.each([
    ["a shape with its colour in a style", `<defs>${third}</defs>`, "r"],
    ["a group", `<defs><g id="g">${third}</g></defs>`, "g"],
    ["a use of a use", `<defs>${third}<use id="h" href="#r"/></defs>`, "h"],
    [
      "a symbol with a viewBox",
      '<symbol id="s" viewBox="0 0 1 2" preserveAspectRatio="none" width="10" height="20"><rect width="1" height="2" fill="red"/></symbol>',
      "s",
    ],
  ])("%s", async (_, definitions, id) => {
    const shown = [0, 10, 20].map((x) => `<use id="u${x}" href="#${id}" x="${x}"/>`).join("");
    const after = changed(draw(`${definitions}${shown}`), "#ff0000", next, "#u10");
    expect(await thirds(after)).toEqual(["#ff0000", next, "#ff0000"]);
  });

  test("a use that says what it is", async () => {
    const shown = [0, 10, 20]
      .map((x) => `<use id="u${x}" href="#r" x="${x}"><title>Third</title></use>`)
      .join("");
    const after = changed(draw(`<defs>${third}</defs>${shown}`), "#ff0000", next, "#u10");
    expect(await thirds(after)).toEqual(["#ff0000", next, "#ff0000"]);
    expect(after.match(/<title>Third<\/title>/g)).toHaveLength(3);
  });

  test("a transform of the use holds, and x and y stand behind it", async () => {
    const body = `<defs>${third}</defs><use id="a" href="#r"/><use id="b" href="#r" transform="translate(10 0) scale(.5 1)" x="20"/>`;
    // 10 + 0.5 · 20 = 20: the second showing covers 20 to 25 only.
    const picture = await render(read(changed(draw(body), "#ff0000", next, "#b")));
    expect([5, 15, 22, 27].map((x) => pixelAt(picture, x, 10))).toEqual(["#ff0000", "none", next, "none"]);
  });
});
