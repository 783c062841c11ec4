import { expect, test } from "vitest";
import { openLogo } from "../../../src/analysis/drawing/openlogo.ts";
import { bytesOf } from "../../svg/drawing.ts";

const svg = (body: string, viewBox = "0 0 60 40"): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${viewBox}">${body}</svg>`;
const disc = '<circle cx="30" cy="20" r="18" fill="#c8202f"/>';
const open = async (text: string) => {
  const { value, problems } = await openLogo("logo.svg", bytesOf(text));
  return { value, told: problems.map(({ rule, severity, file }) => [rule, severity, file]) };
};

test("a logo comes back as we write it, with its size; what is written again is the same", async () => {
  const { value, told } = await open(
    svg(`<style>circle{fill:#c8202f}</style><circle cx="30" cy="20" r="18"/>`),
  );
  expect(told).toEqual([]);
  expect(value).toEqual({ drawing: `${svg(disc)}\n`, width: 60, height: 40 });
  expect((await open(value?.drawing ?? "")).value).toEqual(value);
});

test("it may have colours that are too uneven to be measured, and parts that nobody sees on a flag", async () => {
  const stops = '<stop stop-color="#000"/><stop offset="1" stop-color="#fff"/>';
  const gradient = `<linearGradient id="a">${stops}</linearGradient><path fill="url(#a)" d="M0 0h60v40H0z"/>`;
  expect((await open(svg(gradient))).told).toEqual([]);
  expect((await open(svg('<path fill="#000" d="M0 0h.02v40H0z"/>'))).told).toEqual([]);
});

test("what shows nothing, or would look otherwise, is no logo", async () => {
  const blur =
    '<filter id="b"><feGaussianBlur stdDeviation="15"/></filter><g filter="url(#b)"><path d="M20 0h20v40H20z"/></g>';
  const refused = {
    "study/nothing-drawn": svg(""),
    "study/effect": svg(blur),
    "svg/doctype": `<!DOCTYPE svg [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]>${svg(disc)}`,
    "svg/reference": svg('<use href="https://flags.example/a.svg#b"/>'),
    "svg/not-well-formed": "<svg",
  };
  for (const [rule, text] of Object.entries(refused)) {
    const { value, told } = await open(text);
    expect(value, rule).toBeUndefined();
    expect(told).toContainEqual([rule, "error", "logo.svg"]);
  }
});
