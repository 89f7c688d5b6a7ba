import { createServer, type IncomingMessage, type Server } from "node:http";
import { answerFile, answerPlain, ended, listens, type Refusal, refusalOf } from "../../serve";
import { answerGiven, type GivenWorkbook } from "./given-files";
import { cachingOf, securityHeaders } from "./headers";

const loopback = "127.0.0.1";
const firstPort = 4710;
const portsTried = 100;

export interface SiteServer {
  readonly server: Server;
  /** "http://127.0.0.1:4710/" */
  readonly address: string;
  close(): Promise<void>;
}

interface SiteOptions {
  /** The folder of the built site. */
  readonly folder: string;
  /** A port of one's own; else the first free one from 4710 up. */
  readonly port?: number | null;
  readonly given?: readonly GivenWorkbook[];
}

/** Serves the built site on this machine alone. Throws where the port is taken. */
export async function serveSite({ folder, port, given = [] }: SiteOptions): Promise<SiteServer> {
  let own = 0;
  const server = createServer((request, response) => {
    for (const [name, value] of Object.entries(securityHeaders)) response.setHeader(name, value);
    const refusal = refusalOf(request, own) ?? fromElsewhere(request);
    if (refusal) return answerPlain(response, refusal.status, refusal.reason);
    const path = (request.url ?? "/").split(/[?#]/)[0] ?? "/";
    if (answerGiven(path, given, response)) return;
    response.setHeader("Cache-Control", cachingOf(path));
    if (!answerFile(folder, path, request, response))
      answerPlain(response, 404, "There is no such page here.");
  });
  own = await listen(server, port ?? null);
  return { server, address: `http://${loopback}:${own}/`, close: () => ended(server) };
}

function fromElsewhere({ headers }: IncomingMessage): Refusal | null {
  if (headers["sec-fetch-site"] !== "cross-site" || headers["sec-fetch-mode"] === "navigate")
    return null;
  return { status: 403, reason: "Pages from elsewhere are not answered." };
}

async function listen(server: Server, wanted: number | null): Promise<number> {
  const last = wanted ?? firstPort + portsTried - 1;
  for (let port = wanted ?? firstPort; port <= last; port++)
    if (await listens(server, port)) return port;
  throw new Error(
    wanted === null
      ? `ports ${firstPort} to ${last} are all in use: give one with --port`
      : `port ${wanted} is in use: give another with --port, or none to take the first free one`,
  );
}
