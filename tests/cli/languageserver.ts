// Test support. Speaks to the language server for YAML that editors start, in a process of its own.
import { spawn } from "node:child_process";
import { createRequire } from "node:module";
import { basename, dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { onTestFinished } from "vitest";

interface Message {
  readonly id?: number;
  readonly method?: string;
  readonly params?: {
    readonly items?: readonly unknown[];
    readonly uri?: string;
    readonly diagnostics?: readonly Told[];
  };
  readonly result?: unknown;
}

interface Told {
  readonly message: string;
  readonly range: { readonly start: { readonly line: number } };
}

/** What an editor shows: at the place of `|` the words that are offered, and what is told of each line, which count from 1. */
export interface Shown {
  readonly offered: readonly string[];
  readonly told: readonly string[];
}

const settings = { schemaStore: { enable: false } };

/** Returns what opens a text as the file `path`, in the language that the editor calls it. The server ends with the test. */
export async function startServer(
  root: string,
): Promise<(path: string, text: string, language?: string) => Promise<Shown>> {
  const bin = createRequire(import.meta.url).resolve("yaml-language-server/bin/yaml-language-server");
  const server = spawn(process.execPath, [bin, "--stdio"], { stdio: ["pipe", "pipe", "inherit"] });
  onTestFinished(() => void server.kill());
  const waiting = new Map<number | string, (answer: unknown) => void>();
  const send = (message: object) => {
    const text = JSON.stringify({ jsonrpc: "2.0", ...message });
    server.stdin.write(`Content-Length: ${Buffer.byteLength(text)}\r\n\r\n${text}`);
  };
  const wait = <T>(on: number | string) =>
    new Promise<T>((resolve) => waiting.set(on, resolve as () => void));
  const answer = ({ id, method, params, result }: Message) => {
    if (method === "textDocument/publishDiagnostics") waiting.get(params?.uri ?? "")?.(params?.diagnostics);
    else if (id !== undefined && method === undefined) waiting.get(id)?.(result);
    // The settings that it asks for: none but that it asks no host for the schemas of others.
    else if (id !== undefined) send({ id, result: params?.items?.map(() => settings) ?? null });
  };
  let come = Buffer.alloc(0);
  server.stdout.on("data", (chunk: Buffer) => {
    come = Buffer.concat([come, chunk]);
    for (;;) {
      const head = come.indexOf("\r\n\r\n");
      const end = head + 4 + Number(/\d+/.exec(come.toString("utf8", 0, head))?.[0]);
      if (head < 0 || come.length < end) return;
      answer(JSON.parse(come.toString("utf8", head + 4, end)));
      come = come.subarray(end);
    }
  });
  let id = 0;
  const ask = <T>(method: string, params: object): Promise<T> => {
    id += 1;
    send({ id, method, params });
    return wait<T>(id);
  };
  await ask("initialize", { processId: process.pid, rootUri: pathToFileURL(root).href, capabilities: {} });
  send({ method: "initialized", params: {} });
  return async (path, text, language = "yaml") => {
    const before = text.slice(0, text.indexOf("|")).split("\n");
    id += 1;
    // A name of its own each time: what is told late of one text is not taken for the next.
    const uri = pathToFileURL(join(root, dirname(path), `${id}-${basename(path)}`)).href;
    const told = wait<readonly Told[]>(uri);
    const textDocument = { uri, languageId: language, version: 1, text: text.replace("|", "") };
    send({ method: "textDocument/didOpen", params: { textDocument } });
    const diagnostics = await told;
    const position = { line: before.length - 1, character: before.at(-1)?.length ?? 0 };
    const { items } = await ask<{ readonly items: readonly { readonly label: string }[] }>(
      "textDocument/completion",
      { textDocument: { uri }, position },
    );
    return {
      offered: items.map(({ label }) => label),
      told: diagnostics.map(({ message, range }) => `${range.start.line + 1} ${message}`),
    };
  };
}
