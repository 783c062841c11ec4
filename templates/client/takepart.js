// The page `/take-part/`: a drawing from the reader's disk, a change of one colour, what it does to the contrasts, and the
// text of a study. Nothing leaves the page but by the reader's own letter.

import { measureReflectance } from "../../src/colour/cloth.ts";
import { gradeOf, measureContrast } from "../../src/colour/contrast.ts";
import { linearOfCode } from "../../src/colour/srgb.ts";
import { svgNamespace } from "../../src/svg/gate/allowlist.ts";
import { limit } from "../../src/svg/gate/drawinglimit.ts";
import { copyDrawing, hexOf, listColours, readDrawing, replaceColour } from "./drawing.js";

const bench = document.querySelector(".part-bench");
const find = (selector) => bench.querySelector(selector);
const said = find(".part-said");
const wrong = find(".part-wrong");
const marks = find(".part-marks");
const study = find(".part-study");
const send = document.querySelector(".part-send");
const cloth = { black: Number(bench.dataset.black), white: Number(bench.dataset.white) };
const numbers = new Intl.NumberFormat(document.documentElement.lang, { maximumFractionDigits: 0 });
const mostColours = 12;
/** The file that is shown, and the colours that it shows. */
let root;
let colours = [];

/** Each new file puts the one before it away, also where it cannot be shown. */
async function open([file]) {
  root = undefined;
  find(".part-work").hidden = true;
  if (file === undefined) {
    said.textContent = "";
    return;
  }
  const state = file.size > limit.fileBytes ? "tooBig" : read(await file.text());
  said.textContent = said.dataset[state];
  if (state !== "chosen") return;
  find("#part-replace").replaceChildren(...colours.map((hex) => new Option(hex, hex)));
  find(".part-work").hidden = false;
  show();
}

function read(text) {
  const found = readDrawing(text);
  if (found === undefined) return "broken";
  try {
    colours = listColours(copyDrawing(found, "part-"));
  } catch (error) {
    if (error instanceof RangeError) return "endless";
    throw error;
  }
  if (colours.length === 0) return "colourless";
  root = found;
  return "chosen";
}

/** The colour that comes in, as the study writes it and as it is drawn; undefined for one that is none. */
function readChange() {
  const before = find("#part-replace").value;
  const typed = find("#part-typed").value.trim();
  const [chosen] = find("#part-with").selectedOptions;
  const after = typed === "" ? chosen?.dataset.hex : hexOf(typed);
  const state = after === undefined ? "unknown" : after === before ? "same" : undefined;
  wrong.textContent = state === undefined ? "" : wrong.dataset[state];
  return state === undefined ? { before, after, word: typed === "" ? chosen.value : after } : undefined;
}

function show() {
  if (root === undefined) return;
  const change = readChange();
  for (const mat of bench.querySelectorAll(".part-mat")) {
    const copy = copyDrawing(root, `part-${mat.dataset.side}-`);
    if (change && mat.dataset.side === "after") replaceColour(copy, change.before, change.after);
    mat.replaceChildren(copy);
  }
  showMarks(change);
  showStudy(change);
}

function showMarks(change) {
  const some = colours.slice(0, mostColours);
  find(".part-more").hidden = some.length === colours.length;
  const turn = (hex) => (hex === change?.before ? change.after : hex);
  const rows = some.flatMap((one, at) =>
    some.slice(at + 1).map((other) => {
      const row = document.createElement("tr");
      const head = document.createElement("th");
      head.scope = "row";
      head.append(pair(one, other));
      const isMoved = turn(one) !== one || turn(other) !== other;
      const after = isMoved ? [pair(turn(one), turn(other)), " "] : [];
      row.append(head, cell(mark(one, other)), cell(...after, mark(turn(one), turn(other))));
      return row;
    }),
  );
  marks.tBodies[0].replaceChildren(...rows);
}

function cell(...content) {
  const made = document.createElement("td");
  made.append(...content);
  return made;
}

function mark(one, other) {
  const [a, b] = [one, other].map((hex) =>
    measureReflectance(linearOfCode(Number.parseInt(hex.slice(1), 16)), cloth),
  );
  const contrast = measureContrast(a, b);
  return `${numbers.format(contrast)} ${marks.dataset[gradeOf(contrast)]}`;
}

/** Two colours, shown and named. */
function pair(...hexes) {
  const made = document.createElement("span");
  made.dir = "ltr";
  made.append(...hexes.flatMap((hex) => [" ", nameColour(hex)]));
  return made;
}

function nameColour(hex) {
  const named = document.createElement("span");
  named.className = "part-colour";
  const swatch = document.createElementNS(svgNamespace, "svg");
  swatch.setAttribute("viewBox", "0 0 1 1");
  swatch.setAttribute("aria-hidden", "true");
  const square = document.createElementNS(svgNamespace, "rect");
  for (const [name, value] of Object.entries({ width: 1, height: 1, fill: hex }))
    square.setAttribute(name, value);
  swatch.append(square);
  named.append(swatch, hex);
  return named;
}

function showStudy(change) {
  const [title, flag, author] = ["title", "flag", "author"].map((name) =>
    find(`#part-${name}`).value.replace(/\s+/g, " ").trim(),
  );
  const why = find("#part-why").value.trim();
  const isReady = change !== undefined && title !== "" && why !== "";
  const ready = find(".part-ready");
  ready.textContent = isReady ? ready.dataset.ready : ready.dataset.untitled;
  find(".part-result").hidden = !isReady;
  if (!isReady) return;
  // JSON's strings are strings of YAML too.
  const keys = [
    `title: ${JSON.stringify(title)}`,
    ...(flag === "" ? [] : [`flag: ${JSON.stringify(flag)}`]),
    "original: original.svg",
    `change: { replace: ${JSON.stringify(change.before)}, with: ${JSON.stringify(change.word)} }`,
    ...(author === "" ? [] : [`authors: [${JSON.stringify(author)}]`]),
  ];
  study.textContent = ["---", ...keys, "---", why, ""].join("\n");
  // A letter ends its lines with both signs. Source: RFC 6068, section 5.
  const text = study.textContent.replaceAll("\n", "\r\n");
  send.href = send.dataset.template.replace(send.dataset.mark, () =>
    encodeURIComponent(text.toWellFormed?.() ?? text),
  );
}

find("#part-file").addEventListener("change", ({ target }) => open(target.files));
find(".part-work").addEventListener("input", ({ target }) => {
  if (/^part-(?:replace|with|typed)$/.test(target.id)) show();
  else showStudy(readChange());
});
find(".part-copy").addEventListener("click", async () => {
  const copied = find(".copied");
  copied.textContent = "";
  const isDone = await navigator.clipboard?.writeText(study.textContent).then(
    () => true,
    () => false,
  );
  copied.textContent = isDone ? copied.dataset.copied : copied.dataset.refused;
});
bench.hidden = false;
document.querySelector(".part-unscripted").hidden = true;
