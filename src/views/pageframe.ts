// Floor 8. What every page has around its own content: head, navigation, foot.
import { findLicenceAddress } from "../content/study/licence.ts";
import type { Gallery, Logo } from "../content/study/study.ts";
import type { Format } from "../words/format.ts";
import { formatCanonical, type Linker, linkFrom, linkUnder } from "./address.ts";
import { faces, familiesOf } from "./fontface.ts";
import { logoPath, pagePolicy } from "./pagepolicy.ts";

/** In pixels, as the style sheet has it: so small that flags stay the colours of a page. */
const logoHeight = 36;

/** The site path of the page that tells how to propose a study. */
export const partPath = "/take-part/";

export interface Frame {
  readonly language: string;
  readonly direction: "ltr" | "rtl";
  readonly policy: string;
  readonly title: string;
  readonly description: string;
  readonly canonical: string | undefined;
  /** What sites that show links are told; undefined where the page has no absolute address. */
  readonly share: ShareView | undefined;
  readonly galleryTitle: string;
  /** Size in pixels. */
  readonly logo: { readonly src: string; readonly width: number; readonly height: number } | undefined;
  readonly society: string | undefined;
  readonly footer: string | undefined;
  /** Of the gallery's texts. */
  readonly licence: { readonly name: string; readonly address: string | undefined } | undefined;
  readonly section: "studies" | "survey" | "method" | undefined;
  /** Words of the navigation that lead to the gallery's own pages. */
  readonly menu: readonly { readonly word: string; readonly address: string; readonly isHere: boolean }[];
  readonly links: {
    readonly home: string;
    readonly survey: string;
    readonly method: string;
    readonly cautions: string;
    readonly rules: string;
    readonly styles: string;
    readonly methodStyles: string;
    readonly script: string;
    readonly findScript: string;
    readonly listScript: string;
    readonly studyScript: string;
    readonly swapScript: string;
    readonly showScript: string;
    readonly surveyScript: string;
    readonly voteScript: string;
    readonly rulesScript: string;
    readonly partScript: string;
    /** Undefined where the gallery takes no answers. */
    readonly takePart: { readonly text: string; readonly address: string } | undefined;
    readonly icon: string;
    readonly iconPng: string;
    /** None where the gallery has no address to follow. */
    readonly feeds: readonly { readonly address: string; readonly type: string }[];
    readonly fonts: readonly string[];
    readonly fontLicence: string;
  };
}

/** For Open Graph and JSON-LD. Source: ogp.me; schema.org CreativeWork. */
export interface ShareView {
  readonly title: string;
  readonly kind: "website" | "article";
  readonly picture: { readonly address: string; readonly alt: string } | undefined;
  /** JSON, safe inside a script element. */
  readonly record: string | undefined;
}

/** What a page says of itself. `path` is its site path; `base` is set for the one page that is shown at any address. */
export interface PageFacts {
  readonly path: string;
  readonly title: string | undefined;
  readonly description: string;
  readonly section: Frame["section"];
  readonly base?: string;
  /** Site path of the link picture, with its words. */
  readonly picture?: { readonly path: string; readonly alt: string };
  /** Whether it is a work of somebody, as studies and edges are, and no list. */
  readonly isArticle?: boolean;
  /** What the page publishes, as schema.org has it; addresses are absolute. */
  readonly record?: Readonly<Record<string, unknown>>;
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
    share: presentShare(page, gallery),
    galleryTitle: gallery.title,
    logo: gallery.logo && presentLogo(gallery.logo, link),
    society: gallery.society,
    footer: gallery.footer,
    licence:
      gallery.licence === undefined
        ? undefined
        : { name: gallery.licence, address: findLicenceAddress(gallery.licence) },
    section: page.section,
    menu: (gallery.menu ?? []).map(({ word, path }) => ({
      word,
      address: link(`/${path}/`),
      isHere: page.path.startsWith(`/${path}/`),
    })),
    links: {
      home: link("/"),
      survey: link("/survey/"),
      method: link("/method/"),
      cautions: link("/method/#cautions"),
      rules: link("/rules/"),
      styles: link("/assets/site.css"),
      methodStyles: link("/assets/method.css"),
      script: link("/assets/local.js"),
      findScript: link("/assets/find.js"),
      listScript: link("/assets/list.js"),
      studyScript: link("/assets/study.js"),
      swapScript: link("/assets/swap.js"),
      showScript: link("/assets/show.js"),
      surveyScript: link("/assets/survey.js"),
      voteScript: link("/assets/vote.js"),
      rulesScript: link("/assets/rules.js"),
      partScript: link("/assets/takepart.js"),
      takePart: gallery.answer && { text: format.say("part.link"), address: link(partPath) },
      icon: link("/assets/icon.svg"),
      iconPng: link("/assets/icon.png"),
      feeds: formatCanonical(gallery.address, "/") === undefined ? [] : linkFeeds(link),
      fonts: listMain(gallery).map((face) => link(`/assets/fonts/${face.file}`)),
      fontLicence: link("/assets/fonts/OFL.txt"),
    },
  };
}

/** The faces that a page cannot do without: those of its text and headings, and of all that is small. */
function listMain({ theme = {} }: Gallery): typeof faces {
  const used = [...Object.values(familiesOf(theme)), "source-sans-3"];
  return faces.filter(({ isMain, family }) => isMain && used.includes(family));
}

function presentLogo({ width, height }: Logo, link: Linker): Frame["logo"] {
  const scaled = Math.max(1, Math.round((logoHeight * width) / height));
  return { src: link(logoPath), width: scaled, height: logoHeight };
}

/** Source: IANA media types, `application/atom+xml`; JSON Feed 1.1, “Discovery”, for `application/feed+json`. */
function linkFeeds(link: Linker): Frame["links"]["feeds"] {
  return [
    { address: link("/feed.xml"), type: "application/atom+xml" },
    { address: link("/feed.json"), type: "application/feed+json" },
  ];
}

function presentShare(page: PageFacts, gallery: Gallery): ShareView | undefined {
  const url = page.base === undefined ? formatCanonical(gallery.address, page.path) : undefined;
  if (url === undefined) return undefined;
  const picture = page.picture && formatCanonical(gallery.address, page.picture.path);
  return {
    title: page.title ?? gallery.title,
    kind: page.isArticle ? "article" : "website",
    picture:
      picture === undefined || page.picture === undefined
        ? undefined
        : { address: picture, alt: page.picture.alt },
    record:
      page.record &&
      escapeScript({
        "@context": "https://schema.org",
        url,
        ...(picture === undefined ? {} : { image: picture }),
        ...page.record,
      }),
  };
}

/** A script element ends at the first `</script`, and `<!--` changes how it is read: no `<` may stand in it. */
function escapeScript(value: Readonly<Record<string, unknown>>): string {
  return JSON.stringify(value).replace(/</g, "\\u003c");
}
