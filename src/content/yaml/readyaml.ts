// Floor 5. YAML text → plain values, each with its place; everything YAML can do beyond plain values is refused.
import {
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  type Pair,
  parseDocument,
  type Scalar,
} from "yaml";
import type { Advice, Outcome, Place, Problem, Severity } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { cleanText, typeAgain } from "../text/cleantext.ts";
import { reportIn, type Source } from "../text/textsource.ts";
import { findKeySlip } from "./brokenkey.ts";
import type { Slip } from "./brokenline.ts";
import { findComment } from "./cutcomment.ts";
import { describeBareHash, describeCauses, describeFeatures, findForbidden } from "./yamlcause.ts";
import { describeSyntax, tooDeep } from "./yamlsyntax.ts";
import { findTokens, type Token } from "./yamltoken.ts";

/** What one YAML text says. Paths are dotted: `change.replace`, `options.0.with`; the whole is "". */
export interface YamlData {
  /** Maps have no prototype. */
  readonly value: Readonly<Record<string, unknown>>;
  readonly places: ReadonlyMap<string, Place>;
  readonly keyPlaces: ReadonlyMap<string, Place>;
  /** Plain scalars that YAML does not read as text, as they were typed: `0x10`, `no`'s cousin `true`, `1e3`. */
  readonly typed: ReadonlyMap<string, string>;
  /** Paths whose value could not be read and already has its problem. */
  readonly unread: ReadonlySet<string>;
}

/** Deepest nesting of lists and maps. No key needs more than three. */
const deepest = 8;

/**
 * Reads `yaml`, whose lines are the lines of `source`. `example` is a line that may begin it.
 *
 * Scalars follow the core schema of YAML 1.2: `no` and dates are text. Texts come back normalised (NFC), trimmed, and
 * cleaned as `cleanText` says. The value is undefined where the YAML cannot be read as one map.
 *
 * Problems: `study/yaml-tab`, `study/yaml-control`, `study/yaml-syntax`, `study/yaml-feature`, `study/not-a-map`,
 * `study/duplicate-key`, `study/quote-hash`, `study/direction-control`, `study/comment`.
 *
 * Source: YAML 1.2.2, section 10.3 (core schema).
 */
export function parseYaml(
  source: Source,
  yaml: string,
  example = "title: A lighter ferry wheel",
): Outcome<YamlData> {
  const forbidden = findForbidden(source, yaml);
  if (forbidden.length > 0) return { value: undefined, problems: forbidden };

  const lineCounter = new LineCounter();
  const document = parseShallow(yaml, lineCounter);
  if (document === undefined) return { value: undefined, problems: [tooDeep(source)] };
  const tokens = findTokens(yaml);
  const at = (token: Token) => placeOf(lineCounter, token.offset, token.text.length);
  const features = describeFeatures(source, tokens, at);
  if (document.errors.length > 0) {
    const causes = [...features, ...describeCauses(source, tokens, at)];
    const firstLine = Math.min(...causes.map(({ place }) => place?.line ?? 1));
    const syntax = describeSyntax(source, document.errors, lineCounter);
    // What follows a cause is most likely its consequence.
    return {
      value: undefined,
      problems: [...causes, ...syntax.filter(({ place }) => (place?.line ?? 1) < firstLine)],
    };
  }
  const reader = new YamlReader(source, lineCounter, tokens);
  const value = reader.readDocument(document.contents, example);
  return { value, problems: [...(value === undefined ? [] : features), ...reader.problems] };
}

/** Parses `yaml`, or returns undefined where it is nested deeper than the library's own recursion can go. */
function parseShallow(yaml: string, lineCounter: LineCounter): Document.Parsed | undefined {
  try {
    return parseDocument(yaml, {
      lineCounter,
      schema: "core",
      merge: false,
      uniqueKeys: false,
      prettyErrors: false,
      logLevel: "silent",
    });
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** Walks the parsed nodes once. The library's own conversion would follow aliases and build plain objects. */
class YamlReader {
  readonly problems: Problem[] = [];
  private readonly places = new Map<string, Place>();
  private readonly keyPlaces = new Map<string, Place>();
  private readonly typed = new Map<string, string>();
  private readonly unread = new Set<string>();
  private readonly source: Source;
  private readonly lineCounter: LineCounter;
  private readonly hashes: readonly Token[];

  constructor(source: Source, lineCounter: LineCounter, tokens: readonly Token[]) {
    this.source = source;
    this.lineCounter = lineCounter;
    this.hashes = tokens.filter(({ kind }) => kind === "bare hash");
  }

  readDocument(contents: Node | null, example: string): YamlData | undefined {
    if (!isMap(contents)) {
      const isFenced = this.source.lines[0]?.trim() === "---" && this.source.file.endsWith(".yaml");
      const start = isFenced ? 0 : (contents?.range?.[0] ?? 0);
      const place = contents ? placeOf(this.lineCounter, start, isFenced ? 3 : 1) : { line: 1, column: 1 };
      const begin = `Begin, for example, with: ${example}`;
      const hint = isFenced ? `Delete the lines ---.\n${begin}` : begin;
      this.report("study/not-a-map", place, { reason: "Lines of the form “key: value” belong here.", hint });
      return undefined;
    }
    const { places, keyPlaces, typed, unread } = this;
    return { value: this.readMap(contents.items, ""), places, keyPlaces, typed, unread };
  }

  private readNode(node: Node | null | undefined, path: string): unknown {
    if (node?.range)
      this.places.set(path, placeOf(this.lineCounter, node.range[0], node.range[1] - node.range[0]));
    if (isScalar(node)) return this.readScalar(node, path);
    if (isAlias(node) || node?.tag?.startsWith("!") || path.split(".").length > deepest)
      return this.skip(path);
    if (isMap(node)) return this.readMap(node.items, path);
    if (isSeq(node))
      return node.items.map((item, index) => this.readNode(item as Node | null, `${path}.${index}`));
    return null;
  }

  private readMap(items: readonly Pair[], path: string): Record<string, unknown> {
    const map: Record<string, unknown> = Object.create(null);
    for (const { key, value } of items) {
      const name = isScalar(key) ? (key.source ?? String(key.value)) : undefined;
      const range = (key as Node | null)?.range ?? [0, 1, 1];
      const place = placeOf(this.lineCounter, range[0], range[1] - range[0]);
      if (name === undefined || name === "") {
        const hint = "Write it on one line: key: value";
        this.report("study/yaml-feature", place, { reason: "A key must be one plain word.", hint });
        continue;
      }
      if (name === "<<") continue;
      const isAlone = value === null || (isScalar(value) && value.value === null);
      const slip = findKeySlip(this.source.lines[place.line - 1] ?? "", name, isAlone);
      const keyPath = pathOf(path, slip?.key ?? name);
      if (slip !== undefined) {
        this.reportSlip(slip, place.line);
        if (isAlone) this.skip(keyPath);
      }
      const earlier = this.keyPlaces.get(keyPath);
      if (earlier) {
        const reason = `${quoteText(name)} stands here a second time; the first is on line ${earlier.line}.`;
        const hint = "Keep one of the two and delete the other.";
        this.report("study/duplicate-key", place, { reason, hint });
        continue;
      }
      this.keyPlaces.set(keyPath, place);
      map[slip?.key ?? name] = this.readNode(value as Node | null, keyPath);
    }
    return map;
  }

  private readScalar(node: Scalar, path: string): unknown {
    const { value } = node;
    if (node.tag !== undefined || (node.anchor !== undefined && value === null)) return this.skip(path);
    if (typeof value === "string") {
      if (node.type === "PLAIN") this.checkComment(node, path);
      return this.readText(value, path);
    }
    if (value === null) this.checkBareHash(node, path);
    if (node.source !== undefined) this.typed.set(path, node.source);
    return value;
  }

  private readText(text: string, path: string): string {
    const { text: clean, directions } = cleanText(text);
    const place = this.places.get(path);
    if (directions.length > 0 && place) {
      const names = [...new Set(directions)].join(", ");
      const reason = `An invisible character that turns the reading direction was taken out (${names}).`;
      this.report("study/direction-control", place, { reason, hint: typeAgain }, "warning");
    }
    return clean.trim();
  }

  /** A value is missing: perhaps because a # on the same line began a comment. */
  private checkBareHash(node: Scalar, path: string): void {
    const { line } = placeOf(this.lineCounter, node.range?.[0] ?? 0, 1);
    for (const token of this.hashes) {
      const place = placeOf(this.lineCounter, token.offset, token.text.length);
      if (place.line !== line) continue;
      this.unread.add(path);
      this.problems.push(describeBareHash(this.source, place, token));
    }
  }

  private checkComment(node: Scalar, path: string): void {
    const [from = 0, to = 0] = node.range ?? [];
    const [start, end] = [placeOf(this.lineCounter, from, 1), placeOf(this.lineCounter, to, 1)];
    const text = this.source.lines[end.line - 1] ?? "";
    const found = findComment(path, text, end.column, start.line === end.line ? start.column : undefined);
    if (found !== undefined) this.report("study/comment", end, found, "warning");
  }

  /** Two slips of a line are mended by one line to type. */
  private reportSlip(slip: Slip, line: number): void {
    if (this.problems.some((other) => other.place?.line === line && other.hint === slip.hint)) return;
    this.report("study/yaml-syntax", { line, column: slip.column }, slip);
  }

  private skip(path: string): null {
    this.unread.add(path);
    return null;
  }

  private report(rule: string, place: Place, advice: Advice, severity?: Severity): void {
    this.problems.push(reportIn(rule, [this.source, place], advice, severity));
  }
}

function pathOf(parent: string, name: string): string {
  return parent === "" ? name : `${parent}.${name}`;
}

function placeOf(lineCounter: LineCounter, offset: number, length: number): Place {
  const { line, col } = lineCounter.linePos(offset);
  return { line: Math.max(1, line), column: Math.max(1, col), length: Math.max(1, length) };
}
