// Floor 5. The folder votes/ of a content folder → the ballots of each series.
import { join } from "node:path";
import { findNearest } from "../../problem/knownword.ts";
import { compareText, type Outcome, type Problem, report } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { describeFailure, describeFolderFailure } from "../disk/filefailure.ts";
import { kindOf, readFolder, readRegular } from "../disk/readfile.ts";
import { listNames } from "../folder/absent.ts";
import { isEditorFile } from "../folder/editorfile.ts";
import { keepWithin } from "../folder/gallerybudget.ts";
import { type Entry, leftovers, linkProblem } from "../folder/listing.ts";
import { type Series, studyOf } from "../series/series.ts";
import { textFileBytes } from "../text/textsource.ts";
import type { Ballot } from "./ballot.ts";
import { type Poll, parseBallots } from "./ballotfile.ts";

/**
 * Returns the series with the ballots that lie in `votes/<slug>/` of the content folder `root`, shown as `shown`. A ballot that
 * stands twice counts once, and not at all where the two contradict each other.
 *
 * Problems: those of `keepWithin` and `parseBallots`, of files and folders as in a study; `vote/file-name`,
 * `vote/unknown-series`, `vote/file-size`. None of them leaves out a series.
 */
export async function loadVotes(
  root: string,
  shown: string,
  series: readonly Series[],
): Promise<Outcome<readonly Series[]> & { readonly value: readonly Series[] }> {
  const { entries, problems } = await list(root, shown, "votes");
  const found = new Map<string, readonly Ballot[]>();
  for (const { name, kind } of entries) {
    const folder = `${shown}/votes/${name}`;
    const one = series.find(({ slug }) => slug === name);
    if (kind === "link") problems.push(linkProblem(folder));
    else if (kind !== "folder") problems.push(looseFile(folder, name));
    else if (one === undefined) {
      // A series with an error says so itself.
      if ((await kindOf(join(root, "series", `${name}.md`))) !== "file")
        problems.push(
          unknownSeries(
            folder,
            name,
            series.map(({ slug }) => slug),
          ),
        );
    } else {
      const { value, problems: more } = await loadPoll(root, shown, one);
      problems.push(...more);
      found.set(name, value);
    }
  }
  const value = series.map((one) => {
    const ballots = found.get(one.slug);
    return ballots === undefined ? one : { ...one, ballots };
  });
  return { value, problems };
}

async function loadPoll(root: string, shown: string, { slug, entries: items }: Series) {
  const studies = items.flatMap((entry) => studyOf(entry) ?? []);
  const poll: Poll = { slug, studies, met: new Map(), contradicted: new Set() };
  const inner = `votes/${slug}`;
  const { entries, problems } = await list(root, shown, inner);
  const value: Ballot[] = [];
  for (const { name, kind } of entries) {
    const file = `${shown}/${inner}/${name}`;
    if (kind === "link") problems.push(linkProblem(file));
    else if (!/\.(?:csv|txt)$/i.test(name)) problems.push(wrongName(file, name));
    else {
      const read = await readRegular(root, `${inner}/${name}`, textFileBytes);
      if ("kind" in read) {
        problems.push(read.kind === "too large" ? tooLarge(file, read.size) : describeFailure(file, read));
        continue;
      }
      const parsed = parseBallots(file, read.bytes, poll);
      problems.push(...parsed.problems);
      value.push(...parsed.value);
    }
  }
  return { value: value.filter(({ id }) => !poll.contradicted.has(id)), problems };
}

/** What is in a folder, by name, without what systems and editors leave there; nothing where there is no such folder. */
async function list(
  root: string,
  shown: string,
  inner: string,
): Promise<{ entries: Entry[]; problems: Problem[] }> {
  const folder = `${shown}/${inner}`;
  const entries = await readFolder(root, inner);
  if ("kind" in entries) {
    if (entries.kind === "missing") return { entries: [], problems: [] };
    const told = entries.kind === "link" ? linkProblem(folder) : describeFolderFailure(folder, entries);
    return { entries: [], problems: [told] };
  }
  const within = keepWithin(folder, entries, "files");
  const own = within.entries.filter(({ name }) => !leftovers.includes(name) && !isEditorFile(name));
  return { entries: own.sort((a, b) => compareText(a.name, b.name)), problems: [...within.problems] };
}

function looseFile(file: string, name: string): Problem {
  return report("vote/file-name", file, {
    reason: `${quoteText(name)} lies beside the folders of the series.`,
    hint: "Put it into the folder of its series, for example: votes/quay/",
  });
}

function wrongName(file: string, name: string): Problem {
  return report("vote/file-name", file, {
    reason: `${quoteText(name)} is not read: files of ballots end with .csv, or with .txt where they hold lines of text.`,
    hint: "Rename it, or move it elsewhere.",
  });
}

function unknownSeries(folder: string, name: string, slugs: readonly string[]): Problem {
  const near = findNearest(name, slugs);
  const hint = near === undefined ? `The series are: ${listNames(slugs)}` : `Rename the folder to: ${near}`;
  return report("vote/unknown-series", folder, { reason: `There is no series ${quoteText(name)}.`, hint });
}

function tooLarge(file: string, size: number): Problem {
  return report("vote/file-size", file, {
    reason: `The file has ${Math.ceil(size / 1024)} KB; a file of ballots may have ${textFileBytes / 1024} KB.`,
    hint: "Divide it into several, each with the line of column names.",
  });
}
