// What may stand on a disk instead of a gallery, or beside a site, each made as it is read. The manifest has the verdicts.
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { copyFile, mkdir, readdir, readFile, rename, rm, symlink, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";
import { fileOf } from "../../src/publish/folder/sitefile.ts";
import { describeFile, formatManifest, manifestName } from "../../src/publish/folder/manifest.ts";
import { withOutput } from "../../src/publish/folder/output.ts";
import { limitProblems } from "../../src/problem/tally.ts";
import { loadGallery } from "../../src/content/folder/loadgallery.ts";
import { writeStudy } from "../analysis/fixture.ts";
import { harbour, makeFolder } from "../content/folder.ts";

interface Case {
  readonly file: string;
  readonly attack: string;
  readonly expected: "reject" | "accept" | "strip";
}

const cases = (
  JSON.parse(readFileSync(join(import.meta.dirname, "manifest.json"), "utf8")) as readonly Case[]
).filter(({ file }) => file === "disk.test.ts");

/** What is put at a path in the place of what is there. */
const kinds: Readonly<Record<string, (path: string) => Promise<unknown>>> = {
  "a pipe": async (path) => execFileSync("mkfifo", [path]),
  "a socket": async (path) =>
    execFileSync("python3", ["-c", "import socket,sys; socket.socket(socket.AF_UNIX).bind(sys.argv[1])", path]),
  "a link to an endless device": (path) => symlink("/dev/zero", path),
  "a link outside": async (path) => symlink(await makeFolder({ "study.md": "secret" }), path),
  "a file": (path) => writeFile(path, ""),
  "a folder": (path) => mkdir(path),
};

/** Where it stands in a gallery, and whether the study `ferry` is published all the same. */
const places: Readonly<Record<string, readonly [path: string, expected: Case["expected"]]>> = {
  studies: ["studies", "reject"],
  "gallery.yaml": ["gallery.yaml", "strip"],
  "study.md": ["studies/ferry/study.md", "reject"],
  "a drawing": ["studies/ferry/original.svg", "reject"],
  "a study's name in capitals": ["studies/FERRY", "strip"],
  "another study": ["studies/quay", "strip"],
};

async function tryContent(kind: string, place: string): Promise<void> {
  const root = await makeFolder(harbour);
  const [path, expected] = places[place] ?? ["", "accept"];
  await rm(join(root, path), { recursive: true, force: true });
  await kinds[kind]?.(join(root, path));
  const { studies, problems } = await loadGallery(root);
  expect(studies.map(({ slug }) => slug)).toEqual(expected === "reject" ? [] : ["ferry"]);
  expect(problems.map(({ file }) => file)).toContain(`${root}/${path}`);
  expect(JSON.stringify([studies, problems])).not.toContain("secret");
}

/** Publishes over what `prepare` has made beside a first site of our own; what is in `_site` and beside it then. */
async function publishOver(prepare: (room: string, site: string, hidden: string) => Promise<unknown>) {
  const room = await makeFolder({});
  const [site, hidden] = [join(room, "_site"), join(room, ".counterchange-_site")];
  const publish = (text: string) =>
    withOutput(site, { keepOut: [], onWait: fail }, async (output) => {
      await output.publish([fileOf("index.html", () => text)]);
      return output;
    });
  for (const text of ["first", "second"]) await publish(text);
  await prepare(room, site, hidden);
  const error: unknown = await publish("new").catch((found: unknown) => found);
  if (!(error instanceof Error)) await publish("newer");
  return { room, site, error, names: await readdir(room) };
}

function fail(): never {
  throw new Error("it waited");
}

const forged = (pid: number) => `lock.${pid}.0.0000abcd.elsewhere.0123456789${pid}`;
const page = "<script>forged</script>";

const acts: Readonly<Record<string, () => Promise<void>>> = {
  "5,000 stray files in a study": async () => {
    const strays = Array.from({ length: 5000 }, (_, at) => [`studies/ferry/stray-${at}.txt`, ""] as const);
    const { studies, problems } = await loadGallery(
      await makeFolder({ ...harbour, ...Object.fromEntries(strays) }),
    );
    expect(studies).toEqual([]);
    expect(limitProblems(problems).length).toBeLessThan(25);
  },
  "a study at another's former address": async () => {
    const { studies } = await loadGallery(
      await makeFolder({
        ...harbour,
        "studies/ferry/study.md": writeStudy("formerly: [quay]"),
        "studies/quay/study.md": "",
      }),
    );
    expect(studies.map(({ slug, formerly }) => [slug, formerly])).toEqual([["ferry", []]]);
  },
  "a manifest that names a user's file": async () => {
    const { site, room, names } = await publishOver(async (_, at, hidden) => {
      await rm(hidden, { recursive: true });
      await writeFile(join(at, "thesis.txt"), "precious");
      await writeFile(
        join(at, manifestName),
        formatManifest(["index.html", "thesis.txt"].map((name) => describeFile(name, ""))),
      );
    });
    expect(names).toContain("_site-kept");
    expect(await readFile(join(room, "_site-kept/thesis.txt"), "utf8")).toBe("precious");
    expect(await readFile(join(site, "index.html"), "utf8")).toBe("newer");
  },
  ...Object.fromEntries(
    ["a pipe", "a socket", "a link to an endless device"].map((kind) => [
      `${kind} as the manifest`,
      async () => {
        const { error, site } = await publishOver(async (_, at) => {
          await rm(join(at, manifestName));
          await kinds[kind]?.(join(at, manifestName));
        });
        expect(String(error)).toContain("was not written here");
        expect(await readFile(join(site, "index.html"), "utf8")).toBe("second");
      },
    ]),
  ),
  ...Object.fromEntries(
    Object.entries(kinds).map(([kind, make]) => [
      `${kind} as the hidden folder`,
      async () => {
        const { error, site } = await publishOver(async (_, __, hidden) => {
          await rm(hidden, { recursive: true });
          await make(hidden);
        });
        expect(error).not.toBeInstanceOf(Error);
        expect(await readFile(join(site, "index.html"), "utf8")).toBe("newer");
      },
    ]),
  ),
  "locks, outgoing and record that came into our hidden folder": async () => {
    const { error, site } = await publishOver(async (_, at, hidden) => {
      for (let pid = 10; pid < 35; pid += 1) await writeFile(join(hidden, forged(pid)), "0\n");
      await writeFile(join(hidden, "published"), `${"0".repeat(64)}\n`);
      await mkdir(join(hidden, "outgoing"));
      await writeFile(join(hidden, "outgoing/index.html"), page);
      await rename(at, `${at}-away`);
    });
    expect(error).not.toBeInstanceOf(Error);
    expect(await readFile(join(site, "index.html"), "utf8")).toBe("newer");
  },
  "an outgoing that came into our hidden folder, and a build that fails": async () => {
    const room = await makeFolder({});
    const [site, hidden] = [join(room, "_site"), join(room, ".counterchange-_site")];
    const files = [fileOf("index.html", () => "ours")];
    for (let n = 0; n < 2; n += 1)
      await withOutput(site, { keepOut: [] }, (output) => output.publish(files));
    await rm(site, { recursive: true });
    await mkdir(join(hidden, "outgoing"));
    await writeFile(join(hidden, "outgoing/index.html"), page);
    await writeFile(
      join(hidden, "outgoing", manifestName),
      formatManifest([describeFile("index.html", page)]),
    );
    await withOutput(site, { keepOut: [] }, async () => undefined);
    expect(await readdir(room)).not.toContain("_site");
  },
  "a hidden folder copied from another site of the user": async () => {
    const other = await makeFolder({});
    const { error, names } = await publishOver(async (_, __, hidden) => {
      await rename(hidden, join(other, "hidden"));
      await mkdir(join(hidden, "outgoing"), { recursive: true });
      await copyFile(join(other, "hidden/.gitignore"), join(hidden, ".gitignore"));
      await writeFile(join(hidden, "outgoing/index.html"), page);
    });
    expect(error).not.toBeInstanceOf(Error);
    expect(names).toContain(".counterchange-_site-aside");
  },
  "a site that would take the place of the whole disk": async () => {
    await expect(withOutput("/", { keepOut: [], isForced: true }, fail)).rejects.toThrow("take the place of");
    const parent = dirname(process.cwd());
    await expect(withOutput(parent, { keepOut: [], isForced: true }, fail)).rejects.toThrow("take the place");
  },
};

const known = [
  ...Object.keys(acts),
  ...Object.keys(places).flatMap((place) => Object.keys(kinds).map((kind) => `${kind} as ${place}`)),
];

test("the manifest has each of them", () => {
  const wanted = known.filter((attack) => !/^a (?:folder as (?:studies|another study)|file as a drawing)$/.test(attack));
  expect(cases.map(({ attack }) => attack).sort()).toEqual(wanted.sort());
});

test.each(cases)("$attack: $expected", async ({ attack, expected }) => {
  const act = acts[attack];
  if (act !== undefined) return act();
  const [kind = "", place = ""] = attack.split(/ as (?!a lock)/);
  expect(places[place]?.[1]).toBe(expected);
  await tryContent(kind, place);
});
