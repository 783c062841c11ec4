// Small drawings, each about one thing that a drawing may hold or try to: what a browser shows of each has to be what we
// measure and publish, or the drawing is refused. 300 by 200 units; `rule` is that of the refusal.
import { programProbes } from "./probe-program.ts";
import { unlikeProbes } from "./probe-unlike.ts";

export interface Probe {
  readonly name: string;
  readonly text: string;
  /** Absent where the drawing is accepted. */
  readonly rule?: string;
}

const head = 'xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"';
const svg = (body: string, attributes = 'viewBox="0 0 300 200"'): string =>
  `<svg ${head} ${attributes}>${body}</svg>`;

/** The rectangle that most probes are about: 200 by 120 in the middle. */
const box = 'x="50" y="40" width="200" height="120"';
const rect = (more: string): string => `<rect ${box} ${more}/>`;
const sheet = (css: string, body: string): string =>
  svg(`<style>${css.replaceAll("<", "&lt;")}</style>${body}`);

/** A style sheet that would colour the rectangle, which is red without it, green. */
const selects = (selector: string, more = 'class="a b" id="x"'): string =>
  sheet(`${selector}{fill:#0a0}`, `<g class="h" id="g">${rect(`${more} fill="#c00"`)}</g>`);

type Row = readonly [name: string, text: string, rule?: string];

const selectors: readonly Row[] = [
  ["a type", selects("rect")],
  ["every type", selects("*")],
  ["a type in capitals matches nothing", selects("RECT")],
  ["a class", selects(".a")],
  ["two classes", selects(".a.b")],
  ["a class in capitals matches nothing", selects(".A")],
  ["an id", selects("#x")],
  ["an attribute that is equal", selects('[class="a b"]')],
  ["an attribute that is equal to a word", selects("[id=x]")],
  ["an attribute of the geometry", selects('rect[width="200"]')],
  ["a descendant", selects("svg rect")],
  ["a descendant of a descendant", selects("svg g rect")],
  ["a child", selects("g > rect")],
  ["a child that is a grandchild", selects("svg > rect")],
  ["a child below a descendant, which has to be tried again", selects("svg > g rect")],
  ["the first child", selects("rect:first-child")],
  [
    "the first child, behind a title",
    svg(`<style>rect:first-child{fill:#0a0}</style><g><title>a</title>${rect("")}</g>`),
  ],
  [
    "the first child, behind an element of an editor",
    svg(
      `<style>rect:first-child{fill:#0a0}</style><g><e:view xmlns:e="http://example.org/e"/>${rect("")}</g>`,
    ),
  ],
  ["the second child", sheet("rect:nth-child(2){fill:#0a0}", `<g><path d="M0 0h9v9z"/>${rect("")}</g>`)],
  [
    "odd children",
    sheet("rect:nth-child(odd){fill:#0a0}", `<g>${rect("")}<rect width="40" height="40"/></g>`),
  ],
  ["every third child but one", sheet("rect:nth-child(3n - 1){fill:#0a0}", `<g><path/>${rect("")}</g>`)],
  ["the first three children", sheet("rect:nth-child(-n+3){fill:#0a0}", `<g><path/>${rect("")}</g>`)],
  ["the first child of nothing: the root", sheet("svg:first-child{fill:#0a0}", rect(""))],
  ["all but a class", selects("rect:not(.c)")],
  ["all but a list", selects("rect:not(.c, #y)")],
  ["all but what it is", selects("rect:not(.a)")],
  ["all but a descendant", selects("rect:not(g rect)")],
  ["a list", selects("path, .a")],
  ["an id over two classes", sheet("#x{fill:#0a0} .a.b{fill:#00c}", rect('id="x" class="a b"'))],
  ["the later of equals", sheet(".a{fill:#00c} .b{fill:#0a0}", rect('class="b a"'))],
  ["not() counts as its argument", sheet("rect:not(#y){fill:#0a0} rect.a.b{fill:#00c}", rect('class="a b"'))],
  [":is()", selects(":is(.a, path)"), "svg/selector"],
  [":where()", selects(":where(.a)"), "svg/selector"],
  [":has()", selects("g:has(rect) rect"), "svg/selector"],
  [":root", selects(":root rect"), "svg/selector"],
  [":empty", selects("rect:empty"), "svg/selector"],
  [":last-child", selects("rect:last-child"), "svg/selector"],
  [":first-of-type", selects("rect:first-of-type"), "svg/selector"],
  [":dir()", selects("rect:dir(ltr)"), "svg/selector"],
  [":defined", selects("rect:defined"), "svg/selector"],
  [":hover", selects("rect:not(:hover)"), "svg/selector"],
  [":target", selects("rect:not(:target)"), "svg/selector"],
  [":lang()", selects("rect:lang(en)"), "svg/selector"],
  [":nth-child(… of …)", selects("rect:nth-child(1 of .a)"), "svg/selector"],
  ["::before", selects("rect::before"), "svg/selector"],
  ["a sibling", selects("path + rect"), "svg/selector"],
  ["a later sibling", selects("path ~ rect"), "svg/selector"],
  ["an attribute that is there", selects("[class]"), "svg/selector"],
  ["an attribute that has a word", selects("[class~=a]"), "svg/selector"],
  ["an attribute that begins", selects('[class^="a"]'), "svg/selector"],
  ["an attribute in any case", selects("[id=X i]"), "svg/selector"],
  ["a namespace", selects("*|rect"), "svg/selector"],
  ["a list with an end of nothing", selects("rect,"), "svg/selector"],
  ["nesting", sheet("g{ rect{fill:#0a0} }", `<g>${rect("")}</g>`), "svg/css"],
  ["@media", sheet("@media screen{rect{fill:#0a0}}", rect("")), "svg/css"],
  ["@supports", sheet("@supports (fill:red){rect{fill:#0a0}}", rect("")), "svg/css"],
  ["@layer", sheet("@layer a{rect{fill:#0a0}}", rect("")), "svg/css"],
  ["@namespace", sheet("@namespace url(http://example.org/);rect{fill:#0a0}", rect("")), "svg/css"],
  ["@keyframes", sheet("@keyframes a{to{fill:#0a0}}", rect("")), "svg/css"],
  ["@import of nothing", sheet("@import 'a.css';rect{fill:#0a0}", rect(""))],
  ["a font", sheet("@font-face{font-family:a;src:url(a.woff)}rect{fill:#0a0}", rect(""))],
  ["a comment in a selector", sheet("g/**/rect{fill:#0a0}", `<g>${rect("")}</g>`), "svg/selector"],
  ["a comment in a value", sheet("rect{fill:/* red */#0a0}", rect(""))],
  ["a rule that does not end", sheet("rect{fill:#0a0", rect(""))],
  [
    "a bracket too many",
    sheet("rect{fill:#0a0}} path{fill:#00c}", `${rect("")}<path d="M0 0h40v40z"/>`),
    "svg/selector",
  ],
  ["type text/css", svg(`<style type="text/css">rect{fill:#0a0}</style>${rect("")}`)],
  ["type text/plain", svg(`<style type="text/plain">rect{fill:#0a0}</style>${rect("")}`), "svg/css"],
  ["for print", svg(`<style media="print">rect{fill:#0a0}</style>${rect("")}`), "svg/css"],
  ["a sheet with a title", svg(`<style title="a">rect{fill:#0a0}</style>${rect("")}`), "svg/css"],
  ["a sheet in an unknown element", svg(`<metadata><style>rect{fill:#0a0}</style></metadata>${rect("")}`)],
  [
    "a sheet of a web page",
    svg(`<style xmlns="http://www.w3.org/1999/xhtml">rect{fill:#0a0}</style>${rect("")}`),
    "svg/css",
  ],
  ["a sheet in CDATA", svg(`<style><![CDATA[g > rect{fill:#0a0}]]></style><g>${rect("")}</g>`)],
];

const shared = `<defs><g class="s" id="s">${rect('class="t"')}</g></defs>`;
const inheritance: readonly Row[] = [
  ["important in a sheet", sheet("rect{fill:#0a0!important}", rect('style="fill:#00c"'))],
  ["important in a style", sheet("rect{fill:#00c!important}", rect('style="fill:#0a0!important"'))],
  ["!ie, which is a mistake", sheet("rect{fill:#00c!ie}", rect('fill="#0a0"')), "svg/css"],
  ["a rule over an attribute", sheet("rect{fill:#0a0}", rect('fill="#00c"'))],
  ["inherit", `${svg(`<g fill="#0a0">${rect('fill="inherit"')}</g>`)}`],
  ["inherit over a rule", sheet("rect{fill:#00c}", `<g fill="#0a0">${rect('style="fill:inherit"')}</g>`)],
  ["unset", svg(`<g fill="#0a0">${rect('style="fill:unset"')}</g>`)],
  ["initial", svg(`<g fill="#0a0">${rect('style="fill:initial"')}</g>`)],
  ["revert", svg(`<g fill="#0a0">${rect('style="fill:revert"')}</g>`), "svg/value"],
  ["inherit of what is not inherited", svg(`<g opacity=".5">${rect('opacity="inherit"')}</g>`), "svg/value"],
  ["currentColor", svg(`<g color="#0a0">${rect('fill="currentColor"')}</g>`)],
  ["currentColor in small letters", svg(`<g color="#0a0">${rect('fill="currentcolor"')}</g>`)],
  [
    "currentColor is inherited as a word",
    svg(`<g color="#00c" fill="currentColor">${rect('color="#0a0"')}</g>`),
  ],
  [
    "a colour that is currentColor",
    svg(`<g color="#0a0"><g color="currentColor">${rect('fill="currentColor"')}</g></g>`),
  ],
  ["a use gives its fill", svg(`${shared}<use href="#s" fill="#0a0"/>`)],
  [
    "a rule that finds what a use shows only where it was written",
    sheet("defs .t{fill:#0a0}", `${shared}<use href="#s"/>`),
    "svg/selector",
  ],
  [
    "a rule that looks through a use finds nothing",
    sheet(".u .t{fill:#0a0}", `${shared}<g class="u"><use href="#s"/></g>`),
  ],
  ["a rule that finds what a use shows inside it", sheet(".s .t{fill:#0a0}", `${shared}<use href="#s"/>`)],
  [
    "a rule that finds the first child, which a use makes of it",
    sheet("g:first-child rect{fill:#0a0}", `<defs><path/><g id="s">${rect("")}</g></defs><use href="#s"/>`),
    "svg/selector",
  ],
  ["a use of a use", svg(`${shared}<defs><use id="v" href="#s" fill="#0a0"/></defs><use href="#v" x="10"/>`)],
  [
    "href before xlink:href",
    svg(`${shared}<path id="p" d="M0 0h50v50z"/><use xlink:href="#p" href="#s" fill="#0a0"/>`),
  ],
  [
    "marker as a shorthand in a style",
    svg(
      '<marker id="m" markerWidth="9" markerHeight="9"><path d="M0 0h9v9H0z" fill="#0a0"/></marker><path d="M50 50h99v50" stroke="#00c" stroke-width="9" fill="none" style="marker:url(#m)"/>',
    ),
  ],
  [
    "marker as an attribute, which is none",
    svg(
      '<marker id="m" markerWidth="9" markerHeight="9"><path d="M0 0h9v9H0z" fill="#0a0"/></marker><path d="M50 50h99v50" stroke="#00c" stroke-width="9" fill="none" marker="url(#m)"/>',
    ),
  ],
  [
    "marker-end over marker",
    svg(
      '<marker id="m" markerWidth="9" markerHeight="9"><path d="M0 0h9v9H0z" fill="#0a0"/></marker><path d="M50 50h99v50" stroke="#00c" stroke-width="9" fill="none" style="marker:url(#m);marker-end:none"/>',
    ),
  ],
  ["all", svg(`<g fill="#0a0">${rect('fill="#00c" style="all:unset"')}</g>`), "svg/unsupported"],
  ["a variable", svg(rect('style="--a:#0a0;fill:var(--a)"')), "svg/value"],
  ["a property in capitals", svg(rect('style="FILL:#0a0"'))],
  ["a word in capitals", svg(`<g fill="#0a0">${rect('fill="NONE" stroke="#00c" stroke-width="20"')}</g>`)],
];

const colour = (value: string, rule?: string): Row => [
  `fill: ${value}`,
  svg(`<g fill="#00c">${rect(`fill="${value}"`)}</g>`),
  ...(rule === undefined ? ([] as const) : ([rule] as const)),
];
const colours: readonly Row[] = [
  colour("#0a0"),
  colour("#00aa00"),
  colour("#0a08"),
  colour("#00aa0080"),
  colour("green"),
  colour("RebeccaPurple"),
  colour("transparent"),
  colour("rgb(0, 170, 0)"),
  colour("rgb(0%, 66.6%, 0%)"),
  colour("rgb(0 170 0)"),
  colour("rgb(0 170 0 / 50%)"),
  colour("rgba(0, 170, 0, .5)"),
  colour("rgba(0, 170, 0, 50%)"),
  colour("rgb(-9, 300, 0)"),
  colour("rgb(0.4, 170.4, 0)"),
  colour("hsl(120, 100%, 33%)"),
  colour("hsl(480deg 100% 33%)"),
  colour("hsla(120, 100%, 33%, .5)"),
  colour("#0a"),
  colour("#0g0"),
  colour("gren"),
  colour(""),
  colour("url(#none) #0a0"),
  colour("url(#none)"),
  colour("rgb(0, 66%, 0)", "svg/value"),
  colour("rgb(none 170 0)", "svg/value"),
  colour("rgb(calc(1 + 2) 170 0)", "svg/value"),
  colour("hwb(120 0% 33%)", "svg/value"),
  colour("lab(60% -60 60)", "svg/value"),
  colour("lch(60% 80 130)", "svg/value"),
  colour("oklab(60% -.2 .1)", "svg/value"),
  colour("oklch(60% .2 140)", "svg/value"),
  colour("color(display-p3 0 1 0)", "svg/value"),
  colour("color(srgb 0 1 0)", "svg/value"),
  colour("color-mix(in srgb, red, lime)", "svg/value"),
  colour("light-dark(#0a0, #c00)", "svg/value"),
  colour("Canvas", "svg/value"),
  colour("AccentColor", "svg/value"),
  colour("ButtonText", "svg/value"),
  colour("context-fill", "svg/value"),
  colour("#0a0 icc-color(a, 1)", "svg/value"),
];

const filled = (more: string): string => rect(`fill="#0a0" ${more}`);
const line = (more: string): string =>
  `<path d="M60 150L150 50L240 150" fill="none" stroke="#0a0" stroke-width="20" ${more}/>`;
const values: readonly Row[] = [
  ["opacity", svg(filled('opacity=".5"'))],
  ["opacity in percent", svg(filled('opacity="50%"'))],
  ["opacity over 1", svg(filled('opacity="3"'))],
  ["opacity under 0", svg(filled('opacity="-1"'))],
  ["fill-opacity in percent", svg(filled('fill-opacity="50%"'))],
  ["opacity that is a word", svg(filled('opacity="half"')), "svg/number"],
  ["stroke-width in pixels", svg(line('style="stroke-width:30px"'))],
  ["stroke-width in points", svg(line('style="stroke-width:30pt"'))],
  ["stroke-width in millimetres", svg(line('style="stroke-width:8mm"'))],
  ["stroke-width in inches", svg(line('style="stroke-width:.4in"'))],
  ["stroke-width in percent", svg(line('style="stroke-width:10%"'))],
  ["stroke-width in em", svg(line('style="stroke-width:2em"')), "svg/unit"],
  ["stroke-width in ch", svg(line('style="stroke-width:4ch"')), "svg/unit"],
  ["stroke-width in vw", svg(line('style="stroke-width:5vw"')), "svg/unit"],
  ["stroke-width under 0", svg(line('style="stroke-width:-5"')), "svg/number"],
  ["stroke-width with calc()", svg(line('style="stroke-width:calc(10px + 5px)"')), "svg/value"],
  ["dashes", svg(line('stroke-dasharray="30 10"'))],
  ["dashes with commas", svg(line('stroke-dasharray="30,10,  5"'))],
  ["dashes in points", svg(line('stroke-dasharray="30pt 10pt"'))],
  ["dashes in percent", svg(line('stroke-dasharray="10% 5%"'))],
  ["dashes of nothing", svg(line('stroke-dasharray="0 0"'))],
  ["dashes under 0", svg(line('stroke-dasharray="9 -3"')), "svg/number"],
  ["dashes in rem", svg(line('stroke-dasharray="2rem"')), "svg/unit"],
  ["dashes that begin later", svg(line('stroke-dasharray="30 20" stroke-dashoffset="15"'))],
  ["round ends", svg(line('stroke-linecap="round" stroke-linejoin="round"'))],
  ["bevelled corners", svg(line('stroke-linejoin="bevel"'))],
  ["corners that are arcs", svg(line('stroke-linejoin="arcs"')), "svg/value"],
  ["corners that are cut", svg(line('stroke-linejoin="miter-clip"')), "svg/value"],
  ["a limit of mitres", svg(line('stroke-miterlimit="1"'))],
  ["a limit of mitres under 1", svg(line('stroke-miterlimit="0.5"')), "svg/number"],
  [
    "a rule of filling",
    svg('<path d="M50 50h200v100H50zM90 70h120v60H90z" fill="#0a0" fill-rule="evenodd"/>'),
  ],
  ["a rule of filling that is none", svg('<path d="M50 50h200v100H50z" fill-rule="odd"/>'), "svg/value"],
  ["display: none", svg(filled('display="none"'))],
  ["display: block", svg(filled('display="block"'))],
  ["display: contents", svg(`<g display="contents">${filled("")}</g>`), "svg/value"],
  ["display: none over display", sheet("rect{display:none}", filled('display="inline"'))],
  ["visibility", svg(`<g visibility="hidden">${filled('visibility="visible"')}<path d="M0 0h50v50z"/></g>`)],
  ["visibility: collapse", svg(filled('visibility="collapse"'))],
  ["paint-order", svg(rect('fill="#0a0" stroke="#00c" stroke-width="40" paint-order="stroke"'))],
  [
    "paint-order of one word twice",
    svg(rect('fill="#0a0" stroke="#00c" stroke-width="40" paint-order="stroke stroke"')),
    "svg/value",
  ],
  [
    "a stroke that does not scale",
    svg(`<g transform="scale(.5)">${line('vector-effect="non-scaling-stroke"')}</g>`),
    "svg/value",
  ],
  [
    "color-interpolation: linearRGB",
    svg(
      `<mask id="m" maskUnits="userSpaceOnUse" x="0" y="0" width="300" height="200" color-interpolation="linearRGB"><path d="M0 0h300v200H0z" fill="#888"/></mask>${filled('mask="url(#m)"')}`,
    ),
    "svg/value",
  ],
  ["color-interpolation: sRGB", svg(filled('color-interpolation="sRGB"'))],
  ["blending with nothing", svg(filled('style="mix-blend-mode:multiply"'))],
  [
    "blending as an attribute",
    svg(`<rect width="300" height="200" fill="#ff0"/>${filled('mix-blend-mode="multiply"')}`),
  ],
  ["a filter", svg(filled('style="filter:blur(9px)"')), "svg/unsupported"],
  ["a transform in a style", svg(filled('style="transform:rotate(9deg)"')), "svg/unsupported"],
  ["rotate in a style", svg(filled('style="rotate:9deg"')), "svg/unsupported"],
  ["an animation in a style", svg(filled('style="animation:a 1s"')), "svg/unsupported"],
  ["zoom", svg(filled('style="zoom:2"')), "svg/unsupported"],
  ["an outline", svg(filled('style="outline:20px solid red"')), "svg/unsupported"],
  ["a background on a shape, which has none", svg(filled('style="background:red"'))],
  ["a background on the root", svg(filled(""), 'viewBox="0 0 300 200" style="background:red"'), "svg/root"],
  ["a border on the root, from a sheet", sheet("svg{border:30px solid red}", filled("")), "svg/root"],
  ["width in a style", svg(filled('style="width:90px"')), "svg/unsupported"],
  [
    "width in a style of a path, which has none",
    svg('<path style="width:90px" d="M50 50h99v99z" fill="#0a0"/>'),
  ],
  ["r in a sheet", sheet("circle{r:80px}", '<circle cx="150" cy="100" r="20"/>'), "svg/unsupported"],
  ["d in a style", svg(`<path d="M50 50h99v99z" style='d:path("M0 0h300v200H0z")'/>`), "svg/unsupported"],
  ["an unknown style", svg(filled('style="colour:red"'))],
  ["isolation", svg(`<g style="isolation:isolate">${filled("")}</g>`)],
];

const pathOf = (data: string): string =>
  svg(`<path d="${data}" fill="#0a0" stroke="#00c" stroke-width="6"/>`);
const pointsOf = (points: string): string => svg(`<polygon points="${points}" fill="#0a0"/>`);

const geometry: readonly Row[] = [
  ["millimetres", svg('<rect x="5mm" y="5mm" width="40mm" height="30mm" fill="#0a0"/>')],
  ["centimetres and points", svg('<rect x="1cm" y="30pt" width="5cm" height="4pc" fill="#0a0"/>')],
  ["percent", svg('<rect x="10%" y="10%" width="50%" height="60%" fill="#0a0"/>')],
  ["percent in a circle", svg('<circle cx="50%" cy="50%" r="20%" fill="#0a0"/>')],
  ["em", svg('<rect width="9em" height="90" fill="#0a0"/>'), "svg/unit"],
  ["ex", svg('<circle cx="150" cy="100" r="9ex" fill="#0a0"/>'), "svg/unit"],
  ["rem", svg('<rect width="9rem" height="90" fill="#0a0"/>'), "svg/unit"],
  ["vh", svg('<rect width="90" height="50vh" fill="#0a0"/>'), "svg/unit"],
  ["an exponent", svg('<rect x="5e1" y="4E1" width="2e2" height="1.2e+2" fill="#0a0"/>')],
  ["a width under 0", svg('<rect width="-50" height="90" fill="#0a0"/>'), "svg/number"],
  ["a radius under 0", svg('<circle r="-50" fill="#0a0"/>'), "svg/number"],
  ["two numbers for one", svg('<rect x="50 90" width="90" height="90" fill="#0a0"/>'), "svg/number"],
  ["rounded corners, one radius", svg(filled('rx="40"'))],
  ["rounded corners, auto", svg(filled('rx="40" ry="auto"')), "svg/number"],
  ["rounded corners, too round", svg(filled('rx="400" ry="20"'))],
  ["an ellipse with one radius", svg('<ellipse cx="150" cy="100" rx="60" fill="#0a0"/>')],
  ["an ellipse, auto", svg('<ellipse cx="150" cy="100" rx="60" ry="auto" fill="#0a0"/>'), "svg/number"],
  ["a path with an arc", svg('<path d="M60 100A90 60 20 1 0 240 100z" fill="#0a0"/>')],
  ["a path with arc flags run together", svg('<path d="M60 100a90 60 20 10180 0z" fill="#0a0"/>')],
  ["points, an odd number", svg('<polygon points="50,50 250,50 250,150 50" fill="#0a0"/>'), "svg/number"],
  [
    "points, parted by a sign or a point alone",
    svg(
      '<g transform="translate(150 100)"><polygon points="0-90 80-20 50.5.5 50 70-50 70-80-20" fill="#0a0"/></g>',
    ),
  ],
  [
    "points, an open line",
    svg('<polyline points="50,50 250,50 250,150" fill="#0a0" stroke="#00c" stroke-width="9"/>'),
  ],
  ["transforms", svg(`<g transform="translate(20) rotate(9 150 100),scale(.8)">${filled("")}</g>`)],
  ["a matrix", svg(`<g transform="matrix(.8 .1-.2 .9 30 20)">${filled("")}</g>`)],
  ["a rotation about half a point", svg(filled('transform="rotate(9 150)"')), "svg/number"],
  ["a matrix of five", svg(filled('transform="matrix(1 0 0 1 9)"')), "svg/number"],
  ["a transform in degrees", svg(filled('transform="rotate(9deg)"')), "svg/number"],
  ["a transform of 0", svg(filled('transform="scale(0)"')), "svg/too-far"],
  ["transform-origin", svg(filled('transform-origin="150 100" transform="scale(.5)"')), "svg/unsupported"],
  ["pathLength", svg(line('pathLength="10" stroke-dasharray="1 1"')), "svg/unsupported"],
  ["systemLanguage", svg(filled('systemLanguage="xx"')), "svg/unsupported"],
  ["requiredExtensions", svg(filled('requiredExtensions="http://example.org/x"')), "svg/unsupported"],
  [
    "an svg inside",
    svg(
      `<svg x="50" y="40" width="100" height="100" viewBox="0 0 10 20"><rect width="10" height="20" fill="#0a0"/></svg>`,
    ),
  ],
  [
    "an svg inside, stretched",
    svg(
      `<svg x="50" y="40" width="100" height="100" viewBox="0 0 10 20" preserveAspectRatio="none"><rect width="10" height="20" fill="#0a0"/></svg>`,
    ),
  ],
  [
    "an svg inside, sliced",
    svg(
      `<svg x="50" y="40" width="100" height="100" viewBox="0 0 10 20" preserveAspectRatio="xMinYMax slice"><circle cx="5" cy="15" r="5" fill="#0a0"/></svg>`,
    ),
    "svg/unlike",
  ],
  ["an svg inside that cuts", svg(`<svg x="50" y="40" width="100" height="60">${filled("")}</svg>`)],
  [
    "an svg inside that does not cut",
    svg(`<svg x="50" y="40" width="100" height="60" overflow="visible">${filled("")}</svg>`),
    "svg/unlike",
  ],
  [
    "an svg inside that scrolls",
    svg(`<svg x="50" y="40" width="100" height="60" overflow="scroll">${filled("")}</svg>`),
  ],
  [
    "an svg inside, overflow auto",
    svg(`<svg x="50" y="40" width="100" height="60" overflow="auto">${filled("")}</svg>`),
    "svg/unlike",
  ],
  [
    "an svg inside with a transform",
    svg(`<svg transform="rotate(9)" width="200" height="160">${filled("")}</svg>`),
    "svg/unlike",
  ],
  [
    "an svg inside without a size",
    svg(`<svg viewBox="0 0 30 30"><rect width="30" height="30" fill="#0a0"/></svg>`),
  ],
  ["an svg inside with five numbers", svg(`<svg viewBox="0 0 30 30 4">${filled("")}</svg>`), "svg/number"],
  [
    "a symbol",
    svg(
      '<symbol id="s" viewBox="0 0 10 10"><rect width="10" height="10" fill="#0a0"/></symbol><use href="#s" x="50" y="20" width="100" height="100"/>',
    ),
  ],
  [
    "a symbol that cuts",
    svg(
      '<symbol id="s" viewBox="0 0 10 10"><circle r="10" fill="#0a0"/></symbol><use href="#s" x="50" y="20" width="100" height="100"/>',
    ),
  ],
  [
    "a symbol without a size",
    svg(
      '<symbol id="s" viewBox="0 0 10 10"><rect width="10" height="10" fill="#0a0"/></symbol><use href="#s"/>',
    ),
  ],
  [
    "a symbol with a size of its own",
    svg(
      '<symbol id="s" viewBox="0 0 10 10" width="90" height="90"><rect width="10" height="10" fill="#0a0"/></symbol><use href="#s" x="50" y="20"/>',
    ),
  ],
  [
    "a symbol with refX",
    svg(
      '<symbol id="s" viewBox="0 0 10 10" refX="5" refY="5"><rect width="10" height="10" fill="#0a0"/></symbol><use href="#s" x="150" y="100" width="100" height="100"/>',
    ),
    "svg/unlike",
  ],
  [
    "a use of an svg",
    svg(
      '<defs><svg id="s" width="50" height="50" viewBox="0 0 10 10"><rect width="10" height="10" fill="#0a0"/></svg></defs><use href="#s" x="50" y="20" width="120"/>',
    ),
  ],
  [
    "a use of a clip path, which shows nothing",
    svg(`<clipPath id="c">${filled("")}</clipPath><use href="#c"/>`),
  ],
];

/** Data of a path, points, transforms and viewBoxes: right by their grammars, or with one error. */
const lists: readonly Row[] = [
  ...[
    "M50 50 150 50 150 150",
    "M50,50,150,50,150,150z",
    "M50 50L150-50L150+150z",
    "M50 50 L.5.5 150.5.5e2 150 150",
    "M50 50L1.5e2 5e1L1.5E2 1.5e2z",
    "M50 100a50 50 0 01100 0z",
    "M50 100a50 50 0,0,1,100 0z",
    "M50 100a-50 -50 0 1 1 100 0z",
    "M50 100a0 50 0 1 1 100 0z",
    "M50 100a50 50 0 1 1 0 0z",
    "M50 100a10 10 0 1 1 100 0z",
    "M50 100a50 30 1e3 1 1 100 0z",
    "M50 100a50 50 0 1 1 100 0 50 50 0 1 1 -50 -50z",
    "M50 50s50 0 100 100z",
    "M50 50t50 0 50 50z",
    "M50 50q50 0 50 50t50 50s 20 30 40 0z",
    "m50 50 100 0 0 100z m20 20 50 0 0 50z",
    "M50 50zl100 0 0 100z",
    "M50 50h100v100zl-20 30h60",
    "M50 50 m10 10 l100 0 0 90z",
    "M50 50&#10;L150&#9;50&#13;L150 150z",
    "M50 50L00150 050L150 150z",
    "M50 50L150 50L150 150Z Z Z",
    "M50 50h1 2 3 100v100z",
    "none",
    "",
    "M50 50",
    "M50 50h0",
  ].map((data): Row => [`path data ${data}`, pathOf(data)]),
  ...[
    "M50 50,L150 50,L150 150z",
    "M50 50L150 50 150",
    "M50 50,,150 50 150 150z",
    ",M50 50 150 50 150 150z",
    "M50 50 150 50 150 150,z",
    "M50 50 150 50 150 150z,",
    "M50 50 150 50z 150 150",
    "M50 50H150 V 150 z M",
    "50 50 150 50 150 150z",
    "L50 50h200v100z",
    "M50 50h200v100zQ50",
    "M50 50h200v100 L",
    "M50 50L150. 50L150 150.",
    "M5.e1 50L150 50L150 150Z",
    "M5e 50L150 50L150 150z",
    "M50 100a50 50 0 2 1 100 0z",
    "M50 100a50 50 0 0.5 1 100 0z",
    "M50 100a50 50 0 +1 1 100 0z",
    "M50 50L1e400 50L150 150z",
    "M50 50L0x10 50L150 150z",
    "M50 50L+-1 50L150 150z",
    "MM50 50L150 50L150 150Z",
    "M50 50R 100 100 150 50",
    "M50 50L−150 50L150 150Z",
    "M50 50&#160;L150 50L150 150Z",
    "M50 50&#8203;L150 50L150 150Z",
  ].map((data): Row => [`path data ${data}`, pathOf(data), "svg/number"]),
  ...["50,50,150,50,150,150", "50-50 150+50 150.5.5", "50 50 1e2 5e1 150 150", "", "50 50"].map(
    (points): Row => [`points ${points}`, pointsOf(points)],
  ),
  ...[
    "50,50,,150,50,150,150",
    "50,50 150,50 150,150,",
    "50 50 150 50 150 150 60",
    "50 50 150px 50 150 150",
    "50. 50. 150 50 150 150",
    "50 50&#160;150 50 150 150",
    "50 50 1e400 50 150 150",
    "50;50 150;50 150;150",
  ].map((points): Row => [`points ${points}`, pointsOf(points), "svg/number"]),
  ...[
    "translate( 20 )",
    "translate (20)rotate(9)",
    "matrix(1,0,0,1,20,20)",
    "scale(-1) translate(-300 -200)",
    "rotate(30-50-50)",
    "translate(20&#10;20)",
    "",
  ].map((list): Row => [`transform ${list}`, svg(filled(`transform="${list}"`))]),
  ...["scale(0,1)", "matrix(1 1 1 1 0 0)", "skewX(90)"].map(
    (list): Row => [`transform ${list}`, svg(filled(`transform="${list}"`)), "svg/too-far"],
  ),
  ...[
    "translate(20,,20)",
    "translate(,20)",
    "translate(20),",
    ",translate(20)",
    "translate(20),,rotate(9)",
    "translate(20.)",
    "translate(20&#160;20)",
    "translate(20);",
    "translate(.5.5.5)",
    "TRANSLATE(20)",
    "none",
  ].map((list): Row => [`transform ${list}`, svg(filled(`transform="${list}"`)), "svg/number"]),
  ...["0,0 , 300 ,200", " 0 0 3e2 +200 "].map(
    (box): Row => [`viewBox ${box}`, svg(filled(""), `viewBox="${box}"`)],
  ),
  ...["0 0 300. 200", "0&#160;0 300 200", "0,,0 300 200", "0 0 300 200,", "0 0 .03 .02"].map(
    (box): Row => [`viewBox ${box}`, svg(filled(""), `viewBox="${box}"`), "svg/viewbox"],
  ),
];

/** Numbers that are large, or become so. */
const far: readonly Row[] = [
  ["a path up to 50 times the viewBox", pathOf("M50 50H14999V150H50z")],
  ["a slanted band as far", pathOf("M-14000 -14000L14000 14000V14060L-14000 -13940z")],
  ["a circle as far", svg('<circle cx="7500" cy="100" r="7400" fill="#0a0"/>')],
  ["an arc of a huge circle", pathOf("M100 0A1e6 1e6 0 0 0 100 200H250V0z")],
  ["a transform that leans over for ever", svg(filled('transform="skewX(90)"')), "svg/too-far"],
  ["a path far beyond", pathOf("M50 50H1e30V150H50z"), "svg/too-far"],
  ["a slanted band far beyond", pathOf("M-3e5 -3e5L3e5 3e5V300060L-3e5 -299940z"), "svg/too-far"],
  ["a stroke far beyond", svg('<path d="M-1e8 100H1e8" stroke="#0a0" stroke-width="40"/>'), "svg/too-far"],
  [
    "numbers a hundred thousand times too large",
    svg(
      '<g transform="scale(1e-5)"><path d="M5e6 4e6H2.5e7V1.6e7z" fill="#0a0" stroke="#00c" stroke-width="9e5"/></g>',
    ),
  ],
  [
    "numbers a million times too large",
    svg('<g transform="scale(1e-6)"><rect x="5e7" y="4e7" width="2e8" height="1.2e8" fill="#0a0"/></g>'),
    "svg/too-far",
  ],
  [
    "numbers ten thousand times too small",
    svg(
      '<g transform="scale(1e4)"><path d="M.005 .004H.025V.016z" fill="#0a0" stroke="#00c" stroke-width=".0009"/></g>',
    ),
  ],
  [
    "numbers of a ten thousand millionth",
    svg('<g transform="scale(1e10)"><rect x="5e-9" y="4e-9" width="2e-8" height="1.2e-8" fill="#0a0"/></g>'),
    "svg/too-far",
  ],
  [
    "away and back by a thousand viewBoxes",
    svg(`<g transform="translate(149000.3)"><g transform="translate(-149000.3)">${filled("")}</g></g>`),
  ],
  [
    "away and back by a thousand million",
    svg(`<g transform="translate(1e9)"><g transform="translate(-1e9)">${filled("")}</g></g>`),
    "svg/too-far",
  ],
  [
    "a viewBox off the corner by 900 times",
    svg('<rect x="270050" y="40" width="200" height="120" fill="#0a0"/>', 'viewBox="270000 0 300 200"'),
  ],
  ["a viewBox off the corner by millions", svg(filled(""), 'viewBox="1e9 1e9 300 200"'), "svg/too-far"],
  [
    "a small viewBox",
    svg(
      '<path d="M.05 .04L.25 .04L.25 .16z" fill="#0a0" stroke="#00c" stroke-width=".01"/>',
      'viewBox="0 0 .3 .2"',
    ),
  ],
];

const gradient = (
  more: string,
  stops = '<stop stop-color="#0a0"/><stop offset="1" stop-color="#00c"/>',
): string => svg(`<linearGradient id="l" ${more}>${stops}</linearGradient>${rect('fill="url(#l)"')}`);
const servers: readonly Row[] = [
  ["a gradient", gradient("")],
  ["a gradient, upright", gradient('x2="0" y2="1"')],
  ["a gradient in user space", gradient('gradientUnits="userSpaceOnUse" x1="50" x2="150"')],
  ["a gradient in user space, millimetres", gradient('gradientUnits="userSpaceOnUse" x1="10mm" x2="50mm"')],
  ["a gradient that reflects", gradient('x2=".3" spreadMethod="reflect"'), "svg/unlike"],
  ["a gradient that spreads in no known way", gradient('x2=".3" spreadMethod="mirror"'), "svg/value"],
  ["a gradient that is turned", gradient('gradientTransform="rotate(45)"')],
  [
    "stops out of order",
    gradient("", '<stop offset=".6" stop-color="#0a0"/><stop offset=".2" stop-color="#00c"/>'),
  ],
  [
    "stops in percent",
    gradient("", '<stop offset="20%" stop-color="#0a0"/><stop offset="80%" stop-color="#00c"/>'),
  ],
  [
    "stops that are translucent",
    gradient("", '<stop stop-color="#0a0" stop-opacity="50%"/><stop offset="1" stop-color="#00c"/>'),
  ],
  [
    "a stop that is transparent",
    gradient("", '<stop stop-color="transparent"/><stop offset="1" stop-color="#00c"/>'),
  ],
  [
    "a stop in currentColor",
    gradient('color="#0a0"', '<stop stop-color="currentColor"/><stop offset="1" stop-color="#00c"/>'),
  ],
  [
    "a stop from a sheet",
    svg(
      `<style>.s{stop-color:#0a0}</style><linearGradient id="l"><stop class="s"/><stop offset="1" stop-color="#00c"/></linearGradient>${rect('fill="url(#l)"')}`,
    ),
  ],
  ["a stop that inherits", gradient('stop-color="#0a0"', '<stop stop-color="inherit"/>'), "svg/value"],
  [
    "a gradient that has its stops from another",
    svg(
      `<linearGradient id="k"><stop stop-color="#0a0"/><stop offset="1" stop-color="#00c"/></linearGradient><linearGradient id="l" href="#k" x2="0" y2="1"/>${rect('fill="url(#l)"')}`,
    ),
  ],
  ["a gradient without stops", gradient("", "")],
  [
    "a round gradient",
    svg(
      `<radialGradient id="l"><stop stop-color="#0a0"/><stop offset="1" stop-color="#00c"/></radialGradient>${rect('fill="url(#l)"')}`,
    ),
  ],
  [
    "a round gradient off its middle",
    svg(
      `<radialGradient id="l" fx=".3" fy=".4" fr=".1" r=".6"><stop stop-color="#0a0"/><stop offset="1" stop-color="#00c"/></radialGradient>${rect('fill="url(#l)"')}`,
    ),
    "svg/unlike",
  ],
  ["a fill that points at a shape", svg(`<path id="p" d="M0 0h50v50z"/>${rect('fill="url(#p) #0a0"')}`)],
  [
    "a pattern",
    svg(
      `<pattern id="p" width="20" height="20" patternUnits="userSpaceOnUse"><rect width="10" height="20" fill="#0a0"/></pattern>${rect('fill="url(#p)"')}`,
    ),
  ],
  [
    "a pattern of boxes",
    svg(
      `<pattern id="p" width=".25" height=".5" patternContentUnits="objectBoundingBox"><rect width=".125" height=".5" fill="#0a0"/></pattern>${rect('fill="url(#p)"')}`,
    ),
    "svg/unlike",
  ],
  [
    "a pattern that is turned",
    svg(
      `<pattern id="p" width="40" height="40" patternUnits="userSpaceOnUse" patternTransform="rotate(30)"><rect width="20" height="40" fill="#0a0"/></pattern>${rect('fill="url(#p)"')}`,
    ),
  ],
  [
    "a clip path",
    svg(`<clipPath id="c"><circle cx="150" cy="100" r="60"/></clipPath>${filled('clip-path="url(#c)"')}`),
  ],
  [
    "a clip path from a style with a quote",
    svg(
      `<clipPath id="c"><circle cx="150" cy="100" r="60"/></clipPath>${filled(`style="clip-path:url('#c')"`)}`,
    ),
  ],
  [
    "a clip path of boxes",
    svg(
      `<clipPath id="c" clipPathUnits="objectBoundingBox"><circle cx=".5" cy=".5" r=".4"/></clipPath>${filled('clip-path="url(#c)"')}`,
    ),
    "svg/unlike",
  ],
  [
    "a clip path with a rule",
    svg(
      '<clipPath id="c"><path d="M50 50h200v100H50zM90 70h120v60H90z" clip-rule="evenodd"/></clipPath><rect width="300" height="200" fill="#0a0" clip-path="url(#c)"/>',
    ),
  ],
  [
    "a clip path of a use",
    svg(
      `<defs><circle id="r" cx="150" cy="100" r="60"/></defs><clipPath id="c"><use href="#r"/></clipPath>${filled('clip-path="url(#c)"')}`,
    ),
  ],
  ["a clip path of nothing", svg(`<clipPath id="c"/>${filled('clip-path="url(#c)"')}`)],
  ["a clip path that is not there", svg(filled('clip-path="url(#c)"'))],
  ["a clip path that is a circle of CSS", svg(filled('style="clip-path:circle(40px)"')), "svg/value"],
  [
    "a clip path with a box of reference",
    svg(`<clipPath id="c"><circle r="60"/></clipPath>${filled('style="clip-path:url(#c) fill-box"')}`),
    "svg/value",
  ],
  [
    "a mask",
    svg(
      `<mask id="m" maskUnits="userSpaceOnUse" x="0" y="0" width="300" height="200"><circle cx="150" cy="100" r="60" fill="#fff"/></mask>${filled('mask="url(#m)"')}`,
    ),
  ],
  [
    "a mask by luminance",
    svg(
      `<mask id="m" maskUnits="userSpaceOnUse" x="0" y="0" width="300" height="200"><rect width="300" height="200" fill="#0ff"/></mask>${filled('mask="url(#m)"')}`,
    ),
  ],
  [
    "a mask by alpha",
    svg(
      `<mask id="m" maskUnits="userSpaceOnUse" x="0" y="0" width="300" height="200" mask-type="alpha"><circle cx="150" cy="100" r="60" fill="#000"/></mask>${filled('mask="url(#m)"')}`,
    ),
  ],
  [
    "a mask by alpha, from a style",
    svg(
      `<mask id="m" maskUnits="userSpaceOnUse" x="0" y="0" width="300" height="200" style="mask-type:alpha"><circle cx="150" cy="100" r="60" fill="#000"/></mask>${filled('mask="url(#m)"')}`,
    ),
  ],
  [
    "a mask with units",
    svg(
      `<mask id="m" maskUnits="userSpaceOnUse" x="50" y="40" width="100" height="60"><rect width="300" height="200" fill="#fff"/></mask>${filled('mask="url(#m)"')}`,
    ),
  ],
  [
    "a mask that inherits",
    svg(
      `<g fill="#fff"><mask id="m" maskUnits="userSpaceOnUse" x="0" y="0" width="300" height="200"><circle cx="150" cy="100" r="60"/></mask></g>${filled('mask="url(#m)"')}`,
    ),
  ],
  [
    "a mask in a longhand",
    svg(
      `<mask id="m" maskUnits="userSpaceOnUse" x="0" y="0" width="300" height="200"><circle r="60" fill="#fff"/></mask>${filled('style="mask-image:url(#m)"')}`,
    ),
    "svg/unsupported",
  ],
  [
    "a mask with a position",
    svg(
      `<mask id="m" maskUnits="userSpaceOnUse" x="0" y="0" width="300" height="200"><circle r="60" fill="#fff"/></mask>${filled('style="mask:url(#m) 9px 9px"')}`,
    ),
    "svg/value",
  ],
  [
    "markers",
    svg(
      '<marker id="m" markerWidth="4" markerHeight="4" refX="2" refY="2" orient="auto"><path d="M0 0h4L2 4z" fill="#00c"/></marker><path d="M50 150L150 50L250 150" fill="none" stroke="#0a0" stroke-width="14" marker-start="url(#m)" marker-end="url(#m)"/>',
    ),
  ],
  [
    "a marker that turns between the ends",
    svg(
      '<marker id="m" markerWidth="4" markerHeight="4" refX="2" refY="2" orient="auto"><path d="M0 0h4L2 4z" fill="#00c"/></marker><path d="M50 150L150 50L250 150" fill="none" stroke="#0a0" stroke-width="14" marker-start="url(#m)" marker-mid="url(#m)" marker-end="url(#m)"/>',
    ),
    "svg/unlike",
  ],
  [
    "a marker that turns round",
    svg(
      '<marker id="m" markerWidth="4" markerHeight="4" refX="2" refY="2" orient="auto-start-reverse"><path d="M0 0L4 2L0 4z" fill="#00c"/></marker><path d="M50 150L150 50L250 150" fill="none" stroke="#0a0" stroke-width="14" marker-start="url(#m)" marker-end="url(#m)"/>',
    ),
  ],
  [
    "a marker at an angle",
    svg(
      '<marker id="m" markerWidth="4" markerHeight="4" refX="2" refY="2" orient="30"><path d="M0 0L4 2L0 4z" fill="#00c"/></marker><path d="M50 150L150 50L250 150" fill="none" stroke="#0a0" stroke-width="14" marker-mid="url(#m)"/>',
    ),
  ],
  [
    "a marker with a unit of angle",
    svg(
      '<marker id="m" orient="1rad"><path d="M0 0h4v4z"/></marker><path d="M50 150L150 50" marker-end="url(#m)"/>',
    ),
    "svg/value",
  ],
];

const roots: readonly Row[] = [
  ["a size as the viewBox", svg(filled(""), 'viewBox="0 0 300 200" width="600" height="400"')],
  ["a size in millimetres", svg(filled(""), 'viewBox="0 0 300 200" width="60mm" height="40mm"')],
  ["a size in percent", svg(filled(""), 'viewBox="0 0 300 200" width="100%" height="100%"')],
  ["a size of another shape", svg(filled(""), 'viewBox="0 0 300 200" width="300" height="300"'), "svg/root"],
  [
    "a size of another shape, stretched",
    svg(filled(""), 'viewBox="0 0 300 200" width="300" height="300" preserveAspectRatio="none"'),
    "svg/root",
  ],
  ["a size alone", svg(filled(""), 'width="300" height="200"')],
  ["a viewBox off the corner", svg(filled(""), 'viewBox="40 30 150 100"')],
  ["a transform on the root", svg(filled(""), 'viewBox="0 0 300 200" transform="scale(.5)"'), "svg/root"],
  [
    "a clip path on the root",
    svg(
      `<clipPath id="c"><circle r="150"/></clipPath>${filled("")}`,
      'viewBox="0 0 300 200" clip-path="url(#c)"',
    ),
    "svg/root",
  ],
  [
    "a mask on the root",
    svg(
      `<mask id="m" maskUnits="userSpaceOnUse" x="0" y="0" width="300" height="200"><circle r="150" fill="#fff"/></mask>${filled("")}`,
      'viewBox="0 0 300 200" mask="url(#m)"',
    ),
    "svg/root",
  ],
  ["opacity on the root", svg(filled(""), 'viewBox="0 0 300 200" opacity=".5"'), "svg/root"],
  ["opacity on the root, from a sheet", sheet("svg{opacity:.5}", filled("")), "svg/root"],
  ["display on the root", svg(filled(""), 'viewBox="0 0 300 200" display="none"'), "svg/root"],
  ["a fill on the root", svg(rect(""), 'viewBox="0 0 300 200" fill="#0a0"')],
  ["overflow on the root", svg('<circle r="150" fill="#0a0"/>', 'viewBox="0 0 300 200" overflow="visible"')],
  [
    "a web page inside",
    svg(
      `<foreignObject width="300" height="200"><div xmlns="http://www.w3.org/1999/xhtml" style="background:red">a</div></foreignObject>${filled("")}`,
    ),
    "svg/unsupported",
  ],
  ["a link", svg(`<a href="http://example.org/"><title>a</title>${filled("")}</a>`)],
  [
    "a group of an editor, which hides what is in it",
    svg(`<e:g xmlns:e="http://example.org/e">${filled("")}</e:g>${line("")}`),
  ],
  [
    "an odd id",
    svg(
      `<linearGradient id="a b"><stop stop-color="#0a0"/></linearGradient>${rect('fill="url(&quot;#a b&quot;)"')}`,
    ),
  ],
  [
    "an id with a bracket",
    svg(
      `<linearGradient id="a)"><stop stop-color="#0a0"/></linearGradient>${rect(`style="fill:url('#a)')"`)}`,
    ),
  ],
];

/** All of them, each name once. */
export const probes: readonly Probe[] = [
  ...unlikeProbes,
  ...programProbes,
  ...[
    ...selectors,
    ...inheritance,
    ...colours,
    ...values,
    ...geometry,
    ...lists,
    ...far,
    ...servers,
    ...roots,
  ].map(([name, text, rule]) => ({ name, text, ...(rule === undefined ? {} : { rule }) })),
];
