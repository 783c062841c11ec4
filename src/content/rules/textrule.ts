// Floor 5, the catalogue of rules: how a study file is written, before anything in it is understood.
import type { Rule } from "./rule.ts";

/** Rules of the text and of its YAML. */
export const textRules: readonly Rule[] = [
  {
    id: "study/front-matter-missing",
    severity: "error",
    means: "The file does not begin with the keys of a study, between two lines of three hyphens.",
    why: "Without them it is prose and nothing else: no drawing and no change are named.",
    example: {
      file: "study.md",
      wrong: "title: A lighter ferry wheel",
      right: "---\ntitle: A lighter ferry wheel",
    },
  },
  {
    id: "study/front-matter-unclosed",
    severity: "error",
    means: "The second line of three hyphens, which ends the keys, is not there.",
    why: "Only this line says where the keys end and the prose begins.",
    example: {
      file: "study.md",
      wrong: "tags: [charge]\n--\nThe wheel is dark on dark.",
      right: "tags: [charge]\n---\nThe wheel is dark on dark.",
    },
  },
  {
    id: "study/front-matter-language",
    severity: "error",
    means: "Behind the first three hyphens stands the name of a language.",
    why: "Other tools run such keys as a program; here they are data and nothing is run.",
    example: {
      file: "study.md",
      wrong: "---js\ntitle: A lighter ferry wheel",
      right: "---\ntitle: A lighter ferry wheel",
    },
  },
  {
    id: "study/front-matter-size",
    severity: "error",
    means: "The keys take more than 8 KB.",
    why: "Keys are short; what is long is prose.",
    example: { file: "told", wrong: "“symbolism” of 9,000 characters", right: "the same text in the prose" },
  },
  {
    id: "study/prose-front-matter",
    severity: "error",
    means: "prose.md begins with keys, and the keys of the study are in study.yaml.",
    why: "A study has its keys in one place.",
    example: {
      file: "prose.md",
      wrong: "---\ntitle: A lighter ferry wheel\n---\nThe wheel is dark on dark.",
      right: "The wheel is dark on dark.",
    },
  },
  {
    id: "study/file-size",
    severity: "error",
    means: "study.md or gallery.yaml has more than 64 KB.",
    why: "A longer text is no study, and every page would carry it.",
    example: {
      file: "told",
      wrong: "a study.md of 100 KB",
      right: "the argument, with a link to the long version",
    },
  },
  {
    id: "study/encoding",
    severity: "error",
    means: "The file is not in UTF-8.",
    why: "In another encoding its letters would come out as other letters.",
    example: {
      file: "told",
      wrong: "a study.md saved as “Unicode” (UTF-16)",
      right: "the same, saved as UTF-8",
    },
  },
  {
    id: "study/yaml-tab",
    severity: "error",
    means: "A line is indented with a tab.",
    why: "YAML allows spaces only, because a tab is as wide as each editor likes.",
    example: { file: "study.md", wrong: '\twith: "#f4c430"', right: '  with: "#f4c430"' },
  },
  {
    id: "study/yaml-control",
    severity: "error",
    means: "A line of the keys holds a character that nobody can see.",
    why: "It comes along when text is copied, and a value with it is another value.",
    example: {
      file: "study.md",
      wrong: "title: A lighter\u0008 ferry wheel",
      right: "title: A lighter ferry wheel",
    },
  },
  {
    id: "study/direction-control",
    severity: "warning",
    means: "An invisible character that turns the reading direction was taken out.",
    why: "With it a text can show something else than it says.",
    example: {
      file: "study.md",
      wrong: "title: A lighter \u202eferry wheel",
      right: "title: A lighter ferry wheel",
    },
  },
  {
    id: "study/invisible",
    severity: "error",
    means: "A value holds a character that cannot be seen, where no script needs it.",
    why: "Two names that look the same would be two, and a text could say to programs what nobody reads.",
    example: {
      file: "study.md",
      wrong: "authors: [Ines\u200b Valcourt]",
      right: "authors: [Ines Valcourt]",
    },
  },
  {
    id: "study/stacked-marks",
    severity: "error",
    means: "A letter carries more than five marks.",
    why: "No script asks for it, and the marks would be drawn over the lines and studies around it.",
    example: {
      file: "study.md",
      wrong: "title: A lighter\u0301\u0301\u0301\u0301\u0301\u0301\u0301 ferry wheel",
      right: "title: A lighter ferry wheel",
    },
  },
  {
    id: "study/prose-invisible",
    severity: "warning",
    means: "The prose holds a character that cannot be seen, where no script needs it; it was taken out.",
    why: "It shows nothing, and programs that read the page would read it.",
    example: {
      file: "study.md",
      wrong: "The wheel\u{E0041} is dark on dark.",
      right: "The wheel is dark on dark.",
    },
  },
  {
    id: "study/yaml-syntax",
    severity: "error",
    means: "A line cannot be read as “key: value”.",
    why: "The message says what is most likely missing: a quote, a bracket, a colon or a space.",
    example: {
      file: "study.md",
      wrong: "title: Ferry: a lighter wheel",
      right: 'title: "Ferry: a lighter wheel"',
    },
  },
  {
    id: "study/yaml-feature",
    severity: "error",
    means:
      "A feature of YAML is used that studies do without: a tag, an anchor, an alias, a merge key, a second document.",
    why: "Keys are plain values, so that they mean the same in every program.",
    example: {
      file: "study.md",
      wrong: "title: !!str A lighter ferry wheel",
      right: "title: A lighter ferry wheel",
    },
  },
  {
    id: "study/quote-hash",
    severity: "error",
    means: "A value begins with # and has no quotes.",
    why: "In YAML a # begins a comment, so that the value would be lost without a word.",
    example: { file: "study.md", wrong: "  replace: #7a1020", right: '  replace: "#7a1020"' },
  },
  {
    id: "study/comment",
    severity: "warning",
    means: "In a text without quotes stands a # with one space before it, and what follows is not read.",
    why: "In YAML it begins a comment. With two spaces before the # it is taken for one that is meant.",
    example: {
      file: "study.md",
      wrong: "title: A lighter ferry wheel # 2",
      right: 'title: "A lighter ferry wheel # 2"',
    },
  },
  {
    id: "study/curly-quotes",
    severity: "error",
    means: "A colour, a selector, a file or a word from a list stands in curly quotes.",
    why: "Word processors put them in; to YAML they are letters of the value.",
    example: { file: "study.md", wrong: "  replace: “#7a1020”", right: '  replace: "#7a1020"' },
  },
  {
    id: "study/not-a-map",
    severity: "error",
    means: "No “key: value” stands where keys belong.",
    why: "Everything a study says besides its prose is a key with a value.",
    example: {
      file: "gallery.yaml",
      wrong: "Flags of the Sound",
      right: "title: Flags of the Sound\naddress: https://flags.example/",
    },
  },
  {
    id: "study/duplicate-key",
    severity: "error",
    means: "A key stands there twice.",
    why: "Which of the two values is meant only the author knows.",
    example: { file: "study.md", wrong: "status: open\nstatus: draft", right: "status: open" },
  },
  {
    id: "study/prose-control",
    severity: "warning",
    means: "The prose holds a character that nobody can see.",
    why: "It is shown as \ufffd, so that it is seen.",
    example: {
      file: "study.md",
      wrong: "The wheel is \u0008dark on dark.",
      right: "The wheel is dark on dark.",
    },
  },
  {
    id: "study/figure",
    severity: "warning",
    means: "A figure in the prose cannot be read, or asks for an edge that the original does not have.",
    why: "Names are those of the edge table on the page of the study.",
    example: {
      file: "study.md",
      wrong: '::figure{edge="white / red"}',
      right: '::figure{edge="white / dark blue"}',
    },
  },
  {
    id: "study/image",
    severity: "warning",
    means: "A picture stands in the prose.",
    why: "A study shows no pictures but the flags: others cannot be measured or checked.",
    example: { file: "study.md", wrong: "![The ferry](ferry.jpg)" },
  },
  {
    id: "study/prose-link",
    severity: "warning",
    means: "A link in the prose leads neither into the web, nor to a mail address, nor into the gallery.",
    why: "A page must not start a program or send a reader's machine to a place that the page does not show.",
    example: {
      file: "study.md",
      wrong: "The wheel is in [the book](ftp://flags.example/ferries).",
      right: "The wheel is in [the book](https://flags.example/ferries).",
    },
  },
  {
    id: "study/link-text",
    severity: "warning",
    means: "The text of a link in the prose is one address, and it leads to another.",
    why: "Readers follow the address that they read; the one that it leads to is shown behind it.",
    example: {
      file: "study.md",
      wrong: "The wheel is in [flags.example](https://ferries.example/).",
      right: "The wheel is in [flags.example](https://flags.example/).",
    },
  },
  {
    id: "study/html",
    severity: "warning",
    means: "HTML stands in the prose, and is shown letter for letter.",
    why: "What a contributor writes is text on a page and never part of its program.",
    example: {
      file: "study.md",
      wrong: "The wheel is <b>dark</b> on dark.",
      right: "The wheel is **dark** on dark.",
    },
  },
];
