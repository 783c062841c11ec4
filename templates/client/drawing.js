// A drawing from the reader's disk → nodes of this page, each made anew from a list of what may be there, and its colours.
// Only what the list names is taken, so nothing in the file can run, load, or reach the page around it.
import { elements, shapes, svgNamespace, unshown, xlinkNamespace } from "../../src/svg/gate/allowlist.ts";
import { limit } from "../../src/svg/gate/drawinglimit.ts";

const geometry =
  /^(?:d|points|x|y|width|height|r|rx|ry|cx|cy|[xy][12]|f[xyr]|ref[XY]|offset|orient|viewBox|preserveAspectRatio|spreadMethod|(?:gradient|pattern)?[tT]ransform|marker(?:Width|Height|Units)|(?:gradient|pattern|patternContent|clipPath|mask|maskContent)Units)$/;
const painting =
  /^(?:color|fill(?:-opacity|-rule)?|stroke(?:-opacity|-width|-linecap|-linejoin|-miterlimit|-dasharray|-dashoffset)?|opacity|stop-color|stop-opacity|display|visibility|overflow|clip-path|clip-rule|mask|mask-type|marker-(?:start|mid|end)|paint-order)$/;
const reference = /^url\(\s*["']?#([^"'()\s]+)["']?\s*\)\s*(none|#[\da-f]+|[a-z]+)?$/i;
/** What references of these show is no colour of the flag, but has to end. */
const cutting = ["clip-path", "mask", "marker-start", "marker-mid", "marker-end"];
const coloured = ["fill", "stroke", "stop-color", "color"];

/** Reading needs a policy, as every sink of text does; what comes of it is a document that runs and loads nothing. */
const policy = globalThis.trustedTypes?.createPolicy("drawing", { createHTML: (text) => text });

/** Returns the root of a file's text, or undefined for one that is no SVG. */
export function readDrawing(text) {
  const given = policy?.createHTML(text) ?? text;
  const root = new DOMParser().parseFromString(given, "image/svg+xml").documentElement;
  const isBroken = root.querySelector("parsererror") !== null || root.localName !== "svg";
  return isBroken || root.namespaceURI !== svgNamespace ? undefined : root;
}

/** Copies what may be shown. Ids begin with `prefix`. Throws RangeError for a drawing that is too large to be shown. */
export function copyDrawing(root, prefix) {
  const rules = readStyles(root);
  if (rules.length * root.querySelectorAll("*").length > limit.selectorTests)
    throw new RangeError("too slow");
  let count = 0;
  const copy = (element, depth) => {
    count += 1;
    if (count > limit.elements || depth > limit.depth) throw new RangeError("too large");
    const made = document.createElementNS(svgNamespace, element.localName);
    for (const { name, localName, namespaceURI, value } of [...element.attributes]) {
      if (namespaceURI === null && name === "id") made.setAttribute("id", prefix + value);
      else if (namespaceURI === null && geometry.test(name)) made.setAttribute(name, value);
      else if (namespaceURI === null && painting.test(name)) paint(made, name, value, prefix);
      else if (localName === "href" && (namespaceURI === null || namespaceURI === xlinkNamespace)) {
        if (value.startsWith("#") && element.localName !== "a")
          made.setAttribute("href", `#${prefix}${value.slice(1)}`);
      }
    }
    for (const style of [...rules.filter((rule) => matches(element, rule)), ...readOwnStyle(element)])
      for (const name of style.style)
        if (painting.test(name)) paint(made, name, style.style.getPropertyValue(name), prefix);
    for (const child of element.children)
      if (
        child.namespaceURI === svgNamespace &&
        elements.has(child.localName) &&
        !/^(?:title|desc)$/.test(child.localName)
      )
        made.append(copy(child, depth + 1));
    return made;
  };
  const made = copy(root, 1);
  settleRoot(made);
  return made;
}

/** No value goes through that names anything but a part of the same drawing. */
function paint(element, name, value, prefix) {
  const text = value.trim();
  const [, id, rest = ""] = reference.exec(text) ?? [];
  if (id !== undefined) element.setAttribute(name, `url(#${prefix}${id}) ${rest}`.trim());
  else if (!/[\\;{}@]|url|image|src|var|env|attr/i.test(text)) element.setAttribute(name, text);
}

/** What nobody says has a value all the same: as an attribute of the root it can be replaced like any other. */
function settleRoot(root) {
  const [width, height] = ["width", "height"].map((name) => Number.parseFloat(root.getAttribute(name)));
  if (!root.hasAttribute("viewBox") && width > 0 && height > 0)
    root.setAttribute("viewBox", `0 0 ${width} ${height}`);
  for (const name of ["x", "y", "width", "height"]) root.removeAttribute(name);
  for (const name of ["fill", "color"]) if (!root.hasAttribute(name)) root.setAttribute(name, "#000000");
  if (!root.hasAttribute("stroke")) root.setAttribute("stroke", "none");
}

/** A sheet that no document has adopted is read and never applied. */
function readRules(text) {
  try {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(text);
    // To try :has() on an element takes all that is in it; check reads none either.
    return [...sheet.cssRules].filter(({ selectorText = ":has(" }) => !selectorText.includes(":has("));
  } catch {
    return [];
  }
}

const readStyles = (root) =>
  [...root.getElementsByTagNameNS(svgNamespace, "style")].flatMap(({ textContent }) =>
    readRules(textContent),
  );

function readOwnStyle(element) {
  const text = element.getAttribute("style");
  return text === null ? [] : readRules(`x { ${text} }`).slice(0, 1);
}

function matches(element, { selectorText }) {
  try {
    return element.matches(selectorText);
  } catch {
    return false;
  }
}

const brush = document.createElement("canvas").getContext("2d");

/** `#rrggbb` of a CSS colour that hides what is behind it, else undefined. */
export function hexOf(text) {
  if (
    !CSS.supports("color", text) ||
    /^(?:currentcolor|inherit|initial|unset|revert|revert-layer)$/i.test(text)
  )
    return undefined;
  brush.fillStyle = "#000000";
  brush.fillStyle = text;
  return /^#[\da-f]{6}$/.test(brush.fillStyle) ? brush.fillStyle : undefined;
}

/** Returns the colours that a copy shows, in the order in which they are drawn. Throws RangeError for one that has no end. */
export function listColours(root) {
  const found = new Set();
  const byId = new Map([...root.querySelectorAll("[id]")].map((element) => [element.id, element]));
  let steps = 0;
  const called = (value) => byId.get(reference.exec(value ?? "")?.[1] ?? "");
  const note = (value, look, trail, isSeen) => {
    const target = called(value);
    if (target) return walk(target, look, trail, true, isSeen);
    const hex = isSeen && hexOf(/^currentcolor$/i.test(value) ? look.color : value);
    if (hex) found.add(hex);
  };
  const walk = (element, above, trail, isCalled, isSeen) => {
    steps += 1;
    if (steps > limit.instances || trail.includes(element)) throw new RangeError("no end");
    const tag = element.localName;
    if (element.getAttribute("display") === "none" || (unshown.has(tag) && !isCalled)) return;
    const path = [...trail, element];
    const look = inherit(element, above);
    if (tag === "stop") note(element.getAttribute("stop-color") ?? "#000000", look, path, isSeen);
    if (shapes.has(tag)) for (const name of ["fill", "stroke"]) note(look[name], look, path, isSeen);
    for (const name of cutting) {
      const target = called(element.getAttribute(name));
      if (!target) continue;
      const before = steps;
      walk(target, look, path, true, false);
      // A marker stands at every vertex: four signs of a path at the least.
      const outline = element.getAttribute("d") ?? element.getAttribute("points") ?? "";
      if (name.startsWith("marker")) steps += ((steps - before) * outline.length) / 4;
    }
    const target = byId.get(element.getAttribute("href")?.slice(1));
    if (target) walk(target, look, path, true, isSeen);
    for (const child of element.children) walk(child, look, path, /Gradient$/.test(tag), isSeen);
  };
  walk(root, { fill: "#000000", stroke: "none", color: "#000000" }, [], true, true);
  if (steps > limit.instances) throw new RangeError("no end");
  return [...found];
}

function inherit(element, above) {
  const names = ["fill", "stroke", "color"];
  const own = names.map((name) => [name, element.getAttribute(name)]);
  return Object.fromEntries(
    own.map(([name, value]) => [name, value === null || /^inherit$/i.test(value) ? above[name] : value]),
  );
}

/** Puts `after` in place of `before` wherever a copy declares it. */
export function replaceColour(root, before, after) {
  for (const element of [root, ...root.querySelectorAll("*")])
    for (const name of coloured)
      if (element.hasAttribute(name) && hexOf(element.getAttribute(name)) === before)
        element.setAttribute(name, after);
}
