// Small drawings, like those of probe.ts, about what stands where it has another meaning or none, and about shapes, markers,
// patterns and gradients at the ends of their ranges.
import type { Probe } from "./probe.ts";

const svg = (body: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 200">${body}</svg>`;
const rect = (more: string): string => `<rect x="50" y="40" width="200" height="120" fill="#0a0" ${more}/>`;
const circle = (more: string): string => `<circle cx="150" cy="100" r="60" ${more}/>`;
const half = '<path d="M0 0h120v200H0z" fill="#fff"/>';
const line = (more: string): string => `<path d="M20 100H280" stroke="#0a0" stroke-width="40" ${more}/>`;
const clip = (more: string, body: string): string =>
  `<clipPath id="c" ${more}>${body}</clipPath>${rect('clip-path="url(#c)"')}`;
const region = 'maskUnits="userSpaceOnUse" x="0" y="0" width="300" height="200"';
const mask = (more: string, body: string): string =>
  `<mask id="m" ${region} ${more}>${body}</mask>${rect('mask="url(#m)"')}`;
const marker = (more: string, data = "M100 100h50v50", at = "marker-start"): string =>
  `<marker id="k" markerWidth="60" markerHeight="60" markerUnits="userSpaceOnUse" ${more}><path d="M0 0h300v100z" fill="#00c"/></marker><path d="${data}" fill="none" stroke="#0a0" stroke-width="5" ${at}="url(#k)"/>`;
const symbol = (more: string, use = 'width="300" height="200"'): string =>
  `<symbol id="s" ${more}>${rect("")}</symbol><use href="#s" ${use}/>`;
const pattern = (more: string): string =>
  `<pattern id="p" width="300" height="200" patternUnits="userSpaceOnUse" ${more}><path d="M0 0h300v200H0z" fill="#0a0"/></pattern>${rect("").replace("#0a0", "url(#p)")}`;
const linear = (more: string, body = rect("")): string =>
  `<linearGradient id="l" ${more}><stop stop-color="#0a0"/><stop offset="1" stop-color="#0c0"/></linearGradient>${body.replaceAll("#0a0", "url(#l)")}`;
const radial = (more: string): string =>
  `<radialGradient id="l" ${more}><stop stop-color="#0a0"/><stop offset="1" stop-color="#0c0"/></radialGradient>${rect("").replace("#0a0", "url(#l)")}`;
const knives =
  '<clipPath id="d"><path d="M0 0h150v200H0z"/></clipPath><mask id="n" maskUnits="userSpaceOnUse" x="0" y="0" width="300" height="200"><path d="M0 0h150v200H0z" fill="#fff"/></mask>';

const alike: Readonly<Record<string, string>> = {
  "a clip path that is hidden": clip('visibility="hidden"', circle("")),
  "a clip path inside what is hidden": `<g visibility="hidden"><clipPath id="c">${circle("")}</clipPath></g>${rect('clip-path="url(#c)"')}`,
  "a clip path inside what is not displayed": `<g display="none"><clipPath id="c">${circle("")}</clipPath></g>${rect('clip-path="url(#c)"')}`,
  "a clip path of a stroke, which does not count": clip(
    "",
    circle('fill="none" stroke="red" stroke-width="30"'),
  ),
  "a clip path that is moved": clip('transform="translate(40)"', circle("")),
  "a clip path of a line": clip("", '<line x2="300" y2="200"/>'),
  "a mask that is hidden": mask('visibility="hidden"', circle('fill="#fff"')),
  "a mask with a child that is not displayed": mask("", `${circle('fill="#fff" display="none"')}${half}`),
  "a mask without width": mask("", half).replace('width="300"', 'width="0"'),
  "a mask whose child is masked": `${knives}${mask("", circle('fill="#fff" mask="url(#n)"'))}`,
  "a symbol that is hidden": symbol('visibility="hidden"'),
  "a marker that is hidden": marker('visibility="hidden"'),
  "a marker of a shape that is hidden": marker("", 'M100 100h50v50" visibility="hidden'),
  "a marker of a shape that shows at a third": marker("", 'M100 100h50v50" opacity=".3'),
  "a marker in percent": marker("").replace('markerWidth="60"', 'markerWidth="20%"'),
  "a marker on a rectangle, which has none": `${marker("", "")}${rect('stroke="#00c" stroke-width="9" marker-mid="url(#k)"')}`,
  "a marker with a viewBox": marker('viewBox="0 0 100 100" preserveAspectRatio="xMaxYMin meet"'),
  "a marker that does not cut": marker('overflow="visible"'),
  "an svg inside that is clipped": `${knives}<svg width="280" height="190" clip-path="url(#d)">${rect("")}</svg>`,
  "an svg inside with opacity": `<svg width="280" height="190" opacity=".6">${rect("")}</svg>`,
  "a use without width of a symbol": symbol('viewBox="0 0 300 200"', 'width="0"'),
  "a use without width of a group, which has its own": `<defs><g id="s">${rect("")}</g></defs><use href="#s" width="0" height="0"/>`,
  "a symbol stretched": symbol(
    'viewBox="0 0 300 300" preserveAspectRatio="none"',
    'x="20" width="260" height="120"',
  ),
  "a gradient of stops that are transparent": linear("").replaceAll("<stop ", '<stop stop-opacity="0" '),
  "a gradient of one stop": linear("").replace('<stop offset="1" stop-color="#0c0"/>', ""),
  "a gradient with stops beyond its ends": linear("").replace('offset="1"', 'offset="2"'),
  "a gradient in user space on a line": linear('gradientUnits="userSpaceOnUse" x2="300"', line("")),
  "a radius in percent": rect('rx="10%"'),
  "a radius of 0 beside another": rect('rx="0" ry="30"'),
  "an ellipse with one radius, upright": '<ellipse cx="150" cy="100" ry="60" fill="#0a0"/>',
  "a circle without radius and a stroke": circle('stroke="#0a0" stroke-width="60"').replace(
    '"60" stroke',
    '"0" stroke',
  ),
  "a rectangle without width and a stroke":
    '<rect x="50" y="50" width="0" height="100" stroke="#0a0" stroke-width="20"/>',
  "a stroke without width": line("").replace('"40"', '"0"'),
  "a stroke that is a hair": line("").replace('"40"', '".001"'),
  "a round dot": '<path d="M150 100h0" stroke="#0a0" stroke-width="80" stroke-linecap="round"/>',
  "a point without a line": '<path d="M150 100" stroke="#0a0" stroke-width="80" stroke-linecap="round"/>',
  "three dashes": line('stroke-dasharray="30 10 5"'),
  "dashes that begin before": line('stroke-dasharray="60 40" stroke-dashoffset="-30"'),
  "dashes round a rectangle": rect('stroke="#00c" stroke-width="20" stroke-dasharray="100 40"'),
  "dashes round a rounded one": rect('rx="20" stroke="#00c" stroke-width="20" stroke-dasharray="100 40"'),
  "dashes round a circle": circle('fill="none" stroke="#00c" stroke-width="20" stroke-dasharray="100 40"'),
  "a long mitre":
    '<path d="M60 150L150 50L70 160" fill="none" stroke="#0a0" stroke-width="10" stroke-miterlimit="100"/>',
  "a stroke that turns back":
    '<path d="M50 100C250 100 50 100 250 100" fill="none" stroke="#0a0" stroke-width="30" stroke-linejoin="round"/>',
  "an unknown feature": rect('requiredFeatures="x"'),
};

const refused: readonly (readonly [name: string, body: string, rule?: string])[] = [
  ["defs that are not displayed", `<defs display="none"><g id="s">${rect("")}</g></defs><use href="#s"/>`],
  ["dots of a dashed line", line('stroke-linecap="round" stroke-dasharray="0 60"')],
  ["a clip path whose child is clipped", `${knives}${clip("", `${half}${circle('clip-path="url(#d)"')}`)}`],
  ["a clip path that is not displayed", clip('display="none"', circle(""))],
  ["a mask that is not displayed", mask('display="none"', circle('fill="#fff"'))],
  ["a marker that is not displayed", marker('display="none"')],
  ["a symbol that is not displayed", symbol('display="none"')],
  ["a gradient that is not displayed", linear('display="none"')],
  ["a pattern that is not displayed", pattern('display="none"')],
  ["a mask that is masked", `${knives}${mask('mask="url(#n)"', circle('fill="#fff"'))}`],
  ["a mask that is clipped", `${knives}${mask('clip-path="url(#d)"', circle('fill="#fff"'))}`],
  ["a symbol that is clipped", `${knives}${symbol('clip-path="url(#d)"')}`],
  ["a symbol that is masked", `${knives}${symbol('mask="url(#n)"')}`],
  ["a symbol with opacity", symbol('opacity=".6"')],
  ["a pattern that is clipped", `${knives}${pattern('clip-path="url(#d)"')}`],
  ["a pattern with opacity", pattern('opacity=".6"')],
  [
    "a clip path of a use that is clipped",
    `${knives}<defs>${circle('id="k"')}</defs>${clip("", '<use href="#k" clip-path="url(#d)"/>')}`,
  ],
  ["a marker with a viewBox of other proportions", marker('viewBox="0 0 100 50"')],
  ["a marker sliced", marker('viewBox="0 0 100 50" preserveAspectRatio="xMidYMid slice"')],
  ["a pattern sliced", pattern('viewBox="0 0 100 100" preserveAspectRatio="xMidYMid slice"')],
  ["a gradient without length", linear('x1=".5" x2=".5"')],
  [
    "a gradient without length, from another",
    `<linearGradient id="j" x2=".5"/>${linear('x1=".5" href="#j"')}`,
  ],
  ["a round gradient without radius", radial('r="0"')],
  ["a square dot", '<path d="M150 100z" stroke="#0a0" stroke-width="80" stroke-linecap="square"/>'],
  [
    "round dots that lie over one another",
    '<path d="M112.8 22.3C212.2 187.7 225.2 18.1 96.9 128.4" fill="none" stroke="#828" stroke-width="60" stroke-linecap="round" stroke-dasharray="0 10 0 20"/>',
  ],
  [
    "dashes round an ellipse that the stroke covers",
    '<ellipse cx="50" cy="115" rx="1" ry="10" stroke="#828" stroke-width="50" stroke-dasharray="5 5"/>',
  ],
  [
    "a line without length and square ends",
    '<g stroke-linecap="square"><line x1="9" x2="9" stroke="#0a0" stroke-width="80"/></g>',
  ],
  [
    "a clip path by the box of a line",
    `<clipPath id="c" clipPathUnits="objectBoundingBox"><path d="M0 0h1v1H0z"/></clipPath>${line('clip-path="url(#c)"')}`,
  ],
  ["a mask by the box of a line", `<mask id="m">${half}</mask>${line('mask="url(#m)"')}`],
  ["a marker where a closed path begins", marker('orient="auto"', "M100 60h80v80h-80z")],
  [
    "a clip path with a child that is not displayed",
    clip("", `${circle('display="none"')}${half}`),
    "svg/unlike",
  ],
  [
    "a clip path with a child that is hidden",
    clip("", `${circle('visibility="hidden"')}${half}`),
    "svg/unlike",
  ],
  [
    "a clip path of a use that is not displayed",
    `<defs>${circle('id="k"')}</defs>${clip("", `<use href="#k" display="none"/>${half}`)}`,
    "svg/unlike",
  ],
  [
    "a clip path of a use of what is not displayed",
    `<defs>${circle('id="k" display="none"')}</defs>${clip("", `<use href="#k"/>${half}`)}`,
    "svg/unlike",
  ],
  ["a clip path of a group, which may not stand there", clip("", `<g>${circle("")}</g>`), "svg/unlike"],
  [
    "a clip path of a symbol, which may not stand there",
    `<symbol id="k">${circle("")}</symbol>${clip("", '<use href="#k"/>')}`,
    "svg/unlike",
  ],
  ["a clip path with opacity", clip('opacity="0"', circle('opacity="0"')), "svg/unlike"],
  ["a clip path that is clipped", `${knives}${clip('clip-path="url(#d)"', circle(""))}`, "svg/unlike"],
  [
    "a clip path that is masked, which does not count",
    `${knives}${clip('mask="url(#n)"', circle(""))}`,
    "svg/unlike",
  ],
  ["a mask with opacity", mask('opacity=".1"', circle('fill="#fff"')), "svg/unlike"],
  ["a marker with opacity", marker('opacity=".6"'), "svg/unlike"],
  ["a marker that is clipped", `${knives}${marker('clip-path="url(#d)"')}`, "svg/unlike"],
  ["a marker without width", marker("").replace('markerWidth="60"', 'markerWidth="0"'), "svg/too-far"],
  ["a marker on a point", marker("", "M100 60"), "svg/unlike"],
  ["an svg inside without width", `<svg width="0">${rect("")}</svg>`, "svg/too-far"],
  [
    "a symbol sliced",
    symbol('viewBox="0 0 300 300" preserveAspectRatio="xMinYMax slice"', 'x="20" width="260" height="120"'),
    "svg/unlike",
  ],
  ["a symbol that does not cut", symbol('overflow="visible"', 'width="100" height="100"'), "svg/unlike"],
  [
    "a viewBox without height inside",
    `<svg width="300" height="200" viewBox="0 0 300 0">${rect("")}</svg>`,
    "svg/too-far",
  ],
  [
    "a viewBox under 0 inside",
    `<svg width="300" height="200" viewBox="0 0 -300 200">${rect("")}</svg>`,
    "svg/too-far",
  ],
  ["a pattern with a viewBox", pattern('viewBox="0 0 300 200"'), "svg/unlike"],
  ["a pattern without width", pattern("").replace('width="300"', 'width="0"'), "svg/too-far"],
  ["a gradient that comes to nothing", linear('gradientTransform="scale(0)"'), "svg/too-far"],
  ["a gradient by the box of a line, which has no area", linear("", line("")), "svg/too-far"],
  ["a round gradient with its focus on its edge", radial('fx="1"'), "svg/unlike"],
  ["a place of a marker in percent", marker('refX="50%"'), "svg/number"],
  ["a marker turned without end", marker('orient="1e30"'), "svg/value"],
  ["a mitre without end", line('stroke-miterlimit="1e9"'), "svg/number"],
  ["a fill behind a blank that is none", rect("").replace("#0a0", "&#160;#c00"), "svg/value"],
  ["the same in a style", rect('style="fill:&#160;#c00"'), "svg/value"],
  ["a number behind such a blank", rect("").replace('"50"', '"&#160;50"'), "svg/number"],
  ["an opacity behind such a blank", rect('opacity="&#160;.5"'), "svg/value"],
  ["dashes with such a blank", line('stroke-dasharray="60&#160;40"'), "svg/value"],
  ["a number that ends in a point", rect("").replace('"50"', '"50."'), "svg/number"],
  ["an address with %20", `<defs><g id="a b">${rect("")}</g></defs><use href="#a%20b"/>`, "svg/reference"],
  [
    "a paint with %20",
    `${linear("").replace('id="l"', 'id="a b"').replace("url(#l)", "url(#a%20b)")}`,
    "svg/reference",
  ],
  ["no language at all", rect('systemLanguage=""'), "svg/unsupported"],
  ["no extension at all", rect('requiredExtensions=""'), "svg/unsupported"],
];

export const unlikeProbes: readonly Probe[] = [
  ...Object.entries(alike).map(([name, body]) => ({ name, text: svg(body) })),
  ...refused.map(([name, body, rule = "svg/unlike"]) => ({ name, text: svg(body), rule })),
];
