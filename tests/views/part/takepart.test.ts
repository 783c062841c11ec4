// The page is there for galleries that take answers alone, and the text it offers is a study.
import { expect, test } from "vitest";
import { parseStudy } from "../../../src/content/study/studyfile.ts";
import { presentTakePart } from "../../../src/views/part/takepart.ts";
import { createFormat } from "../../../src/words/format.ts";
import { gallery } from "../../publish/sample.ts";

const format = createFormat("en");
const { answer: _, ...silent } = gallery;
const open = (answer: Parameters<typeof presentTakePart>[0]["answer"]) => {
  const [page] = presentTakePart({ ...silent, ...(answer && { answer }) }, format);
  return page;
};

test("a gallery without an answer has no such page, and no link to it", () => {
  expect(open(undefined)).toBeUndefined();
  expect(open({ way: "mail", address: "a@b.example" })?.frame.links.takePart?.address).toBe("./");
});

test("the address that sends a study has the mark once, by mail and in a form that takes numbers", () => {
  const mail = open({ way: "mail", address: "a@b.example" });
  expect(mail?.send.href.split(mail.mark)).toHaveLength(2);
  const form = (template: string) => open({ way: "form", template })?.send;
  expect(form("https://f.example/?n={numbers}")).toMatchObject({
    href: "https://f.example/?n=study-text",
    words: "at f.example, with the text already in it.",
  });
  expect(form("https://f.example/?t={title}")?.words).toBe("at f.example; copy the text first.");
});

test("the text to begin with is a study without a problem", () => {
  const { sample = "" } = open({ way: "mail", address: "a@b.example" }) ?? {};
  const { value, problems } = parseStudy(
    { file: "study.md", slug: "wheel", shownFlagsFolder: "flags", studyFolder: "/s", flagsFolder: "/f" },
    new TextEncoder().encode(sample),
    new Map(),
  );
  expect(problems).toEqual([]);
  expect(value).toMatchObject({ title: "A lighter wheel", change: { replace: "#7a1020", with: "#f4c430" } });
});
