// Floor 7. English: the steps of the method that decide a grade. `em` is an emphasised term, `i` the title of a paper.

export const methodGrade = {
  "method.reflectanceText":
    "A screen number says how much light a colour gives. We take its luminance, from 0 to 1, in linear light:",
  "method.reflectanceCloth":
    "Cloth is never quite black or quite white, and by screen numbers two dark colours seem easier to tell apart than they are. So luminance is placed between the blackest and the whitest cloth, in percent:",
  /** `laws` are sentences of the next kind. */
  "method.reflectanceRanges":
    "Building materials run from about {black} to {white}, one maker’s paints from {paintBlack} to {paintWhite}. A grade that the wider range would change is marked <em>near the line</em>. Where a law fixes the cloth a gallery sets 0 and 100, and then {laws}.",
  /** Two colours with their reflectance, “red 9.5%”. */
  "method.law": "{first} on {second} has a contrast of {contrast}, {grade}",
  "method.lawColour": "{colour} {reflectance}",
  /** Over the table that shows a pair of colours on two kinds of cloth. */
  "method.near": "Near the line: cloth of {black} to {white} (ring) and {paintBlack} to {paintWhite} (dot)",
  "method.reflectanceSource":
    "Luminance: <wcag>WCAG 2.2</wcag>. sRGB: IEC 61966-2-1. Ranges: pages on building materials, a paint maker’s chart; laws: as others tell them; all second-hand. The straight line from black to white: no source. Our own judgement: near the line.",
  "method.contrastText":
    "Contrast compares the light that two colours give back. It is 0% where both give back the same, and more the further they are apart:",
  "method.contrastTable": "The least that people with low vision need",
  /** The grades, by contrast, and what contrast of each the standards ask for. */
  "method.contrastWeak": "under 30%",
  "method.contrastSoft": "30 to under 45%",
  "method.contrastClear": "45 to under 60%",
  "method.contrastStrong": "60% and over",
  "method.needsWeak": "below every step",
  "method.needsSoft": "large building elements",
  "method.needsClear": "small separate objects: charges",
  "method.needsStrong": "small objects in two colours",
  /** `reflectances` are two: “62% and 20%”. */
  "method.contrastClose":
    "A charge is a small separate object, so an edge is clear from 45%. The example published with the formula, {reflectances}, has {published}; here {computed}.",
  "method.pairs": "How usual pairs come out; marks at 30, 45 and 60%",
  /** Heads of the table of pairs; the third is read to screen readers. */
  "method.pair": "Pair",
  "method.pairContrast": "Contrast",
  "method.pairScale": "On a scale from 0 to 100 percent",
  "method.pairRatio": "Ratio",
  "method.contrastSource":
    "Bowman and Sapolinski: AS 1428.1:2009, Appendix B; AS/NZS 1428.4.1, Appendix E; second-hand. The percentage compares with no other scale: Boon and others, <i>Work</i> 70(4), <boon>2021</boon>. Our own judgement: that a charge is a small separate object; the shades of the pairs. Which pairs read clearly: common practice, no source.",
  "method.besideText":
    "Three more measures stand beside contrast, and none of them decides. The <em>contrast ratio</em> of the web is made for screens: {first} on {second} passes its 3 to 1, and yet no one who looks at flags calls it easy to see. <em>ΔE00</em> says how different two colours look, hue included. The third is the <a>rule of tincture</a>.",
  /** One pair of colours with all measures. */
  "method.besidePair":
    "{first} / {second}: contrast ratio <number>{ratio}</number>, ΔE00 <number>{deltaE00}</number>, contrast <number>{contrast}</number>, {grade}",
  "method.besideSource":
    "WCAG 2.2, <ratio>ratio</ratio> and <objects>1.4.11</objects>. Sharma, Wu, Dalal, <sharma>CIEDE2000</sharma>, 2005; its 34 test pairs test this code. That red on black is hard to see: common practice, no source.",
} as const;
