// Floor 5. The figures that an author may ask for in prose, and how a line asks for one.
import { findNearest } from "../../problem/knownword.ts";

/** Figures that the prose of one study shows (our own judgement): each may be a picture of every change. */
export const mostFigures = 20;

/** Called as their captions call them. `edge` is asked for by its two colours. */
export const figureKinds = [
  "original",
  "redesign",
  "true size",
  "edge map",
  "contrast ruler",
  "distance strip",
  "lasts to",
  "seen otherwise",
  "matrix",
  "gain chart",
] as const;

export type FigureKind = (typeof figureKinds)[number];

/** Names of old that are still read. */
const formerKinds: Readonly<Record<string, FigureKind>> = { "reflectance scale": "contrast ruler" };

/** What a figure line asks for. */
export type AskedFigure =
  | { readonly kind: "edge"; readonly edge: string }
  | { readonly kind: FigureKind; readonly edge?: never };

/** Returns what a line asks for, `::figure{edge="white / red"}` or `::figure{kind="edge map"}`, or undefined where it cannot be read. */
export function readFigure(line: string): AskedFigure | undefined {
  const edge = /^::figure\{edge="([^"]+)"\}$/.exec(line)?.[1];
  if (edge !== undefined) return { kind: "edge", edge };
  const written = readKind(line)?.trim().toLowerCase() ?? "";
  const kind =
    figureKinds.find((known) => known === written) ??
    (Object.hasOwn(formerKinds, written) ? formerKinds[written] : undefined);
  return kind && { kind };
}

/** A drawing that a line of a page shows: `/flags/harbour.svg`, or a file in the page's folder. */
export interface AskedDrawing {
  readonly drawing: string;
  readonly caption?: string;
}

/** Returns the drawing that a line `::figure{drawing="/flags/harbour.svg" caption="As it was"}` asks for, or undefined where it cannot be read. */
export function readDrawingLine(line: string): AskedDrawing | undefined {
  const [, drawing, caption] = /^::figure\{drawing="([^"]+)"(?: caption="([^"]+)")?\}$/.exec(line) ?? [];
  return drawing === undefined ? undefined : { drawing, ...(caption === undefined ? {} : { caption }) };
}

/** Returns the slug that a line `::study{harbour-wheel}` asks for, or undefined where it cannot be read. */
export function readStudyLine(line: string): string | undefined {
  const slug = /^::study\{([^{}]*)\}$/.exec(line)?.[1]?.replaceAll('"', "").trim();
  return slug === "" ? undefined : slug;
}

/** Returns the kind that a line asks for as it is written, known or not, or undefined where it asks for none. */
export function readKind(line: string): string | undefined {
  return /^::figure\{kind="([^"]+)"\}$/.exec(line)?.[1];
}

/** Returns the kind that a wrong one most likely stands for: its name of old, a near spelling, or a part of the name. */
export function findKind(written: string): FigureKind | undefined {
  const plain = written.trim().toLowerCase();
  if (/^reads?(?: to)?$/.test(plain)) return "lasts to";
  if (/^(?:reflectance|scale)\b/.test(plain)) return "contrast ruler";
  const near = findNearest(plain, figureKinds);
  return figureKinds.find(
    (kind) => kind === near || (near === undefined && plain.length > 2 && kind.split(" ").includes(plain)),
  );
}

/** Whether a figure has something to show. `edges`: whether the flags have any; `focus`: whether there is one. */
export function canShow(
  kind: FigureKind,
  has: { readonly edges: boolean; readonly focus: boolean },
): boolean {
  if (kind === "lasts to") return has.edges && has.focus;
  return (
    has.edges || !["edge map", "contrast ruler", "distance strip", "matrix", "gain chart"].includes(kind)
  );
}
