// Floor 6. Bulky parts of results, packed: a gallery of thousands holds them all from the first measurement to the last page,
// and the dozen drawings of a study differ in colours alone.
import { deserialize, serialize } from "node:v8";
import { brotliCompressSync, brotliDecompressSync, constants } from "node:zlib";

/** Quick; the usual window of 4 MB sees all drawings of a study but the largest. */
const params = { [constants.BROTLI_PARAM_QUALITY]: 4 };

/** What was opened last: a page asks for one study's parts again and again. */
const opened = new Map<Uint8Array, object>();
const mostOpened = 4;

/** Returns plain data with the same keys and values, each of which is unpacked when it is asked for. */
export function pack<T extends object>(value: T): T {
  // A copy, which is as long as it says: the buffer behind what comes back has 16 KB at least.
  const bytes = new Uint8Array(brotliCompressSync(serialize(value), { params }));
  const read = (key: string) => ({ get: () => (open(bytes) as T)[key as keyof T], enumerable: true });
  const keys = Object.keys(value);
  return Object.defineProperties({}, Object.fromEntries(keys.map((key) => [key, read(key)]))) as T;
}

function open(bytes: Uint8Array): object {
  const known = opened.get(bytes);
  if (known !== undefined) return known;
  const value: object = deserialize(brotliDecompressSync(bytes));
  for (const old of opened.keys()) if (opened.size >= mostOpened) opened.delete(old);
  opened.set(bytes, value);
  return value;
}
