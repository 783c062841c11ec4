// Floor 6. The front page: the gain chart, every study, and the ways to find one.
import type { Verdict } from "../../measure/comparison.ts";
import type { GalleryResult, StudyResult } from "../../study/result.ts";
import type { Status } from "../../study/study.ts";
import { linkFrom } from "../address.ts";
import { type Card, orderStudies, presentCard } from "./card.ts";
import type { Format } from "./format.ts";
import { type GainView, presentGain } from "./gain.ts";
import { type Frame, presentFrame } from "./page.ts";
import { countStudies, linkShelves, type ShelfLink } from "./shelf.ts";
import { presentStatus } from "./status.ts";
import { verdictWords } from "./verdict.ts";

export interface FrontPage {
  readonly frame: Frame;
  readonly title: string;
  readonly description: string;
  readonly count: string;
  readonly cards: readonly Card[];
  readonly gain: GainView | undefined;
  readonly finder: Finder | undefined;
  readonly authors: readonly ShelfLink[];
  readonly tags: readonly ShelfLink[];
}

/** What the list can be narrowed to; a choice that would narrow nothing is left out. */
export interface Finder {
  readonly choices: readonly {
    readonly name: "status" | "verdict" | "tag" | "author";
    readonly label: string;
    readonly options: readonly { readonly value: string; readonly text: string }[];
  }[];
  readonly orders: readonly { readonly value: string; readonly text: string }[];
  /** What is said of a narrowed list, `#` standing for its length. */
  readonly found: string;
}

const statuses: readonly Status[] = ["draft", "open", "adopted", "declined", "withdrawn"];
const verdicts: readonly Verdict[] = ["clearer", "mixed", "less clear", "no gain"];

/** The front page of a gallery. */
export function presentFront(result: GalleryResult, format: Format): FrontPage {
  const { gallery } = result;
  const studies = orderStudies(result.studies);
  const link = linkFrom("/");
  const authors = linkShelves(studies, "authors", link, format);
  const tags = linkShelves(studies, "tags", link, format);
  const count = countStudies(studies.length, format);
  return {
    frame: presentFrame(
      { path: "/", title: undefined, description: gallery.description, section: "studies" },
      gallery,
      format,
    ),
    title: gallery.title,
    description: gallery.description,
    count,
    cards: studies.map((study) => presentCard(study, link, format)),
    gain: presentGain(studies, link, format),
    finder: studies.length < 2 ? undefined : presentFinder(studies, authors, tags, `# of ${count}`),
    authors,
    tags,
  };
}

function presentFinder(
  studies: readonly StudyResult[],
  authors: readonly ShelfLink[],
  tags: readonly ShelfLink[],
  found: string,
): Finder {
  const fromShelf = ({ slug, name }: ShelfLink) => ({ value: slug, text: name });
  const choices: Finder["choices"] = [
    {
      name: "status",
      label: "Status",
      options: statuses
        .filter((status) => studies.some(({ study }) => study.status === status))
        .map((status) => ({ value: status, text: presentStatus(status).word })),
    },
    {
      name: "verdict",
      label: "Verdict",
      options: verdicts
        .filter((verdict) => studies.some(({ comparison }) => comparison.verdict === verdict))
        .map((verdict) => ({ value: verdict.replace(" ", "-"), text: verdictWords[verdict] })),
    },
    { name: "tag", label: "Tag", options: tags.map(fromShelf) },
    { name: "author", label: "Author", options: authors.map(fromShelf) },
  ];
  return {
    choices: choices.filter(({ options }) => options.length > 1),
    orders: [
      { value: "", text: "Newest first" },
      { value: "gain", text: "Most gained first" },
      { value: "lost", text: "Most lost first" },
      { value: "unclear", text: "Least clear redesign first" },
      { value: "title", text: "By title" },
    ],
    found,
  };
}
