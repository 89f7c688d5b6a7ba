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
export function refusalOf({ method, headers }: IncomingMessage, port: number): Refusal | null {
  if (method !== "GET" && method !== "HEAD")
    return { status: 405, reason: "Only GET and HEAD are answered." };
  const names = ["127.0.0.1", "localhost", "[::1]"].map((name) => `${name}:${port}`);
  if (!names.includes((headers.host ?? "").toLowerCase()))
    return { status: 421, reason: "This server answers only to this machine's own name." };
  return null;
}
