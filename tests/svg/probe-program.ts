// Small drawings, like those of probe.ts, about what drawing programs leave in files: ids that stand twice, alternatives.
import type { Probe } from "./probe.ts";

const svg = (body: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 200">${body}</svg>`;
const rect = (more: string): string => `<rect x="50" y="40" width="200" height="120" ${more}/>`;
const circle = '<circle cx="150" cy="100" r="60" fill="#c00"/>';
const adobe = 'requiredExtensions="http://ns.adobe.com/AdobeIllustrator/10.0/"';
const several = (body: string): string => svg(`<switch>${body}</switch>`);

const alike: Record<string, string> = {
  "an id twice that means nothing": svg(`<g id="a">${rect('id="a" fill="#0a0"')}</g>`),
  "an id twice that a sheet selects": svg(
    `<style>#a{fill:#0a0}</style>${rect('id="a"')}<rect id="a" width="40" height="40"/>`,
  ),
  "the first of two alternatives": several(`<g>${rect('fill="#0a0"')}</g>${circle}`),
  "an alternative behind one for a drawing program": several(
    `<foreignObject ${adobe} width="300" height="200"/><g>${rect('fill="#0a0"')}</g>`,
  ),
  "an alternative behind two of them": several(
    `<g ${adobe}>${circle}</g><g ${adobe}/>${rect('fill="#0a0"')}`,
  ),
  "an alternative that is hidden": several(`<g display="none">${circle}</g>${rect('fill="#0a0"')}`),
  "an alternative that is a link": several(`<a>${rect('fill="#0a0"')}</a>${circle}`),
  "an alternative inside another": several(`<switch>${rect('fill="#0a0"')}${circle}</switch>${circle}`),
  "alternatives that are shown elsewhere": svg(
    `<defs><switch id="s">${rect('fill="#0a0"')}${circle}</switch></defs><use href="#s"/>`,
  ),
  "alternatives that are styled": svg(
    `<style>switch{fill:#0a0}switch>circle{fill:#00c}</style><switch transform="translate(9 9)" opacity=".8">${rect("")}${circle}</switch>`,
  ),
  "the style sheet of an alternative that is not shown": several(
    `<g>${rect("")}</g><g ${adobe}><style>rect{fill:#0a0}</style></g>`,
  ),
};

/** A mask without a region of its own. */
const masked = (what: string, inside = circle.replace("#c00", "#fff")): string =>
  svg(`<mask id="m">${inside}</mask>${what}`);

Object.assign(alike, {
  "a mask without a region": masked(rect('fill="#0a0" mask="url(#m)"')),
  "a mask without a region, smaller than what it is on": masked(
    rect('fill="#0a0" mask="url(#m)"'),
    '<circle cx="60" cy="50" r="30" fill="#fff"/>',
  ),
  "the same on a group that is turned, in which something is cut off": masked(
    `<clipPath id="c"><path d="M0 0h150v200H0z"/></clipPath><g mask="url(#m)" transform="rotate(20 150 100)">${rect('fill="#0a0" clip-path="url(#c)"')}<path d="M100 90h150v20H100z" fill="#00c"/></g>`,
  ),
  "the same on what is shown elsewhere": masked(
    `<defs>${rect('id="r"')}</defs><use href="#r" y="9" fill="#0a0" mask="url(#m)"/>`,
  ),
});

Object.assign(alike, {
  "exponents of three digits": svg(
    '<g transform="matrix(1e+000 -5.3e-017 5.3e-017 1 1.5e+002 1e-006)"><path d="M-1e+002 4E+001h2.0e+002V16e+001H-1.00e+002z" fill="#0a0"/><rect x="-1.9e-017" y="2e+001" width="5e+001" height="1.0e+001" fill="#00c"/></g>',
  ),
});

const refused: [name: string, text: string, rule: string][] = [
  [
    "an id twice that a paint points at",
    svg(`<linearGradient id="a"/><linearGradient id="a"/>${rect('fill="url(#a)"')}`),
    "svg/duplicate-id",
  ],
  [
    "an id of which the first is on a text",
    svg(`<text id="a"/><linearGradient id="a"/>${rect('fill="url(#a) #0a0"')}`),
    "svg/duplicate-id",
  ],
  ["an alternative for a language", several(`<g systemLanguage="en">${circle}</g><g/>`), "svg/unsupported"],
  ["an alternative for a feature", several(`<g requiredFeatures="a">${circle}</g><g/>`), "svg/unsupported"],
  ["a title before the alternatives", several(`<title>a</title>${circle}`), "svg/unsupported"],
  [
    "a paint in an alternative that is not shown",
    several(`${rect('fill="url(#a) #0a0"')}<g><linearGradient id="a"/></g>`),
    "svg/unsupported",
  ],
];

for (const [name, what] of Object.entries({
  "a stroke": rect('stroke="#0a0" stroke-width="99" mask="url(#m)"'),
  "a stroke that is inherited": `<g stroke="#0a0" stroke-width="99">${rect('mask="url(#m)"')}</g>`,
  "a stroke of what a group shows": `<defs>${rect('id="r"')}</defs><g mask="url(#m)"><use href="#r" stroke="#0a0" stroke-width="99"/></g>`,
  "a marker":
    '<marker id="k" markerWidth="9" markerHeight="9" markerUnits="userSpaceOnUse"><path d="M0 0h9v9z"/></marker><path d="M9 9h99v9z" marker-end="url(#k)" mask="url(#m)"/>',
}))
  refused.push([`a mask without a region on ${name}`, masked(what), "svg/unlike"]);

export const programProbes: readonly Probe[] = [
  ...Object.entries(alike).map(([name, text]) => ({ name, text })),
  ...refused.map(([name, text, rule]) => ({ name, text, rule })),
];
