// Floor 5. The bytes of one file of ballots → its good ballots, and what is wrong with the others.
import { locate } from "../../problem/locate.ts";
import { type Outcome, type Place, type Problem, report } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { readSource, reportIn, type Source } from "../text/textsource.ts";
import { type Ballot, checkVote, readVote, type Vote } from "./ballot.ts";
import { columns, findTableReader, isBallotLine, type PlacedVote, readLine } from "./ballotrow.ts";

const ballotHint =
  "Type each ballot in one line, as the page gave it: ballot ID SERIES STUDY=CHOICE STUDY=CHOICE";

/** Ballots of one series: its slug, its studies, and the ballots that were met so far, by their id. */
export interface Poll {
  readonly slug: string;
  readonly studies: readonly string[];
  readonly met: Map<string, Met>;
  /** Ids of ballots that stand twice and say different things: none of them counts, whatever file is read first. */
  readonly contradicted: Set<string>;
}

/** Where a ballot stands first, and what it chose of each study. */
interface Met {
  readonly file: string;
  readonly votes: ReadonlyMap<string, Vote>;
}

/**
 * Reads a file of ballots and adds them to those that were met. A ballot with a bad vote is left out, and so is what stands
 * there a second time.
 *
 * Problems: those of `readSource`; `vote/no-ballots`, `vote/row`, `vote/other-series`, `vote/unknown-study`,
 * `vote/unknown-choice`, `vote/ballot-contradicted`; warnings `vote/ballot-twice`, `vote/other-lines`.
 */
export function parseBallots(
  file: string,
  bytes: Uint8Array,
  poll: Poll,
): Outcome<readonly Ballot[]> & { readonly value: readonly Ballot[] } {
  const { value: source, problems: unreadable } = readSource(file, bytes);
  if (source === undefined) return { value: [], problems: unreadable };
  const { votes, problems } = readVotes(source);
  const gathered = gather(source, votes, poll);
  return { value: gathered.ballots, problems: [...problems, ...gathered.problems] };
}

/** The rows of a table; without one, every line of a ballot among whatever else a mail has. */
function readVotes(source: Source): { readonly votes: PlacedVote[]; readonly problems: Problem[] } {
  const start = source.lines.findIndex((line) => line.trim() !== "");
  const readRow = findTableReader(source.lines[start]?.trimEnd() ?? "");
  const votes: PlacedVote[] = [];
  const problems: Problem[] = [];
  if (readRow === undefined && !source.lines.some(isBallotLine))
    return { votes, problems: [noBallots(source, Math.max(0, start))] };
  const other: number[] = [];
  for (const [index, text] of source.lines.entries()) {
    if (text.trim() === "" || (readRow && index === start)) continue;
    if (readRow === undefined && !isBallotLine(text)) other.push(index + 1);
    else {
      const found = (readRow ?? readLine)(text.trimEnd(), index + 1);
      if (found === undefined) problems.push(badRow(source, index + 1, readRow !== undefined));
      else votes.push(...found);
    }
  }
  const [first] = other;
  if (first !== undefined) problems.push(passedOver(source, first, other.length));
  return { votes, problems };
}

function gather(source: Source, placed: readonly PlacedVote[], { slug, studies, met, contradicted }: Poll) {
  const found = new Map<string, Map<string, Vote>>();
  const bad = new Set<string>();
  const twice = new Set<string>();
  const problems: Problem[] = [];
  for (const { raw, places } of placed) {
    const { ballot, study } = raw;
    const fault = checkVote(raw, slug, studies);
    const earlier = met.get(ballot);
    const mine = found.get(ballot) ?? new Map<string, Vote>();
    if (fault !== undefined) {
      bad.add(ballot);
      const reason = `${fault.reason} The whole ballot is left out.`;
      problems.push(reportIn(fault.rule, [source, places[fault.at]], { ...fault, reason }));
    } else if (earlier !== undefined || mine.has(study)) {
      const first = (earlier?.votes ?? mine).get(study);
      const isOther = first !== undefined && first.choice !== raw.choice;
      const key = `${ballot} ${earlier === undefined ? study : ""} ${isOther}`;
      if (!twice.has(key)) problems.push(standsTwice(source, places.ballot, ballot, earlier?.file, isOther));
      twice.add(key);
      if (isOther) contradicted.add(ballot);
    } else found.set(ballot, mine.set(study, readVote(raw)));
  }
  for (const [id, votes] of found) met.set(id, { file: source.file, votes });
  const good = [...found].filter(([id]) => !bad.has(id));
  return { ballots: good.map(([id, votes]): Ballot => ({ id, votes: [...votes.values()] })), problems };
}

function noBallots(source: Source, index: number): Problem {
  const line = source.lines[index] ?? "";
  const at = {
    file: source.file,
    ...locate(line, { line: index + 1, column: 1, length: Math.max(1, line.length) }),
  };
  const reason =
    line.trim() === ""
      ? "The file is empty."
      : "The file neither begins with the names of the columns nor has a line of a ballot.";
  const hint = /\.txt$/i.test(source.file)
    ? ballotHint
    : `The first line of a table is: ${columns.join(",")}`;
  return report("vote/no-ballots", at, { reason, hint });
}

function badRow(source: Source, line: number, isTable: boolean): Problem {
  const text = source.lines[line - 1] ?? "";
  const place: Place = { line, column: 1, length: Math.max(1, text.length) };
  const hint = isTable ? `Type the five values: ${columns.join(",")}` : ballotHint;
  const reason = isTable
    ? "This line is no vote, so it is left out."
    : "This line is no whole ballot, so it is left out.";
  return reportIn("vote/row", [source, place], { reason, hint });
}

function passedOver(source: Source, line: number, count: number): Problem {
  const place: Place = { line, column: 1, length: Math.max(1, source.lines[line - 1]?.length ?? 0) };
  const lines = count === 1 ? "One line is no ballot and was" : `${count} lines are no ballots and were`;
  return reportIn(
    "vote/other-lines",
    [source, place],
    {
      reason: `${lines} passed over, here for the first time.`,
      hint: "Delete what is no ballot, or leave it: the ballots of the file count.",
    },
    "warning",
  );
}

/** `isOther`: it says something else here. Then nobody knows what was meant. */
function standsTwice(
  source: Source,
  place: Place,
  ballot: string,
  earlier: string | undefined,
  isOther: boolean,
): Problem {
  const where = earlier === undefined ? "above" : `in ${quoteText(earlier)}`;
  if (isOther) {
    const reason = `The ballot ${ballot} chooses something else ${where}, so it does not count at all.`;
    const hint = "Find out which of the two the voter sent, and delete the other.";
    return reportIn("vote/ballot-contradicted", [source, place], { reason, hint });
  }
  const reason = `The ballot ${ballot} stands already ${where}; what stands here is left out.`;
  return reportIn(
    "vote/ballot-twice",
    [source, place],
    { reason, hint: "Delete one of the two." },
    "warning",
  );
}
