// Floor 5. A study as its author wrote it, checked: every value is present, typed and inside its limits.
import type { Hex } from "../../colour/colour.ts";
import type { Located } from "../../problem/problem.ts";
import type { Answer } from "../gallery/answerlink.ts";
import type { Theme } from "../gallery/themekey.ts";
import type { ShowPlan } from "./showstep.ts";

export type Status = "draft" | "open" | "adopted" | "declined" | "withdrawn";

/** One single colour change. `replace` and `with` are as written: a colour or a name. */
export interface Change {
  readonly replace: string;
  readonly with: string;
  readonly only?: string;
  /** With `only`: what readers call that part. */
  readonly part?: string;
}

/** A change the author tried and tells about. */
export interface NotedOption extends Change {
  readonly note?: string;
}

export interface Credit {
  readonly title?: string;
  readonly author?: string;
  readonly source?: string;
  readonly licence: string;
}

/** What became of a proposal: a sentence, and with `decided` when and by how many votes. */
export interface Decision {
  readonly why: string;
  /** ISO date, `2026-05-02`. */
  readonly date?: string;
  readonly by?: string;
  readonly for?: number;
  readonly against?: number;
  readonly abstained?: number;
}

/** What somebody answered. `key` tells it from the others of its study; `text` is Markdown. */
export interface StudyAnswer {
  readonly key: string;
  readonly by: string;
  /** ISO date. */
  readonly date?: string;
  /** As written: `white / navy`. */
  readonly edge?: string;
  /** As written: `black to orange`. */
  readonly option?: string;
  readonly says: "agree" | "disagree" | "doubt" | "ask";
  readonly link?: string;
  readonly text: string;
  /** What the author says to it. */
  readonly reply?: { readonly by?: string; readonly date?: string; readonly text: string };
  /** Where `edge` stands, for later problems. */
  readonly at: { readonly file: string } & Partial<Located>;
}

export type Focus = { readonly colour: string } | { readonly select: string };

export interface Study {
  readonly slug: string;
  /** Path of study.md or study.yaml, as shown in messages. */
  readonly file: string;
  /** Path of prose.md, where the prose has a file of its own. */
  readonly proseFile?: string;
  readonly title: string;
  /** What the flag is called. */
  readonly flag?: string;
  /** A tag of BCP 47, where the study is not in the gallery's language. */
  readonly language?: string;
  /** Path of the original drawing, as shown in messages. */
  readonly originalFile: string;
  /** Absolute path of the original drawing. */
  readonly originalPath: string;
  /** The `original:` value as written. */
  readonly original: string;
  readonly change: Change;
  /** What readers call the colours of this flag. */
  readonly names?: ReadonlyMap<Hex, string>;
  readonly focus?: Focus;
  readonly status: Status;
  readonly decision?: Decision;
  readonly authors: readonly string[];
  /** ISO date, `2026-04-02`. */
  readonly date?: string;
  /** What was changed since, in the order of the file. */
  readonly revised?: readonly { readonly date: string; readonly what: string }[];
  /** Slug of the study that this one takes the place of. */
  readonly follows?: string;
  readonly tags: readonly string[];
  readonly options: readonly NotedOption[];
  readonly credit?: Credit;
  readonly symbolism?: string;
  readonly show?: ShowPlan;
  /** Whether its page offers the pictures of its steps. */
  readonly downloads?: boolean;
  /** In no order. */
  readonly answers?: readonly StudyAnswer[];
  /** Slugs that the study had before. */
  readonly formerly?: readonly string[];
  /** The prose, Markdown. */
  readonly body: string;
  /** Line on which the prose begins in its file, from 1. */
  readonly bodyLine: number;
  /** Where each front matter value stands, by dotted path (`change.replace`), for later problems. */
  readonly places: ReadonlyMap<string, Located>;
}

/** The logo of a gallery: SVG text that we wrote, and its size in user units. */
export interface Logo {
  readonly drawing: string;
  readonly width: number;
  readonly height: number;
}

/** `gallery.yaml`, checked, with every default filled in. */
export interface Gallery {
  readonly title: string;
  readonly description: string;
  readonly address: string;
  readonly language: string;
  /** Messages of the society's own, by their ids, in place of ours. */
  readonly words?: Readonly<Record<string, string>>;
  readonly society?: string;
  /** Stands at the foot of every page. */
  readonly footer?: string;
  /** Of the texts: a short name, or an address. */
  readonly licence?: string;
  /** In flag heights. */
  readonly viewingDistance: number;
  /** Reflectance in percent of the blackest and whitest cloth. */
  readonly cloth: { readonly black: number; readonly white: number };
  /** The gallery's palette: name → CSS colour as written. */
  readonly palette: ReadonlyMap<string, string>;
  /** A folder of the content folder whose drawings redesigns are compared with: `collection/old`. */
  readonly compareWith?: string;
  /** Where gallery.yaml says so, for what turns out to be wrong with that folder. */
  readonly compareWithAt?: Located;
  /** Where readers answer. */
  readonly answer?: Answer;
  /** Where readers name a flag that needs a study. */
  readonly nominate?: Answer;
  /** How the pages look. */
  readonly theme?: Theme;
  /** Beside the gallery's name on every page. */
  readonly logo?: Logo;
  /** Words of the navigation that lead to the gallery's own pages: `guide` is the page at `/guide/`. */
  readonly menu?: readonly { readonly word: string; readonly path: string }[];
  /** Facts of taste that pages do not show are false. */
  readonly terms?: Partial<Readonly<Record<"tincture" | "colours" | "likeness" | "symbolism", boolean>>>;
}
