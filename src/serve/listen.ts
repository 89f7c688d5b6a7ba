import type { Server, ServerResponse } from "node:http";

const loopback = "127.0.0.1";

/** Listens to this machine alone. False where the port is taken; rejects where it cannot be used. */
export function listens(server: Server, port: number): Promise<boolean> {
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

/** Ends a server with what is still open on it. */
export function ended(server: Server): Promise<void> {
  return new Promise((done) => {
    server.close(() => done());
    server.closeAllConnections();
  });
}

/** A line of text for an answer. */
export function answerPlain(response: ServerResponse, status: number, line: string): void {
  response.writeHead(status, { "Content-Type": "text/plain; charset=utf-8" });
  response.end(response.req.method === "HEAD" ? undefined : `${line}\n`);
}
