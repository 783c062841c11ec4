// Floor 5, the catalogue of rules: the keys of a study and what each may hold.
import type { Rule } from "./rule.ts";

/** Rules of the keys, one by one, without a look at the drawing. */
export const valueRules: readonly Rule[] = [
  {
    id: "study/unknown-key",
    severity: "error",
    means: "There is no key of this name, or it stands in the wrong place.",
    why: "A mistyped key would be passed over in silence, and what it says would be lost.",
    example: {
      file: "study.md",
      wrong: "titel: A lighter ferry wheel",
      right: "title: A lighter ferry wheel",
    },
  },
  {
    id: "study/missing-key",
    severity: "error",
    means: "A key that is needed is not there. In gallery.yaml this is a warning.",
    why: "A study needs a title, a drawing and a change; a credit needs a licence.",
    example: {
      file: "study.md",
      wrong: "credit: { author: Ines Valcourt }",
      right: "credit: { author: Ines Valcourt, licence: CC0-1.0 }",
    },
  },
  {
    id: "study/no-value",
    severity: "error",
    means: "A key has nothing behind it.",
    why: "An empty value is either forgotten or to be deleted.",
    example: { file: "study.md", wrong: "status:", right: "status: open" },
  },
  {
    id: "study/placeholder",
    severity: "warning",
    means: "Words that begin wrote for you to replace still stand there.",
    why: "They are published as if they were yours.",
    example: { file: "study.md", wrong: "authors: [Your Name]", right: "authors: [Ines Valcourt]" },
  },
  {
    id: "study/wrong-type",
    severity: "error",
    means: "A value is of another kind than its key needs: text for a list, a number for a text.",
    why: "Nothing is guessed from a value that could mean two things.",
    example: { file: "study.md", wrong: "tags: charge, dark on dark", right: "tags: [charge, dark on dark]" },
  },
  {
    id: "study/too-long",
    severity: "error",
    means: "A text or a list is longer than its key may be.",
    why: "Titles, tags and decisions stand in lists; what is longer belongs in the prose.",
    example: { file: "told", wrong: "a title of 300 characters", right: "a title of up to 200 characters" },
  },
  {
    id: "study/unknown-word",
    severity: "error",
    means: "A key that takes one of a few words has another word.",
    why: "Statuses are compared and counted, so each has one spelling.",
    example: { file: "study.md", wrong: "status: accepted", right: "status: open" },
  },
  {
    id: "study/decision-missing",
    severity: "error",
    means: "A study is adopted or declined and does not say why.",
    why: "A decision without its reason is no record.",
    example: {
      file: "study.md",
      wrong: "status: adopted",
      right: "status: adopted\ndecision: The lighter wheel reads from the quay.",
    },
  },
  {
    id: "study/wrong-date",
    severity: "error",
    means:
      "The date is not year, month and day with hyphens, there is no such day, or it is more than a year ahead.",
    why: "02.04.2026 is in February for some and in April for others; 2026-04-02 is one day for everybody.",
    example: { file: "study.md", wrong: "date: 02.04.2026", right: "date: 2026-04-02" },
  },
  {
    id: "study/wrong-tag",
    severity: "error",
    means: "A tag has characters other than letters, digits, spaces and hyphens.",
    why: "Every tag has a page, and its address is made from it.",
    example: { file: "study.md", wrong: 'tags: ["#charge"]', right: "tags: [charge]" },
  },
  {
    id: "study/wrong-author",
    severity: "error",
    means: "An author has no letter and no digit in the name.",
    why: "Every author has a page, and its address is made from the name.",
    example: { file: "study.md", wrong: 'authors: ["?"]', right: "authors: [Ines Valcourt]" },
  },
  {
    id: "study/licence",
    severity: "warning",
    means: "The licence of the drawing has no name that others can look up.",
    why: "Readers have to know what they may do with the drawing; the SPDX list has a short name for each usual licence.",
    example: {
      file: "study.md",
      wrong: "credit: { author: Ines Valcourt, licence: cc0 }",
      right: "credit: { author: Ines Valcourt, licence: CC0-1.0 }",
    },
  },
  {
    id: "study/original-path",
    severity: "error",
    means: "“original” is no file beside study.md and no file of the folder flags.",
    why: "A content folder is whole in itself: it names no file elsewhere, neither on this computer nor on the web.",
    example: { file: "study.md", wrong: "original: ../../ferry.svg", right: "original: original.svg" },
  },
  {
    id: "study/wrong-colour",
    severity: "error",
    means: "A value that should be a colour is none, or is translucent.",
    why: "A colour is measured: it has to be one colour, in hex or by a name of the palette or of CSS.",
    example: { file: "study.md", wrong: '  with: "#f4c43"', right: '  with: "#f4c430"' },
  },
  {
    id: "study/wrong-name",
    severity: "error",
    means:
      "A name under “names”, or a “part”, has characters other than letters, digits, spaces and hyphens.",
    why: "Names stand in figures and in the names of edges, where a stroke or a bracket would be read as more than a letter.",
    example: {
      file: "study.md",
      wrong: 'names: { "#1b2a5c": navy / blue }',
      right: 'names: { "#1b2a5c": navy }',
    },
  },
  {
    id: "study/name-twice",
    severity: "error",
    means: "“names” gives one name to two colours, or two names to one colour.",
    why: "A reader knows a colour by its name alone.",
    example: {
      file: "study.md",
      wrong: 'names: { "#1b2a5c": navy, "#7a1020": navy }',
      right: 'names: { "#1b2a5c": navy, "#7a1020": wine }',
    },
  },
  {
    id: "study/name-contradicts",
    severity: "warning",
    means: "“names” calls a colour by the plain name of quite another one.",
    why: "Pages say what the colours are called: a reader who is told of white and sees black trusts neither.",
    example: {
      file: "study.md",
      wrong: 'names: { "#1b2a5c": white }',
      right: 'names: { "#1b2a5c": navy }',
    },
  },
  {
    id: "study/mixed-script",
    severity: "warning",
    means:
      "A text has letters of another alphabet, or signs, that look like those of the word it seems to be.",
    why: "It reads as one word and is another, so nobody finds it by typing it.",
    example: {
      file: "study.md",
      wrong: 'names: { "#1b2a5c": n\u0430vy }',
      right: 'names: { "#1b2a5c": navy }',
    },
  },
  {
    id: "study/part-alone",
    severity: "error",
    means: "“part” stands without “only”.",
    why: "It says what readers call the shapes that “only” selects.",
    example: {
      file: "study.md",
      wrong: 'options: [{ replace: "#7a1020", with: "#ffffff", part: the wheel }]',
      right: 'options: [{ replace: "#7a1020", with: "#ffffff", only: "#wheel", part: the wheel }]',
    },
  },
  {
    id: "study/option-repeated",
    severity: "warning",
    means: "An item of “options” is the change that the study proposes.",
    why: "Options are what else was tried; on the page the same change would stand twice.",
    example: {
      file: "study.md",
      wrong: 'options: [{ replace: "#7a1020", with: "#f4c430", only: "#wheel" }]',
      right: 'options: [{ replace: "#7a1020", with: "#ffffff", only: "#wheel" }]',
    },
  },
  {
    id: "study/focus",
    severity: "error",
    means: "“focus” has neither a colour nor a selector, or both.",
    why: "What has to be seen is said in one way.",
    example: { file: "study.md", wrong: "focus: {}", right: 'focus: { select: "#wheel" }' },
  },
  {
    id: "study/formerly-slug",
    severity: "error",
    means: "“formerly” holds a name that no study's folder can have had.",
    why: "Each name in it was an address: small letters, digits and single hyphens.",
    example: { file: "study.md", wrong: "formerly: [Ferry Wheel]", right: "formerly: [ferry-wheel]" },
  },
  {
    id: "study/unknown-step",
    severity: "error",
    means: "“show” names a step that there is none of.",
    why: "A step that is mistyped would be missing in front of the class, and its note with it.",
    example: {
      file: "study.md",
      wrong: "show: { without: [form-afar] }",
      right: "show: { without: [from-afar] }",
    },
  },
  {
    id: "study/step-twice",
    severity: "error",
    means: "“show” names a step twice.",
    why: "Each step has one address, and one place in the order.",
    example: {
      file: "study.md",
      wrong: "show: { steps: [the-flag, the-flag] }",
      right: "show: { steps: [the-flag, after] }",
    },
  },
  {
    id: "study/formerly-twice",
    severity: "warning",
    means: "“formerly” holds a name twice.",
    why: "Once is enough.",
    example: {
      file: "study.md",
      wrong: "formerly: [ferry-wheel, ferry-wheel]",
      right: "formerly: [ferry-wheel]",
    },
  },
  {
    id: "study/formerly-taken",
    severity: "warning",
    means: "“formerly” holds an address that a study has today.",
    why: "An address leads to one page.",
    example: { file: "study.md", wrong: "formerly: [ferry]", right: "formerly: [ferry-wheel]" },
  },
  {
    id: "study/formerly-claimed",
    severity: "warning",
    means: "A study says that it had an address, and another says so too, or addresses.txt does.",
    why: "An address leads to the study that is known to have had it, and to none where nobody could know.",
    example: {
      file: "told",
      wrong: "“formerly: [ferry-wheel]” in two studies",
      right: "the line in the study that had the address",
    },
  },
  {
    id: "study/decision-twice",
    severity: "error",
    means: "A decision stands as “decision” and as “decided”.",
    why: "Nobody could know which of them holds.",
    example: {
      file: "told",
      wrong:
        "“decision: It reads from the quay.” and “decided: { date: 2026-05-02, why: It reads from the quay. }”",
      right: "the second alone",
    },
  },
  {
    id: "study/decision-open",
    severity: "error",
    means: "A study has “decided”, and its status is neither adopted nor declined.",
    why: "It would stand in the list of decisions, and say that it is not decided.",
    example: {
      file: "told",
      wrong: "“status: open” and “decided: { date: 2026-05-02, why: It reads from the quay. }”",
      right: "“status: adopted”",
    },
  },
  {
    id: "study/votes-against-status",
    severity: "warning",
    means: "A study is adopted with more votes against it than for it, or declined with more for it.",
    why: "The list of decisions shows both; most often the two numbers stand the wrong way round.",
    example: {
      file: "study.md",
      wrong:
        "status: adopted\ndecided: { date: 2026-05-02, for: 2, against: 11, why: It reads from the quay. }",
      right:
        "status: adopted\ndecided: { date: 2026-05-02, for: 11, against: 2, why: It reads from the quay. }",
    },
  },
  {
    id: "study/answer-link",
    severity: "error",
    means: "The link of an answer is no address that begins with https://.",
    why: "Readers follow it to what somebody else wrote; nothing but a page of the web may stand there.",
    example: {
      file: "told",
      wrong: "“link: forum.example/77” in an answer",
      right: "“link: https://forum.example/77”",
    },
  },
  {
    id: "study/answer-edge",
    severity: "warning",
    means: "An answer names an edge that the flag does not have.",
    why: "It then stands with the study as a whole, and not beside what it argues about.",
    example: {
      file: "told",
      wrong: "“edge: white / pink” in an answer to a study of a flag without pink",
      right: "an edge that the flag has",
    },
  },
  {
    id: "study/answer-option",
    severity: "warning",
    means: "An answer names a single change that was not tried.",
    why: "It then stands with the study as a whole, and not beside what it argues about.",
    example: {
      file: "told",
      wrong: "“option: pink to gold” in an answer to a study of a flag without pink",
      right: "a change that the page of the other single changes shows",
    },
  },
  {
    id: "study/answer-name",
    severity: "error",
    means:
      "A file in a study’s folder answers has a name that cannot be an address, or does not end with .md.",
    why: "The file’s name is the address of the answer, which others link to.",
    example: {
      file: "folder",
      wrong: "studies/ferry/study.md\nstudies/ferry/original.svg\nstudies/ferry/answers/Marit Osseny.txt",
      right: "studies/ferry/study.md\nstudies/ferry/original.svg",
    },
  },
  {
    id: "study/adopted-twice",
    severity: "warning",
    means: "Two studies of one flag are adopted.",
    why: "A flag has one redesign at most that those who decide have accepted.",
    example: {
      file: "told",
      wrong: "“status: adopted” in two studies of one drawing",
      right: "“status: declined” in the one that was not adopted",
    },
  },
  {
    id: "study/flag-called",
    severity: "warning",
    means: "Studies of one drawing call its flag by different names.",
    why: "They share a page, which has one name: the one it had before, else the one that most of them give.",
    example: {
      file: "told",
      wrong: "“flag: The ferry flag” and “flag: The old wheel” in two studies of one drawing",
      right: "one name in both",
    },
  },
  {
    id: "study/follows",
    severity: "warning",
    means: "“follows” names no study, or the study itself.",
    why: "The line leads readers from the newer study to the older one and back.",
    example: {
      file: "told",
      wrong: "“follows: fery-wheel” where the study is in the folder ferry-wheel",
      right: "“follows: ferry-wheel”",
    },
  },
  {
    id: "study/confusable",
    severity: "warning",
    means: "A name is easily taken for another one: of a study's folder, an author or a tag.",
    why: "Whoever follows one of them and means the other reads what somebody else has to say.",
    example: {
      file: "told",
      wrong: "“Ines Valcourt” in one study and “lnes Valcourt”, with a small L, in another",
      right: "the name typed the same in both",
    },
  },
];
