// Floor 10. Finds a port to listen on.
import type { Server } from "node:http";

/** How many ports are tried, one after another. */
const mostTries = 20;

/** Nothing can be listened on; the message says why. */
export class TakenError extends Error {}

/** The host is not an address of this machine. */
export class HostError extends TakenError {}

/**
 * Listens on `port` of `host`; where it is taken and not `isFixed`, on the next that is free. Returns the port.
 *
 * Throws TakenError where there is none, HostError where the host is not an address of this machine.
 */
export async function listenFrom(
  server: Server,
  { host, port, isFixed }: { readonly host: string; readonly port: number; readonly isFixed: boolean },
): Promise<number> {
  const tries = isFixed || port === 0 ? 1 : mostTries;
  for (let tried = 0; tried < tries; tried += 1) {
    const code = await tryPort(server, host, port + tried);
    if (code === undefined) {
      const address = server.address();
      return typeof address === "object" && address !== null ? address.port : port;
    }
    if (code === "EACCES") throw new TakenError(`Port ${port} may not be used by you.`);
    if (code === "EADDRNOTAVAIL" || code === "ENOTFOUND" || code === "EAI_AGAIN")
      throw new HostError(`${host} is no address of this machine.`);
    if (code !== "EADDRINUSE")
      throw new TakenError(`Port ${port} of ${host} cannot be listened on (${code}).`);
  }
  const which =
    tries === 1 ? `Port ${port} is in use` : `The ports from ${port} to ${port + tries - 1} are in use`;
  throw new TakenError(`${which}.`);
}

/** Returns the code of what went wrong, or undefined. */
function tryPort(server: Server, host: string, port: number): Promise<string | undefined> {
  return new Promise((resolve) => {
    const onError = (error: NodeJS.ErrnoException): void => {
      server.off("listening", onListening);
      resolve(error.code ?? error.message);
    };
    const onListening = (): void => {
      server.off("error", onError);
      resolve(undefined);
    };
    server.once("error", onError).once("listening", onListening).listen(port, host);
  });
}
