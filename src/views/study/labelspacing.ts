// Floor 8. Labels that would overlap give way to each other, and stay in order.

/**
 * Returns `positions`, which must be ascending, moved apart so that neighbours are at least `gap` apart and all lie
 * between `first` and `last`, each as near to where it was as the others allow. Where they cannot all fit, the gap is
 * as large as fits.
 */
export function spreadApart(
  positions: readonly number[],
  gap: number,
  first: number,
  last: number,
): readonly number[] {
  const fitting = positions.length < 2 ? gap : Math.min(gap, (last - first) / (positions.length - 1));
  const spread = [...positions];
  for (let turn = 0; turn < 200; turn += 1) {
    let moved = false;
    for (let index = 1; index < spread.length; index += 1) {
      const above = spread[index - 1] ?? 0;
      const below = spread[index] ?? 0;
      const missing = fitting - (below - above);
      if (missing <= 0.01) continue;
      spread[index - 1] = above - missing / 2;
      spread[index] = below + missing / 2;
      moved = true;
    }
    for (let index = 0; index < spread.length; index += 1) {
      const low = first + index * fitting;
      const high = last - (spread.length - 1 - index) * fitting;
      spread[index] = Math.min(high, Math.max(low, spread[index] ?? 0));
    }
    if (!moved) break;
  }
  return spread;
}
