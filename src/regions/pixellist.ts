// Floor 3. A growing list of pixel numbers, without an object a pixel.

export class PixelList {
  private items = new Int32Array(1 << 12);
  length = 0;

  add(pixel: number): void {
    if (this.length === this.items.length) {
      const larger = new Int32Array(2 * this.length);
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
