// Floor 2, part of step 2. Which filters can be drawn once to see what they do: a closed list of steps with bounded numbers,
// no pictures, no noise, nothing that costs more the larger its numbers are. Source: Filter Effects 1, sections 8 and 9.

import { readLength, readNumber } from "../style/attributevalue.ts";
import type { Cascade } from "../style/cascade.ts";
import type { Declared } from "../style/declaration.ts";
import { blendModes, effectProperties, unknownValue } from "../style/effectproperty.ts";
import type { SelectNode } from "../style/selector.ts";
import type { EffectLook, SvgElement } from "../tree.ts";
import type { XmlElement } from "../xml/xmlnode.ts";
import { silentNamespace, svgNamespace } from "./allowlist.ts";
import { limit } from "./drawinglimit.ts";
import { splitNumbers } from "./geometry.ts";

/** A filter that is on the list. */
export interface KnownFilter {
  readonly element: SvgElement;
  readonly look: EffectLook["kind"];
  /** Whether it shows the element itself, and not its outline alone. */
  readonly showsElement: boolean;
}

/** An element of the file where it stands; of what was read on the way to it, what is declared. */
export interface Standing extends SelectNode {
  readonly author: XmlElement;
  readonly parent: Standing | null;
  readonly declared?: ReadonlyMap<string, Declared>;
}

type Read = (value: string) => boolean;

const numbers =
  (count: number, most: number): Read =>
  (value) => {
    const parts = value.trim().split(/[\s,]+/);
    return (
      parts.length === count &&
      parts.every((part) => Math.abs(Number(readNumber(part) ?? Number.NaN)) <= most)
    );
  };
const number = (most: number): Read => numbers(1, most);
const oneOf =
  (words: string): Read =>
  (value) =>
    words.split(" ").includes(value.trim());
const length: Read = (value) => {
  const read = readLength(value);
  const number = Number.parseFloat(read ?? "NaN") / (read?.endsWith("%") === true ? 100 : 1);
  return Math.abs(number) <= limit.filterNumber;
};
const deviation: Read = (value) =>
  (number(limit.filterNumber)(value) || numbers(2, limit.filterNumber)(value)) && !value.includes("-");
const input: Read = (value) => /^[\w.-]{1,60}$/.test(value.trim());
const offsets = { dx: number(limit.filterNumber), dy: number(limit.filterNumber) };
const flood = oneOf("flood-color flood-opacity");

/** The steps, each with the attributes that it may have. */
const steps: Readonly<Record<string, Readonly<Record<string, Read>>>> = {
  feGaussianBlur: { in: input, stdDeviation: deviation },
  feOffset: { in: input, ...offsets },
  feDropShadow: { in: input, stdDeviation: deviation, ...offsets },
  feMorphology: { in: input, operator: oneOf("erode dilate"), radius: deviation },
  feFlood: {},
  feMerge: {},
  feMergeNode: { in: input },
  feBlend: { in: input, in2: input, mode: (value) => value === "normal" || blendModes.has(value) },
  feColorMatrix: {
    in: input,
    type: oneOf("matrix saturate hueRotate luminanceToAlpha"),
    values: (value) => [1, 20].some((count) => numbers(count, 1000)(value)),
  },
  feComposite: {
    in: input,
    in2: input,
    operator: oneOf("over in out atop xor arithmetic"),
    ...Object.fromEntries(["k1", "k2", "k3", "k4"].map((name) => [name, number(100)])),
  },
  feComponentTransfer: { in: input },
  ...Object.fromEntries(
    ["feFuncR", "feFuncG", "feFuncB", "feFuncA"].map((name) => [
      name,
      { type: oneOf("identity linear"), slope: number(100), intercept: number(100) },
    ]),
  ),
};

const region: Readonly<Record<string, Read>> = {
  ...Object.fromEntries(["x", "y", "width", "height"].map((name) => [name, length])),
  filterUnits: oneOf("userSpaceOnUse objectBoundingBox"),
  primitiveUnits: oneOf("userSpaceOnUse"),
};

/** What may stand in what. */
const inside: Readonly<Record<string, RegExp>> = {
  filter:
    /^fe(?:GaussianBlur|Offset|Morphology|DropShadow|Flood|Merge|Blend|ColorMatrix|Composite|ComponentTransfer)$/,
  feMerge: /^feMergeNode$/,
  feComponentTransfer: /^feFunc[RGBA]$/,
};

/**
 * Returns a filter that is on the list, or what of it is not, in words that follow "has". `side` is the longer one of the flag:
 * thickening and thinning cost the square of how far they go.
 */
export function readFilter(node: Standing, cascade: Cascade, side: number): KnownFilter | string {
  const element = readStep(node, cascade, findSpace(node));
  if (typeof element === "string") return element;
  const parts = element.children.filter((child): child is SvgElement => child.type === "element");
  if (parts.length === 0) return "no steps";
  if (parts.length > limit.filterSteps) return `more than ${limit.filterSteps} steps`;
  if (parts.some(({ attributes: { radius = "0" } }) => splitNumbers(radius).some((each) => each > side / 20)))
    return "a part that thickens or thins by very much";
  const inputs = listInputs(parts);
  if (inputs.includes(undefined)) return "a step that takes what no step before it made";
  return { element, look: describe(parts), showsElement: inputs.includes("SourceGraphic") };
}

/** `in` is absent where a step takes what the one before it made. */
function readStep(node: Standing, cascade: Cascade, space?: string): SvgElement | string {
  const { author } = node;
  const { local: name, place } = author;
  const readers = name === "filter" ? region : steps[name];
  if (readers === undefined) return `<${name.slice(0, 40)}>`;
  const attributes: Record<string, string> = Object.create(null);
  for (const { uri, local, value } of author.attributes) {
    if (uri !== "" && local !== "href") continue;
    if (/^(?:id|style|class|xmlns)$/.test(local) || effectProperties.has(local)) continue;
    const isResult = local === "result" && name !== "filter";
    if (!(isResult ? input(value) : readers[local]?.(value) === true))
      return `${local}=${JSON.stringify(value.slice(0, 40))}`;
    attributes[local] = value.trim();
  }
  if (space === unknownValue) return `a ${colourSpace} around it that is not known`;
  if (space !== undefined) attributes[colourSpace] = space;
  for (const [property, { value }] of cascade(node)) {
    if (value === unknownValue) return `${property} of a value that is not known`;
    if (property === colourSpace || (flood(property) && /Flood|Shadow/.test(name)))
      attributes[property] = value;
  }
  if (name === "filter" && isFar(attributes)) return "a region that reaches far beyond what it is of";
  if (name === "feColorMatrix" && !hasValues(attributes)) return "a colour matrix without its numbers";
  const children: SvgElement[] = [];
  for (const child of author.children) {
    if (child.kind === "text" || silentNamespace.test(child.uri)) continue;
    if (child.uri !== svgNamespace || inside[name]?.test(child.local) !== true)
      return `<${child.local.slice(0, 40)}>`;
    const read = readStep({ author: child, parent: node }, cascade);
    if (typeof read === "string") return read;
    children.push(read);
  }
  return { type: "element", name, value: "", attributes, children, place, attributePlaces: {} };
}

const colourSpace = "color-interpolation-filters";

/** The colour space that a filter inherits, unless it has its own. */
function findSpace({ parent }: Standing): string | undefined {
  for (let above = parent; above !== null; above = above.parent) {
    const found = above.declared?.get(colourSpace);
    if (found !== undefined) return found.value;
  }
  return undefined;
}

/** Whether a region in shares of a box reaches far beyond it. */
function isFar({ filterUnits, ...attributes }: Readonly<Record<string, string>>): boolean {
  const shares = ["x", "y", "width", "height"].map((name) => attributes[name] ?? "0");
  return (
    filterUnits !== "userSpaceOnUse" &&
    shares.some(
      (text) => Math.abs(Number.parseFloat(text)) / (text.endsWith("%") ? 100 : 1) > limit.filterRegion,
    )
  );
}

function hasValues({ type = "matrix", values }: Readonly<Record<string, string>>): boolean {
  const count = values?.split(/[\s,]+/).length;
  return type === "luminanceToAlpha" ? count === undefined : count === (type === "matrix" ? 20 : 1);
}

/** What the steps take that no step made; undefined stands for what is not there. */
function listInputs(parts: readonly SvgElement[]): readonly (string | undefined)[] {
  const made = new Set<string>();
  const taken: (string | undefined)[] = [];
  for (const [index, part] of parts.entries()) {
    const isFirst = index === 0;
    for (const name of takenBy(part)) {
      if (name === undefined ? isFirst : name === "SourceGraphic") taken.push("SourceGraphic");
      else if (name !== undefined && name !== "SourceAlpha" && !made.has(name)) taken.push(undefined);
    }
    const { result } = part.attributes;
    if (result !== undefined) made.add(result);
  }
  return taken;
}

/** `undefined` stands for what the step before made. A shadow of its own shows the element too. */
function takenBy({ name, attributes, children }: SvgElement): readonly (string | undefined)[] {
  if (name === "feFlood") return [];
  if (name === "feMerge")
    return children.flatMap((child) => (child.type === "element" ? [child.attributes["in"]] : []));
  return name === "feBlend" || name === "feComposite"
    ? [attributes["in"], attributes["in2"]]
    : [attributes["in"]];
}

function describe(parts: readonly SvgElement[]): EffectLook["kind"] {
  const has = (name: string): boolean => parts.some((part) => part.name === name);
  if (has("feDropShadow") || has("feOffset")) return "shadow";
  if (has("feGaussianBlur")) return "blur";
  return has("feColorMatrix") || has("feComponentTransfer") ? "colours" : "other";
}
