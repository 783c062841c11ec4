// Floor 2. What a published drawing may hold. Everything else is dropped with a warning or refused; see sanitise.ts.

const words = (text: string): ReadonlySet<string> => new Set(text.trim().split(/\s+/));

export const svgNamespace = "http://www.w3.org/2000/svg";
export const xlinkNamespace = "http://www.w3.org/1999/xlink";

export const shapes = words("path rect circle ellipse line polyline polygon");

/** Elements that are kept. */
export const elements = new Set([
  ...shapes,
  ...words(
    "svg g defs symbol use clipPath mask marker linearGradient radialGradient stop pattern title desc",
  ),
]);

/** Elements that show nothing, with all inside, where they stand; what points at some of them shows it. */
export const unshown = words(
  "defs symbol clipPath mask marker linearGradient radialGradient pattern title desc stop",
);

/** Elements that change what is seen and that no recolouring can honour: the drawing is refused. */
export const refusedElements: ReadonlyMap<string, string> = new Map([
  ["image", "Embedded pictures cannot be recoloured. Trace the picture into paths, or remove it."],
  ["feImage", "A filter that shows pictures cannot be looked through. Draw what it does as shapes."],
  ["foreignObject", "A part of a web page looks different on every machine. Draw it as shapes."],
  ["meshgradient", "Mesh gradients are not drawn by browsers. Use a linear or radial gradient."],
]);

/** Elements that are dropped in silence: without effect on the picture, or read by themselves. */
export const silentElements = words("metadata style filter");

/** Attributes of free text that are kept as they are. */
export const textAttribute = /^(?:id|lang|role|(?:data|aria)-[\w.-]+)$/;

/** Attributes without effect on the picture: dropped in silence. */
export const silentAttribute =
  /^(?:version|baseProfile|class|style|marker|type|media|title|zoomAndPan|contentScriptType|contentStyleType|requiredFeatures|tabindex|focusable|dx|dy|rotate|textLength|lengthAdjust|store-width|alt)$/;

/** Namespaces that drawing programs leave behind: their elements and attributes are dropped in silence. */
export const silentNamespace =
  /^(?:http:\/\/www\.inkscape\.org\/|http:\/\/sodipodi\.sourceforge\.net\/|http:\/\/inkscape\.sourceforge\.net\/|http:\/\/ns\.adobe\.com\/|http:\/\/www\.w3\.org\/1999\/02\/22-rdf-syntax-ns|http:\/\/purl\.org\/dc\/|http:\/\/(?:web\.resource|creativecommons)\.org\/(?:cc\/|ns)|http:\/\/www\.w3\.org\/2000\/xmlns\/|http:\/\/www\.w3\.org\/XML\/1998\/namespace|http:\/\/www\.bohemiancoding\.com\/|http:\/\/www\.serif\.com\/|http:\/\/www\.corel\.com\/|http:\/\/xml\.openoffice\.org\/|http:\/\/sun\.com\/xmlns\/|https?:\/\/svgjs\.(?:com|dev)\/|http:\/\/www\.figma\.com\/|https?:\/\/(?:www\.)?vectornator\.io|https?:\/\/boxy-svg\.com|http:\/\/krita\.org\/|&)/;

/** Attributes that hold one number or length. */
export const numericAttributes = words(
  "x y width height rx ry cx cy r x1 y1 x2 y2 fx fy fr refX refY markerWidth markerHeight offset",
);

/** Attributes that change what is seen in one browser and not in another. */
export const refusedAttributes = words("systemLanguage requiredExtensions transform-origin pathLength");
