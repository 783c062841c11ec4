// The child process by itself, spoken to as the pool does.
import { type ChildProcess, fork } from "node:child_process";
import { once } from "node:events";
import { join } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import { defaultCloth } from "../../../src/colour/cloth.ts";
import { programFolder } from "../../../src/content/disk/packagefile.ts";
import { disc, draw, field, red, white } from "../sight.ts";

const children: ChildProcess[] = [];

function start(): ChildProcess {
  const child = fork(join(programFolder, "children/worker.js"), [], {
    serialization: "advanced",
    stdio: ["ignore", "ignore", "inherit", "ipc"],
  });
  children.push(child);
  return child;
}

afterEach(() => {
  for (const child of children.splice(0)) child.kill("SIGKILL");
});

async function ask(child: ChildProcess, id: number, kind: string, input: object): Promise<unknown> {
  const answer = new Promise((resolve) => {
    child.on("message", (message: { readonly id: number }) => message.id === id && resolve(message));
  });
  child.send({ id, kind, input });
  return answer;
}

const input = {
  bytes: draw(field(white) + disc(150, 100, 50, red)),
  options: { cloth: defaultCloth, distance: 40, palette: new Map([["sun", "#ffff00"]]) },
};

describe("the worker", { timeout: 30_000 }, () => {
  test("answers a job under its number, one after the other; maps and bytes arrive whole", async () => {
    const child = start();
    expect(await ask(child, 7, "measure", input)).toMatchObject({
      id: 7,
      outcome: { value: { file: "", clarity: 100 }, problems: [] },
    });
    // “sun” is a name from the palette, which travels as a Map.
    const change = { replace: "red", with: "sun" };
    expect(await ask(child, 8, "compare", { ...input, change })).toMatchObject({
      id: 8,
      outcome: {
        value: { change: { replace: red, with: "#ffff00" }, comparison: { verdict: "less clear" } },
      },
    });
  });

  test("says what went wrong, under the number of the job, and goes on", async () => {
    const child = start();
    expect(await ask(child, 1, "measure", {})).toEqual({ id: 1, error: expect.any(String) });
    expect(await ask(child, 2, "nonsense", input)).toEqual({ id: 2, error: expect.any(String) });
    expect(await ask(child, 3, "measure", input)).toMatchObject({ id: 3, outcome: { problems: [] } });
  });

  test("ends by itself when its parent lets go of it", async () => {
    const child = start();
    await ask(child, 1, "measure", input);
    const ended = once(child, "exit");
    child.disconnect();
    // A plain exit would wait for a renderer that is stuck.
    expect(await ended).toEqual([null, "SIGKILL"]);
  });
});
