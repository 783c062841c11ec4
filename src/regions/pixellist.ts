// Floor 3. A growing list of pixel numbers, without an object a pixel.
import { giveBack, takeIntegers } from "./scratch.ts";

export class PixelList {
  private items = takeIntegers(1 << 12);
  length = 0;

  add(pixel: number): void {
    if (this.length === this.items.length) {
      const larger = takeIntegers(2 * this.length);
      larger.set(this.items);
      this.items = larger;
    }
    this.items[this.length] = pixel;
    this.length += 1;
  }

  /** The list so far, sharing its memory. */
  get pixels(): Int32Array {
    return this.items.subarray(0, this.length);
  }
}

/** Digits of 11 bits. */
const [bits, digits] = [11, 2048] as const;

/** Sorts pixel numbers in place, smallest first, digit by digit from the lowest. Linear, where `sort` of an array is not. */
export function sortPixels(pixels: Int32Array): Int32Array {
  let largest = 0;
  for (let index = 0; index < pixels.length; index += 1) largest = Math.max(largest, pixels[index] as number);
  const spare = takeIntegers(pixels.length);
  let [from, to]: [Int32Array, Int32Array] = [pixels, spare];
  for (let shift = 0; largest >> shift > 0; shift += bits) {
    sortDigit(from, to, shift);
    [from, to] = [to, from];
  }
  if (from !== pixels) pixels.set(from);
  giveBack(spare);
  return pixels;
}

function sortDigit(from: Int32Array, to: Int32Array, shift: number): void {
  const places = new Int32Array(digits + 1);
  for (let index = 0; index < from.length; index += 1) {
    const digit = ((from[index] as number) >> shift) & (digits - 1);
    places[digit + 1] = (places[digit + 1] as number) + 1;
  }
  for (let digit = 0; digit < digits; digit += 1)
    places[digit + 1] = (places[digit + 1] as number) + (places[digit] as number);
  for (let index = 0; index < from.length; index += 1) {
    const digit = ((from[index] as number) >> shift) & (digits - 1);
    const place = places[digit] as number;
    to[place] = from[index] as number;
    places[digit] = place + 1;
  }
}
