// Floor 2. Transforms as numbers (SVG 2, section 8.4): a b c d e f of x' = a·x + c·y + e, y' = b·x + d·y + f.

export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export const identity: Matrix = [1, 0, 0, 1, 0, 0];

/** Returns the matrix that does what `inner` does and then what `outer` does. */
export function multiply(outer: Matrix, inner: Matrix): Matrix {
  const [a, b, c, d, e, f] = outer;
  const [g, h, i, j, k, l] = inner;
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

/** By how much `matrix` stretches what it stretches most: its spectral norm, without what it moves. */
export function stretchOf([a, b, c, d]: Matrix): number {
  return (Math.hypot(a + d, b - c) + Math.hypot(a - d, b + c)) / 2;
}

/** Returns the steps of a transform as `readTransform` writes it, the outermost first; a turn about a point is three. */
export function matricesOf(transform: string): readonly Matrix[] {
  const steps = transform.split(")").slice(0, -1);
  return steps.flatMap((step) => {
    const [name = "", numbers = ""] = step.trim().split("(");
    const values = numbers.split(" ").map(Number);
    const [first = 0, second, third = 0] = values;
    const angle = (first * Math.PI) / 180;
    if (name === "matrix") return [values as unknown as Matrix];
    if (name === "translate") return [shift(first, second ?? 0)];
    if (name === "scale") return [[first, 0, 0, second ?? first, 0, 0] as const];
    if (name === "skewX") return [[1, 0, Math.tan(angle), 1, 0, 0] as const];
    if (name === "skewY") return [[1, Math.tan(angle), 0, 1, 0, 0] as const];
    const turn: Matrix = [Math.cos(angle), Math.sin(angle), -Math.sin(angle), Math.cos(angle), 0, 0];
    return second === undefined ? [turn] : [shift(second, third), turn, shift(-second, -third)];
  });
}

/** Returns the matrix that moves by `x` and `y`. */
export function shift(x: number, y: number): Matrix {
  return [1, 0, 0, 1, x, y];
}
