// Small drawings made up at random: colours in every place where a drawing can declare them, groups, uses, sheets.
import fc from "fast-check";
import type { Hex } from "../../src/colour/colour.ts";
import { draw } from "./drawing.ts";

/** The colours of a made-up drawing; black is what shapes have that nobody coloured. */
export const palette: readonly Hex[] = ["#ff0000", "#00ff00", "#0000ff", "#ffff00", "#000000"];

/** The same drawings on every run; with SEED in the environment, others. */
export const steady = { seed: Number(process.env["SEED"] ?? 20260402) };

const colour = fc.constantFrom(
  "#ff0000",
  "red",
  "#0f0",
  "#00ff00",
  "#0000ff",
  "rgb(0,0,255)",
  "#ffff00",
  "yellow",
  "#000",
);
const value = fc.oneof(
  { weight: 5, arbitrary: colour },
  { weight: 1, arbitrary: fc.constantFrom("none", "currentColor", "inherit") },
);
const whole = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min, max });

/** Attributes that may colour an element: none, one or several. */
const colours: fc.Arbitrary<string> = fc
  .record({
    fill: fc.option(value, { freq: 2 }),
    stroke: fc.option(value, { freq: 1 }),
    color: fc.option(colour, { freq: 1 }),
    style: fc.option(
      fc.oneof(
        value.map((v) => `fill:${v}`),
        value.map((v) => `fill: ${v}; stroke:blue`),
        colour.map((v) => `color:${v}`),
      ),
      { freq: 1 },
    ),
    class: fc.option(fc.constantFrom("a", "b", "a b"), { freq: 1 }),
  })
  .map((given) =>
    Object.entries(given)
      .map(([name, text]) => (text === null ? "" : ` ${name}="${text}"`))
      .join(""),
  );

const shape: fc.Arbitrary<string> = fc
  .tuple(fc.constantFrom("rect", "path"), whole(0, 24), whole(0, 14), whole(3, 16), whole(3, 12), colours)
  .map(([name, x, y, width, height, paint]) =>
    name === "rect"
      ? `<rect x="${x}" y="${y}" width="${width}" height="${height}"${paint}/>`
      : `<path d="M${x},${y} h${width} v${height} h-${width} z"${paint}/>`,
  );

const { node } = fc.letrec<{ node: string; group: string; use: string }>((tie) => ({
  node: fc.oneof({ maxDepth: 3, depthIdentifier: "svg" }, shape, tie("use"), tie("group")),
  group: fc
    .tuple(colours, fc.array(tie("node"), { maxLength: 3, depthIdentifier: "svg" }))
    .map(([paint, inner]) => `<g${paint}>${inner.join("")}</g>`),
  use: fc
    .tuple(fc.constantFrom("d0", "d1", "d2"), whole(0, 10), whole(0, 8), colours)
    .map(([id, x, y, paint]) => `<use href="#${id}" x="${x}" y="${y}"${paint}/>`),
}));

const rule = fc
  .tuple(
    fc.constantFrom(
      "rect",
      "path",
      "g",
      ".a",
      ".b",
      "g .a",
      "g > rect",
      "use",
      '[class="a"]',
      "rect:first-child",
      "rect:not(.a, g > .b)",
      "#n1",
      "rect:not(.a)",
      "*",
    ),
    fc.constantFrom("fill", "stroke", "color"),
    colour,
    fc.constantFrom("", "", "", " !important"),
  )
  .map(([selector, property, text, important]) => `${selector} { ${property}: ${text}${important} }`);

/** SVG text. Everything in it lies on whole pixels, so its picture has no blended ones; shapes are numbered n0, n1 … */
export const drawings: fc.Arbitrary<string> = fc
  .record({
    rules: fc.array(rule, { maxLength: 3 }),
    definitions: fc.tuple(shape, fc.tuple(colours, shape, shape)),
    body: fc.array(node, { minLength: 1, maxLength: 5 }),
    root: colours,
  })
  .map(({ rules, definitions: [single, [paint, one, other]], body, root }) => {
    const sheet = rules.length === 0 ? "" : `<style>${rules.join("\n").replaceAll(">", "&gt;")}</style>`;
    let count = 0;
    // A rule that looks around itself may not find what a use shows.
    const looks = rules.some((text) => /^[^{]*(?:\S [.a-z]|>|:first)/.test(text));
    const content = (looks ? body.join("").replace(/<use [^>]*>/g, "") : body.join("")).replace(
      /<(rect|path|g|use)(?=[\s>])/g,
      (_, name: string) => `<${name} id="n${count++}"`,
    );
    const groups = `<g id="d1"${paint}>${one}${other}</g><symbol id="d2">${other}${one}</symbol>`;
    const defs = `<defs>${single.replace(/^<(\w+)/, '<$1 id="d0"')}${groups}</defs>`;
    // The stroke of a rectangle on whole pixels is two pixels wide to stay on them.
    return draw(`${sheet}${defs}${content}`, `viewBox="0 0 30 20" stroke-width="2"${root}`);
  });
