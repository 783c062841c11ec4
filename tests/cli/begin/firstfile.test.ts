import { join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { hostNames, listFirstFiles, listWorkflows } from "../../../src/cli/begin/firstfile.ts";
import { UsageError } from "../../../src/cli/command.ts";
import { textsOf } from "../../guide/block.ts";

const at = (pieces: readonly { readonly path: string }[]) => pieces.map(({ path }) => path);

test("a new gallery gets a text for its authors, and what git leaves out stands where git is called", () => {
  expect(at(listFirstFiles("."))).toEqual(["README.md", ".gitignore"]);
  expect(at(listFirstFiles("content"))).toEqual(["README.md", join("..", ".gitignore")]);
  // Elsewhere on the disk nothing is put beside the gallery.
  expect(at(listFirstFiles(resolve("..", "flags")))).toEqual(["README.md", ".gitignore"]);
});

test("what is there already stays", () => {
  expect(listFirstFiles(".").map(({ isShared }) => isShared)).toEqual([true, true]);
});

describe("workflows", () => {
  test("none where no host is named", async () => {
    expect(await listWorkflows("content", undefined)).toEqual([]);
  });

  test.each([
    ["github", [".github/workflows/review.yml", ".github/workflows/publish.yml"]],
    ["gitlab", [".gitlab-ci.yml"]],
  ])("of %s are those of the guide", async (host, paths) => {
    const files = await listWorkflows("content", host);
    expect(at(files)).toEqual(paths.map((path) => join("..", path)));
    for (const [index, path] of paths.entries())
      expect(files[index]?.content).toBe([...textsOf(`yaml ${path}`)].reverse().join("\n"));
  });

  test.each(hostNames)("of %s read a gallery at the top of the repository there", async (host) => {
    const files = await listWorkflows(".", host);
    for (const { path, content } of files) {
      expect(path.startsWith("..")).toBe(false);
      expect(content).not.toContain("/content");
    }
    const all = files.map(({ content }) => content).join("\n");
    expect(all).toMatch(/npx counterchange check (?:\.\.\/contributed|"\$CI_PROJECT_DIR") --against/);
  });

  test.each([
    ["another host", "content", "elsewhere"],
    ["a gallery that lies deeper", "my/content", "github"],
    ["a gallery that lies elsewhere", resolve("..", "flags"), "github"],
  ])("%s is refused with what to type", async (_, content, host) => {
    await expect(listWorkflows(content, host)).rejects.toThrow(UsageError);
  });
});
