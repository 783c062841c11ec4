// Floor 7. English: what stands around the content of every page, and the page of a missing address.

export const frame = {
  "frame.skip": "Skip to the content",
  /** Names the navigation, read to screen readers. */
  "frame.gallery": "Gallery",
  /** Ways in the navigation, one word each. */
  "frame.studies": "Studies",
  "frame.survey": "Survey",
  "frame.method": "Method",
  /** A way at the end of many pages; a heading on the front page, and the title of a list. */
  "frame.allStudies": "All studies",
  "frame.cautions":
    "Every redesign shown here is an unofficial study, put forward for discussion. Laws on the use of flags differ: follow the local ones, and respect the licence of each drawing. See the <cautions>cautions</cautions>, and for authors the <rules>rules for studies and drawings</rules>.",
  "frame.publishedBy": "Published by {society}.",
  /** `name` is that of a licence: “CC BY 4.0”. */
  "frame.textsUnder": "Texts under <licence>{name}</licence>.",
  "frame.madeWith":
    "Made with Counterchange. Set in Source Serif 4 and Source Sans 3, under the <licence>Open Font Licence</licence>.",
  "frame.missing": "No page here",
  "frame.missingText":
    "There is no page at this address. A study may have been taken out of the gallery, or the address mistyped.",
  /** For search. */
  "frame.missingDescription": "There is no page at this address.",
  /** For search: of a page at an old address; `title` is that of the page it leads to. */
  "frame.moved": "This page has moved: {title}.",
} as const;
