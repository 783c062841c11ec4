// Floor 2, step 1. Bytes of a contributed file → a well-formed XML tree with namespaces and places, or the reason
// why not. Alone imports saxes. Nothing is fetched, nothing is executed, no DTD is read.
import { type SaxesAttributeNS, SaxesParser, type SaxesTagNS } from "saxes";
import type { Place } from "../../problem/problem.ts";
import { limit } from "../gate/drawinglimit.ts";
import { createReporter, Refusal, type Reporter } from "../gate/drawingreport.ts";
import { decodeText, refuseBytes } from "./decode.ts";
import { readEntities } from "./doctype.ts";
import { describeMalformed, evenLines, findStrayAmpersand } from "./malformed.ts";
import type { XmlElement } from "./xmlnode.ts";

/** The tree of a file with the reporter that holds what was noticed on the way. `root` is absent after an error. */
export interface XmlDocument {
  readonly root: XmlElement | undefined;
  readonly reporter: Reporter;
}

/**
 * Reads `bytes` as UTF-8 XML 1.0 with namespaces.
 *
 * Problems: svg/too-big, svg/empty, svg/encoding, svg/not-well-formed, svg/doctype, svg/entity, svg/cap, svg/css (styles
 * from elsewhere), svg/instruction (warning).
 */
export function readXml(file: string, bytes: Uint8Array): XmlDocument {
  const text = decodeText(bytes);
  const reporter = createReporter(file, text?.split("\n") ?? []);
  const refused = refuseBytes(bytes, text);
  if (refused !== undefined) reporter.error(refused.rule, refused.place, refused.reason, refused.hint);
  else if (text !== undefined) {
    try {
      return { root: parse(text, reporter), reporter };
    } catch (refusal) {
      if (!(refusal instanceof Refusal)) throw refusal;
    }
  }
  return { root: undefined, reporter };
}

function parse(text: string, reporter: Reporter): XmlElement | undefined {
  // What is written has no XML declaration, so characters that only XML 1.1 allows are none.
  const parser = new SaxesParser({
    xmlns: true,
    position: true,
    fileName: "",
    defaultXMLVersion: "1.0",
    forceXMLVersion: true,
  });
  const builder = new Builder(parser, reporter);
  parser.on("xmldecl", (declaration) => builder.declaration(declaration.encoding));
  parser.on("doctype", (content) => builder.doctype(content));
  parser.on("processinginstruction", (instruction) => builder.instruction(instruction.target));
  parser.on("opentagstart", (tag) => builder.openStart(tag.name));
  parser.on("attribute", (attribute) => builder.attribute(attribute.name, attribute.value));
  parser.on("opentag", (tag) => builder.open(tag));
  parser.on("closetag", () => builder.close());
  parser.on("text", (value) => builder.text(value));
  parser.on("cdata", (value) => builder.text(value, "<![CDATA[".length));
  parser.on("comment", () => builder.pause());
  parser.on("error", (error) => builder.fail(error.message));
  parser.write(text).close();
  return builder.root;
}

class Builder {
  root: XmlElement | undefined;
  private readonly stack: XmlElement[] = [];
  /** How many elements each open element holds so far. */
  private readonly counts: number[] = [0];
  /** Where the last tag, comment or text ended. */
  private ended: Place = { line: 1, column: 1 };
  private lastClosed: XmlElement | undefined;
  private elements = 0;
  private start: Place = { line: 1, column: 1 };
  private attributePlaces = new Map<string, Place>();
  private readonly parser: SaxesParser<{
    xmlns: true;
    position: true;
    fileName: string;
  }>;
  private readonly reporter: Reporter;

  constructor(parser: SaxesParser<{ xmlns: true; position: true; fileName: string }>, reporter: Reporter) {
    this.parser = parser;
    this.reporter = reporter;
    // Without its prototype, or &constructor; would be an entity.
    parser.ENTITIES = Object.assign(Object.create(null), {
      amp: "&",
      lt: "<",
      gt: ">",
      quot: '"',
      apos: "'",
    });
  }

  refuse(rule: string, place: Place, reason: string, hint: string): never {
    this.reporter.error(rule, place, reason, hint);
    throw new Refusal(reason);
  }

  here(back = 0): Place {
    return {
      line: this.parser.line,
      column: Math.max(1, this.parser.columnIndex - back + 1),
    };
  }

  declaration(encoding: string | undefined): void {
    if (encoding === undefined || /^utf-?8$/i.test(encoding) || /^us-ascii$/i.test(encoding)) return;
    this.refuse(
      "svg/encoding",
      { line: 1, column: 1 },
      `The file says that its encoding is ${quote(encoding)}.`,
      'Save it as UTF-8 and write encoding="UTF-8" in its first line.',
    );
  }

  doctype(content: string): void {
    const place = this.here();
    const read = readEntities(content);
    if (typeof read === "string") {
      this.refuse(
        "svg/doctype",
        place,
        read,
        /^\s*html\b/i.test(content)
          ? "Open the page, save the drawing itself as SVG, and put that file here."
          : "Delete the whole <!DOCTYPE …> from the file: drawings do not need it.",
      );
    }
    let count = 0;
    for (const [name, value] of read) {
      Object.defineProperty(this.parser.ENTITIES, name, {
        get: () => {
          count += 1;
          if (count > limit.entityReferences) {
            this.refuse(
              "svg/entity",
              this.here(),
              `The file uses entities more than ${limit.entityReferences} times.`,
              "Save it as a plain SVG, without entities.",
            );
          }
          return value;
        },
        configurable: true,
      });
    }
  }

  instruction(target: string): void {
    const { line, column } = this.here();
    const start = (this.reporter.lines[line - 1] ?? "").lastIndexOf(`<?${target}`, column - 1);
    const place = start < 0 ? { line, column } : { line, column: start + 1, length: target.length + 2 };
    if (target === "xml-stylesheet") {
      this.refuse(
        "svg/css",
        place,
        "The drawing has its styles from elsewhere: <?xml-stylesheet …?>.",
        "Write the colours into the drawing, as fill attributes or in a <style> of its own.",
      );
    }
    this.reporter.warn("svg/instruction", place, `The processing instruction <?${target} …?> was removed.`);
    this.pause();
  }

  openStart(name: string): void {
    this.start = this.here(name.length + 2);
    this.attributePlaces = new Map();
  }

  attribute(name: string, value: string): void {
    this.attributePlaces.set(name, this.here(value.includes("\n") ? 0 : value.length + name.length + 3));
  }

  open(tag: SaxesTagNS): void {
    this.elements += 1;
    if (this.elements > limit.elements) {
      this.refuse(
        "svg/cap",
        this.start,
        `The drawing has more than ${limit.elements} elements.`,
        "Merge shapes of one colour in a drawing program.",
      );
    }
    if (this.stack.length >= limit.depth) {
      this.refuse(
        "svg/cap",
        this.start,
        `Elements are nested more than ${limit.depth} deep.`,
        "Ungroup the drawing once or twice.",
      );
    }
    const given: SaxesAttributeNS[] = Object.values(tag.attributes);
    if (given.length > limit.attributes) {
      this.refuse(
        "svg/cap",
        this.start,
        `One element has more than ${limit.attributes} attributes.`,
        "Save it as a plain SVG.",
      );
    }
    const element: XmlElement = {
      kind: "element",
      uri: tag.uri,
      prefix: tag.prefix,
      local: tag.local,
      place: this.start,
      index: this.count(),
      children: [],
      attributes: given.map((attribute) => ({
        uri: attribute.uri,
        prefix: attribute.prefix,
        local: attribute.local,
        value: evenLines(attribute.value),
        place: this.attributePlaces.get(attribute.name) ?? this.start,
      })),
    };
    const parent = this.stack.at(-1);
    if (parent === undefined) this.root = element;
    else parent.children.push(element);
    this.stack.push(element);
    this.counts.push(0);
    this.pause();
  }

  private count(): number {
    const count = (this.counts.pop() ?? 0) + 1;
    this.counts.push(count);
    return count;
  }

  close(): void {
    this.lastClosed = this.stack.pop();
    this.counts.pop();
    this.pause();
  }

  /** `opening`: letters of the mark that the text stands behind. */
  text(text: string, opening = 0): void {
    const { line, column } = this.ended;
    this.stack.at(-1)?.children.push({
      kind: "text",
      text: evenLines(text),
      place: { line, column: column + opening },
    });
    this.pause();
  }

  /** Notes that whatever comes begins here. */
  pause(): void {
    this.ended = this.here();
  }

  fail(message: string): never {
    const stray = findStrayAmpersand(this.reporter.lines.join("\n"));
    const here = this.here(1);
    if (
      stray !== undefined &&
      (stray.line < here.line || (stray.line === here.line && stray.column <= here.column))
    ) {
      this.refuse(
        "svg/not-well-formed",
        stray,
        "The file is not well-formed XML: an ampersand stands alone.",
        "Write &amp; in its place.",
      );
    }
    const cause = message.replace(/^(?:[^:]*:)?\d+:\d+:\s*/, "").replace(/\.$/, "");
    const { place, reason, hint } = describeMalformed(cause, {
      lines: this.reporter.lines,
      here,
      closed: this.lastClosed,
      open: this.stack.at(-1),
      isEmpty: this.elements === 0,
    });
    this.refuse("svg/not-well-formed", place, reason, hint);
  }
}

function quote(text: string): string {
  return JSON.stringify(text);
}
