import { createServer } from "node:https";
import type { AddressInfo } from "node:net";
import { answerFile, answerPlain, ended, listens, refusalOf } from "../../serve";
import type { Certificate } from "./certificate";
import { headersFor } from "./headers";

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
  let own = port;
  const server = createServer({ cert, key }, (request, response) => {
    const path = (request.url ?? "/").split(/[?#]/)[0] ?? "/";
    for (const [name, value] of Object.entries(headersFor(path))) response.setHeader(name, value);
    const refusal = refusalOf(request, own);
    if (!refusal && answerFile(folder, path, request, response)) return;
    // An answer that is no file must not be kept in a file's place.
    response.setHeader("Cache-Control", "no-cache");
    const { status, reason } = refusal ?? { status: 404, reason: "There is no such file here." };
    answerPlain(response, status, reason);
  });
  if (!(await listens(server, port)))
    throw new Error(`port ${port} is in use: end what holds it, then start this again`);
  own = (server.address() as AddressInfo).port;
  return { address: `https://localhost:${own}/`, close: () => ended(server) };
}
