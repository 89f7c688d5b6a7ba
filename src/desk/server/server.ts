import { createServer, type Server } from "node:http";
import sirv from "sirv";
import { answerGiven, type GivenWorkbook } from "./given-files";
import { refusalOf } from "./guard";
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

export interface SiteOptions {
  /** The folder of the built site. */
  readonly folder: string;
  /** A port of one's own; else the first free one from 4710 up. */
  readonly port?: number | null;
  readonly given?: readonly GivenWorkbook[];
}

/** Serves the built site on this machine alone. Throws where the port is taken. */
export async function serveSite({ folder, port, given = [] }: SiteOptions): Promise<SiteServer> {
  const files = sirv(folder, { etag: true, extensions: [] });
  let own = 0;
  const server = createServer((request, response) => {
    for (const [name, value] of Object.entries(securityHeaders)) response.setHeader(name, value);
    const plain = (status: number, reason: string) => {
      response.writeHead(status, { "Content-Type": "text/plain; charset=utf-8" });
      response.end(request.method === "HEAD" ? undefined : `${reason}\n`);
    };
    const refusal = refusalOf(request, own);
    if (refusal) return plain(refusal.status, refusal.reason);
    const path = (request.url ?? "/").split(/[?#]/)[0] ?? "/";
    if (answerGiven(path, given, response)) return;
    response.setHeader("Cache-Control", cachingOf(path));
    files(request, response, () => plain(404, "There is no such page here."));
  });
  own = await listen(server, port ?? null);
  const close = () =>
    new Promise<void>((done) => {
      server.close(() => done());
      server.closeAllConnections();
    });
  return { server, address: `http://${loopback}:${own}/`, close };
}

async function listen(server: Server, wanted: number | null): Promise<number> {
  const last = wanted ?? firstPort + portsTried - 1;
  for (let port = wanted ?? firstPort; port <= last; port++)
    if (await tryPort(server, port)) return port;
  throw new Error(
    wanted === null
      ? `ports ${firstPort} to ${last} are all in use: give one with --port`
      : `port ${wanted} is in use: give another with --port, or none to take the first free one`,
  );
}

/** False where the port is taken. */
function tryPort(server: Server, port: number): Promise<boolean> {
  return new Promise((resolve, reject) => {
    const failed = (error: NodeJS.ErrnoException) => {
      server.off("listening", listening);
      if (error.code === "EADDRINUSE") resolve(false);
      else reject(new Error(`port ${port} cannot be used (${error.code ?? error.message})`));
    };
    const listening = () => {
      server.off("error", failed);
      resolve(true);
    };
    server.once("error", failed);
    server.once("listening", listening);
    server.listen(port, loopback);
  });
}
