// Floor 3, part of step 3. Gives vanished pixels to the nearest pixel that remains.
import type { LabelMap } from "../labelmap.ts";
import { PixelList } from "../pixellist.ts";
import { giveBack, takeBytes, takeWords } from "../scratch.ts";

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
  const waves = new Waves(map, vanished);
  for (let index = 0; index < vanished.length; index += 1) waves.begin(vanished[index] as number);
  return waves.run();
}

/** Pixels that could take their label from a source pixel, by squared distance. */
class Waves {
  private readonly waves: number[][] = [];
  private readonly map: LabelMap;
  private readonly labels: Uint16Array;
  /** 1 for each vanished pixel that was given to none so far. */
  private readonly open: Uint8Array;

  constructor(map: LabelMap, vanished: Int32Array) {
    this.map = map;
    this.labels = takeWords(map.labels.length);
    this.labels.set(map.labels);
    this.open = takeBytes(map.labels.length);
    for (let index = 0; index < vanished.length; index += 1) this.open[vanished[index] as number] = 1;
  }

  /** Offers a vanished pixel to each neighbour that remains. */
  begin(at: number): void {
    const { width, height, labels } = this.map;
    const y = (at / width) | 0;
    const x = at - y * width;
    for (let ny = y > 0 ? y - 1 : 0; ny <= y + 1 && ny < height; ny += 1)
      for (let nx = x > 0 ? x - 1 : 0; nx <= x + 1 && nx < width; nx += 1) {
        const next = ny * width + nx;
        if (this.open[next] === 0 && labels[next] !== 0) this.offer(ny === y || nx === x ? 1 : 2, at, next);
      }
  }

  /** Gives pixels away, nearest first. A wave may grow while it is looked at. */
  run(): Filled {
    const pixels = new PixelList();
    const sources = new PixelList();
    for (let away = 1; away < this.waves.length; away += 1) {
      const wave = this.waves[away] ?? [];
      for (let index = 0; index < wave.length; index += 2) {
        const at = wave[index] as number;
        if (this.open[at] === 0) continue;
        const source = wave[index + 1] as number;
        this.open[at] = 0;
        this.labels[at] = this.map.labels[source] as number;
        pixels.add(at);
        sources.add(source);
        this.goOn(at, source);
      }
    }
    giveBack(this.open);
    return { labels: this.labels, pixels: pixels.pixels, sources: sources.pixels };
  }

  /** Offers what a pixel took to its neighbours. */
  private goOn(at: number, source: number): void {
    const { width, height } = this.map;
    const y = (at / width) | 0;
    const x = at - y * width;
    const sourceY = (source / width) | 0;
    const sourceX = source - sourceY * width;
    for (let ny = y > 0 ? y - 1 : 0; ny <= y + 1 && ny < height; ny += 1)
      for (let nx = x > 0 ? x - 1 : 0; nx <= x + 1 && nx < width; nx += 1)
        if (this.open[ny * width + nx] === 1)
          this.offer((nx - sourceX) ** 2 + (ny - sourceY) ** 2, ny * width + nx, source);
  }

  private offer(away: number, at: number, source: number): void {
    const wave = this.waves[away];
    if (wave === undefined) this.waves[away] = [at, source];
    else wave.push(at, source);
  }
}
