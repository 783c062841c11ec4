// What must not be in a published drawing, found in its bytes by a reader of its own: not with the code under test.

const elements = new Set(
  "svg g defs symbol use clipPath mask marker linearGradient radialGradient stop pattern style title desc metadata path rect circle ellipse line polyline polygon".split(
    " ",
  ),
);
const withText = new Set(["style", "title", "desc", "metadata"]);
const token = /<(\/?)([A-Za-z]+)((?: [\w:.-]+="[^"<>\n\t\r]*")*)(\/?)>|([^<]+)/y;
const entity = /&(?!(?:amp|lt|gt|quot|#9|#10);)/;

/**
 * Returns what in `svg` could run, load, hide or surprise, or undefined. Passes only text in the one form that we
 * write: known elements, double-quoted attributes, no comment, CDATA, DOCTYPE or instruction, no entity but five, LF.
 */
export function findActive(svg: string): string | undefined {
  if (/\r/.test(svg)) return "a carriage return";
  if (entity.test(svg)) return `an entity: ${svg.slice(svg.search(entity), svg.search(entity) + 12)}`;
  const open: string[] = [];
  token.lastIndex = 0;
  while (token.lastIndex < svg.length) {
    const at = token.lastIndex;
    const match = token.exec(svg);
    if (match === null) return `no element of ours: ${svg.slice(at, at + 60)}`;
    const [, close, name = "", attributes = "", empty, text] = match;
    const found = text === undefined ? findInTag(name, attributes) : findInText(text, open.at(-1));
    if (found !== undefined) return found;
    if (text !== undefined) continue;
    if (close === "/") {
      if (open.pop() !== name) return `</${name}> without its start`;
    } else if (empty !== "/") open.push(name);
  }
  return open.length > 0 ? `<${open.at(-1)}> is not closed` : undefined;
}

function findInTag(name: string, attributes: string): string | undefined {
  if (!elements.has(name)) return `<${name}>`;
  for (const [, attribute = "", written = ""] of attributes.matchAll(/ ([\w:.-]+)="([^"]*)"/g)) {
    const value = decode(written);
    if (/^(?:.*:)?on/i.test(attribute)) return attribute;
    if (attribute.includes(":") && attribute !== "xlink:href" && attribute !== "xmlns:xlink")
      return attribute;
    if (/href$/i.test(attribute) && !/^#/.test(value)) return `${attribute}="${value}"`;
    if (attribute === "style" || !/^(?:data-|aria-|class$|id$|lang$|role$|xmlns)/.test(attribute)) {
      const active = findInCss(value);
      if (active !== undefined) return `${attribute}: ${active}`;
    }
  }
  return undefined;
}

function findInText(written: string, parent: string | undefined): string | undefined {
  if (written.trim() === "") return undefined;
  if (parent === undefined || !withText.has(parent)) return `text in <${parent}>: ${written.slice(0, 40)}`;
  return parent === "style" ? findInCss(decode(written)) : undefined;
}

function findInCss(text: string): string | undefined {
  if (
    /[\\@]|\/\*|<|javascript:|expression\s*\(|behavior|-moz-binding|(?:src|image|image-set)\s*\(/i.test(text)
  )
    return text.slice(0, 80);
  for (const [url] of text.matchAll(/url\s*\([^)]*/gi)) if (!/^url\s*\(\s*["']?#/i.test(url)) return url;
  return undefined;
}

function decode(text: string): string {
  return text
    .replace(/&lt;/g, "<")
    .replace(/&gt;/g, ">")
    .replace(/&quot;/g, '"')
    .replace(/&#9;/g, "\t")
    .replace(/&#10;/g, "\n")
    .replace(/&amp;/g, "&");
}
