// The command slice: how it is called, what it says, and that publish finds all that the slices of a gallery kept.
import { cp, readdir, rm } from "node:fs/promises";
import { join } from "node:path";
import { expect, test, vi } from "vitest";
import { Child } from "../../src/analysis/jobs/childprocess.ts";
import { Store } from "../../src/analysis/store/resultstore.ts";
import { makeFolder } from "../content/folder.ts";
import { makeContent, writeSettings } from "../faults/gallery.ts";
import { makeDivided } from "../slices/gallery.ts";
import { readSite } from "../slices/site.ts";
import { runHere } from "./run.ts";

vi.setConfig({ testTimeout: 120_000 });

/** Runs a command, and says which jobs children were given meanwhile, by kind. */
async function runCounting(root: string, ...words: readonly string[]) {
  const kinds: string[] = [];
  const give = Child.prototype.give;
  const spy = vi.spyOn(Child.prototype, "give").mockImplementation(function (this: Child, waiting) {
    kinds.push(waiting.request.kind);
    give.call(this, waiting);
  });
  const said = await runHere(root, ...words).finally(() => spy.mockRestore());
  return { ...said, kinds: kinds.sort() };
}

/** Makes all slices of the gallery in `root`, each in a folder of its own under `kept`. */
async function sliceAll(root: string, count: number): Promise<readonly number[]> {
  const statuses = [];
  for (let index = 1; index <= count; index += 1) {
    const slice = `${index}/${count}`;
    statuses.push((await runHere(root, "slice", slice, "content", "--cache", `kept/${index}`)).status);
  }
  return statuses;
}

const merge = async (root: string, count: number): Promise<void> => {
  for (let index = 1; index <= count; index += 1)
    await cp(join(root, `kept/${index}`), join(root, "merged"), { recursive: true });
};

test("the site from four merged folders has the bytes of a single build, and nothing is measured or drawn again", async () => {
  const root = await makeFolder(makeDivided());
  expect((await runHere(root, "publish", "--out", "single", "--cache", "off")).status).toBe(1);
  // The third is the broken study, the fourth the draft.
  expect(await sliceAll(root, 4)).toEqual([0, 0, 1, 0]);
  await merge(root, 4);
  const publish = () => runCounting(root, "publish", "--out", "site", "--cache", "merged");
  const { kinds, status } = await publish();
  // The broken study is tried again, for its message; and what is drawn for the site as a whole.
  expect([status, kinds]).toEqual([1, ["publish", "study"]]);
  const [single, site] = [await readSite(join(root, "single")), await readSite(join(root, "site"))];
  expect([...site.keys()]).toEqual([...single.keys()]);
  expect([...site].filter(([path, digest]) => single.get(path) !== digest)).toEqual([]);
  expect(site.size).toBeGreaterThan(150);
  expect((await publish()).kinds).toEqual(["study"]);
});

test("what was made with another key is not used, whoever copied it there", async () => {
  const root = await makeFolder(
    Object.fromEntries(Object.entries(makeContent()).map(([path, text]) => [`content/${path}`, text])),
  );
  const runWith = (key: string, ...words: readonly string[]) => {
    vi.stubEnv("COUNTERCHANGE_KEY", key);
    return runCounting(root, ...words).finally(() => vi.unstubAllEnvs());
  };
  await runWith("long words of the society", "slice", "1/2", "--cache", "kept/1");
  await runWith("words of somebody else", "slice", "2/2", "--cache", "kept/2");
  await rm(join(root, "kept/2/seal"));
  await merge(root, 2);
  const publish = ["publish", "--out", "site", "--cache", "merged"];
  const { kinds } = await runWith("long words of the society", ...publish);
  expect(kinds).toEqual(["grid", "grid", "publish", "publish", "rank", "study"]);
  // With the key that made them, the entries of both are good.
  const other = await runWith("words of somebody else", ...publish);
  expect(other.messages).toContain("merged was not made here by you");
});

const numbered = "is no slice: that is its number, a slash, and how many there are.";
test.each<[readonly string[], string, string]>([
  [[], "slice needs a slice, such as 1/4.", "slice I/N [CONTENT]"],
  [["2"], `“2” ${numbered}`, "slice 2/4"],
  [["content", "2/4"], `“content” ${numbered}`, "slice 2/4"],
  [["-1/4"], "no option", "--with-drafts"],
  [["1/0"], `“1/0” ${numbered}`, "slice 2/4"],
  [
    ["0/4"],
    "There is no slice 0/4: the first is 1/4.",
    "from 1 to 4. Type, for example: npm run -s cli -- slice 1/4",
  ],
  [["5/4"], "There is no slice 5/4: the last is 4/4.", "slice 4/4"],
  [["1/4", "--cache", "off"], "--cache off keeps nothing", "--cache kept"],
  [["1/4", "--cache", "letter.txt"], "nothing can be kept in letter.txt", "--cache kept"],
  [["1/4", "--cache", "content/kept"], "inside content", "--cache off"],
  [["1/4", "nowhere"], "nowhere", ""],
])("slice %s: what to type instead", async (words, reason, hint) => {
  const root = await makeFolder({ "content/gallery.yaml": writeSettings("x"), "letter.txt": "x" });
  const { status, data, messages } = await runHere(root, "slice", ...words);
  expect([status, data]).toEqual([2, ""]);
  expect(messages).toContain(reason);
  expect(messages).toContain(hint);
});

test("an empty slice is a folder to be copied, and no error", async () => {
  const root = await makeFolder({ "content/gallery.yaml": writeSettings("x"), "content/studies/.keep": "" });
  const { status, data } = await runHere(root, "slice", "4/4", "--cache", "kept");
  expect([status, data]).toEqual([0, "Slice 4/4: 0 studies, kept in kept\n"]);
  expect(await readdir(join(root, "kept"))).toEqual(["seal"]);
});

test("what cannot be kept is told, and is no success", async () => {
  const root = await makeFolder(makeDivided());
  vi.spyOn(Store.prototype, "lost", "get").mockReturnValue(3);
  const { status, messages } = await runHere(root, "slice", "4/4", "--cache", "kept").finally(() =>
    vi.restoreAllMocks(),
  );
  expect(status).toBe(2);
  expect(messages).toMatch(/^3 results could not be kept in kept: they would be made again\.\n {4}Make room/);
});
