// Floor 2. What a published drawing may hold. Everything else is dropped with a warning or refused; see gate.ts.

const words = (text: string): ReadonlySet<string> => new Set(text.trim().split(/\s+/));

export const svgNamespace = "http://www.w3.org/2000/svg";
export const xlinkNamespace = "http://www.w3.org/1999/xlink";

export const shapes = words("path rect circle ellipse line polyline polygon");

/** Elements that are kept. */
export const elements = new Set([
  ...shapes,
  ...words(
    "svg g defs symbol use clipPath mask marker linearGradient radialGradient stop pattern style title desc",
  ),
]);

/** Elements that change what is seen and that no recolouring can honour: the drawing is refused. */
export const refusedElements: ReadonlyMap<string, string> = new Map([
  ["image", "Embedded pictures cannot be recoloured. Trace the picture into paths, or remove it."],
  [
    "filter",
    "Filters mix colours in ways that cannot be measured edge by edge. Flatten the effect into plain shapes.",
  ],
  [
    "feImage",
    "Filters mix colours in ways that cannot be measured edge by edge. Flatten the effect into plain shapes.",
  ],
  ["switch", "Keep one of the alternatives of <switch> and remove the rest."],
  ["meshgradient", "Mesh gradients are not drawn by browsers. Use a linear or radial gradient."],
]);

/** Elements without effect on the picture: dropped in silence. */
export const silentElements = words("metadata");

/** Properties that may stand as attributes and in style sheets. All of them may also be declared in `style`. */
export const properties = words(`
  fill fill-opacity fill-rule stroke stroke-opacity stroke-width stroke-linecap stroke-linejoin stroke-miterlimit
  stroke-dasharray stroke-dashoffset color opacity stop-color stop-opacity display visibility overflow clip-path clip-rule
  mask mask-type marker marker-start marker-mid marker-end paint-order shape-rendering vector-effect
  color-interpolation`);

/** Properties that inherit (CSS and SVG property tables). */
export const inherited = words(`
  fill fill-opacity fill-rule stroke stroke-opacity stroke-width stroke-linecap stroke-linejoin stroke-miterlimit
  stroke-dasharray stroke-dashoffset color visibility clip-rule marker marker-start marker-mid marker-end paint-order
  shape-rendering color-interpolation`);

/** Properties of text, of editors and of older drafts: without effect on shapes, dropped in silence. */
export const silentProperty =
  /^(?:-inkscape-|-webkit-text|font|text-|letter-spacing$|word-spacing$|line-height$|white-space$|writing-mode$|direction$|dominant-baseline$|baseline-shift$|alignment-baseline$|unicode-bidi$|glyph-orientation|kerning$|enable-background$|solid-|image-rendering$|text-rendering$|color-rendering$|color-interpolation-filters$|color-profile$|flood-|lighting-color$|pointer-events$|cursor$|inline-size$|shape-inside$|shape-padding$|shape-margin$|block-progression$|isolation$|user-select$|clip$|src$)/;

/** Attributes that are kept as they are, beside the properties. */
export const attributes = words(`
  id class style transform viewBox preserveAspectRatio x y width height rx ry cx cy r x1 y1 x2 y2 d points pathLength
  href gradientUnits gradientTransform spreadMethod offset fx fy fr patternUnits patternContentUnits patternTransform
  clipPathUnits maskUnits maskContentUnits markerUnits markerWidth markerHeight orient refX refY type media lang role`);

/** Attributes without effect on the picture: dropped in silence. */
export const silentAttribute =
  /^(?:version|baseProfile|zoomAndPan|contentScriptType|contentStyleType|requiredExtensions|requiredFeatures|systemLanguage|tabindex|focusable|dx|dy|rotate|textLength|lengthAdjust|store-width|alt)$/;

/** Namespaces that drawing programs leave behind: their elements and attributes are dropped in silence. */
export const silentNamespace =
  /^(?:http:\/\/www\.inkscape\.org\/|http:\/\/sodipodi\.sourceforge\.net\/|http:\/\/inkscape\.sourceforge\.net\/|http:\/\/ns\.adobe\.com\/|http:\/\/www\.w3\.org\/1999\/02\/22-rdf-syntax-ns|http:\/\/purl\.org\/dc\/|http:\/\/(?:web\.resource|creativecommons)\.org\/(?:cc\/|ns)|http:\/\/www\.w3\.org\/2000\/xmlns\/|http:\/\/www\.w3\.org\/XML\/1998\/namespace|http:\/\/www\.bohemiancoding\.com\/|http:\/\/www\.serif\.com\/|http:\/\/www\.corel\.com\/|&)/;

/** Attributes that hold one number or length; `auto` and percentages included. */
export const numericAttributes = words(
  "x y width height rx ry cx cy r x1 y1 x2 y2 fx fy fr refX refY markerWidth markerHeight pathLength offset stroke-width stroke-miterlimit stroke-dashoffset fill-opacity stroke-opacity stop-opacity opacity",
);
