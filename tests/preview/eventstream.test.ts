import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { expect, onTestFinished, test } from "vitest";
import { News } from "../../src/preview/eventstream.ts";
import type { Problem } from "../../src/problem/problem.ts";
import { openNews } from "./serving.ts";

const warning: Problem = { rule: "svg/text", severity: "warning", file: "a.svg", reason: "There is text." };
const error: Problem = { ...warning, rule: "svg/image", severity: "error", reason: "There is a picture." };

/** A server of news alone; pages are marked as `marks` say. */
async function open(marks: Map<string, string>) {
  const news = new News();
  const markPage = (path: string): string => marks.get(path) ?? "none";
  const server = createServer((request, response) => {
    const { searchParams } = new URL(request.url ?? "", "http://a/");
    const path = searchParams.get("path") ?? "";
    news.add({ path, mark: searchParams.get("mark") ?? "", response }, markPage);
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  onTestFinished(() => {
    news.close();
    server.closeAllConnections();
    server.close();
  });
  const { port } = server.address() as AddressInfo;
  return {
    news,
    markPage,
    listen: (path: string, mark: string) => openNews(`http://127.0.0.1:${port}`, path, mark),
  };
}

test("only a page that looks otherwise is told, once, and its connection ends", async () => {
  const marks = new Map([
    ["a", "1"],
    ["b", "1"],
  ]);
  const { news, markPage, listen } = await open(marks);
  const [a, b] = [await listen("a", "1"), await listen("b", "1")];
  marks.set("a", "2");
  news.tell(markPage);
  news.tell(markPage);
  expect(await a.next()).toEqual({ event: "changed", data: "" });
  expect(await a.next()).toBeUndefined();
  // The first that the other hears is what comes after.
  news.tellProblems([warning]);
  expect(await b.next()).toMatchObject({ event: "problems" });
});

test("a page that is old when it comes is told at once", async () => {
  const { listen } = await open(new Map([["a", "2"]]));
  expect(await (await listen("a", "1")).next()).toMatchObject({ event: "changed" });
});

test("what is wrong is told in words, to those who come later too, and taken back", async () => {
  const { news, listen } = await open(new Map([["a", "1"]]));
  news.tellProblems([error, warning]);
  const { next, response } = await listen("a", "1");
  expect(response.headers.get("content-type")).toBe("text/event-stream");
  expect(await next()).toEqual({
    event: "problems",
    data: {
      title: "1 error, 1 warning: what has an error is shown as it was before",
      text: "a.svg  error  There is a picture.  svg/image\n\na.svg  warning  There is text.  svg/text",
      hasError: true,
    },
  });
  news.tellProblems([warning]);
  expect(await next()).toMatchObject({ data: { title: "1 warning", hasError: false } });
  news.tellProblems([]);
  expect(await next()).toMatchObject({ event: "problems", data: { text: "", hasError: false } });
});
