// Test support. Edits that an author makes, each from one content to the next.
import { type Content, drawFlag, makeContent, writeSettings, writeStudy } from "./gallery.ts";
import { pick } from "./tally.ts";

export type Edit = (content: Content, random: () => number) => Content;

const colours = ["#15244a", "#3a2a20", "#f4e7a0", "#ffffff", "#7a1020", "#1c6b3a", "#f4c430", "#de7d30"];
const slugs = ["low-tide", "noon-gun", "slack-water", "the-narrows"];
const fileOf = (slug: string, file: string): string => `studies/${slug}/${file}`;

function without(content: Content, beginning: string): Content {
  return Object.fromEntries(Object.entries(content).filter(([file]) => !file.startsWith(beginning)));
}

function twoOf(random: () => number): readonly [string, string] {
  const first = pick(random, colours);
  return [
    first,
    pick(
      random,
      colours.filter((colour) => colour !== first),
    ),
  ];
}

/** A study, new or written anew: its drawing has the colour that it replaces. */
const writeWhole: Edit = (content, random) => {
  const slug = pick(random, slugs);
  const [field, charge] = twoOf(random);
  const replace = pick(random, [field, charge]);
  const change = pick(
    random,
    colours.filter((colour) => colour !== replace),
  );
  const status = pick(random, ["open", "open", "draft", "withdrawn"]);
  const title = pick(random, ["Low tide", "High tide", "Neap tide"]);
  return {
    ...content,
    [fileOf(slug, "study.md")]: writeStudy({
      title,
      replace,
      change,
      status,
      prose: pick(random, ["", "A **disc**."]),
    }),
    [fileOf(slug, "original.svg")]: drawFlag({ field, charge, size: 1 + Math.floor(random() * 4) }),
  };
};

/** The drawing alone: the colour of its study may be gone from it, which is an error that a later edit may mend. */
const redraw: Edit = (content, random) => {
  const drawings = Object.keys(content).filter((file) => file.endsWith(".svg"));
  const [field, charge] = twoOf(random);
  const file = pick(random, [...drawings, "flags/buoy.svg"]);
  return { ...content, [file]: drawFlag({ field, charge, size: 1 + Math.floor(random() * 4) }) };
};

const breakStudy: Edit = (content, random) => ({
  ...content,
  [fileOf(pick(random, slugs), "study.md")]: pick(random, ["---\ntitle: x\n---\n", "---\n: [\n---\n", ""]),
});

const edits: Readonly<Record<string, Edit>> = {
  "a study": writeWhole,
  "a drawing": redraw,
  "the settings": (content, random) => ({
    ...content,
    "gallery.yaml": writeSettings(pick(random, ["Discs", "More discs"]), pick(random, [0, 20, 40, 80])),
  }),
  "a study broken": breakStudy,
  "a study deleted": (content, random) => without(content, `studies/${pick(random, slugs)}/`),
  "a drawing deleted": (content, random) => without(content, fileOf(pick(random, slugs), "original.svg")),
  "a flag added": (content, random) => {
    const [field, charge] = twoOf(random);
    return {
      ...content,
      [`flags/${pick(random, ["buoy", "mole", "lock"])}.svg`]: drawFlag({ field, charge }),
    };
  },
  "the flags deleted": (content) => without(content, "flags/"),
  "all as it was": () => makeContent(),
};

/** The edits that can be made to `content`: there is always a study. */
export function listEdits(content: Content): readonly (readonly [string, Edit])[] {
  const isLast = Object.keys(content).filter((file) => file.endsWith("study.md")).length <= 1;
  return Object.entries(edits).filter(([name]) => !isLast || name !== "a study deleted");
}
