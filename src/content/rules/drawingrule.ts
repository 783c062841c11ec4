// Floor 5, the catalogue of rules: what a drawing may hold. The rules themselves are kept on the floor of the drawings.
import type { Rule } from "./rule.ts";

const svg = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 30 20">';

/** Rules of the file, of its XML and of what is drawn. */
export const drawingRules: readonly Rule[] = [
  {
    id: "svg/empty",
    severity: "error",
    means: "The drawing's file is empty.",
    why: "Most likely the export was interrupted.",
    example: { file: "told", wrong: "an original.svg of 0 bytes", right: "the flag exported again" },
  },
  {
    id: "svg/encoding",
    severity: "error",
    means: "The file is a picture of another kind, or its text is not in UTF-8.",
    why: "Only shapes can be recoloured; pixels cannot.",
    example: {
      file: "told",
      wrong: "ferry.png, renamed to original.svg",
      right: "the flag drawn in shapes, saved as SVG",
    },
  },
  {
    id: "svg/too-big",
    severity: "error",
    means: "The drawing has more than 512 KB.",
    why: "A flag rarely needs more than 50 KB. Files are refused as study/drawing-size before they are read; this is the last guard.",
    example: { file: "told", wrong: "an SVG file of 700 KB", right: "the flag drawn in shapes" },
  },
  {
    id: "svg/not-svg",
    severity: "error",
    means: "The file is well-formed XML and no SVG drawing.",
    why: "It begins with another element than svg.",
    example: { file: "told", wrong: "<html>…</html>", right: `${svg}…</svg>` },
  },
  {
    id: "svg/namespace",
    severity: "error",
    means: "The svg element does not say that it is SVG.",
    why: "Browsers show nothing where xmlns is missing.",
    example: { file: "original.svg", wrong: '<svg viewBox="0 0 30 20">', right: svg },
  },
  {
    id: "svg/not-well-formed",
    severity: "error",
    means: "The file is not well-formed XML.",
    why: "Programs disagree on what a broken file shows.",
    example: {
      file: "original.svg",
      wrong: "<title>Ferry & Sons</title>",
      right: "<title>Ferry &amp; Sons</title>",
    },
  },
  {
    id: "svg/doctype",
    severity: "error",
    means: "The DOCTYPE declares something else than an SVG drawing.",
    why: "A DOCTYPE can hide text and point at other files; drawings do not need one.",
    example: { file: "original.svg", wrong: `<!DOCTYPE html>\n${svg}`, right: svg },
  },
  {
    id: "svg/entity",
    severity: "error",
    means: "The file uses entities of its own more than 256 times.",
    why: "Entities that repeat entities can fill the memory of a computer.",
    example: { file: "told", wrong: "300 uses of &white;", right: "the colour written out" },
  },
  {
    id: "svg/instruction",
    severity: "warning",
    means: "A processing instruction was removed.",
    why: "It tells some program to do something, and says nothing of the picture.",
    example: { file: "original.svg", wrong: `<?ferry draft?>\n${svg}`, right: svg },
  },
  {
    id: "svg/cap",
    severity: "error",
    means:
      "The drawing has more than 20,000 elements, elements more than 64 deep, or more than 200 attributes on one.",
    why: "No flag needs as much, and it takes long to draw.",
    example: {
      file: "told",
      wrong: "70 groups within each other",
      right: "the drawing ungrouped once or twice",
    },
  },
  {
    id: "svg/viewbox",
    severity: "error",
    means: "The drawing does not say how large it is, or has a shape that no flag has.",
    why: "Without viewBox, or a width and height in pixels, its proportions are not known.",
    example: {
      file: "original.svg",
      wrong: '<svg xmlns="http://www.w3.org/2000/svg" width="100%">',
      right: svg,
    },
  },
  {
    id: "svg/unsupported",
    severity: "error",
    means:
      "The drawing uses a picture, a filter that cannot be looked through, or another thing that mixes colours.",
    why: "An edge needs two colours that can be measured and changed.",
    example: { file: "original.svg", wrong: '<image width="9" height="9" href="data:image/png;base64,AA"/>' },
  },
  {
    id: "svg/removed",
    severity: "warning",
    means:
      "Something that a drawing of a flag does not need was removed: a script, a link, an animation, another namespace.",
    why: "A published drawing does nothing and looks the same everywhere.",
    example: { file: "original.svg", wrong: "<script>1</script>" },
  },
  {
    id: "svg/effect",
    severity: "warning",
    means: "A filter or a blend was left out: a shadow, a blur, mixed colours.",
    why: "An edge needs two colours that can be measured and changed. What it looked like is told, and the flag is measured without it.",
    example: {
      file: "original.svg",
      wrong: '<path d="M3 18h2v1h-2z" style="mix-blend-mode:multiply"/>',
      right: '<path d="M3 18h2v1h-2z"/>',
    },
  },
  {
    id: "svg/text",
    severity: "warning",
    means: "Text was removed.",
    why: "Letters look different on every machine. As outlines they stay.",
    example: {
      file: "original.svg",
      wrong: '<text x="15" y="19">FERRY</text>',
      right: '<path d="M3 18h2v1h-2z" fill="#ffffff"/>',
    },
  },
  {
    id: "svg/reference",
    severity: "error",
    means: "Something in the drawing points at another file or address.",
    why: "A drawing is whole in itself; nothing is fetched.",
    example: { file: "original.svg", wrong: '<use href="wheel.svg#wheel"/>', right: '<use href="#wheel"/>' },
  },
  {
    id: "svg/duplicate-id",
    severity: "error",
    means: "Two elements have one id, and something points at it.",
    why: "Programs disagree on which of them is meant. Where nothing points at it, the id is left out.",
    example: {
      file: "original.svg",
      wrong: '<path id="wheel" d="M3 18h2v1h-2z"/>\n  <use href="#wheel" y="1"/>',
      right: '<path id="buoy" d="M3 18h2v1h-2z"/>\n  <use href="#buoy" y="1"/>',
    },
  },
  {
    id: "svg/id",
    severity: "warning",
    means: "An id was given a safe name.",
    why: "Ids in letters, digits, hyphens and underscores work in every program.",
    example: { file: "original.svg", wrong: 'id="the foam"', right: 'id="foam"' },
  },
  {
    id: "svg/dangling",
    severity: "warning",
    means: "Something points at an id that is not in the drawing.",
    why: "Programs disagree on what is shown then, so it was removed.",
    example: { file: "original.svg", wrong: '<use href="#whel"/>', right: '<use href="#wheel"/>' },
  },
  {
    id: "svg/circle",
    severity: "error",
    means: "References run in a circle: an element shows itself.",
    why: "It could be drawn for ever.",
    example: {
      file: "original.svg",
      wrong: '<g id="a"><use href="#a"/></g>',
      right: '<g id="a"><use href="#wheel"/></g>',
    },
  },
  {
    id: "svg/too-many-instances",
    severity: "error",
    means: "Repetitions by use, patterns and masks come to more than can be drawn.",
    why: "A few lines that repeat each other can take hours.",
    example: {
      file: "told",
      wrong: "eight groups, each of which uses the one before ten times",
      right: "the shapes repeated less often",
    },
  },
  {
    id: "svg/number",
    severity: "error",
    means: "A value that should be a number, a path, a transform or a list of points is none.",
    why: "Programs disagree on what they make of it.",
    example: { file: "original.svg", wrong: 'r="4,5"', right: 'r="4.5"' },
  },
  {
    id: "svg/unlike",
    severity: "error",
    means: "Something is right by the standard and not on the list of what programs draw alike.",
    why: "What is measured has to be what everyone sees.",
    example: {
      file: "original.svg",
      wrong: '<clipPath id="half"><g><path d="M0 0h9v9z"/></g></clipPath>',
      right: '<clipPath id="half"><path d="M0 0h9v9z"/></clipPath>',
    },
  },
  {
    id: "svg/too-far",
    severity: "error",
    means:
      "A shape reaches far beyond the viewBox, or transforms shrink, stretch, flatten or move it by very much, or a size is hardly any.",
    why: "Programs reckon with few digits: beyond them one draws a shape, another leaves it out.",
    example: { file: "original.svg", wrong: 'r="5e9"', right: 'r="5"' },
  },
  {
    id: "svg/colour",
    severity: "warning",
    means: "A fill, a stroke or a stop of a gradient is to have a colour that there is not.",
    why: "Programs pass over it, so that the shape is black or has the colour of its group.",
    example: { file: "original.svg", wrong: 'fill="#1b2a5"', right: 'fill="#1b2a5c"' },
  },
  {
    id: "svg/css",
    severity: "error",
    means: "A style sheet or a style cannot be read as plain rules.",
    why: "Colours have to be found and changed where they are declared.",
    example: {
      file: "original.svg",
      wrong: "<style>@media print { rect { fill: #7a1020 } }</style>",
      right: "<style>.ink { fill: #7a1020 }</style>",
    },
  },
  {
    id: "svg/selector",
    severity: "error",
    means: "A style sheet selects in a way that is not supported.",
    why: "Colours are found by name, class, id and place alone, which every program reads alike.",
    example: {
      file: "original.svg",
      wrong: "<style>:is(.foam) { fill: #ffffff }</style>",
      right: "<style>.foam { fill: #ffffff }</style>",
    },
  },
  {
    id: "svg/value",
    severity: "error",
    means: "A colour or another value is one that programs draw differently or not at all.",
    why: "What is measured has to be what everyone sees.",
    example: { file: "original.svg", wrong: 'fill="oklch(60% 0.2 30)"', right: 'fill="#1b2a5c"' },
  },
  {
    id: "svg/unit",
    severity: "error",
    means: "A length depends on a font or on the size of a window.",
    why: "It is another length in every program.",
    example: { file: "original.svg", wrong: 'r="2em"', right: 'r="5"' },
  },
  {
    id: "svg/root",
    severity: "error",
    means: "The svg element is turned, cut, coloured like a page, or of another shape than its viewBox.",
    why: "Browsers treat it as a box of a page, other programs as a shape or not at all.",
    example: {
      file: "original.svg",
      wrong: '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 30 20" width="300" height="300">',
      right: svg,
    },
  },
  {
    id: "svg/written",
    severity: "error",
    means: "The drawing, or the redesign, is too long or too large as it would be published.",
    why: "Colours are written out on every shape that has them, and shapes that change alone are copied.",
    example: {
      file: "told",
      wrong: "a description of 200,000 letters that have to be written as entities",
      right: "a short description",
    },
  },
];
