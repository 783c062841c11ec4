// Files as large as they may be, of one piece again and again in one place: what a pattern, a walk or a message that is
// not linear takes for ever over. Each kind of file, each place that we look at, each sign that means something there.
import { textFileBytes } from "../../src/content/text/textsource.ts";
import { limit } from "../../src/svg/gate/drawinglimit.ts";

export type Kind = "front matter" | "settings" | "prose" | "drawing";

export interface Large {
  readonly name: string;
  readonly kind: Kind;
  readonly text: string;
}

/**
 * Bytes of the files of each kind: as many as there may be; front matter has a limit of its own. And fewer, as what is
 * longer than a value may be is refused before anyone looks into it.
 */
const bytes: Readonly<Record<Kind, readonly number[]>> = {
  "front matter": [8 * 1024 - 200, 1200, 200],
  settings: [textFileBytes, 900],
  prose: [textFileBytes - 300, 200],
  drawing: [limit.fileBytes, limit.valueLength],
};

const keys = 'original: original.svg\nchange: { replace: "#7a1020", with: "#f4c430" }\n';

/** Where pieces stand: % is the place of all of them. */
const places: Readonly<Record<Kind, readonly string[]>> = {
  "front matter": [
    `title: %\n${keys}`,
    `title: "%\n${keys}`,
    `title: '%'\n${keys}`,
    `title: a\n  %\n${keys}`,
    `${keys}%: x\n`,
    `${keys}%\n`,
    `title: a\n${keys}authors: [%]\n`,
    `title: a\n${keys}authors: %\n`,
    `title: a\n${keys}date: %\n`,
    `title: a\n${keys}status: %\n`,
    `title: a\n${keys}focus: %\n`,
    `title: a\n${keys}names: { % }\n`,
    `title: a\n${keys}credit: { licence: "%" }\n`,
    `title: a\n${keys}options:\n  - { % }\n`,
    `title: a\n${keys}decision: a % b\n`,
    "title: a\noriginal: %\nchange: { % }\n",
    'title: a\noriginal: "%"\nchange: { replace: "%", with: "white" }\n',
    "title: a\noriginal: a.svg\nchange: { replace: %, with: white }\n",
  ],
  settings: [
    "%\n",
    "title: %\n",
    "palette: { % }\n",
    "address: %\n",
    'address: "https://a.example/%"\n',
    "language: %\n",
    "answer: %\n",
    "cloth: { black: % }\n",
  ],
  prose: [
    "%",
    "a\n%",
    "> %",
    "# %",
    "[%](x)",
    "![%](x)",
    "[a]: %",
    "`%",
    "<%>",
    "| % |\n|-|\n",
    "::figure{%}",
    '::figure{edge="%"}',
    "::figure%",
    ":figure{edge%",
  ],
  drawing: [
    "%",
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2">%</svg>',
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="%"/>',
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"><style>%</style></svg>',
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"><title>%</title></svg>',
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"><!--%--></svg>',
    ...[
      "d",
      "fill",
      "style",
      "class",
      "id",
      "transform",
      "points",
      "stroke-dasharray",
      "href",
      "onclick",
      "x:y",
    ].map((name) => `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"><path ${name}="%"/></svg>`),
    // What fails at its end alone is tried in every way.
    ...["transform", "stroke-dasharray", "points", "fill", "style"].map(
      (name) => `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"><path ${name}="%!"/></svg>`,
    ),
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"><g %/></svg>',
    '<!DOCTYPE svg [%]><svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"/>',
    '<?%?><svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"/>',
  ],
};

/** What a piece has in place of the number of its turn. */
const turn = "\0";

const signs = [
  ..."a1 -.,:;#/\\\"'`*_~<>[](){}&%@!|=+?\t\n",
  "\u00a0",
  "\u200b",
  "\uff1a",
  "\u2013",
  "\u0301",
  "\u{1f469}\u200d\u{1f469}",
  "\u202e",
];

const pieces: Readonly<Record<Kind, readonly string[]>> = {
  "front matter": [
    ...signs,
    ...[
      "a, ",
      "a: ",
      "a b ",
      "a: b, ",
      "a: b\n",
      "- a\n",
      '"a" ',
      "'a' ",
      '"a": ',
      "a=b ",
      "a:b ",
      " # a",
      "&a ",
      "*a ",
      "!a ",
      "{ a: ",
      "[a, ",
      "? ",
      "<<: ",
      "rgb(1, 2, ",
      "1.",
      "a-1 ",
      "\uff1a a",
      "- [",
      "- - ",
      "|\n",
      ">\n",
      "---\n",
      "\u00a0a: b\n",
      "a\u00a0b: ",
      "with a ",
      "a\0: 1\n",
      "a\0: 1, ",
      '"a\0": b\n',
      "replace ",
    ],
  ],
  settings: [
    ...signs,
    "a, ",
    "a: b\n",
    "a: b, ",
    "a: 1, ",
    "a=b\n",
    "- a\n",
    "{ a: ",
    "[a, ",
    " # a",
    '"a" ',
    "a-",
    "a.",
    "a?b",
  ],
  prose: [
    ...signs,
    ...[
      "**",
      "> ",
      "- ",
      "1. ",
      "![",
      "[a](",
      "](",
      "[a]",
      "[a][b] ",
      "[a]: b\n",
      "[a](b:c) ",
      "![a](b) ",
      "![a](b)\n\n",
      "[a\0]: b\n",
      "[a](<b",
      "[ (](",
      "![[]()",
      "**x [a*b**c*](d) ",
      "a<!-- ",
      "\\``",
      "<!A ",
      "<?",
      "*_* ",
      "a **a ",
      "*a ",
      "a*",
      "*a_ ",
      "a**b",
      "<b>",
      "<b>\n\n",
      "<!--",
      "</",
      "<a:b>",
      "<a:b>\n\n",
      "ftp://x ",
      "::figure\n",
      '::figure{edge="a"}\n',
      "::figure{",
      ":figure{edge",
      "a/",
      "a / ",
      "\n\n",
      "- a\n",
      "  - ",
      "a | ",
      "&amp;",
      "&#1;",
      "```\n",
      "# a\n",
    ],
  ],
  drawing: [
    ...signs,
    ...[
      "<g>",
      "</g>",
      "<g/>",
      "<a/>",
      "<x:a/>",
      "<text>a</text>",
      '<g onclick=""/>',
      '<g id="a"/>',
      '<g id="\u00e9"/>',
      '<use href="#a"/>',
      '<path fill="url(#a)"/>',
      "<style>a{}</style>",
      '<g id="a\0"/>',
      '<use id="a\0" href="#b\0"/>',
      '<path class="a\0" fill="red"/>',
      ".a\0{fill:red}",
      "#a\0,",
      ' a\0=""',
      "&amp;",
      "&a;",
      ' a=""',
      ' b="1"',
      "1 ",
      "11 ",
      "1,",
      "1e",
      "-1",
      "M0 0",
      "url(",
      "url(#a) ",
      "scale( 1)",
      "matrix(",
      "rgb(1,",
      "a{}",
      "a{b:c}",
      ".a,",
      "a ",
      "a>",
      ":not(",
      ":nth-child(2n+1)",
      "[a]",
      "a:b;",
      "fill:red;",
      "@a{}",
      "/*",
      "*/",
      "<!--",
      "-->",
      "]]>",
      "<![CDATA[",
      "<?a?>",
      "<!ENTITY a 'b'>",
      "http://",
      "--",
    ],
  ],
};

/** Every large file, the pieces of a place one after another. A text is made when it is asked for: most are passed over. */
export function* listLarge(): Generator<Large> {
  for (const kind of Object.keys(places) as Kind[])
    for (const most of bytes[kind])
      for (const place of places[kind])
        for (const piece of pieces[kind]) {
          const name = `${kind}, ${most} bytes: ${JSON.stringify(piece)} in ${JSON.stringify(place.slice(-60))}`;
          yield {
            name,
            kind,
            get text() {
              return fill(place, piece, most);
            },
          };
        }
}

function fill(place: string, piece: string, most: number): string {
  const size = (text: string): number => Buffer.byteLength(text);
  const holes = place.split("%");
  const room = (most - size(holes.join(""))) / (holes.length - 1);
  const turns = Math.max(1, Math.floor(room / size(piece.replaceAll(turn, "12345"))));
  const own = piece.includes(turn)
    ? Array.from({ length: turns }, (_, index) => piece.replaceAll(turn, String(index))).join("")
    : piece.repeat(turns);
  return holes.join(own);
}
