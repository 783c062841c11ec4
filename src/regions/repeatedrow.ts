// Floor 3. Whether a row of pixels repeats the one above, as most rows of most flags do: looked at as bytes, all at once.

/** Returns what tells of row `y` whether all its `width` pixels are those of the row above; never of the first. */
export function createRepeats(
  pixels: Uint8Array | Uint16Array | Uint32Array,
  width: number,
): (y: number) => boolean {
  const bytes = Buffer.from(pixels.buffer, pixels.byteOffset, pixels.byteLength);
  const stride = width * pixels.BYTES_PER_ELEMENT;
  return (y) =>
    y > 0 && bytes.compare(bytes, (y - 1) * stride, y * stride, y * stride, (y + 1) * stride) === 0;
}
