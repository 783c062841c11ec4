// Floor 3, part of step 3. Gives vanished pixels to the nearest pixel that remains.
import type { LabelMap } from "../labelmap.ts";
import { PixelList } from "../pixellist.ts";

/** The labels after filling; `pixels[i]` took its label from the remaining pixel `sources[i]`. */
export interface Filled {
  readonly labels: Uint16Array;
  readonly pixels: Int32Array;
  readonly sources: Int32Array;
}

/**
 * Returns the labels with every pixel of `vanished` given to the nearest remaining paint (Euclidean, by pixel centre;
 * wave by wave, so that a vanished line is halved between its two sides). Transparent pixels give
 * nothing. A pixel that no paint reaches keeps its label.
 */
export function fillVanished(map: LabelMap, vanished: Int32Array): Filled {
  const labels = map.labels.slice();
  const open = new Uint8Array(labels.length);
  for (const at of vanished) open[at] = 1;
  const pixels = new PixelList();
  const sources = new PixelList();
  const waves = new Waves(map);
  for (const at of vanished)
    waves.eachNeighbour(at, (next) => open[next] === 0 && map.labels[next] !== 0 && waves.offer(at, next));
  for (let away = 1; away < waves.length; away += 1) {
    waves.each(away, (at, source) => {
      if (open[at] === 0) return;
      open[at] = 0;
      labels[at] = map.labels[source] as number;
      pixels.add(at);
      sources.add(source);
      waves.eachNeighbour(at, (next) => open[next] === 1 && waves.offer(next, source));
    });
  }
  return { labels, pixels: pixels.pixels, sources: sources.pixels };
}

/** Pixels that could take their label from a source pixel, by squared distance. */
class Waves {
  private readonly waves: number[][] = [];
  private readonly width: number;
  private readonly height: number;

  constructor({ width, height }: LabelMap) {
    this.width = width;
    this.height = height;
  }

  get length(): number {
    return this.waves.length;
  }

  offer(at: number, source: number): void {
    const dx = (at % this.width) - (source % this.width);
    const dy = ((at / this.width) | 0) - ((source / this.width) | 0);
    const away = dx * dx + dy * dy;
    const wave = this.waves[away];
    if (wave === undefined) this.waves[away] = [at, source];
    else wave.push(at, source);
  }

  /** A wave may grow while it is visited. */
  each(away: number, visit: (at: number, source: number) => void): void {
    const wave = this.waves[away];
    if (wave === undefined) return;
    for (let index = 0; index < wave.length; index += 2)
      visit(wave[index] as number, wave[index + 1] as number);
  }

  eachNeighbour(at: number, visit: (next: number) => void): void {
    const { width, height } = this;
    const x = at % width;
    const y = (at / width) | 0;
    for (let ny = y > 0 ? y - 1 : 0; ny <= y + 1 && ny < height; ny += 1) {
      for (let nx = x > 0 ? x - 1 : 0; nx <= x + 1 && nx < width; nx += 1)
        if (nx !== x || ny !== y) visit(ny * width + nx);
    }
  }
}
