// Floor 3. Memory of the size of a map that is used again. A fresh array of a megabyte costs some hundred page faults, twenty
// times what it takes to clear one that is there, and has the garbage collected sooner.

/** Memory that was given back: at most so many pieces and bytes, about what one drawing needs at a time. */
const kept: ArrayBuffer[] = [];
const mostKept = 32;
const mostBytes = 2 ** 26;
let keptBytes = 0;

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

/** Lets arrays that were taken be taken again. Whoever reads one afterwards reads what others write. */
export function giveBack(...arrays: readonly { readonly buffer: ArrayBufferLike }[]): void {
  for (const { buffer } of arrays) {
    const hasRoom = kept.length < mostKept && keptBytes + buffer.byteLength <= mostBytes;
    if (!hasRoom || !(buffer instanceof ArrayBuffer) || kept.includes(buffer)) continue;
    kept.push(buffer);
    keptBytes += buffer.byteLength;
  }
}

/** The smallest kept piece that is large enough, else a new one. Sizes are powers of two, so that flags of other sizes fit. */
function take(bytes: number): ArrayBuffer {
  let best = -1;
  for (let at = 0; at < kept.length; at += 1) {
    const size = kept[at]?.byteLength ?? 0;
    if (size >= bytes && (best < 0 || size < (kept[best]?.byteLength ?? 0))) best = at;
  }
  if (best < 0) return new ArrayBuffer(2 ** Math.ceil(Math.log2(Math.max(1, bytes))));
  const [buffer] = kept.splice(best, 1) as [ArrayBuffer];
  keptBytes -= buffer.byteLength;
  return buffer;
}
