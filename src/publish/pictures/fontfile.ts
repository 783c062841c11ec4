// Floor 9. A bundled web font → the plain font file that the text renderer can read.
import { inflateSync } from "node:zlib";

const headerLength = { woff: 44, sfnt: 12 };
const entryLength = { woff: 20, sfnt: 16 };

interface Table {
  readonly tag: number;
  readonly checksum: number;
  readonly length: number;
  readonly data: Buffer;
}

/**
 * Returns the font in `woff` as an OpenType file. Throws RangeError where the bytes are no WOFF 1.0 file.
 *
 * Source: W3C Recommendation WOFF File Format 1.0, 2012, sections 3 to 5; OpenType 1.9, table directory.
 */
export function unpackFont(woff: Buffer): Buffer {
  if (woff.length < headerLength.woff || woff.toString("latin1", 0, 4) !== "wOFF")
    throw new RangeError("no WOFF font");
  const count = woff.readUInt16BE(12);
  const tables = Array.from({ length: count }, (_, index) =>
    readTable(woff, headerLength.woff + index * entryLength.woff),
  );
  const directory = Buffer.alloc(headerLength.sfnt + count * entryLength.sfnt);
  writeHeader(directory, woff.readUInt32BE(4), count);
  const parts: Buffer[] = [directory];
  let offset = directory.length;
  for (const [index, { tag, checksum, length, data }] of tables.entries()) {
    const entry = headerLength.sfnt + index * entryLength.sfnt;
    for (const [at, value] of [tag, checksum, offset, length].entries())
      directory.writeUInt32BE(value, entry + 4 * at);
    const padded = Buffer.concat([data, Buffer.alloc((4 - (length % 4)) % 4)]);
    parts.push(padded);
    offset += padded.length;
  }
  return Buffer.concat(parts);
}

/** A table is stored as it is where compressing would not have made it shorter. */
function readTable(woff: Buffer, at: number): Table {
  const [tag, offset, packed, length, checksum] = [0, 4, 8, 12, 16].map((field) =>
    woff.readUInt32BE(at + field),
  ) as [number, number, number, number, number];
  const stored = woff.subarray(offset, offset + packed);
  const data = packed < length ? inflateSync(stored) : stored;
  if (data.length !== length) throw new RangeError("a table of the font has the wrong length");
  return { tag, checksum, length, data };
}

/** The search fields follow from the number of tables. */
function writeHeader(directory: Buffer, flavour: number, count: number): void {
  const power = Math.floor(Math.log2(count));
  const range = 2 ** power * entryLength.sfnt;
  directory.writeUInt32BE(flavour, 0);
  directory.writeUInt16BE(count, 4);
  directory.writeUInt16BE(range, 6);
  directory.writeUInt16BE(power, 8);
  directory.writeUInt16BE(count * entryLength.sfnt - range, 10);
}
