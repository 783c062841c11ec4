// A seeded mutator: the same seed gives the same drawings on every machine. No code under test is used here.

/** Returns a source of numbers from 0 to 1 (mulberry32). */
export function createRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 0x100000000;
  };
}

type Random = () => number;
type Mutation = (bytes: Buffer, corpus: readonly Buffer[], random: Random) => Buffer;

const token = /<[!?]?[\w:/-]*|[\w:-]+\s*=|"[^"]*"|'[^']*'|[>;{}&#]/g;

/** Pieces that change how what follows is read. */
const pieces = [
  "<script>alert(1)</script>",
  " onload='alert(1)'",
  "<!--",
  "-->",
  "<![CDATA[",
  "]]>",
  "</style>",
  "<style>",
  "&#13;",
  "&#0;",
  "&lt;",
  "&constructor;",
  "\0",
  "\r\n",
  "url(http://127.0.0.1/)",
  "url(#a)",
  "\\75rl(",
  "/*",
  "*/",
  "@import 'a';",
  "javascript:",
  " href='#a'",
  " id='a'",
  "<use href='#a'/>",
  "<g>",
  "</g>",
  "1e99",
  "NaN",
  "-",
  "%",
  "\u202e",
  " style='fill:red'",
  " fill='#123'",
  " transform='scale(1e9)'",
  " xmlns='http://www.w3.org/1999/xhtml'",
  "<mask id='m'>",
  "<pattern id='p'>",
  "<?a?>",
  "<!DOCTYPE svg [<!ENTITY a 'b'>]>",
] as const;

/** Those that leave most files well-formed stand there more often: what is refused at once tests little. */
const mutations: readonly Mutation[] = [
  splice,
  duplicate,
  truncate,
  flip,
  removeRange,
  insertPiece,
  insertPiece,
  swapTokens,
  swapTokens,
  swapTokens,
  replaceValue,
  replaceValue,
  replaceValue,
];

/** Returns one mutant of a file of `corpus`: one to three mutations of it. At most 64 KB of the file are used. */
export function mutate(corpus: readonly Buffer[], random: Random): Buffer {
  let bytes = (pick(corpus, random) ?? Buffer.alloc(0)).subarray(0, 65_536);
  for (let left = 1 + Math.floor(random() ** 2 * 3); left > 0; left -= 1) {
    const mutation = pick(mutations, random);
    if (mutation !== undefined) bytes = mutation(bytes, corpus, random);
  }
  return bytes;
}

function pick<T>(list: readonly T[], random: Random): T | undefined {
  return list[Math.floor(random() * list.length)];
}

/** Small ranges most of the time: a mutant that is still well-formed reaches further into the code. */
function range(length: number, random: Random): readonly [number, number] {
  const start = Math.floor(random() * (length + 1));
  return [start, Math.min(length, start + Math.floor(random() ** 3 * Math.min(length, 2000)))];
}

function splice(bytes: Buffer, corpus: readonly Buffer[], random: Random): Buffer {
  const other = pick(corpus, random) ?? bytes;
  const [start, end] = range(bytes.length, random);
  const [from, to] = range(other.length, random);
  return Buffer.concat([bytes.subarray(0, start), other.subarray(from, to), bytes.subarray(end)]);
}

function duplicate(bytes: Buffer, _: readonly Buffer[], random: Random): Buffer {
  const [start, end] = range(bytes.length, random);
  return Buffer.concat([bytes.subarray(0, end), bytes.subarray(start)]);
}

function truncate(bytes: Buffer, _: readonly Buffer[], random: Random): Buffer {
  return bytes.subarray(0, Math.floor(random() * bytes.length));
}

function flip(bytes: Buffer, _: readonly Buffer[], random: Random): Buffer {
  const copy = Buffer.from(bytes);
  const at = Math.floor(random() * copy.length);
  if (copy.length > 0) copy[at] = (copy[at] ?? 0) ^ (1 << Math.floor(random() * 8));
  return copy;
}

function swapTokens(bytes: Buffer, _: readonly Buffer[], random: Random): Buffer {
  const text = bytes.toString("latin1");
  const tokens = [...text.matchAll(token)];
  const one = pick(tokens, random);
  const kind = one?.[0][0];
  // Two of a kind: names with names, values with values.
  const alike = tokens.filter(
    ([found]) => found[0] === kind || (/^\w/.test(found) && /^\w/.test(kind ?? "")),
  );
  const other = pick(alike, random);
  if (one === undefined || other === undefined || one.index === other.index) return bytes;
  const [first, second] = one.index < other.index ? [one, other] : [other, one];
  const firstEnd = first.index + first[0].length;
  if (firstEnd > second.index) return bytes;
  const swapped =
    text.slice(0, first.index) +
    second[0] +
    text.slice(firstEnd, second.index) +
    first[0] +
    text.slice(second.index + second[0].length);
  return Buffer.from(swapped, "latin1");
}

function insertPiece(bytes: Buffer, _: readonly Buffer[], random: Random): Buffer {
  const text = bytes.toString("latin1");
  const tokens = [...text.matchAll(token)];
  // Half of them behind a token, where they have a chance to be read as what they are.
  const at = random() < 0.5 ? Math.floor(random() * text.length) : (pick(tokens, random)?.index ?? 0);
  return Buffer.concat([bytes.subarray(0, at), Buffer.from(pick(pieces, random) ?? ""), bytes.subarray(at)]);
}

const values = [
  "url(#a)",
  "url(http://127.0.0.1/#a)",
  "url(#a) url(//b)",
  "#a",
  "javascript:alert(1)",
  "1e99",
  "-1",
  "0",
  "100%",
  "1e-9",
  "none",
  "inherit",
  "currentColor",
  "#123",
  "red",
  "rgba(1,2,3,.4)",
  "fill:red;stroke:url(#a)",
  "fill:red/**/",
  "fill:'}",
  "a&#13;b",
  "M0 0L1 1",
  "M0 0h1e9",
  "0 0 1 1",
  "scale(1e6)",
  "matrix(0 0 0 0 0 0)",
  "var(--a)",
  "image-set('a' 1x)",
  "",
  " ",
  "&lt;&quot;",
] as const;

/** Puts another value, or one of the same file, between the quotes of an attribute. */
function replaceValue(bytes: Buffer, _: readonly Buffer[], random: Random): Buffer {
  const text = bytes.toString("latin1");
  const quoted = [...text.matchAll(/"[^"<]*"/g)];
  const chosen = pick(quoted, random);
  if (chosen === undefined) return bytes;
  const value = random() < 0.3 ? (pick(quoted, random)?.[0] ?? '""') : `"${pick(values, random) ?? ""}"`;
  return Buffer.from(
    text.slice(0, chosen.index) + value + text.slice(chosen.index + chosen[0].length),
    "latin1",
  );
}

function removeRange(bytes: Buffer, _: readonly Buffer[], random: Random): Buffer {
  const [start, end] = range(bytes.length, random);
  return Buffer.concat([bytes.subarray(0, start), bytes.subarray(end)]);
}
