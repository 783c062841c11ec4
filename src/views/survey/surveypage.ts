// Floor 8. The survey page: every flag of the gallery as it is, least clear first, with what would help it most.

import type { GalleryResult } from "../../analysis/result.ts";
import type { GallerySurvey } from "../../analysis/survey/surveyentry.ts";
import { softFrom } from "../../colour/contrast.ts";
import { flagLimits } from "../../measure/limit.ts";
import { type ByNumber, sayByNumber } from "../../words/bynumber.ts";
import type { Format } from "../../words/format.ts";
import { linkFrom } from "../address.ts";
import { listRivals } from "../flag/findrivals.ts";
import { type Frame, presentFrame } from "../pageframe.ts";
import { mostOnPage } from "../paging.ts";
import { type AnswerView, presentNominate } from "../study/answerview.ts";
import { surveyPath } from "./flagname.ts";
import { type FlagRow, presentFlagRow } from "./flagrow.ts";
import { type FieldView, presentField } from "./surveyfield.ts";
import { countWeak, describeSurveyPicture, pictureSurvey, type SurveyPicture } from "./surveylinkview.ts";

export interface SurveyPage {
  readonly frame: Frame;
  readonly picture: SurveyPicture | undefined;
  readonly count: string;
  /** How many have a weak edge, and how many a single change would help; undefined where there are none to tell of. */
  readonly told: string | undefined;
  readonly field: FieldView | undefined;
  readonly rows: readonly FlagRow[];
  /** The rows behind those shown at once, and how many they are. */
  readonly more: { readonly rows: readonly FlagRow[]; readonly label: string } | undefined;
  /** Says how many flags are in the files alone, where the list would be too long. */
  readonly rest: string | undefined;
  /** Undefined where there is nothing to narrow. */
  readonly finder: SurveyFinder | undefined;
  readonly heading: string;
  readonly caption: string;
  readonly choosing: Choosing;
  readonly failed: readonly { readonly file: string; readonly reason: string }[];
  /** Says how many more failed than are named. */
  readonly failedRest: string | undefined;
  readonly downloads: readonly { readonly address: string; readonly file: string; readonly text: string }[];
  readonly how: string;
  /** The way to name a flag; undefined where the gallery takes none. */
  readonly nominate: AnswerView | undefined;
}

/** The choices of the form, and what is said of a narrowed list, `#` standing for its length. */
export interface SurveyFinder {
  readonly first: readonly string[];
  readonly hasBoth: boolean;
  readonly found: string;
  readonly all: string;
}

/** What is said of chosen flags, what the file of them is called and begins with, and the file of a series of them. */
export interface Choosing {
  readonly said: ByNumber;
  readonly file: string;
  readonly heading: string;
  readonly series: string;
}

/** Most rows on the page (our own judgement: what a browser shows at once). The files have all. */
const mostRows = 1000;
/** Rows that are shown at once (our own judgement: some three screens); the others open on demand. */
const mostAtOnce = 36;

/** The files of the survey, in its folder. */
export const surveyFiles = { csv: "survey.csv", json: "survey.json" } as const;

/** The survey page of a gallery. */
export function presentSurvey(result: GalleryResult, format: Format): SurveyPage {
  const survey: GallerySurvey = result.survey ?? { entries: [], failed: [] };
  const link = linkFrom(surveyPath);
  const { entries } = survey;
  const flags = new Map(listRivals(result).map((flag) => [flag.entry.flag.file, flag]));
  const rows = entries
    .slice(0, mostRows)
    .map((entry) => presentFlagRow(entry, { studies: result.studies, flags }, link, format));
  const { say } = format;
  const count = { count: entries.length };
  const picture = pictureSurvey(survey, result.gallery, format);
  const rest = entries.length - rows.length;
  return {
    frame: presentFrame(
      {
        path: surveyPath,
        title: say("survey.title"),
        description: say("survey.description", count),
        section: "survey",
        ...(picture && {
          picture: { path: `/${picture.file}`, alt: describeSurveyPicture(picture, format) },
        }),
      },
      result.gallery,
      format,
    ),
    picture,
    count: say(rows.length > 1 ? "survey.ordered" : "survey.only", count),
    told: entries.length < 2 ? undefined : tellField(entries, format),
    field: presentField(entries, rows, format),
    rows: rows.slice(0, mostAtOnce),
    more:
      rows.length > mostAtOnce
        ? { rows: rows.slice(mostAtOnce), label: say("survey.more", { count: rows.length - mostAtOnce }) }
        : undefined,
    rest:
      rest > 0
        ? say("survey.rest", { listed: format.number(mostRows, 0), rest: format.number(rest, 0) })
        : undefined,
    finder: rows.length < 2 ? undefined : presentFinder(rows, entries.length, format),
    caption: say("surveyTable.captionHeads"),
    heading: say(rows.length > 1 ? "surveyTable.everyOrdered" : "surveyTable.every"),
    choosing: {
      said: sayByNumber("surveyTable.chosen", format),
      file: "chosen-flags.txt",
      series: "chosen-flags.md",
      heading: say("surveyTable.listHead", { gallery: result.gallery.title }),
    },
    failed: survey.failed.slice(0, mostOnPage).map(({ file, problem }) => ({ file, reason: problem.reason })),
    failedRest:
      survey.failed.length > mostOnPage
        ? say("survey.failedRest", { count: format.number(survey.failed.length - mostOnPage, 0) })
        : undefined,
    downloads: [
      { address: link(`${surveyPath}${surveyFiles.csv}`), file: surveyFiles.csv, text: say("survey.csv") },
      { address: link(`${surveyPath}${surveyFiles.json}`), file: surveyFiles.json, text: say("survey.json") },
    ],
    how: link("/method/#survey"),
    nominate: presentNominate(result.gallery, format),
  };
}

function tellField(entries: GallerySurvey["entries"], format: Format): string {
  const weak = countWeak(entries);
  const helped = entries.filter(({ flag }) => flag.changeFirst !== null).length;
  const limit = format.percent(softFrom);
  return format.say("survey.told", { weak, limit, helped, points: flagLimits.gain });
}

function presentFinder(rows: readonly FlagRow[], count: number, { say }: Format): SurveyFinder {
  const first = new Set(rows.flatMap((row) => row.first.map(({ name }) => name)));
  const withStudy = rows.filter(({ studies }) => studies.length > 0).length;
  return {
    first: [...first].sort(),
    hasBoth: withStudy > 0 && withStudy < rows.length,
    found: say("survey.found", { found: "#", count }),
    all: say("survey.flags", { count }),
  };
}
