// Floor 3. Memory of the size of a map that is used again. A fresh array of a megabyte costs some hundred page faults, twenty
// times what it takes to clear one that is there, and has the garbage collected sooner.

/** Memory that was given back: at most so many pieces and bytes, about what one drawing needs at a time. */
const kept: ArrayBuffer[] = [];
const mostKept = 24;
const mostBytes = 2 ** 26;
let keptBytes = 0;
/** Smaller pieces are as cheap new, and would take the place of large ones. */
const leastBytes = 2 ** 16;

/** Returns `length` bytes, all 0. Give them back where nothing that stays refers to them. */
export function takeBytes(length: number): Uint8Array<ArrayBuffer> {
  return new Uint8Array(take(length), 0, length).fill(0);
}

/** Returns `length` numbers of 16 bits, whatever they are. */
export function takeWords(length: number): Uint16Array<ArrayBuffer> {
  return new Uint16Array(take(2 * length), 0, length);
}

/** Returns `length` numbers of single precision, whatever they are. */
export function takeFloats(length: number): Float32Array<ArrayBuffer> {
  return new Float32Array(take(4 * length), 0, length);
}

/** Returns `length` whole numbers of 32 bits, whatever they are. */
export function takeIntegers(length: number): Int32Array<ArrayBuffer> {
  return new Int32Array(take(4 * length), 0, length);
}

/**
 * Lets arrays that were taken be taken again, in place of those that were given back longest ago where there are too many.
 * Whoever reads one afterwards reads what others write.
 */
export function giveBack(...arrays: readonly { readonly buffer: ArrayBufferLike }[]): void {
  for (const { buffer } of arrays) {
    if (!(buffer instanceof ArrayBuffer) || buffer.byteLength < leastBytes || kept.includes(buffer)) continue;
    kept.push(buffer);
    keptBytes += buffer.byteLength;
    while (kept.length > mostKept || keptBytes > mostBytes) keptBytes -= kept.shift()?.byteLength ?? 0;
  }
}

/** A kept piece, else a new one, of the next power of two: one that serves for flags of nearly the same size, and no list of few pixels. */
function take(bytes: number): ArrayBuffer {
  const size = 2 ** Math.ceil(Math.log2(Math.max(1, bytes)));
  const at = kept.findLastIndex(({ byteLength }) => byteLength === size);
  if (at < 0) return new ArrayBuffer(size);
  keptBytes -= size;
  return kept.splice(at, 1)[0] as ArrayBuffer;
}
