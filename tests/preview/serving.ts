// Test support. A server on a free port, and a reader of its news, as an open page is one.
import { onTestFinished, vi } from "vitest";
import { openLine } from "../../src/preview/serverpool.ts";
import { type ServeOptions, startServing } from "../../src/preview/startserving.ts";
import type { Problem } from "../../src/problem/problem.ts";
import { openKept } from "../kept.ts";

export interface Served {
  readonly address: string;
  /** The problems of each complete version, in their order. */
  readonly told: (readonly Problem[])[];
  get(path: string, init?: RequestInit): Promise<Response>;
  text(path: string): Promise<string>;
  /** Waits until the page at `path` says `wanted`. */
  says(path: string, wanted: string): Promise<string>;
  /** Waits until the problems are those of these rules. */
  hasProblems(...rules: readonly string[]): Promise<readonly Problem[]>;
}

const patience = { timeout: 30_000, interval: 10 };

/** Serves `contentDir` until the end of the test, once the first version is complete. */
export async function serve(contentDir: string, options: Partial<ServeOptions> = {}): Promise<Served> {
  const told: (readonly Problem[])[] = [];
  const serving = await startServing({
    contentDir,
    host: "127.0.0.1",
    port: 0,
    isFixed: true,
    drafts: false,
    // What a folder holds is measured once for all tests; an edit is new to all of them.
    pool: openLine(options.store ?? (await openKept())),
    onVersion: (_, problems) => told.push(problems),
    ...options,
  });
  onTestFinished(() => serving.close());
  const address = `http://127.0.0.1:${serving.port}`;
  const get = (path: string, init?: RequestInit) => fetch(address + path, { redirect: "manual", ...init });
  const text = async (path: string): Promise<string> => (await get(path)).text();
  // A whole gallery may be measured before.
  await vi.waitUntil(() => told.length > 0, { ...patience, timeout: 120_000 });
  return {
    address,
    told,
    get,
    text,
    says: (path, wanted) =>
      vi.waitUntil(async () => {
        const html = await text(path);
        return html.includes(wanted) ? html : undefined;
      }, patience),
    hasProblems: (...rules) =>
      vi.waitUntil(() => {
        const last = told.at(-1) ?? [];
        return JSON.stringify(last.map(({ rule }) => rule)) === JSON.stringify(rules) ? last : undefined;
      }, patience),
  };
}

/** An event of the news: its name and its data, read from JSON. */
export interface Event {
  readonly event: string;
  readonly data: unknown;
}

/** Opens the news as the page at `path` with `mark` does; `next` waits for the next event, undefined at the end. */
export async function openNews(address: string, path: string, mark: string) {
  const query = new URLSearchParams({ path, mark });
  const stop = new AbortController();
  const response = await fetch(`${address}/_serve/news?${query}`, { signal: stop.signal });
  const reader = response.body?.pipeThrough(new TextDecoderStream()).getReader();
  onTestFinished(() => stop.abort());
  let text = "";
  const next = async (): Promise<Event | undefined> => {
    for (;;) {
      const end = text.indexOf("\n\n");
      if (end >= 0) {
        const block = text.slice(0, end);
        text = text.slice(end + 2);
        const event = /^event: (.*)$/m.exec(block)?.[1];
        if (event !== undefined)
          return { event, data: JSON.parse(/^data: (.*)$/m.exec(block)?.[1] ?? "null") };
        continue;
      }
      const more = await reader?.read();
      if (more?.value === undefined) return undefined;
      text += more.value;
    }
  };
  return { response, next, close: () => stop.abort() };
}

/** The mark in a served page. */
export function markOf(html: string): string {
  return /data-mark="([^"]*)"/.exec(html)?.[1] ?? "";
}
