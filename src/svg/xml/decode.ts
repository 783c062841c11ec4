// Floor 2, part of step 1. Bytes of a file → its text, or what they are instead.
import type { Place } from "../../problem/problem.ts";
import { limit } from "../gate/drawinglimit.ts";

/** Returns the text of `bytes` with LF line ends; undefined where they are no UTF-8; empty past the cap on bytes. */
export function decodeText(bytes: Uint8Array): string | undefined {
  if (bytes.length > limit.fileBytes) return "";
  try {
    const text = new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return text.replace(/\r\n?/g, "\n");
  } catch {
    return undefined;
  }
}

/** Why bytes cannot be read as XML; `text` is what decodeText made of them. Undefined where they can be tried. */
export function refuseBytes(
  bytes: Uint8Array,
  text: string | undefined,
):
  | { readonly rule: string; readonly place?: Place; readonly reason: string; readonly hint: string }
  | undefined {
  if (bytes.length > limit.fileBytes) {
    const reason = `The drawing has ${bytes.length} bytes; at most ${limit.fileBytes} are read.`;
    const hint = "Simplify the paths in a drawing program, or save without its private data.";
    return { rule: "svg/too-big", reason, hint };
  }
  const other = identifyOther(bytes);
  if (other !== undefined) {
    const reason = `The file is ${other.name}, not an SVG drawing.`;
    return { rule: "svg/encoding", reason, hint: other.hint };
  }
  if (text === undefined) {
    const hint = "Save it as a plain SVG in UTF-8.";
    return { rule: "svg/encoding", reason: "The file is not UTF-8 text.", hint };
  }
  if (text.trim() !== "") return undefined;
  const place = { line: 1, column: 1 };
  return { rule: "svg/empty", place, reason: "The file is empty.", hint: "Export the drawing again." };
}

/** What a file is that is no SVG, and what to do with it. */
export interface OtherKind {
  readonly name: string;
  readonly hint: string;
}

/**
 * Returns what `bytes` are by how they begin, or undefined where they may be an SVG drawing.
 *
 * Source: RFC 1952, 2.3.1 (gzip); PNG, third edition, 5.2; ISO/IEC 10918-1, B.1.1.3 (JPEG: SOI and a marker); GIF89a, 17;
 * RFC 9649, 2.4 (WebP); ISO 32000-1, 7.5.2 (PDF).
 */
export function identifyOther(bytes: Uint8Array): OtherKind | undefined {
  return otherKinds.find(
    ({ begin, eighth }) =>
      begin.every((byte, at) => bytes[at] === byte) &&
      (eighth === undefined || bytesOf(eighth).every((byte, at) => bytes[8 + at] === byte)),
  );
}

const trace = "Draw it again with shapes, or trace it in a drawing program, and export that as SVG.";

const otherKinds: readonly (OtherKind & { readonly begin: readonly number[]; readonly eighth?: string })[] = [
  {
    begin: [0x1f, 0x8b],
    name: "a compressed file (.svgz)",
    hint: "Unpack it, or save it as a plain SVG in UTF-8.",
  },
  { begin: [0x89, 0x50, 0x4e, 0x47], name: "a PNG picture", hint: trace },
  { begin: [0xff, 0xd8, 0xff], name: "a JPEG picture", hint: trace },
  { begin: bytesOf("GIF8"), name: "a GIF picture", hint: trace },
  { begin: bytesOf("RIFF"), eighth: "WEBP", name: "a WebP picture", hint: trace },
  {
    begin: bytesOf("%PDF-"),
    name: "a PDF document",
    hint: "Open it in a drawing program and export it as SVG.",
  },
];

function bytesOf(text: string): readonly number[] {
  return [...new TextEncoder().encode(text)];
}
