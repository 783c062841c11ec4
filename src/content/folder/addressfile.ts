// Floor 5. addresses.txt: every address that the gallery has published, a line each, and where those lead whose page has gone.
import { join } from "node:path";
import { compareText, type Outcome, type Problem, report } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { describeFailure } from "../disk/filefailure.ts";
import { kindOf, readRegular } from "../disk/readfile.ts";
import { readSource, reportIn, type Source } from "../text/textsource.ts";
import { type AddressNote, isAddress, readAddressLine } from "./addressline.ts";

/** The file's name in the content folder. */
export const addressFile = "addresses.txt";

/** Largest list, in bytes: some 150,000 addresses. */
export const addressBytes = 8 * 1024 * 1024;

/** Address → what is said of it. */
export type AddressNotes = ReadonlyMap<string, AddressNote>;

const head = [
  "# Every address that this gallery has published. “publish” adds to it: keep it with the content, and delete no line.",
  "# Where no page is any more, “/studies/old/ -> /studies/new/” leads on, and “/studies/old/ withdrawn 2026-05-02 why” says why.",
];

/**
 * Reads the list of the content folder `root`, shown as `shown`; undefined where there is none. A line that cannot be read is
 * left out alone; one that stands twice, as after a merge, counts once.
 *
 * Problems: `address/file-size`, `address/line`, `address/two-leads`, `study/encoding`, and those of a file that cannot be read.
 */
export async function loadAddresses(root: string, shown: string): Promise<Outcome<AddressNotes>> {
  if ((await kindOf(join(root, addressFile))) === undefined) return { value: undefined, problems: [] };
  const { value: source, problems } = await readAddressList(root, shown);
  return source === undefined ? { value: undefined, problems } : parseAddresses(source);
}

/** Returns the list as it is on the disk, empty where there is none, or the problem because of which it cannot be read. */
export async function readAddressList(root: string, shown: string): Promise<Outcome<Source>> {
  const file = `${shown}/${addressFile}`;
  const read = await readRegular(root, addressFile, addressBytes);
  if ("bytes" in read) return readSource(file, read.bytes, addressBytes);
  if (read.kind === "missing") return { value: { file, text: "", lines: [] }, problems: [] };
  const problem = read.kind === "too large" ? tooManyAddresses(file) : describeFailure(file, read);
  return { value: undefined, problems: [problem] };
}

/** Returns the problem `address/file-size` of a list that has grown too large. */
export function tooManyAddresses(file: string): Problem {
  const reason = `The list of addresses has more than ${addressBytes / 1024 / 1024} MB, so that it is neither read nor added to.`;
  const hint = "Delete lines that nobody needs any more: those addresses will be dead.";
  return report("address/file-size", file, { reason, hint });
}

function parseAddresses(source: Source): {
  readonly value: AddressNotes;
  readonly problems: readonly Problem[];
} {
  const notes = new Map<string, AddressNote>();
  const problems: Problem[] = [];
  source.lines.forEach((text, index) => {
    const read = readAddressLine(text);
    if (read === undefined) return;
    const placeOf = (part: string, at = text.lastIndexOf(part)) =>
      [source, { line: index + 1, column: at + 1, length: part.length }] as const;
    if ("part" in read) {
      problems.push(reportIn("address/line", placeOf(read.part, read.at), { ...read }));
      return;
    }
    const { address, note } = read;
    const before = notes.get(address);
    notes.set(address, { ...note, ...before });
    if (before?.to === undefined || note.to === undefined || before.to === note.to) return;
    const reason = `${quoteText(address)} leads to ${quoteText(note.to)} here, and on a line above to ${quoteText(before.to)}, which counts.`;
    const hint = "Delete one of the two lines.";
    problems.push(reportIn("address/two-leads", placeOf(note.to), { reason, hint }, "warning"));
  });
  return { value: notes, problems };
}

/**
 * Returns the text of the list with `more` in it, each before the first line with a later address. What is there stays as it
 * is, but that an address without a note gets its own.
 */
export function addAddresses({ text, lines: old }: Source, more: AddressNotes): string {
  const lines = text === "" ? head : old.slice(0, old.at(-1) === "" ? -1 : undefined);
  const addressOf = (line: string): string | undefined => {
    const read = readAddressLine(line);
    return read !== undefined && "address" in read ? read.address : undefined;
  };
  const { value: known } = parseAddresses({ file: addressFile, text, lines });
  const isEmpty = (note: AddressNote): boolean => Object.keys(note).length === 0;
  const isNew = ([address, added]: readonly [string, AddressNote]): boolean => {
    const note = known.get(address);
    return isAddress(address) && (note === undefined || (isEmpty(note) && !isEmpty(added)));
  };
  const added = new Map([...more].filter(isNew).sort(([a], [b]) => compareText(a, b)));
  const fresh = [...added].map(([address, { to, withdrawn }]) => {
    const note = withdrawn === undefined ? "" : ` withdrawn ${withdrawn}`.trimEnd();
    return { address, line: to === undefined ? `${address}${note}` : `${address} -> ${to}` };
  });
  let at = 0;
  const whole: string[] = [];
  for (const line of lines) {
    const address = addressOf(line);
    for (
      let next = fresh[at];
      address !== undefined && next !== undefined && next.address <= address;
      next = fresh[at]
    ) {
      whole.push(next.line);
      at += 1;
    }
    if (address === undefined || !added.has(address)) whole.push(line);
  }
  return `${[...whole, ...fresh.slice(at).map(({ line }) => line)].join("\n")}\n`;
}
