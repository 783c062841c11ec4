// Floor 9. Maps, tables and the ruler of a study → what lies where. `unit` is a fortieth of the picture's height.
import type { RulerView } from "../../views/study/contrastruler.ts";
import type { EdgeMapView, LocatorView } from "../../views/study/edgemap.ts";
import type { Say } from "../../words/say.ts";
import { ink } from "./paper.ts";
import { type Box, drawBox, fitSource, type SceneItem, type SceneText, type Source } from "./picturescene.ts";

/** Text of a line, a fortieth high. */
export function label(
  text: string,
  x: number,
  y: number,
  unit: number,
  width: number,
  more: Partial<SceneText> = {},
): SceneText {
  return {
    kind: "text",
    text,
    x,
    y,
    pixels: 1.1 * unit,
    family: "sans",
    anchor: "start",
    width,
    most: 1.6 * unit,
    ...more,
  };
}

/** The edge map of one side: the flag in pale grey, its lines over it. */
export function arrangeMap(map: EdgeMapView, side: 0 | 1, ground: Source, room: Box): readonly SceneItem[] {
  const box = fitSource(ground, room);
  const paths = new Map(map.shapes.map(({ id, path }) => [id, path]));
  const lines = map.panels[side].lines;
  const draw = (style: string, id: string) => `<path d="${paths.get(id) ?? ""}" ${style}/>`;
  const strokes = { strong: 14, clear: 7, soft: 7, weak: 7, merged: 6 };
  const dashes = {
    strong: "",
    clear: "",
    soft: ' stroke-dasharray="30 18"',
    weak: ' stroke-dasharray="7 20"',
    merged: ' stroke-dasharray="6 32"',
  };
  const over = [
    map.band && drawBand(map),
    ...lines.map(({ id, grade }) => draw(`stroke-width="${strokes[grade]}"${dashes[grade]}`, id)),
  ].join("");
  return [
    drawBox(box, ink.paper),
    { kind: "flag", source: ground, ...box, opacity: 0.2 },
    {
      kind: "shape",
      svg: `<svg x="${box.x}" y="${box.y}" width="${box.width}" height="${box.height}" viewBox="0 0 ${map.width} ${map.height}" preserveAspectRatio="none"><g fill="none" stroke="${ink.text}" stroke-linejoin="round">${over}</g></svg>`,
    },
  ];
}

/** As on the page: outside what has to be seen alone. */
function drawBand({ band, width, height }: EdgeMapView): string {
  return `<clipPath id="band"><path clip-rule="evenodd" d="M0 0H${width}V${height}H0Z${band}"/></clipPath><path d="${band}" clip-path="url(#band)" stroke-width="44" opacity="0.22"/>`;
}

export function arrangeLocator(
  { width, height, path, frame: { x, y, ...size } }: LocatorView,
  ground: Source,
  room: Box,
): readonly SceneItem[] {
  const box = fitSource(ground, room);
  return [
    drawBox(box, "#ffffff"),
    { kind: "flag", source: ground, ...box, opacity: 0.35 },
    {
      kind: "shape",
      svg: `<svg x="${box.x}" y="${box.y}" width="${box.width}" height="${box.height}" viewBox="0 0 ${width} ${height}" preserveAspectRatio="none"><g fill="none" stroke-linejoin="round"><path d="${path}" stroke="#ffffff" stroke-width="18"/><path d="${path}" stroke="#000000" stroke-width="8"/><rect x="${x}" y="${y}" width="${size.width}" height="${size.height}" stroke="#000000" stroke-width="5"/></g></svg>`,
    },
  ];
}

/** Rows from ring to dot on one axis. It runs from the left in every language. */
export function arrangeRuler(
  { rows, bands, ticks }: RulerView,
  box: Box,
  unit: number,
  say: Say,
): readonly SceneItem[] {
  const axis = { x: box.x + 0.34 * box.width, width: 0.4 * box.width };
  const along = (percent: number) => round(axis.x + (percent / 100) * axis.width);
  const head = 4 * unit;
  const row = Math.min((box.height - head) / rows.length, 5 * unit);
  const begin = box.y + head;
  const end = begin + row * rows.length;
  const steps = ticks.map(
    ({ x, isClear }) =>
      `<path d="M${along(x)} ${round(begin)}V${round(end)}" stroke="${isClear ? ink.quiet : ink.line}" stroke-width="${round(0.06 * unit)}"/>`,
  );
  const centred = { anchor: "middle" } as const;
  return [
    { kind: "shape", svg: steps.join("") },
    ...bands.map(({ name, middle }) => label(name, along(middle), box.y, 0.95 * unit, axis.width, centred)),
    ...ticks.map(({ x, text }) =>
      label(text, along(x), box.y + 1.9 * unit, 0.95 * unit, axis.width, { ...centred, isQuiet: true }),
    ),
    ...rows.flatMap((one, at): readonly SceneItem[] => {
      const y = begin + (at + 0.5) * row;
      const { edge } = one;
      const moved =
        edge.before === undefined || edge.before.contrast === edge.after.contrast
          ? edge.after.contrast
          : say("still.move", { before: edge.before.contrast, after: edge.after.contrast });
      const write = (text: string, x: number, line: number, width: number, isQuiet = false) =>
        label(text, x, y + line * unit, unit, width, { isQuiet });
      return [
        { kind: "shape", svg: drawTrack(one, along, y, unit) },
        write(edge.called ?? nameSides(edge.sides, say), box.x, -1.5, 0.31 * box.width),
        write(edge.length, box.x, 0.1, 0.31 * box.width, true),
        write(moved, box.x + 0.77 * box.width, -1.5, 0.23 * box.width),
        write(edge.outcome, box.x + 0.77 * box.width, 0.1, 0.23 * box.width, true),
      ];
    }),
  ];
}

/** `navy / black to gold`. */
function nameSides(sides: RulerView["rows"][number]["edge"]["sides"], say: Say): string {
  return sides
    .map(([before, after]) => (after === undefined ? before : say("still.move", { before, after })))
    .join(" / ");
}

function drawTrack(
  { ring, dot, hollow, thickness, radius }: RulerView["rows"][number],
  along: (percent: number) => number,
  middle: number,
  unit: number,
): string {
  const y = round(middle);
  const scale = unit / 22;
  const stroke = `stroke="${ink.text}"`;
  const thick = round(Math.max(2, thickness * scale));
  const draw = (colour: string, width: number) =>
    `<path d="M${along(ring ?? 0)} ${y}H${along(dot ?? 0)}" stroke="${colour}" stroke-width="${width}"/>`;
  const within = hollow === undefined ? "" : draw(ink.paper, round(hollow * scale));
  const line = ring === undefined ? "" : `${draw(ink.text, thick)}${within}`;
  const was =
    ring === undefined
      ? ""
      : `<circle cx="${along(ring)}" cy="${y}" r="${round(Math.max(6, 1.3 * radius.ring) * scale)}" fill="${ink.paper}" ${stroke} stroke-width="${round(2 * scale)}"/>`;
  const size = round(0.4 * unit);
  const is =
    dot === undefined
      ? `<path d="M${along(0) - size} ${y - size}l${2 * size} ${2 * size}m0 ${-2 * size}l${-2 * size} ${2 * size}" ${stroke} stroke-width="${round(2.5 * scale)}"/>`
      : `<circle cx="${along(dot)}" cy="${y}" r="${round(Math.max(5, 1.2 * radius.dot) * scale)}" fill="${ink.text}" stroke="${ink.paper}" stroke-width="${round(1.5 * scale)}"/>`;
  return `${line}${was}${is}`;
}

function round(pixels: number): number {
  return Math.round(pixels * 10) / 10;
}
