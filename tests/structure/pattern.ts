// A regular expression as a tree, as far as a search for slow ones needs it: which characters each place takes, and how
// places follow each other. Node's own RegExp says what a character class takes.

/** What one place of a pattern takes: a bit for each character of a sample. */
export type Taken = bigint;

export type Part =
  | { readonly kind: "one"; readonly taken: Taken }
  | { readonly kind: "row" | "choice"; readonly parts: readonly Part[] }
  | { readonly kind: "repeat"; readonly part: Part; readonly least: number; readonly most: number }
  /**
   * What looks around: takes nothing and may fail. `part` is what it looks for ahead; `before` the character that must
   * stand before, where it is one: none at the beginning of the text.
   */
  | { readonly kind: "look"; readonly part?: Part; readonly before?: Taken };

/** One of each kind of character that patterns tell apart, besides those that a pattern names itself. */
const sample = [
  ...Array.from({ length: 0x180 }, (_, code) => String.fromCodePoint(code)),
  ..."\u0301\u05d0\u200b\u200e\u2028\u2029\u202e\u2060\u2013\u2014\u2018\u2019\u201a\u201c\u201d\u201e\u2033\u3001\u4e00\ufe0f\uff0c\uff1b\uff1a\ufeff\u{1f600}",
];

/** Returns the tree of a pattern. Throws a `SyntaxError` where it is no regular expression. */
export function parsePattern(source: string, flags: string): Part {
  new RegExp(source, flags);
  return new Parser(source, flags.replace(/[gym]/g, ""), flags.includes("m")).readChoice();
}

class Parser {
  private at = 0;
  private readonly known = new Map<string, Taken>();
  private readonly characters: readonly string[];
  private readonly source: string;
  private readonly flags: string;
  private readonly hasLines: boolean;

  constructor(source: string, flags: string, hasLines: boolean) {
    this.source = source;
    this.flags = flags;
    this.hasLines = hasLines;
    this.characters = [...new Set([...sample, ...source])];
  }

  readChoice(): Part {
    const parts = [this.readRow()];
    while (this.take("|")) parts.push(this.readRow());
    return parts.length === 1 && parts[0] ? parts[0] : { kind: "choice", parts };
  }

  private readRow(): Part {
    const parts: Part[] = [];
    while (this.at < this.source.length && !/[|)]/.test(this.source.charAt(this.at)))
      parts.push(this.readRepeat(this.readPart()));
    return { kind: "row", parts };
  }

  private readRepeat(part: Part): Part {
    const [all, sign, from, comma, to] =
      /^(?:([*+?])|\{(\d+)(,)?(\d*)\})\??/.exec(this.source.slice(this.at)) ?? [];
    if (all === undefined) return part;
    this.at += all.length;
    const least = sign === undefined ? Number(from) : sign === "+" ? 1 : 0;
    const open = comma === undefined ? least : to ? Number(to) : Number.POSITIVE_INFINITY;
    return {
      kind: "repeat",
      part,
      least,
      most: sign === undefined ? open : sign === "?" ? 1 : Number.POSITIVE_INFINITY,
    };
  }

  private readPart(): Part {
    if (this.take("^")) return { kind: "look", before: this.hasLines ? this.takenBy("\\n") : 0n };
    if (this.take("$") || this.take("\\b") || this.take("\\B")) return { kind: "look" };
    if (this.take("(")) return this.readGroup();
    const [word = ""] =
      /^(?:\\k<\w+>|\\[1-9]\d*|\\[pP]\{[^}]*\}|\\u\{[^}]*\}|\\u[\da-fA-F]{4}|\\x[\da-fA-F]{2}|\\c[a-zA-Z]|\\.|\[(?:[^\]\\]|\\.)*\]|.)/su.exec(
        this.source.slice(this.at),
      ) ?? [];
    this.at += word.length;
    // What an earlier group has taken may be anything.
    return { kind: "one", taken: this.takenBy(/^\\(?:k<|[1-9])/.test(word) ? "[^]" : word) };
  }

  private readGroup(): Part {
    const [mark = ""] = /^\?(?:<?[=!]|<\w+>|[a-z-]*:)/.exec(this.source.slice(this.at)) ?? [];
    this.at += mark.length;
    const part = this.readChoice();
    this.take(")");
    if (!/[=!]/.test(mark)) return part;
    if (!mark.startsWith("?<")) return { kind: "look", part };
    const [one] = part.kind === "row" && part.parts.length === 1 ? part.parts : [];
    if (one?.kind !== "one") return { kind: "look" };
    return { kind: "look", before: mark === "?<=" ? one.taken : ~one.taken };
  }

  private take(word: string): boolean {
    if (!this.source.startsWith(word, this.at)) return false;
    this.at += word.length;
    return true;
  }

  private takenBy(word: string): Taken {
    const known = this.known.get(word);
    if (known !== undefined) return known;
    const pattern = new RegExp(`^${word}$`, this.flags);
    let taken = 0n;
    this.characters.forEach((character, index) => {
      if (pattern.test(character)) taken |= 1n << BigInt(index);
    });
    this.known.set(word, taken);
    return taken;
  }
}
