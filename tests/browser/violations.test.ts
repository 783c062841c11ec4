// What axe is asked in each look of a page is enough to see what can go wrong in that look alone.
import { expect, test } from "vitest";
import { shareBrowser } from "./room.ts";
import { listViolations } from "./violations.ts";

const page = (body: string): string =>
  `<!doctype html><html lang="en"><head><title>Flags</title></head><body><main><h1>Flags</h1>${body}</main></body></html>`;
const sound = page("<p>A dark wheel on white.</p>");
const faint = page('<p style="color: #ccc">A dark wheel on white.</p>');
const tiny = page(
  '<p style="font-size: 4px"><button style="all: unset; font-size: 4px">a</button><button style="all: unset; font-size: 4px">b</button></p>',
);
const nameless = page('<img src="data:,">');

test.each([
  ["faint words", faint, { colours: ["color-contrast"], layout: [], all: ["color-contrast"] }],
  ["buttons too small for a finger", tiny, { colours: [], layout: ["target-size"], all: ["target-size"] }],
  ["a picture without words", nameless, { colours: [], layout: [], all: ["image-alt"] }],
  ["nothing wrong", sound, { colours: [], layout: [], all: [] }],
] as const)("%s", async (_, html, expected) => {
  const opened = await (await shareBrowser()).newPage();
  await opened.setContent(html);
  const rulesIn = (found: readonly string[]) => found.map((line) => line.split(":")[0]);
  const found = {
    colours: rulesIn(await listViolations(opened, "colours")),
    layout: rulesIn(await listViolations(opened, "layout")),
    all: rulesIn(await listViolations(opened)),
  };
  await opened.close();
  expect(found).toEqual(expected);
});
