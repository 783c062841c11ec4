// Test support. Drawings of everything that the gate knows, put together by lot; a seed makes the same one on every machine.

/** Of the flag, in units. */
export const size = { width: 300, height: 200 };

/** Returns a drawing, which the gate may accept or refuse. */
export function drawRandom(seed: number): string {
  return new Chance(seed).drawing();
}

const colours = ["#c12", "#0a4", "#12c", "#fc1", "#111", "#fff", "#828"];
const looks: Readonly<Record<string, readonly (string | number)[]>> = {
  "stroke-width": [0.1, 1, 5, 20, 50, "5%"],
  "stroke-linecap": ["butt", "round", "square"],
  "stroke-linejoin": ["miter", "round", "bevel"],
  "stroke-miterlimit": [1, 2, 10, 100],
  "stroke-dasharray": ["10", "20 10", "0 20", "5 0", "40 10 5", "7 2"],
  "stroke-dashoffset": [-25, 7],
  "fill-rule": ["evenodd", "nonzero"],
  "fill-opacity": [0.5, 0.8],
  "stroke-opacity": [0.5, 0.8],
  opacity: [0.5, 0.7, 0.99],
  "paint-order": ["stroke", "markers"],
  visibility: ["hidden", "visible"],
  display: ["none", "inline"],
};

/** Draws lots from a seed. Source of the numbers: mulberry32 of T. Ettinger, public domain. */
class Chance {
  private readonly defs: string[] = [];
  private state: number;
  private depth = 0;

  constructor(seed: number) {
    this.state = Math.imul(seed, 2654435761);
  }

  drawing(): string {
    const body = this.content(3);
    const { width, height } = size;
    const field = `<rect width="${width}" height="${height}" fill="${this.pick(colours)}"/>`;
    return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}"><defs>${this.defs.join("")}</defs>${field}${body}</svg>`;
  }

  private next(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    const a = Math.imul(this.state ^ (this.state >>> 15), this.state | 1);
    const b = a ^ (a + Math.imul(a ^ (a >>> 7), a | 61));
    return ((b ^ (b >>> 14)) >>> 0) / 2 ** 32;
  }

  private pick = <T>(all: readonly T[]): T => all[Math.floor(this.next() * all.length)] as T;
  private is = (share: number): boolean => this.next() < share;
  private number = (from: number, to: number): number =>
    Number((from + this.next() * (to - from)).toFixed(this.pick([0, 1, 3])));
  private point = (): string => `${this.number(-50, 350)} ${this.number(-50, 250)}`;
  private points = (most: number): string =>
    Array.from({ length: 1 + Math.floor(this.next() * most) }, this.point).join(" ");

  private content(most: number): string {
    const kinds = [this.shape, this.shape, this.shape, this.group, this.use, this.inner];
    const count = 1 + Math.floor(this.next() * most);
    return Array.from({ length: count }, () => (this.depth > 3 ? this.shape() : this.pick(kinds)())).join("");
  }

  private shape = (): string => `<${this.outline()}${this.look()}${this.transform()}/>`;
  private group = (): string => `<g${this.look()}${this.transform()}>${this.below(3)}</g>`;
  private use = (): string =>
    `<use href="#${this.define((id) => this.shape().replace(/^<\w+/, `$& id="${id}"`))}" x="${this.number(-60, 60)}"${this.look()}/>`;
  private inner = (): string =>
    `<svg x="${this.number(-20, 90)}" width="${this.number(20, 300)}" height="${this.number(20, 200)}"${this.box()}>${this.below(2)}</svg>`;

  private below(most: number): string {
    this.depth += 1;
    const content = this.content(most);
    this.depth -= 1;
    return content;
  }

  private outline(): string {
    const n = this.number;
    return this.pick([
      () => `path d="${this.path()}"`,
      () => `path d="${this.path()}"`,
      () =>
        `rect x="${n(0, 200)}" y="${n(0, 150)}" width="${n(0, 200)}" height="${n(1, 150)}" rx="${n(0, 60)}"`,
      () => `circle cx="${n(0, 300)}" cy="${n(0, 200)}" r="${n(0, 90)}"`,
      () => `ellipse cx="${n(0, 300)}" cy="${n(0, 200)}" rx="${this.pick([0.01, 5, 90])}" ry="${n(0, 90)}"`,
      () => `line x1="${n(0, 300)}" y1="${n(0, 200)}" x2="${n(0, 300)}" y2="100"`,
      () => `polygon points="${this.points(5)}"`,
    ])();
  }

  private path(): string {
    const p = this.point;
    const n = this.number;
    const step = (): string =>
      this.pick([
        () => `L${p()}`,
        () => `C${p()} ${p()} ${p()}`,
        () => `Q${p()} ${p()}T${p()}`,
        () => `A${n(1, 90)} ${n(1, 90)} ${n(-90, 90)} ${this.pick(["0 1", "1 0"])} ${p()}`,
        () => `h${n(-90, 90)}v${n(-90, 90)}`,
        () => `l${this.pick([0, 1e-6, 0.01])} ${this.pick([0, 0.05])}`,
        () => `zm${n(-50, 50)} ${n(-50, 50)}`,
      ])();
    return `M${p()}${Array.from({ length: 5 }, step).join("")}${this.pick(["", "z"])}`;
  }

  private transform(): string {
    const n = this.number;
    const one = this.pick([
      () => `translate(${n(-60, 60)} ${n(-40, 40)})`,
      () => `scale(${n(0.3, 2)} ${n(-2, 2)})`,
      () => `rotate(${n(-180, 180)} 150 100)`,
      () => `skewX(${n(-60, 60)})`,
      () => `scale(${this.pick(["1e4) scale(1e-4", "50 1", ".01"])})`,
    ])();
    return this.is(0.4) ? ` transform="${one}"` : "";
  }

  private look(): string {
    const some = Object.entries(looks).filter(() => this.is(0.12));
    const plain = some.map(([name, values]) => ` ${name}="${this.pick(values)}"`).join("");
    const painted = ["fill", "stroke"]
      .map((name) => (this.is(0.6) ? ` ${name}="${this.paint()}"` : ""))
      .join("");
    const makers = { "clip-path": this.clip, mask: this.mask, "marker-mid": this.marker } as const;
    const drawn = Object.entries(makers).filter(() => this.depth < 3 && this.is(0.06));
    return `${plain}${painted}${drawn.map(([name, make]) => ` ${name}="url(#${this.define(make)})"`).join("")}`;
  }

  private paint(): string {
    const make = this.pick([undefined, undefined, undefined, this.gradient, this.pattern]);
    return make === undefined || this.depth > 2 ? this.pick(colours) : `url(#${this.define(make)})`;
  }

  private define(make: (id: string) => string): string {
    const id = `i${this.defs.length}-${this.depth}-${Math.floor(this.next() * 1e9)}`;
    this.depth += 1;
    this.defs.push(make(id));
    this.depth -= 1;
    return id;
  }

  private box = (): string =>
    this.is(0.5) ? ` viewBox="0 0 ${this.number(10, 300)} ${this.number(10, 300)}"` : "";
  private stops = (): string =>
    [0, 0.4, 1].map((offset) => `<stop offset="${offset}" stop-color="${this.pick(colours)}"/>`).join("");
  private gradient = (id: string): string =>
    this.is(0.5)
      ? `<linearGradient id="${id}" x1="${this.number(0, 1)}" y2="${this.number(0, 1)}"${this.transform().replace("transform", "gradientTransform")}>${this.stops()}</linearGradient>`
      : `<radialGradient id="${id}" gradientUnits="userSpaceOnUse" cx="${this.number(0, 300)}" cy="100" r="${this.number(0, 150)}">${this.stops()}</radialGradient>`;
  private pattern = (id: string): string =>
    `<pattern id="${id}" patternUnits="userSpaceOnUse" width="${this.number(5, 99)}" height="${this.number(5, 99)}"><rect width="300" height="200" fill="${this.pick(colours)}"/>${this.shape()}</pattern>`;
  private clip = (id: string): string =>
    `<clipPath id="${id}"${this.transform()}><${this.outline()}/></clipPath>`;
  private mask = (id: string): string =>
    `<mask id="${id}" maskUnits="userSpaceOnUse" x="0" y="0" width="${this.number(50, 300)}" height="200"><${this.outline()} fill="#fff"/>${this.shape()}</mask>`;
  private marker = (id: string): string =>
    `<marker id="${id}" markerWidth="${this.pick([3, 20])}" markerHeight="${this.pick([3, 20])}" orient="${this.pick(["auto", "45"])}"><rect width="10" height="9" fill="${this.pick(colours)}"/></marker>`;
}
