// Floor 2, part of step 1. Bytes of a file → its text.
import { limit } from "./limit.ts";

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

/** Returns whether `bytes` begin as gzip does (RFC 1952, 2.3.1). */
export function isGzip(bytes: Uint8Array): boolean {
  return bytes[0] === 0x1f && bytes[1] === 0x8b;
}
