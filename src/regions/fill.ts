// Floor 3, part of step 3. Gives vanished pixels to the nearest pixel that remains.
import type { LabelMap } from "./label.ts";

/**
 * Returns the labels with every pixel of `vanished` given to the nearest remaining paint (Euclidean, by pixel centre;
 * wave by wave, so that a vanished line is halved between its two sides). Transparent pixels neither give nor take. A pixel that no paint reaches keeps its label.
 */
export function fillVanished(map: LabelMap, vanished: readonly number[]): Uint16Array {
  const { width, height } = map;
  const labels = map.labels.slice();
  const open = new Uint8Array(labels.length);
  for (const at of vanished) open[at] = 1;
  const waves: number[][] = [];
  const offer = (at: number, source: number): void => {
    const dx = (at % width) - (source % width);
    const dy = Math.floor(at / width) - Math.floor(source / width);
    const away = dx * dx + dy * dy;
    const wave = waves[away];
    if (wave === undefined) waves[away] = [at, source];
    else wave.push(at, source);
  };
  const eachNeighbour = (at: number, visit: (next: number) => void): void => {
    const x = at % width;
    const y = Math.floor(at / width);
    for (let ny = Math.max(0, y - 1); ny <= Math.min(height - 1, y + 1); ny += 1) {
      for (let nx = Math.max(0, x - 1); nx <= Math.min(width - 1, x + 1); nx += 1) visit(ny * width + nx);
    }
  };
  for (const at of vanished) {
    eachNeighbour(at, (next) => {
      if (open[next] === 0 && map.labels[next] !== 0) offer(at, next);
    });
  }
  for (let away = 1; away < waves.length; away += 1) {
    const wave = waves[away];
    if (wave === undefined) continue;
    for (let index = 0; index < wave.length; index += 2) {
      const at = wave[index] as number;
      const source = wave[index + 1] as number;
      if (open[at] === 0) continue;
      open[at] = 0;
      labels[at] = map.labels[source] as number;
      eachNeighbour(at, (next) => {
        if (open[next] === 1) offer(next, source);
      });
    }
  }
  return labels;
}
