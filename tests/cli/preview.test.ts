// The command serve in a process of its own, from the first line it prints to its end.
import { type ChildProcess, spawn } from "node:child_process";
import { writeFile } from "node:fs/promises";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import { expect, onTestFinished, test, vi } from "vitest";
import { writeStudy } from "../analysis/fixture.ts";
import { harbour, makeFolder } from "../content/folder.ts";
import { listWorkingIn, run, start } from "./run.ts";

vi.setConfig({ testTimeout: 120_000 });

interface Running {
  readonly child: ChildProcess;
  /** What it has said so far. */
  readonly said: { data: string; messages: string };
  says(text: string): Promise<void>;
  /** Ends it by a signal and returns its exit status. */
  end(signal: NodeJS.Signals): Promise<number | null>;
}

function serve(folder: string, ...words: readonly string[]): Running {
  const child = spawn(process.execPath, [start, "preview", ...words], { cwd: folder });
  onTestFinished(() => void child.kill("SIGKILL"));
  const said = { data: "", messages: "" };
  child.stdout.on("data", (data: Buffer) => {
    said.data += data.toString();
  });
  child.stderr.on("data", (data: Buffer) => {
    said.messages += data.toString();
  });
  return {
    child,
    said,
    says: async (text) => {
      await vi.waitUntil(() => (said.data + said.messages).includes(text), { timeout: 60_000 });
    },
    end: (signal) => {
      const ended = new Promise<number | null>((resolve) => child.once("exit", resolve));
      child.kill(signal);
      return ended;
    },
  };
}

const content = Object.fromEntries(Object.entries(harbour).map(([path, text]) => [`content/${path}`, text]));

test("says where it serves and what is wrong, once each; ends with status 0 and leaves no process", async () => {
  const folder = await makeFolder(content);
  const server = serve(folder, "--port", "0", "--cache", "off");
  await server.says("Showing content at http://127.0.0.1:");
  const address = /http:\S+/.exec(server.said.data)?.[0] ?? "";
  expect(await (await fetch(`${address}studies/ferry/`)).text()).toContain("A lighter ferry wheel");
  await server.says("0 errors, 0 warnings: 1 study is shown.");
  const study = join(folder, "content/studies/ferry/study.md");
  await writeFile(study, writeStudy("status: x"));
  await server.says("1 error, 0 warnings: 1 study is shown; what has an error is shown as it was before.");
  expect(server.said.messages).toContain("content/studies/ferry/study.md:5:9  error  “status” is “x”");
  await writeFile(study, writeStudy());
  await vi.waitUntil(() => server.said.messages.match(/0 errors, 0 warnings/g)?.length === 2, {
    timeout: 60_000,
  });
  expect(server.said.messages.match(/“status” is “x”/g)).toHaveLength(1);
  expect(await server.end("SIGINT")).toBe(0);
  await vi.waitFor(() => expect(listWorkingIn(folder)).toEqual([]), { timeout: 10_000 });
});

test("a port in use: the usual one gives way to the next and says so; a named one is an error that says what to type", async () => {
  const folder = await makeFolder(content);
  const taken = createServer();
  await new Promise<void>((resolve) => taken.listen(0, "127.0.0.1", resolve));
  onTestFinished(() => void taken.close());
  const { port } = taken.address() as AddressInfo;
  expect(await run(folder, "preview", "--port", String(port))).toEqual({
    status: 2,
    data: "",
    messages: `Port ${port} is in use.\n    Name another, for example: --port 0 (any that is free)\n`,
  });
  const usual = createServer();
  const isOurs = await new Promise<boolean>((resolve) => {
    usual.once("error", () => resolve(false)).listen(8642, "127.0.0.1", () => resolve(true));
  });
  onTestFinished(() => void (isOurs && usual.close()));
  const server = serve(folder, "--cache", "off");
  await server.says("Port 8642 is in use: taking the next.");
  await server.says("Showing content at http://127.0.0.1:86");
  expect(server.said.data).not.toContain(":8642/");
  expect(await server.end("SIGTERM")).toBe(0);
});

test("wrong ports and hosts are wrong use", async () => {
  const folder = await makeFolder(content);
  expect(await run(folder, "preview", "--port", "70000")).toMatchObject({ status: 2 });
  // TEST-NET-1 is nobody's. Source: RFC 5737.
  const { status, messages } = await run(folder, "preview", "--host", "192.0.2.1", "--port", "0");
  expect([
    status,
    ...messages
      .split("\n")
      .slice(0, 2)
      .map((line) => line.trim()),
  ]).toEqual([2, "192.0.2.1 is no address of this machine.", "Type, for example: --host 127.0.0.1"]);
});

test("a content folder that is not there yet is waited for", async () => {
  const folder = await makeFolder({});
  const server = serve(folder, "later", "--port", "0", "--cache", "off");
  await server.says("There is no such content folder.");
  const address = /http:\S+/.exec(server.said.data)?.[0] ?? "";
  expect((await fetch(address)).status).toBe(200);
  expect(await server.end("SIGTERM")).toBe(0);
});
