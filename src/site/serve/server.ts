import type { IncomingMessage, ServerResponse } from "node:http";
import { createServer } from "node:https";
import type { AddressInfo } from "node:net";
import sirv from "sirv";
import type { Certificate } from "./certificate";
import { headersFor } from "./headers";

const loopback = "127.0.0.1";

export interface ExcelServer {
  /** "https://localhost:3443/" */
  readonly address: string;
  close(): Promise<void>;
}

export interface ExcelServerOptions {
  /** The folder of the built site. */
  readonly folder: string;
  readonly certificate: Certificate;
  /** The manifest names 3443; 0 takes a free one. */
  readonly port?: number;
}

/** Serves the built site over https to this machine alone. Rejects where the port is taken. */
export async function serveForExcel({
  folder,
  certificate: { cert, key },
  port = 3443,
}: ExcelServerOptions): Promise<ExcelServer> {
  // Looks at the folder for each request, so that a new build is served at once.
  const files = sirv(folder, { dev: true, etag: true });
  const server = createServer({ cert, key }, (request, response) => {
    const path = (request.url ?? "/").split(/[?#]/)[0] ?? "/";
    for (const [name, value] of Object.entries(headersFor(path))) response.setHeader(name, value);
    if (request.method !== "GET" && request.method !== "HEAD")
      return plain(request, response, 405, "Only GET and HEAD are answered.");
    // A page elsewhere whose name was pointed at this machine asks with its own name.
    if (!/^(localhost|127\.0\.0\.1):\d+$/i.test(request.headers.host ?? ""))
      return plain(request, response, 421, "This server answers only to this machine's own name.");
    files(request, response, () => plain(request, response, 404, "There is no such file here."));
  });
  await new Promise<void>((resolve, reject) => {
    server.once("error", (error: NodeJS.ErrnoException) =>
      reject(
        error.code === "EADDRINUSE"
          ? new Error(`port ${port} is in use: end what holds it, then start this again`)
          : error,
      ),
    );
    server.listen(port, loopback, resolve);
  });
  return {
    address: `https://localhost:${(server.address() as AddressInfo).port}/`,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

function plain(
  { method }: IncomingMessage,
  response: ServerResponse,
  status: number,
  text: string,
): void {
  // An answer that is no file must not be kept in a file's place.
  response.setHeader("Cache-Control", "no-cache");
  response.writeHead(status, { "Content-Type": "text/plain; charset=utf-8" });
  response.end(method === "HEAD" ? undefined : `${text}\n`);
}
