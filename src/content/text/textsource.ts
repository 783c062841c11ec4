// Floor 5. Bytes of a contributed text file → lines of text, or the reason why they are no text.
import { join } from "node:path";
import { locate } from "../../problem/locate.ts";
import {
  type Advice,
  type Outcome,
  type Place,
  type Problem,
  report,
  type Severity,
} from "../../problem/problem.ts";
import { describeFailure, type FileFailure } from "../disk/filefailure.ts";
import { kindOf, readRegular } from "../disk/readfile.ts";

/** Largest study.md or gallery.yaml, in bytes. */
export const textFileBytes = 64 * 1024;

/** Advice, with the place that it found, or a part of one. */
type FoundAdvice = Pick<Advice, "reason"> & Partial<Advice & Place>;

/** A text file: BOM removed, every line end `\n`. `lines[0]` is line 1. */
export interface Source {
  readonly file: string;
  readonly text: string;
  readonly lines: readonly string[];
}

/**
 * Returns the text of `bytes`, or a problem: `study/file-size` over `most` bytes, 64 KB unless told otherwise, `study/encoding` where it is not UTF-8
 * (place: the line of the first wrong byte).
 */
export function readSource(file: string, bytes: Uint8Array, most = textFileBytes): Outcome<Source> {
  if (bytes.length > most) return { value: undefined, problems: [tooLarge(file, bytes.length)] };
  const text = decode(bytes);
  if (text === undefined) return { value: undefined, problems: [notUtf8(file, bytes)] };
  const plain = text.replace(/\r\n?/g, "\n");
  return { value: { file, text: plain, lines: plain.split("\n") }, problems: [] };
}

/** Reads a text file that may be absent, `inner` in the content folder `root`, shown as `shown`: then neither text nor problem. */
export async function readOptional(root: string, inner: string, shown: string): Promise<Outcome<Source>> {
  if ((await kindOf(join(root, inner))) === undefined) return { value: undefined, problems: [] };
  const file = `${shown}/${inner}`;
  const read = await readRegular(root, inner, textFileBytes);
  if ("kind" in read) return { value: undefined, problems: [describeTextFailure(file, read)] };
  return readSource(file, read.bytes);
}

/** Returns the problem of a text file that could not be read. */
export function describeTextFailure(file: string, failure: FileFailure): Problem {
  return failure.kind === "too large" ? tooLarge(file, failure.size) : describeFailure(file, failure);
}

/** Returns the problem of a text file that has `size` bytes, more than the 64 KB it may have. */
function tooLarge(file: string, size: number): Problem {
  return {
    rule: "study/file-size",
    severity: "error",
    file,
    reason: `The file has ${Math.ceil(size / 1024)} KB; a study file may have 64 KB.`,
    hint: "Shorten the prose, or keep the long version elsewhere and link to it.",
  };
}

/**
 * Returns the problem of `rule` in a text, with the line that it stands in. The place is that of the advice where it has one
 * of its own, as a slip in a line has.
 */
export function reportIn(
  rule: string,
  [source, place]: readonly [Source, Place],
  { reason, hint, line = place.line, column = place.column, length = place.length }: FoundAdvice,
  severity: Severity = "error",
): Problem {
  const own = { line, column, ...(length === undefined ? {} : { length }) };
  const at = { file: source.file, ...locate(source.lines[line - 1] ?? "", own) };
  return report(rule, at, hint === undefined ? { reason } : { reason, hint }, severity);
}

function decode(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

function notUtf8(file: string, bytes: Uint8Array): Problem {
  const hint = "Save the file again with the encoding UTF-8.";
  const base = { rule: "study/encoding", severity: "error", file, hint } as const;
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    return { ...base, reason: "The file is in UTF-16, not in UTF-8." };
  }
  const bad = findWrongByte(bytes);
  const before = new TextDecoder().decode(bytes.subarray(0, bad)).split(/\r\n?|\n/);
  const end = bytes.findIndex((byte, index) => index >= bad && (byte === 0x0a || byte === 0x0d));
  const rest = new TextDecoder().decode(bytes.subarray(bad, end === -1 ? bytes.length : end));
  const lead = before.at(-1) ?? "";
  const byte = (bytes[bad] ?? 0).toString(16).padStart(2, "0");
  return {
    ...base,
    ...locate(lead + rest, { line: before.length, column: lead.length + 1 }),
    reason: `The file is not UTF-8: byte 0x${byte} stands where a letter should.`,
  };
}

/** Returns the index of the first byte that does not begin a whole UTF-8 character. Source: RFC 3629, section 3. */
function findWrongByte(bytes: Uint8Array): number {
  let index = 0;
  while (index < bytes.length) {
    const lead = bytes[index] ?? 0;
    const length = lead < 0x80 ? 1 : lead < 0xc2 ? 0 : lead < 0xe0 ? 2 : lead < 0xf0 ? 3 : 4;
    if (length === 0 || decode(bytes.subarray(index, index + length)) === undefined) break;
    index += length;
  }
  return index;
}
