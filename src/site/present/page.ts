// Floor 6. What every page has around its own content: head, navigation, foot.
import type { Gallery } from "../../study/study.ts";
import { formatCanonical, type Linker, linkFrom, linkUnder } from "../address.ts";
import { fontFiles } from "../assets.ts";
import { pagePolicy } from "../policy.ts";
import type { Format } from "./format.ts";

export interface Frame {
  readonly language: string;
  readonly direction: "ltr" | "rtl";
  readonly policy: string;
  readonly title: string;
  readonly description: string;
  readonly canonical: string | undefined;
  readonly galleryTitle: string;
  readonly society: string | undefined;
  readonly section: "studies" | "method" | undefined;
  readonly links: {
    readonly home: string;
    readonly method: string;
    readonly cautions: string;
    readonly styles: string;
    readonly script: string;
    readonly fonts: readonly string[];
    readonly fontLicence: string;
  };
}

/** What a page says of itself. `path` is its site path; `base` is set for the one page that is shown at any address. */
export interface PageFacts {
  readonly path: string;
  readonly title: string | undefined;
  readonly description: string;
  readonly section: Frame["section"];
  readonly base?: string;
}

/** Builds the frame of a page. The title of the gallery ends every title but its own. */
export function presentFrame(page: PageFacts, gallery: Gallery, format: Format): Frame {
  const link: Linker = page.base === undefined ? linkFrom(page.path) : linkUnder(page.base);
  return {
    language: format.language,
    direction: format.direction,
    policy: pagePolicy,
    title: page.title === undefined ? gallery.title : `${page.title} – ${gallery.title}`,
    description: page.description,
    canonical: page.base === undefined ? formatCanonical(gallery.address, page.path) : undefined,
    galleryTitle: gallery.title,
    society: gallery.society,
    section: page.section,
    links: {
      home: link("/"),
      method: link("/method/"),
      cautions: link("/method/#cautions"),
      styles: link("/assets/site.css"),
      script: link("/assets/local.js"),
      fonts: fontFiles.filter((font) => font.preload).map((font) => link(`/assets/fonts/${font.file}`)),
      fontLicence: link("/assets/fonts/OFL.txt"),
    },
  };
}
