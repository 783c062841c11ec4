import { expect, test } from "vitest";
import { loadVotes } from "../../../src/content/vote/loadvotes.ts";
import { series } from "../../publish/sample.ts";
import { inFolder } from "../rules/making.ts";

const head = "ballot,series,study,choice,why\n";
const line = (digit: string, choice: string) => `ballot ${digit.repeat(16)} quay second=${choice}\n`;

const load = (files: Readonly<Record<string, string | Uint8Array>>) =>
  inFolder(files, async (root) => {
    const { value, problems } = await loadVotes(root, "content", [series]);
    return {
      ids: value.map(({ ballots }) => ballots?.map(({ id }) => id[0])),
      told: problems.map(({ rule, file }) => [rule, file]),
    };
  });

test("no folder, no ballots", async () => {
  expect(await load({ "gallery.yaml": "" })).toEqual({ ids: [undefined], told: [] });
});

test("files of a series in the order of their names; whatever is bad is named, and the series stays", async () => {
  const files = {
    "votes/quay/b.TXT": line("1", "original") + line("2", "neither"),
    "votes/quay/a.csv": `${head}${"2".repeat(16)},quay,second,redesign,`,
    "votes/quay/.DS_Store": "",
    "votes/quay/hands.xlsx": "",
    "votes/quay/large.csv": head + line("3", "original").repeat(2000),
    "votes/quay/link.csv": "→b.TXT",
    "votes/quay/picture.csv": new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0xff]),
    "votes/quay/deeper.csv/a.csv": head,
    "votes/quai/a.csv": head,
    "votes/loose.csv": head,
    "votes/broken/a.csv": head,
    "series/broken.md": "",
  };
  expect(await load(files)).toEqual({
    // Of ballot 2 nobody knows what was chosen.
    ids: [["1"]],
    told: [
      ["vote/file-name", "content/votes/loose.csv"],
      ["vote/unknown-series", "content/votes/quai"],
      ["vote/ballot-contradicted", "content/votes/quay/b.TXT"],
      ["study/not-a-file", "content/votes/quay/deeper.csv"],
      ["vote/file-name", "content/votes/quay/hands.xlsx"],
      ["vote/file-size", "content/votes/quay/large.csv"],
      ["study/link", "content/votes/quay/link.csv"],
      ["study/encoding", "content/votes/quay/picture.csv"],
    ],
  });
});
