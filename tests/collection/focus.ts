// Contact sheets of what is found as the focus on real flags, for a person to judge: each flag beside itself in pale
// grey with its focus in its own colours. `node --import tsx tests/collection/focus.ts FOLDER [EVERY [FROM]]` takes every
// EVERYth file of the two collections without the square copies, from the FROMth on, and writes sheets of 5 × 5.
import { mkdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import sharp from "sharp";
import { findHiddenCharge } from "../../src/analysis/drawing/hiddencharge.ts";
import { openDrawing } from "../../src/analysis/drawing/opendrawing.ts";
import { listCollection } from "./files.ts";

const [cellWidth, cellHeight, captionHeight] = [400, 150, 22];
const [columns, rows] = [4, 5];

const [folder = "focus", every = "5", from = "0"] = process.argv.slice(2);

/** One cell of a sheet: the flag, the flag with its focus, and what is said of it. */
async function drawCell(path: string): Promise<Buffer> {
  const bytes = readFileSync(path);
  const { value } = await openDrawing(path, bytes, { distance: 40 });
  if (value === undefined) return caption(`${basename(path)}: not opened`);
  const { map, ground, table } = value.inspection;
  const { width, height } = map;
  const hidden = await findHiddenCharge(value);
  const said =
    hidden === undefined ? "" : ` ask: ${hidden.element.name} ${hidden.element.attributes["id"] ?? ""}`;
  const share = ((100 * ground.focus.pixels) / ground.scene.areas.flagPixels).toFixed(2);
  const flag = await sharp(bytes, { density: 96, limitInputPixels: false })
    .resize(width, height, { fit: "fill" })
    .flatten({ background: "#ffffff" })
    .removeAlpha()
    .raw()
    .toBuffer();
  const shown = Buffer.from(flag);
  for (let at = 0; at < width * height; at += 1) {
    if (ground.focus.mask?.[at] === 1) continue;
    const light = 3 * flag.readUInt8(3 * at) + 6 * flag.readUInt8(3 * at + 1) + flag.readUInt8(3 * at + 2);
    const grey = 120 + Math.round(light / 32);
    shown.fill(grey, 3 * at, 3 * at + 3);
  }
  const raw = { width, height, channels: 3 } as const;
  const fit = { width: cellWidth / 2 - 6, height: cellHeight - captionHeight, fit: "inside" } as const;
  const [left, right] = await Promise.all(
    [flag, shown].map((picture) => sharp(picture, { raw }).resize(fit).png().toBuffer()),
  );
  const label = `${path.includes("4x3") ? "" : "+"}${basename(path, ".svg")} ${table.focus.source} ${share}%${said}`;
  process.stdout.write(`${label}\n`);
  return sharp(await caption(label))
    .composite([
      { input: left as Buffer, left: 2, top: captionHeight },
      { input: right as Buffer, left: cellWidth / 2, top: captionHeight },
    ])
    .png()
    .toBuffer();
}

function caption(text: string): Promise<Buffer> {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${cellWidth}" height="${cellHeight}"><rect width="100%" height="100%" fill="#9a9a9a"/><text x="3" y="16" font-family="sans-serif" font-size="15">${text}</text></svg>`;
  return sharp(Buffer.from(svg)).png().toBuffer();
}

mkdirSync(folder, { recursive: true });
const files = listCollection()
  .filter(({ name }) => !name.includes("1x1"))
  .filter((_, index) => index % Number(every) === Number(from))
  .slice(0, 100);
for (let first = 0; first < files.length; first += columns * rows) {
  const cells: Buffer[] = [];
  for (const { path } of files.slice(first, first + columns * rows)) cells.push(await drawCell(path));
  const sheet = join(folder, `${every}-${from}-${String(first).padStart(3, "0")}.png`);
  await sharp({
    create: { width: columns * cellWidth, height: rows * cellHeight, channels: 3, background: "#9a9a9a" },
  })
    .composite(
      cells.map((input, index) => ({
        input,
        left: (index % columns) * cellWidth,
        top: Math.floor(index / columns) * cellHeight,
      })),
    )
    .png()
    .toFile(sheet);
}
