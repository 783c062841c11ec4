// Floor 5, the catalogue of rules: the gallery's own pages.
import type { Rule } from "./rule.ts";

const file = "pages/about.md";
const study = "studies/ferry/study.md\nstudies/ferry/original.svg";

/** Rules of the folder pages. What holds for the text and the keys of a study holds for those of a page too. */
export const pageRules: readonly Rule[] = [
  {
    id: "page/file-name",
    severity: "error",
    means:
      "A file or a folder in pages has a name that cannot be in an address or that Windows keeps for a device, does not end with .md or .svg, or lies more than three folders deep.",
    why: "The way to the file is the address of the page, which others link to and copy.",
    example: {
      file: "folder",
      wrong: `${study}\npages/About us.md`,
      right: `${study}\npages/about-us.md`,
    },
  },
  {
    id: "page/address",
    severity: "error",
    means: "A page would stand at an address that something else has, or is called index.md.",
    why: "Each address is that of one page; the page of a folder lies beside it, under its name.",
    example: {
      file: "folder",
      wrong: `${study}\npages/survey.md`,
      right: `${study}\npages/our-survey.md`,
    },
  },
  {
    id: "page/study",
    severity: "warning",
    means:
      "A line that shows a study names none of the gallery, or stands where no studies are shown; the page goes on without it.",
    why: "A study is named by its folder, and shown with both flags and its verdict; a gap would be read as meant.",
    example: { file, wrong: "::study{fery}", right: "::study{ferry}" },
  },
  {
    id: "page/drawing",
    severity: "warning",
    means: "A line of a page shows a drawing that is not there; the page goes on without it.",
    why: "Drawings are read from the page’s own folder and from flags alone, and checked before they are shown.",
    example: {
      file,
      wrong: '::figure{drawing="/flags/harbor.svg"}',
      right: '::figure{drawing="/flags/harbour.svg"}',
    },
  },
  {
    id: "page/left-out",
    severity: "warning",
    means: "A study that a page shows is not published, and the page goes on without it.",
    why: "A draft, or a study with an error, is left out until it is ready; the page does not wait for it.",
    example: {
      file: "told",
      wrong: "a page that shows a study which is a draft",
      right: "the same when the study is open",
    },
  },
  {
    id: "page/menu",
    severity: "warning",
    means: "More than five pages have a word for the navigation; the first five in their order stand there.",
    why: "The navigation stands on every page and has one line on most screens.",
    example: {
      file: "told",
      wrong: "six pages with menu:",
      right: "five pages with menu:, and a sixth without",
    },
  },
  {
    id: "page/too-many",
    severity: "error",
    means: "The folder pages holds more than 500 files and folders; the first 500 are read.",
    why: "Nobody reads so many by hand; a gallery is built from what its authors wrote.",
    example: { file: "told", wrong: "501 files in pages", right: "500 files in pages" },
  },
];
