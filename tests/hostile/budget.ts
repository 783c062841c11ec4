// Test support. Drawings that are small or few to look at and grow on their way to a site, each with what must become of it.
import type { Hex } from "../../src/colour/colour.ts";

/** A drawing with the change of a study. `expected`: published, or refused with a problem of this rule. */
export interface Growing {
  readonly attack: string;
  readonly svg: string;
  readonly replace: Hex;
  readonly expected: "published" | RegExp;
}

const field = '<path fill="#12235c" d="M0 0h300v200H0z"/><path fill="#c8202f" d="M100 50h100v100H100z"/>';
const red = "#c8202f";

function wrap(inner: string, viewBox = "0 0 300 200"): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${viewBox}">${inner}</svg>`;
}

const codeOf = (index: number): Hex =>
  `#${(Math.imul(index + 1, 0x9e3779b1) >>> 8).toString(16).padStart(6, "0")}`;

/** Squares in rows, each of a colour of its own. */
function squares(count: number): string {
  const columns = Math.ceil(Math.sqrt(count));
  const drawn = Array.from({ length: count }, (_, index) => {
    const [x, y] = [(index % columns) * 10, Math.floor(index / columns) * 10];
    return `<path fill="${codeOf(index)}" d="M${x} ${y}h10v10h-10z"/>`;
  });
  return wrap(drawn.join(""), `0 0 ${columns * 10} ${Math.ceil(count / columns) * 10}`);
}

/** 48 squares, and on them specks, a twentieth of the flag in all, each of a colour of its own. */
function specks(count: number): string {
  const side = Math.floor(Math.sqrt(8600 / (count - 48)));
  const drawn = Array.from({ length: count }, (_, index) => {
    const at = index - 48;
    const [x, y] = at < 0 ? [index % 8, Math.floor(index / 8)] : [at % 60, Math.floor(at / 60)];
    const [step, size] = at < 0 ? [60, 60] : [8, side > 7 ? 7 : side];
    return `<path fill="${codeOf(index)}" d="M${x * step} ${y * step}h${size}v${size}h-${size}z"/>`;
  });
  return wrap(drawn.join(""), "0 0 480 360");
}

/** Every stripe crossed by every bar: as many edges as there are pairs. */
function woven(count: number): string {
  const stripes = Array.from(
    { length: count },
    (_, index) => `<path fill="${codeOf(index)}" d="M0 ${index * 20}h${count * 20}v20H0z"/>`,
  );
  const bars = Array.from(
    { length: count },
    (_, index) => `<path fill="${codeOf(count + index)}" d="M${index * 20 + 5} 0h10v${count * 20}h-10z"/>`,
  );
  return wrap(stripes.join("") + bars.join(""), `0 0 ${count * 20} ${count * 20}`);
}

/** Fills a drawing with spaces up to so many bytes. */
function pad(svg: string, bytes: number): string {
  return svg.replace("</svg>", `${" ".repeat(bytes - svg.length)}</svg>`);
}

const refused = /^(?:study\/not-published|svg\/)/;

export const growing: readonly Growing[] = [
  {
    attack: "200,000 > in a description",
    svg: wrap(`<desc>${">".repeat(200_000)}</desc>${field}`),
    replace: red,
    expected: refused,
  },
  {
    attack: "a title of 110,000 escaped ampersands",
    svg: wrap(`<title>${"&amp;".repeat(100_000)}</title>${field}`),
    replace: red,
    expected: "published",
  },
  {
    attack: "quotes that are written longer",
    svg: wrap(`<desc>${"'".repeat(200_000)}</desc>${field}`),
    replace: red,
    expected: "published",
  },
  {
    attack: "a file of exactly 512 KB",
    svg: pad(wrap(field), 512 * 1024),
    replace: red,
    expected: refused,
  },
  {
    attack: "a file a byte larger",
    svg: pad(wrap(field), 512 * 1024 + 1),
    replace: red,
    expected: /^svg\/too-big$/,
  },
  {
    attack: "a colour by its name in each of 9,000 elements",
    svg: wrap(`<path fill="#12235c" d="M0 0h300v200H0z"/>${'<path fill="red" d="M9 9h99v99H9z"/>'.repeat(9000)}`),
    replace: "#ff0000",
    expected: "published",
  },
  {
    attack: "a colour by its name in each of 14,000 elements",
    svg: wrap(`<path fill="#12235c" d="M0 0h300v200H0z"/>${'<path fill="red" d="M9 9h99v99H9z"/>'.repeat(14_000)}`),
    replace: "#ff0000",
    expected: refused,
  },
  {
    attack: "49 colours",
    svg: specks(49),
    replace: codeOf(0),
    expected: "published",
  },
  {
    attack: "60 colours, the smallest changed",
    svg: specks(60),
    replace: codeOf(59),
    expected: /^study\/colour-small$/,
  },
  {
    attack: "960 colours",
    svg: specks(960),
    replace: codeOf(0),
    expected: "published",
  },
  {
    attack: "960 colours, each as large as the others",
    svg: squares(960),
    replace: codeOf(0),
    expected: /^study\/colour-lost$/,
  },
  {
    attack: "990 colours",
    svg: specks(990),
    replace: codeOf(0),
    expected: "published",
  },
  {
    attack: "2,000 colours",
    svg: specks(2000),
    replace: codeOf(0),
    expected: "published",
  },
  {
    attack: "24 stripes woven with 24 bars, 1,128 pairs",
    svg: woven(24),
    replace: codeOf(0),
    expected: "published",
  },
  {
    attack: "the same in a drawing of 400 KB",
    svg: pad(woven(24), 400 * 1024),
    replace: codeOf(0),
    expected: "published",
  },
  {
    attack: "a flag twenty times as wide as high",
    svg: wrap('<path fill="#12235c" d="M0 0h400v20H0z"/><path fill="#c8202f" d="M0 0h200v20H0z"/>', "0 0 400 20"),
    replace: red,
    expected: "published",
  },
  {
    attack: "a flag twenty times as high as wide",
    svg: wrap('<path fill="#12235c" d="M0 0h20v400H0z"/><path fill="#c8202f" d="M0 0h20v200H0z"/>', "0 0 20 400"),
    replace: red,
    expected: "published",
  },
  {
    attack: "coordinates in millions",
    svg: wrap(`<g transform="scale(3000)">${field}</g>`, "0 0 900000 600000"),
    replace: red,
    expected: "published",
  },
  {
    attack: "coordinates in thousandths",
    svg: wrap(`<g transform="scale(.00001)">${field}</g>`, "0 0 .003 .002"),
    replace: red,
    expected: /^svg\/viewbox$/,
  },
];
