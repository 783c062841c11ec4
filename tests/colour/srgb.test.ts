// The curve of sRGB against the standards' text, byte by byte and between bytes.
import { expect, test } from "vitest";
import { encodeByte, linearOfByte } from "../../src/colour/srgb.ts";
import { decode, encode } from "../reference/srgb.ts";

test("every byte has the linear light of the standard, within 1e-15, and comes back", () => {
  expect(linearOfByte).toHaveLength(256);
  for (const [byte, linear] of linearOfByte.entries()) {
    expect(Math.abs(linear - decode(byte / 255))).toBeLessThan(1e-15);
    expect(encodeByte(linear)).toBe(byte);
  }
});

test("linear light between bytes goes to the nearest", () => {
  for (let step = 0; step <= 1000; step++)
    expect(encodeByte(step / 1000)).toBe(Math.round(encode(step / 1000) * 255));
});
