import { createServer, type Server } from "node:http";
import { afterEach, expect, test } from "vitest";
import { listenFrom, TakenError } from "../../src/preview/port.ts";

const servers: Server[] = [];
afterEach(() => {
  for (const server of servers.splice(0)) server.close();
});

function make(): Server {
  const server = createServer();
  servers.push(server);
  return server;
}

const host = "127.0.0.1";

test("0 is any port that is free", async () => {
  expect(await listenFrom(make(), { host, port: 0, isFixed: true })).toBeGreaterThan(0);
});

test("a port in use: the next that is free, or none where it has to be that one", async () => {
  const port = await listenFrom(make(), { host, port: 0, isFixed: true });
  expect(await listenFrom(make(), { host, port, isFixed: false })).toBeGreaterThan(port);
  const fixed = listenFrom(make(), { host, port, isFixed: true });
  await expect(fixed).rejects.toThrow(`Port ${port} is in use.`);
  await expect(fixed).rejects.toThrow(TakenError);
});

test("an address that this machine does not have", async () => {
  // TEST-NET-1 is nobody's. Source: RFC 5737.
  await expect(listenFrom(make(), { host: "192.0.2.1", port: 0, isFixed: true })).rejects.toThrow(
    "192.0.2.1 is no address of this machine.",
  );
});
