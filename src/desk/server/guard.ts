import type { IncomingMessage } from "node:http";

/** A request that is refused, with its status. */
export interface Refusal {
  readonly status: number;
  readonly reason: string;
}

/**
 * Why a request is refused, or null. A page from elsewhere whose name was pointed at this machine
 * asks with its own name as the host, so only the names of the loopback address are answered.
 */
export function refusalOf(request: IncomingMessage, port: number): Refusal | null {
  const { method = "", headers } = request;
  if (method !== "GET" && method !== "HEAD")
    return { status: 405, reason: "Only GET and HEAD are answered." };
  const host = headers.host ?? "";
  const names = ["127.0.0.1", "localhost", "[::1]"].map((name) => `${name}:${port}`);
  if (!names.includes(host.toLowerCase()))
    return { status: 421, reason: "This server answers only to this machine's own name." };
  const from = headers["sec-fetch-site"];
  if (from === "cross-site" && headers["sec-fetch-mode"] !== "navigate")
    return { status: 403, reason: "Pages from elsewhere are not answered." };
  return null;
}
