import { join, relative } from "node:path";
import { expect, test } from "vitest";
import { fillRival } from "../../../src/cli/begin/rival.ts";
import { UsageError } from "../../../src/cli/command.ts";
import { harbour, makeFolder } from "../../content/folder.ts";

const study = harbour["studies/ferry/study.md"] ?? "";
const files = {
  ...harbour,
  "studies/ferry/study.md": study.replace(/^title:/m, "flag: The ferry flag\ntitle:"),
  "studies/bad/study.md": "x",
};
const ask = (values: Readonly<Record<string, string>>, content: string) =>
  fillRival({ operands: ["new"], values, switches: new Set() }, content);
const complain = async (values: Readonly<Record<string, string>>, content: string) => {
  const error: unknown = await ask(values, content).catch((thrown: unknown) => thrown);
  return error instanceof UsageError ? `${error.message} ${error.hint}` : undefined;
};

test("a rival has the drawing of the study it names, and the name of its flag unless another is typed", async () => {
  const root = await makeFolder(files);
  const original = relative(process.cwd(), join(root, "studies/ferry/original.svg"));
  expect((await ask({ rival: "ferry" }, root)).values).toEqual({
    rival: "ferry",
    original,
    flag: "The ferry flag",
  });
  expect((await ask({ rival: "ferry", flag: "Ours", content: root }, "x")).values).toMatchObject({
    original,
    flag: "Ours",
  });
  expect((await ask({ rival: "/flags/gull.svg" }, root)).values).toMatchObject({
    original: join(root, "flags/gull.svg"),
  });
  expect((await ask({ original: "a.svg" }, root)).values).toEqual({ original: "a.svg" });
});

test("what cannot be a rival of anything is said", async () => {
  const root = await makeFolder(files);
  expect(await complain({ rival: "fery" }, root)).toBe("There is no study “fery”. Type: --rival ferry");
  expect(await complain({ rival: "quite-another" }, root)).toContain("Type the name of a study's folder");
  expect(await complain({ rival: "bad" }, root)).toBe(
    "The study “bad” has an error. Type: counterchange check",
  );
  expect(await complain({ rival: "ferry", original: "a.svg" }, root)).toContain("not both");
});
