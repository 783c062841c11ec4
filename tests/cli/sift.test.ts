import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test, vi } from "vitest";
import { makeFolder } from "../content/folder.ts";
import { halved } from "./flag.ts";
import { runHere } from "./run.ts";

vi.setConfig({ testTimeout: 60_000 });

const active = halved.replace("<path", '<script>alert(1)</script><path onclick="alert(2)"');

test("what runs is gone, with a warning; what is drawn is there", async () => {
  const root = await makeFolder({ "active.svg": active });
  const { status, data, messages } = await runHere(root, "sift", "active.svg");
  expect(status).toBe(0);
  expect(data).toMatch(/^<svg /);
  expect(data).not.toMatch(/script|onclick|alert/);
  expect(data).toContain("#000000");
  expect(messages).toMatch(/^active\.svg:1:\d+ {2}warning/);
});

test("--out writes it and never overwrites; cleaning what is clean changes nothing", async () => {
  const root = await makeFolder({ "active.svg": active });
  const first = await runHere(root, "sift", "active.svg", "--out", "one.svg");
  expect([first.status, first.data]).toEqual([0, ""]);
  expect(first.messages).toMatch(/The drawing is in one\.svg\.\n$/);
  expect(await runHere(root, "sift", "one.svg", "--out", "two.svg")).toEqual({
    status: 0,
    data: "",
    messages: "The drawing is in two.svg.\n",
  });
  expect(await readFile(join(root, "two.svg"), "utf8")).toBe(await readFile(join(root, "one.svg"), "utf8"));
  expect((await runHere(root, "sift", "active.svg", "--out", "one.svg")).status).toBe(2);
});

test("a drawing that cannot be read is status 1, and nothing is written", async () => {
  const root = await makeFolder({ "broken.svg": "<svg" });
  const { status, data } = await runHere(root, "sift", "broken.svg", "--out", "out.svg");
  expect([status, data]).toEqual([1, ""]);
  await expect(readFile(join(root, "out.svg"))).rejects.toThrow("ENOENT");
});
