// Floor 2, step 1. Bytes of a contributed file → a well-formed XML tree with namespaces and places, or the reason
// why not. The door to saxes. Nothing is fetched, nothing is executed, no DTD is read.
import { type SaxesAttributeNS, SaxesParser, type SaxesTagNS } from "saxes";
import type { Place } from "../problem/problem.ts";
import { decodeText, refuseBytes } from "./decode.ts";
import { readEntities } from "./doctype.ts";
import { limit } from "./limit.ts";
import { describeMalformed, evenLines, findStrayAmpersand } from "./malformed.ts";
import { createReporter, Refusal, type Reporter } from "./report.ts";
import type { XmlElement } from "./xmlnode.ts";

/** The tree of a file with the reporter that holds what was noticed on the way. `root` is absent after an error. */
export interface XmlDocument {
  readonly root: XmlElement | undefined;
  readonly reporter: Reporter;
}

/**
 * Reads `bytes` as UTF-8 XML 1.0 with namespaces.
 *
 * Problems: svg/too-big, svg/empty, svg/encoding, svg/not-well-formed, svg/doctype, svg/entity, svg/cap,
 * svg/instruction (warning).
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
  const parser = new SaxesParser({ xmlns: true, position: true, fileName: "" });
  const builder = new Builder(parser, reporter);
  parser.on("xmldecl", (declaration) => builder.declaration(declaration.encoding));
  parser.on("doctype", (content) => builder.doctype(content));
  parser.on("processinginstruction", (instruction) => builder.instruction(instruction.target));
  parser.on("opentagstart", (tag) => builder.openStart(tag.name));
  parser.on("attribute", (attribute) => builder.attribute(attribute.name, attribute.value));
  parser.on("opentag", (tag) => builder.open(tag));
  parser.on("closetag", () => builder.close());
  parser.on("text", (value) => builder.text(value));
  parser.on("cdata", (value) => builder.text(value));
  parser.on("error", (error) => builder.fail(error.message));
  parser.write(text).close();
  return builder.root;
}

class Builder {
  root: XmlElement | undefined;
  private readonly stack: XmlElement[] = [];
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
    this.reporter.warn(
      "svg/instruction",
      start < 0 ? { line, column } : { line, column: start + 1, length: target.length + 2 },
      `The processing instruction <?${target} …?> was removed.`,
    );
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
  }

  close(): void {
    this.lastClosed = this.stack.pop();
  }

  text(text: string): void {
    this.stack.at(-1)?.children.push({
      kind: "text",
      text: evenLines(text),
      place: this.here(),
    });
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
