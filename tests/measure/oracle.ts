// Figures of colours worked out a second time, straight from the published formulas: nothing here comes from src/. Sources: IEC 61966-2-1 (sRGB), CIE 15:2004 (Lab, D65 of CSS Color 4), Sharma et al. 2005
// (CIEDE2000), AS 1428.1:2009 Appendix B (contrast); cloth 5 to 85 and the rest: the project's design.

type Triple = readonly [number, number, number];

export const linear = (hex: string): Triple => {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const c = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return [r, g, b];
};

export const reflectance = (hex: string, black = 5, white = 85): number => {
  const [r, g, b] = linear(hex);
  return black + (white - black) * (0.2126 * r + 0.7152 * g + 0.0722 * b);
};

export const contrast = (one: string, other: string): number => {
  const [a, b] = [reflectance(one), reflectance(other)];
  return (125 * Math.abs(a - b)) / (a + b + 25);
};

export const labOfLinear = ([r, g, b]: Triple): Triple => {
  const x = (0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / 0.95047;
  const y = 0.2126729 * r + 0.7151522 * g + 0.072175 * b;
  const z = (0.0193339 * r + 0.119192 * g + 0.9503041 * b) / 1.08883;
  const [fx = 0, fy = 0, fz = 0] = [x, y, z].map((t) =>
    t > 216 / 24389 ? Math.cbrt(t) : (24389 / 27 / 116) * t + 16 / 116,
  );
  return [116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)];
};

/** CIEDE2000 as Sharma, Wu and Dalal write it, equations 2 to 22. */
export const ciede2000 = ([l1, a1, b1]: Triple, [l2, a2, b2]: Triple): number => {
  const rad = Math.PI / 180;
  const mean7 = ((Math.hypot(a1, b1) + Math.hypot(a2, b2)) / 2) ** 7;
  const g = 0.5 * (1 - Math.sqrt(mean7 / (mean7 + 25 ** 7)));
  const [c1, c2] = [Math.hypot((1 + g) * a1, b1), Math.hypot((1 + g) * a2, b2)];
  const hue = (a: number, b: number) =>
    a === 0 && b === 0 ? 0 : (Math.atan2(b, (1 + g) * a) / rad + 360) % 360;
  const [h1, h2] = [hue(a1, b1), hue(a2, b2)];
  let dh = c1 * c2 === 0 ? 0 : h2 - h1;
  if (dh > 180) dh -= 360;
  if (dh < -180) dh += 360;
  const dH = 2 * Math.sqrt(c1 * c2) * Math.sin((dh / 2) * rad);
  const [lm, cm] = [(l1 + l2) / 2, (c1 + c2) / 2];
  let hm = h1 + h2;
  if (c1 * c2 !== 0) hm = Math.abs(h1 - h2) <= 180 ? hm / 2 : hm < 360 ? (hm + 360) / 2 : (hm - 360) / 2;
  const cos = (degrees: number) => Math.cos(degrees * rad);
  const t = 1 - 0.17 * cos(hm - 30) + 0.24 * cos(2 * hm) + 0.32 * cos(3 * hm + 6) - 0.2 * cos(4 * hm - 63);
  const sl = 1 + (0.015 * (lm - 50) ** 2) / Math.sqrt(20 + (lm - 50) ** 2);
  const [sc, sh] = [1 + 0.045 * cm, 1 + 0.015 * cm * t];
  const rc = 2 * Math.sqrt(cm ** 7 / (cm ** 7 + 25 ** 7));
  const rt = -Math.sin(60 * Math.exp(-(((hm - 275) / 25) ** 2)) * rad) * rc;
  const [l, c, h] = [(l2 - l1) / sl, (c2 - c1) / sc, dH / sh];
  return Math.sqrt(l * l + c * c + h * h + rt * c * h);
};

export const difference = (one: string, other: string): number =>
  ciede2000(labOfLinear(linear(one)), labOfLinear(linear(other)));

/** The distance in CIELAB of CIE 1976, ΔE*ab. */
export const difference76 = (one: string, other: string): number => {
  const [[l1, a1, b1], [l2, a2, b2]] = [labOfLinear(linear(one)), labOfLinear(linear(other))];
  return Math.hypot(l1 - l2, a1 - a2, b1 - b2);
};
