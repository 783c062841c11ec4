// Floor 8. In which order the flags of a question stand before a voter: by a seed, so that a class may have one for all.

/**
 * Returns `names` in the order of the FNV-1a of `seed`, `question` and the name, with a slash between them: the same for the
 * same seed everywhere. templates/client/vote.js does the same.
 */
export function orderSides(seed: string, question: string, names: readonly string[]): readonly string[] {
  const keyed = names.map((name) => ({ name, key: hashText(`${seed}/${question}/${name}`) }));
  return keyed.sort((a, b) => a.key - b.key || (a.name < b.name ? -1 : 1)).map(({ name }) => name);
}

/**
 * FNV-1a of 32 bits over the ASCII codes of `text`.
 *
 * Example: `foobar` → 0xbf9cf968. Source: draft-eastlake-fnv, “The FNV Non-Cryptographic Hash Algorithm”, section 2.
 */
export function hashText(text: string): number {
  let hash = 0x811c9dc5;
  for (const letter of text) hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 0x01000193) >>> 0;
  return hash;
}
