// Floor 5, the catalogue of rules: what lies in a content folder, under which names, and what is in gallery.yaml.
import type { Rule } from "./rule.ts";

/** Rules of files and folders. */
export const folderRules: readonly Rule[] = [
  {
    id: "study/content-missing",
    severity: "error",
    means:
      "The content folder that was named is not there, or is a file; or its studies is a link, a file or cannot be read.",
    why: "It is the folder that holds gallery.yaml and studies: without them nothing is published.",
    example: { file: "told", wrong: "counterchange check contnet", right: "counterchange check content" },
  },
  {
    id: "study/folder-named",
    severity: "error",
    means: "A folder was named on the command line where a drawing is asked for.",
    why: "A folder of drawings is looked at with the command survey.",
    example: { file: "told", wrong: "counterchange measure flags", right: "counterchange survey flags" },
  },
  {
    id: "study/too-many-folders",
    severity: "error",
    means: "The folder studies holds more than 5,000 files and folders.",
    why: "The first 5,000 by name are read: a folder without end would take the computer.",
    example: { file: "told", wrong: "5,001 folders in studies", right: "5,000 folders in studies" },
  },
  {
    id: "study/too-many-files",
    severity: "error",
    means: "The folder of a study holds more than 500 files.",
    why: "A study is a text and its drawings. A folder of drawings without studies may hold 20,000; there it is a warning.",
    example: { file: "told", wrong: "501 files in studies/ferry", right: "500 files in studies/ferry" },
  },
  {
    id: "study/out-of-time",
    severity: "error",
    means:
      "Measuring the gallery, or drawing it, took more than an hour, and some studies or flags were not begun.",
    why: "A run that never ends publishes nothing. What was done is kept, and the next one goes on from there.",
    example: { file: "told", wrong: "thousands of slow drawings at once", right: "a few at a time" },
  },
  {
    id: "study/studies-missing",
    severity: "warning",
    means: "The content folder has no folder studies.",
    why: "A gallery without a study is allowed, and seldom meant.",
    example: {
      file: "folder",
      wrong: "gallery.yaml",
      right: "gallery.yaml\nstudies/ferry/study.md\nstudies/ferry/original.svg",
    },
  },
  {
    id: "study/slug",
    severity: "error",
    means: "The name of a study's folder cannot be an address.",
    why: "The folder's name is the study's address, which others link to: small letters, digits, single hyphens, and no name that Windows keeps for a device, such as aux.",
    example: {
      file: "folder",
      wrong: "studies/Ferry Wheel/study.md\nstudies/Ferry Wheel/original.svg",
      right: "studies/ferry-wheel/study.md\nstudies/ferry-wheel/original.svg",
    },
  },
  {
    id: "study/same-name",
    severity: "error",
    means: "Two names differ in capitals only, or in how an accent is stored.",
    why: "Many computers take them for one, so that one of the two files would be lost when the folder is copied.",
    example: {
      file: "folder",
      wrong:
        "studies/ferry/study.md\nstudies/ferry/original.svg\nstudies/Ferry/study.md\nstudies/Ferry/original.svg",
      right: "studies/ferry/study.md\nstudies/ferry/original.svg",
    },
  },
  {
    id: "study/unexpected-file",
    severity: "error",
    means: "A file lies where it does not belong.",
    why: "A study's folder holds its text and its drawings and nothing else, so that nothing is published by chance.",
    example: {
      file: "folder",
      wrong: "studies/ferry/study.md\nstudies/ferry/original.svg\nstudies/ferry/quay.jpg",
      right: "studies/ferry/study.md\nstudies/ferry/original.svg",
    },
  },
  {
    id: "study/study-name",
    severity: "error",
    means: "The text of a study is called otherwise than study.md or study.yaml.",
    why: "It is found by its name.",
    example: {
      file: "folder",
      wrong: "studies/ferry/README.md\nstudies/ferry/original.svg",
      right: "studies/ferry/study.md\nstudies/ferry/original.svg",
    },
  },
  {
    id: "study/study-missing",
    severity: "error",
    means: "A study's folder has no study.md.",
    why: "A drawing alone is no study; drawings without one belong in the folder flags.",
    example: {
      file: "folder",
      wrong: "studies/ferry/original.svg",
      right: "studies/ferry/study.md\nstudies/ferry/original.svg",
    },
  },
  {
    id: "study/two-files",
    severity: "error",
    means: "study.md and study.yaml are both there.",
    why: "A study says its keys once.",
    example: {
      file: "folder",
      wrong: "studies/ferry/study.md\nstudies/ferry/study.yaml\nstudies/ferry/original.svg",
      right: "studies/ferry/study.md\nstudies/ferry/original.svg",
    },
  },
  {
    id: "study/prose-alone",
    severity: "error",
    means: "prose.md lies in a folder without study.yaml.",
    why: "It is the prose of a study whose keys are in study.yaml.",
    example: {
      file: "folder",
      wrong: "studies/ferry/prose.md\nstudies/ferry/original.svg",
      right: "studies/ferry/study.yaml\nstudies/ferry/prose.md\nstudies/ferry/original.svg",
    },
  },
  {
    id: "study/drawing-missing",
    severity: "error",
    means: "The drawing that a study names is not there.",
    why: "There is nothing to measure; the message names the nearest file that is.",
    example: {
      file: "folder",
      wrong: "studies/ferry/study.md\nstudies/ferry/flag.svg",
      right: "studies/ferry/study.md\nstudies/ferry/original.svg",
    },
  },
  {
    id: "study/drawing-name",
    severity: "error",
    means:
      "The file name of a drawing has capitals, spaces or other signs, or Windows keeps it for a device.",
    why: "Names go into addresses: small letters, digits and hyphens.",
    example: {
      file: "folder",
      wrong: "studies/ferry/study.md\nstudies/ferry/original.svg\nstudies/ferry/Old Flag.svg",
      right: "studies/ferry/study.md\nstudies/ferry/original.svg\nstudies/ferry/old-flag.svg",
    },
  },
  {
    id: "study/drawing-size",
    severity: "error",
    means: "A drawing has more than 512 KB.",
    why: "A flag rarely needs more than 50 KB; a file of this size is a traced photograph.",
    example: { file: "told", wrong: "an SVG file of 700 KB", right: "the flag drawn in shapes" },
  },
  {
    id: "study/leftover-file",
    severity: "warning",
    means: "The operating system left a file of its own; it is passed over.",
    why: "It does no harm and is no part of the study.",
    example: {
      file: "folder",
      wrong: "studies/ferry/study.md\nstudies/ferry/original.svg\nstudies/ferry/.DS_Store",
      right: "studies/ferry/study.md\nstudies/ferry/original.svg",
    },
  },
  {
    id: "site/logo-name",
    severity: "warning",
    means: "A logo lies beside gallery.yaml under another name than logo.svg; the pages go without it.",
    why: "One name is looked for, and one format is read: drawings are checked before they are shown.",
    example: {
      file: "folder",
      wrong: "studies/ferry/study.md\nstudies/ferry/original.svg\nLogo.svg",
      right: "studies/ferry/study.md\nstudies/ferry/original.svg\nlogo.svg",
    },
  },
  {
    id: "study/link",
    severity: "error",
    means: "A file or folder is a symbolic link.",
    why: "Links are not followed: one could publish any file of the computer.",
    example: { file: "told", wrong: "original.svg → ../../flags/ferry.svg", right: "the file itself" },
  },
  {
    id: "study/not-a-file",
    severity: "error",
    means: "A folder, a pipe or a device has the name of a file.",
    why: "Nothing can be read from it.",
    example: {
      file: "folder",
      wrong: "studies/ferry/study.md\nstudies/ferry/original.svg/drawing.svg",
      right: "studies/ferry/study.md\nstudies/ferry/original.svg",
    },
  },
  {
    id: "study/unreadable",
    severity: "error",
    means: "A file could not be read.",
    why: "The system does not let us, or the disk reports an error.",
    example: {
      file: "told",
      wrong: "a study.md that only another user may read",
      right: "a file that you may read",
    },
  },
];

/** Rules of gallery.yaml. A setting that is wrong is replaced by the usual one, so that the gallery still builds. */
export const galleryRules: readonly Rule[] = [
  {
    id: "study/gallery-missing",
    severity: "warning",
    means: "There is no gallery.yaml.",
    why: "The gallery has the usual title, palette and settings then, and no address that others could follow.",
    example: {
      file: "folder",
      wrong: "studies/ferry/study.md\nstudies/ferry/original.svg",
      right: "gallery.yaml\nstudies/ferry/study.md\nstudies/ferry/original.svg",
    },
  },
  {
    id: "study/wrong-address",
    severity: "error",
    means: "“address” is no address of the web.",
    why: "Feeds, link pictures and the site map carry it, so it has to be whole.",
    example: {
      file: "gallery.yaml",
      wrong: "address: flags.example",
      right: "address: https://flags.example/",
    },
  },
  {
    id: "study/wrong-answer",
    severity: "error",
    means:
      "“answer” or “nominate” is neither a mail address nor an address of the web with places to fill in.",
    why: "Readers who argue with a study, or name a flag, are led there.",
    example: { file: "gallery.yaml", wrong: "answer: ask Ines", right: "answer: ines@flags.example" },
  },
  {
    id: "study/wrong-language",
    severity: "error",
    means: "“language” is no language tag.",
    why: "Browsers read pages aloud and break words by it.",
    example: { file: "gallery.yaml", wrong: "language: English", right: "language: en" },
  },
  {
    id: "study/out-of-range",
    severity: "error",
    means: "A number is smaller or larger than it may be.",
    why: "Outside these bounds the measures mean nothing.",
    example: { file: "gallery.yaml", wrong: "viewingDistance: 4000", right: "viewingDistance: 40" },
  },
  {
    id: "study/wrong-cloth",
    severity: "error",
    means: "Black cloth reflects as much as white cloth, or more.",
    why: "All contrast is computed between these two.",
    example: {
      file: "gallery.yaml",
      wrong: "cloth: { black: 85, white: 5 }",
      right: "cloth: { black: 5, white: 85 }",
    },
  },
  {
    id: "study/wrong-palette",
    severity: "error",
    means: "The palette is empty, or one of its names cannot be the name of a colour.",
    why: "Studies use these names, so they are letters, digits, spaces and hyphens.",
    example: {
      file: "gallery.yaml",
      wrong: 'palette: { "#1": "#2e8b70" }',
      right: 'palette: { sea green: "#2e8b70" }',
    },
  },
  {
    id: "study/wrong-folder",
    severity: "error",
    means: "“compareWith” names no folder inside the content folder.",
    why: "A content folder is whole in itself and reads nothing from elsewhere.",
    example: { file: "gallery.yaml", wrong: "compareWith: ../flags", right: "compareWith: flags" },
  },
  {
    id: "study/folder-missing",
    severity: "warning",
    means: "The folder that “compareWith” names is not there.",
    why: "Redesigns are compared with nothing then.",
    example: { file: "gallery.yaml", wrong: "compareWith: colection", right: "compareWith: flags" },
  },
  {
    id: "study/folder-empty",
    severity: "warning",
    means: "The folder that “compareWith” names holds no drawing.",
    why: "Redesigns are compared with nothing then; drawings in folders further in are not read.",
    example: { file: "told", wrong: "collection/north/harbour.svg", right: "collection/harbour.svg" },
  },
];

/** The rule of the templates, which only those edit who have the checkout. */
export const templateRules: readonly Rule[] = [
  {
    id: "site/template",
    severity: "error",
    means: "A template cannot be read while preview shows the gallery.",
    why: "Pages are made by the templates as they were before, until it is mended.",
    example: {
      file: "told",
      wrong: "a tag that is not closed in templates/pages/study.11ty.tsx",
      right: "the same tag, closed",
    },
  },
];
