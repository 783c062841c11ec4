// Floor 4. The proportions of a flag as people write them: height to width in small whole numbers.

const precision = 0.001;
const largest = 50;

/**
 * Returns [height, width] as the smallest whole numbers within 0.1 % of the drawing, else [1, width / height].
 * Example: 600 high, 900 wide → [2, 3].
 */
export function findProportions(width: number, height: number): readonly [number, number] {
  const ratio = width / height;
  for (let h = 1; h <= largest; h += 1) {
    const w = Math.round(h * ratio);
    if (w >= 1 && w <= largest && Math.abs(w / h - ratio) <= precision * ratio) return [h, w];
  }
  return [1, ratio];
}
