// Test support. What a font file has: letters, and what it can do with them. Read from its tables, by nothing of ours.
import { createRequire } from "node:module";

/** Unpacks WOFF2, by the decoder that subset-font brings; what it gives is read here. */
export async function unpackWoff2(woff2: Uint8Array): Promise<Buffer> {
  const ask = createRequire(createRequire(import.meta.url).resolve("subset-font"));
  const { convert } = ask("fontverter") as {
    convert(font: Buffer, to: "sfnt", from: "woff2"): Promise<Uint8Array>;
  };
  return Buffer.from(await convert(Buffer.from(woff2), "sfnt", "woff2"));
}

/** The letters that a font has a form for. Source: OpenType 1.9, cmap, format 4. */
export function readLetters(font: Buffer): ReadonlySet<number> {
  const tables = Array.from({ length: font.readUInt16BE(4) }, (_, n) => 12 + 16 * n);
  const entry = tables.find((at) => font.toString("latin1", at, at + 4) === "cmap") ?? 0;
  const cmap = font.subarray(font.readUInt32BE(entry + 8));
  const subtables = Array.from({ length: cmap.readUInt16BE(2) }, (_, n) => cmap.readUInt32BE(8 + 8 * n));
  const at = subtables.find((offset) => cmap.readUInt16BE(offset) === 4);
  if (at === undefined) throw new Error("the font has no cmap of format 4");
  const table = cmap.subarray(at);
  const twice = table.readUInt16BE(6);
  const letters = new Set<number>();
  for (let segment = 0; segment < twice; segment += 2) {
    const last = table.readUInt16BE(14 + segment);
    const first = table.readUInt16BE(16 + twice + segment);
    const delta = table.readUInt16BE(16 + 2 * twice + segment);
    const place = 16 + 3 * twice + segment;
    const range = table.readUInt16BE(place);
    for (let code = first; code <= last && code < 0xffff; code += 1) {
      const glyph = range === 0 ? code : table.readUInt16BE(place + range + 2 * (code - first));
      if (glyph !== 0 && ((glyph + delta) & 0xffff) !== 0) letters.add(code);
    }
  }
  return letters;
}

/** The tags of the features of a font. Source: OpenType 1.9, GSUB and GPOS headers, feature list. */
export function readFeatures(font: Buffer): ReadonlySet<string> {
  const tables = Array.from({ length: font.readUInt16BE(4) }, (_, n) => 12 + 16 * n);
  const tags = ["GSUB", "GPOS"].flatMap((name) => {
    const entry = tables.find((at) => font.toString("latin1", at, at + 4) === name);
    if (entry === undefined) return [];
    const table = font.subarray(font.readUInt32BE(entry + 8));
    const list = table.subarray(table.readUInt16BE(6));
    return Array.from({ length: list.readUInt16BE(0) }, (_, n) =>
      list.toString("latin1", 2 + 6 * n, 6 + 6 * n),
    );
  });
  return new Set(tags);
}
