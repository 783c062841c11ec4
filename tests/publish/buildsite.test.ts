import { readFile } from "node:fs/promises";
import path from "node:path";
import { expect, test } from "vitest";
import { buildSite } from "../../src/publish/buildsite.ts";
import { OutputError } from "../../src/publish/folder/diskfailure.ts";
import { plainFormat } from "../../src/words/format.ts";
import { makeContent, makeLargerContent, writeContent, writeStudy } from "../faults/gallery.ts";
import { checkWhole, readListed } from "../faults/whole.ts";
import { openKept } from "../kept.ts";
import { makeRoom } from "./room.ts";

const pathsOf = (site: string) => readListed(site).files.map((file) => file.path);

test("a content folder is published whole, a bad study named, its last good page kept; what is deleted is gone with the next", async () => {
  const room = await makeRoom();
  const [content, site] = [path.join(room, "content"), path.join(room, "_site")];
  await writeContent(content, makeLargerContent());
  const first = await buildSite(content, site, { store: await openKept() });
  expect([first.result.studies.length, first.swapped]).toEqual([3, { way: "renamed" }]);
  checkWhole(site);
  expect(pathsOf(site)).toContain("studies/slack-water/index.html");

  const bad = writeStudy({ title: "Bad", replace: "#123456", change: "#ffffff" });
  await writeContent(content, { ...makeContent(), "studies/low-tide/study.md": bad });
  const second = await buildSite(content, site, { store: await openKept() });
  expect(
    second.result.problems.map(({ file, severity }) => [path.relative(content, file), severity]),
  ).toContainEqual(["studies/low-tide/study.md", "error"]);
  checkWhole(site);
  expect(pathsOf(site).filter((file) => /^studies\/[^/]+\/index\.html$/.test(file))).toEqual([
    "studies/low-tide/index.html",
    "studies/noon-gun/index.html",
  ]);
  expect(second.kept).toEqual(["low-tide"]);
  expect(await readFile(path.join(site, "studies/low-tide/index.html"), "utf8")).toContain(
    plainFormat.say("moved.lastGood"),
  );
  expect(await readFile(path.join(site, "index.html"), "utf8")).not.toContain("Slack water");
});

test("into its own content nothing is written", async () => {
  const content = path.join(await makeRoom(), "content");
  await writeContent(content, makeContent());
  await expect(buildSite(content, path.join(content, "studies"))).rejects.toThrow(OutputError);
});
