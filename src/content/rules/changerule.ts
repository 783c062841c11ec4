// Floor 5, the catalogue of rules: what a study says of its drawing, once the drawing is there.
import type { Rule } from "./rule.ts";

/** Rules of the change and the focus, and of drawings that cannot be measured. */
export const changeRules: readonly Rule[] = [
  {
    id: "study/colour-absent",
    severity: "error",
    means: "The drawing does not have the colour that is to be replaced, or that has to be seen.",
    why: "A change of a colour that is not there changes nothing; the message lists the colours that are.",
    example: { file: "study.md", wrong: '  replace: "#7b3040"', right: '  replace: "#7a1020"' },
  },
  {
    id: "study/colour-near",
    severity: "warning",
    means: "The colour is not in the drawing, and one that looks the same (ΔE00 under 2) was taken.",
    why: "Colours picked from a screen are often a shade off; the study should say the one it means.",
    example: { file: "study.md", wrong: '  replace: "#7a1021"', right: '  replace: "#7a1020"' },
  },
  {
    id: "study/colour-unseen",
    severity: "warning",
    means: "The colour to be replaced is in the drawing, and nothing of it can be seen.",
    why: "A shape without area, or one that others cover, looks the same in every colour.",
    example: {
      file: "told",
      wrong: "a wheel of radius 0",
      right: "a wheel that shows",
    },
  },
  {
    id: "study/colour-small",
    severity: "error",
    means: "The drawing has more than 48 colours, and the one to be replaced is among those that show least.",
    why: "Colours beyond the 48 that show most are measured as one, so a change of one of them cannot be compared.",
    example: { file: "told", wrong: "the smallest of 60 colours", right: "the largest of them" },
  },
  {
    id: "study/two-meanings",
    severity: "warning",
    means: "A name that no palette of the gallery has means one colour in the drawing and another in CSS.",
    why: "What the study calls a colour comes first, then the drawing and the palette, then CSS; the message says which hex was used.",
    example: {
      file: "told",
      wrong: "“with: pink” where the drawing's pink is #e5709a",
      right: 'with: "#e5709a"',
    },
  },
  {
    id: "study/name-absent",
    severity: "warning",
    means: "“names” names a colour that is neither in the drawing nor put into it.",
    why: "The name would be read nowhere; the message gives the nearest colour that is there.",
    example: {
      file: "study.md",
      wrong: 'names: { "#1b2a5d": navy }',
      right: 'names: { "#1b2a5c": navy }',
    },
  },
  {
    id: "study/nothing-changes",
    severity: "error",
    means: "A colour is replaced by itself.",
    why: "There would be nothing to compare.",
    example: { file: "study.md", wrong: '  with: "#7a1020"', right: '  with: "#f4c430"' },
  },
  {
    id: "study/wrong-selector",
    severity: "error",
    means: "“only” or “select” cannot be read as a CSS selector.",
    why: "A selector names shapes of the drawing: by id #wheel, by class .star, by element path.",
    example: { file: "study.md", wrong: '  only: "circle["', right: '  only: "circle"' },
  },
  {
    id: "study/selects-nothing",
    severity: "error",
    means: "A selector matches no shape, or none that has the colour to be replaced.",
    why: "The change would change nothing; the message lists the ids that the drawing has.",
    example: { file: "study.md", wrong: '  only: "#whel"', right: '  only: "#wheel"' },
  },
  {
    id: "study/focus-hidden",
    severity: "warning",
    means:
      "A charge runs into an area of its own colour, so that it was not found, or only parts of it were.",
    why: "Charges are found as parts that stand free of the border; one that does not has to be named.",
    example: {
      file: "told",
      wrong: "a white wheel that reaches into a white stripe",
      right: 'the same with focus: { select: "#wheel" }',
    },
  },
  {
    id: "study/likeness",
    severity: "warning",
    means: "The redesign is easily taken for another flag.",
    why: "A flag that is mistaken for another has gained nothing; the page of the method says how likeness is measured.",
    example: {
      file: "told",
      wrong: "a redesign that is another study's original",
      right: "a change that keeps the flag apart",
    },
  },
  {
    id: "study/nothing-drawn",
    severity: "error",
    means: "The drawing shows nothing.",
    why: "Its shapes have no colour, or lie outside the viewBox.",
    example: {
      file: "original.svg",
      wrong: '<svg xmlns="http://www.w3.org/2000/svg" viewBox="100 100 30 20">',
      right: '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 30 20">',
    },
  },
  {
    id: "study/unpainted",
    severity: "warning",
    means:
      "More than 2 % of the drawing is left unpainted, and what is painted does not reach all four sides.",
    why: "Pages show whatever is behind it, and it counts for nothing: shares are of what is painted, and where that ends there is no edge.",
    example: {
      file: "original.svg",
      wrong: '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 20">',
      right: '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 30 20">',
    },
  },
  {
    id: "study/colour-lost",
    severity: "error",
    means: "Over 1 % of the flag, or a third of its edges, looks otherwise than it would be measured.",
    why: "What is measured must be what is seen: a gradient, a pattern or a translucent shape is measured as one colour, a shape that shows at less than half is left out, and lines thinner than a 180th of the height mix with what is beside them.",
    example: {
      file: "told",
      wrong: "a grey stripe, and black at 40 % over white, which looks like the same grey",
      right: "both stripes drawn in the grey",
    },
  },
  {
    id: "study/effect",
    severity: "error",
    means: "Without its filters and blends, over a twentieth of the flag would look otherwise.",
    why: "They mix colours, so that an edge has no two colours to measure; where they change little they are left out.",
    example: {
      file: "original.svg",
      wrong: '<rect width="30" height="16" fill="#8090c0" style="mix-blend-mode:multiply"/>',
      right: '<rect width="30" height="16" fill="#0e174b"/>',
    },
  },
  {
    id: "study/not-drawable",
    severity: "error",
    means: "The renderer gave up on the drawing.",
    why: "What cannot be drawn cannot be measured.",
    example: {
      file: "told",
      wrong: "a drawing that no renderer draws",
      right: "the flag exported again, in plain shapes",
    },
  },
  {
    id: "study/too-slow",
    severity: "error",
    means: "The drawing took longer than 15 seconds, or all pictures of it longer than 60, and was stopped.",
    why: "One drawing must not hold up the others, and is not tried again; simpler shapes draw faster.",
    example: { file: "told", wrong: "thousands of patterns within patterns", right: "plain shapes" },
  },
  {
    id: "study/too-much-memory",
    severity: "error",
    means: "The drawing took more than 768 MB of memory and was stopped.",
    why: "One drawing must not take the computer from the others.",
    example: { file: "told", wrong: "a mask within a mask within a mask", right: "plain shapes" },
  },
  {
    id: "study/crashed",
    severity: "error",
    means: "The process that measured the drawing ended without an answer.",
    why: "Each drawing is measured in a process of its own, so that the others go on.",
    example: {
      file: "told",
      wrong: "a drawing that brings the renderer down",
      right: "the flag exported again, in plain shapes",
    },
  },
  {
    id: "study/not-published",
    severity: "error",
    means:
      "A drawing of the study, as it would be written for the site, was refused or could not be rendered.",
    why: "What is published is held to the same limits as what authors give, and can be larger than that.",
    example: {
      file: "told",
      wrong: "a drawing that grows beyond what may be read when it is written",
      right: "the flag exported again, with fewer points",
    },
  },
  {
    id: "study/too-much-output",
    severity: "error",
    means: "The files of one study come to more than 64 MB.",
    why: "One study must not fill the site; each edge has two drawings of its own.",
    example: { file: "told", wrong: "a drawing of 512 KB with fifty colours", right: "plain shapes" },
  },
  {
    id: "study/machine",
    severity: "error",
    means: "The computer refused what the work takes: the disk is full, or too many files are open.",
    why: "It has nothing to do with any study; a gallery is not published without one for that.",
    example: { file: "told", wrong: "ulimit -n 30", right: "ulimit -n 4096" },
  },
  {
    id: "study/fault",
    severity: "error",
    means: "Counterchange itself failed: a fault of the program, and not of the drawing.",
    why: "Please report it with the drawing and the lines of the message.",
    example: { file: "told", wrong: "nothing an author did", right: "nothing to mend" },
  },
];
